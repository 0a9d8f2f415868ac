package derive

import (
	"math"

	"github.com/slablint/slablint/internal/quantity"
)

// order is the time between events that must follow each other, on the calendar
// of the place; below zero when they did not.
func (d *deriver) order() *entry {
	day := func(name string) figure { return d.dates.get(name).day() }
	work, completed, handed := day("work_started"), day("completed"), day("handed_over")
	sampled := d.record.get("measurements").get("vapor_first_sampled").quantity()
	whole := difference(completed, work)
	whole.si += secondsPerDay
	whole.unit = units.days
	e := d.entry(7, 0)
	e.exact("work_span", quantity.Duration, whole, "first to last day of work, both counted")
	e.span("fan_start_before_vapor_sample", d.started, sampled, units.days, "start of the last fan to the first vapor sample")
	e.lead("survey_before_work", day("surveyed"), work, units.days, "survey to start of work")
	e.lead("proposal_before_work", day("proposal_given"), work, units.days, "proposal to start of work")
	e.span("work_before_completion", work, completed, units.days, "start of work to completion")
	e.span("completion_before_handover", completed, handed, units.days, "completion to handover")
	e.span("fan_start_before_handover", d.fanStartDay(), handed, units.days, "day the last fan started to handover")
	return e
}

// fanStartDay is the day on which the last of the fans first ran.
func (d *deriver) fanStartDay() figure {
	last := d.started
	if !last.known() {
		return last
	}
	last.si = math.Inf(-1)
	for _, s := range d.systems {
		if s.get("powered_by").text() == "fan" {
			last.si = math.Max(last.si, s.fan.get("started").day().si)
		}
	}
	return last
}
