package derive_test

import (
	"encoding/json"
	"reflect"
	"testing"

	"github.com/slablint/slablint/internal/record"
)

// odd are values that no careful person writes down, in the forms that a
// canonical record can hold.
var odd = []any{
	nil, true, "", "x", "sp-1", json.Number("0"), json.Number("-1"), json.Number("1e300"), json.Number("-1e-300"), json.Number("1e999"), json.Number("none"),
	[]any{}, []any{"x", nil, json.Number("3")}, map[string]any{}, map[string]any{"si": "x"},
	map[string]any{"si": json.Number("0"), "unit": "m"}, map[string]any{"si": json.Number("-3"), "unit": "ft"},
	map[string]any{"si": json.Number("1e30"), "unit": "in"}, map[string]any{"si": json.Number("1e-30"), "unit": "furlong"},
	map[string]any{"si": json.Number("253402300799"), "unit": "s", "text": "9999-12-31T23:59:59Z"},
	map[string]any{"si": json.Number("-62167219200"), "unit": "s", "text": "0000-13-77 is no day"},
}

// spot is a place in a record that can be written to.
type spot struct {
	set func(any)
	get func() any
}

func spots(value any, out []spot) []spot {
	switch v := value.(type) {
	case map[string]any:
		for _, key := range sortedKeys(v) {
			out = append(out, spot{func(x any) { v[key] = x }, func() any { return v[key] }})
			out = spots(v[key], out)
		}
	case []any:
		for i := range v {
			out = append(out, spot{func(x any) { v[i] = x }, func() any { return v[i] }})
			out = spots(v[i], out)
		}
	}
	return out
}

func sortedKeys(m map[string]any) []string {
	keys := make([]string, 0, len(m))
	for key := range m {
		at := 0
		for at < len(keys) && keys[at] < key {
			at++
		}
		keys = append(keys, "")
		copy(keys[at+1:], keys[at:])
		keys[at] = key
	}
	return keys
}

// mutate changes a record in places that the bytes choose: to an odd value, to
// the value of another place, or to a list twice as long.
func mutate(input map[string]any, recipe []byte) map[string]any {
	input = record.Plain(input).(map[string]any)
	for len(recipe) >= 4 {
		all := spots(input, nil)
		if len(all) == 0 {
			break
		}
		s := all[(int(recipe[0])<<8|int(recipe[1]))%len(all)]
		switch what := int(recipe[2]); {
		case what < 128:
			s.set(record.Plain(odd[what%len(odd)]))
		case what < 224:
			s.set(record.Plain(all[(int(recipe[3])*251+what)%len(all)].get()))
		default:
			if list, ok := s.get().([]any); ok && len(list) < 64 {
				s.set(append(record.Plain(list).([]any), record.Plain(list).([]any)...))
			}
		}
		recipe = recipe[4:]
	}
	return input
}

// survives derives a faulty record: no panic, the schema is kept, and a second
// run gives the same.
func survives(t *testing.T, input map[string]any) {
	t.Helper()
	derived := document(input, nil)
	keepsSchema(t, derived)
	if again := document(input, nil); !reflect.DeepEqual(again, derived) {
		t.Error("two runs differ")
	}
}

func FuzzDerive(f *testing.F) {
	var inputs []map[string]any
	for _, name := range records {
		inputs = append(inputs, load(f, name))
	}
	for i := range inputs {
		f.Add(uint8(i), []byte{})
		f.Add(uint8(i), []byte{0, 40, 6, 0, 1, 7, 140, 3, 0, 90, 230, 0})
	}
	f.Fuzz(func(t *testing.T, which uint8, recipe []byte) {
		survives(t, mutate(inputs[int(which)%len(inputs)], recipe))
	})
}

// Every place of a full record with some of the odd values, in turn.
func TestOneOddValueAnywhere(t *testing.T) {
	const turns = 16
	input := record.Plain(load(t, "testdata/one.yaml")).(map[string]any)
	for i, s := range spots(input, nil) {
		kept := s.get()
		for k := i % turns; k < len(odd); k += turns {
			s.set(record.Plain(odd[k]))
			derived := document(input, nil)
			if i%3 == 0 { // the check takes longer than what is checked
				keepsSchema(t, derived)
			}
		}
		s.set(kept)
	}
}

// Many odd values at once.
func TestManyOddValues(t *testing.T) {
	seed := uint64(20260317)
	for _, name := range records {
		input := load(t, name)
		for range 30 {
			recipe := make([]byte, 4*(1+int(seed>>60)))
			for i := range recipe {
				seed = seed*6364136223846793005 + 1442695040888963407
				recipe[i] = byte(seed >> 56)
			}
			survives(t, mutate(input, recipe))
		}
	}
}
