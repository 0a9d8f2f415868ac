package main

import (
	"bytes"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// A requirement that was only scaffolded is stopped by the rulebook's tests,
// line by line, until it is filled in.
func TestRulebookTestsRefuseAScaffold(t *testing.T) {
	top := t.TempDir()
	if err := os.CopyFS(filepath.Join(top, "policy"), os.DirFS("../../policy")); err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	if status := run([]string{"labels", "panel_schedule"}, top, &out, &errs); status != 0 {
		t.Fatalf("status %d: %s", status, errs.String())
	}
	for _, want := range []string{
		"wrote policy/labels/panel_schedule.rego\nwrote policy/labels/panel_schedule_test.rego\n",
		"\n  labels.panel_schedule:\n",
		"go test ./internal/rulebook -topics labels\n",
	} {
		if !strings.Contains(out.String(), want) {
			t.Errorf("no %q in\n%s", want, out.String())
		}
	}
	cmd := exec.Command("go", "test", "./internal/rulebook",
		"-run", "^(TestRuleConventions|TestRuleFiles|TestRulesTypeCheck|TestRegoIsFormatted|TestRego)$",
		"-topics", "labels", "-policy", filepath.Join(top, "policy"))
	cmd.Dir = "../.."
	answer, err := cmd.CombinedOutput()
	if err == nil {
		t.Fatalf("the tests of the rulebook pass\n%s", answer)
	}
	for _, want := range []string{
		"policy/labels/panel_schedule.rego:2: left to fill in: what must be true, a statement without full stop\n",
		"policy/labels/panel_schedule.rego:6: left to fill in: hazard, required or recommended\n",
		"policy/labels/panel_schedule_test.rego:7: left to fill in: the source",
		"labels/panel_schedule.rego:1: METADATA field custom.grade: unknown grade",
		"panel_schedule.rego:19: no test reaches line",
		"panel_schedule_test.rego:14: test_met does not hold",
		"panel_schedule_test.rego:17: test_deficient does not hold",
		"panel_schedule_test.rego:20: test_not_applicable does not hold",
	} {
		if !strings.Contains(string(answer), want) {
			t.Errorf("no %q in\n%s", want, answer)
		}
	}
	for line := range strings.Lines(string(answer)) {
		if strings.Contains(line, "_test.go:") && !strings.Contains(line, "panel_schedule") && !strings.Contains(line, "coverage") || strings.Contains(line, "not formatted") {
			t.Errorf("more than the scaffold is refused: %s", line)
		}
	}
}

func TestScaffoldRefuses(t *testing.T) {
	top := t.TempDir()
	if err := os.CopyFS(filepath.Join(top, "policy"), os.DirFS("../../policy")); err != nil {
		t.Fatal(err)
	}
	for want, args := range map[string][]string{
		"usage: go run ./internal/scaffold TOPIC NAME":                      {"labels"},
		`unknown topic "lables": use one of alarm, `:                        {"lables", "panel_schedule"},
		"policy/exhaust/height_above_grade.rego is there already: choose":   {"exhaust", "height_above_grade"},
		"use small letters, digits and single underscores":                  {"labels", "Panel-Schedule"},
		`"../fan" is no name`:                                               {"labels", "../fan"},
		"leave _test out":                                                   {"labels", "panel_test"},
		`"every" is a word of the rule language: name what must be true in`: {"labels", "every"},
	} {
		var errs bytes.Buffer
		if status := run(args, top, io.Discard, &errs); status != 2 || !strings.Contains(errs.String(), want) {
			t.Errorf("%v: status %d, want 2 and %q: %s", args, status, want, errs.String())
		}
	}
	var errs bytes.Buffer
	if status := run([]string{"labels", "panel_schedule"}, t.TempDir(), io.Discard, &errs); status != 2 || !strings.Contains(errs.String(), "top folder") {
		t.Errorf("status %d outside a repository: %s", status, errs.String())
	}
}
