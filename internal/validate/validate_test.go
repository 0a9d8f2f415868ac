package validate

import (
	"fmt"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/record"
)

// small is a record in which everything that the cases change has its place.
const small = `record: 1
job:
  id: J-0107
  stage: closeout
  profiles: [us-epa-1994]
house:
  storeys: 2
  freezing_climate: true
  eave_level: 18 ft
  air_handling:
    airtightness_cfm50: 1500
  foundations:
    - id: basement
      kind: basement
    - id: crawl
      kind: crawlspace
  openings:
    - id: win-1
      corner: {x: 1 ft, y: 2 ft, z: {value: 3, unit: ft}}
entry_routes:
  - id: crack-1
    foundation: basement
systems:
  - id: sys-1
    foundations: [basement, crawl]
    suction_points:
      - id: sp-1
    pipe:
      - id: leg-1
        starts_at: sp-1
        flows_into: leg-2
        fittings:
          - kind: damper
      - id: leg-2
    fan:
      started: "2026-03-17T15:30:00-05:00"
    discharge:
      height_above_grade: 19 ft 6 in
      rain_cap: false
  - id: sys-2
    suction_points:
      - id: sp-2
diagnostics:
  communication_tests:
    - id: cp-1
      on: "2026-03-02"
      system: sys-1
evidence:
  - id: photo-1
    shows: [sys-1, win-1]
`

