// Package finding holds what came out of judging job records: reports, jobs,
// verdicts and findings, their order and their JSON form. Every writer and
// every judge of outcomes shares these types and adds nothing to them.
package finding
