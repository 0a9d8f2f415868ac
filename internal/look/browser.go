// Package look lets tests see pages as readers do: in a real browser, and by
// the contrast of their colours.
package look

import (
	"context"
	"os"
	"os/exec"
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
