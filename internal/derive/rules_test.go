package derive_test

import (
	"math"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/place"
)

// edited is a record of testdata with texts replaced, each of which must be
// there once at least. Old and new alternate.
func edited(t testing.TB, name string, oldNew ...string) map[string]any {
	t.Helper()
	text := string(source(t, name))
	for i := 0; i < len(oldNew); i += 2 {
		if !strings.Contains(text, oldNew[i]) {
			t.Fatalf("%q does not stand in %s", oldNew[i], name)
		}
		text = strings.ReplaceAll(text, oldNew[i], oldNew[i+1])
	}
	return canonical(t, "edited "+name, []byte(text))
}

// Flows measured in the legs split the air, and the suctions in the pits follow
// from the gauge: reading less speed gained less the losses on the way.
func TestLegsAsMeasured(t *testing.T) {
	derived := document(edited(t, "testdata/metric.yaml", "{kind: tee-run, count: 1}", "", "{kind: tee-branch, count: 1}", ""), nil)
	for at, want := range map[place.Pointer]float64{
		"/segments/1/flow": 0.014, "/segments/2/flow": 0.006, "/segments/3/flow": 0.02,
		"/segments/1/velocity": 0.014 / (math.Pi / 4 * 0.102 * 0.102),
		"/segments/2/velocity": 0.006 / (math.Pi / 4 * 0.078 * 0.078),
	} {
		if got := si(t, derived, at); math.Abs(got-want) > 1e-5*want {
			t.Errorf("%s is %v, want %v", at, got, want)
		}
	}
	density, speed := si(t, derived, "/air/density"), si(t, derived, "/segments/3/velocity")
	before := 240 - density*speed*speed/2 - si(t, derived, "/segments/3/loss")
	for at, want := range map[place.Pointer]float64{
		"/suction_points/1/pit_suction": before - si(t, derived, "/segments/1/loss"),
		"/suction_points/2/pit_suction": before - si(t, derived, "/segments/2/loss"),
	} {
		if got := si(t, derived, at); math.Abs(got-want) > 0.002 {
			t.Errorf("%s is %v, want %v", at, got, want)
		}
	}
	assumed := value(t, derived, "/segments/3/loss")["assumed"].([]any)
	if !slices.Contains(assumed, any("free-junction")) {
		t.Errorf("no tee is recorded, and nothing says so: %v", assumed)
	}
}

// Where neither leg flows nor the ground are recorded, the legs are not known,
// and the main pipe is.
func TestLegsNotMeasured(t *testing.T) {
	derived := document(edited(t, "testdata/metric.yaml", "{id: sp-1, flow: 14 L/s}", "{id: sp-1}", "{id: sp-2, flow: 6 L/s}", "{id: sp-2}",
		"runs_continuously: true", "runs_continuously: true\n    commissioning: {measured_flow: 20 L/s}"), nil)
	for _, at := range []place.Pointer{"/segments/1/velocity", "/suction_points/1/flow", "/systems/1/highest_velocity", "/systems/1/pipe_loss"} {
		if got := lacks(t, derived, at); !slices.Contains(got, "/systems/1/suction_points/0/flow") {
			t.Errorf("%s lacks %v", at, got)
		}
	}
	if got := si(t, derived, "/segments/3/velocity"); math.Abs(got-0.02/(math.Pi/4*0.102*0.102)) > 1e-5 {
		t.Errorf("the speed in the main pipe is %v", got)
	}
	if got := si(t, derived, "/segments/3/loss"); math.Abs(got-5.50691) > 1e-4 {
		t.Errorf("the loss of the main pipe is %v", got)
	}
}

// The flows that four legs draw add up to that of the fan, and all ways from
// the pits meet at one pressure.
func TestFourLegsBalance(t *testing.T) {
	derived := document(load(t, "testdata/four.yaml"), nil)
	flow := func(at place.Pointer) float64 { return si(t, derived, at+"/flow") }
	var sum float64
	for _, at := range []place.Pointer{"/suction_points/0", "/suction_points/1", "/suction_points/2", "/suction_points/3"} {
		sum += flow(at)
	}
	if used := si(t, derived, "/systems/0/flow_used"); math.Abs(sum-used) > 1e-5*used {
		t.Errorf("the legs draw %v, all the air is %v", sum, used)
	}
	if got, want := flow("/segments/7"), flow("/suction_points/0")+flow("/suction_points/1")+flow("/suction_points/2"); math.Abs(got-want) > 1e-5*want {
		t.Errorf("the trunk carries %v, its legs %v", got, want)
	}
	if got := si(t, derived, "/systems/0/suction_available"); got != si(t, derived, "/suction_points/1/pit_suction") {
		t.Errorf("the least suction in a pit is %v", got)
	}
	if state := derived["systems"].([]any)[0].(map[string]any)["operating_state"]; state != "crosses" {
		t.Errorf("operating state %v", state)
	}
}

