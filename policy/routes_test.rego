package policy.routes_test

import data.policy.routes
import rego.v2

job := {"entry_routes": [
	{"id": "lid", "kind": "sump", "treatment": "covered-and-sealed"},
	{"id": "open", "kind": "sump", "treatment": "left-open"},
	{"id": "pit", "kind": "sump"},
	{"id": "crack", "kind": "crack", "treatment": "not-reachable"},
	{"id": "blank"},
]}

test_kind_not_recorded if {
	got := routes.unlisted with input as job
	got == {["blank", ["entry_routes", 4, "kind"]]}
}

test_routes_not_recorded if {
	got := routes.unlisted with input as {}
	got == {["entry_routes", ["entry_routes"]]}
}

test_an_empty_list_says_that_there_are_none if {
	got := routes.unlisted with input as {"entry_routes": []}
	count(got) == 0
}

test_unreachable if {
	got := routes.unreachable with input as job
	{id | some [id, _] in got} == {"crack"}
}

test_lids if {
	lidded := routes.lidded with input as job
	lidded == {"lid"}
	bare := routes.bare with input as job
	{id | some [id, _] in bare} == {"open"}
	untreated := routes.untreated_sumps with input as job
	untreated == {["pit", ["entry_routes", 2, "treatment"]]}
}

test_shut_is_not_led_elsewhere if {
	"sealed" in routes.shut
	not "rerouted" in routes.shut
}
