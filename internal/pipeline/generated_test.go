package pipeline_test

import (
	"cmp"
	"encoding/json"
	"flag"
	"fmt"
	"maps"
	"math/rand/v2"
	"path/filepath"
	"runtime/debug"
	"slices"
	"strconv"
	"testing"

	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

var (
	generated = flag.Int("generated", 12, "how many records to make up")
	firstSeed = flag.Uint64("first-seed", 1, "seed of the first record made up")
)

// perRecord is how many fields are taken from each record made up, one by one.
const perRecord = 25

// What holds for the fixtures holds for records that nobody would write: with
// values that contradict each other, lists of several things, blanks, passive
// devices and numbers that cannot be. Half of them start from a fixture, the
// others from nothing. The seeds are fixed.
func TestDeletingNeverHelpsInGeneratedRecords(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: allProfiles})
	known := fieldsRead(t)
	root := jobSchema(t)
	defer debug.SetGCPercent(debug.SetGCPercent(400))
	starts := fixtures(t, "ready")
	records := *generated
	if testing.Short() {
		records /= 6
	}
	judged, taken := int64(0), map[string]int{}
	valid := 0
	for i := 0; valid < records && i < 8*records; i++ {
		seed := *firstSeed + uint64(i)
		g := &generator{Rand: rand.New(rand.NewPCG(seed, 0)), root: root, lists: map[place.Pointer][]string{}}
		var start any
		folder := filepath.Dir(starts[0])
		if g.IntN(2) == 0 {
			file := starts[g.IntN(len(starts))]
			start, folder = read(t, file).Root.Value(), filepath.Dir(file)
		}
		doc := g.record(t, fmt.Sprintf("seed %d", seed), start)
		d := newDeletion(p, doc, folder)
		if d == nil {
			continue // pipe in disorder, or an opening of two kinds: told as mistakes
		}
		valid++
		d.checkAll(t, g.seldom(members(doc.Root, place.Root), taken), known)
		judged += d.judged.Load()
	}
	if valid < records {
		t.Errorf("only %d of the records could be judged", valid)
	}
	if least := int64(records) * perRecord / 3; judged < least {
		t.Errorf("only %d fields came to be judged, want %d", judged, least)
	}
}

// seldom chooses fields that were taken out least in other records, each of its
// kind once.
func (g *generator) seldom(fields []place.Pointer, taken map[string]int) []place.Pointer {
	g.Shuffle(len(fields), func(i, j int) { fields[i], fields[j] = fields[j], fields[i] })
	slices.SortStableFunc(fields, func(a, b place.Pointer) int { return cmp.Compare(taken[template(a)], taken[template(b)]) })
	kinds := map[string]bool{}
	var out []place.Pointer
	for _, field := range fields {
		if kind := template(field); !kinds[kind] && len(out) < perRecord {
			kinds[kind] = true
			taken[kind]++
			out = append(out, field)
		}
	}
	return out
}

// jobShape is as much of the record's schema as it takes to make one up.
type jobShape struct {
	Type       any                  `json:"type"`
	Dimension  string               `json:"dimension"`
	Enum       []any                `json:"enum"`
	Examples   []any                `json:"examples"`
	Properties map[string]*jobShape `json:"properties"`
	Items      *jobShape            `json:"items"`
	Required   []string             `json:"required"`
	MinItems   int                  `json:"minItems"`
	MaxItems   int                  `json:"maxItems"`
	Refers     string               `json:"refers"`
	Ref        string               `json:"$ref"`
	Defs       map[string]*jobShape `json:"$defs"`
}

func jobSchema(t *testing.T) *jobShape {
	t.Helper()
	var root jobShape
	if err := json.Unmarshal(schema.Job(), &root); err != nil {
		t.Fatal(err)
	}
	return &root
}

// generator makes up records that the schema allows.
type generator struct {
	*rand.Rand
	root  *jobShape
	lists map[place.Pointer][]string // ids of each list
	made  int                        // ids made up
	later []func()                   // references, put in when all ids are known
}

// often is how likely a field is written down, or changed where it was before.
func (g *generator) often(share float64) bool { return g.Float64() < share }

