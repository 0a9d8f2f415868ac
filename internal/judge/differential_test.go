package judge

import (
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
	"github.com/slablint/slablint/internal/validate"
	"github.com/slablint/slablint/schema"
)

var records = flag.Int("records", 100, "how many changed records both evaluators judge")

// Both evaluators say the same of every fixture and of records that are changed
// at random: fields taken out, numbers put on a limit, words exchanged. The
// stack holds every requirement there is.
func TestBothEvaluatorsAgree(t *testing.T) {
	bench := newBench(t)
	cases := make(chan changed)
	var workers sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for c := range cases {
				bench.compare(t, c)
			}
		})
	}
	for _, base := range bench.bases {
		cases <- base
	}
	dice := dice(1994)
	for made, tried := 0, 0; made < *records; tried++ {
		if tried > 20**records {
			t.Errorf("only %d of %d changed records can be judged", made, tried)
			break
		}
		c, ok := bench.change(t, &dice)
		if ok {
			made++
			cases <- c
		}
	}
	close(cases)
	workers.Wait()
	if bench.verdicts < 100*len(bench.bases) {
		t.Errorf("only %d findings compared", bench.verdicts)
	}
	t.Logf("%d findings compared", bench.verdicts)
}

// bench holds both evaluators and what records are changed with.
type bench struct {
	judge     *Judge
	fast      *wasm
	validator *validate.Validator
	shape     *record.Shape
	bases     []changed
	limits    map[quantity.Dimension][]string // as the profiles write them
	words     map[string][]string             // name of a field -> what the schema lets it say

	mu       sync.Mutex
	verdicts int
}

// changed is one record and what was done to it.
type changed struct {
	doc   *record.Document
	files fs.FS
	steps []string
}

