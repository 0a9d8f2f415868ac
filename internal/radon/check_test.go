package radon

import (
	"encoding/json"
	"fmt"
	"math"
	"os"
	"strconv"
	"testing"
)

// checkValue is one figure from outside this program.
type checkValue struct {
	ID        string         `json:"id"`
	Quantity  string         `json:"quantity"`
	Inputs    map[string]any `json:"inputs"`
	Expected  any            `json:"expected"` // a number, or text that must match exactly
	Unit      string         `json:"unit"`
	Tolerance struct{ Abs, Rel float64 }
	Source    string `json:"source"`
	Seen      bool   `json:"seen"`
}

func (c checkValue) number(t *testing.T, key string) float64 {
	t.Helper()
	switch v := c.Inputs[key].(type) {
	case float64:
		return v
	case string:
		if f, err := strconv.ParseFloat(v, 64); err == nil {
			return f
		}
	}
	t.Fatalf("%s: input %s is not a number: %v", c.ID, key, c.Inputs[key])
	return 0
}

// picocuries reads an input in pCi/L as Bq/m3.
func (c checkValue) picocuries(t *testing.T, key string) float64 {
	t.Helper()
	return c.number(t, key) * perPicocurie
}

func must[T any](t testing.TB) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

func near(a, b, slack float64) bool { return math.Abs(a-b) <= slack }

// checks has one handler for each id, returning the figure in the entry's unit.
var checks = map[string]func(*testing.T, checkValue) any{
	"M01": func(*testing.T, checkValue) any { return halfLifeRn222 / (24 * hour) },
	"M02": func(t *testing.T, c checkValue) any {
		return map[any]float64{"Po-218": halfLifePo218, "Pb-214": halfLifePb214, "Bi-214": halfLifeBi214}[c.Inputs["nuclide"]] / 60
	},
	"M03": func(t *testing.T, c checkValue) any { return hour * decayConstant(c.number(t, "half_life_d")*24*hour) },
	"M04": func(t *testing.T, c checkValue) any {
		return must[float64](t)(remainingExcess(c.number(t, "h")*hour, 0))
	},
	"M05": remaining,
	"M06": remaining,
	"M07": func(t *testing.T, c checkValue) any { return reduction(t, c).Percent },
	"M08": func(t *testing.T, c checkValue) any { return reduction(t, c).U },
	"M09": func(t *testing.T, c checkValue) any {
		value := c.picocuries(t, "result")
		_, upper := Result{Value: value, U: c.number(t, "rel_u") * value}.Bounds()
		return upper / perPicocurie
	},
	"M10": func(t *testing.T, c checkValue) any { return limitsFor(meanOf(t, c)).Warning },
	"M11": func(t *testing.T, c checkValue) any { return limitsFor(meanOf(t, c)).Control },
	"M12": func(t *testing.T, c checkValue) any { return limitsFor(meanOf(t, c)).Warning },
	"M13": func(t *testing.T, c checkValue) any { return limitsFor(meanOf(t, c)).Control },
	"M14": func(t *testing.T, c checkValue) any { return limitsFor(meanOf(t, c)).Difference / perPicocurie },
	"M15": func(t *testing.T, c checkValue) any { return RPD(c.picocuries(t, "a"), c.picocuries(t, "b")) },
	"M16": func(t *testing.T, c checkValue) any {
		return must[DuplicateLimits](t)(limitsFromInControl(c.number(t, "level"))).Warning
	},
	"M17": func(t *testing.T, c checkValue) any {
		return must[DuplicateLimits](t)(limitsFromInControl(c.number(t, "level"))).Control
	},
	"M18": func(t *testing.T, _ checkValue) any { return spikeLimit(t, Warning) },
	"M19": func(t *testing.T, _ checkValue) any { return spikeLimit(t, Control) },
	"M20": func(t *testing.T, c checkValue) any {
		return must[Spike](t)(CheckSpike(c.picocuries(t, "measured"), c.picocuries(t, "reference"))).Error
	},
	"M21": func(t *testing.T, c checkValue) any { return ReportPicocuries(c.picocuries(t, "value")) },
	"M22": func(t *testing.T, c checkValue) any { return ReportPicocuries(c.picocuries(t, "value")) },
	"M23": func(t *testing.T, c checkValue) any {
		pair := []Result{{Value: c.picocuries(t, "a")}, {Value: c.picocuries(t, "b")}}
		return ReportPicocuries(must[Result](t)(Average(pair, 0)).Value)
	},
	"M24": func(t *testing.T, c checkValue) any {
		return 100 * must[float64](t)(countingU(c.number(t, "counts_net")))
	},
	"M25": func(t *testing.T, c checkValue) any {
		var all []Result
		for _, v := range c.Inputs["values"].([]any) {
			all = append(all, Result{Value: v.(float64) * perPicocurie})
		}
		return must[Result](t)(Average(all, 0)).Value / perPicocurie
	},
	"M26": func(t *testing.T, c checkValue) any {
		halfLives := []float64{halfLifeRn222}
		for _, minutes := range c.Inputs["T12_min"].([]any) {
			halfLives = append(halfLives, minutes.(float64)*60)
		}
		return must[[]float64](t)(chainActivity([]float64{1, 0, 0, 0}, halfLives, c.number(t, "min")*60))[2]
	},
	"W01": exposure,
	"W02": exposure,
	"W03": func(*testing.T, checkValue) any { return yearlyLimit },
	"W04": exposure,
	"W05": func(*testing.T, checkValue) any { return recommendedYearlyLimit },
}