// Each case changes one line of the small record, numbered from 1. The message
// and the place are the contract.
func TestMessages(t *testing.T) {
	v := newForTest(t)
	if found := v.Check(readYAML(t, small)); found != nil {
		t.Fatalf("the small record is not valid: %v", found)
	}
	for _, c := range []struct{ name, from, to, want string }{
		{"misspelt field", "storeys: 2", "stories: 2",
			`7:3: house: found the unknown field "stories"; did you mean "storeys"?`},
		{"field in another style", "eave_level:", "EaveLevel:",
			`9:3: house: found the unknown field "EaveLevel"; did you mean "eave_level"?`},
		{"field of another place", "storeys: 2", "height_above_grade: 19 ft",
			`7:3: house: found the unknown field "height_above_grade"; it belongs in systems/discharge`},
		{"field of two other places", "storeys: 2", "after_segment: leg-1",
			`7:3: house: found the unknown field "after_segment"; it belongs in systems/fan or in systems/gauge`},
		{"field of the top", "    flows_into: leg-2", "    measurements: leg-2",
			`31:9: systems/sys-1/pipe/leg-1: found the unknown field "measurements"; it belongs at the top of the record`},
		{"unknown field among few", "x: 1 ft, y", "lon: 1 ft, x: 1 ft, y",
			`19:16: house/openings/win-1/corner: found the unknown field "lon"; expected one of x, y and z`},
		{"unknown field among many", "rain_cap: false", "colour: white",
			`39:7: systems/sys-1/discharge: found the unknown field "colour"; expected one of above_highest_eave, adjoining_air_tested, angle_from_vertical, below_eave_reason, below_operable_window, clearances, distance_to_higher_wall, grade_level, guard, guard_opening, height_above_eave and 17 more`},
		{"unknown field at the top", "record: 1", "records: 1",
			`1:1: record: found the unknown field "records"; did you mean "record"?`},
		{"unknown field that disturbs a terminal", "storeys: 2", `"sto\e[2Jreys": 2`,
			`7:3: house: found the unknown field "sto\x1b[2Jreys"; expected one of air_handling, altitude, building_height, combustion, datum, eave_level, floor_area_tested, foundations, freezing_climate, garage, gathering_places and 11 more`},

		{"misspelt required field", "  stage: closeout", "  stge: closeout",
			`4:3: job: found the unknown field "stge"; did you mean "stage"?`},
		{"no required field", "  stage: closeout", "  title: House",
			`2:1: job: found no "stage"; expected one of planned, roughed-in, running and closeout`},
		{"no required fields", "x: 1 ft, y: 2 ft, z", "z",
			`19:7: house/openings/win-1/corner: found no "x" or "y"; expected each of them`},
		{"empty required field", "  stage: closeout", "  stage:",
			`4:3: job: found no "stage"; expected one of planned, roughed-in, running and closeout`},
		{"no id", "- id: sp-2", "- sealed: true",
			`42:9: systems/sys-2/suction_points/#1: found no "id"; expected text, such as "sys-1"`},
		{"no kind", "- kind: damper", "- count: 2",
			`33:13: systems/sys-1/pipe/leg-1/fittings/#1: found no "kind"; expected one of elbow-90-sweep, elbow-90-sharp, elbow-45-sweep, elbow-45-sharp, tee-run, tee-branch, reducer, damper, coupling and other`},

		{"yes", "freezing_climate: true", "freezing_climate: yes",
			`8:21: house/freezing_climate: found "yes"; write true or false`},
		{"quoted true", "freezing_climate: true", `freezing_climate: "True"`,
			`8:21: house/freezing_climate: found "True" in quotes; write true without them`},
		{"number for yes", "freezing_climate: true", "freezing_climate: 1",
			`8:21: house/freezing_climate: found the number 1; expected true or false`},
		{"number without a unit", "height_above_grade: 19 ft 6 in", "height_above_grade: 19.5",
			`38:27: systems/sys-1/discharge/height_above_grade: found the number 19.5; write it with its unit, such as "19 ft 6 in"`},
		{"true for a quantity", "eave_level: 18 ft", "eave_level: true",
			`9:15: house/eave_level: found true; expected a quantity with its unit, such as "18 ft"`},
		{"list for a quantity", "eave_level: 18 ft", "eave_level: [18 ft]",
			`9:3: house/eave_level: found a list; expected a quantity with its unit, such as "18 ft"`},
		{"number for a date", `on: "2026-03-02"`, "on: 20260302",
			`46:11: diagnostics/communication_tests/cp-1/on: found the number 20260302; expected a date, such as "2026-03-02"`},
		{"number for a time", `started: "2026-03-17T15:30:00-05:00"`, "started: 1530",
			`36:16: systems/sys-1/fan/started: found the number 1530; expected a date and time, such as "2026-03-17T15:30:00-05:00"`},
		{"quantity without its unit", "{value: 3, unit: ft}", "{value: 3}",
			`19:34: house/openings/win-1/corner/z: found no "unit"; expected text`},
		{"quantity with text for a number", "{value: 3, unit: ft}", `{value: "3", unit: ft}`,
			`19:45: house/openings/win-1/corner/z/value: found "3" in quotes; write the number without them`},
		{"text for a number", "airtightness_cfm50: 1500", "airtightness_cfm50: 1500 cfm",
			`11:25: house/air_handling/airtightness_cfm50: found "1500 cfm"; expected a number, such as 1500`},
		{"part of a storey", "storeys: 2", "storeys: 2.5",
			`7:12: house/storeys: found the number 2.5; expected a whole number, such as 2`},
		{"text for a storey", "storeys: 2", "storeys: two",
			`7:12: house/storeys: found "two"; expected a whole number, such as 2`},
		{"number for text", "id: J-0107", "id: 107",
			`3:7: job/id: found the number 107; write it in quotes, because it is text: "107"`},
		{"true for text", "  stage: closeout", "  stage: closeout\n  notes: true",
			`5:10: job/notes: found true; expected text, such as "Owner plans to finish the basement next spring."`},
		{"number for a choice", "stage: closeout", "stage: 4",
			`4:10: job/stage: found the number 4; expected one of planned, roughed-in, running and closeout`},
		{"text for a list of text", "profiles: [us-epa-1994]", "profiles: us-epa-1994",
			`5:13: job/profiles: found "us-epa-1994"; expected a list: ["us-epa-1994"]`},
		{"text for a list of groups", "        fittings:\n          - kind: damper", "        fittings: damper",
			`32:19: systems/sys-1/pipe/leg-1/fittings: found "damper"; expected a list`},
		{"group for a list", "          - kind: damper", "          kind: damper",
			`32:9: systems/sys-1/pipe/leg-1/fittings: found a group of fields; expected a list`},
		{"text for a group", "  air_handling:\n    airtightness_cfm50: 1500", "  air_handling: none",
			`10:17: house/air_handling: found "none"; expected a group of fields: airtightness_cfm50, change_reviewed, changed_as_fix, depressurizes_lowest_level and ducts_in_soil`},
		{"list for a group", "corner: {x: 1 ft, y: 2 ft, z: {value: 3, unit: ft}}", "corner: [1 ft, 2 ft, 3 ft]",
			`19:7: house/openings/win-1/corner: found a list; expected a group of fields: x, y and z`},
		{"text for an entry", "- kind: damper", "- damper",
			`33:13: systems/sys-1/pipe/leg-1/fittings/#1: found "damper"; expected a group of fields: count, kind and loss_coefficient`},
		{"empty entry", "profiles: [us-epa-1994]", "profiles: [us-epa-1994, ~]",
			`5:27: job/profiles/#2: found nothing; expected text`},

		{"misspelt choice", "stage: closeout", "stage: close-out",
			`4:10: job/stage: found "close-out"; did you mean "closeout"?`},
		{"choice like none", "stage: closeout", "stage: done",
			`4:10: job/stage: found "done"; expected one of planned, roughed-in, running and closeout`},
		{"choice like two", "kind: damper", "kind: elbow-90-shaep",
			`33:19: systems/sys-1/pipe/leg-1/fittings/#1/kind: found "elbow-90-shaep"; did you mean "elbow-90-sharp"?`},
		{"other record format", "record: 1", "record: 2",
			`1:9: record: found the number 2; expected 1`},
		{"id with a blank", "id: win-1", "id: win 1",
			`18:11: house/openings/#1/id: found "win 1"; expected letters, digits, dots, dashes and underscores, with a letter or digit first`},
		{"job number with a blank", "id: J-0107", "id: J 0107",
			`3:7: job/id: found "J 0107"; expected letters, digits, dots, dashes, underscores and slashes, with a letter or digit first`},
		{"long id", "id: win-1", "id: " + strings.Repeat("x", 65),
			`18:11: house/openings/#1/id: found text of 65 characters; expected at most 64`},
		{"empty text", "id: J-0107", `id: ""`,
			`3:7: job/id: found empty text; expected text, such as "J-0107", or the field left out`},
		{"empty choice", "stage: closeout", `stage: ""`,
			`4:10: job/stage: found ""; expected one of planned, roughed-in, running and closeout`},
		{"below the least", "storeys: 2", "storeys: -1",
			`7:12: house/storeys: found the number -1; expected 0 or more`},
		{"list too short", "profiles: [us-epa-1994]", "profiles: []",
			`5:3: job/profiles: found a list of 0; expected at least 1`},

		{"same id again", "- id: crawl", "- id: basement",
			`15:11: house/foundations: found the id "basement" on line 13 and again on line 15; give each entry of the record an id of its own`},
		{"same id elsewhere", "- id: leg-2", "- id: win-1",
			`34:13: systems/sys-1/pipe: found the id "win-1" on line 18 and again on line 34; give each entry of the record an id of its own`},
		{"misspelt reference", "foundation: basement", "foundation: basemnet",
			`22:17: entry_routes/crack-1/foundation: found "basemnet", which is no id of house/foundations; did you mean "basement"?`},
		{"unknown reference", "foundation: basement", "foundation: attic",
			`22:17: entry_routes/crack-1/foundation: found "attic", which is no id of house/foundations: "basement" and "crawl"`},
		{"reference to another list", "foundation: basement", "foundation: sys-1",
			`22:17: entry_routes/crack-1/foundation: found the id "sys-1", which is in systems (line 24); expected an id of house/foundations: "basement" and "crawl"`},
		{"reference to an empty list", "system: sys-1", "system: sys-1\n  smoke_tests: [{id: s-1, entry_route: crack-1}]\n  backdraft_tests: [{id: b-1, appliance: wh-1}]",
			`49:42: diagnostics/backdraft_tests/b-1/appliance: found "wh-1", which is no id of house/combustion, where there is none`},
		{"reference to another system", "starts_at: sp-1", "starts_at: sp-2",
			`30:20: systems/sys-1/pipe/leg-1/starts_at: found the id "sp-2", which is in systems/sys-2/suction_points (line 42); expected an id of systems/sys-1/suction_points: "sp-1"`},
		{"reference in a list", "foundations: [basement, crawl]", "foundations: [basement, crwl]",
			`25:29: systems/sys-1/foundations/#2: found "crwl", which is no id of house/foundations; did you mean "crawl"?`},
		{"reference to anything", "shows: [sys-1, win-1]", "shows: [sys-1, label-9]",
			`50:20: evidence/photo-1/shows/#2: found "label-9", which is no id of the record: "basement", "crawl", "win-1", "crack-1", "sys-1", "sp-1", "leg-1", "leg-2", "sys-2", "sp-2", "cp-1" and "photo-1"`},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := strings.Replace(small, c.from, c.to, 1)
			if text == small {
				t.Fatalf("%q is not in the small record", c.from)
			}
			if got := strings.Join(lines(v, readYAML(t, text)), "\n"); got != c.want {
				t.Errorf("got  %s\nwant %s", got, c.want)
			}
		})
	}
}

