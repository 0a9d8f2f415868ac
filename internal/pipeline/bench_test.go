package pipeline_test

import (
	"context"
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// What it costs to be ready for the first record: rulebook, schema, compiled
// profile stack.
func BenchmarkStart(b *testing.B) {
	doc := read(b, "../../fixtures/demo/ready.yaml")
	for b.Loop() {
		if _, errs := newPipeline(b, pipeline.Options{}).Run(context.Background(), doc, nil); len(errs) > 0 {
			b.Fatal(errs)
		}
	}
}

// One record through all steps; after many of them the rulebook runs as wasm.
func BenchmarkRecord(b *testing.B) {
	p := newPipeline(b, pipeline.Options{})
	data, err := os.ReadFile("../../fixtures/demo/ready.yaml")
	if err != nil {
		b.Fatal(err)
	}
	files := os.DirFS(filepath.Dir("../../fixtures/demo/ready.yaml"))
	b.ReportAllocs()
	for b.Loop() {
		doc, err := record.ReadYAML("ready.yaml", data, record.Limits{})
		if err != nil {
			b.Fatal(err)
		}
		if _, errs := p.Run(context.Background(), doc, files); len(errs) > 0 {
			b.Fatal(errs)
		}
	}
}

// Cost grows with the number of subjects no faster than the number itself; the
// metric is what each one of a hundred costs beside what a job with one costs.
func BenchmarkSubjects(b *testing.B) {
	for _, list := range []place.Pointer{"/house/openings", "/systems/0/suction_points"} {
		p := warm(b)
		one := time.Duration(0)
		for _, n := range []int{1, 10, 100} {
			b.Run(fmt.Sprintf("%s=%d", list.Last(), n), func(b *testing.B) {
				doc := repeated(b, list, n)
				for b.Loop() {
					if _, errs := p.Run(context.Background(), doc, nil); len(errs) > 0 {
						b.Fatal(errs)
					}
				}
				each := b.Elapsed() / time.Duration(b.N)
				if n == 1 {
					one = each
				} else if one > 0 {
					b.ReportMetric(float64(each-one)/float64(n-1)/float64(one), "of-one/subject")
				}
			})
		}
	}
}

// warm is a pipeline that has seen enough records to take the fast way.
func warm(b *testing.B) *pipeline.Pipeline {
	b.Helper()
	p := newPipeline(b, pipeline.Options{})
	doc := read(b, "../../fixtures/demo/ready.yaml")
	for range 50 {
		if _, errs := p.Run(context.Background(), doc, nil); len(errs) > 0 {
			b.Fatal(errs)
		}
	}
	return p
}

// repeated is the demonstration job with the first entry of a list n times
// under different ids.
func repeated(b *testing.B, list place.Pointer, n int) *record.Document {
	b.Helper()
	value := read(b, "../../fixtures/demo/ready.yaml").Root.Value()
	found, _ := record.At(value, list)
	first := found.([]any)[0].(map[string]any)
	copies := make([]any, n)
	for i := range copies {
		copied := maps.Clone(first)
		if i > 0 { // others name the first one
			copied["id"] = fmt.Sprintf("copy-%d", i)
		}
		copies[i] = copied
	}
	parent, _ := record.At(value, list.Parent())
	parent.(map[string]any)[list.Last()] = copies
	data, err := json.Marshal(value)
	if err != nil {
		b.Fatal(err)
	}
	doc, err := record.ReadJSON("repeated.json", data, record.Limits{})
	if err != nil {
		b.Fatal(err)
	}
	return doc
}

// The rulebook as OPA compiles it, apart from everything else.
func BenchmarkCompileRulebook(b *testing.B) {
	for b.Loop() {
		rb, err := rulebook.Builtin()
		if err != nil {
			b.Fatal(err)
		}
		selection, err := rb.Select("us-epa-1994")
		if err != nil {
			b.Fatal(err)
		}
		if _, err := selection.Compile(); err != nil {
			b.Fatal(err)
		}
	}
}
