package rulebook_test

import (
	"encoding/json"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/rulebook"
)

// What a requirement depends on is found wherever the rule mentions it: under
// not, in a comprehension, through a shared module.
func TestReads(t *testing.T) {
	image, err := rulebook.Image(fstest.MapFS{
		"fans.rego": {Data: []byte(`# METADATA
# description: shared
package policy.fans

import rego.v2

placed contains s.id if {
	some s in input.systems
	is_string(s.fan.place)
}
`)},
		"fan/shown.rego": {Data: []byte(`# METADATA
# title: A fan is shown
# description: for the test
# custom:
#   subject: system
#   grade: required
#   stage: running
#   remedy: Show it.
package policy.fan.shown

import data.policy.fans
import rego.v2

subjects contains [s.id, ["systems", i, "fan"]] if some i, s in input.systems

met contains s.id if {
	some s in input.systems
	s.id in fans.placed
	not is_number(s.fan.started.si)
	count({p.id | some p in s.pipe; not p.schedule == "sch-40"}) == 0
}

deficient contains [s.id, ["systems", i, "fan"]] if {
	some i, s in input.systems
	not s.id in met
	not "system" in {l.kind | some l in s.labels}
}
`)},
	})
	if err != nil {
		t.Fatal(err)
	}
	var got struct{ Requirements []rulebook.Requirement }
	if err := json.Unmarshal(image, &got); err != nil {
		t.Fatal(err)
	}
	want := []string{
		"/systems/*/fan/place", "/systems/*/fan/started", "/systems/*/id",
		"/systems/*/labels/*/kind", "/systems/*/pipe/*/id", "/systems/*/pipe/*/schedule",
	}
	if diff := cmp.Diff(want, got.Requirements[0].Reads); diff != "" {
		t.Errorf("(-want +got)\n%s", diff)
	}
}
