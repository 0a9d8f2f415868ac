package report

import (
	"bytes"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/form"
	archive "github.com/slablint/slablint/internal/summary"
	"github.com/slablint/slablint/schema"
)

// uneven lists where the columns of tables of the same kind begin, if that
// differs.
const uneven = `(() => {
  const places = new Set([...document.querySelectorAll("table:has(.chart)")].map(t => [...t.querySelectorAll("thead th")].map(h => Math.round(h.getBoundingClientRect().left)).join(" ")));
  return places.size > 1 ? [...places] : [];
})()`

// torn lists questions that stand in another column than the words to choose
// from, with columns of many heights: wherever a page may end.
const torn = `(() => {
  const found = new Set(), left = e => e.getBoundingClientRect().left;
  for (let height = 300; height < 900; height += 10) {
    document.querySelector(".cols").style.cssText = "columns:2;column-fill:auto;height:" + height + "px";
    document.querySelectorAll("tr.has-key").forEach(r => { if (left(r) !== left(r.nextElementSibling)) found.add(r.textContent); });
  }
  return [...found];
})()`

// broken lists headings of columns with a word broken in two, and cells whose
// words run over their side.
const broken = `(() => {
  const out = [];
  document.querySelectorAll("th[scope=col]").forEach(h => {
    const range = document.createRange();
    range.selectNodeContents(h);
    const lines = new Set([...range.getClientRects()].filter(r => r.width > 2).map(r => Math.round(r.bottom / 6)));
    if (lines.size > h.textContent.trim().split(/\s+/).length) out.push(h.textContent + " in " + lines.size + " lines");
  });
  document.querySelectorAll("td").forEach(c => { if (c.clientWidth && c.scrollWidth > c.clientWidth + 1) out.push(c.textContent + " is wider than its cell"); });
  return out;
})()`

// The summary of an archive and the job sheet are pages too, and the same is
// asked of them in the browser as of reports.
func TestOtherPagesInTheBrowser(t *testing.T) {
	ctx := browser(t)
	if ctx == nil {
		return
	}
	day := time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)
	counter := archive.NewCounter(day)
	for i, name := range []string{"J-1", "J-2 عربي", "Schwerlastschwingungsdämpferaufhängung"} {
		counter.Add(archive.Facts{
			Job: name, File: "jobs/" + name + ".yaml", Ready: i == 0, Profiles: []string{"us-epa-1994"}, Month: "2026-03", Crew: []string{name},
			Open:      []archive.Open{{Requirement: "exhaust.clearance_to_openings", Title: "The outlet keeps its distance from openings of this house", Grade: finding.Hazard}},
			Reduction: 80 + float64(i), Reduced: true, RetestDue: day,
		})
	}
	counter.Fail([]finding.Error{{File: "bad.yaml", Line: 1, Column: 1, Message: "broken"}})
	var sum, sheet bytes.Buffer
	if err := archive.Write(&sum, counter.Summary(), "html"); err != nil {
		t.Fatal(err)
	}
	fields, err := form.Fields(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	start := form.Start{Job: "J-0130", Stage: "closeout", Foundation: "crawlspace", System: "sub-membrane", Profiles: []string{"us-epa-1994"}}
	if err := form.WriteSheet(&sheet, fields, start, finding.Notice, []string{"Wiring is work for licensed people."}); err != nil {
		t.Fatal(err)
	}
	for _, where := range ask[[]string](t, viewPage(t, ctx, sum.String(), screens()[0].settings()...), uneven) {
		t.Errorf("the tables of counts have columns at %s", where)
	}
	for _, words := range ask[[]string](t, viewPage(t, ctx, sheet.String(), screens()[0].settings()...), torn) {
		t.Errorf("on the sheet a question is torn from its words: %s", words)
	}
	for name, page := range map[string]string{"summary": sum.String(), "sheet": sheet.String()} {
		for _, box := range ask[[]string](t, viewPage(t, ctx, page, viewport(703, 1000), media("print", "light")), clipped) {
			t.Errorf("%s on paper: %s", name, box)
		}
		for _, s := range screens() {
			t.Run(name+" "+s.name, func(t *testing.T) {
				b := viewPage(t, ctx, page, s.settings()...)
				for _, check := range []string{structure, faint, sticksOut, broken} {
					for _, wrong := range ask[[]string](t, b, check) {
						t.Error(wrong)
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
