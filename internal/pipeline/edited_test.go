package pipeline_test

import (
	"context"
	"encoding/json"
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"sync"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/record"
)

// edits change fields of a record by their place, such as
// "systems/0/fan/place"; nil takes the field out.
type edits map[string]any

// edited is the ready record of a fixture with edits.
func edited(t *testing.T, fixture string, changes ...edits) *record.Document {
	t.Helper()
	root := read(t, "../../fixtures/"+fixture+"/ready.yaml").Root.Value()
	for _, change := range changes {
		for _, at := range slices.Sorted(maps.Keys(change)) {
			set(t, root, strings.Split(at, "/"), change[at])
		}
	}
	data, err := json.Marshal(root)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := record.ReadJSON("edited.json", data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func set(t *testing.T, node any, at []string, value any) {
	t.Helper()
	switch n := node.(type) {
	case map[string]any:
		switch {
		case len(at) == 1 && value == nil:
			delete(n, at[0])
		case len(at) == 1:
			n[at[0]] = value
		default:
			if n[at[0]] == nil {
				n[at[0]] = map[string]any{}
			}
			if list, ok := n[at[0]].([]any); ok && at[1] == strconv.Itoa(len(list)) {
				n[at[0]] = append(list, map[string]any{}) // one past the end adds an entry
			}
			set(t, n[at[0]], at[1:], value)
		}
	case []any:
		i, err := strconv.Atoi(at[0])
		if err != nil || i >= len(n) {
			t.Fatalf("no entry %s in a list of %d", at[0], len(n))
		}
		if len(at) == 1 {
			n[i] = value
			return
		}
		set(t, n[i], at[1:], value)
	default:
		t.Fatalf("%s is below a %T", strings.Join(at, "/"), node)
	}
}

// byProfile judges by one profile each, compiled once for all tests.
var byProfile struct {
	mu        sync.Mutex
	pipelines map[string]*pipeline.Pipeline
}

func onlyProfile(t *testing.T, profile string) *pipeline.Pipeline {
	t.Helper()
	byProfile.mu.Lock()
	defer byProfile.mu.Unlock()
	if byProfile.pipelines == nil {
		byProfile.pipelines = map[string]*pipeline.Pipeline{}
	}
	if byProfile.pipelines[profile] == nil {
		byProfile.pipelines[profile] = newPipeline(t, pipeline.Options{Profiles: []string{profile}})
	}
	return byProfile.pipelines[profile]
}

// expected is one verdict with the clause that it rests on; section "" is a
// source without one.
type expected struct {
	profile, requirement, subject string
	verdict                       finding.Verdict
	section                       string
	basis                         finding.Basis
}

// expect judges the record by each profile and looks for the verdicts.
func expect(t *testing.T, doc *record.Document, fixture string, wants []expected) {
	t.Helper()
	for _, want := range wants {
		files := os.DirFS(filepath.Join("../../fixtures", fixture))
		job, errs := onlyProfile(t, want.profile).Run(context.Background(), doc, files)
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		var about []finding.Finding
		for _, f := range job.Findings {
			if f.Requirement == want.requirement {
				about = append(about, f)
			}
		}
		i := slices.IndexFunc(about, func(f finding.Finding) bool { return f.Subject == want.subject })
		if i < 0 {
			t.Errorf("%s: %s says nothing of %s: %+v", want.profile, want.requirement, want.subject, about)
			continue
		}
		f := about[i]
		if f.Verdict != want.verdict {
			t.Errorf("%s: %s %s is %s, want %s: %s %s", want.profile, f.Requirement, f.Subject, f.Verdict, want.verdict, f.Message, f.Missing)
		}
		if f.Source.Section != want.section || f.Source.Basis != want.basis {
			t.Errorf("%s: %s rests on %q %s, want %q %s", want.profile, f.Requirement, f.Source.Section, f.Source.Basis, want.section, want.basis)
		}
	}
}
