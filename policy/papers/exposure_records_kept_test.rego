package policy.papers.exposure_records_kept_test

import data.policy.lib
import data.policy.papers.exposure_records_kept as rule
import rego.v2

# EPA RMS 1994 section 18: records of safety and exposure, at least 20 years.
# A year is 365 days.
verdict(job, years) := v if {
	v := lib.verdict(rule, "closeout") with input as job with data.profile as {"papers": {"exposure_records_kept": {"minimum": {"si": years * 31536000}}}}
}

record(years) := {"closeout": {"records": {"exposure_kept_for": {"si": years * 31536000}}}}

test_met_at_exactly_twenty_years if verdict(record(20), 20) == "met"

test_deficient_at_nineteen_years if verdict(record(19), 20) == "deficient"

test_unrecorded if verdict({}, 20) == "unrecorded"
