package pipeline_test

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"runtime"
	"runtime/debug"
	"slices"
	"strings"
	"sync"
	"sync/atomic"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// These say which standards speak of the job at all. Without them a standard
// that was out of scope applies again, so what it asks is asked anew.
var scope = []string{
	"/house/kind", "/house/new_construction", "/house/storeys", "/job/contaminant", "/job/existing_system/installed", "/job/purpose", "/systems/*/kind",
}

// outOfScope are the reasons that policy/scope.rego gives.
var outOfScope = []string{
	"the house has more storeys than the standard covers", "the standard is for new houses only", "the standard is not for new houses",
	"the standard is not for this contaminant", "the standard is not for this kind of building", "the standard is not for this kind of system",
	"the system is older than the standard",
}

// optional are things that no job has to have: a check of the instrument, a second
// detector, the outlet of pipe that is only roughed in, a picture. What is asked
// of one is asked of nothing without it, and none of it becomes met.
var optional = []string{
	"/measurements/spikes", "/measurements/tests/*/duplicate_of", "/systems/*/discharge",
	"/systems/*/gauge/photo", "/systems/*/labels/*/photo", "/systems/*/electrical/photo", "/systems/*/discharge/photo", "/entry_routes/*/photo",
}

// Taking something out of a record never makes anything met, nor exempts it:
// what is not recorded can at most become unrecorded.
func TestDeletingNeverHelps(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: allProfiles})
	known := fieldsRead(t)
	defer debug.SetGCPercent(debug.SetGCPercent(400)) // thousands of short-lived records
	for _, file := range fixtures(t, "faulty") {
		t.Run(filepath.Base(filepath.Dir(file)), func(t *testing.T) {
			d := newDeletion(p, read(t, file), filepath.Dir(file))
			if d == nil {
				t.Fatal("the fixture is no valid record")
			}
			var fields []place.Pointer
			for i, field := range members(d.doc.Root, place.Root) {
				if !testing.Short() || i%40 == 0 { // the race detector needs some of them, not all
					fields = append(fields, field)
				}
			}
			d.checkAll(t, fields, known)
			if n := d.judged.Load(); n < 400 && !testing.Short() {
				t.Errorf("only %d fields came to be judged", n)
			}
		})
	}
}

// allProfiles stacks every profile; each still speaks only of jobs in its scope.
var allProfiles = []string{"common-practice", "us-irc-appendix", "canada", "us-consensus", "us-epa-1994", "illinois", "minnesota", "pennsylvania", "chemical-vapor"}

// deletion is one record and what was found of it when it was whole.
type deletion struct {
	pipeline *pipeline.Pipeline
	doc      *record.Document
	folder   string
	found    map[string]finding.Finding // by requirement and subject
	open     map[string]bool            // requirements with anything against them
	derived  any
	judged   atomic.Int64 // fields without which it was judged again
}

// newDeletion judges the whole record; nil when it is no valid one.
func newDeletion(p *pipeline.Pipeline, doc *record.Document, folder string) *deletion {
	d := &deletion{pipeline: p, doc: doc, folder: folder, found: map[string]finding.Finding{}}
	job, done, errs := p.RunWithInput(context.Background(), d.doc, os.DirFS(d.folder))
	if len(errs) > 0 {
		return nil
	}
	for _, f := range job.Findings {
		d.found[f.Requirement+" "+f.Subject] = f
	}
	d.open = open(job)
	d.derived = record.Plain(done.Input["derived"])
	return d
}

// open are the requirements that have anything against them. A variance that is
// gone needs nothing more.
func open(job finding.Job) map[string]bool {
	out := map[string]bool{}
	for _, f := range job.Findings {
		if f.Verdict != finding.Met && f.Verdict != finding.NotApplicable && f.Topic() != "variances" {
			out[f.Requirement] = true
		}
	}
	return out
}

// checkAll takes the fields out, each by itself.
func (d *deletion) checkAll(t *testing.T, fields []place.Pointer, known map[string]bool) {
	t.Helper()
	next := make(chan place.Pointer)
	var workers sync.WaitGroup
	for range runtime.GOMAXPROCS(0) {
		workers.Go(func() {
			for field := range next {
				d.check(t, field, known)
			}
		})
	}
	for _, field := range fields {
		next <- field
	}
	close(next)
	workers.Wait()
}

func (d *deletion) check(t *testing.T, field place.Pointer, known map[string]bool) {
	reduced, err := without(d.doc, field)
	if err != nil {
		t.Error(err)
		return
	}
	files := os.DirFS(d.folder)
	if !known[template(field)] {
		input, errs := d.pipeline.Derive(reduced, files)
		if len(errs) > 0 || reflect.DeepEqual(record.Plain(input["derived"]), d.derived) {
			return // no rule can tell the difference
		}
	}
	job, errs := d.pipeline.Run(context.Background(), reduced, files)
	if len(errs) > 0 {
		return // a mandatory field, or one that others refer to
	}
	d.judged.Add(1)
	rescoped := names(scope, field)
	for _, f := range job.Findings {
		before, there := d.found[f.Requirement+" "+f.Subject]
		better := f.Verdict == finding.Met && before.Verdict != finding.Met
		excused := f.Verdict == finding.NotApplicable && there && before.Verdict != finding.NotApplicable
		again := rescoped && (!there || slices.Contains(outOfScope, before.Reason))
		if (better || excused) && !again {
			t.Errorf("%s without %s: %s %s was %q and is now %s", d.doc.Name, field, f.Requirement, f.Subject, before.Verdict, f.Verdict)
		}
		if f.Subject == "rulebook" {
			t.Errorf("%s without %s: %s: %s", d.doc.Name, field, f.Requirement, f.Reason)
		}
	}
	left := open(job)
	for requirement := range d.open {
		if !left[requirement] && !names(optional, field) {
			t.Errorf("%s without %s: nothing is left against %s", d.doc.Name, field, requirement)
		}
	}
}

// names says whether a list names a field, or something that goes with it.
func names(list []string, field place.Pointer) bool {
	at := template(field)
	return slices.ContainsFunc(list, func(s string) bool { return s == at || strings.HasPrefix(s, at+"/") })
}

// fieldsRead are the places that some rule reads, and those on the way to them.
func fieldsRead(t *testing.T) map[string]bool {
	t.Helper()
	out := map[string]bool{}
	for _, r := range builtin(t).Requirements() {
		for _, path := range r.Reads {
			for path != "" {
				out[path] = true
				path = path[:strings.LastIndexByte(path, '/')]
			}
		}
	}
	return out
}

// template is a place with every index written as *.
func template(field place.Pointer) string {
	var b strings.Builder
	for _, token := range field.Split() {
		if strings.Trim(token, "0123456789") == "" {
			token = "*"
		}
		b.WriteString("/" + token)
	}
	return b.String()
}

// members lists every member of every object.
func members(n *record.Node, at place.Pointer) []place.Pointer {
	var out []place.Pointer
	for i := range n.Len() {
		item := n.Item(i)
		next := at.Append(i)
		if n.Kind() == record.Object {
			next = at.Append(item.Key())
			out = append(out, next)
		}
		out = append(out, members(item, next)...)
	}
	return out
}

// without is the record less one member.
func without(doc *record.Document, field place.Pointer) (*record.Document, error) {
	value := doc.Root.Value()
	parent, _ := record.At(value, field.Parent())
	delete(parent.(map[string]any), field.Last())
	data, err := json.Marshal(value)
	if err != nil {
		return nil, err
	}
	return record.ReadJSON("reduced.json", data, record.Limits{})
}
