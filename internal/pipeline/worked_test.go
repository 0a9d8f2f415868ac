package pipeline_test

import (
	"context"
	"os"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// Cases worked by hand from the text of each clause, told as whole records.
func TestWorkedCases(t *testing.T) {
	const (
		met, deficient, unrecorded, not = finding.Met, finding.Deficient, finding.Unrecorded, finding.NotApplicable
		undetermined                    = finding.Undetermined
		published, memory, practice     = finding.Published, finding.FromMemory, finding.CommonPractice
	)
	membrane := func(material, thickness string) edits {
		return edits{"systems/0/membrane/material": material, "systems/0/membrane/thickness": thickness, "systems/0/membrane/e1745_class": nil}
	}
	corner := window("own", "7 ft", "1 ft")
	corner["systems/0/discharge/clearances"] = []any{map[string]any{
		"id": "to-win", "opening": "win", "building": "own", "legs": []any{"4.5 ft", "6.0 ft"}, "drop": "1 ft",
	}}
	for _, c := range []struct {
		name, fixture string
		changes       []edits
		wants         []expected
	}{
		{"1 window 8 ft away, its top 1.5 ft below: 8.14 ft", "demo", []edits{window("own", "8.14 ft", "1.5 ft")}, []expected{
			{"us-epa-1994", "exhaust.clearance_to_openings", "sys-1/win", deficient, "14.2.8(3)", published},
		}},
		{"3 window 8 ft away, 3 ft above: 8.54 ft", "demo", []edits{window("own", "8.54 ft", "-3 ft")}, []expected{
			{"us-epa-1994", "exhaust.clearance_to_openings", "sys-1/win", deficient, "14.2.8(3)", published},
		}},
		{"5 9.2 ft over the ground nearest to the outlet", "demo", []edits{{grade: "9.2 ft", level: nil}}, []expected{
			{"pennsylvania", "exhaust.height_above_grade", "sys-1", deficient, "240.308(b)(3)", published},
		}},
		{"7 10.5 ft round the corner", "demo", []edits{corner}, []expected{
			{"us-epa-1994", "exhaust.clearance_to_openings", "sys-1/win", met, "14.2.8(3)", published},
			{"pennsylvania", "exhaust.clearance_to_openings", "sys-1/win", met, "240.308(b)(4)", published},
		}},
		{"9 13 in over a pitched roof", "slab", []edits{{"systems/0/discharge/height_above_roof": "13 in"}}, []expected{
			{"us-consensus", "exhaust.height_above_pitched_roof", "sys-1", met, "6.4.10(a)", published},
			{"us-consensus", "exhaust.height_above_flat_roof", "sys-1", not, "6.4.10(c)", published},
		}},
		{"9 13 in over a flat roof", "slab", []edits{{"systems/0/discharge/height_above_roof": "13 in", "house/roof_kind": "flat"}}, []expected{
			{"us-consensus", "exhaust.height_above_flat_roof", "sys-1", deficient, "6.4.10(c)", published},
		}},
		{"11 60 degrees off vertical, with a cap", "demo", []edits{{angle: "60 deg", "systems/0/discharge/rain_cap": true}}, []expected{
			{"pennsylvania", "exhaust.points_upward", "sys-1", deficient, "240.308(b)(2)", published},
			{"us-consensus", "exhaust.points_upward", "sys-1", deficient, "6.4.9", published},
			{"pennsylvania", "exhaust.no_rain_cap", "sys-1", deficient, "240.308(b)(2)", published},
		}},
		{"13 box in an unvented attic with 20 sq in of vent", "slab", []edits{{
			"systems/0/fan/place":     "conditioned-attic",
			"systems/0/fan/enclosure": map[string]any{"sealed": true, "accessible": true, "net_free_vent_area": "20 in2"},
		}}, []expected{
			{"us-consensus", "fan.attic_enclosure", "sys-1", deficient, "701.2.2", published},
		}},
		{"15 hangers 6 ft apart, 12 ft fall 1.25 in", "demo", []edits{{
			"house/new_construction": true, "systems/0/pipe/1/support_spacing": "6.0 ft",
			"systems/0/pipe/1/rise": "1-1/4 in", "systems/0/pipe/1/slope": nil,
		}}, []expected{
			{"us-epa-1994", "pipe.horizontal_supports", "rim", met, "14.2.4", memory},
			{"us-irc-appendix", "pipe.horizontal_supports", "rim", deficient, "Table P2605.1", memory},
			{"us-consensus", "pipe.slope", "rim", deficient, "6.2.2", published},
		}},
		{"17 monitor set 2 h after the fan, reported from hour 24 to 74", "slab", []edits{{
			"measurements/tests/1/start": "2026-04-21T16:30:00-06:00", "measurements/tests/1/end": "2026-04-24T16:30:00-06:00",
			"measurements/tests/1/closed_from":   "2026-04-21T02:30:00-06:00",
			"measurements/tests/1/reported_from": "2026-04-22T14:30:00-06:00", "measurements/tests/1/reported_to": "2026-04-24T16:30:00-06:00",
		}}, []expected{
			{"us-consensus", "testing.hours_in_one_piece", "post-1", met, "7.3.2(b)", published},
		}},
		{"19 120 h, house closed 10 h before", "slab", []edits{longTest}, []expected{
			{"pennsylvania", "testing.closed_before", "post-1", not, "240.310(a)(4)(iv)", published},
			{"us-consensus", "testing.closed_before", "post-1", deficient, "7.3.2", published},
		}},
		{"21 4.4 and 3.5 pCi/L side by side: 22.8 %, mean 3.95", "slab", []edits{{result: "4.4 pCi/L"}, duplicates("3.5 pCi/L", "4 in")}, []expected{
			{"us-consensus", "testing.duplicates_one_side", "post-1/post-2", deficient, "7.2.1, 8.5.2(d)", published},
			{"us-consensus", "testing.duplicates_agree", "post-1/post-2", met, "7.9.1, Table 7.1", published},
			{"us-consensus", "testing.below_action_level", "measurements", deficient, "7.1", published},
		}},
		{"23 1,490 W of 1,800 VA", "demo", []edits{{
			"systems/0/fan/power": "90 W", "systems/0/electrical/circuit_other_load": "1400 W",
			"systems/0/electrical/circuit_rating": "15 A", "systems/0/electrical/circuit_voltage": "120 V",
		}}, []expected{
			{"us-epa-1994", "electrical.circuit_load", "sys-1", deficient, "14.6.6", memory},
		}},
		{"25 cord of 6.0 ft through a wall", "slab", []edits{{
			"systems/0/electrical/connection": "plug-in", "systems/0/electrical/cord_length": "6.0 ft", "systems/0/electrical/cord_through_wall": true,
		}}, []expected{
			{"us-epa-1994", "electrical.cord_length", "sys-1", met, "14.6.3", memory},
			{"us-epa-1994", "electrical.cord_not_in_wall", "sys-1", deficient, "14.6.4", memory},
		}},
		{"27 4 mil of plain sheet", "crawlspace", []edits{membrane("polyethylene", "4 mil")}, []expected{
			{"us-epa-1994", "membrane.thickness", "sys-1", deficient, "15.9", memory},
		}},
		{"27 4 mil of cross-laminated sheet", "crawlspace", []edits{membrane("cross-laminated", "4 mil")}, []expected{
			{"us-epa-1994", "membrane.thickness", "sys-1", met, "15.9", memory},
		}},
		{"27 6 mil and no class written down", "crawlspace", []edits{membrane("polyethylene", "6 mil")}, []expected{
			{"us-epa-1994", "membrane.thickness", "sys-1", met, "15.9", memory},
			{"us-consensus", "membrane.vapor_class", "sys-1", unrecorded, "7.6.1", published},
		}},
		{"27 6 mil and a data sheet without a class", "crawlspace", []edits{membrane("polyethylene", "6 mil"), {"systems/0/membrane/e1745_class": "none"}}, []expected{
			{"us-consensus", "membrane.vapor_class", "sys-1", undetermined, "7.6.1", published},
		}},
		{"29 the sealed sump was the only drain", "demo", []edits{{
			"entry_routes/0/sump/only_surface_drain": true, "entry_routes/0/sump/alternative_drain": "none",
		}}, []expected{
			{"us-epa-1994", "sealing.floor_water", "sump", deficient, "14.5.1, 14.7.4", memory},
			{"us-consensus", "sealing.floor_water", "sump", deficient, "7.5.2", published},
		}},
		{"31 3.1 pCi/L after the work", "demo", []edits{{result: "3.1 pCi/L"}}, []expected{
			{"us-epa-1994", "testing.below_action_level", "measurements", met, "action level", published},
			{"us-epa-1994", "testing.worth_lowering", "measurements", deficient, "levels between 2 and 4 pCi/L", published},
			{"canada", "testing.within_guideline", "measurements", met, "guideline level", published},
			{"common-practice", "testing.world_reference_level", "measurements", deficient, "", practice},
		}},
		{"33 fan of a 2015 system replaced, outlet 7 ft up", "demo", []edits{{
			"job/purpose": "fan-replacement", "systems/0/fan/replaced": "2024-05-02",
			"job/existing_system": map[string]any{"installed": "2015-09-14", "parts_altered": []any{"fan"}},
			grade:                 "7 ft", level: nil,
		}}, []expected{
			{"us-consensus", "fan.replacement", "sys-1", deficient, "", memory},
			{"us-epa-1994", "exhaust.height_above_grade", "sys-1", deficient, "14.2.8(2)", published},
		}},
	} {
		t.Run(c.name, func(t *testing.T) { expect(t, edited(t, c.fixture, c.changes...), c.fixture, c.wants) })
	}
}

// Conflict 15: seams that are not sealed. EPA 402-R-93-078 14.5.6 says should
// (from memory), 32 Ill. Adm. Code 422 says shall (from a training text).
func TestSeamsShouldOrShall(t *testing.T) {
	doc := edited(t, "crawlspace", edits{"systems/0/membrane/seams_sealed": false})
	for profile, grade := range map[string]finding.Grade{"us-epa-1994": finding.Recommended, "illinois": finding.Required} {
		job, errs := onlyProfile(t, profile).Run(context.Background(), doc, os.DirFS("../../fixtures/crawlspace"))
		if len(errs) > 0 {
			t.Fatal(errs)
		}
		seen := false
		for _, f := range job.Findings {
			if f.Requirement != "membrane.seams_sealed" {
				continue
			}
			seen = true
			if f.Verdict != finding.Deficient || f.Grade != grade || f.Holds != (grade == finding.Required) {
				t.Errorf("%s: %s, %s, holds %v", profile, f.Verdict, f.Grade, f.Holds)
			}
		}
		if !seen {
			t.Errorf("%s says nothing of seams", profile)
		}
	}
}