func remaining(t *testing.T, c checkValue) any {
	return must[float64](t)(remainingExcess(c.number(t, "h")*hour, c.number(t, "ach")))
}

func reduction(t *testing.T, c checkValue) Reduction {
	before, after := Result{Value: c.picocuries(t, "before")}, Result{Value: c.picocuries(t, "after")}
	if _, ok := c.Inputs["rel_u_before"]; ok {
		before.U, after.U = c.number(t, "rel_u_before")*before.Value, c.number(t, "rel_u_after")*after.Value
	}
	return must[Reduction](t)(Reduce(before, after))
}

func exposure(t *testing.T, c checkValue) any {
	level := must[float64](t)(WorkingLevel(c.picocuries(t, "pCi_per_L"), c.number(t, "ER")))
	return must[float64](t)(WorkingLevelMonths(level, c.number(t, "h")*hour))
}

// meanOf is the mean nearest to the lower end of a band written as ">=4.0",
// "2.0-<4.0" or "<2.0", in Bq/m3.
func meanOf(t *testing.T, c checkValue) float64 {
	t.Helper()
	var mean float64
	band, _ := c.Inputs["mean"].(string)
	for _, form := range []struct {
		layout string
		shift  float64
	}{{">=%g", 0}, {"<%g", -1e-6}, {"%g-<", 0}} {
		if n, _ := fmt.Sscanf(band, form.layout, &mean); n == 1 {
			return (mean + form.shift) * perPicocurie
		}
	}
	t.Fatalf("%s: no mean in %q", c.ID, band)
	return 0
}

// spikeLimit is the largest error, in whole percent, that stays short of a class.
func spikeLimit(t *testing.T, class Agreement) float64 {
	for percent := range 100 {
		got := must[Spike](t)(CheckSpike(100+float64(percent), 100)).Agreement
		if got == class {
			return float64(percent - 1)
		}
	}
	t.Fatalf("no error is in class %s", class)
	return 0
}

func TestCheckValues(t *testing.T) {
	data, err := os.ReadFile("testdata/check_values.json")
	if err != nil {
		t.Fatal(err)
	}
	var values []checkValue
	if err := json.Unmarshal(data, &values); err != nil {
		t.Fatal(err)
	}
	done := map[string]bool{}
	for _, c := range values {
		t.Run(c.ID, func(t *testing.T) {
			handler, ok := checks[c.ID]
			if !ok {
				t.Fatalf("no handler for %s (%s)", c.ID, c.Quantity)
			}
			got := handler(t, c)
			t.Logf("%s %s: got %v, expected %v %s; source: %s (seen: %t)", c.ID, c.Quantity, got, c.Expected, c.Unit, c.Source, c.Seen)
			want, numeric := c.Expected.(float64)
			if !numeric {
				if got != c.Expected {
					t.Errorf("got %v, expected exactly %v %s", got, c.Expected, c.Unit)
				}
				return
			}
			figure, ok := got.(float64)
			if !ok || !(math.Abs(figure-want) <= c.Tolerance.Abs+c.Tolerance.Rel*math.Abs(want)) {
				t.Errorf("got %v, expected %v %s within %+v", got, want, c.Unit, c.Tolerance)
			}
		})
		done[c.ID] = true
	}
	for id := range checks {
		if !done[id] {
			t.Errorf("handler %s has no entry", id)
		}
	}
}
