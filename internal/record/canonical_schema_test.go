package record_test

import (
	"bytes"
	"flag"
	"os"
	"testing"

	"github.com/slablint/slablint/internal/record"
)

var update = flag.Bool("update", false, "rewrite generated files")

// The canonical schema is generated: run "go test ./internal/record -update"
// after editing job.schema.json or derived.schema.json.
func TestCanonicalSchemaIsFresh(t *testing.T) {
	const path = "../../schema/canonical.schema.json"
	written, err := os.ReadFile("../../schema/job.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	derived, err := os.ReadFile("../../schema/derived.schema.json")
	if err != nil {
		t.Fatal(err)
	}
	want, err := record.CanonicalSchema(written, derived)
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
		t.Fatalf("%s is stale: run go test ./internal/record -update", path)
	}
}
