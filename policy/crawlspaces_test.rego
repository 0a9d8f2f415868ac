package policy.crawlspaces_test

import data.policy.crawlspaces
import rego.v2

job := {
	"house": {"foundations": [
		{"id": "north", "kind": "crawlspace"},
		{"id": "south", "kind": "crawlspace"},
		{"id": "middle", "kind": "basement"},
	]},
	"systems": [
		{"id": "air", "kind": "crawlspace-ventilation", "foundations": ["north"]},
		{"id": "pull", "kind": "sub-slab"},
	],
}

test_aired if {
	got := crawlspaces.aired with input as job
	got == {"north"}
}

test_others if {
	got := crawlspaces.others with input as job
	got == {
		["middle", "it is no crawlspace"],
		["middle", "it is not aired against radon"],
		["south", "it is not aired against radon"],
	}
}

test_no_others_when_a_kind_is_missing if {
	got := crawlspaces.others with input as {"house": job.house, "systems": [{"id": "blank"}]}
	got == {["middle", "it is no crawlspace"]}
}

test_unlisted if {
	got := crawlspaces.unlisted with input as {}
	got == {["house", ["house", "foundations"]]}
}

test_unsaid if {
	got := crawlspaces.unsaid with input as {"house": {"foundations": [{"id": "f"}]}, "systems": [{"id": "s"}]}
	got == {
		["f", ["house", "foundations", 0, "kind"]],
		["f", ["systems", 0, "kind"]],
		["f", ["systems", 0, "foundations"]],
	}
}

test_unsaid_without_systems if {
	got := crawlspaces.unsaid with input as {"house": {"foundations": [{"id": "f", "kind": "crawlspace"}]}}
	got == {["f", ["systems"]]}
}

test_unsaid_without_foundations if {
	got := crawlspaces.unsaid with input as {}
	got == {["house", ["house", "foundations"]]}
}
