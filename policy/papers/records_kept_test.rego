package policy.papers.records_kept_test

import data.policy.lib
import data.policy.papers.records_kept as rule
import rego.v2

# EPA RMS 1994 18.2: at least 3 years. 32 Ill. Adm. Code 422.70(f): at least 5
# years. Minn. R. 4620.7400 subp. 1(F),(G): tests and calibration, 3 years.
# A year is 365 days.
verdict(job, years) := v if {
	v := lib.verdict(rule, "closeout") with input as job with data.profile as {"papers": {"records_kept": {"minimum": {"si": years * 31536000}}}}
}

record(years) := {"closeout": {"records": {"kept_for": {"si": years * 31536000}}}}

test_met_at_exactly_three_years if verdict(record(3), 3) == "met"

test_deficient_at_two_years if verdict(record(2), 3) == "deficient"

# The same 3 years pass EPA and fail Illinois.
test_three_years_fail_in_illinois if verdict(record(3), 5) == "deficient"

test_five_years_pass_in_illinois if verdict(record(5), 5) == "met"

test_unrecorded if verdict({}, 3) == "unrecorded"
