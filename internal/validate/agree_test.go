package validate

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// Pipe that cannot lead from suction points to one open end is a mistake of the
// record; pipe of which too little is said is none.
func TestPipeThatContradictsItself(t *testing.T) {
	v := newForTest(t)
	const one, two = "{id: p}", "{id: p}, {id: q}"
	const pipe = "systems/sys-1/pipe/"
	for _, c := range []struct {
		name, points string
		pipe         []string
		want         []string // lines of segments count from 7
	}{
		{"in order", one, []string{"id: a", "id: b"}, nil},
		{"two legs", two, []string{"id: a, starts_at: p, flows_into: c", "id: b, starts_at: q", "id: c"}, nil},
		{"where a leg flows is left out", two, []string{"id: a, starts_at: p", "id: b, starts_at: q", "id: c"}, nil},
		{"and with it what comes to a segment", two, []string{"id: a, starts_at: p", "id: b, starts_at: q, flows_into: d", "id: c", "id: d"}, nil},
		{"where a leg begins is left out", two, []string{"id: a, starts_at: p, flows_into: c", "id: b", "id: c"}, nil},
		{"a suction point without pipe", two, []string{"id: a", "id: b"}, nil},
		{"suction points are left out", "", []string{"id: a, flows_into: c", "id: b", "id: c"}, nil},
		{"a leg behind what it flows into", two, []string{"id: a, starts_at: p, flows_into: m", "id: m, flows_into: n", "id: b, starts_at: q, flows_into: m", "id: n"}, nil},
		{"no pipe", one, nil, nil},
		{"into itself", one, []string{"id: a, starts_at: p, flows_into: a", "id: b"}, []string{
			`7:43: ` + pipe + `a/flows_into: found the id of this segment itself; expected that of the segment after it`}},
		{"the last into another", one, []string{"id: a", "id: b, flows_into: a"}, []string{
			`8:29: ` + pipe + `b/flows_into: found "a", from which the pipe leads back to this segment; air does not flow in a circle`}},
		{"in a circle", one, []string{"id: a", "id: b", "id: c, flows_into: b", "id: d"}, []string{
			`9:29: ` + pipe + `c/flows_into: found "b", from which the pipe leads back to this segment; air does not flow in a circle`}},
		{"a beginning on the way", two, []string{"id: a, starts_at: p, flows_into: b", "id: b, starts_at: q"}, []string{
			`8:28: ` + pipe + `b/starts_at: found a beginning at "q", but "a" flows into this segment (line 7); leave out one of the two`}},
		{"two legs from one point", two, []string{"id: a, starts_at: p, flows_into: c", "id: b, starts_at: p", "id: c"}, []string{
			`8:28: ` + pipe + `b/starts_at: found "p", where "a" starts too (line 7); each suction point has a pipe of its own`}},
		{"a segment is passed by", one, []string{"id: a, flows_into: c", "id: b", "id: c"}, []string{
			`8:14: ` + pipe + `b: nothing flows into this segment, and no suction point is left for it (1 recorded); say with flows_into which segment comes before it, or record its suction point`}},
		{"a leg before the only beginning", one, []string{"id: a", "id: b, starts_at: p", "id: c"}, []string{
			`7:14: ` + pipe + `a: nothing flows into this segment, and no suction point is left for it (1 recorded); say with flows_into which segment comes before it, or record its suction point`}},
	} {
		text := "record: 1\njob: {id: J-1, stage: planned, profiles: [us-epa-1994]}\nsystems:\n  - id: sys-1\n    suction_points: [" + c.points + "]\n    pipe:\n"
		for _, s := range c.pipe {
			text += "      - {" + s + "}\n"
		}
		if diff := cmp.Diff(c.want, lines(v, readYAML(t, text))); diff != "" {
			t.Errorf("%s: (-want +got)\n%s", c.name, diff)
		}
	}
}

