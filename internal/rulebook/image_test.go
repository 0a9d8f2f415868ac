package rulebook_test

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"github.com/slablint/slablint/internal/rulebook"
)

var update = flag.Bool("update", false, "rewrite generated files")

// The embedded form is generated: run "go test ./internal/rulebook -update"
// after editing a rule.
func TestImageIsFresh(t *testing.T) {
	if *topics != "" {
		return // only some topics are looked at
	}
	const path = "../../policy/rulebook.json"
	want, err := rulebook.Image(os.DirFS("../../policy"))
	if err != nil {
		t.Fatal(err)
	}
	if *update {
		if err := os.WriteFile(path, want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(path)
	if err != nil || !bytes.Equal(got, want) {
		t.Fatalf("%s is stale: run go test ./internal/rulebook -update", path)
	}
}
