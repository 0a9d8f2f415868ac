package drawing

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// Every figure stands on its own, says in words what it shows, runs nothing,
// fetches nothing, and can share a page with others.
func TestFiguresAreSound(t *testing.T) {
	for _, fixture := range allFixtures {
		names := map[string]bool{}
		for _, f := range Figures(input(t, fixture), terms()) {
			if names[f.Name] {
				t.Errorf("%s: two figures are called %s", fixture, f.Name)
			}
			names[f.Name] = true
			root := parse(t, f.SVG)
			if root.attr("role") != "img" || root.attr("aria-label") != f.Title+". "+f.Alt {
				t.Errorf("%s: %s has the role %q and label %q", fixture, f.Name, root.attr("role"), root.attr("aria-label"))
			}
			if len(f.Alt) < 20 || len(f.Key) == 0 {
				t.Errorf("%s: %s says little: %q %q", fixture, f.Name, f.Alt, f.Key)
			}
			for _, s := range root.all() {
				switch s.XMLName.Local {
				case "svg", "style", "rect", "line", "circle", "path", "text":
				default:
					t.Errorf("%s: %s has a %s", fixture, f.Name, s.XMLName.Local)
				}
				for _, a := range s.Attrs {
					if a.Name.Local == "id" || a.Name.Local == "href" || strings.HasPrefix(a.Name.Local, "on") {
						t.Errorf("%s: %s has the attribute %s", fixture, f.Name, a.Name.Local)
					}
				}
			}
		}
		for _, kind := range []string{"elevation-sys-1", "fan-sys-1", "radon"} {
			if !names[kind] {
				t.Errorf("%s: no %s among %v", fixture, kind, names)
			}
		}
	}
}

// Every opening, hole, suction point, entry route and test is named in words.
func TestEverythingIsNamed(t *testing.T) {
	for _, fixture := range allFixtures {
		in := input(t, fixture)
		said := ""
		for _, f := range Figures(in, terms()) {
			said += f.Alt + "\n" + strings.Join(f.Key, "\n") + "\n"
		}
		job := view{in}
		lists := []place.Pointer{"/house/openings", "/derived/tests"}
		if len(job.list("/house/foundations/0/outline")) > 0 {
			lists = append(lists, "/entry_routes", "/systems/0/suction_points", "/diagnostics/communication_tests/0/holes")
		}
		for _, list := range lists {
			for i := range job.list(list) {
				if id := job.text(list.Append(i, "id")); !strings.Contains(said, id) {
					t.Errorf("%s: %s of %s is in no figure", fixture, id, list)
				}
			}
		}
	}
}

// Words stay on the canvas and do not cover each other, by the widths that the
// drawing itself reckons with.
func TestWordsHaveRoom(t *testing.T) {
	for _, fixture := range slices.Concat(allFixtures, faultyFixtures) {
		for _, f := range Figures(input(t, fixture), terms()) {
			root := parse(t, f.SVG)
			height, err := strconv.ParseFloat(strings.Fields(root.attr("viewBox"))[3], 64)
			if err != nil {
				t.Fatal(err)
			}
			texts, boxes := words(t, root)
			for i, b := range boxes {
				if b.x < -1 || b.x+b.w > figureWidth+1 || b.y < -1 || b.y+b.h > height+1 {
					t.Errorf("%s: %s: %q reaches %+v on a canvas of %v by %v", fixture, f.Name, texts[i].Text, b, figureWidth, height)
				}
			}
			for i, a := range boxes {
				for k, b := range boxes[:i] {
					if shared := a.overlap(b); shared > 0.15*math.Min(a.w*a.h, b.w*b.h) {
						t.Errorf("%s: %s: %q and %q cover each other", fixture, f.Name, texts[i].Text, texts[k].Text)
					}
				}
			}
		}
	}
}

// No line of a drawing, but for the grid of a chart, runs through words.
func TestLinesRunClearOfWords(t *testing.T) {
	for _, fixture := range slices.Concat(allFixtures, faultyFixtures) {
		for _, f := range Figures(input(t, fixture), terms()) {
			root := parse(t, f.SVG)
			texts, rooms := words(t, root)
			for _, line := range strokes(t, root) {
				for i, room := range rooms {
					if length := struck(t, line, room); length > 4 {
						t.Errorf("%s: %s: %.0f px of a line (%s) run through %q", fixture, f.Name, length, line.attr("class"), texts[i].Text)
					}
				}
			}
		}
	}
}

