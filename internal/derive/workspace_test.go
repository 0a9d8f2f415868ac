package derive_test

import (
	"os"
	"path/filepath"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/record"
)

// What is derived of a record does not depend on the records that were derived in
// the same memory before it: larger, smaller, faulty or empty.
func TestWorkspaceKeepsNothing(t *testing.T) {
	jobs, err := filepath.Glob("../../fixtures/*/faulty.yaml")
	if err != nil || len(jobs) == 0 {
		t.Fatalf("no faulty jobs: %v", err)
	}
	names := slices.Concat(records, jobs, records)
	var w derive.Workspace
	for _, name := range names {
		input, files := load(t, name), os.DirFS(filepath.Dir(name))
		for range 2 { // the second time its memory is in one piece
			got := record.Plain(w.Derive(input, files))
			if diff := cmp.Diff(document(input, files), got); diff != "" {
				t.Fatalf("%s alone (-), after others (+):\n%s", name, diff)
			}
		}
		if diff := cmp.Diff(document(nil, nil), record.Plain(w.Derive(nil, nil))); diff != "" {
			t.Fatalf("no record alone (-), after %s (+):\n%s", name, diff)
		}
	}
}