// The flow used is the best that is known: the main pipe, the legs, the gauge,
// the crossing of the curves.
func TestFlowUsed(t *testing.T) {
	legs := "soil_flow: 60 cfm"
	gauge := "      readings:\n        - {id: start-up, at: \"2026-03-10T15:10:00-05:00\", value: 1.2 inH2O, fan_on: true}\n        - {id: hand-over, at: \"2026-03-20T10:00:00-05:00\", value: 1.25 inH2O, fan_on: true}\n"
	main := "    commissioning: {measured_flow: 55 cfm}\n"
	for _, c := range []struct {
		record []string
		want   string
	}{
		{nil, "as measured in the main pipe"},
		{[]string{main, "", legs, "flow: 52 cfm, soil_flow: 60 cfm"}, "sum of the flows measured in the legs"},
		{[]string{main, ""}, "from the gauge and the fan's curve"},
		{[]string{main, "", gauge, ""}, "where the fan's curve meets pipe and ground"},
		{[]string{main, "", gauge, "", ", soil_exponent: 1.5", ""}, ""},
		// What is recorded and cannot be is not passed over for the next best.
		{[]string{"measured_flow: 55 cfm", "measured_flow: -55 cfm"}, "a flow cannot be below zero"},
	} {
		got, _ := value(t, document(variant(t, c.record...), nil), "/systems/0/flow_used")["method"].(string)
		if got != c.want {
			t.Errorf("%q: flow %q, want %q", c.record, got, c.want)
		}
	}
}

// Which outlets and openings are paired.
func TestClearanceEntries(t *testing.T) {
	const two = `record: 1
job: {id: J-1, stage: running, profiles: [us-epa-1994]}
systems:
  - {id: f, powered_by: fan, discharge: {position: {x: 0 ft, y: 0 ft, z: 9 ft}CLEAR}}
  - {id: p, powered_by: passive}
  - {id: r, powered_by: rough-in}
  - {id: q, powered_by: rough-in, discharge: {outdoors: true}}
  - {id: u}
`
	openings := "house: {openings: [{id: w, kind: window, building: own}, {id: d, kind: door}]}\n"
	for _, c := range []struct{ name, clear, house, want string }{
		{"nothing recorded", "", "", "f/openings p/openings q/openings u/openings"},
		{"no openings there", "", "house: {openings: []}\n", ""},
		{"openings listed", "", openings, "f/w f/d p/w p/d q/w q/d u/w u/d"},
		{"measured only", ", clearances: [{id: tape, distance: 12 ft, drop: 1 ft}]", "", "f/tape p/openings q/openings u/openings"},
		{"none to measure", ", clearances: []", "", "p/openings q/openings u/openings"},
		{"measured and listed", ", clearances: [{id: tape, opening: d, distance: 12 ft}, {id: more, distance: 3 ft}]", openings, "f/w f/d f/more p/w p/d q/w q/d u/w u/d"},
		{"measured twice", ", clearances: [{id: tape, opening: d, distance: 12 ft}, {id: again, opening: d, distance: 9 ft}]", openings, "f/w f/d f/d/again p/w p/d q/w q/d u/w u/d"},
	} {
		derived := document(canonical(t, c.name, []byte(strings.Replace(two, "CLEAR", c.clear, 1)+c.house)), nil)
		keepsSchema(t, derived)
		var ids []string
		for _, e := range derived["clearances"].([]any) {
			ids = append(ids, e.(map[string]any)["id"].(string))
		}
		if got := strings.Join(ids, " "); got != c.want {
			t.Errorf("%s: %q, want %q", c.name, got, c.want)
		}
		var outlets []string
		for _, e := range derived["discharges"].([]any) {
			outlets = append(outlets, e.(map[string]any)["id"].(string))
		}
		if got := strings.Join(outlets, " "); got != "f p q u" {
			t.Errorf("%s: outlets %q", c.name, got)
		}
	}
}

// Days are counted on the calendar of the place: 30 days after completion stay
// 30 days when it is already the next day in Greenwich.
func TestDaysOfThePlace(t *testing.T) {
	derived := document(variant(t, "device: continuous-monitor, start: \"2026-03-12T09:00:00-05:00\"", "device: continuous-monitor, start: \"2026-04-09T20:30:00-05:00\""), nil)
	if got := si(t, derived, "/tests/1/days_after_completion"); got != 30*86400 {
		t.Errorf("%v days", got/86400)
	}
}

