package rulebook_test

import (
	"cmp"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/open-policy-agent/opa/v1/ast"

	"github.com/slablint/slablint/internal/rulebook"
)

// Every rule file lies in a known topic and has its test beside it; nothing is
// a test by its name only. Titles and remedies are written alike.
func TestRuleFiles(t *testing.T) {
	files := map[string]string{}
	for file, source := range regoFiles(t) {
		files[file] = string(source)
	}
	for _, m := range append(misplaced(t, files, reportTopics(t)), placeholders(files)...) {
		t.Error(m)
	}
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range miswritten(rb.Requirements()) {
		t.Error(m)
	}
}

func TestRuleFileMistakesAreStopped(t *testing.T) {
	const rule, test = "package policy.fan.listed", "package policy.fan.listed_test"
	known := []string{"fan"}
	for want, files := range map[string]map[string]string{
		"":                            {"fan/listed.rego": rule, "fan/listed_test.rego": test},
		"write fan/listed_test.rego":  {"fan/listed.rego": rule},
		"rename it":                   {"fan/listed_test.rego": rule, "fan/listed.rego": rule},
		"no rule fan/listed.rego":     {"fan/listed_test.rego": test},
		"name it fan/listed_test":     {"fan/listed.rego": test, "fan/listed_test.rego": test},
		"internal/report/topics.go":   {"fans/listed.rego": "package policy.fans.listed", "fans/listed_test.rego": "package policy.fans.listed_test"},
		"one folder below the policy": {"fan/a/b.rego": "package policy.fan.a.b", "fan/a/b_test.rego": "package policy.fan.a.b_test"},
	} {
		found := strings.Join(misplaced(t, files, known), "\n")
		if want != "" && !startsAtLine.MatchString(found) {
			t.Errorf("no file and line in %q", found)
		}
		if (want == "") != (found == "") || !strings.Contains(found, want) {
			t.Errorf("want %q, found %q", want, found)
		}
	}
	unfilled := strings.Join(placeholders(map[string]string{
		"fan/listed.rego":      "# METADATA\n# title: FILL IN what must be true\n" + rule,
		"fan/listed_test.rego": test + "\n\ntest_met if 1 == 1",
	}), "\n")
	if want := "policy/fan/listed.rego:2: left to fill in: what must be true"; unfilled != want {
		t.Errorf("want %q, found %q", want, unfilled)
	}
	good := rulebook.Requirement{Name: "fan.a", Title: "The fan runs", Remedy: "Start it.", File: "fan/a.rego", Line: 1}
	stopped, same, unended := good, good, good
	stopped.Title, same.Name, unended.Remedy = "The fan runs.", "fan.b", "Start it"
	for want, list := range map[string][]rulebook.Requirement{
		"":                   {good},
		"drop the full stop": {stopped},
		"is also that of":    {good, same},
		"end the remedy":     {unended},
	} {
		found := strings.Join(miswritten(list), "\n")
		if want != "" && !startsAtLine.MatchString(found) {
			t.Errorf("no file and line in %q", found)
		}
		if (want == "") != (found == "") || !strings.Contains(found, want) {
			t.Errorf("want %q, found %q", want, found)
		}
	}
}

var startsAtLine = regexp.MustCompile(`^policy/[a-z_/]+\.rego:[0-9]+: `)

// A rule in a file that the loader takes for a test would never be asked, so the
// loader refuses it, in a company's folder as in the program's own.
func TestRulesNamedLikeTestsAreRefused(t *testing.T) {
	policy := os.DirFS("../../policy")
	for want, test := range map[string]string{
		"":                          "package policy.fan.listed_test\n\ntest_x := true\n",
		"listed_test.rego:3: files": "package policy.fan.listed_test\n\nsubjects := {1}\n",
		"but the package is data.policy.fan.listed: rename": "package policy.fan.listed\n\ntest_x := true\n",
		"holds no test": "package policy.fan.listed_test\n\nx := 1\n",
	} {
		folder := fstest.MapFS{"fan/listed_test.rego": {Data: []byte(test)}}
		for _, file := range []string{"fan/listed.rego", "systems.rego"} {
			data, err := fs.ReadFile(policy, file)
			if err != nil {
				t.Fatal(err)
			}
			folder[file] = &fstest.MapFile{Data: data}
		}
		if _, err := rulebook.Image(folder); (want == "") != (err == nil) || err != nil && !strings.Contains(err.Error(), want) {
			t.Errorf("want %q, got %v", want, err)
		}
	}
}

