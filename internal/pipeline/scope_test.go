package pipeline_test

import (
	"context"
	"os"
	"path/filepath"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
)

// A job that a profile does not speak of is not-applicable throughout, with the
// reason, and nothing of it is ever met. That nothing is open then does not make
// it ready.
func TestJobsOutsideTheScope(t *testing.T) {
	newer := filepath.Join(t.TempDir(), "newer.yaml")
	text := `profile: newer
title: A rule for systems installed from 2020 on
kind: company
documents: {}
scope: {installed_from: 2020-01-01}
requirements:
  fan.listed:
    source: {basis: common-practice}
`
	if err := os.WriteFile(newer, []byte(text), 0o600); err != nil {
		t.Fatal(err)
	}
	ventilation := edits{"house/new_construction": true, "systems/0/kind": "heat-recovery-ventilation"}
	older := edits{"job/purpose": "inspection", "job/existing_system": map[string]any{"installed": "2019-12-31"}}
	for _, c := range []struct {
		name, profile string // with the source of the bound
		change        edits
		reason        string // "" when the job is inside
	}{
		{"EPA 402-R-93-078 2.0: up to three storeys", "us-epa-1994", edits{"house/storeys": 4}, "the house has more storeys than the standard covers"},
		{"three storeys are inside", "us-epa-1994", edits{"house/storeys": 3}, ""},
		{"IRC: up to three storeys", "us-irc-appendix", edits{"house/storeys": 4, "house/new_construction": true}, "the house has more storeys than the standard covers"},
		{"IRC appendix: new houses", "us-irc-appendix", edits{"house/new_construction": false}, "the standard is for new houses only"},
		{"IRC appendix: suction below slab or membrane", "us-irc-appendix", ventilation, "the standard is not for this kind of system"},
		{"SGM-SF: single-family houses", "us-consensus", edits{"house/kind": "school"}, "the standard is not for this kind of building"},
		{"EPA 402-R-93-078: radon", "us-epa-1994", edits{"job/contaminant": "chemical-vapor"}, "the standard is not for this contaminant"},
		{"consensus, radon part", "us-consensus", edits{"job/contaminant": "chemical-vapor"}, "the standard is not for this contaminant"},
		{"25 Pa. Code 240: radon", "pennsylvania", edits{"job/contaminant": "chemical-vapor"}, "the standard is not for this contaminant"},
		{"32 Ill. Adm. Code 422: radon", "illinois", edits{"job/contaminant": "chemical-vapor"}, "the standard is not for this contaminant"},
		{"35 Ill. Adm. Code 742: vapor", "chemical-vapor", edits{"job/contaminant": "radon"}, "the standard is not for this contaminant"},
		{"radon and vapor is inside the radon rules", "illinois", edits{"job/contaminant": "both"}, ""},
		{"radon and vapor is inside the vapor rules", "chemical-vapor", edits{"job/contaminant": "both"}, ""},
		{"system older than the rule", newer, older, "the system is older than the standard"},
		{"system as old as the rule", newer, edits{"job/purpose": "inspection", "job/existing_system": map[string]any{"installed": "2020-01-01"}}, ""},
		{"new system where an old one stood", newer, edits{"job/existing_system": map[string]any{"installed": "2019-12-31"}}, ""},
		{"age not recorded", newer, edits{"job/purpose": "inspection"}, ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			job, errs := onlyProfile(t, c.profile).Run(context.Background(), edited(t, "demo", c.change), os.DirFS("../../fixtures/demo"))
			if len(errs) > 0 {
				t.Fatal(errs)
			}
			if held := job.Outcome == finding.Hold && job.HeldBy == 1; c.reason != "" && !held {
				t.Errorf("%s, held by %d", job.Outcome, job.HeldBy)
			}
			given, others := 0, 0
			for _, f := range job.Findings {
				if f.Requirement == "profiles.judge_the_job" {
					if want := c.profile + ": " + c.reason; c.reason == "" || c.profile != newer && f.Reason != want || f.At.Line == 0 {
						t.Errorf("%+v", f)
					}
					continue
				}
				if c.reason != "" && (f.Verdict != finding.NotApplicable || f.Holds) {
					t.Errorf("%s %s is %s", f.Requirement, f.Subject, f.Verdict)
				}
				if f.Verdict == finding.NotApplicable && f.Reason == c.reason {
					given++
				}
				if f.Verdict != finding.NotApplicable {
					others++
				}
			}
			if c.reason != "" && given == 0 {
				t.Errorf("no finding gives the reason %q", c.reason)
			}
			if c.reason == "" && others == 0 {
				t.Error("a job inside the scope is not judged")
			}
		})
	}
}

