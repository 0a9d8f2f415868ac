package rulebook_test

import (
	"bytes"
	"cmp"
	"context"
	"flag"
	"io/fs"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/cover"
	"github.com/open-policy-agent/opa/v1/format"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"

	"github.com/slablint/slablint/internal/rulebook"
)

// While writing rules: go test ./internal/rulebook -topics exhaust,fan
var (
	topics       = flag.String("topics", "", "look only at these topics, separated by commas")
	policyFolder = flag.String("policy", "../../policy", "look at the rules of this folder")
)

// regoFiles reads every Rego file of the policy folder, tests included.
func regoFiles(t *testing.T) map[string][]byte {
	t.Helper()
	files := map[string][]byte{}
	err := fs.WalkDir(os.DirFS(*policyFolder), ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(file, ".rego") {
			return err
		}
		if topic, _, nested := strings.Cut(file, "/"); nested && *topics != "" && !slices.Contains(strings.Split(*topics, ","), topic) {
			return nil
		}
		files[file], err = fs.ReadFile(os.DirFS(*policyFolder), file)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// A misspelled field, limit or function does not get past this test.
func TestRulesTypeCheck(t *testing.T) {
	folder := fstest.MapFS{}
	for file, source := range regoFiles(t) {
		folder[file] = &fstest.MapFile{Data: source}
	}
	if _, err := rulebook.Image(folder); err != nil {
		t.Fatal(err)
	}
}

func TestRegoIsFormatted(t *testing.T) {
	for file, source := range regoFiles(t) {
		want, err := format.SourceWithOpts(file, source, format.Opts{RegoVersion: ast.RegoV1})
		if err != nil {
			t.Error(err)
			continue
		}
		if *update && !bytes.Equal(source, want) {
			if err := os.WriteFile(*policyFolder+"/"+file, want, 0o644); err != nil {
				t.Fatal(err)
			}
			source = want
		}
		if !bytes.Equal(source, want) {
			t.Errorf("policy/%s:%d: not formatted from here on: run go test ./internal/rulebook -run Formatted -update", file, firstDifference(source, want))
		}
	}
}

// firstDifference is the number of the first line in which two texts differ.
func firstDifference(a, b []byte) int {
	line := 1
	for i := range min(len(a), len(b)) {
		if a[i] != b[i] {
			break
		}
		if a[i] == '\n' {
			line++
		}
	}
	return line
}

// Rego unit tests run against the same type check as the rules, and must reach
// every line of every rule.
func TestRego(t *testing.T) {
	modules := map[string]*ast.Module{}
	for file, source := range regoFiles(t) {
		m, err := ast.ParseModuleWithOpts(file, string(source), ast.ParserOptions{ProcessAnnotation: true})
		if err != nil {
			t.Fatal(err)
		}
		modules[file] = m
	}
	coverage := cover.New()
	results, err := tester.NewRunner().
		SetStore(inmem.New()).
		SetCoverageQueryTracer(coverage).
		SetModules(modules).
		RunTests(context.Background(), nil)
	if err != nil {
		t.Fatal(err)
	}
	count := 0
	for r := range results {
		count++
		if r.Error != nil || r.Fail {
			t.Errorf("policy/%s:%d: %s does not hold (%s): run go test ./internal/rulebook -topics %s while you mend it, or the rule",
				r.Location.File, r.Location.Row, r.Name, cmp.Or(reason(r), "false"), strings.Split(r.Location.File, "/")[0])
		}
	}
	report := coverage.Report(modules)
	for file, f := range report.Files {
		if strings.HasSuffix(file, "_test.rego") || *topics != "" && !strings.Contains(file, "/") {
			continue // what rules share needs the tests of all topics
		}
		for _, gap := range f.NotCovered {
			t.Errorf("policy/%s:%d: no test reaches lines %d to %d: write one that does, or drop them", file, gap.Start.Row, gap.Start.Row, gap.End.Row)
		}
	}
	t.Logf("%d Rego tests, rule coverage %.1f %%", count, report.Coverage)
}

// reason is what a test that could not be run says.
func reason(r *tester.Result) string {
	if r.Error == nil {
		return ""
	}
	return r.Error.Error()
}
