package policy.marks_test

import data.policy.marks
import rego.v2

job := {"systems": [
	{"id": "full", "kind": "sub-slab", "powered_by": "fan", "labels": [{"id": "a", "kind": "system"}]},
	{"id": "part", "kind": "sub-slab", "powered_by": "fan", "labels": [{"id": "b", "kind": "pipe"}, {"id": "c"}]},
	{"id": "stack", "kind": "sub-slab", "powered_by": "passive", "labels": [{"id": "d", "kind": "system"}]},
	{"id": "bare", "kind": "sub-slab", "powered_by": "passive"},
]}

test_known if {
	got := marks.known with input as job
	got == {"full", "stack"}
}

test_vague if {
	got := marks.vague with input as job
	got == {["c", ["systems", 1, "labels", 1, "kind"]], ["bare", ["systems", 3, "labels"]]}
}

test_vague_without_systems if {
	got := marks.vague with input as {}
	got == {["systems", ["systems"]]}
}

test_untold if {
	got := marks.untold with input as job
	got == {["part", ["systems", 1, "labels", 1, "kind"]], ["bare", ["systems", 3, "labels"]]}
}

test_with_fan if {
	got := marks.with_fan with input as job
	got == {"a", "b", "c"}
}

test_without_fan if {
	got := marks.without_fan with input as job
	{id | some [id, _] in got} == {"d", "bare"}
}

test_unsaid if {
	got := marks.unsaid with input as {"systems": [
		{"id": "s", "kind": "sub-slab", "labels": [{"id": "a"}]},
		{"id": "t", "powered_by": "fan"},
	]}
	got == {["a", ["systems", 0, "powered_by"]], ["t", ["systems", 1, "kind"]]}
}

pipe_labels := {"systems": [
	{"id": "s", "labels": [
		{"id": "a", "kind": "pipe", "level": "Basement"},
		{"id": "b", "kind": "system", "place": "pipe", "level": "attic"},
		{"id": "c", "kind": "system", "place": "service-panel", "level": "garage"},
	]},
	{"id": "t", "labels": [{"id": "d", "kind": "pipe"}]},
	{"id": "u", "labels": [{"id": "e", "kind": "system"}]},
]}

test_on_pipe if {
	got := marks.on_pipe with input as pipe_labels
	got == {"a", "b", "d"}
}

test_levels if {
	got := marks.levels with input as pipe_labels
	got == {["s", "basement"], ["s", "attic"]}
}

test_anywhere if {
	got := marks.anywhere with input as pipe_labels
	got == {"t", "u"}
}
