package pipeline_test

import (
	"bytes"
	"context"
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

var update = flag.Bool("update", false, "rewrite expected reports")

// asOf is the day on which the variances of the fixtures are looked at.
var asOf = time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)

var loadBuiltin = sync.OnceValues(rulebook.Builtin)

func builtin(t testing.TB) *rulebook.Rulebook {
	t.Helper()
	rb, err := loadBuiltin()
	if err != nil {
		t.Fatal(err)
	}
	return rb
}

func newPipeline(t testing.TB, options pipeline.Options) *pipeline.Pipeline {
	t.Helper()
	options.AsOf = asOf
	p, err := pipeline.New(builtin(t), options)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// shared judges by the profiles of each record; each stack is compiled once for
// all tests.
var shared struct {
	once     sync.Once
	pipeline *pipeline.Pipeline
}

func sharedPipeline(t testing.TB) *pipeline.Pipeline {
	t.Helper()
	shared.once.Do(func() { shared.pipeline = newPipeline(t, pipeline.Options{}) })
	return shared.pipeline
}

func fixtures(t testing.TB, name string) []string {
	t.Helper()
	files, err := filepath.Glob("../../fixtures/*/" + name + ".yaml")
	if err != nil || len(files) == 0 {
		t.Fatalf("no fixtures %s.yaml: %v", name, err)
	}
	return files
}

func read(t testing.TB, file string) *record.Document {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := record.Read(strings.TrimPrefix(filepath.ToSlash(file), "../../"), data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

func judged(t testing.TB, p *pipeline.Pipeline, file string) finding.Job {
	t.Helper()
	job, errs := p.Run(context.Background(), read(t, file), os.DirFS(filepath.Dir(file)))
	if len(errs) > 0 {
		t.Fatalf("%s: %v", file, errs)
	}
	return job
}

// planted reads the faults that a record says it has: comment lines of the form
// "# planted: requirement subject".
func planted(t *testing.T, file string) []string {
	t.Helper()
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for line := range strings.Lines(string(data)) {
		if fault, ok := strings.CutPrefix(strings.TrimSpace(line), "# planted: "); ok {
			out = append(out, fault)
		}
	}
	slices.Sort(out)
	return out
}

func holding(job finding.Job) []string {
	var out []string
	for _, f := range job.Findings {
		if f.Holds {
			out = append(out, f.Requirement+" "+f.Subject)
		}
	}
	slices.Sort(out)
	return out
}

func TestReadyJobsAreReady(t *testing.T) {
	p := sharedPipeline(t)
	for _, file := range fixtures(t, "ready") {
		job := judged(t, p, file)
		if job.Outcome != finding.Ready {
			t.Errorf("%s is on hold by %s", file, strings.Join(holding(job), "\n\t"))
		}
		if job.Counts.Met < 50 {
			t.Errorf("%s: only %d met", file, job.Counts.Met)
		}
	}
}

func TestFaultyJobsAreHeldByThePlantedFaultsAndNothingElse(t *testing.T) {
	p := sharedPipeline(t)
	for _, file := range fixtures(t, "faulty") {
		want := planted(t, file)
		if len(want) == 0 {
			t.Errorf("%s plants nothing", file)
		}
		if diff := cmp.Diff(want, holding(judged(t, p, file))); diff != "" {
			t.Errorf("%s: planted (-), found (+)\n%s", file, diff)
		}
	}
}

// The expected report beside each record holds its findings; requirements that
// are met are only counted so that a new requirement does not rewrite them all.
func TestExpectedReports(t *testing.T) {
	p := sharedPipeline(t)
	for _, file := range slices.Concat(fixtures(t, "ready"), fixtures(t, "faulty")) {
		job := judged(t, p, file)
		job.Digest = ""
		job.Findings = slices.DeleteFunc(job.Findings, func(f finding.Finding) bool {
			return f.Verdict == finding.Met || f.Verdict == finding.NotApplicable
		})
		var got bytes.Buffer
		enc := json.NewEncoder(&got)
		enc.SetEscapeHTML(false)
		enc.SetIndent("", " ")
		if err := enc.Encode(job); err != nil {
			t.Fatal(err)
		}
		expected := strings.TrimSuffix(file, ".yaml") + ".report.json"
		if *update {
			if err := os.WriteFile(expected, got.Bytes(), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(expected)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(string(want), got.String()); diff != "" {
			t.Errorf("%s differs (-want +got): go test ./internal/pipeline -update rewrites it\n%s", expected, diff)
		}
	}
}

// A record that says nothing has nothing right: no requirement of any profile
// may be met, and nothing may crash.
func TestEmptyRecordMeetsNothing(t *testing.T) {
	p := sharedPipeline(t)
	for _, profile := range builtin(t).ProfileNames() {
		text := "job: {id: J-0, stage: closeout, profiles: [" + profile + "]}\n"
		doc, err := record.ReadYAML("empty.yaml", []byte(text), record.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		job, errs := p.Run(context.Background(), doc, nil)
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		for _, f := range job.Findings {
			if f.Verdict == finding.Met || f.Verdict == finding.Deficient || f.Subject == "rulebook" {
				t.Errorf("%s: %s %s is %s of an empty record (%s)", profile, f.Requirement, f.Subject, f.Verdict, f.Reason)
			}
		}
	}
}

func TestSameRecordSameBytes(t *testing.T) {
	file := fixtures(t, "faulty")[0]
	p := newPipeline(t, pipeline.Options{Values: true})
	first, err := json.Marshal(judged(t, p, file))
	if err != nil {
		t.Fatal(err)
	}
	for i := range 10 {
		if i == 5 { // as another start of the program compiles it
			p = newPipeline(t, pipeline.Options{Values: true})
		}
		again, err := json.Marshal(judged(t, p, file))
		if err != nil {
			t.Fatal(err)
		}
		if !bytes.Equal(first, again) {
			t.Fatal(cmp.Diff(string(first), string(again)))
		}
	}
}

// A job stands by itself: judging others after it, in the memory that it was
// judged in, changes nothing.
func TestJobsOutliveTheirMemory(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Values: true})
	files := slices.Concat(fixtures(t, "ready"), fixtures(t, "faulty"))
	jobs := make([]finding.Job, len(files))
	for i, file := range files {
		jobs[i] = judged(t, p, file)
	}
	for i, file := range files {
		alone, _, errs := p.RunWithInput(context.Background(), read(t, file), os.DirFS(filepath.Dir(file)))
		if len(errs) > 0 {
			t.Fatalf("%s: %v", file, errs)
		}
		if diff := cmp.Diff(alone, jobs[i]); diff != "" {
			t.Errorf("%s alone (-), before others (+):\n%s", file, diff)
		}
	}
}

// The JSON twin of a YAML record gives the same verdicts.
func TestJSONTwin(t *testing.T) {
	p := sharedPipeline(t)
	for _, file := range fixtures(t, "faulty") {
		doc := read(t, file)
		data, err := json.Marshal(doc.Root.Value())
		if err != nil {
			t.Fatal(err)
		}
		twin, err := record.ReadJSON("twin.json", data, record.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		job, errs := p.Run(context.Background(), twin, os.DirFS(filepath.Dir(file)))
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		if diff := cmp.Diff(holding(judged(t, p, file)), holding(job)); diff != "" {
			t.Errorf("%s: YAML (-), JSON (+)\n%s", file, diff)
		}
	}
}
