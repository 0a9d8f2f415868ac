# METADATA
# title: The package holds copies of contract and warranty
# description: When the fan fails in its third year somebody has to find out who pays.
# custom:
#   subject: closeout package
#   grade: required
#   stage: closeout
#   remedy: Add copies of contract and warranty.
package policy.papers.package_contracts

import rego.v2

subjects contains ["closeout", ["closeout", "package", "contracts"]]

met contains "closeout" if input.closeout.package.contracts == true

deficient contains ["closeout", ["closeout", "package", "contracts"]] if input.closeout.package.contracts == false
