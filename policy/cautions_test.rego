package policy.cautions_test

import data.policy.cautions
import rego.v2

shown(job) := n if n := count(cautions.show) with input as job

test_nothing_recorded_shows_nothing if shown({}) == 0

causes := [
	{"safety": {"concrete_drilled": true}},
	{"systems": [{"id": "s", "suction_points": [{"id": "p"}]}]},
	{"systems": [{"id": "s", "pipe": [{"id": "p"}]}]},
	{"systems": [{"id": "s", "powered_by": "fan"}]},
	{"systems": [{"id": "s", "discharge": {"mounting": "through-roof"}}]},
	{"house": {"combustion": [{"id": "c"}]}},
	{"house": {"hazards": [{"id": "h", "kind": "asbestos", "state": "suspected"}]}},
	{"house": {"year_built": 1968}},
	{"house": {"foundations": [{"id": "f", "kind": "crawlspace"}]}},
	{"measurements": {"tests": [{"id": "t", "phase": "before", "result": {"si": 3700}}]}},
	{"entry_routes": [{"id": "r", "kind": "crack", "material": "silicone"}]},
	{"systems": [{"id": "s", "kind": "sub-membrane"}]},
	{"entry_routes": [{"id": "r", "kind": "sump"}]},
	{"systems": [{"id": "s", "kind": "block-wall"}]},
	{"systems": [{"id": "s", "kind": "crawlspace-ventilation"}]},
	{"job": {"contaminant": "both"}},
	{"house": {"hazards": [{"id": "h", "kind": "gas-leak", "state": "suspected"}]}},
	{"house": {"hazards": [{"id": "h", "kind": "wiring", "state": "confirmed"}]}},
	{"house": {"hazards": [{"id": "h", "kind": "structure", "state": "confirmed"}]}},
	{"house": {"hazards": [{"id": "h", "kind": "mold", "state": "confirmed"}]}},
	{"safety": {"respirators_used": true}},
]

test_each_caution_has_its_cause if count([job | some job in causes; shown(job) == 1]) == count(causes)

test_cleared_asbestos_needs_no_caution if {
	shown({"house": {"hazards": [{"id": "h", "kind": "asbestos", "state": "ruled-out"}]}}) == 0
}

# Each of these also calls for the caution that goes with any suction point or
# any pipe.
more := [
	{"systems": [{"id": "s", "suction_points": [{"id": "p", "through": "slab"}]}]},
	{"systems": [{"id": "s", "suction_points": [{"id": "p", "through": "wall-from-outside"}]}]},
	{"systems": [{"id": "s", "pipe": [{"id": "p", "penetrations": [{"id": "h", "through": "floor"}]}]}]},
]

test_each_further_caution_has_its_cause if count([job | some job in more; shown(job) == 2]) == count(more)

test_abated_hazards_need_no_caution if {
	shown({"house": {"hazards": [{"id": "h", "kind": "gas-leak", "state": "ruled-out"}]}}) == 0
}
