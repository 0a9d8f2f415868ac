# METADATA
# title: Ducts in or under the slab are sealed against the soil
# description: A leaky duct in the ground is a fan that blows soil gas into every bedroom.
# custom:
#   subject: ducts
#   grade: required
#   stage: roughed-in
#   remedy: Seal the ducts, or abandon them, fill them and run new ones above the slab.
#   caution: Work on heating and cooling is for licensed people.
#   limits:
#     ducts: {dimension: choice, sense: one-of}
#     not_for: {dimension: choice, sense: not-for}
package policy.sealing.soil_ducts

import data.policy.houses
import rego.v2

limits := data.profile.sealing.soil_ducts

subjects contains ["house", ["house", "air_handling", "ducts_in_soil"]]

exempt contains [id, "its source leaves out houses of this age"] if {
	some [id, _] in subjects
	houses.left_out(limits.not_for.any_of)
}

met contains "house" if {
	houses.meant(limits.not_for.any_of)
	input.house.air_handling.ducts_in_soil in limits.ducts.any_of
}

deficient contains ["house", ["house", "air_handling", "ducts_in_soil"], "ducts"] if {
	houses.meant(limits.not_for.any_of)
	is_string(input.house.air_handling.ducts_in_soil)
	not input.house.air_handling.ducts_in_soil in limits.ducts.any_of
}

missing contains ["house", ["house", "new_construction"]] if houses.untold(limits.not_for.any_of)

missing contains ["house", ["house", "air_handling", "ducts_in_soil"]] if {
	not is_string(input.house.air_handling.ducts_in_soil)
}