// A profile that does not speak of a job does not stand before one that does:
// 10 ft to a window are asked of an existing house (EPA 402-R-93-078 14.2.8(3),
// published), although the appendix for new houses, from memory, asks it of more
// systems and so governs in a new one.
func TestProfileOutsideHidesNothing(t *testing.T) {
	p := newPipeline(t, pipeline.Options{Profiles: []string{"us-epa-1994", "us-irc-appendix"}})
	for built, profile := range map[bool]string{false: "us-epa-1994", true: "us-irc-appendix"} {
		doc := edited(t, "demo", window("own", "8 ft 6 in", "1 ft"), edits{"house/new_construction": built})
		job, errs := p.Run(context.Background(), doc, os.DirFS("../../fixtures/demo"))
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		judged, asked := false, map[string]bool{}
		for _, f := range job.Findings {
			asked[f.Requirement] = true
			if f.Requirement == "exhaust.clearance_to_openings" && f.Subject == "sys-1/win" {
				judged = f.Verdict == finding.Deficient && f.Holds && f.Profile == profile
			}
			if f.Requirement == "pipe.fan_accessible" && (f.Reason == "the standard is for new houses only") == built {
				t.Errorf("new house %v: the appendix's own requirement is %s: %s", built, f.Verdict, f.Reason)
			}
		}
		if !judged {
			t.Errorf("new house %v: the window is not judged by %s", built, profile)
		}
		if !asked["pipe.fan_accessible"] || !asked["pipe.wall"] {
			t.Errorf("new house %v: a requirement is missing", built)
		}
	}
}

// Ventilation is judged by its own requirements, not by those about outlets of
// soil gas: EPA 402-R-93-078 14.2.8 is for soil depressurization (published).
func TestVentilationOnlyUnderTheFederalStandard(t *testing.T) {
	doc := edited(t, "demo", edits{"systems/0/kind": "heat-recovery-ventilation"})
	job, errs := onlyProfile(t, "us-epa-1994").Run(context.Background(), doc, os.DirFS("../../fixtures/demo"))
	if len(errs) > 0 {
		t.Fatal(errs)
	}
	outlets, ventilators := 0, 0
	for _, f := range job.Findings {
		if f.Topic() == "exhaust" {
			outlets++
			if f.Verdict != finding.NotApplicable || f.Reason == "" {
				t.Errorf("%s is %s of a ventilator (%s)", f.Requirement, f.Verdict, f.Reason)
			}
		}
		if f.Requirement == "special.ventilator_indoor_ports" && f.Verdict != finding.NotApplicable {
			ventilators++
		}
	}
	if outlets == 0 || ventilators == 0 {
		t.Errorf("%d findings about outlets, %d about the ventilator", outlets, ventilators)
	}
}

// At a stage only what is due by then holds a job, and each stage adds to what
// the one before asked.
func TestStageShowsWhatIsDue(t *testing.T) {
	stages := finding.Stages()
	rank := map[finding.Stage]int{}
	for i, s := range stages {
		rank[s] = i
	}
	doc, before := read(t, "../../fixtures/demo/faulty.yaml"), 0
	for _, stage := range stages {
		p := newPipeline(t, pipeline.Options{Stage: stage})
		job, errs := p.Run(context.Background(), doc, os.DirFS("../../fixtures/demo"))
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		due := 0
		for _, f := range job.Findings {
			if f.Due != (rank[f.Stage] <= rank[stage]) {
				t.Errorf("at %s: %s, due from %s: due is %v", stage, f.Requirement, f.Stage, f.Due)
			}
			if f.Holds && !f.Due {
				t.Errorf("at %s: %s holds before it is due", stage, f.Requirement)
			}
			if f.Due {
				due++
			}
		}
		if due <= before {
			t.Errorf("at %s %d findings are due, %d at the stage before", stage, due, before)
		}
		before = due
	}
}
