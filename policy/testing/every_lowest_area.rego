# METADATA
# title: Every area that stands on the ground was tested
# description: Slab, basement and crawlspace each have ground of their own; a good result over one says nothing about the next.
# custom:
#   subject: foundation area
#   grade: required
#   stage: closeout
#   remedy: Test the room on or over each area at the same time.
#   limits:
#     kinds: {dimension: choice, sense: applies-to}
package policy.testing.every_lowest_area

import data.policy.radon_tests
import rego.v2

limits := data.profile.testing.every_lowest_area
subjects contains ["house", ["house", "foundations"]] if not is_array(input.house.foundations)

subjects contains [f.id, ["house", "foundations", i]] if some i, f in input.house.foundations

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [f.id, "nobody lives on or over an area of this kind"] if {
	some f in input.house.foundations
	is_string(f.kind)
	not f.kind in limits.kinds.any_of
}

exempt contains [f.id, "there is no test after the work, which another requirement asks for"] if {
	some f in input.house.foundations
	radon_tests.none_after
}

tested contains t.foundation if {
	some t in input.measurements.tests
	t.id in radon_tests.after
}

# True when every test that counts or might says where it stood.
all_placed if {
	is_array(input.measurements.tests)
	count(radon_tests.open) == count({t.id |
		some t in input.measurements.tests
		t.id in radon_tests.after
		is_string(t.foundation)
	})
}

met contains f.id if {
	some f in input.house.foundations
	f.kind in limits.kinds.any_of
	f.id in tested
}

deficient contains [f.id, ["measurements", "tests"]] if {
	some f in input.house.foundations
	f.kind in limits.kinds.any_of
	all_placed
	not f.id in tested
}

missing contains [f.id, ["house", "foundations", i, "kind"]] if {
	some i, f in input.house.foundations
	not is_string(f.kind)
}

missing contains [f.id, path] if {
	some f in input.house.foundations
	some path in radon_tests.unsaid_of_all
}

missing contains [f.id, ["measurements", "tests", i, "foundation"]] if {
	some f in input.house.foundations
	some i, t in input.measurements.tests
	t.id in radon_tests.open
	not is_string(t.foundation)
}
