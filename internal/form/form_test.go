package form

import (
	"bytes"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/validate"
	"github.com/slablint/slablint/schema"
)

func all(t *testing.T) []Field {
	t.Helper()
	fields, err := Fields(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	return fields
}

func TestFieldsSayWhatToWrite(t *testing.T) {
	for path, want := range map[string]struct{ kind, hint string }{
		"/systems/*/fan/listed":                            {"yes-or-no", "true | false"},
		"/systems/*/powered_by":                            {"choice", "fan | passive | rough-in"},
		"/systems/*/discharge/height_above_grade":          {"quantity", "length, such as 19 ft 6 in"},
		"/house/storeys":                                   {"number", "such as 2"},
		"/systems/*/fan/after_segment":                     {"text", "an id from systems, pipe"},
		"/systems/*/foundations":                           {"list", "ids from house/foundations"},
		"/evidence/*/shows":                                {"list", ""},
		"/systems/*/pipe/*/fittings":                       {"array", ""},
		"/diagnostics/communication_tests/*/holes/*/smoke": {"choice", "down | still | up"},
	} {
		f, ok := find(all(t), path)
		if !ok {
			if want.kind != "" {
				t.Errorf("%s: no such field", path)
			}
			continue
		}
		if f.Kind != want.kind || want.hint != "" && f.hint() != want.hint {
			t.Errorf("%s: %s, %q", path, f.Kind, f.hint())
		}
	}
}

// Every example can be written as it stands, and no number goes without a unit.
func TestExamplesCanBeWritten(t *testing.T) {
	var walk func(fields []Field)
	walk = func(fields []Field) {
		for _, f := range fields {
			walk(f.Fields)
			if len(f.Fields) > 0 || f.Example == "" {
				continue
			}
			doc, err := record.ReadYAML("example", []byte("x: "+f.Example+" # "+f.Title+"\n"), record.Limits{})
			if err != nil {
				t.Errorf("%s: %v", f.Path, err)
				continue
			}
			if n := doc.Root.Get("x"); n.Kind() != record.Array && n.Text() != f.Example {
				t.Errorf("%s: %q is read as %q", f.Path, f.Example, n.Text())
			}
			if f.Kind == "quantity" {
				if _, err := quantity.Parse(quantity.Dimension(f.Dimension), f.Example); err != nil {
					t.Errorf("%s: %v", f.Path, err)
				}
				if units[f.Dimension] == "" {
					t.Errorf("%s: the sheet has no unit for %s", f.Path, f.Dimension)
				}
			}
		}
	}
	walk(all(t))
}

// The units that the sheet offers are units that a record may hold.
func TestUnitsOnTheSheet(t *testing.T) {
	for dimension, offered := range units {
		for _, unit := range regexp.MustCompile(`, | / | or | `).Split(offered, -1) {
			text := "1 " + unit
			switch unit {
			case "date", "time", "R-value", "per": // no units but kinds of writing
				continue
			}
			if dimension == "slope" {
				text = "1 in per ft"
			}
			if _, err := quantity.Parse(quantity.Dimension(dimension), text); err != nil {
				t.Errorf("%s: %v", dimension, err)
			}
		}
	}
}

func TestSelectKeepsTheWayToWhatIsNeeded(t *testing.T) {
	selected := Select(all(t), map[string]bool{
		"/systems/*/pipe/*/insulation/resistance": true,
		"/systems/*/discharge/position":           true, // as a whole
		"/systems/*/fan/after_segment":            true, // the pipe is there
		"/systems/*/discharge/photo":              true, // the evidence is not
		"/house/openings/*/id":                    true, // an id alone asks nothing
		"/job/title":                              true, "/nowhere": true,
	})
	var got []string
	var walk func(fields []Field)
	walk = func(fields []Field) {
		for _, f := range fields {
			if len(f.Fields) == 0 {
				got = append(got, f.Path)
			}
			walk(f.Fields)
		}
	}
	walk(selected)
	want := []string{
		"/job/id", "/job/stage", "/job/profiles", "/job/title",
		"/systems/*/id", "/systems/*/pipe/*/id", "/systems/*/pipe/*/insulation/resistance", "/systems/*/fan/after_segment",
		"/systems/*/discharge/position/x", "/systems/*/discharge/position/y", "/systems/*/discharge/position/z",
	}
	if diff := cmp.Diff(want, slices.DeleteFunc(got, func(path string) bool { return path == "/record" })); diff != "" {
		t.Error(diff)
	}
}

func start() Start {
	return Start{Job: "J-1", Stage: "closeout", Profiles: []string{"us-epa-1994"}, Foundation: "basement", System: "sub-slab"}
}

// The record to fill in is valid as it is, blank, and so is every sample.
func TestRecordsAreValid(t *testing.T) {
	v, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	var blank bytes.Buffer
	if err := WriteYAML(&blank, all(t), start()); err != nil {
		t.Fatal(err)
	}
	texts := map[string][]byte{"blank": blank.Bytes()}
	for turn := range 14 {
		texts["turn "+string(rune('a'+turn))] = Sample(all(t), start(), turn)
	}
	for name, text := range texts {
		doc, err := record.ReadYAML(name, text, record.Limits{})
		if err != nil {
			t.Errorf("%v", err)
			continue
		}
		for _, e := range v.Check(doc) {
			t.Errorf("%s:%d: %s\n%s", name, e.Line, e.Message, bytes.Split(text, []byte("\n"))[e.Line-1])
		}
	}
}

// A choice is offered as boxes, a list as a grid, a part of an entry under its
// name; nothing of a job can become markup.
func TestSheet(t *testing.T) {
	s := start()
	s.Job = `<b>"J"`
	var out bytes.Buffer
	fields := Select(all(t), map[string]bool{
		"/systems/*/powered_by": true, "/systems/*/pipe/*/material": true, "/systems/*/pipe/*/penetrations/*/sealed": true,
		"/house/foundations/*/kind": true, "/entry_routes/*/sump/pump": true, "/diagnostics/backdraft_tests/*/passed": true,
		"/diagnostics/visual_survey": true, "/systems/*/alarm/kind": true,
	})
	if err := WriteSheet(&out, fields, s, "the notice", []string{"mind the <dust>"}); err != nil {
		t.Fatal(err)
	}
	page := out.String()
	for _, want := range []string{
		"&lt;b&gt;&#34;J&#34;", "mind the &lt;dust&gt;", "the notice",
		`<span class="box"></span>audible-and-visual`, `<b>1</b> pvc`, "<td>basement</td>",
		"Pipe, which number", `class="part"><th colspan="4">Sump`, "With the system running", "number of the word",
	} {
		if !strings.Contains(page, want) {
			t.Errorf("the page lacks %q", want)
		}
	}
	if strings.Contains(page, `<b>"J"`) || strings.Contains(page, "Variances") || strings.Contains(page, "/systems/*/kind") {
		t.Error("the page has what it should not have")
	}
	if strings.Index(page, "Visual survey") > strings.Index(page, "Passed") {
		t.Error("the backdraft test comes before the survey")
	}
	if n := strings.Count(page, `data-path="/diagnostics/backdraft_tests/*/passed"`); n != 1 {
		t.Errorf("the backdraft test is asked for %d times", n)
	}
}

// The more there is to ask, the closer the lines.
func TestRoom(t *testing.T) {
	var got []string
	for _, lines := range []int{1, 220, 221, 400, 401, 520, 521} {
		got = append(got, room(lines))
	}
	if want := []string{"wide", "wide", "close", "close", "tight", "tight", "dense"}; !slices.Equal(got, want) {
		t.Errorf("%v", got)
	}
}