// What follows from a mistake alone is not told: what a part that cannot be
// understood may hold is not missing elsewhere.
func TestOneMistakeHidesNothingAndAddsNothing(t *testing.T) {
	v := newForTest(t)
	for _, c := range []struct {
		name, from, to string
		want           []string
	}{
		{"list with a misspelt name", "  foundations:\n    - id: basement", "  foundation:\n    - id: basement", []string{
			`12:3: house: found the unknown field "foundation"; did you mean "foundations"?`}},
		{"id with a misspelt name", "- id: basement", "- idd: basement", []string{
			`13:7: house/foundations/#1: found the unknown field "idd"; did you mean "id"?`}},
		{"id that is refused", "- id: basement", "- id: 17", []string{
			`13:11: house/foundations/#1/id: found the number 17; write it in quotes, because it is text: "17"`}},
		{"id left empty", "- id: basement", "- id:", []string{
			`13:7: house/foundations/#1: found no "id"; expected text, such as "sys-1"`}},
		{"entry that is no group", "    - id: basement\n      kind: basement", "    - 12", []string{
			`13:7: house/foundations/#1: found the number 12; expected a group of fields: block_tops, crawl_freeze_considered, crawl_vents_closable, drain_air_stop, drain_ends, earth_exposed, fill, fill_thickness, floor_above_sealed, footprint, id and 11 more`}},
		{"two mistakes in one entry", "- id: win-1", "- id: win 1\n      knd: window", []string{
			`18:11: house/openings/#1/id: found "win 1"; expected letters, digits, dots, dashes and underscores, with a letter or digit first`,
			`19:7: house/openings/#1: found the unknown field "knd"; did you mean "kind"?`}},
		{"a wrong reference beside a wrong value", "foundation: basement", "foundation: attic\n    removable: maybe", []string{
			`22:17: entry_routes/crack-1/foundation: found "attic", which is no id of house/foundations: "basement" and "crawl"`,
			`23:16: entry_routes/crack-1/removable: found "maybe"; write true or false`}},
	} {
		t.Run(c.name, func(t *testing.T) {
			text := strings.Replace(small, c.from, c.to, 1)
			if text == small {
				t.Fatalf("%q is not in the small record", c.from)
			}
			if diff := cmp.Diff(c.want, lines(v, readYAML(t, text))); diff != "" {
				t.Errorf("(-want +got)\n%s", diff)
			}
		})
	}
}

