package outcome

import (
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
)

func open(v finding.Verdict, g finding.Grade, due finding.Stage) finding.Finding {
	return finding.Finding{Requirement: "exhaust.rain_cap", Subject: "sys-1", Verdict: v, Grade: g, Stage: due}
}

func TestWhatHoldsAJob(t *testing.T) {
	tests := []struct {
		name   string
		f      finding.Finding
		terms  Terms
		status finding.Outcome
	}{
		{"deficient", open(finding.Deficient, finding.Required, finding.Running), Terms{Stage: finding.Closeout}, finding.Hold},
		{"unrecorded", open(finding.Unrecorded, finding.Required, finding.Running), Terms{Stage: finding.Closeout}, finding.Hold},
		{"not yet due", open(finding.Deficient, finding.Hazard, finding.Closeout), Terms{Stage: finding.Running}, finding.Ready},
		{"advice", open(finding.Deficient, finding.Recommended, finding.Planned), Terms{Stage: finding.Closeout}, finding.Ready},
		{"advice, when asked for", open(finding.Deficient, finding.Recommended, finding.Planned), Terms{Stage: finding.Closeout, HoldAt: finding.Recommended}, finding.Hold},
		{"required, when only hazards hold", open(finding.Deficient, finding.Required, finding.Planned), Terms{Stage: finding.Closeout, HoldAt: finding.Hazard}, finding.Ready},
		{"undetermined hazard", open(finding.Undetermined, finding.Hazard, finding.Planned), Terms{Stage: finding.Closeout}, finding.Hold},
		{"undetermined", open(finding.Undetermined, finding.Required, finding.Planned), Terms{Stage: finding.Closeout}, finding.Ready},
		{"met", open(finding.Met, finding.Hazard, finding.Planned), Terms{Stage: finding.Closeout}, finding.Ready},
		{"known before", open(finding.Deficient, finding.Hazard, finding.Planned), Terms{Stage: finding.Closeout, Known: func(finding.Finding) bool { return true }}, finding.Ready},
		{"unknown stage is held to everything", open(finding.Deficient, finding.Hazard, finding.Closeout), Terms{Stage: "no-such-stage"}, finding.Hold},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var job finding.Job
			Decide(&job, []finding.Finding{tt.f}, nil, tt.terms)
			if job.Outcome != tt.status {
				t.Errorf("outcome %s, want %s", job.Outcome, tt.status)
			}
		})
	}
}

// Not applicable throughout is no proof: the job is on hold whatever holds
// others, and says of each profile why it does not judge it.
func TestAJobThatNothingJudgesIsNotReady(t *testing.T) {
	const small, single = "the standard is not for this kind of building", "there is no fan"
	not := func(profile, reason string) finding.Finding {
		return finding.Finding{Requirement: "fan.listed", Subject: reason, Verdict: finding.NotApplicable, Profile: profile, Reason: reason}
	}
	met := finding.Finding{Requirement: "fan.place", Subject: "sys-1", Verdict: finding.Met, Profile: "a"}
	lenient := Terms{Stage: finding.Planned, HoldAt: finding.Hazard, Known: func(finding.Finding) bool { return true }}
	variance := Variance{ID: "var-1", Requirement: "fan.listed", Subject: small}
	for _, c := range []struct {
		name      string
		findings  []finding.Finding
		variances []Variance
		want      string // the message; "" when the job is ready
	}{
		{"no requirement at all", nil, nil, "No chosen profile judges this job."},
		{"out of scope", []finding.Finding{not("a", small)}, nil, "No chosen profile judges this job (a: " + small + ")."},
		{"a finding about a variance judges nothing", []finding.Finding{not("a", small)}, []Variance{variance}, "No chosen profile judges this job (a: " + small + ")."},
		{"several", []finding.Finding{not("b", small), not("a", small), not("a", single)}, nil, "No chosen profile judges this job (a: nothing that it asks for applies to this job; b: " + small + ")."},
		{"one is judged", []finding.Finding{not("b", small), met}, nil, ""},
	} {
		job := finding.Job{Profiles: []string{"a", "b"}}
		Decide(&job, c.findings, c.variances, lenient)
		said := ""
		for _, f := range job.Findings {
			if f.Holds {
				said += f.Message
			}
		}
		if said != c.want || (job.Outcome == finding.Ready) != (c.want == "") || (job.HeldBy == 0) != (c.want == "") {
			t.Errorf("%s: %s, held by %d: %q, want %q", c.name, job.Outcome, job.HeldBy, said, c.want)
		}
	}
}