func newBench(t testing.TB) *bench {
	t.Helper()
	book, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	selection, err := book.Select(book.ProfileNames()...)
	if err != nil {
		t.Fatal(err)
	}
	if asked, all := len(selection.Asked()), len(book.Requirements()); asked != all {
		t.Errorf("the profiles together ask %d of %d requirements", asked, all)
	}
	b := &bench{limits: map[quantity.Dimension][]string{}, words: map[string][]string{}}
	if b.validator, err = validate.New(); err != nil {
		t.Fatal(err)
	}
	if b.shape, err = record.ParseShape(schema.Job()); err != nil {
		t.Fatal(err)
	}
	derived, err := record.ParseShape(schema.Derived())
	if err != nil {
		t.Fatal(err)
	}
	ctx := context.Background()
	if b.judge, err = New(ctx, selection, b.shape.With("derived", derived)); err != nil {
		t.Fatal(err)
	}
	if b.fast, err = newWasm(ctx, selection, b.judge.topdown); err != nil {
		t.Fatal(err)
	}
	b.readLimits(book)
	var job any
	if err := json.Unmarshal(schema.Job(), &job); err != nil {
		t.Fatal(err)
	}
	b.readWords("", job)
	files, err := filepath.Glob("../../fixtures/*/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no fixtures: %v", err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		doc, err := record.ReadYAML(file, data, record.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		if len(b.validator.Check(doc)) == 0 {
			b.bases = append(b.bases, changed{doc: doc, files: os.DirFS(filepath.Dir(file))})
		}
	}
	return b
}

func (b *bench) readLimits(book *rulebook.Rulebook) {
	for _, profile := range book.ProfileNames() {
		selection, err := book.Select(profile)
		if err != nil {
			continue // an overlay that needs others below it
		}
		for _, name := range selection.Asked() {
			row, _ := selection.Row(name)
			for _, limit := range slices.Sorted(maps.Keys(row.Limits)) {
				dim := quantity.Dimension(selection.Requirement(name).Limits[limit].Dimension)
				if text := row.Limits[limit].Text; row.Limits[limit].SI != "" && !slices.Contains(b.limits[dim], text) {
					b.limits[dim] = append(b.limits[dim], text)
				}
			}
		}
	}
}

func (b *bench) readWords(name string, node any) {
	switch v := node.(type) {
	case []any:
		for _, item := range v {
			b.readWords(name, item)
		}
	case map[string]any:
		list, _ := v["enum"].([]any)
		for _, word := range list {
			if s, ok := word.(string); ok {
				b.words[name] = append(b.words[name], s)
			}
		}
		for _, key := range slices.Sorted(maps.Keys(v)) {
			inner := key
			if key == "items" {
				inner = name
			}
			b.readWords(inner, v[key])
		}
	}
}

// dice gives the same throws each time (xorshift, Marsaglia 2003).
type dice uint64

func (d *dice) throw(sides int) int {
	*d ^= *d << 13
	*d ^= *d >> 7
	*d ^= *d << 17
	return int(uint64(*d) >> 33 % uint64(sides))
}

// member is one member of an object with what the schema says of it.
type member struct {
	object map[string]any
	name   string
	shape  *record.Shape
}

func members(value any, shape *record.Shape) []member {
	var out []member
	switch v := value.(type) {
	case []any:
		for _, item := range v {
			out = append(out, members(item, shape.Items())...)
		}
	case map[string]any:
		if shape.Dimension() != "" {
			return nil
		}
		for _, name := range slices.Sorted(maps.Keys(v)) {
			out = append(out, member{v, name, shape.Field(name)})
			out = append(out, members(v[name], shape.Field(name))...)
		}
	}
	return out
}

// change takes a fixture and does one to six things to it; ok is false when the
// result can no longer be judged.
func (b *bench) change(t *testing.T, d *dice) (c changed, ok bool) {
	t.Helper()
	base := b.bases[d.throw(len(b.bases))]
	value := base.doc.Root.Value()
	for range 1 + d.throw(6) {
		all := members(value, b.shape)
		if len(all) == 0 {
			return c, false
		}
		m := all[d.throw(len(all))]
		limits, words := b.limits[m.shape.Dimension()], b.words[m.name]
		was := m.object[m.name]
		text, isText := was.(string)
		switch now := was.(type) {
		case bool:
			m.object[m.name] = !now
		case json.Number:
			m.object[m.name] = json.Number(fmt.Sprint(d.throw(5)))
		default:
			switch {
			case m.shape.Dimension() != "" && len(limits) > 0 && d.throw(4) > 0:
				m.object[m.name] = limits[d.throw(len(limits))]
			case isText && len(words) > 0 && slices.Contains(words, text) && d.throw(4) > 0:
				m.object[m.name] = words[d.throw(len(words))]
			default:
				delete(m.object, m.name)
			}
		}
		c.steps = append(c.steps, fmt.Sprintf("%s: %v became %v", m.name, was, m.object[m.name]))
	}
	data, err := json.Marshal(value)
	if err != nil {
		t.Fatal(err)
	}
	if c.doc, err = record.ReadJSON(base.doc.Name, data, record.Limits{}); err != nil {
		t.Fatal(err)
	}
	c.files = base.files
	_, unreadable := c.doc.Canonical(b.shape)
	return c, len(b.validator.Check(c.doc)) == 0 && len(unreadable) == 0
}

func (b *bench) compare(t *testing.T, c changed) {
	about := c.doc.Name + " " + strings.Join(c.steps, "; ")
	ctx := context.Background()
	input, _ := c.doc.Canonical(b.shape)
	input["derived"] = derive.Derive(input, c.files)
	slow, err := b.judge.topdown.ask(ctx, input, b.judge.names)
	if err != nil {
		t.Errorf("%s: %v", about, err)
		return
	}
	fast, err := b.fast.ask(ctx, input, b.judge.names)
	if err != nil {
		t.Errorf("%s: as wasm: %v", about, err)
		return
	}
	all := func(string) bool { return true }
	want, got := b.judge.expand(c.doc, input, slow, all), b.judge.expand(c.doc, input, fast, all)
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("%s: the evaluators differ (-reference +wasm)\n%s", about, diff)
	}
	b.mu.Lock()
	b.verdicts += len(want.Findings)
	b.mu.Unlock()
}

// The fast evaluator is given what the rules read and little else: most of a
// derived record says how its values came about.
func TestFastEvaluatorReadsLittle(t *testing.T) {
	bench := newBench(t)
	given, whole := 0, 0
	for _, base := range bench.bases {
		input, _ := base.doc.Canonical(bench.shape)
		input["derived"] = derive.Derive(input, base.files)
		all, err := json.Marshal(record.Plain(input))
		if err != nil {
			t.Fatal(err)
		}
		read, err := bench.fast.program.encoder.append(nil, input)
		if err != nil {
			t.Fatal(err)
		}
		given, whole = given+len(read), whole+len(all)
	}
	if 2*given > whole {
		t.Errorf("%d of %d bytes are given", given, whole)
	}
}