func (g *generator) record(t *testing.T, name string, start any) *record.Document {
	t.Helper()
	value := g.value(g.root, place.Root, start)
	object := value.(map[string]any)
	object["record"] = 1
	delete(object, "variances") // they excuse findings, which is another matter
	for _, f := range g.later {
		f()
	}
	data, err := json.Marshal(value)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := record.ReadJSON(name, data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// value makes up what stands at a place, from what stood there before.
func (g *generator) value(s *jobShape, at place.Pointer, before any) any {
	switch {
	case s.Ref != "" && s.Dimension == "":
		return g.value(g.root.Defs[s.Ref[len("#/$defs/"):]], at, before)
	case s.Dimension != "":
		return g.quantity(s, before)
	case len(s.Properties) > 0:
		return g.object(s, at, before)
	case s.Items != nil:
		return g.list(s, at, before)
	}
	return g.leaf(s, before)
}

// share of fields that are changed in, or added to, what was there before.
const (
	changed = 0.08
	added   = 0.25
	told    = 0.85 // of fields written down in what is new
)

func (g *generator) object(s *jobShape, at place.Pointer, before any) any {
	old, was := before.(map[string]any)
	out := map[string]any{}
	for _, name := range slices.Sorted(maps.Keys(s.Properties)) {
		field, below := s.Properties[name], at.Append(name)
		value, there := old[name]
		switch {
		case name == "id" && at != "/job":
			if !there {
				g.made++
				value = "made-" + strconv.Itoa(g.made)
			}
			g.lists[at.Parent()] = append(g.lists[at.Parent()], value.(string))
			out[name] = value
		case below == "/job/profiles":
			out[name] = []any{"us-epa-1994"} // the pipeline is given others
		case !there && !slices.Contains(s.Required, name) && !(was && g.often(added) || !was && g.often(told)):
		case (field.Refers != "" || field.Items != nil && field.Items.Refers != "") && there && !g.often(changed):
			out[name] = value
		case field.Refers != "":
			g.later = append(g.later, func() {
				if ids := g.ids(field, below); len(ids) > 0 {
					out[name] = ids[g.IntN(len(ids))]
				}
			})
		case field.Items != nil && field.Items.Refers != "":
			g.later = append(g.later, func() { out[name] = g.some(g.ids(field.Items, below)) })
		default:
			out[name] = g.value(field, below, value)
		}
	}
	return out
}

func (g *generator) list(s *jobShape, at place.Pointer, before any) any {
	old, was := before.([]any)
	out := []any{}
	if len(s.Items.Enum) > 0 {
		if was && !g.often(changed) {
			return old
		}
		for _, word := range s.Items.Enum {
			if g.often(0.5) {
				out = append(out, word)
			}
		}
		return out
	}
	for i, item := range old {
		out = append(out, g.value(s.Items, at.Append(i), item))
	}
	more := g.IntN(4)
	if was && !g.often(changed) {
		more = 0
	}
	more = max(more, s.MinItems-len(out))
	if s.MaxItems > 0 {
		more = min(more, s.MaxItems-len(out))
	}
	for range more {
		out = append(out, g.value(s.Items, at.Append(len(out)), nil))
	}
	return out
}

// ids are those that a reference may name.
func (g *generator) ids(s *jobShape, at place.Pointer) []string {
	if s.Refers == "*" {
		return g.lists["/evidence"]
	}
	target, own := place.Root, at.Split()
	for i, token := range place.Pointer(s.Refers).Split() {
		if token == "*" {
			token = own[i]
		}
		target = target.Append(token)
	}
	return g.lists[target]
}

// some takes each with even chance.
func (g *generator) some(all []string) []any {
	out := []any{}
	for _, one := range all {
		if g.often(0.5) {
			out = append(out, one)
		}
	}
	return out
}

func (g *generator) leaf(s *jobShape, before any) any {
	if before != nil && !g.often(changed) {
		return before
	}
	switch {
	case len(s.Enum) > 0:
		return s.Enum[g.IntN(len(s.Enum))]
	case s.Type == "boolean":
		return g.IntN(2) == 0
	case s.Type == "integer":
		return g.IntN(5)
	case s.Type == "number":
		return []any{0, 0.5, 1, 1.5, 4, 50, 2000}[g.IntN(7)]
	}
	return s.Examples[0]
}

func (g *generator) quantity(s *jobShape, before any) any {
	if before != nil && !g.often(changed) {
		return before
	}
	if len(s.Examples) > 0 && g.often(0.5) {
		return s.Examples[0]
	}
	texts := quantities[s.Dimension]
	return texts[g.IntN(len(texts))]
}

// quantities are texts of each dimension from too little to too much.
var quantities = map[string][]string{
	"length":             {"0 in", "1/4 in", "3 in", "6 in", "12 in", "30 in", "5 ft", "8 ft", "10 ft", "12 ft", "25 ft", "40 ft", "-2 ft"},
	"area":               {"10 in2", "40 in2", "90 ft2", "600 ft2", "1,250 ft2", "2,500 ft2"},
	"volume":             {"1 gal", "5 gal", "10 gal", "30 gal"},
	"pressure":           {"-1 inH2O", "-20 Pa", "-5 Pa", "-1 Pa", "0 Pa", "1 Pa", "0.5 inH2O", "1.1 inH2O", "3 inH2O"},
	"flow":               {"0 cfm", "20 cfm", "60 cfm", "120 cfm", "-5 cfm"},
	"radon":              {"0.3 pCi/L", "1.9 pCi/L", "2.5 pCi/L", "3.9 pCi/L", "4.5 pCi/L", "12 pCi/L", "190 Bq/m3"},
	"exposure":           {"0.1 WLM", "2 WLM", "5 WLM"},
	"temperature":        {"-20 F", "5 F", "30 F", "48 F", "70 F", "95 F"},
	"power":              {"10 W", "72 W", "600 W", "2000 W"},
	"voltage":            {"24 V", "120 V", "240 V"},
	"current":            {"1 A", "15 A", "20 A"},
	"slope":              {"0 in per ft", "1/8 in per ft", "1/4 in per ft", "1 in per ft"},
	"ratio":              {"0 %", "10 %", "30 %", "99.97 %"},
	"angle":              {"0 deg", "30 deg", "45 deg", "90 deg"},
	"duration":           {"0 h", "10 h", "48 h", "96 h", "100 days", "2 years", "5 years", "20 years"},
	"thermal-resistance": {"R-2", "R-4", "R-8"},
	"date":               {"2015-09-14", "2026-02-20", "2026-03-05", "2026-03-17", "2026-03-18", "2026-03-30", "2026-06-01", "2027-06-30", "2028-03-21"},
	"time": {
		"2026-02-20T09:00:00-05:00", "2026-03-17T15:30:00-05:00", "2026-03-17T18:00:00-05:00", "2026-03-18T09:00:00-05:00",
		"2026-03-19T09:00:00-05:00", "2026-03-21T15:00:00-05:00", "2026-03-24T15:00:00-05:00", "2026-07-24T15:00:00-05:00",
	},
}
