package rulebook_test

import (
	"maps"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// Profiles say how each of their rows is known, name no document without need
// and together ask for every requirement there is.
func TestProfilesAreHonest(t *testing.T) {
	if *topics != "" {
		return // rows may name rules that are not embedded yet
	}
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	asked := map[string]bool{}
	for _, name := range rb.ProfileNames() {
		file := filepath.Join("../../policy/profiles", name+".yaml")
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		doc, err := record.ReadYAML(file, data, record.Limits{}) // refuses a row given twice
		if err != nil {
			t.Fatal(err)
		}
		s, err := rb.Select(name)
		if err != nil {
			t.Fatal(err)
		}
		cited := map[string]bool{}
		rows := doc.Root.Get("requirements")
		for i := range rows.Len() {
			row := rows.Item(i)
			asked[row.Key()] = true
			if document := row.Get("source").Get("document"); document != nil {
				cited[document.Text()] = true
			}
		}
		for _, key := range slices.Sorted(maps.Keys(s.Profiles[0].Documents)) {
			if !cited[key] {
				t.Errorf("%s:%d: document %q is cited by no row: drop it", file, doc.Root.Get("documents").Get(key).KeySpot(file).Line, key)
			}
		}
		for _, requirement := range s.Asked() {
			row, _ := s.Row(requirement)
			if src := row.Source; src.Basis == finding.Published && (src.Document == "" || src.Edition == "" || src.Section == "") {
				t.Errorf("%s:%d: %s is published, so a reader must find it: give document, edition and section, or the basis from-memory", file, row.Line, requirement)
			}
			for _, hearsay := range []string{"training text", "course text", "inspection list", "newsletter", "news report", "trade press", "law institute", "university"} {
				if row.Source.Basis == finding.Published && strings.Contains(row.Note, hearsay) {
					t.Errorf("%s:%d: %s is published, but its note rests on a %s", file, row.Line, requirement, hearsay)
				}
			}
			if strings.Contains(strings.ToLower(row.Source.Section), "unknown") {
				t.Errorf("%s:%d: %s: leave out a section that is not known", file, row.Line, requirement)
			}
			for limit, v := range row.Limits {
				if v.Unknown && row.Source.Basis == finding.Published {
					t.Errorf("%s:%d: %s: limit %s is unknown, so nothing of it was read: basis from-memory", file, row.Line, requirement, limit)
				}
			}
		}
	}
	all := rb.Requirements()
	if len(all) < 150 {
		t.Errorf("only %d requirements", len(all))
	}
	for _, r := range all {
		if !asked[r.Name] {
			t.Errorf("policy/%s:%d: no profile asks for %s: add a row to one of policy/profiles/", r.File, r.Line, r.Name)
		}
	}
}
