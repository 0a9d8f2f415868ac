package main

import (
	"context"
	"encoding/json"
	"io/fs"
	"maps"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
	"github.com/slablint/slablint/internal/summary"
	"github.com/slablint/slablint/schema"
)

// forTheRecord are the fields that nothing is concluded from, and why a record
// has them all the same.
var forTheRecord = map[string]string{
	"/record":    "says which version of this format the record keeps to; only one is accepted",
	"/job/notes": "is for what no field asks",

	"/job/jurisdiction/country":                      "whom to ask; profiles are named by the job and not found from it",
	"/job/jurisdiction/locality":                     "whom to ask",
	"/job/permits/*/kind":                            "tells permits apart",
	"/house/datum":                                   "the next crew measures from the same point",
	"/house/air_handling/airtightness_cfm50":         "the designer sizes for it; no source gives a limit",
	"/house/air_handling/depressurizes_lowest_level": "the designer looks for it; no source gives a limit",
	"/house/combustion/*/orphaned":                   "explains a wide flue; the table of limits asks only what shares it",
	"/house/combustion/*/outside_chimney":            "explains a weak draft; the table of drafts does not ask",
	"/house/combustion/*/zone":                       "where to find the appliance",
	"/house/foundations/*/earth_exposed":             "where a membrane is called for; what it covers is asked of the membrane",
	"/house/foundations/*/fill_thickness":            "explains how far suction reached, which is measured",
	"/house/foundations/*/lowest_level":              "where people would be tested; sources go by the kind of area",
	"/house/gathering_places/*/kind":                 "tells places apart",
	"/house/hazards/*/friable":                       "the accredited inspector asks; the crew stops either way",
	"/house/hazards/*/where":                         "where to stay away from",
	"/systems/*/electrical/low_voltage_fan":          "for the electrician; of the source only a notice was read",
	"/systems/*/fan/model":                           "what to order when it fails",
	"/systems/*/fan/serial":                          "for the maker's warranty",
	"/systems/*/fan/replaced":                        "how old this one is; whether the job replaced it follows from its purpose",
	"/systems/*/discharge/nearest_neighbor_told":     "said again by the notice among the papers, which is what counts",
	"/diagnostics/smoke_tests/*/entry_route":         "where the smoke was held",
	"/measurements/tests/*/device_model":             "who reads the report can look the device up",
	"/measurements/tests/*/serial":                   "which one it was, when it is found to be out of order",
	"/measurements/tests/*/laboratory":               "whom to ask about the result",
	"/measurements/tests/*/tester":                   "whom to ask about the test",
	"/measurements/tests/*/tester_credential":        "whom to ask about the test",
	"/measurements/waiver_signed":                    "where a state lets the owner do without a test; a variance rests on it",
	"/closeout/warranty/level":                       "what was promised; whether the paper says so is judged",
	"/closeout/state_report/filed_on":                "which report of the office it was",
	"/variances/*/granted":                           "how old the permission is; until when it holds is judged",
}

// rare is a job with what the fixtures lack.
const rare = `record: 1
job: {id: J-0199, stage: running, profiles: [common-practice]}
house:
  building_height: 20 ft
  indoor_temperature: 70 F
  winter_design_temperature: 10 F
systems:
  - id: sys
    suction_points: [{id: p}, {id: q}]
    pipe:
      - {id: leg, starts_at: p, flows_into: stack, inner_diameter: 3 in, length: 10 ft}
      - {id: other-leg, starts_at: q, inner_diameter: 3 in, length: 10 ft}
      - {id: stack, shape: downspout-3x4, inner_sides: [3-1/4 in, 2-3/8 in], length: 10 ft}
    discharge:
      clearances: [{id: around, legs: [6 ft, 5 ft]}]
diagnostics:
  communication_tests: [{id: cp, outdoor_temperature: 40 F, indoor_temperature: 70 F, holes: [{id: h, pressure: -4 Pa}]}]
measurements:
  tests:
    - {id: t, phase: after, result: 1 pCi/L}
    - {id: u, phase: after, result: 1 pCi/L, duplicate_of: t, spacing: 4 in}
  spikes: [{id: known, reference: 10 pCi/L, measured: 9 pCi/L}]
`

