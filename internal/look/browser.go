// Package look lets tests see pages as readers do: in a real browser, and by
// the contrast of their colours.
package look

import (
	"context"
	"os"
	"os/exec"
	"regexp"
	"testing"

	"github.com/chromedp/chromedp"
)

// Browser starts Chromium for a test, with switches besides the usual ones, and
// ends it with the test. Without a Chromium the test fails where CI is true;
// elsewhere it says so, and nil tells the test that nobody can look.
func Browser(t *testing.T, switches ...string) context.Context {
	t.Helper()
	program := ""
	for _, name := range []string{"chromium", "chromium-browser", "google-chrome"} {
		if found, err := exec.LookPath(name); err == nil {
			program = found
			break
		}
	}
	if program == "" {
		if os.Getenv("CI") == "true" {
			t.Fatal("no Chromium to look at the pages with")
		}
		t.Log("no Chromium here: nobody has looked at the pages")
		return nil
	}
	options := []chromedp.ExecAllocatorOption{chromedp.ExecPath(program), chromedp.UserDataDir(t.TempDir())}
	for _, name := range append([]string{"headless", "no-sandbox", "disable-gpu", "disable-quic", "no-first-run", "disable-background-networking", "disable-component-update", "disable-sync"}, switches...) {
		options = append(options, chromedp.Flag(name, true))
	}
	allocator, stop := chromedp.NewExecAllocator(context.Background(), options...)
	t.Cleanup(stop)
	ctx, quit := chromedp.NewContext(allocator)
	t.Cleanup(quit)
	if err := chromedp.Do(ctx); err != nil {
		t.Fatal(err)
	}
	return ctx
}

// papers are the sizes of sheet in use.
var papers = map[string]chromedp.PaperSize{"letter": chromedp.PaperLetter, "A4": chromedp.PaperA4}

// leaf finds the pages of a PDF: objects of type Page.
var leaf = regexp.MustCompile(`/Type\s*/Page\b`)

// Sheets prints what a tab shows and counts the pages on each paper.
func Sheets(t *testing.T, tab context.Context) map[string]int {
	t.Helper()
	sheets := map[string]int{}
	for paper, size := range papers {
		pdf, err := chromedp.Run(tab, chromedp.PrintToPDF(chromedp.PDFPaper(size)))
		if err != nil {
			t.Fatal(err)
		}
		sheets[paper] = len(leaf.FindAll(pdf, -1))
	}
	return sheets
}
