package policy.survey.finished_system_photos_test

import data.policy.lib
import data.policy.survey.finished_system_photos as rule
import rego.v2

# SGM-SF 2017 (12/20) 8.5.1.
job(answer) := {"systems": [object.union({"id": "s"}, {"commissioning": {"photos_taken": answer}})]}

verdict(job) := v if v := lib.verdict(rule, "s") with input as job

test_met if verdict(job(true)) == "met"

test_deficient if verdict(job(false)) == "deficient"

test_unrecorded if verdict({"systems": [{"id": "s"}]}) == "unrecorded"

test_unrecorded_without_systems if "unrecorded" == lib.verdict(rule, "systems") with input as {}
