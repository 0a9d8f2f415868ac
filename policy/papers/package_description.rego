# METADATA
# title: The package explains how the system works
# description: People look after what they understand; they block what they take for a drain.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add a description of the system in plain words.
package policy.papers.package_description

import rego.v2

subjects contains ["closeout", ["closeout", "package", "how_it_works"]]

met contains "closeout" if input.closeout.package.how_it_works == true

deficient contains ["closeout", ["closeout", "package", "how_it_works"]] if input.closeout.package.how_it_works == false