// Whatever a record asks for is of use: a rule reads it; or something computed
// names it as where it came from; or drawings, lists, verdicts and counts come out
// different when it is left out or changed.
func TestNothingIsAskedForNothing(t *testing.T) {
	if testing.Short() {
		return // takes minutes under the race detector, and starts nothing that could race
	}
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	p, err := pipeline.New(rb, pipeline.Options{AsOf: time.Date(2026, 7, 1, 0, 0, 0, 0, time.UTC)})
	if err != nil {
		t.Fatal(err)
	}
	read := reads{}
	for _, r := range rb.Requirements() {
		for _, path := range r.Reads {
			read.mark(path)
		}
	}
	files, err := filepath.Glob("../../fixtures/*/ready.yaml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no fixtures: %v", err)
	}
	documents := []*record.Document{document(t, "rare.yaml", []byte(rare))}
	for _, file := range files {
		documents = append(documents, fixture(t, file))
	}
	for _, doc := range documents {
		input, errs := p.Derive(doc, nil)
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		read.markInputs(record.Plain(input["derived"]))
	}
	var root asking
	if err := json.Unmarshal(schema.Job(), &root); err != nil {
		t.Fatal(err)
	}
	faulty := trial{&root, p, fixture(t, "../../fixtures/demo/faulty.yaml").Root.Value(), os.DirFS("../../fixtures/demo")}
	left := maps.Clone(forTheRecord)
	root.leaves("", func(path string, field *asking) {
		if read[path] {
			return
		}
		reason, listed := left[path]
		delete(left, path)
		switch used := faulty.changes(t, path, field); {
		case !used && !listed:
			t.Errorf("%s is asked for and nothing comes of it: use it in a rule, list it here with a reason, or drop it from schema/job.schema.json", path)
		case used && listed:
			t.Errorf("%s is listed here (%s), but something comes of it: take it off the list", path, reason)
		}
	})
	for path := range left {
		t.Errorf("%s is listed here, but it is read or no record has it: take it off the list", path)
	}
}

func fixture(t *testing.T, file string) *record.Document {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return document(t, file, data)
}

