package pipeline_test

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"testing"

	"github.com/slablint/slablint/internal/pipeline"
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

// Cost grows with the number of openings no faster than the number itself.
func BenchmarkOpenings(b *testing.B) {
	for _, n := range []int{1, 10, 100} {
		b.Run(fmt.Sprint(n), func(b *testing.B) {
			p := newPipeline(b, pipeline.Options{})
			doc := withOpenings(b, n)
			for b.Loop() {
				if _, errs := p.Run(context.Background(), doc, nil); len(errs) > 0 {
					b.Fatal(errs)
				}
			}
		})
	}
}

func withOpenings(b *testing.B, n int) *record.Document {
	b.Helper()
	value := read(b, "../../fixtures/demo/ready.yaml").Root.Value().(map[string]any)
	house := value["house"].(map[string]any)
	first := house["openings"].([]any)[0].(map[string]any)
	openings := make([]any, n)
	for i := range openings {
		copied := map[string]any{}
		for k, v := range first {
			copied[k] = v
		}
		copied["id"] = fmt.Sprintf("win-%d", i)
		openings[i] = copied
	}
	house["openings"] = openings
	data, err := json.Marshal(value)
	if err != nil {
		b.Fatal(err)
	}
	doc, err := record.ReadJSON("openings.json", data, record.Limits{})
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
