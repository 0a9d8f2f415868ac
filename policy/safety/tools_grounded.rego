# METADATA
# title: Tools are grounded and fed through ground-fault protection
# description: A damp basement floor and a worn cord are enough to kill.
# custom:
#   subject: crew
#   grade: hazard
#   stage: roughed-in
#   remedy: Use grounded or double-insulated tools on a circuit with ground-fault protection.
#   caution: Take damaged cords out of use at once.
package policy.safety.tools_grounded

import rego.v2

subjects contains ["safety", ["safety", "tools_grounded"]]

met contains "safety" if input.safety.tools_grounded == true

deficient contains ["safety", ["safety", "tools_grounded"]] if input.safety.tools_grounded == false
