package settings

import (
	"bytes"
	"errors"
	"io/fs"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

const full = "records: [\"jobs/**/*.yaml\"]\nprofiles: [us-epa-1994, rules/company.yaml]\nhold_at: hazard\npolicy: rules/policy\nnew_only: true\n"

func TestRead(t *testing.T) {
	s, err := Read("slablint.yaml", []byte(full))
	if err != nil || s.HoldAt != finding.Hazard || s.Policy != "rules/policy" || !s.NewOnly || len(s.Profiles) != 2 {
		t.Fatalf("%+v, %v", s, err)
	}
	for file, want := range map[string]bool{
		"jobs/a.yaml": true, "jobs/2026/03/a b.yaml": true, "jobs/näh.yaml": true, "other/a.yaml": false, "jobs/a.json": false,
	} {
		if s.IsRecord(file) != want {
			t.Errorf("%s: %v", file, !want)
		}
	}
}

// Mistakes have a place, and the published schema refuses the same files.
func TestMistakes(t *testing.T) {
	c := jsonschema.NewCompiler()
	if err := c.AddResource("settings", bytes.NewReader(schema.Settings())); err != nil {
		t.Fatal(err)
	}
	published := c.MustCompile("settings")
	for _, tt := range []struct{ text, want string }{
		{strings.Replace(full, "records:", "record:", 1), `slablint.yaml:1:9: found the unknown field "record"`},
		{"hold_at: hazard\n", "slablint.yaml:1:1: records is missing"},
		{strings.Replace(full, "hazard", "grave", 1), `slablint.yaml:3:10: hold_at: unknown grade "grave"`},
		{strings.Replace(full, "true", "1", 1), "slablint.yaml:5:11: new_only: write true or false"},
		{strings.Replace(full, "[us-epa-1994, rules/company.yaml]", "us-epa-1994", 1), "slablint.yaml:2:11: profiles: expected a list of texts"},
		{strings.Replace(full, "us-epa-1994", "1994", 1), "slablint.yaml:2:12: profiles: expected a text"},
	} {
		_, err := Read("slablint.yaml", []byte(tt.text))
		if err == nil || !strings.Contains(err.Error(), tt.want) {
			t.Errorf("got %v\nwant %s", err, tt.want)
		}
		doc, err := record.ReadYAML("s.yaml", []byte(tt.text), record.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		if published.Validate(doc.Root.Value()) == nil {
			t.Errorf("the published schema accepts %q", tt.text)
		}
	}
	for _, text := range []string{strings.Replace(full, "rules/policy", "../policy", 1), strings.Replace(full, "jobs/**", "jobs/[", 1)} {
		if _, err := Read("slablint.yaml", []byte(text)); err == nil {
			t.Errorf("accepted %q", text)
		}
	}
	doc, err := record.ReadYAML("s.yaml", []byte(full), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	if err := published.Validate(doc.Root.Value()); err != nil {
		t.Error(err)
	}
}

func TestFindLooksUpward(t *testing.T) {
	files := fstest.MapFS{"jobs/2026/03/J-1.yaml": {}}
	if _, err := Find(files, "jobs/2026/03"); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("found settings where there are none: %v", err)
	}
	for _, name := range []string{FileName, "jobs/" + FileName, "jobs/2026/03/" + FileName} { // the nearest wins
		files[name] = &fstest.MapFile{Data: []byte(full)}
		if got, err := Find(files, "jobs/2026/03"); err != nil || got != name {
			t.Errorf("found %q, %v; want %q", got, err, name)
		}
	}
	if got, err := Find(files, "."); err != nil || got != FileName {
		t.Errorf("found %q, %v", got, err)
	}
}