func document(t *testing.T, name string, data []byte) *record.Document {
	t.Helper()
	doc, err := record.Read(name, data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// reads are places that something reads, with * for an index.
type reads map[string]bool

func (r reads) mark(path string) {
	for ; path != ""; path = path[:strings.LastIndexByte(path, '/')] {
		r[path] = true
	}
}

// markInputs marks what computed values say that they came from, or lack.
func (r reads) markInputs(value any) {
	switch v := value.(type) {
	case map[string]any:
		for name, member := range v {
			if pointers, ok := member.([]any); ok && (name == "inputs" || name == "undetermined") {
				for _, p := range pointers {
					r.mark(starred(place.Pointer(p.(string))))
				}
				continue
			}
			r.markInputs(member)
		}
	case []any:
		for _, item := range v {
			r.markInputs(item)
		}
	}
}

func starred(p place.Pointer) string {
	var b strings.Builder
	for _, token := range p.Split() {
		if _, err := strconv.Atoi(token); err == nil {
			token = "*"
		}
		b.WriteString("/" + token)
	}
	return b.String()
}

// asking is as much of the record's schema as it takes to fill a field in.
type asking struct {
	Properties map[string]*asking `json:"properties"`
	Items      *asking            `json:"items"`
	Refers     string             `json:"refers"`
	Enum       []any              `json:"enum"`
	Examples   []any              `json:"examples"`
}

// leaves visits the fields that hold a value, with * for an entry of a list.
func (a *asking) leaves(at string, visit func(path string, field *asking)) {
	for _, name := range slices.Sorted(maps.Keys(a.Properties)) {
		field, path := a.Properties[name], at+"/"+name
		switch {
		case field.Properties != nil:
			field.leaves(path, visit)
		case field.Items != nil && field.Items.Properties != nil:
			field.Items.leaves(path+"/*", visit)
		default:
			visit(path, field)
		}
	}
}

// mostOthers bounds how many values of a field are tried.
const mostOthers = 4

// others are values that a field can have instead of one.
func (a *asking) others(whole, value any) []any {
	var list []any
	switch v := value.(type) {
	case json.Number:
		list = append(list, v+"0")
	case string:
		list = append(list, v+"9")
	case []any:
		list = append(list, append(slices.Clone(v), v...))
	}
	list = slices.Concat(list, a.Examples, a.Enum)
	list = list[:min(len(list), mostOthers)]
	if a.Refers != "" {
		list = nil
		for _, target := range objects(whole, a.Refers+"/*") {
			list = append(list, target["id"])
		}
	}
	return slices.DeleteFunc(list, func(v any) bool { return reflect.DeepEqual(v, value) })
}

// trial is a job of which one field after another is put to the test.
type trial struct {
	root     *asking
	pipeline *pipeline.Pipeline
	value    any
	files    fs.FS
}

// changes says whether anything comes out different when a field of the record
// is left out, filled in or changed.
func (tr trial) changes(t *testing.T, path string, field *asking) bool {
	cut := strings.LastIndexByte(path, '/')
	above, name := path[:cut], path[cut+1:]
	whole := clone(t, tr.value)
	tr.provide(whole, above)
	before, ok := tr.results(t, whole)
	if !ok {
		t.Fatalf("the record with an example of %s is refused", above)
	}
	differs := func(edit func(fields map[string]any)) bool {
		variant := clone(t, whole)
		edit(objects(variant, above)[0])
		after, ok := tr.results(t, variant)
		return ok && !reflect.DeepEqual(before, after)
	}
	value, there := objects(whole, above)[0][name]
	if there && differs(func(fields map[string]any) { delete(fields, name) }) {
		return true
	}
	return slices.ContainsFunc(field.others(whole, value), func(other any) bool {
		return differs(func(fields map[string]any) { fields[name] = other })
	})
}

// results is all that comes of a record, without what only says where it stands;
// false when it is refused, which says nothing about use.
func (tr trial) results(t *testing.T, value any) ([]any, bool) {
	t.Helper()
	data, err := json.Marshal(value)
	if err != nil {
		t.Fatal(err)
	}
	job, done, errs := tr.pipeline.RunWithInput(context.Background(), document(t, "record.json", data), tr.files)
	if len(errs) > 0 {
		return nil, false
	}
	illustrate(&job, done)
	job.SHA256 = ""
	for i := range job.Findings {
		job.Findings[i].At = finding.At{Path: job.Findings[i].At.Path}
	}
	return []any{job, record.Plain(done.Input["derived"]), summary.FactsOf(job, done.Input)}, true
}

// provide makes sure that the record has an object where the path leads, filled in
// by the schema's examples.
func (tr trial) provide(value any, path string) {
	here, shape := value.(map[string]any), tr.root
	for _, name := range strings.FieldsFunc(strings.ReplaceAll(path, "/*", "*"), func(r rune) bool { return r == '/' }) {
		name, list := strings.CutSuffix(name, "*")
		shape = shape.Properties[name]
		if list {
			shape = shape.Items
			entries, _ := here[name].([]any)
			if len(entries) == 0 {
				entries = []any{shape.example()}
				here[name] = entries
			}
			here = entries[0].(map[string]any)
			continue
		}
		next, there := here[name].(map[string]any)
		if !there {
			next = shape.example()
			here[name] = next
		}
		here = next
	}
}

// example is an object with an example in each field that holds a value of its own.
func (a *asking) example() map[string]any {
	out := map[string]any{}
	for name, field := range a.Properties {
		if len(field.Examples) > 0 && field.Refers == "" && (field.Items == nil || field.Items.Refers == "") {
			out[name] = field.Examples[0]
		}
	}
	if a.Properties["id"] != nil {
		out["id"] = "put-in"
	}
	return out
}

// objects are those that a path with stars leads to.
func objects(value any, path string) []map[string]any {
	here := []any{value}
	for _, name := range strings.FieldsFunc(path, func(r rune) bool { return r == '/' }) {
		var next []any
		for _, v := range here {
			if list, ok := v.([]any); ok {
				next = append(next, list...)
			} else if below, there := v.(map[string]any)[name]; there {
				next = append(next, below)
			}
		}
		here = next
	}
	out := make([]map[string]any, len(here))
	for i := range here {
		out[i] = here[i].(map[string]any)
	}
	return out
}

func clone(t *testing.T, value any) any {
	t.Helper()
	data, err := json.Marshal(value)
	if err != nil {
		t.Fatal(err)
	}
	return document(t, "record.json", data).Root.Value()
}
