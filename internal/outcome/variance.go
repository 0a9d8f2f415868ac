package outcome

import (
	"fmt"
	"time"

	"github.com/slablint/slablint/internal/finding"
)

// Variance is one documented departure from a requirement.
type Variance struct {
	ID          string
	Requirement string
	Subject     string
	Authority   string
	Role        string
	Reason      string
	Document    string    // id of the evidence that holds the approval
	Expires     time.Time // start of the last day, UTC; zero when not recorded
	At          finding.At
}

// The demands on variances themselves. They are decided here and not in the
// rulebook because they speak about findings, not about the house.
var (
	complete = finding.Finding{
		Requirement: "variances.complete", Title: "The variance names authority, role, reason, document and last day",
		Why:    "A departure that nobody can be asked about protects nobody.",
		Remedy: "Record who allowed it, in which role, why, until when, and the document that says so.",
	}
	current = finding.Finding{
		Requirement: "variances.current", Title: "The variance has not expired",
		Why:    "What was acceptable for a time is no longer allowed by anybody.",
		Remedy: "Put the deficiency right, or have the authority renew the variance.",
	}
	matched = finding.Finding{
		Requirement: "variances.matched", Title: "The variance matches a finding",
		Why:    "A variance that names nothing covers nothing; a typing error here hides an open deficiency.",
		Remedy: "Give requirement and subject exactly as the finding prints them, or remove the variance.",
	}
	known = finding.Finding{
		Requirement: "variances.known_deficiency", Title: "The variance is for a deficiency that the record shows",
		Why:    "Nobody can allow what nobody wrote down: a variance over a blank would let silence pass.",
		Remedy: "Record what is missing or not decided, and keep the variance if the finding then is a deficiency; or remove it.",
	}
	needed = finding.Finding{
		Requirement: "variances.needed", Title: "The variance is still needed",
		Why:    "A departure that was put right should not stay excused for the next one to hide behind.",
		Remedy: "Remove the variance.",
	}
)

// Demands lists what is asked of every variance, whatever the profiles.
func Demands() []finding.Finding {
	list := []finding.Finding{complete, current, matched, known, needed}
	for i := range list {
		list[i].Grade, list[i].Stage = finding.Required, finding.Planned
	}
	return list
}

// applyVariances turns covered deficiencies into variances and adds one
// finding per demand and variance. A variance is valid through its last day. It
// covers a deficiency and nothing else: what is not recorded or not decided is
// not known to depart from anything.
func applyVariances(findings []finding.Finding, variances []Variance, asOf time.Time) []finding.Finding {
	for _, v := range variances {
		target := -1
		for i := range findings {
			if findings[i].Requirement == v.Requirement && findings[i].Subject == v.Subject {
				target = i
			}
		}
		isComplete := v.Authority != "" && v.Role != "" && v.Reason != "" && v.Document != "" && !v.Expires.IsZero()
		isCurrent := !v.Expires.IsZero() && asOf.Before(v.Expires.AddDate(0, 0, 1))
		findings = append(findings, v.about(complete, isComplete, finding.Unrecorded))
		if !v.Expires.IsZero() {
			findings = append(findings, v.about(current, isCurrent, finding.Deficient))
		}
		findings = append(findings, v.about(matched, target >= 0, finding.Deficient))
		if target < 0 {
			continue
		}
		isDeficient := findings[target].Verdict == finding.Deficient
		switch findings[target].Verdict {
		case finding.Unrecorded, finding.Undetermined:
			findings = append(findings, v.about(known, false, finding.Deficient))
		case finding.Met, finding.NotApplicable, finding.Deficient, finding.Variance:
			findings = append(findings, v.about(known, true, ""), v.about(needed, isDeficient, finding.Deficient))
		}
		f := &findings[target]
		if isDeficient && isComplete {
			if isCurrent {
				f.Verdict = finding.Variance
				f.Reason = fmt.Sprintf("%s (%s) allows it until %s: %s", v.Authority, v.Role, v.Expires.Format(time.DateOnly), v.Reason)
			} else {
				f.Reason = fmt.Sprintf("the variance of %s ended on %s", v.Authority, v.Expires.Format(time.DateOnly))
			}
		}
	}
	return findings
}

// about is the finding of one demand on a variance.
func (v Variance) about(demand finding.Finding, ok bool, otherwise finding.Verdict) finding.Finding {
	f := demand
	f.Subject, f.At = v.ID, v.At
	f.Grade, f.Stage = finding.Required, finding.Planned
	f.Source = finding.Source{Basis: finding.CommonPractice}
	f.Measured = v.Requirement + " " + v.Subject
	f.Message = f.Title + "."
	f.Verdict = finding.Met
	if !ok {
		f.Verdict = otherwise
		f.Message = "This is not so for the variance on " + v.Requirement + " for " + v.Subject + "."
	}
	return f
}
