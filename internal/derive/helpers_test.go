package derive_test

import (
	"bytes"
	"encoding/json"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/validate"
	"github.com/slablint/slablint/schema"
)

var validator = sync.OnceValues(validate.New)

// load reads a record that must be valid and gives its canonical form.
func load(t testing.TB, path ...string) map[string]any {
	t.Helper()
	name := filepath.Join(path...)
	return canonical(t, name, source(t, name))
}

func source(t testing.TB, name string) []byte {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	return data
}

func canonical(t testing.TB, name string, data []byte) map[string]any {
	t.Helper()
	doc, err := record.ReadYAML(name, data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	v, err := validator()
	if err != nil {
		t.Fatal(err)
	}
	if errs := v.Check(doc); len(errs) > 0 {
		t.Fatalf("%s is no valid record: %+v", name, errs)
	}
	return asRead(t, doc)
}

// asRead is the canonical form of a record that is known to be valid.
func asRead(t testing.TB, doc *record.Document) map[string]any {
	t.Helper()
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	input, unreadable := doc.Canonical(shape)
	if len(unreadable) > 0 {
		t.Fatalf("%s: %v", doc.Name, unreadable[0])
	}
	return input
}

// variant is testdata/one.yaml with texts replaced, each of which must be there
// once. Old and new alternate.
func variant(t testing.TB, oldNew ...string) map[string]any {
	t.Helper()
	text := string(source(t, "testdata/one.yaml"))
	for i := 0; i < len(oldNew); i += 2 {
		if n := strings.Count(text, oldNew[i]); n != 1 {
			t.Fatalf("%q stands %d times in the record", oldNew[i], n)
		}
		text = strings.Replace(text, oldNew[i], oldNew[i+1], 1)
	}
	return canonical(t, "variant of one.yaml", []byte(text))
}

// document is what is derived from a record, in the types of encoding/json.
func document(input map[string]any, files fs.FS) map[string]any {
	return record.Plain(derive.Derive(input, files)).(map[string]any)
}

// value is a derived value, which must be there.
func value(t testing.TB, derived map[string]any, at place.Pointer) map[string]any {
	t.Helper()
	found, ok := record.At(derived, at)
	v, isValue := found.(map[string]any)
	if !ok || !isValue {
		t.Fatalf("%s is not there: %v", at, found)
	}
	return v
}

// si is a derived value in SI, which must be determined.
func si(t testing.TB, derived map[string]any, at place.Pointer) float64 {
	t.Helper()
	v := value(t, derived, at)
	n, ok := v["si"].(json.Number)
	if !ok {
		t.Fatalf("%s is not determined: %v", at, v)
	}
	x, err := n.Float64()
	if err != nil {
		t.Fatal(err)
	}
	return x
}

// lacks is the places for which a derived value is undetermined; none when it
// is determined.
func lacks(t testing.TB, derived map[string]any, at place.Pointer) []string {
	t.Helper()
	list, _ := value(t, derived, at)["undetermined"].([]any)
	var places []string
	for _, p := range list {
		places = append(places, p.(string))
	}
	return places
}

// parse is a quantity in SI.
func parse(t testing.TB, dim quantity.Dimension, text string) float64 {
	t.Helper()
	q, err := quantity.Parse(dim, text)
	if err != nil {
		t.Fatal(err)
	}
	return q.Float()
}

var derivedSchema = sync.OnceValues(func() (*jsonschema.Schema, error) {
	c := jsonschema.NewCompiler()
	if err := c.AddResource("derived.schema.json", bytes.NewReader(schema.Derived())); err != nil {
		return nil, err
	}
	return c.Compile("derived.schema.json")
})

// keepsSchema holds a document against the schema of derived values.
func keepsSchema(t testing.TB, derived map[string]any) {
	t.Helper()
	s, err := derivedSchema()
	if err != nil {
		t.Fatal(err)
	}
	if err := s.Validate(derived); err != nil {
		t.Fatalf("not as the schema of derived values has it: %#v", err)
	}
}

// walk calls each for every value in a document, with its pointer.
func walk(doc any, at place.Pointer, each func(at place.Pointer, v map[string]any)) {
	switch d := doc.(type) {
	case map[string]any:
		if _, known := d["si"]; known || d["undetermined"] != nil {
			each(at, d)
			return
		}
		for key, inner := range d {
			walk(inner, at.Append(key), each)
		}
	case []any:
		for i, inner := range d {
			walk(inner, at.Append(i), each)
		}
	}
}

func asJSON(t testing.TB, v any) string {
	t.Helper()
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	if err := enc.Encode(v); err != nil {
		t.Fatal(err)
	}
	return out.String()
}

// records are the records that every general test goes through.
var records = []string{
	"../../fixtures/demo/ready.yaml", "testdata/one.yaml", "testdata/four.yaml",
	"testdata/metric.yaml", "testdata/bare.yaml", "testdata/impossible.yaml",
}