func TestVariances(t *testing.T) {
	lastDay := time.Date(2027, 3, 20, 0, 0, 0, 0, time.UTC)
	full := Variance{
		ID: "var-1", Requirement: "exhaust.rain_cap", Subject: "sys-1", Authority: "Building office", Role: "code official",
		Reason: "hail", Document: "letter-1", Expires: lastDay,
	}
	without := func(change func(*Variance)) Variance { v := full; change(&v); return v }
	tests := []struct {
		name    string
		v       Variance
		found   finding.Verdict // of the requirement before the variance
		asOf    time.Time
		want    finding.Verdict
		against string // the demand on the variance that is not met
	}{
		{"covers", full, finding.Deficient, lastDay, finding.Variance, ""},
		{"covers through its last day", full, finding.Deficient, lastDay.Add(23 * time.Hour), finding.Variance, ""},
		{"ends after it", full, finding.Deficient, lastDay.Add(24 * time.Hour), finding.Deficient, "variances.current"},
		{"no authority", without(func(v *Variance) { v.Authority = "" }), finding.Deficient, lastDay, finding.Deficient, "variances.complete"},
		{"no last day", without(func(v *Variance) { v.Expires = time.Time{} }), finding.Deficient, lastDay, finding.Deficient, "variances.complete"},
		{"wrong subject", without(func(v *Variance) { v.Subject = "sys-2" }), finding.Deficient, lastDay, finding.Deficient, "variances.matched"},
		{"no longer needed", full, finding.Met, lastDay, finding.Met, "variances.needed"},
		{"of what does not apply", full, finding.NotApplicable, lastDay, finding.NotApplicable, "variances.needed"},
		{"cannot cover what was not recorded", full, finding.Unrecorded, lastDay, finding.Unrecorded, "variances.known_deficiency"},
		{"nor what is not decided", full, finding.Undetermined, lastDay, finding.Undetermined, "variances.known_deficiency"},
		{"expired and no longer needed", full, finding.Met, lastDay.Add(24 * time.Hour), finding.Met, "variances.currentvariances.needed"},
		{"no reason", without(func(v *Variance) { v.Reason = "" }), finding.Deficient, lastDay, finding.Deficient, "variances.complete"},
		{"no role", without(func(v *Variance) { v.Role = "" }), finding.Deficient, lastDay, finding.Deficient, "variances.complete"},
		{"no document", without(func(v *Variance) { v.Document = "" }), finding.Deficient, lastDay, finding.Deficient, "variances.complete"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var job finding.Job
			Decide(&job, []finding.Finding{open(tt.found, finding.Hazard, finding.Planned)}, []Variance{tt.v}, Terms{Stage: finding.Closeout, AsOf: tt.asOf})
			against := ""
			for _, f := range job.Findings {
				if f.Requirement == "exhaust.rain_cap" && f.Verdict != tt.want {
					t.Errorf("verdict %s, want %s", f.Verdict, tt.want)
				}
				if f.Subject == "var-1" && f.Verdict != finding.Met {
					against += f.Requirement
				}
			}
			if against != tt.against {
				t.Errorf("against the variance: %q, want %q", against, tt.against)
			}
			if covered := tt.want == finding.Variance || tt.want == finding.Met && tt.against == ""; covered != (job.Outcome == finding.Ready) {
				t.Errorf("outcome %s", job.Outcome)
			}
		})
	}
}

// A finding about a variance holds the job at every stage, and two variances for
// one deficiency are one too many.
func TestVarianceFindingsHold(t *testing.T) {
	day := time.Date(2027, 3, 20, 0, 0, 0, 0, time.UTC)
	v := Variance{
		ID: "var-1", Requirement: "exhaust.rain_cap", Subject: "sys-1", Authority: "Building office", Role: "code official",
		Reason: "hail", Document: "letter-1", Expires: day,
	}
	second := v
	second.ID = "var-2"
	for name, variances := range map[string][]Variance{
		"unmatched": {{ID: "var-1", Requirement: "exhaust.rain_cap", Subject: "sys-2", Authority: "a", Role: "b", Reason: "c", Document: "d", Expires: day}},
		"twice":     {v, second},
	} {
		var job finding.Job
		Decide(&job, []finding.Finding{open(finding.Deficient, finding.Recommended, finding.Planned)}, variances, Terms{Stage: finding.Planned, AsOf: day})
		if job.Outcome != finding.Hold || job.HeldBy != 1 {
			t.Errorf("%s: outcome %s, held by %d", name, job.Outcome, job.HeldBy)
		}
	}
	for _, d := range Demands() {
		if d.Title == "" || d.Why == "" || d.Remedy == "" || d.Grade != finding.Required || d.Stage != finding.Planned {
			t.Errorf("%s says too little: %+v", d.Requirement, d)
		}
	}
}

func TestStatus(t *testing.T) {
	ready, hold := finding.Job{Outcome: finding.Ready}, finding.Job{Outcome: finding.Hold}
	for _, tt := range []struct {
		report finding.Report
		want   int
	}{
		{finding.Report{}, StatusReady},
		{finding.Report{Jobs: []finding.Job{ready, ready}}, StatusReady},
		{finding.Report{Jobs: []finding.Job{ready, hold}}, StatusHold},
		{finding.Report{Jobs: []finding.Job{hold}, Errors: []finding.Error{{}}}, StatusError},
	} {
		if got := Status(tt.report); got != tt.want {
			t.Errorf("status %d, want %d", got, tt.want)
		}
	}
}
