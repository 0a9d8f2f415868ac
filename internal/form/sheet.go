package form

import (
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strings"
)

//go:embed sheet.tmpl
var sheetText string

var sheetTemplate = template.Must(template.New("sheet").Funcs(template.FuncMap{"number": func(i int) int { return i + 1 }}).Parse(sheetText))

// day is the order of the work: what to ask before what. A place named on its
// own is not asked again with what it lies in.
var day = []struct {
	title string
	paths []string
}{
	{"Before you go", []string{"/job"}},
	{"Crew safety", []string{"/safety"}},
	{"House", []string{"/house"}},
	{"Survey and diagnostics", []string{"/diagnostics"}},
	{"Entry routes", []string{"/entry_routes"}},
	{"System", []string{"/systems"}},
	{"With the system running", []string{"/diagnostics/smoke_tests", "/diagnostics/backdraft_tests"}},
	{"Radon tests", []string{"/measurements"}},
	{"Papers and hand-over", []string{"/closeout"}},
	{"Photos and documents", []string{"/evidence"}},
	{"Variances", []string{"/variances"}},
}

// WriteSheet writes the same questions as a page to print and fill in by hand,
// in the order of the day's work.
func WriteSheet(w io.Writer, fields []Field, s Start, notice string, cautions []string) error {
	type section struct {
		Title  string
		Blocks []block
	}
	own := map[string]bool{}
	for _, part := range day {
		for _, path := range part.paths {
			own[path] = true
		}
	}
	var sections []section
	lines := 0
	for _, part := range day {
		b := builder{given: s.given(), own: own}
		for _, path := range part.paths {
			if f, ok := find(fields, path); ok {
				b.top(f)
			}
		}
		if len(b.blocks) > 0 {
			sections = append(sections, section{part.title, b.blocks})
			lines += b.lines() + 1
		}
	}
	err := sheetTemplate.Execute(w, map[string]any{
		"Start": s, "Sections": sections, "Notice": notice, "Cautions": cautions, "Room": room(lines),
	})
	if err != nil {
		return fmt.Errorf("sheet: %w", err)
	}
	return nil
}

// room is how much room a line gets, so that many questions still fit on four
// pages and few are easy to write on.
func room(lines int) string {
	switch {
	case lines > 520:
		return "dense"
	case lines > 400:
		return "tight"
	case lines > 220:
		return "close"
	}
	return "wide"
}

func find(fields []Field, path string) (Field, bool) {
	for _, f := range fields {
		if f.Path == path {
			return f, true
		}
		if inner, ok := find(f.Fields, path); ok {
			return inner, true
		}
	}
	return Field{}, false
}

// block is a heading with questions that have one answer, or one answer for
// each entry of a list.
type block struct {
	Heading string
	Grids   [][]int // numbers of the entries, three to a grid; none where there is one answer
	Rows    []row
}

// row is one question with room to answer, or the name of a part of an entry.
type row struct {
	Part  string
	Path  string
	Label string
	Unit  string
	Words []string // to choose from: boxes to tick, in a grid the numbers to write
	YesNo bool
	First string // what is known of the first entry
}

// builder collects the blocks of one section.
type builder struct {
	given  map[string]string
	own    map[string]bool
	blocks []block
}

// top starts with what a section is about. There is one sheet for each system;
// other lists are grids.
func (b *builder) top(f Field) {
	if f.Kind == "array" && f.Path != "/systems" {
		b.list(f, "")
		return
	}
	b.object(f, "")
}

// object adds the plain questions of an object and then what lies in it.
func (b *builder) object(f Field, heading string) {
	var rows []row
	for _, m := range f.Fields {
		if len(m.Fields) == 0 && m.Name != "id" && b.given[m.Path] == "" {
			rows = append(rows, question(m))
		}
	}
	if len(rows) > 0 {
		b.blocks = append(b.blocks, block{Heading: heading, Rows: rows})
	}
	for _, m := range f.Fields {
		switch {
		case len(m.Fields) == 0 || b.own[m.Path]:
		case m.Kind == "array":
			b.list(m, "")
		default:
			b.object(m, m.Title)
		}
	}
}

// few is how many lines a grid may have to be printed twice.
const few = 4

// list adds a grid with a column for each entry, and one for each list in it,
// where of says to which entry of the outer list a column belongs.
func (b *builder) list(f Field, of string) {
	g := block{Heading: f.Title, Grids: [][]int{{1, 2, 3}}}
	if of != "" {
		g.Rows = append(g.Rows, row{Label: of + ", which number"})
	}
	var lists []Field
	b.columns(f, &g, &lists)
	if len(g.Rows) <= few {
		g.Grids = append(g.Grids, []int{4, 5, 6})
	}
	if len(g.Rows) > 0 {
		b.blocks = append(b.blocks, g)
	}
	for _, inner := range lists {
		b.list(inner, f.Title)
	}
}

// columns adds the lines of one entry; objects in it are part of the entry.
func (b *builder) columns(f Field, g *block, lists *[]Field) {
	for _, m := range f.Fields {
		switch {
		case m.Name == "id":
		case len(m.Fields) == 0:
			r := question(m)
			r.First = b.given[m.Path]
			g.Rows = append(g.Rows, r)
		case m.Kind == "array":
			*lists = append(*lists, m)
		default:
			g.Rows = append(g.Rows, row{Part: m.Title})
			b.columns(m, g, lists)
		}
	}
}

func question(f Field) row {
	r := row{Path: f.Path, Label: f.Title, Unit: f.unit(), Words: f.Choices, YesNo: f.Kind == "yes-or-no"}
	if list, ok := strings.CutPrefix(f.Refers, "/"); ok {
		r.Unit = "number in " + strings.ReplaceAll(list[strings.LastIndex(list, "/")+1:], "_", " ")
	}
	return r
}

// lines is about how many lines of print the blocks take.
func (b *builder) lines() int {
	n := 0
	for _, block := range b.blocks {
		n++
		for _, r := range block.Rows {
			n += 1 + len(strings.Join(r.Words, "xxx"))/50
		}
		if len(block.Grids) > 1 {
			n += len(block.Rows)
		}
	}
	return n
}

// units are what to write behind a number, in the trade's units and in SI.
var units = map[string]string{
	"angle": "deg", "area": "ft2 or m2", "current": "A", "date": "date", "duration": "h or d or years", "exposure": "WLM",
	"flow": "cfm or L/s", "length": "ft in or m", "number": "", "power": "W", "pressure": "inH2O or Pa",
	"radon": "pCi/L or Bq/m3", "ratio": "%", "slope": "in/ft or mm/m", "temperature": "°F or °C",
	"thermal-resistance": "R", "time": "date, time", "velocity": "fpm", "voltage": "V", "volume": "gal or L",
}

// unit is what to write behind the number; no number goes without.
func (f Field) unit() string {
	if f.Kind != "quantity" {
		return ""
	}
	if unit, ok := units[f.Dimension]; ok {
		return unit
	}
	return f.Dimension
}