// An opening that the house lists and a distance was measured to is one thing,
// and has one building, one kind and one sort of pane.
func TestOpeningSaidTwoWays(t *testing.T) {
	v := newForTest(t)
	const text = `record: 1
job: {id: J-1, stage: planned, profiles: [us-epa-1994]}
house:
  openings:
    - {id: win, LISTED}
    - {id: door, kind: door}
systems:
  - id: sys-1
    discharge: {clearances: [{id: tape, opening: win, FIRST}, {id: other, kind: intake}]}
  - id: sys-2
    discharge: {clearances: [{id: again, opening: win, SECOND}]}
`
	for _, c := range []struct {
		listed, first, second string
		want                  []string
	}{
		{"building: own, operable: true", "building: own, operable: true", "operable: true", nil},
		{"kind: window", "building: own", "operable: false", nil},
		{"kind: ~", "kind: window", "distance: 3 ft", nil},
		{"width: 3 ft", "distance: 3 ft", "distance: 4 ft", nil}, // measures are compared by rules
		{"operable: false", "operable: true", "kind: window", []string{
			`9:65: systems/sys-1/discharge/clearances/tape/operable: found true, but house/openings/win says false (line 5); correct the one that is wrong`}},
		{"building: own", "building: adjacent", "building: own", []string{
			`9:65: systems/sys-1/discharge/clearances/tape/building: found "adjacent", but house/openings/win says "own" (line 5); correct the one that is wrong`}},
		{"building: own", "kind: window", "kind: door", []string{
			`11:62: systems/sys-2/discharge/clearances/again/kind: found "door", but systems/sys-1/discharge/clearances/tape says "window" (line 9); correct the one that is wrong`}},
		{"into_conditioned_space: true", "building: own", "into_conditioned_space: false", []string{
			`11:80: systems/sys-2/discharge/clearances/again/into_conditioned_space: found false, but house/openings/win says true (line 5); correct the one that is wrong`}},
	} {
		doc := readYAML(t, strings.NewReplacer("LISTED", c.listed, "FIRST", c.first, "SECOND", c.second).Replace(text))
		if diff := cmp.Diff(c.want, lines(v, doc)); diff != "" {
			t.Errorf("%s, %s and %s: (-want +got)\n%s", c.listed, c.first, c.second, diff)
		}
	}
}

// Where nothing burns there is no flue to test. A form that nobody filled in says
// nothing, and neither does a list that was left out.
func TestTestOfAnApplianceThatIsNotThere(t *testing.T) {
	v := newForTest(t)
	const text = `record: 1
job: {id: J-1, stage: planned, profiles: [us-epa-1994]}
house:
  storeys: 1
  HOUSE
diagnostics:
  backdraft_tests: [{id: form}, {id: bd, TEST}]
`
	const heater = "combustion: [{id: heater, kind: water-heater}]"
	for _, c := range []struct {
		house, test string
		want        []string
	}{
		{heater, "appliance: heater, passed: true", nil},
		{heater, "passed: true", nil},
		{"year_built: 1978", "passed: true", nil},
		{"combustion:", "passed: true", nil},
		{"combustion: []", "appliance: ~, passed: ~", nil},
		{"combustion: []", "appliance: heater, passed: true", []string{
			`7:53: diagnostics/backdraft_tests/bd/appliance: found "heater", but house/combustion says that there is none (line 5); correct the one that is wrong`}},
		{"combustion: []", "appliance: ~, draft: -3 Pa, passed: true", []string{
			`7:63: diagnostics/backdraft_tests/bd: found a test of an appliance, but house/combustion says that there is none (line 5); correct the one that is wrong`}},
	} {
		doc := readYAML(t, strings.NewReplacer("HOUSE", c.house, "TEST", c.test).Replace(text))
		if diff := cmp.Diff(c.want, lines(v, doc)); diff != "" {
			t.Errorf("%s and %s: (-want +got)\n%s", c.house, c.test, diff)
		}
	}
}
