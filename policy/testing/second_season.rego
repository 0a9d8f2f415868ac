# METADATA
# title: A house without soil suction is tested in the heating and in the cooling season
# description: Ventilation and pressure change with the season far more than suction below the slab does.
# custom:
#   subject: system
#   grade: recommended
#   stage: closeout
#   remedy: Plan a second test in the other season of the first year.
package policy.testing.second_season

import data.policy.radon_tests
import data.policy.systems
import rego.v2

subjects contains ["systems", ["systems"]] if not is_array(input.systems)

subjects contains [s.id, ["measurements", "second_season_test_planned"]] if some s in input.systems

exempt contains [id, reason] if {
	some [id, _] in subjects
	some reason in radon_tests.not_asked
}

exempt contains [s.id, "the system draws soil gas"] if {
	some s in input.systems
	s.kind in systems.soil_kinds
}

judged contains s.id if {
	input.job.contaminant in {"radon", "both"}
	some s in input.systems
	is_string(s.kind)
	not s.kind in systems.soil_kinds
}

met contains id if {
	some id in judged
	input.measurements.second_season_test_planned == true
}

deficient contains [id, ["measurements", "second_season_test_planned"]] if {
	some id in judged
	input.measurements.second_season_test_planned == false
}

missing contains [id, ["job", "contaminant"]] if {
	some [id, _] in subjects
	not is_string(input.job.contaminant)
}

missing contains [s.id, ["systems", i, "kind"]] if {
	some i, s in input.systems
	not is_string(s.kind)
}

missing contains [s.id, ["measurements", "second_season_test_planned"]] if {
	some s in input.systems
	not is_boolean(input.measurements.second_season_test_planned)
}
