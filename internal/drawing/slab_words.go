package drawing

import (
	"fmt"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// unplaced lists what belongs to the area and has no recorded position.
func (p *plan) unplaced(job view, foundation string) []string {
	var routes, holes []string
	for i := range job.list("/entry_routes") {
		at := place.Pointer("/entry_routes").Append(i)
		if _, _, ok := job.point(at.Append("position")); !ok && job.text(at.Append("foundation")) == foundation {
			routes = append(routes, routeWords(job, at))
		}
	}
	for t := range job.list("/diagnostics/communication_tests") {
		at := place.Pointer("/diagnostics/communication_tests").Append(t)
		for h := range job.list(at.Append("holes")) {
			hole := at.Append("holes", h)
			if _, _, ok := job.point(hole.Append("position")); !ok && job.text(at.Append("foundation")) == foundation {
				words := job.text(hole.Append("id"))
				if pressure := job.words(hole.Append("pressure")); pressure != "" {
					words += ": " + pressure
				}
				holes = append(holes, words)
			}
		}
	}
	var out []string
	if len(holes) > 0 {
		out = append(out, "Test holes without a recorded position: "+strings.Join(holes, "; ")+".")
	}
	if len(routes) > 0 {
		out = append(out, "Entry routes without a recorded position: "+strings.Join(routes, "; ")+".")
	}
	return out
}

// planWords says what the plan shows as a whole.
func planWords(job view, foundation string) string {
	pulling, total, open, routes := 0, 0, 0, 0
	for t := range job.list("/diagnostics/communication_tests") {
		at := place.Pointer("/diagnostics/communication_tests").Append(t)
		if job.text(at.Append("foundation")) != foundation {
			continue
		}
		for h := range job.list(at.Append("holes")) {
			total++
			if pressure, ok := job.si(at.Append("holes", h, "pressure")); ok && pressure < 0 {
				pulling++
			}
		}
	}
	for i := range job.list("/entry_routes") {
		at := place.Pointer("/entry_routes").Append(i)
		if job.text(at.Append("foundation")) != foundation {
			continue
		}
		routes++
		if sign, _ := routeState(job.text(at.Append("treatment"))); sign != "done" {
			open++
		}
	}
	said := []string{"No test holes are recorded"}
	if total > 0 {
		said[0] = fmt.Sprintf("%d of %d test holes pull", pulling, total)
		if share := job.coverage(foundation); share != "" {
			said[0] += ", and " + share + " of the slab lies nearest to one that does"
		}
	}
	if routes > 0 {
		said = append(said, fmt.Sprintf("%d of %d entry routes are treated", routes-open, routes))
	}
	return strings.Join(said, "; ") + "."
}

// coverage is the share of the slab that the tests of an area found reached,
// where there is one figure for it.
func (v view) coverage(foundation string) string {
	found := ""
	for i := range v.list("/derived/communication") {
		at := place.Pointer("/derived/communication").Append(i)
		if v.text(at.Append("foundation")) != foundation || v.text(at.Append("coverage", "method")) != "share of the slab nearest to a hole that pulls" {
			continue
		}
		if found != "" {
			return ""
		}
		found = v.words(at.Append("coverage"))
	}
	return found
}
