package airflow

import (
	"encoding/json"
	"fmt"
	"math"
	"math/big"
	"os"
	"regexp"
	"strconv"
	"testing"
)

// A checkValue is a number that the outside world says this package must give:
// testdata/check_values.json. It passes within abs + rel x |expected|; a text
// must be equal.
type checkValue struct {
	ID        string         `json:"id"`
	Quantity  string         `json:"quantity"`
	Inputs    map[string]any `json:"inputs"`
	Expected  any            `json:"expected"`
	Unit      string         `json:"unit"`
	Tolerance struct {
		Abs, Rel float64
	} `json:"tolerance"`
	Source string `json:"source"`
	Seen   bool   `json:"seen"`
}

// number returns an input, or fails the test.
func (c checkValue) number(t *testing.T, name string) float64 {
	t.Helper()
	x, ok := c.Inputs[name].(float64)
	if !ok {
		t.Fatalf("input %s is %v, not a number", name, c.Inputs[name])
	}
	return x
}

func (c checkValue) numbers(t *testing.T, name string) []float64 {
	t.Helper()
	list, ok := c.Inputs[name].([]any)
	if !ok {
		t.Fatalf("input %s is %v, not a list", name, c.Inputs[name])
	}
	out := make([]float64, len(list))
	for i, x := range list {
		out[i] = x.(float64)
	}
	return out
}

func (c checkValue) text(t *testing.T, name string) string {
	t.Helper()
	s, ok := c.Inputs[name].(string)
	if !ok {
		t.Fatalf("input %s is %v, not a text", name, c.Inputs[name])
	}
	return s
}

func (c checkValue) has(name string) bool { _, ok := c.Inputs[name]; return ok }

func loadCheckValues(t *testing.T) []checkValue {
	t.Helper()
	raw, err := os.ReadFile("testdata/check_values.json")
	if err != nil {
		t.Fatal(err)
	}
	var values []checkValue
	if err := json.Unmarshal(raw, &values); err != nil {
		t.Fatal(err)
	}
	return values
}

// A checker computes what a check value expects. It is found by id and by what
// the quantity says, so that further values of the same kind need no new code.
type checker struct {
	id       string // regular expression on the id
	quantity string // regular expression on the quantity
	compute  func(t *testing.T, c checkValue) any
}

func TestCheckValues(t *testing.T) {
	values := loadCheckValues(t)
	if len(values) == 0 {
		t.Fatal("no check values")
	}
	used := make([]bool, len(checkers))
	for _, c := range values {
		t.Run(c.ID, func(t *testing.T) {
			for i, k := range checkers {
				if regexp.MustCompile("^(?:"+k.id+")$").MatchString(c.ID) && regexp.MustCompile(k.quantity).MatchString(c.Quantity) {
					used[i] = true
					compare(t, c, k.compute(t, c))
					return
				}
			}
			t.Errorf("nothing here computes %s %q", c.ID, c.Quantity)
		})
	}
	for i, k := range checkers {
		if !used[i] {
			t.Errorf("no check value calls on %s %q", k.id, k.quantity)
		}
	}
}

func compare(t *testing.T, c checkValue, got any) {
	t.Helper()
	t.Logf("%s %s: got %v, expected %v %s (%s; seen %t)", c.ID, c.Quantity, got, c.Expected, c.Unit, c.Source, c.Seen)
	want, isNumber := c.Expected.(float64)
	if !isNumber {
		if got != c.Expected {
			t.Errorf("got %v, expected %v", got, c.Expected)
		}
		return
	}
	value, ok := got.(float64)
	if !ok {
		t.Fatalf("got %v, expected a number", got)
	}
	if allowed := c.Tolerance.Abs + c.Tolerance.Rel*math.Abs(want); !(math.Abs(value-want) <= allowed) {
		t.Errorf("got %.9g, expected %.9g within %.3g", value, want, allowed)
	}
}

const (
	psi   = 0.45359237 * gravity / (inch * inch) // Pa
	pound = 0.45359237                           // kg
	btu   = 1055.05585262                        // J
)

func celsius(c float64) float64    { return c + 273.15 }
func fahrenheit(f float64) float64 { return (f + 459.67) / 1.8 }

func must[T any](t *testing.T) func(T, error) T {
	return func(x T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return x
	}
}

// threshold returns at if what holds just above it and not at it.
func threshold(t *testing.T, at float64, holds func(float64) bool) float64 {
	t.Helper()
	if holds(at) || holds(at*(1-1e-9)) || !holds(at*(1+1e-9)) {
		return math.NaN()
	}
	return at
}

// exactly expresses an SI value in a unit of exactly known size, for check
// values that allow no difference: the 15 decimal digits that a float64 surely
// holds are divided without rounding, since the conversion is not under test.
func exactly(t *testing.T, si float64, unit string) float64 {
	t.Helper()
	value, ok1 := new(big.Rat).SetString(strconv.FormatFloat(si, 'g', 15, 64))
	size, ok2 := new(big.Rat).SetString(unit)
	if !ok1 || !ok2 {
		t.Fatalf("%v in units of %s", si, unit)
	}
	out, _ := value.Quo(value, size).Float64()
	return out
}

func scan(t *testing.T, text, format string, into ...any) {
	t.Helper()
	if _, err := fmt.Sscanf(text, format, into...); err != nil {
		t.Fatalf("%q: %v", text, err)
	}
}
