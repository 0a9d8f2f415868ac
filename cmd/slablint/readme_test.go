package main

import (
	"bytes"
	"context"
	"os"
	"strings"
	"testing"
	"time"
)

// The example in the README is executed: the record is the fixture, and the
// findings are what it gives. Digests are left out of the example, since every
// new requirement changes them.
func TestReadmeShowsWhatComesOut(t *testing.T) {
	t.Chdir("../..")
	readme, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	record, err := os.ReadFile("fixtures/readme/record.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var out, errs bytes.Buffer
	status := run(context.Background(), []string{"check", "fixtures/readme/record.yaml"},
		world{in: strings.NewReader(""), out: &out, errs: &errs, today: time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)})
	if status != 1 {
		t.Fatalf("exit status %d: %s%s", status, out.String(), errs.String())
	}
	var findings strings.Builder
	for line := range strings.Lines(out.String()) {
		if !strings.Contains(line, "sha256") {
			findings.WriteString(line)
		}
	}
	want := fill(t, string(readme), "<!-- record:", "<!-- /record -->", "yaml", string(record))
	want = fill(t, want, "<!-- findings:", "<!-- /findings -->", "", findings.String())
	if *update {
		if err := os.WriteFile("README.md", []byte(want), 0o644); err != nil {
			t.Fatal(err)
		}
		return
	}
	if want != string(readme) {
		t.Error("the example in README.md is stale: run go test ./cmd/slablint -run TestReadme -update")
	}
	if lines := strings.Count(want, "\n"); lines > 150 {
		t.Errorf("README.md has %d lines, more than anybody reads", lines)
	}
}

// fill replaces the fenced block between two marks.
func fill(t *testing.T, text, from, to, language, block string) string {
	t.Helper()
	start := strings.Index(text, from)
	end := strings.Index(text, to)
	if start < 0 || end < start {
		t.Fatalf("README.md has no block from %s to %s", from, to)
	}
	line := start + strings.Index(text[start:], "\n") + 1
	return text[:line] + "```" + language + "\n" + block + "```\n" + text[end:]
}
