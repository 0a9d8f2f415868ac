package outcome

import (
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

// notJudged is the finding about a job to which nothing of the chosen profiles
// applies: nothing is open then, and nothing is proven either. It gives the
// reason of each profile.
func notJudged(profiles []string, chosen finding.At, findings []finding.Finding) finding.Finding {
	reasons := map[string][]string{}
	for _, f := range findings {
		if !slices.Contains(reasons[f.Profile], f.Reason) {
			reasons[f.Profile] = append(reasons[f.Profile], f.Reason)
		}
	}
	var told []string
	for _, p := range profiles {
		switch r := reasons[p]; {
		case len(r) == 1 && r[0] != "":
			told = append(told, p+": "+r[0])
		case len(r) > 1:
			told = append(told, p+": nothing that it asks for applies to this job")
		}
	}
	message := "No chosen profile judges this job"
	if len(told) > 0 {
		message += " (" + strings.Join(told, "; ") + ")"
	}
	return finding.Finding{
		Requirement: "profiles.judge_the_job", Subject: "job", Verdict: finding.Undetermined, Grade: finding.Hazard, Stage: finding.Planned,
		At: chosen, Title: "A chosen profile judges this job", Message: message + ".", Reason: strings.Join(told, "; "),
		Why:    "Where nothing was asked, nothing open says nothing: the house may still be unsafe.",
		Remedy: "Choose profiles that speak of this kind of job, or correct what the record says of house, contaminant and system.",
		Source: finding.Source{Basis: finding.CommonPractice},
	}
}
