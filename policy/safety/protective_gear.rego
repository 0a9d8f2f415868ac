# METADATA
# title: Hard hat, face and ear protection and gloves are at hand
# description: Chips in the eye and hammer-drill noise leave damage for life.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Bring the gear before drilling or cutting goes on.
#   caution: Wear eye and ear protection even for a single hole.
package policy.safety.protective_gear

import rego.v2

subjects contains ["safety", ["safety", "protective_gear"]]

met contains "safety" if input.safety.protective_gear == true

deficient contains ["safety", ["safety", "protective_gear"]] if input.safety.protective_gear == false
