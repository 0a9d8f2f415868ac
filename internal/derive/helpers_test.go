package derive_test

import (
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/validate"
	"github.com/slablint/slablint/schema"
)

// load reads a record that must be valid and gives its canonical form.
func load(t testing.TB, path ...string) map[string]any {
	t.Helper()
	name := filepath.Join(path...)
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return canonical(t, name, data)
}

func canonical(t testing.TB, name string, data []byte) map[string]any {
	t.Helper()
	doc, err := record.ReadYAML(name, data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	validator, err := validate.New()
	if err != nil {
		t.Fatal(err)
	}
	if errs := validator.Check(doc); len(errs) > 0 {
		t.Fatalf("%s is no valid record: %+v", name, errs)
	}
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	input, unreadable := doc.Canonical(shape)
	if len(unreadable) > 0 {
		t.Fatalf("%s: %v", name, unreadable[0])
	}
	return input
}

// si is a derived value in SI.
func si(t testing.TB, derived map[string]any, at place.Pointer) float64 {
	t.Helper()
	found, _ := record.At(derived, at.Append("si"))
	n, ok := found.(json.Number)
	if !ok {
		whole, _ := record.At(derived, at)
		t.Fatalf("%s is not determined: %v", at, whole)
	}
	x, err := n.Float64()
	if err != nil {
		t.Fatal(err)
	}
	return x
}
