# METADATA
# title: The proposal names the known hazards of chemicals used
# description: Someone with asthma or a newborn has to know of solvents before the day they are opened.
# custom:
#   subject: proposal
#   grade: required
#   stage: planned
#   remedy: Name sealants, primers and cements with their known hazards in the proposal.
package policy.papers.proposal_chemicals

import rego.v2

subjects contains ["closeout", ["closeout", "proposal", "chemical_hazards"]]

met contains "closeout" if input.closeout.proposal.chemical_hazards == true

deficient contains ["closeout", ["closeout", "proposal", "chemical_hazards"]] if input.closeout.proposal.chemical_hazards == false
