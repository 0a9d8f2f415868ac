package report

import (
	"fmt"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/look"
)

// screen is a way of looking at a page.
type screen struct {
	name          string
	width, height int64
	scheme        string
}

func screens() []screen {
	return []screen{{"light", 1100, 900, "light"}, {"dark", 1100, 900, "dark"}, {"phone", 390, 844, "light"}, {"dark phone", 390, 844, "dark"}, {"small phone", 320, 640, "light"}}
}

func (s screen) settings() []setting {
	return []setting{viewport(s.width, s.height), media("screen", s.scheme)}
}

// structure looks for what a reader who does not see the page needs: one first
// heading, none skipped on the way down; banner, main part and footer in their
// order; words for every picture; folded parts with a name.
const structure = `(() => {
  const wrong = [];
  let last = 0;
  document.querySelectorAll("h1,h2,h3,h4,h5,h6").forEach(h => {
    const level = +h.tagName[1];
    if (level > last + 1) wrong.push("heading of level " + level + " after one of level " + last + ": " + h.textContent.slice(0, 40));
    if (!h.textContent.trim()) wrong.push("heading without words");
    last = level;
  });
  if (document.querySelectorAll("h1").length !== 1) wrong.push(document.querySelectorAll("h1").length + " first headings");
  const parts = [...document.body.children].map(e => e.tagName.toLowerCase()).filter(n => n !== "script").join(" ");
  if (parts !== "header main footer") wrong.push("the page is made of: " + parts);
  document.querySelectorAll("nav").forEach(n => {
    if (!n.getAttribute("aria-label")) wrong.push("nav without a name");
    let before = n;
    n.querySelectorAll("a").forEach(a => {
      const part = document.getElementById(a.hash.slice(1));
      if (!part || !(before.compareDocumentPosition(part) & Node.DOCUMENT_POSITION_FOLLOWING)) wrong.push("nav: " + a.textContent + " is out of order");
      before = part || before;
    });
  });
  document.querySelectorAll("img").forEach(i => { if (!i.alt.trim()) wrong.push("picture without words"); });
  document.querySelectorAll("main svg").forEach(s => {
    if (s.parentElement.closest("svg")) return;
    if (s.getAttribute("role") !== "img" || !(s.getAttribute("aria-label") || "").trim()) wrong.push("drawing without words");
  });
  document.querySelectorAll("details").forEach(d => { if (!d.querySelector("summary").textContent.trim()) wrong.push("folded part without a name"); });
  document.querySelectorAll("table").forEach(t => { if (!t.querySelector("th[scope=col]") || !t.querySelector("th[scope=row]")) wrong.push("table without headings"); });
  if (!document.documentElement.lang || !document.title.trim()) wrong.push("page without language or title");
  return wrong;
})()`

// faint lists words whose contrast is below WCAG 2.2, 1.4.3, by the colours
// that the browser came to.
const faint = `(() => {
  const rgb = c => (c.match(/[\d.]+/g) || []).map(Number);
  const lum = c => { const v = c.slice(0, 3).map(x => (x /= 255) <= 0.04045 ? x / 12.92 : ((x + 0.055) / 1.055) ** 2.4); return 0.2126 * v[0] + 0.7152 * v[1] + 0.0722 * v[2]; };
  const ground = e => { for (; e; e = e.parentElement) { const c = rgb(getComputedStyle(e).backgroundColor); if (c.length === 3 || c[3] > 0.99) return c; } return [255, 255, 255]; };
  const found = new Set();
  document.querySelectorAll("details").forEach(d => d.open = true);
  const walk = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT);
  while (walk.nextNode()) {
    const e = walk.currentNode.parentElement;
    if (!walk.currentNode.textContent.trim() || e.closest("svg,script,style")) continue;
    const a = lum(rgb(getComputedStyle(e).color)), b = lum(ground(e));
    const ratio = (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    if (ratio < 4.5) found.add(ratio.toFixed(2) + ": " + walk.currentNode.textContent.trim().slice(0, 30));
  }
  return [...found];
})()`

// sticksOut lists what sticks out of the page to the side.
const sticksOut = `(() => {
  document.querySelectorAll("details").forEach(d => d.open = true);
  const room = document.documentElement.clientWidth, out = [];
  if (document.documentElement.scrollWidth > room) out.push("the page is " + document.documentElement.scrollWidth + " px wide in " + room);
  document.querySelectorAll("body *").forEach(e => {
    if (e.parentElement.closest("svg")) return;
    const box = e.getBoundingClientRect();
    if (box.width && box.right > room + 1) out.push(e.tagName + "." + e.className + " ends at " + Math.round(box.right));
  });
  return out.slice(0, 5);
})()`

