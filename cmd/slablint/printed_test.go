package main

import (
	"bytes"
	"context"
	"net/url"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/chromedp/chromedp"

	"github.com/slablint/slablint/internal/look"
)

// opened shows a page in a tab of the browser.
func opened(t *testing.T, browser context.Context, page string) context.Context {
	t.Helper()
	file := filepath.Join(t.TempDir(), "page.html")
	if err := os.WriteFile(file, []byte(page), 0o644); err != nil {
		t.Fatal(err)
	}
	tab, closeTab := chromedp.NewContext(browser)
	t.Cleanup(closeTab)
	if err := chromedp.Do(tab); err != nil {
		t.Fatal(err)
	}
	limited, cancel := context.WithTimeout(tab, 2*time.Minute)
	t.Cleanup(cancel)
	if err := chromedp.Do(limited, chromedp.Navigate((&url.URL{Scheme: "file", Path: filepath.ToSlash(file)}).String())); err != nil {
		t.Fatal(err)
	}
	return limited
}

// printsOn prints what a tab shows and counts the pages on either paper.
func printsOn(t *testing.T, tab context.Context, what string, most int) {
	t.Helper()
	for paper, n := range look.Sheets(t, tab) {
		t.Logf("%s on %s: %d pages", what, paper, n)
		if n < 1 || n > most {
			t.Errorf("%s on %s: %d pages, want 1 to %d", what, paper, n, most)
		}
	}
}

// The report of the worst of the invented jobs, with 40 open items, drawings and
// photographs, prints on six sheets; of one that is ready on three.
func TestReportPrintsOnSixPages(t *testing.T) {
	browser := look.Browser(t)
	if browser == nil {
		return
	}
	for job, most := range map[string]int{"faulty": 6, "ready": 3} {
		files, err := filepath.Glob("../../fixtures/*/" + job + ".yaml")
		if err != nil || len(files) == 0 {
			t.Fatalf("no fixtures: %v", err)
		}
		for _, file := range files {
			var out, errs bytes.Buffer
			status := run(t.Context(), []string{"check", "--format", "html", file}, world{out: &out, errs: &errs})
			if out.Len() == 0 || errs.Len() > 0 {
				t.Fatalf("%s: exit status %d: %s", file, status, errs.String())
			}
			printsOn(t, opened(t, browser, out.String()), file, most)
		}
	}
}