// Which results are averaged, and which governs (ANSI/AARST MAH 2019 7.2.1,
// 8.5.2(d): devices within 8 in, both on one side of 4.0 pCi/L).
func TestWhichResultGoverns(t *testing.T) {
	pair := "result: 0.8 pCi/L, uncertainty: 12 %, duplicate_of: post-1, spacing: 6 in"
	for _, c := range []struct {
		name, a, b string
		want       float64 // pCi/L, as reported
	}{
		{"side by side", "result: 0.9 pCi/L", pair, 0.9}, // 0.85
		{"exactly 8 in apart", "result: 1.9 pCi/L", "result: 1.0 pCi/L, duplicate_of: post-1, spacing: 8 in", 1.5},
		{"farther apart", "result: 1.9 pCi/L", "result: 1.0 pCi/L, duplicate_of: post-1, spacing: 9 in", 1.9},
		{"spacing not recorded", "result: 1.9 pCi/L", "result: 1.0 pCi/L, duplicate_of: post-1", 1.9},
		{"both over", "result: 4.2 pCi/L", "result: 4.0 pCi/L, duplicate_of: post-1, spacing: 6 in", 4.1},
		{"on both sides", "result: 4.2 pCi/L", "result: 3.9 pCi/L, duplicate_of: post-1, spacing: 6 in", 4.2},
		{"two rooms", "result: 1.9 pCi/L", "result: 3.6 pCi/L", 3.6},
		{"half up", "result: 3.95 pCi/L", "result: 1.0 pCi/L", 4.0},
		{"not half", "result: 3.94 pCi/L", "result: 1.0 pCi/L", 3.9},
	} {
		derived := document(variant(t, "result: 0.9 pCi/L", c.a, pair, c.b), nil)
		if got := si(t, derived, "/radon/after"); math.Abs(got-c.want*37) > 1e-9 {
			t.Errorf("%s: %v pCi/L, want %v", c.name, got/37, c.want)
		}
	}
	const told = "phase: after, device: charcoal, blank: false"
	for _, c := range []struct{ name, now, want string }{
		{"a blank counts for nothing", "phase: after, device: charcoal, blank: true", "0.9 pCi/L"},
		{"a monitor is no blank", "phase: after, device: continuous-monitor, blank: true", "3.6 pCi/L"},
		{"it may be a blank or not", "phase: after, device: charcoal", ""},
		{"it may be a blank or a monitor", "phase: after, blank: true", ""},
		{"what is no blank counts whatever it is", "phase: after, blank: false", "3.6 pCi/L"},
	} {
		derived := document(variant(t, pair, "result: 3.6 pCi/L, uncertainty: 12 %", told, c.now), nil)
		for _, at := range []place.Pointer{"/radon/after", "/radon/after_upper_bound", "/radon/reduction", "/retest_due"} {
			if known := value(t, derived, at)["si"] != nil; known != (c.want != "") {
				t.Errorf("%s: %s is %v", c.name, at, value(t, derived, at))
			}
		}
		if text, _ := value(t, derived, "/radon/after")["text"].(string); text != c.want {
			t.Errorf("%s: %q, want %q", c.name, text, c.want)
		}
	}
	unknown := document(variant(t, "result: 0.8 pCi/L, ", ""), nil)
	if diff := cmp.Diff([]string{"/measurements/tests/2/result"}, lacks(t, unknown, "/radon/after")); diff != "" {
		t.Errorf("a room that was not read could be the worst (-want +got):\n%s", diff)
	}
}

// Every assumption that there is, is used by some record and listed by it.
func TestEveryAssumptionIsListed(t *testing.T) {
	listed := map[string]bool{}
	for _, input := range []map[string]any{
		load(t, "testdata/one.yaml"), load(t, "testdata/four.yaml"), load(t, "testdata/metric.yaml"),
		edited(t, "testdata/one.yaml", "  altitude: 500 ft\n", "", "  neutral_level: 10 ft\n", "", "material: pvc", "material: abs"),
	} {
		for _, a := range document(input, nil)["assumptions"].([]any) {
			listed[a.(map[string]any)["name"].(string)] = true
		}
	}
	var missing []string
	for _, name := range []string{
		"sea-level", "soil-gas", "smooth-plastic", "abs-bore", "flush-inlet", "free-junction", "mesh-guard", "neutral-level",
		"gauge-noise", "device-uncertainty", "action-level", "equilibrium-ratio",
	} {
		if !listed[name] {
			missing = append(missing, name)
		}
	}
	if len(missing) > 0 {
		t.Errorf("not listed by any record: %v", missing)
	}
}