// clipped lists boxes whose side lies on the edge of a sheet's printed part, where
// half of its line is cut off.
const clipped = `(() => {
  const out = new Set(), room = document.documentElement.clientWidth;
  document.querySelectorAll("body *").forEach(e => {
    if (e.parentElement.closest("svg") || !parseFloat(getComputedStyle(e).borderRightWidth)) return;
    const box = e.getBoundingClientRect();
    if (box.width && box.right > room - 0.5) out.add(e.tagName + "." + (e.getAttribute("class") || "") + " ends at " + box.right.toFixed(1) + " of " + room);
  });
  return [...out];
})()`

// Pages are quiet, ask for nothing, and can be read by everybody: on a screen,
// light or dark, on a telephone, seen or heard.
func TestPagesInTheBrowser(t *testing.T) {
	ctx := browser(t)
	if ctx == nil {
		return
	}
	reports := pages(t)
	reports["foreign"] = reportOf(foreignJob(), foreignJob())
	reports["many"] = reportOf(readyJob(), bigJob(t), heldJob())
	for _, name := range []string{"big", "many", "several", "ready", "errors", "nothing", "hostile", "foreign", "early"} {
		for _, s := range screens() {
			t.Run(name+" "+s.name, func(t *testing.T) {
				b := view(t, ctx, reports[name], s.settings()...)
				for _, wrong := range ask[[]string](t, b, structure) {
					t.Error(wrong)
				}
				for _, wrong := range ask[[]string](t, b, faint) {
					t.Errorf("contrast %s", wrong)
				}
				for _, wrong := range ask[[]string](t, b, sticksOut) {
					t.Error(wrong)
				}
				dark := ask[bool](t, b, `getComputedStyle(document.body).backgroundColor.match(/\d+/g).map(Number)[0] < 128`)
				if dark != (s.scheme == "dark") {
					t.Errorf("the page is dark: %v", dark)
				}
				if drawings := ask[[]bool](t, b, `[...document.querySelectorAll("main svg .paper")].map(p => getComputedStyle(p).fill.match(/\d+/g).map(Number)[0] < 128)`); len(reports[name].Jobs) == 1 && name == "big" {
					if len(drawings) < 4 {
						t.Errorf("%d drawings", len(drawings))
					}
					for _, d := range drawings {
						if d != dark {
							t.Errorf("a drawing is dark: %v", d)
						}
					}
				}
				b.mu.Lock()
				defer b.mu.Unlock()
				for _, noise := range b.noises {
					t.Error(noise)
				}
			})
		}
	}
}

// foreignJob is written in scripts that run the other way, in pictures and in
// words without an end.
func foreignJob() finding.Job {
	arabic, hebrew := "تسرب الغاز من أنبوب التهوية قرب نافذة غرفة النوم", "הצינור קרוב מדי לחלון חדר השינה"
	emoji, endless := "👷🏽‍♀️🏠💨☢️", strings.Repeat("Schwerlastschwingungsdämpfer", 20)
	texts := []string{arabic, hebrew, emoji, endless, arabic + " 3 ft 1 in " + hebrew, endless + emoji}
	n := 0
	next := func() string { n++; return texts[n%len(texts)] }
	job := heldJob()
	job.ID, job.Title, job.File = next(), next(), next()
	job.Profiles, job.Cautions = []string{next(), next()}, []string{next(), next()}
	for i := range job.Findings {
		f := &job.Findings[i]
		f.Requirement, f.Subject = "exhaust."+endless+fmt.Sprint(i), next()
		f.Title, f.Message, f.Measured, f.Limit, f.Reason, f.Why, f.Remedy, f.Profile = next(), next(), next(), next(), next(), next(), next(), next()
		f.Source.Document = next()
	}
	for i := range job.Readings {
		job.Readings[i] = finding.Reading{Group: next(), Subject: next(), Title: next(), Text: next(), Note: next(), Path: "/x"}
	}
	for i := range job.Values {
		job.Values[i] = finding.DerivedValue{Group: next(), Subject: next(), Title: next(), Text: next(), Method: next(), Path: "/x"}
	}
	job.Figures[0].Title, job.Figures[0].Alt, job.Figures[0].Key = next(), next(), []string{next(), next(), next(), next()}
	job.Photos[0].Caption, job.Photos[0].Shows = next(), []string{next()}
	return job
}

