package form

import (
	"regexp"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/schema"
)

// What is written behind a number is a unit that the record takes, whichever
// field it is.
func TestSheetNamesUnits(t *testing.T) {
	fields, err := Fields(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	asked := 0
	var look func([]Field)
	look = func(fields []Field) {
		for _, f := range fields {
			look(f.Fields)
			if f.Kind != "quantity" {
				continue
			}
			asked++
			words := f.unit()
			switch words {
			case "", "date", "date, time":
				continue
			}
			for _, symbol := range strings.Split(strings.ReplaceAll(words, "ft in", "ft or in"), " or ") {
				if _, err := quantity.Parse(quantity.Dimension(f.Dimension), "1 "+symbol); err != nil {
					t.Errorf("%s asks for %q: %v", f.Path, symbol, err)
				}
			}
		}
	}
	look(fields)
	if asked < 50 {
		t.Errorf("only %d quantities looked at", asked)
	}
}

// A heading has something below it, and a box stays with its word.
func TestSheetIsTidy(t *testing.T) {
	fields := []Field{{Path: "/house", Fields: []Field{
		{Path: "/house/foundations", Title: "Foundation areas", Kind: "array", Fields: []Field{{Name: "id", Path: "/house/foundations/*/id"}}},
		{Path: "/house/garage", Title: "Garage", Kind: "object", Fields: []Field{{Path: "/house/garage/attached", Title: "Attached", Kind: "yes-or-no"}}},
		{Path: "/house/eave", Title: "Eave", Kind: "quantity", Dimension: "length"},
	}}}
	var out strings.Builder
	if err := WriteSheet(&out, fields, Start{Job: "J-<1>", Foundation: "slab"}, "A notice.", []string{"A caution."}); err != nil {
		t.Fatal(err)
	}
	page := out.String()
	for _, want := range []string{"<h3>Garage</h3>", `<span class="box"></span>yes`, "Eave", "A notice.", "A caution.", "J-&lt;1&gt;"} {
		if !strings.Contains(page, want) {
			t.Errorf("the sheet lacks %s", want)
		}
	}
	if strings.Contains(page, "Foundation areas") {
		t.Error("a heading stands over nothing")
	}
	if strings.Index(page, "Eave") > strings.Index(page, "Garage") {
		t.Error("what belongs to the house itself stands below the garage")
	}
	if at := regexp.MustCompile(`(?i)<script|https?://`).FindString(page); at != "" {
		t.Errorf("the sheet has %s", at)
	}
}
