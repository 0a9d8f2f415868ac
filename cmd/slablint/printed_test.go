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

// mostSheets is on how many sheets the reports of the invented jobs fit: the
// worst has 40 open items, drawings and photographs.
var mostSheets = map[string]int{
	"slab/faulty": 6, "block-wall/faulty": 5, "demo/faulty": 4, "crawlspace/faulty": 4,
	"slab/ready": 3, "block-wall/ready": 3, "demo/ready": 3, "crawlspace/ready": 3,
}

// colliding lists words of a drawing that cover others or leave it, in the
// letters that the browser sets them in. A box reaches above and below the
// letters, so that a little may be shared.
const colliding = `(() => {
  const wrong = [];
  document.querySelectorAll("figure svg.fig").forEach(svg => {
    const name = svg.getAttribute("aria-label").slice(0, 30), room = svg.viewBox.baseVal;
    const texts = [...svg.querySelectorAll("text:not([transform])")].map(t => ({words: t.textContent, box: t.getBBox()}));
    texts.forEach(({words, box}, i) => {
      if (box.x < -1 || box.x + box.width > room.width + 1) wrong.push(name + ": " + words + " leaves the drawing");
      texts.slice(0, i).forEach(other => {
        const w = Math.min(box.x + box.width, other.box.x + other.box.width) - Math.max(box.x, other.box.x);
        const h = Math.min(box.y + box.height, other.box.y + other.box.height) - Math.max(box.y, other.box.y);
        if (w > 1 && h > 4) wrong.push(name + ": " + words + " and " + other.words + " share " + w.toFixed() + " by " + h.toFixed() + " px");
      });
    });
  });
  return wrong;
})()`

// ragged lists values whose column does not end where it should: all of a sheet
// end at its right edge.
const ragged = `document.querySelectorAll("details").forEach(d => d.open = true); [...document.querySelectorAll(".sheet .value")].filter(v => Math.abs(v.getBoundingClientRect().right - v.parentElement.getBoundingClientRect().right) > 1).map(v => v.textContent)`

// Reports of the invented jobs print on few sheets, and their drawings and
// columns are in order.
func TestReportsOfTheFixturesAreInOrder(t *testing.T) {
	browser := look.Browser(t)
	if browser == nil {
		return
	}
	files, err := filepath.Glob("../../fixtures/*/*y.yaml") // ready and faulty
	if err != nil || len(files) != len(mostSheets) {
		t.Fatalf("%d fixtures, want the %d listed: %v", len(files), len(mostSheets), err)
	}
	for job, most := range mostSheets {
		file := "../../fixtures/" + job + ".yaml"
		var out, errs bytes.Buffer
		status := run(t.Context(), []string{"check", "--format", "html", file}, world{out: &out, errs: &errs})
		if out.Len() == 0 || errs.Len() > 0 {
			t.Fatalf("%s: exit status %d: %s", file, status, errs.String())
		}
		tab := opened(t, browser, out.String())
		printsOn(t, tab, file, most)
		for what, check := range map[string]string{"words": colliding, "column": ragged} {
			wrong, err := chromedp.Run(tab, chromedp.Evaluate[[]string](check))
			if err != nil {
				t.Fatal(err)
			}
			for _, w := range wrong {
				t.Errorf("%s: %s: %s", file, what, w)
			}
		}
	}
}
