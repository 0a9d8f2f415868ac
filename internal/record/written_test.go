package record

import (
	"encoding/json"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/schema"
)

func TestWrittenSI(t *testing.T) {
	for _, tt := range []struct {
		dim      quantity.Dimension
		si, want string
	}{
		{quantity.Length, "3.048", "10 ft"},
		{quantity.Length, "3", "3 m"},
		{quantity.Length, "2.80416", "9.2 ft"},
		{quantity.Radon, "148", "148 Bq/m3"},
		{quantity.Radon, "149", "149 Bq/m3"},
		{quantity.Pressure, "-2.5", "-2.5 Pa"},
		{quantity.Temperature, "293.15", "20 °C"},
		{quantity.Ratio, "0.25", "0.25"},
		{quantity.Number, "3", "3"},
		{quantity.Date, "1767225600", "2026-01-01"},
	} {
		if got := WrittenSI(tt.dim, tt.si); got != tt.want {
			t.Errorf("%s %s is written %q, want %q", tt.dim, tt.si, got, tt.want)
		}
	}
}

func TestWrittenKeepsTextAndPlainValues(t *testing.T) {
	shape, err := ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	got := Written(map[string]any{
		"job":   map[string]any{"id": "J-1", "dates": map[string]any{}},
		"house": map[string]any{"storeys": json.Number("2"), "eave_level": map[string]any{"si": json.Number("3.048"), "text": "120 in"}},
		"systems": []any{map[string]any{"id": "s", "discharge": map[string]any{
			"height_above_grade": map[string]any{"si": json.Number("3.048")}, "height_above_eave": map[string]any{},
		}}},
	}, shape)
	want := map[string]any{
		"job":   map[string]any{"id": "J-1", "dates": map[string]any{}},
		"house": map[string]any{"storeys": json.Number("2"), "eave_level": "120 in"},
		"systems": []any{map[string]any{"id": "s", "discharge": map[string]any{
			"height_above_grade": "10 ft", "height_above_eave": "undetermined",
		}}},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}