// An empty field was not recorded: a sheet that is still to be filled in is a
// valid record. An unknown field is never passed over, empty or not.
func TestEmptyFields(t *testing.T) {
	v := newForTest(t)
	text := strings.NewReplacer("storeys: 2", "storeys:", "eave_level: 18 ft", "eave_level: ~",
		"foundation: basement", "foundation:", "{value: 3, unit: ft}", "{value: 3, unit: ft, }",
		"fan:\n      started: \"2026-03-17T15:30:00-05:00\"", "fan:").Replace(small)
	if got := v.Check(readYAML(t, text)); got != nil {
		t.Errorf("got %v", got)
	}
	got := lines(v, readYAML(t, strings.Replace(text, "storeys:", "colour_of_door:", 1)))
	if len(got) != 1 || !strings.HasPrefix(got[0], `7:3: house: found the unknown field "colour_of_door"`) {
		t.Errorf("got %q", got)
	}
}

func TestAtMostFiftyErrors(t *testing.T) {
	v := newForTest(t)
	var b strings.Builder
	b.WriteString("{\"job\": {\"id\": \"J-1\", \"stage\": \"planned\", \"profiles\": [\"us-epa-1994\"]},\n")
	for i := range 80 {
		fmt.Fprintf(&b, "\"unknown_%02d\": 1,\n", 79-i)
	}
	b.WriteString("\"record\": 1}")
	got := v.Check(readJSON(t, []byte(b.String())))
	if len(got) != 51 {
		t.Fatalf("got %d errors", len(got))
	}
	for i, e := range got[:50] {
		want := fmt.Sprintf(`record: found the unknown field "unknown_%02d"; expected one of `, 79-i)
		if e.Line != i+2 || e.Column != 1 || e.File != "job.json" || !strings.HasPrefix(e.Message, want) {
			t.Errorf("error %d: %+v", i, e)
		}
	}
	if last := got[50]; last.Line != 52 || last.Message != "30 more mistakes stand from here on; mend those above first" {
		t.Errorf("last: %+v", last)
	}
}

// Goroutines share one Validator, and every run says the same.
func TestSharedAndDeterministic(t *testing.T) {
	text := strings.NewReplacer("stage: closeout", "stage: done", "kind: basement", "knid: basement",
		"rain_cap: false", "rain_cap: no", "x: 1 ft, y: 2 ft, ", "", "- id: leg-2", "- id: leg-1",
		"system: sys-1", "system: sys-9").Replace(small)
	want := lines(newForTest(t), readYAML(t, text))
	if len(want) != 6 {
		t.Fatalf("got %q", want)
	}
	v := newForTest(t)
	var group sync.WaitGroup
	for range 8 {
		group.Go(func() {
			for range 5 {
				if diff := cmp.Diff(want, lines(v, readYAML(t, text))); diff != "" {
					t.Errorf("(-first +now)\n%s", diff)
				}
			}
		})
	}
	group.Wait()
}

func readYAML(t testing.TB, text string) *record.Document {
	t.Helper()
	doc, err := record.ReadYAML("job.yaml", []byte(text), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func lines(v *Validator, doc *record.Document) []string {
	var out []string
	for _, e := range v.Check(doc) {
		out = append(out, fmt.Sprintf("%d:%d: %s", e.Line, e.Column, e.Message))
	}
	return out
}
