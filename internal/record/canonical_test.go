package record_test

import (
	"encoding/json"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

const small = `job: {id: J-1}
house:
  altitude: null
  eave_level: 9 ft 10 1/8 in
  storeys: 2
systems:
  - id: sys-1
    gauge:
      readings:
        - value: 1.1 inH2O
          fan_on: true
`

// canonical is a text in the form that rules read, with what cannot be read.
func canonical(t *testing.T, text string) (map[string]any, []*record.Error) {
	t.Helper()
	doc, err := record.ReadYAML("job.yaml", []byte(text), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	return doc.Canonical(shape)
}

// 1 in is 25.4 mm exactly, and 1 inH2O 249.08891 Pa by convention: NIST SP 811
// (2008) App. B.8. An empty field is none.
func TestCanonical(t *testing.T) {
	input, errs := canonical(t, small)
	if len(errs) > 0 {
		t.Fatal(errs[0])
	}
	want := map[string]any{
		"job": map[string]any{"id": "J-1"},
		"house": map[string]any{
			"eave_level": map[string]any{"si": json.Number("3.000375"), "value": json.Number("9.84375"), "unit": "ft", "text": "9 ft 10 1/8 in"},
			"storeys":    json.Number("2"),
		},
		"systems": []any{map[string]any{"id": "sys-1", "gauge": map[string]any{"readings": []any{map[string]any{
			"value":  map[string]any{"si": json.Number("273.997801"), "value": json.Number("1.1"), "unit": "inH2O", "text": "1.1 inH2O"},
			"fan_on": true,
		}}}}},
	}
	if diff := cmp.Diff(want, record.Plain(input)); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// A pointer leads into a quantity as into anything else.
func TestAt(t *testing.T) {
	input, _ := canonical(t, small)
	found, ok := record.At(input, "/systems/0/gauge/readings/0/value")
	q, isQuantity := found.(*record.Quantity)
	if !ok || !isQuantity {
		t.Fatalf("the reading is %v", found)
	}
	if q.Decimal() != "273.997801" || q.Float() != 273.997801 || q.Unit() != "inH2O" || q.Text() != "1.1 inH2O" {
		t.Errorf("the reading is %s %g %s %q", q.Decimal(), q.Float(), q.Unit(), q.Text())
	}
	for _, inside := range []any{input, record.Plain(input)} {
		if si, ok := record.At(inside, "/house/eave_level/si"); !ok || si != json.Number("3.000375") {
			t.Errorf("the eave is at %v", si)
		}
		for _, nowhere := range []string{"/house/altitude", "/house/eave_level/inputs", "/house/storeys/si", "/systems/1", "/systems/x"} {
			if found, ok := record.At(inside, place.Pointer(nowhere)); ok {
				t.Errorf("%s leads to %v", nowhere, found)
			}
		}
	}
}

func TestMembers(t *testing.T) {
	input, _ := canonical(t, small)
	reading, _ := record.At(input, "/systems/0/gauge/readings/0/value")
	if names := strings.Join(record.Names(reading), " "); names != "si text unit value" {
		t.Errorf("a quantity has %s", names)
	}
	if names := record.Names(input); !slices.Equal(names, []string{"house", "job", "systems"}) {
		t.Errorf("the record has %q", names)
	}
	if record.Names("text") != nil || record.Get("text", "si") != nil || record.Get(reading, "method") != nil {
		t.Error("what is not there is found")
	}
	if got := record.Get(reading, "unit"); got != "inH2O" {
		t.Errorf("its unit is %v", got)
	}
}

// What cannot be read is told in the order written, with its place.
func TestCanonicalTellsWhatItCannotRead(t *testing.T) {
	_, errs := canonical(t, "house:\n  altitude: 12 furlongs\n  eave_level: ten feet\n")
	if len(errs) != 2 {
		t.Fatalf("%d errors: %v", len(errs), errs)
	}
	if got := errs[0].Error(); !strings.HasPrefix(got, "job.yaml:2:13: length \"12 furlongs\": ") {
		t.Error(got)
	}
	if got := errs[1].Error(); !strings.HasPrefix(got, "job.yaml:3:15: length \"ten feet\": ") {
		t.Error(got)
	}
}
