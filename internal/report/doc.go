// Package report writes a finding.Report in every format there is, and reads
// back what the JSON writer wrote. Writers show what they are given: they
// decide nothing, look nothing up, and give the same bytes for the same report.
package report
