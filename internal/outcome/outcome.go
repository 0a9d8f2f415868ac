// Package outcome decides what counts against a job today: the stage it has
// reached, variances and their expiry, and what was known before. It turns
// findings into ready or hold, and a report into the exit status.
package outcome

import (
	"slices"
	"time"

	"github.com/slablint/slablint/internal/finding"
)

// Terms are the circumstances under which findings count.
type Terms struct {
	Stage  finding.Stage // where the job stands
	HoldAt finding.Grade // the lightest grade that holds a job; "" is required
	AsOf   time.Time     // the day on which variances must be valid
	// Known tells of findings that the comparison revision already had; such
	// findings are shown and do not hold. Nil when nothing is compared.
	Known func(finding.Finding) bool
	// Chosen is where the record chooses its profiles.
	Chosen finding.At
}

// Decide marks each finding as due and holding, applies the variances, adds
// the findings about the variances themselves, and fills in findings, counts
// and outcome of the job. A job of which nothing was judged is on hold, whatever
// the terms are. Findings end up in report order.
func Decide(job *finding.Job, findings []finding.Finding, variances []Variance, terms Terms) {
	if terms.HoldAt == "" {
		terms.HoldAt = finding.Required
	}
	judged := slices.ContainsFunc(findings, func(f finding.Finding) bool { return f.Verdict != finding.NotApplicable })
	unjudged := notJudged(job.Profiles, terms.Chosen, findings)
	findings = applyVariances(findings, variances, terms.AsOf)
	if !judged {
		findings = append(findings, unjudged)
	}
	job.Stage, job.Outcome, job.HeldBy, job.Counts = terms.Stage, finding.Ready, 0, finding.Counts{}
	for i := range findings {
		f := &findings[i]
		f.Due = terms.Stage.Reached(f.Stage)
		f.Holds = holds(*f, terms) || f.Requirement == unjudged.Requirement
		if f.Holds {
			job.HeldBy++
			job.Outcome = finding.Hold
		}
		job.Counts.Add(f.Verdict)
	}
	finding.Sort(findings)
	job.Findings = findings
}

// holds is the one place that says whether a finding keeps a job from closing.
func holds(f finding.Finding, terms Terms) bool {
	if !f.Due || terms.Known != nil && terms.Known(f) {
		return false
	}
	switch f.Verdict {
	case finding.Deficient, finding.Unrecorded:
		return f.Grade.AtLeast(terms.HoldAt)
	case finding.Undetermined:
		return f.Grade.AtLeast(finding.Hazard)
	case finding.Met, finding.NotApplicable, finding.Variance:
	}
	return false
}

// The exit statuses of the program, the same for every format.
const (
	StatusReady = 0 // every job is ready
	StatusHold  = 1 // at least one job is on hold
	StatusError = 2 // an input or the call itself is wrong

	StatusInterrupted = 130 // told to stop before all was judged; the number shells use
)

// Status is the exit status that a report stands for.
func Status(r finding.Report) int {
	if len(r.Errors) > 0 {
		return StatusError
	}
	for _, job := range r.Jobs {
		if job.Outcome != finding.Ready {
			return StatusHold
		}
	}
	return StatusReady
}
