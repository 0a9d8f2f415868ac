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
var scope = []place.Pointer{"/job/contaminant", "/job/profiles", "/house/kind", "/house/storeys", "/house/new_construction"}

// Taking something out of a record never makes anything met, nor exempts it:
// what is not recorded can at most become unrecorded.
func TestDeletingNeverHelps(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: allProfiles})
	known := fieldsRead(t)
	defer debug.SetGCPercent(debug.SetGCPercent(400)) // thousands of short-lived records
	for _, file := range fixtures(t, "faulty") {
		t.Run(filepath.Base(filepath.Dir(file)), func(t *testing.T) {
			d := newDeletion(t, p, file)
			fields := make(chan place.Pointer)
			var workers sync.WaitGroup
			for range runtime.GOMAXPROCS(0) {
				workers.Go(func() {
					for field := range fields {
						d.check(t, field, known)
					}
				})
			}
			for i, field := range members(d.doc.Root, place.Root) {
				if !testing.Short() || i%40 == 0 { // the race detector needs some of them, not all
					fields <- field
				}
			}
			close(fields)
			workers.Wait()
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
	verdicts map[string]finding.Verdict
	derived  any
	judged   atomic.Int64 // fields without which it was judged again
}

func newDeletion(t *testing.T, p *pipeline.Pipeline, file string) *deletion {
	t.Helper()
	d := &deletion{pipeline: p, doc: read(t, file), folder: filepath.Dir(file), verdicts: map[string]finding.Verdict{}}
	job, done, errs := p.RunWithInput(context.Background(), d.doc, os.DirFS(d.folder))
	if len(errs) > 0 {
		t.Fatalf("%s: %v", file, errs)
	}
	for _, f := range job.Findings {
		d.verdicts[f.Requirement+" "+f.Subject] = f.Verdict
	}
	d.derived = done.Input["derived"]
	return d
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
		if len(errs) > 0 || reflect.DeepEqual(input["derived"], d.derived) {
			return // no rule can tell the difference
		}
	}
	job, errs := d.pipeline.Run(context.Background(), reduced, files)
	if len(errs) > 0 {
		return // a mandatory field, or one that others refer to
	}
	d.judged.Add(1)
	for _, f := range job.Findings {
		before, there := d.verdicts[f.Requirement+" "+f.Subject]
		better := f.Verdict == finding.Met && before != finding.Met
		excused := f.Verdict == finding.NotApplicable && there && before != finding.NotApplicable
		if better || excused {
			t.Errorf("%s without %s: %s %s was %q and is now %s", d.doc.Name, field, f.Requirement, f.Subject, before, f.Verdict)
		}
		if f.Subject == "rulebook" {
			t.Errorf("%s without %s: %s: %s", d.doc.Name, field, f.Requirement, f.Reason)
		}
	}
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

// members lists every member of every object, less what sets the scope.
func members(n *record.Node, at place.Pointer) []place.Pointer {
	var out []place.Pointer
	for i := range n.Len() {
		item := n.Item(i)
		next := at.Append(i)
		if n.Kind() == record.Object {
			next = at.Append(item.Key())
			if !slices.Contains(scope, next) {
				out = append(out, next)
			}
		}
		out = append(out, members(item, next)...)
	}
	return out
}

// without is the record less one member, which leaves behind what sets the scope.
func without(doc *record.Document, field place.Pointer) (*record.Document, error) {
	value := doc.Root.Value()
	parent, _ := record.At(value, field.Parent())
	object := parent.(map[string]any)
	left := map[string]any{}
	for _, s := range scope {
		if kept, ok := record.At(value, s); ok && s.Parent() == field {
			left[s.Last()] = kept
		}
	}
	if len(left) > 0 {
		object[field.Last()] = left
	} else {
		delete(object, field.Last())
	}
	data, err := json.Marshal(value)
	if err != nil {
		return nil, err
	}
	return record.ReadJSON("reduced.json", data, record.Limits{})
}
