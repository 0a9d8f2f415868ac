package pipeline_test

import (
	"context"
	"os"
	"slices"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// window is one opening with a recorded distance to the outlet, and nothing
// else near it; drop is how far it lies below the outlet.
func window(building, distance, drop string) edits {
	opening := map[string]any{"id": "win", "kind": "window", "building": building, "into_conditioned_space": true, "operable": true}
	clearance := map[string]any{"id": "to-win", "opening": "win", "building": building, "distance": distance, "drop": drop}
	return edits{
		"house/openings": []any{opening}, "systems/0/discharge/position": nil,
		"systems/0/discharge/clearances": []any{clearance},
	}
}

const (
	eave     = "systems/0/discharge/height_above_eave"
	edge     = "systems/0/discharge/height_above_roof_edge"
	grade    = "systems/0/discharge/height_above_grade"
	level    = "systems/0/discharge/grade_level"
	position = "systems/0/discharge/position"
	angle    = "systems/0/discharge/angle_from_vertical"
	result   = "measurements/tests/1/result"
)

// Sources differ; the same house passes one and fails the other. What a source
// does not say is no row of its profile, so three of the conflicts are told by
// fewer sources than there are:
//   - 2: the 4 ft of CC-1000 2018 9.7.1 are for another class of building. The
//     consensus profile leaves the figure unknown, which never passes.
//   - 5 and 6: outlets near grade in Canada. The table of CAN/CGSB-149.12 was
//     not read, so the Canadian profile neither allows nor bans them.
//   - 19 and 22: WHO and Iowa have no profile; common practice holds their figures.
func TestConflictsBetweenSources(t *testing.T) {
	const (
		met, deficient, undetermined, not = finding.Met, finding.Deficient, finding.Undetermined, finding.NotApplicable
		published, memory, practice       = finding.Published, finding.FromMemory, finding.CommonPractice
	)
	for _, c := range []struct {
		name, fixture string
		changes       []edits
		wants         []expected
	}{
		{"1 wall-mounted outlet 3 in over the roof edge", "demo", []edits{{edge: "3 in"}}, []expected{
			{"pennsylvania", "exhaust.height_above_roof_edge", "sys-1", met, "240.308(b)(1)", published},
			{"us-consensus", "exhaust.height_above_roof_edge", "sys-1", deficient, "6.4.10(b)", published},
			{"us-epa-1994", "exhaust.height_above_eave", "sys-1", met, "14.2.8(1)", published},
		}},
		{"1 wall-mounted outlet 8 in over the roof edge", "demo", []edits{{edge: "8 in"}}, []expected{
			{"us-consensus", "exhaust.height_above_roof_edge", "sys-1", met, "6.4.10(b)", published},
			{"illinois", "exhaust.height_above_roof_edge", "sys-1", deficient, "", practice},
		}},
		{"2 window 8 ft away and 3 ft below", "demo", []edits{window("own", "8 ft 6 in", "3 ft")}, []expected{
			{"us-epa-1994", "exhaust.clearance_to_openings", "sys-1/win", met, "14.2.8(3)", published},
			{"pennsylvania", "exhaust.clearance_to_openings", "sys-1/win", met, "240.308(b)(4)", published},
			{"us-consensus", "exhaust.clearance_to_openings", "sys-1/win", undetermined, "", memory},
		}},
		{"3 the waiver is for the own building only", "demo", []edits{window("adjacent", "8 ft 6 in", "3 ft")}, []expected{
			{"us-epa-1994", "exhaust.clearance_to_neighbors", "sys-1/win", deficient, "14.2.8(4)", published},
			{"pennsylvania", "exhaust.clearance_to_neighbors", "sys-1/win", deficient, "240.308(b)(6)", published},
			{"us-epa-1994", "exhaust.clearance_to_openings", "sys-1/win", not, "14.2.8(3)", published},
			{"us-consensus", "exhaust.clearance_to_neighbors", "sys-1/win", undetermined, "", memory},
		}},
		{"4 13 in over a flat roof", "slab", []edits{{"house/roof_kind": "flat", "systems/0/discharge/height_above_roof": "13 in"}}, []expected{
			{"pennsylvania", "exhaust.height_above_flat_roof", "sys-1", met, "240.308(b)(6)(i)", published},
			{"us-consensus", "exhaust.height_above_flat_roof", "sys-1", deficient, "6.4.10(c)", published},
		}},
		{"5 outlet below the eave, 21 ft up", "demo", []edits{{
			eave: "-2 ft", grade: "21 ft", position: nil, level: nil, "house/eave_level": nil,
			"systems/0/discharge/below_eave_reason": "The eave is 23 ft up", "systems/0/discharge/adjoining_air_tested": true,
		}}, []expected{
			{"us-epa-1994", "exhaust.height_above_eave", "sys-1", deficient, "14.2.8(1)", published},
			{"us-consensus", "exhaust.below_eave", "sys-1", met, "6.4.11(a)-(c)", published},
		}},
		{"6 level outlet", "demo", []edits{window("own", "12 ft", "3 ft"), {angle: "90 deg", grade: "21 ft", level: nil}}, []expected{
			{"pennsylvania", "exhaust.points_upward", "sys-1", deficient, "240.308(b)(2)", published},
			{"us-consensus", "exhaust.points_upward", "sys-1", not, "6.4.9", published},
			{"us-consensus", "exhaust.level_outlet", "sys-1", met, "7.4.11", published},
		}},
		{"7 rain cap", "demo", []edits{window("own", "16 ft", "3 ft"), {"systems/0/discharge/rain_cap": true}}, []expected{
			{"pennsylvania", "exhaust.no_rain_cap", "sys-1", deficient, "240.308(b)(2)", published},
			{"us-consensus", "exhaust.rain_cap_clearance", "sys-1", met, "7.4.11", published},
		}},
		{"8 fan in the basement", "demo", []edits{{"systems/0/fan/place": "basement"}}, []expected{
			{"us-epa-1994", "fan.place", "sys-1", deficient, "14.3.2", memory},
			{"us-consensus", "fan.place", "sys-1", deficient, "701.2, 701.2.1", published},
			{"pennsylvania", "fan.place", "sys-1", deficient, "240.308(c)(1), (c)(2)", published},
			{"canada", "fan.place", "sys-1", met, "catalogue abstract", published},
		}},
		{"9 Schedule 20 pipe", "demo", []edits{{"systems/0/pipe/1/schedule": "sch-20"}}, []expected{
			{"us-epa-1994", "pipe.wall", "rim", met, "15.2", memory},
			{"us-consensus", "pipe.wall", "rim", deficient, "6.2.5(a), 6.2.5(b)", published},
		}},
		{"10 supports", "demo", []edits{{
			"house/new_construction": true, "systems/0/pipe/1/support_spacing": "6 ft", "systems/0/pipe/2/support_spacing": "9 ft",
		}}, []expected{
			{"us-epa-1994", "pipe.horizontal_supports", "rim", met, "14.2.4", memory},
			{"us-irc-appendix", "pipe.horizontal_supports", "rim", deficient, "Table P2605.1", memory},
			{"us-epa-1994", "pipe.vertical_supports", "stack", deficient, "14.2.4", memory},
			{"us-irc-appendix", "pipe.vertical_supports", "stack", met, "Table P2605.1", memory},
			{"us-consensus", "pipe.horizontal_supports", "rim", deficient, "6.2.7.2", published},
			{"us-consensus", "pipe.vertical_supports", "stack", met, "6.2.7.2", published},
		}},
		{"11 slope", "demo", []edits{{"systems/0/pipe/1/rise": "3/4 in", "systems/0/pipe/1/slope": nil}}, []expected{
			{"us-epa-1994", "pipe.drains_back", "rim", met, "14.2.6", memory},
			{"us-consensus", "pipe.slope", "rim", deficient, "6.2.2", published},
		}},
		{"12 gauge without an alarm", "demo", []edits{{"systems/0/alarm": map[string]any{"kind": "none"}}}, []expected{
			{"us-epa-1994", "gauge.warning_device", "sys-1", met, "16.1", memory},
			{"us-consensus", "alarm.present", "sys-1", deficient, "8.2.2", published},
		}},
		{"13 plug-in fan outdoors in a weatherproof housing", "demo", []edits{{
			"systems/0/electrical/connection": "plug-in", "systems/0/fan/housing_weatherproof": true,
		}}, []expected{
			{"us-epa-1994", "electrical.exterior_hard_wired", "sys-1", deficient, "14.6.5", memory},
			{"illinois", "electrical.exterior_hard_wired", "sys-1", met, "422.150(h)(10)", memory},
		}},
		{"14 disconnect 10 ft away", "demo", []edits{{"systems/0/electrical/disconnect_distance": "10 ft"}}, []expected{
			{"us-epa-1994", "electrical.disconnect", "sys-1", met, "14.6.7", memory},
			{"illinois", "electrical.disconnect_distance", "sys-1", deficient, "422.150(h)(10)", memory},
			{"us-consensus", "electrical.disconnect_distance", "sys-1", met, "430.102(B), article 100", memory},
		}},
		{"15 membrane of 6 mil without a class", "crawlspace", []edits{{
			"systems/0/membrane/material": "polyethylene", "systems/0/membrane/thickness": "6 mil", "systems/0/membrane/e1745_class": "none",
		}}, []expected{
			{"us-epa-1994", "membrane.thickness", "sys-1", met, "15.9", memory},
			{"illinois", "membrane.thickness", "sys-1", met, "422.160(c)", published},
			{"us-consensus", "membrane.vapor_class", "sys-1", undetermined, "7.6.1", published},
		}},
		{"16 120 h, house closed 10 h before", "slab", []edits{longTest}, []expected{
			{"pennsylvania", "testing.closed_before", "post-1", not, "240.310(a)(4)(iv)", published},
			{"us-epa-1994", "testing.closed_before", "post-1", not, "", memory},
			{"us-consensus", "testing.closed_before", "post-1", deficient, "7.3.2", published},
		}},
		{"17 tested three days after the fan started", "slab", []edits{{
			"job/contaminant": "both", "measurements/vapor_first_sampled": "2026-04-24T15:00:00-06:00",
		}}, []expected{
			{"us-epa-1994", "testing.after_fan_start", "post-1", met, "17.4", memory},
			{"chemical-vapor", "testing.vapor_waits", "measurements", deficient, "A-3.2", published},
		}},
		{"17 new house tested 41 days after the work", "slab", []edits{{
			"house/new_construction": true, "house/occupied_since": "2026-05-12",
			"measurements/tests/1/start": "2026-06-01T09:00:00-06:00", "measurements/tests/1/end": "2026-06-03T15:00:00-06:00",
			"measurements/tests/1/closed_from": "2026-05-31T18:00:00-06:00", "measurements/tests/1/reported_from": "2026-06-01T09:00:00-06:00",
			"measurements/tests/1/reported_to": "2026-06-03T15:00:00-06:00",
		}}, []expected{
			{"us-epa-1994", "testing.started_in_time", "measurements", deficient, "17.4", memory},
			{"us-consensus", "testing.new_home", "measurements", met, "801.1", published},
		}},
		{"18 records kept four years", "demo", []edits{{
			"closeout/records/kept_for": "4 years", "closeout/records/exposure_kept_for": "4 years",
		}}, []expected{
			{"us-epa-1994", "papers.records_kept", "closeout", met, "18.2", published},
			{"minnesota", "papers.records_kept", "closeout", met, "4620.7400 subp. 1(F),(G)", published},
			{"illinois", "papers.records_kept", "closeout", deficient, "422.70(f)", published},
			{"us-epa-1994", "papers.exposure_records_kept", "closeout", deficient, "18", published},
		}},
		{"19 4.5 pCi/L after the work", "demo", []edits{{result: "4.5 pCi/L"}}, []expected{
			{"us-epa-1994", "testing.below_action_level", "measurements", deficient, "action level", published},
			{"us-consensus", "testing.below_action_level", "measurements", deficient, "7.1", published},
			{"canada", "testing.within_guideline", "measurements", met, "guideline level", published},
			{"common-practice", "testing.world_reference_level", "measurements", deficient, "", practice},
		}},
		{"20 duplicates 8 in apart", "slab", []edits{duplicates("0.9 pCi/L", "8 in")}, []expected{
			{"us-consensus", "testing.duplicate_spacing", "post-1/post-2", met, "7.2.1, 8.5.2(d)", published},
			{"illinois", "testing.duplicate_spacing", "post-1/post-2", deficient, "422.130(c)", memory},
		}},
		{"21 pit of one cubic foot", "slab", []edits{{
			"job/contaminant": "both", "systems/0/suction_points/0/pit_volume": "1 ft3",
		}}, []expected{
			{"us-epa-1994", "suction.pit", "sp-1", met, "14.4.1", memory},
			{"chemical-vapor", "suction.vapor_pit", "sp-1", deficient, "742.1210(c)(1)(A)", published},
		}},
		{"22 0.5 WL where the crew works", "demo", []edits{{
			"safety/working_level": 0.5, "job/crew/0/exposure_level": "100 pCi/L",
		}}, []expected{
			{"illinois", "safety.level_worked_in", "lead", deficient, "422.70(e)", published},
			{"common-practice", "safety.respirators_in_high_levels", "safety", not, "", practice},
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			verdicts := map[string]finding.Verdict{}
			differ := false
			for _, want := range c.wants {
				for profile, verdict := range verdicts {
					differ = differ || profile != want.profile && verdict != want.verdict
				}
				verdicts[want.profile] = want.verdict
			}
			if !differ {
				t.Error("no two profiles differ about this record")
			}
			expect(t, edited(t, c.fixture, c.changes...), c.fixture, c.wants)
		})
	}
}

// The other half of conflict 15: open seams are a should to EPA 402-R-93-078
// 14.5.6 (from memory) and a must to ANSI/AARST CC-1000 2018 6.4.3 (published),
// so that they hold the job under one of the two.
func TestShouldAndMustDiffer(t *testing.T) {
	doc := edited(t, "crawlspace", edits{"systems/0/membrane/seams_sealed": false})
	for profile, holds := range map[string]bool{"us-epa-1994": false, "us-consensus": true, "illinois": true} {
		job, errs := onlyProfile(t, profile).Run(context.Background(), doc, os.DirFS("../../fixtures/crawlspace"))
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		i := slices.IndexFunc(job.Findings, func(f finding.Finding) bool { return f.Requirement == "membrane.seams_sealed" && f.Subject == "sys-1" })
		if i < 0 || job.Findings[i].Verdict != finding.Deficient || job.Findings[i].Holds != holds {
			t.Errorf("%s: open seams do not hold the job as they should: %+v", profile, job.Findings[max(i, 0)])
		}
	}
}

// longTest is a charcoal test of 120 hours whose house was closed 10 hours before.
var longTest = edits{
	"measurements/tests/1/device": "charcoal", "measurements/tests/1/blank": false,
	"measurements/tests/1/start": "2026-04-24T09:00:00-06:00", "measurements/tests/1/end": "2026-04-29T09:00:00-06:00",
	"measurements/tests/1/closed_from": "2026-04-23T23:00:00-06:00",
}

// duplicates is a second device beside the first, whose result stays 0.9 pCi/L.
func duplicates(result, spacing string) edits {
	second := map[string]any{
		"id": "post-2", "phase": "after", "kind": "short-term", "device": "charcoal", "blank": false, "duplicate_of": "post-1", "spacing": spacing,
		"start": "2026-04-24T09:00:00-06:00", "end": "2026-04-26T15:00:00-06:00", "result": result, "below_detection": false,
	}
	return edits{"measurements/tests/2": second}
}
