package report

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/drawing"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// bigJob is a job with 40 findings, each of another requirement and with texts
// as long as real ones, 27 wrong and 13 not recorded, with all that a job of
// the fixtures has besides: its drawings, readings, cautions, 200 met, 80 not
// applicable, 130 computed values.
func bigJob(t testing.TB) finding.Job {
	t.Helper()
	topics := []string{"exhaust", "electrical", "combustion", "sealing", "labels", "pipe", "papers", "testing", "diagnostics", "fan"}
	job := finding.Job{
		File: "jobs/2026/J-0300.yaml", ID: "J-0300", Title: "Drain-tile system, two-storey house", Stage: finding.Closeout,
		SHA256: strings.Repeat("0123456789abcdef", 4), Profiles: []string{"us-epa-1994", "pennsylvania"}, Digest: inventedDigest, Outcome: finding.Hold, HeldBy: 40,
	}
	add := func(n int, verdict finding.Verdict, each func(i int, f *finding.Finding)) {
		for i := range n {
			f := finding.Finding{
				Requirement: fmt.Sprintf("%s.requirement_number_%s_%d", topics[i%len(topics)], verdict, i), Subject: fmt.Sprintf("sys-1/thing-%d", i), Verdict: verdict,
				Grade: []finding.Grade{finding.Hazard, finding.Required, finding.Recommended}[i%3], Stage: finding.Running, Due: true,
				At: finding.At{Path: "/systems/0/discharge", Line: 100 + i, Column: 7}, Title: "Where the pipe passes a wall, its rating is restored " + fmt.Sprint(i),
				Why:    "An appliance that spills fills the house with flue gas while people sleep, and nobody smells it.",
				Remedy: "Switch the system off, have the appliance or the house put right by a licensed contractor, and test again.",
				Source: finding.Source{Document: "EPA 402-R-93-078, Radon Mitigation Standards", Edition: "October 1993, revised April 1994", Section: "14.2.8(3)", Basis: finding.FromMemory}, Profile: "us-epa-1994",
			}
			each(i, &f)
			job.Counts.Add(verdict)
			job.Findings = append(job.Findings, f)
		}
	}
	add(27, finding.Deficient, func(i int, f *finding.Finding) {
		f.Holds = true
		f.Message, f.Measured, f.Limit = "Recorded distance: 3 ft 1 in; called for: at least 10 ft.", "3 ft 1 in", "at least 10 ft"
		if i%2 == 1 {
			f.Message, f.Measured, f.Limit = "Recorded fixed before running: no.", "no", ""
		}
	})
	add(13, finding.Unrecorded, func(_ int, f *finding.Finding) {
		f.Holds, f.Message, f.Limit, f.Missing = true, "Not recorded: joined as the maker says.", "one of: collar, damper, intumescent", []string{"/systems/0/pipe/0/joined_as_maker_says"}
	})
	add(200, finding.Met, func(i int, f *finding.Finding) {
		if i%2 == 0 {
			f.Measured, f.Limit = "14 ft 6 in", "at least 10 ft"
		}
	})
	add(80, finding.NotApplicable, func(_ int, f *finding.Finding) { f.Reason = "its source does not speak of systems driven this way" })
	for i := range 130 {
		job.Values = append(job.Values, finding.DerivedValue{
			Path: fmt.Sprintf("/derived/segments/%d/loss", i), Group: "Segments", Subject: fmt.Sprintf("segment-%d", i/8), Title: "Loss", Text: "0.044 inH2O",
			Method: "Darcy and Weisbach with Churchill's friction factor, with the fittings",
		})
	}
	for i := range 22 {
		job.Readings = append(job.Readings, finding.Reading{
			Group: []string{"Radon", "Gauge", "Suction below the slab", "Combustion"}[i/6], Subject: fmt.Sprintf("reading-%d", i), Title: "Below the slab less in the room", Text: "-0.042 inH2O",
			Note: "22 ft away, smoke down", Path: "/diagnostics",
		})
	}
	job.Cautions = []string{
		"A sump holds water and current: unplug the pump and prove it dead before reaching in, and never leave the pit open where a child can fall in.",
		"Drilling or cutting concrete and block raises silica dust: use a shroud with dust collector or water, and a respirator where the plan calls for one.",
		ladders, attic, "Suction on the ground can pull flue gas back into the house: test every fuel-burning appliance with the system on; if it spills, switch off, open up and get help.",
	}
	job.Figures = demoFigures(t)
	return job
}

// demoFigures are the drawings of a job of the fixtures.
func demoFigures(t testing.TB) []finding.Figure {
	t.Helper()
	file := filepath.Join("..", "..", "fixtures", "demo", "ready.yaml")
	data, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	doc, err := record.Read(file, data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	input, errs := doc.Canonical(shape)
	if len(errs) > 0 {
		t.Fatal(errs)
	}
	input["derived"] = derive.Derive(input, nil)
	terms := drawing.Terms{
		Clearance: 3.048, ClearanceText: "10 ft", Waiver: 0.6096, Standings: map[string]drawing.Standing{"sys-1/win-bed": drawing.TooClose},
		Levels: []drawing.Level{{Name: "action level", Profile: "us-epa-1994", Concentration: 148, Text: "4.0 pCi/L"}},
	}
	var out []finding.Figure
	for _, f := range drawing.Figures(input, terms) {
		out = append(out, finding.Figure(f))
	}
	if len(out) < 4 {
		t.Fatalf("only %d figures", len(out))
	}
	return out
}
