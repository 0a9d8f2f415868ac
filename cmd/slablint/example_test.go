package main

import (
	"bytes"
	"context"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/rulebook"
)

func TestDifferences(t *testing.T) {
	first := map[string]any{"house": map[string]any{"storeys": 2, "kind": "detached"}, "labels": []any{map[string]any{"id": "a"}, map[string]any{"id": "b"}}}
	second := map[string]any{"house": map[string]any{"storeys": 3}, "labels": []any{map[string]any{"id": "a", "text": "Radon"}}, "tests": []any{}}
	got := strings.Join(differences(first, second), "\n")
	want := "/tests: []\n/house/storeys: 3\n/house/kind is left out\n/labels/0/text: Radon\n/labels/1 is left out"
	if lines := strings.Split(want, "\n"); len(got) != len(want) || !allIn(got, lines) {
		t.Errorf("got\n%s\nwant\n%s", got, want)
	}
	if same := differences(first, first); len(same) > 0 {
		t.Errorf("a record differs from itself: %v", same)
	}
}

func allIn(text string, parts []string) bool {
	for _, part := range parts {
		if !strings.Contains(text, part) {
			return false
		}
	}
	return true
}

// Every thirtieth requirement explains itself with both examples.
func TestExplainShowsBothExamples(t *testing.T) {
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	for i, r := range rb.Requirements() {
		if i%30 != 0 {
			continue
		}
		var out, errs bytes.Buffer
		if status := run(context.Background(), []string{"explain", r.Name}, world{in: strings.NewReader(""), out: &out, errs: &errs}); status != 0 {
			t.Fatalf("%s: exit status %d: %s", r.Name, status, errs.String())
		}
		text := out.String()
		out.Reset()
		if run(context.Background(), []string{"explain", r.Name}, world{in: strings.NewReader(""), out: &out, errs: &errs}); out.String() != text {
			t.Errorf("%s shows other examples the second time", r.Name)
		}
		if !strings.Contains(text, "A record that meets it (for ") ||
			!strings.Contains(text, "It does not when this is changed:") && !strings.Contains(text, "A record that does not (for ") {
			t.Errorf("%s shows no pair of examples\n%s", r.Name, text)
		}
		if strings.Contains(text, "map[") || strings.Contains(text, "<nil>") {
			t.Errorf("%s shows a value that is not written for people\n%s", r.Name, text)
		}
	}
}