func misplaced(t *testing.T, files map[string]string, topics []string) []string {
	t.Helper()
	var out []string
	for _, file := range slices.Sorted(maps.Keys(files)) {
		module, err := ast.ParseModule(file, files[file])
		if err != nil {
			t.Fatal(err)
		}
		say := func(format string, args ...any) {
			out = append(out, fmt.Sprintf("policy/%s:%d: %s", file, module.Package.Location.Row, fmt.Sprintf(format, args...)))
		}
		base, testFile := strings.CutSuffix(strings.TrimSuffix(file, ".rego"), "_test")
		testPackage := strings.HasSuffix(module.Package.Path.String(), "_test")
		switch {
		case testFile && !testPackage:
			say("only tests end in _test.rego, but the package is %s: rename it", module.Package.Path)
		case !testFile && testPackage:
			say("package %s holds tests: name it %s_test.rego", module.Package.Path, base)
		}
		topic, rest, nested := strings.Cut(base, "/")
		if !nested {
			continue
		}
		if strings.Contains(rest, "/") {
			say("rules lie one folder below the policy folder: move it to %s/", topic)
		}
		if !slices.Contains(topics, topic) {
			say("topic %q has no title: add it to internal/report/topics.go or use a known one", topic)
		}
		if _, ok := files[base+"_test.rego"]; !testFile && !ok {
			say("the rule has no test: write %s_test.rego", base)
		}
		if _, ok := files[base+".rego"]; testFile && !ok {
			say("there is no rule %s.rego that this would test: rename it or write the rule", base)
		}
	}
	return out
}

// placeholders finds what internal/scaffold wrote and nobody has filled in yet.
func placeholders(files map[string]string) []string {
	var out []string
	for _, file := range slices.Sorted(maps.Keys(files)) {
		line := 0
		for text := range strings.Lines(files[file]) {
			line++
			if _, what, found := strings.Cut(text, "FILL IN"); found {
				what = strings.Trim(what, " \"\n")
				out = append(out, fmt.Sprintf("policy/%s:%d: left to fill in: %s", file, line, cmp.Or(what, "the condition")))
			}
		}
	}
	return out
}

func miswritten(requirements []rulebook.Requirement) []string {
	var out []string
	titles := map[string]string{}
	for _, r := range requirements {
		say := func(format string, args ...any) {
			out = append(out, fmt.Sprintf("policy/%s:%d: %s", r.File, r.Line, fmt.Sprintf(format, args...)))
		}
		if strings.HasSuffix(r.Title, ".") {
			say("reports end the title with a full stop: drop the full stop of %q", r.Title)
		}
		if other, taken := titles[r.Title]; taken {
			say("the title %q is also that of %s: say how they differ", r.Title, other)
		}
		titles[r.Title] = r.Name
		if !strings.HasSuffix(r.Remedy, ".") {
			say("end the remedy %q with a full stop", r.Remedy)
		}
	}
	return out
}

var topicName = regexp.MustCompile(`(?m)^\t\{"([a-z_]+)", "`)

// reportTopics reads the topics that reports have a title for.
func reportTopics(t *testing.T) []string {
	t.Helper()
	source, err := os.ReadFile("../report/topics.go")
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, m := range topicName.FindAllStringSubmatch(string(source), -1) {
		names = append(names, m[1])
	}
	if len(names) < 15 {
		t.Fatalf("found only the topics %v in internal/report/topics.go", names)
	}
	return names
}
