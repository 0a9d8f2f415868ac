# METADATA
# title: The package gives the contacts of the contractor and of the state radon office
# description: In the year the fan stops the owner needs a number that answers.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add name, phone and credential number of the contractor and the phone of the state radon office.
package policy.papers.package_contacts

import rego.v2

subjects contains ["closeout", ["closeout", "package", "contacts"]]

met contains "closeout" if input.closeout.package.contacts == true

deficient contains ["closeout", ["closeout", "package", "contacts"]] if input.closeout.package.contacts == false
