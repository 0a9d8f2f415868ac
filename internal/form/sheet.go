package form

import (
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"slices"
)

//go:embed sheet.tmpl
var sheetText string

var sheetTemplate = template.Must(template.New("sheet").Parse(sheetText))

// day is the order of the work: what to ask before what.
var day = []struct{ path, title string }{
	{"/job", "Before you go"},
	{"/house", "House"},
	{"/diagnostics", "Survey and diagnostics"},
	{"/entry_routes", "Entry routes"},
	{"/systems", "System"},
	{"/safety", "Crew safety"},
	{"/measurements", "Radon tests"},
	{"/closeout", "Papers and hand-over"},
	{"/evidence", "Photos"},
	{"/variances", "Variances"},
}

// WriteSheet writes the same questions as a page to print and fill in by hand,
// in the order of the day's work.
func WriteSheet(w io.Writer, fields []Field, s Start, notice string, cautions []string) error {
	type section struct {
		Title string
		Rows  []row
	}
	var sections []section
	for _, part := range day {
		i := slices.IndexFunc(fields, func(f Field) bool { return f.Path == part.path })
		if i < 0 {
			continue
		}
		sections = append(sections, section{part.title, rows(fields[i].Fields, s.given())})
	}
	err := sheetTemplate.Execute(w, map[string]any{"Start": s, "Sections": sections, "Notice": notice, "Cautions": cautions})
	if err != nil {
		return fmt.Errorf("sheet: %w", err)
	}
	return nil
}

// row is one line of the sheet: a heading, or a question with room to answer.
type row struct {
	Heading string
	Repeats bool // the heading stands for a list
	Label   string
	Boxes   []string // words to tick
	Unit    string
}

func rows(fields []Field, given map[string]string) []row {
	var plain, nested []row
	for _, f := range fields {
		switch {
		case f.Name == "id" || given[f.Path] != "":
			continue
		case len(f.Fields) > 0:
			inside := rows(f.Fields, given)
			if len(inside) == 0 {
				continue
			}
			nested = append(nested, row{Heading: f.Title, Repeats: f.Kind == "array"})
			nested = append(nested, inside...)
		case f.Kind == "yes-or-no":
			plain = append(plain, row{Label: f.Title, Boxes: []string{"yes", "no"}})
		case len(f.Choices) > 0:
			plain = append(plain, row{Label: f.Title, Boxes: f.Choices})
		default:
			plain = append(plain, row{Label: f.Title, Unit: unit(f)})
		}
	}
	return append(plain, nested...)
}

// unit is what to write behind the number.
func unit(f Field) string {
	if f.Kind != "quantity" {
		return ""
	}
	switch f.Dimension {
	case "time":
		return "date, time"
	case "date":
		return "date"
	case "length":
		return "ft in"
	case "pressure":
		return "inH2O or Pa"
	case "flow":
		return "cfm"
	case "radon":
		return "pCi/L"
	case "current":
		return "A"
	case "voltage":
		return "V"
	case "power":
		return "W"
	case "area":
		return "ft2"
	case "volume":
		return "gal"
	case "temperature":
		return "°F"
	case "duration":
		return "h"
	case "slope":
		return "in/ft or mm/m"
	case "angle":
		return "deg"
	case "exposure":
		return "WLM"
	case "velocity":
		return "fpm"
	case "ratio", "percent":
		return "%"
	case "number":
		return ""
	case "thermal-resistance":
		return "R"
	}
	return f.Dimension
}
