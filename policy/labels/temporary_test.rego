package policy.labels.temporary_test

import data.policy.labels.temporary as rule
import data.policy.lib
import rego.v2

# Pennsylvania radon mitigation standards (from memory, excerpt) and EPA RMS 1994
# section 10 (from memory): temporary, to be replaced, date, name, phone, certification.
made(permanence, labels) := {"systems": [{"id": "s", "permanence": permanence, "labels": labels}]}

full := {
	"id": "a", "kind": "temporary", "says_temporary": true, "installer": true,
	"phone": true, "credential": true, "install_date": true,
}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(made("temporary", [full])) == "met"

test_deficient_without_a_label if verdict(made("temporary", [])) == "deficient"

test_deficient_says_temporary if verdict(made("temporary", [object.union(full, {"says_temporary": false})])) == "deficient"

test_unrecorded_says_temporary if verdict(made("temporary", [object.remove(full, ["says_temporary"])])) == "unrecorded"

test_deficient_installer if verdict(made("temporary", [object.union(full, {"installer": false})])) == "deficient"

test_unrecorded_installer if verdict(made("temporary", [object.remove(full, ["installer"])])) == "unrecorded"

test_deficient_phone if verdict(made("temporary", [object.union(full, {"phone": false})])) == "deficient"

test_unrecorded_phone if verdict(made("temporary", [object.remove(full, ["phone"])])) == "unrecorded"

test_deficient_credential if verdict(made("temporary", [object.union(full, {"credential": false})])) == "deficient"

test_unrecorded_credential if verdict(made("temporary", [object.remove(full, ["credential"])])) == "unrecorded"

test_deficient_install_date if verdict(made("temporary", [object.union(full, {"install_date": false})])) == "deficient"

test_unrecorded_install_date if verdict(made("temporary", [object.remove(full, ["install_date"])])) == "unrecorded"

test_unrecorded_permanence if verdict({"systems": [{"id": "s", "labels": [full]}]}) == "unrecorded"

test_unrecorded_labels if verdict({"systems": [{"id": "s", "permanence": "temporary"}]}) == "unrecorded"

test_unrecorded_kind_of_label if verdict(made("temporary", [{"id": "a"}])) == "unrecorded"

test_not_applicable_to_a_permanent_system if verdict(made("permanent", [])) == "not-applicable"

test_unrecorded_without_systems if {
	"unrecorded" == lib.verdict(rule, "systems") with input as {}
}

test_says_what_is_missing if {
	got := rule.missing with input as {"systems": [{"id": "s", "labels": [{"id": "a"}, {"id": "b", "kind": "temporary"}]}]}
	got == {
		["s", ["systems", 0, "permanence"]],
		["s", ["systems", 0, "labels", 0, "kind"]],
		["s", ["systems", 0, "labels", 1, "says_temporary"]],
		["s", ["systems", 0, "labels", 1, "installer"]],
		["s", ["systems", 0, "labels", 1, "phone"]],
		["s", ["systems", 0, "labels", 1, "credential"]],
		["s", ["systems", 0, "labels", 1, "install_date"]],
	}
}