// A record can lack anything: whatever is taken out, every figure that is left
// has numbers for coordinates.
func TestFiguresOfIncompleteRecords(t *testing.T) {
	whole := input(t, house)
	delete(whole, "derived")
	text, err := json.Marshal(recorded(whole))
	if err != nil {
		t.Fatal(err)
	}
	var fields [][]any
	var value any
	if err := json.Unmarshal(text, &value); err != nil {
		t.Fatal(err)
	}
	listFields(value, nil, &fields)
	if len(fields) < 150 {
		t.Fatalf("only %d fields to take out", len(fields))
	}
	for _, path := range fields {
		var less any
		if err := json.Unmarshal(text, &less); err != nil {
			t.Fatal(err)
		}
		remove(less, path)
		data, err := json.Marshal(less)
		if err != nil {
			t.Fatal(err)
		}
		doc, err := record.ReadJSON("less.json", data, record.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		for _, f := range Figures(canonical(t, doc), terms()) {
			checkNumbers(t, fmt.Sprintf("without %v", path), f)
		}
	}
}

func checkNumbers(t *testing.T, about string, f Figure) {
	t.Helper()
	parse(t, f.SVG)
	if strings.Contains(f.SVG, "NaN") || strings.Contains(f.SVG, "Inf") {
		t.Errorf("%s: %s has coordinates that are no numbers", about, f.Name)
	}
}

// recorded turns canonical quantities back into what was typed.
func recorded(value any) any {
	switch v := value.(type) {
	case record.Measure:
		return v.Get("text")
	case map[string]any, record.Members:
		out := map[string]any{}
		for _, name := range record.Names(v) {
			out[name] = recorded(record.Get(v, name))
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, item := range v {
			out[i] = recorded(item)
		}
		return out
	}
	return value
}

func listFields(value any, at []any, out *[][]any) {
	switch v := value.(type) {
	case map[string]any:
		for name, item := range v {
			path := append(append([]any{}, at...), name)
			*out = append(*out, path)
			listFields(item, path, out)
		}
	case []any:
		for i, item := range v {
			listFields(item, append(append([]any{}, at...), i), out)
		}
	}
}

func remove(value any, path []any) {
	for _, step := range path[:len(path)-1] {
		switch v := value.(type) {
		case map[string]any:
			value = v[step.(string)]
		case []any:
			value = v[step.(int)]
		}
	}
	delete(value.(map[string]any), path[len(path)-1].(string))
}

// Odd sizes: no room, much room, everything in one place.
func TestFiguresOfOddHouses(t *testing.T) {
	handOver := `at: "2026-03-27T10:00:00-04:00", value: `
	for name, edits := range map[string][]edit{
		"an opening at the outlet":   {{"corner: {x: 6 ft, y: 29 ft 6 in, z: 11 ft}", "corner: {x: 11 ft, y: 30 ft 4 in, z: 17 ft}"}},
		"an opening of no size":      {{"width: 3 ft, height: 4 ft 6 in, facing: north}", "width: 0 ft, height: 0 ft, facing: north}"}},
		"a roof light":               {{"height: 4 ft 6 in, facing: north}", "height: 4 ft 6 in, facing: up}"}},
		"an outlet in the clouds":    {{"height_above_grade: 19 ft 3 in", "height_above_grade: 900 ft"}},
		"an outlet on the ground":    {{"height_above_grade: 19 ft 3 in", "height_above_grade: 1 in"}},
		"an outlet below the ground": {{"height_above_grade: 19 ft 3 in", "height_above_grade: -3 ft"}},
		"a slab like a string":       {{"{x: 40 ft, y: 29 ft 6 in}, {x: 0 ft, y: 29 ft 6 in}", "{x: 40 ft, y: 1 in}, {x: 0 ft, y: 1 in}"}},
		"a slab of no area":          {{"{x: 40 ft, y: 29 ft 6 in}, {x: 0 ft, y: 29 ft 6 in}", "{x: 40 ft, y: 0 ft}, {x: 0 ft, y: 0 ft}"}},
		"no radon at all":            {{"result: 0.9 pCi/L", "result: 0 pCi/L"}},
		"a mine":                     {{"result: 12.4 pCi/L", "result: 250000 pCi/L"}},
		"a gauge that blows":         {{handOver + "0.9", handOver + "-0.4"}},
		"a gauge off the scale":      {{handOver + "0.9", handOver + "40"}},
		"holes in one place":         {{"position: {x: 20 ft, y: 15 ft}", "position: {x: 3 ft, y: 26 ft}"}, {"position: {x: 3 ft, y: 3 ft}", "position: {x: 3 ft, y: 26 ft}"}},
	} {
		figures := Figures(input(t, house, edits...), terms())
		if len(figures) < 3 {
			t.Errorf("%s: only %d figures", name, len(figures))
		}
		for _, f := range figures {
			checkNumbers(t, name, f)
		}
	}
}

// Names come from profiles and records; none of them becomes markup.
func TestWordsAreNoMarkup(t *testing.T) {
	nasty := `</text><script>alert(1)</script>"&'<` + "\x1b\x00\u2028"
	terms := terms()
	terms.ClearanceText = nasty
	terms.Levels[0].Name, terms.Levels[0].Text, terms.Levels[0].Profile = nasty, nasty, nasty
	for _, f := range Figures(input(t, house), terms) {
		parse(t, f.SVG)
		if strings.Contains(f.SVG, "<script") || strings.Contains(f.SVG, "\x1b") {
			t.Errorf("%s lets markup or control characters through", f.Name)
		}
	}
}

func TestSameRecordSameDrawings(t *testing.T) {
	for _, fixture := range allFixtures {
		first := fmt.Sprint(Figures(input(t, fixture), terms()))
		for range 3 {
			if fmt.Sprint(Figures(input(t, fixture), terms())) != first {
				t.Fatalf("%s: drawings differ", fixture)
			}
		}
	}
}

// What all drawings of a job cost.
func BenchmarkFigures(b *testing.B) {
	in := input(b, house)
	for b.Loop() {
		Figures(in, terms())
	}
}
