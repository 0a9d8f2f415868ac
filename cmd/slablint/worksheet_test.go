package main

import (
	"bytes"
	"fmt"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"github.com/slablint/slablint/internal/form"
	"github.com/slablint/slablint/internal/look"
)

// sheets are worksheets from short to as long as they get: two standards, a
// trade's habits and the rules of three states for one job.
var sheets = []struct {
	foundation, system string
	profiles           []string
}{
	{"slab-on-grade", "sub-slab", []string{"canada"}},
	{"basement", "drain-tile", []string{"us-epa-1994"}},
	{"crawlspace", "sub-membrane", []string{"us-consensus"}},
	{"basement", "sub-slab", []string{"us-epa-1994", "us-consensus", "common-practice", "pennsylvania", "illinois", "minnesota"}},
}

func sheet(t *testing.T, foundation, system string, profiles []string) (page string, fields []form.Field) {
	t.Helper()
	args := []string{"worksheet", "--job", "J-0130", "--foundation", foundation, "--system", system}
	for _, p := range profiles {
		args = append(args, "--profile", p)
	}
	var out, errs bytes.Buffer
	if status := run(t.Context(), args, world{out: &out, errs: &errs}); status != 0 {
		t.Fatalf("exit status %d: %s", status, errs.String())
	}
	f := startFlags{start: form.Start{Job: "J-0130", Foundation: foundation, System: system, Stage: "closeout"}}
	f.profiles = profiles
	q, err := f.questions(t.Context())
	if err != nil {
		t.Fatal(err)
	}
	return out.String(), q.fields
}

// The sheet asks what the record to fill in asks, each question once; only what
// the call has said already is left out.
func TestSheetAsksWhatTheRecordAsks(t *testing.T) {
	page, fields := sheet(t, "basement", "sub-slab", []string{"us-epa-1994"})
	var want, got []string
	for _, f := range everyField(fields) {
		if len(f.Fields) == 0 && f.Name != "id" {
			want = append(want, f.Path)
		}
	}
	for _, m := range regexp.MustCompile(`data-path="(/[^"]*)"`).FindAllStringSubmatch(page, -1) {
		got = append(got, m[1])
	}
	given := []string{"/job/stage", "/job/profiles", "/systems/*/kind", "/systems/*/powered_by", "/systems/*/foundations"}
	want = slices.DeleteFunc(want, func(path string) bool { return slices.Contains(given, path) })
	slices.Sort(want)
	slices.Sort(got)
	if !slices.Equal(want, got) {
		t.Errorf("the record asks %d and the sheet %d questions", len(want), len(got))
		for _, path := range want {
			if !slices.Contains(got, path) {
				t.Errorf("the sheet does not ask for %s", path)
			}
		}
	}
}

func everyField(fields []form.Field) []form.Field {
	var out []form.Field
	for _, f := range fields {
		out = append(append(out, f), everyField(f.Fields)...)
	}
	return out
}

// Sections stand in the order of the day, and the cautions before the work.
func TestSheetFollowsTheDay(t *testing.T) {
	page, _ := sheet(t, "basement", "sub-slab", []string{"us-epa-1994"})
	at := 0
	for _, heading := range []string{"Take care", "silica dust", "licensed people", "Before you go", "Crew safety", "House", "Survey and diagnostics", "Entry routes", ">System<", "With the system running", "Radon tests", "Papers and hand-over", "Local code and licensed practice govern"} {
		next := strings.Index(page[at:], heading)
		if next < 0 {
			t.Fatalf("%q is missing or stands too early", heading)
		}
		at += next
	}
}

// A sheet prints on at most four pages of either paper, and nothing is cut off
// at the side. Without a browser the test fails where CI is true; elsewhere it
// says that nobody has looked.
func TestSheetPrintsOnFourPages(t *testing.T) {
	browser := look.Browser(t)
	if browser == nil {
		return
	}
	for _, s := range sheets {
		page, _ := sheet(t, s.foundation, s.system, s.profiles)
		tab := opened(t, browser, page)
		printsOn(t, tab, fmt.Sprintf("%s %s %v", s.foundation, s.system, s.profiles), 4)
		wide, err := chromedp.Run(tab, chromedp.Evaluate[bool](`document.documentElement.scrollWidth > document.documentElement.clientWidth`))
		if err != nil || wide {
			t.Errorf("%s %s: the page is wider than its window, %v", s.foundation, s.system, err)
		}
	}
}