// The index sorts by its headings, and is all there without a script.
func TestIndexSorts(t *testing.T) {
	ctx := browser(t)
	if ctx == nil {
		return
	}
	const order = `[...document.querySelectorAll("table.index tbody th a")].map(a => a.textContent).join(" ")`
	r := reportOf(heldJob(), readyJob(), earlyJob())
	b := view(t, ctx, r)
	if got := ask[string](t, b, order); got != "J-0103 J-0101 J-0104" {
		t.Errorf("at first: %s", got)
	}
	press := func(heading string) string {
		return ask[string](t, b, `(() => { [...document.querySelectorAll("table.index thead button")].find(h => h.textContent === "`+heading+`").click(); return `+order+`; })()`)
	}
	for _, c := range []struct{ heading, want, sort string }{
		{"Job", "J-0101 J-0103 J-0104", "ascending"},
		{"Job", "J-0104 J-0103 J-0101", "descending"},
		{"Holding", "J-0104 J-0101 J-0103", "ascending"},
		{"Holding", "J-0103 J-0104 J-0101", "descending"},
	} {
		if got := press(c.heading); got != c.want {
			t.Errorf("by %s: %s, want %s", c.heading, got, c.want)
		}
		if got := ask[string](t, b, `[...document.querySelectorAll("table.index th[aria-sort]")].map(h => h.textContent + " " + h.getAttribute("aria-sort")).join()`); got != c.heading+" "+c.sort {
			t.Errorf("marked as sorted: %s", got)
		}
	}
	still := view(t, ctx, r, noScript)
	if rows := ask[int](t, still, `[...document.querySelectorAll("table.index tbody tr")].filter(r => r.getBoundingClientRect().height > 10).length`); rows != 3 {
		t.Errorf("without scripts the index has %d rows", rows)
	}
	if ask[int](t, still, `document.querySelectorAll("table.index button").length`) != 0 {
		t.Error("without scripts there are buttons that do nothing")
	}
}

// A job with 40 findings prints on at most six sheets, of either size.
func TestPrintedPages(t *testing.T) {
	ctx := browser(t)
	if ctx == nil {
		return
	}
	for _, c := range []struct {
		name        string
		r           finding.Report
		least, most int
	}{
		{"big", reportOf(bigJob(t)), 3, 6},
		{"ready", reportOf(readyJob()), 1, 1},
		{"two", reportOf(readyJob(), doneJob()), 3, 3}, // an index and a sheet for each job
	} {
		for paper, n := range look.Sheets(t, view(t, ctx, c.r)) {
			t.Logf("%s on %s: %d pages", c.name, paper, n)
			if n < c.least || n > c.most {
				t.Errorf("%s on %s: %d pages, want %d to %d", c.name, paper, n, c.least, c.most)
			}
		}
	}
}

// The letters of drawings are 7 pt on paper at the least: a little below what
// the text round them has, as is usual for drawings (common practice).
func TestDrawingsCanBeReadOnPaper(t *testing.T) {
	ctx := browser(t)
	if ctx == nil {
		return
	}
	// What the margins of 12 mm leave of a sheet, in px of 1/96 inch.
	for paper, width := range map[string]int64{"letter": (2159 - 240) * 960 / 2540, "A4": (2100 - 240) * 960 / 2540} {
		b := view(t, ctx, reportOf(bigJob(t)), viewport(width, 1000), media("print", "light"))
		for _, box := range ask[[]string](t, b, clipped) {
			t.Errorf("%s: %s", paper, box)
		}
		smallest := ask[[]float64](t, b, `[...document.querySelectorAll("figure svg.fig")].map(s => Math.min(...[...s.querySelectorAll("text")].map(
  t => parseFloat(getComputedStyle(t).fontSize) * s.getBoundingClientRect().width / s.viewBox.baseVal.width * 0.75)))`)
		if len(smallest) < 4 {
			t.Errorf("%s: %d drawings", paper, len(smallest))
		}
		for i, pt := range smallest {
			if pt < 7 {
				t.Errorf("%s: letters of drawing %d are %.2f pt", paper, i+1, pt)
			}
		}
	}
}

// Every sheet carries job, rulebook and page number; links to parts of the page
// and folded lists are left out.
func TestPrintStyle(t *testing.T) {
	ctx := browser(t)
	if ctx == nil {
		return
	}
	nasty := readyJob()
	nasty.ID = `J"; } body { display: none } /*`
	b := view(t, ctx, reportOf(nasty), media("print", "light"))
	rules := ask[string](t, b, `[...document.styleSheets[0].cssRules].filter(r => r instanceof CSSPageRule).map(r => r.cssText).join("\n")`)
	for _, want := range []string{"@bottom-left", "@bottom-center", "@bottom-right", inventedDigest, "counter(page)", "counter(pages)", `J\"; } body { display: none } /*`} {
		if !strings.Contains(rules, want) {
			t.Errorf("no %s in the rules for sheets:\n%s", want, rules)
		}
	}
	if got := ask[string](t, b, `getComputedStyle(document.querySelector("nav")).display + " " + getComputedStyle(document.body).display`); got != "none block" {
		t.Errorf("nav and body are displayed as %s", got)
	}
	if ask[bool](t, b, `[...document.querySelectorAll("details")].some(d => d.open)`) {
		t.Error("a folded part is open")
	}
	for _, wrong := range ask[[]string](t, b, faint) {
		t.Errorf("contrast in print %s", wrong)
	}
}
