package pipeline_test

import (
	"context"
	"encoding/json"
	"os"
	"path/filepath"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// Taking something out of a record never makes anything met, nor exempts it:
// what is not recorded can at most become unrecorded.
func TestDeletingNeverHelps(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: allProfiles(t)})
	for _, file := range fixtures(t, "faulty") {
		doc := read(t, file)
		full := verdicts(t, p, doc, file)
		var fields []place.Pointer
		collect(doc.Root, place.Root, &fields)
		for _, field := range fields {
			reduced := without(t, doc, field)
			if reduced == nil {
				continue
			}
			job, errs := p.Run(context.Background(), reduced, os.DirFS(filepath.Dir(file)))
			if len(errs) > 0 {
				continue // a mandatory field, or one that others refer to
			}
			for _, f := range job.Findings {
				before, there := full[f.Requirement+" "+f.Subject]
				better := f.Verdict == finding.Met && before != finding.Met
				excused := f.Verdict == finding.NotApplicable && f.Subject != "job" && there && before != finding.NotApplicable
				if better || excused {
					t.Errorf("%s without %s: %s %s was %q and is now %s", file, field, f.Requirement, f.Subject, before, f.Verdict)
				}
				if f.Subject == "rulebook" {
					t.Errorf("%s without %s: %s: %s", file, field, f.Requirement, f.Reason)
				}
			}
		}
	}
}

// allProfiles stacks every profile; scopes still apply.
func allProfiles(t *testing.T) []string {
	t.Helper()
	return []string{"common-practice", "us-irc-appendix", "canada", "us-consensus", "us-epa-1994", "illinois", "minnesota", "pennsylvania"}
}

func verdicts(t *testing.T, p *pipeline.Pipeline, doc *record.Document, file string) map[string]finding.Verdict {
	t.Helper()
	job, errs := p.Run(context.Background(), doc, os.DirFS(filepath.Dir(file)))
	if len(errs) > 0 {
		t.Fatalf("%s: %v", file, errs)
	}
	out := map[string]finding.Verdict{}
	for _, f := range job.Findings {
		out[f.Requirement+" "+f.Subject] = f.Verdict
	}
	return out
}

// collect lists every member of every object.
func collect(n *record.Node, at place.Pointer, out *[]place.Pointer) {
	for i := range n.Len() {
		item := n.Item(i)
		if n.Kind() == record.Object {
			*out = append(*out, at.Append(item.Key()))
			collect(item, at.Append(item.Key()), out)
		} else {
			collect(item, at.Append(i), out)
		}
	}
}

// without is the record less one member.
func without(t *testing.T, doc *record.Document, field place.Pointer) *record.Document {
	t.Helper()
	value := doc.Root.Value()
	parent, _ := record.At(value, field.Parent())
	object, ok := parent.(map[string]any)
	if !ok {
		return nil
	}
	delete(object, field.Last())
	data, err := json.Marshal(value)
	if err != nil {
		t.Fatal(err)
	}
	reduced, err := record.ReadJSON("reduced.json", data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return reduced
}
