package rulebook

import (
	"encoding/json"
	"maps"
	"os"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/schema"
)

// Every field that a METADATA block or a profile may hold is documented, and
// nothing is documented that is refused.
func TestFieldsAreDocumented(t *testing.T) {
	page, err := os.ReadFile("../../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	metadata := []string{"title", "description"}
	for _, field := range metadataFields {
		metadata = append(metadata, "custom."+field)
	}
	same(t, "the table of METADATA fields in DEVELOPERS.md", firstColumn(t, string(page), "METADATA field"), metadata)
	same(t, "the table of sets in DEVELOPERS.md", firstColumn(t, string(page), "set"), outcomeSets)
	for _, word := range append([]string{"dimension", "sense"}, senses...) {
		if !strings.Contains(string(page), "`"+word+"`") {
			t.Errorf("DEVELOPERS.md does not speak of `%s` in a limit: say what it means", word)
		}
	}
	type node struct {
		Properties map[string]*node `json:"properties"`
		Additional any              `json:"additionalProperties"`
	}
	var root node
	if err := json.Unmarshal(schema.Profile(), &root); err != nil {
		t.Fatal(err)
	}
	each := func(of string) *node {
		data, err := json.Marshal(root.Properties[of].Additional)
		if err != nil {
			t.Fatal(err)
		}
		var n node
		if err := json.Unmarshal(data, &n); err != nil {
			t.Fatal(err)
		}
		return &n
	}
	row := each("requirements")
	for what, fields := range map[string]struct {
		in     map[string]*node
		loader string
	}{
		"profile":  {root.Properties, profileFields},
		"document": {each("documents").Properties, documentFields},
		"scope":    {root.Properties["scope"].Properties, scopeFields},
		"row":      {row.Properties, rowFields},
		"source":   {row.Properties["source"].Properties, sourceFields},
	} {
		same(t, "the "+what+" in schema/profile.schema.json", slices.Collect(maps.Keys(fields.in)), strings.Fields(fields.loader))
	}
}

// firstColumn reads the names in the first column of the table with a heading.
func firstColumn(t *testing.T, page, heading string) []string {
	t.Helper()
	_, table, found := strings.Cut(page, "| "+heading+" |")
	if !found {
		t.Fatalf("DEVELOPERS.md has no table with the heading %q", heading)
	}
	table, _, _ = strings.Cut(table, "\n\n")
	var names []string
	for _, m := range regexp.MustCompile("(?m)^\\| `([^`]+)` \\|").FindAllStringSubmatch(table, -1) {
		names = append(names, m[1])
	}
	return names
}

func same(t *testing.T, where string, documented, accepted []string) {
	t.Helper()
	for _, name := range accepted {
		if !slices.Contains(documented, name) {
			t.Errorf("%s lacks %q, which the loader accepts: document it", where, name)
		}
	}
	for _, name := range documented {
		if !slices.Contains(accepted, name) {
			t.Errorf("%s has %q, which the loader refuses: strike it", where, name)
		}
	}
}
