# METADATA
# title: The package says where monitors, ports and disconnects are
# description: In a hurry somebody has to find the switch without a tour of the attic.
# custom:
#   subject: closeout package
#   grade: recommended
#   stage: closeout
#   remedy: Write down where gauge, alarm, test ports and disconnect are.
package policy.papers.package_part_locations

import rego.v2

subjects contains ["closeout", ["closeout", "package", "part_locations"]]

met contains "closeout" if input.closeout.package.part_locations == true

deficient contains ["closeout", ["closeout", "package", "part_locations"]] if input.closeout.package.part_locations == false
