package main

import (
	"io/fs"
	"slices"
	"strconv"

	"github.com/slablint/slablint/internal/drawing"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// The requirements whose limits and verdicts the drawings show.
const (
	clearance = "exhaust.clearance_to_openings"
	neighbors = "exhaust.clearance_to_neighbors"
	steady    = "gauge.steady"
)

// radonLevels are the limits that the radon chart marks, with their names.
var radonLevels = []struct{ requirement, limit, name string }{
	{"testing.below_action_level", "level", "action level"},
	{"testing.within_guideline", "level", "guideline"},
	{"testing.world_reference_level", "level", "reference level"},
	{"testing.worth_lowering", "consider", "worth lowering from"},
}

// illustrate adds drawings, readings and photos to a job, for formats that show
// them.
func illustrate(job *finding.Job, done pipeline.Done) {
	terms := drawing.Terms{
		Clearance: limitSI(done.Selection, clearance, "minimum"),
		Waiver:    limitSI(done.Selection, clearance, "waiver_drop"),
		GaugeFall: limitSI(done.Selection, steady, "fall"),
		GaugeRise: limitSI(done.Selection, steady, "rise"),
		Standings: standings(job.Findings),
	}
	if row, asked := done.Selection.Row(clearance); asked {
		terms.ClearanceText = row.Limits["minimum"].Text
	}
	for _, l := range radonLevels {
		if row, asked := done.Selection.Row(l.requirement); asked {
			if si := limitSI(done.Selection, l.requirement, l.limit); si > 0 {
				terms.Levels = append(terms.Levels, drawing.Level{Name: l.name, Profile: row.Profile, Concentration: si, Text: row.Limits[l.limit].Text})
			}
		}
	}
	for _, f := range drawing.Figures(done.Input, terms) {
		job.Figures = append(job.Figures, finding.Figure(f))
	}
	job.Readings = readings(done.Input)
	job.Photos = photos(done)
}

// standings tells of each distance from an outlet to an opening what was judged
// of it. Two requirements share the openings out among them: what one leaves
// out the other judges.
func standings(findings []finding.Finding) map[string]drawing.Standing {
	out := map[string]drawing.Standing{}
	for _, f := range findings {
		if f.Requirement != clearance && f.Requirement != neighbors {
			continue
		}
		standing := drawing.NotJudged
		switch f.Verdict {
		case finding.Met:
			standing = drawing.FarEnough
		case finding.Deficient:
			standing = drawing.TooClose
		case finding.Variance:
			standing = drawing.Allowed
		case finding.Unrecorded, finding.Undetermined:
			standing = drawing.Undecided
		case finding.NotApplicable:
			standing = drawing.Exempt
		}
		if before, judged := out[f.Subject]; !judged || before == drawing.Exempt {
			out[f.Subject] = standing
		}
	}
	return out
}

func limitSI(s *rulebook.Selection, requirement, limit string) float64 {
	row, _ := s.Row(requirement)
	si, err := strconv.ParseFloat(row.Limits[limit].SI, 64)
	if err != nil {
		return 0
	}
	return si
}

// mostPhotos keeps one page from growing without bound.
const mostPhotos = 24

// photos are small copies of the pictures that are what the record says they
// are: a file with another digest proves nothing and is not shown.
func photos(done pipeline.Done) []finding.Photo {
	list, _ := record.At(done.Input, "/evidence")
	checked, _ := record.At(done.Input, "/derived/evidence")
	entries, _ := list.([]any)
	facts, _ := checked.([]any)
	var out []finding.Photo
	for i, entry := range entries {
		if i >= len(facts) || done.Files == nil || len(out) == mostPhotos {
			break
		}
		if record.Get(facts[i], "digest_matches") != true || record.Get(facts[i], "type_matches") != true {
			continue
		}
		kind, _ := record.Get(entry, "media_type").(string)
		path, _ := record.Get(entry, "path").(string)
		if !slices.Contains([]string{"image/jpeg", "image/png"}, kind) {
			continue
		}
		data, err := fs.ReadFile(done.Files, path)
		if err != nil {
			continue
		}
		small, err := drawing.Thumbnail(data)
		if err != nil {
			continue
		}
		p := finding.Photo{MediaType: "image/jpeg", Data: small}
		p.ID, _ = record.Get(entry, "id").(string)
		p.Caption, _ = record.Get(entry, "caption").(string)
		if p.Caption == "" {
			p.Caption = p.ID
		}
		shows, _ := record.Get(entry, "shows").([]any)
		for _, s := range shows {
			if id, ok := s.(string); ok {
				p.Shows = append(p.Shows, id)
			}
		}
		out = append(out, p)
	}
	return out
}
