package record

import (
	"encoding/json"
	"strings"

	"github.com/slablint/slablint/internal/quantity"
)

// Written is a canonical value as people write it: each quantity is its text
// again or, where only the SI value is known, the shortest text that means
// exactly that value.
func Written(value any, shape *Shape) any {
	switch v := value.(type) {
	case Measure:
		return writtenQuantity(v, shape.Dimension())
	case map[string]any, Members:
		if dim := shape.Dimension(); dim != "" {
			return writtenQuantity(v, dim)
		}
		out := map[string]any{}
		for _, name := range Names(v) {
			out[name] = Written(Get(v, name), shape.Field(name))
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, element := range v {
			out[i] = Written(element, shape.Items())
		}
		return out
	}
	return value
}

func writtenQuantity(q any, dim quantity.Dimension) string {
	if text, ok := Get(q, "text").(string); ok {
		return text
	}
	si, ok := Get(q, "si").(json.Number)
	if !ok {
		return "undetermined"
	}
	return WrittenSI(dim, si.String())
}

// WrittenSI is the shortest text of a quantity that means exactly a value given
// in the SI unit of its dimension, such as "10 ft" for 3.048 m; among texts of
// one length the SI unit's own.
func WrittenSI(dim quantity.Dimension, si string) string {
	unit := quantity.SIUnit(dim)
	if dim == quantity.Time || dim == quantity.Date {
		if text, err := quantity.Format(dim, si, unit); err == nil {
			return text
		}
	}
	best := strings.TrimSuffix(strings.TrimSpace(si+" "+unit), " 1")
	exact, err := quantity.New(dim, si, unit)
	if err != nil {
		return best
	}
	for _, unit := range quantity.Units(dim) {
		text, err := quantity.Format(dim, si, unit)
		if err != nil || len(text) >= len(best) {
			continue
		}
		if again, err := quantity.Parse(dim, text); err == nil && again.Cmp(exact) == 0 {
			best = text
		}
	}
	return best
}
