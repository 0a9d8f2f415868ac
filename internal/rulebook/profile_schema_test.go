package rulebook_test

import (
	"bytes"
	"os"
	"path/filepath"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// Editors complete profiles from the published schema, so it must accept what
// the loader accepts.
func TestBuiltinProfilesFollowTheirSchema(t *testing.T) {
	c := jsonschema.NewCompiler()
	if err := c.AddResource("profile", bytes.NewReader(schema.Profile())); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile("profile")
	if err != nil {
		t.Fatal(err)
	}
	files, err := filepath.Glob("../../policy/profiles/*.yaml")
	if err != nil || len(files) == 0 {
		t.Fatal("no profiles", err)
	}
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		doc, err := record.ReadYAML(file, data, record.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		if err := s.Validate(doc.Root.Value()); err != nil {
			t.Errorf("%s: %v", file, err)
		}
	}
}
