package drawing

import (
	"encoding/xml"
	"math"
	"os"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// edit replaces a piece of a record's text.
type edit struct{ old, with string }

// house is the record that tests change.
const house = "house"

// allFixtures are the invented jobs that every check goes over.
var allFixtures = []string{house, "demo", "slab", "block-wall", "crawlspace"}

// faultyFixtures are the same jobs with faults in them.
var faultyFixtures = []string{"demo/faulty", "slab/faulty", "block-wall/faulty", "crawlspace/faulty"}

// input is the house, changed, or a record of the fixtures, with derived values.
func input(t testing.TB, name string, edits ...edit) map[string]any {
	t.Helper()
	job, version, found := strings.Cut(name, "/")
	if !found {
		version = "ready"
	}
	file := filepath.Join("..", "..", "fixtures", job, version+".yaml")
	if name == house {
		file = filepath.Join("testdata", "house.yaml")
	}
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	text := string(data)
	for _, e := range edits {
		if !strings.Contains(text, e.old) {
			t.Fatalf("%s does not hold %q", file, e.old)
		}
		text = strings.Replace(text, e.old, e.with, 1)
	}
	doc, err := record.ReadYAML(file, []byte(text), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return canonical(t, doc)
}

func canonical(t testing.TB, doc *record.Document) map[string]any {
	t.Helper()
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	in, errs := doc.Canonical(shape)
	if len(errs) > 0 {
		t.Fatal(errs)
	}
	in["derived"] = derive.Derive(in, nil)
	return in
}

// terms are those of a profile with all that figures show. 10 ft and 2 ft are
// EPA 402-R-93-078, 14.2.8(3); 4.0 pCi/L is EPA 402/K-12/002; 20 % is
// ANSI/AARST CCAH 2020, exhibit 2.
func terms() Terms {
	return Terms{
		Clearance: 3.048, ClearanceText: "10 ft", Waiver: 0.6096, Standings: map[string]Standing{"sys-1/win-bed": TooClose},
		GaugeFall: -0.2, GaugeRise: 0.2,
		Levels: []Level{{Name: "action level", Profile: "us-epa-1994", Concentration: 148, Text: "4.0 pCi/L"}},
	}
}

func figure(t testing.TB, figures []Figure, name string) Figure {
	t.Helper()
	for _, f := range figures {
		if f.Name == name {
			return f
		}
	}
	t.Fatalf("no figure %s", name)
	return Figure{}
}

// shape is one element of a drawing.
type shape struct {
	XMLName xml.Name
	Attrs   []xml.Attr `xml:",any,attr"`
	Inside  []shape    `xml:",any"`
	Text    string     `xml:",chardata"`
}

func (s shape) attr(name string) string {
	for _, a := range s.Attrs {
		if a.Name.Local == name {
			return a.Value
		}
	}
	return ""
}

func (s shape) num(t testing.TB, name string) float64 {
	t.Helper()
	v, err := strconv.ParseFloat(s.attr(name), 64)
	if err != nil {
		t.Fatalf("%s of %s: %v", name, s.XMLName.Local, err)
	}
	return v
}

// is tells whether an element is of a kind and carries all the classes.
func (s shape) is(kind string, classes ...string) bool {
	if s.XMLName.Local != kind {
		return false
	}
	has := strings.Fields(s.attr("class"))
	for _, want := range classes {
		found := false
		for _, class := range has {
			found = found || class == want
		}
		if !found {
			return false
		}
	}
	return true
}

// all lists an element's descendants.
func (s shape) all() []shape {
	var out []shape
	for _, inside := range s.Inside {
		out = append(append(out, inside), inside.all()...)
	}
	return out
}

func parse(t testing.TB, svg string) shape {
	t.Helper()
	var root shape
	if err := xml.Unmarshal([]byte(svg), &root); err != nil {
		t.Fatalf("%v in:\n%s", err, svg)
	}
	return root
}

func find(root shape, kind string, classes ...string) []shape {
	var out []shape
	for _, s := range root.all() {
		if s.is(kind, classes...) {
			out = append(out, s)
		}
	}
	return out
}

// length of a line, px.
func (s shape) length(t testing.TB) float64 {
	t.Helper()
	return math.Hypot(s.num(t, "x2")-s.num(t, "x1"), s.num(t, "y2")-s.num(t, "y1"))
}

var pair = regexp.MustCompile(`[ML](-?[\d.]+) (-?[\d.]+)`)

// corners are the points of a path, px.
func (s shape) corners(t testing.TB) [][2]float64 {
	t.Helper()
	var out [][2]float64
	for _, m := range pair.FindAllStringSubmatch(s.attr("d"), -1) {
		x, errX := strconv.ParseFloat(m[1], 64)
		y, errY := strconv.ParseFloat(m[2], 64)
		if errX != nil || errY != nil {
			t.Fatalf("path %q", s.attr("d"))
		}
		out = append(out, [2]float64{x, y})
	}
	return out
}

// rounding is how far two coordinates of two decimals can move a length, px.
const rounding = 0.02

func near(t testing.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: got %.4f, want %.4f within %.4f", what, got, want, within)
	}
}

// words are the texts of a drawing with the room that they take, but for those
// along a wall, where nothing else stands.
func words(t testing.TB, root shape) (texts []shape, rooms []box) {
	t.Helper()
	for _, s := range find(root, "text") {
		if s.attr("transform") == "" {
			texts = append(texts, s)
			rooms = append(rooms, spot{s.attr("text-anchor"), s.num(t, "x"), s.num(t, "y")}.extent(s.attr("class"), s.Text))
		}
	}
	return texts, rooms
}

// strokes are the lines of a drawing and the sides of its boxes, but for the grid
// of a chart and the edges of what is only tinted.
func strokes(t testing.TB, root shape) []shape {
	t.Helper()
	var out []shape
	for _, s := range root.all() {
		switch {
		case s.is("line") && !s.is("line", "faint"):
			out = append(out, s)
		case s.is("rect", "ink"), s.is("rect", "bad"):
			left, top := s.num(t, "x"), s.num(t, "y")
			right, bottom := left+s.num(t, "width"), top+s.num(t, "height")
			for _, side := range [][4]float64{{left, top, right, top}, {left, bottom, right, bottom}, {left, top, left, bottom}, {right, top, right, bottom}} {
				line := shape{XMLName: xml.Name{Local: "line"}, Attrs: []xml.Attr{{Name: xml.Name{Local: "class"}, Value: s.attr("class")}}}
				for i, name := range []string{"x1", "y1", "x2", "y2"} {
					line.Attrs = append(line.Attrs, xml.Attr{Name: xml.Name{Local: name}, Value: num(side[i])})
				}
				out = append(out, line)
			}
		}
	}
	return out
}

// struck is how much of a line runs through the letters of words, px: their room
// without the free strip above and below them.
func struck(t testing.TB, line shape, room box) float64 {
	t.Helper()
	x1, y1, x2, y2 := line.num(t, "x1"), line.num(t, "y1"), line.num(t, "x2"), line.num(t, "y2")
	letters := box{room.x, room.y + 1, room.w, room.h - 3}
	const steps = 1000
	inside := 0
	for i := range steps {
		share := (float64(i) + 0.5) / steps
		x, y := x1+share*(x2-x1), y1+share*(y2-y1)
		if x > letters.x && x < letters.x+letters.w && y > letters.y && y < letters.y+letters.h {
			inside++
		}
	}
	return line.length(t) * float64(inside) / steps
}
