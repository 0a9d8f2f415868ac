# METADATA
# title: The rulebook
# description: |
#   One package below this one is one requirement. A requirement names its
#   subjects and says which of them are met, deficient or exempt; a subject of
#   which nothing can be said is unrecorded.
# scope: subpackages
# schemas:
#   - input: schema.canonical
#   - data.profile: schema.profile
package policy

import rego.v2
