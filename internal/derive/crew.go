package derive

import (
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/radon"
)

// crew is the exposure of each worker at this job.
func (d *deriver) crew() []any {
	work, completed := d.dates.get("work_started").day(), d.dates.get("completed").day()
	list := d.record.get("job").get("crew").rooted()
	out := d.list(list.length())
	for _, n := range list.each() {
		e := d.about(n, 6, 0)
		level, hours := n.get("exposure_level").quantity().notBelow("a concentration"), n.get("hours_on_site").quantity()
		half := exposure(level, hours, 0.5)
		half.basis = join(half.basis, assuming(equilibriumRatio))
		past := n.get("exposure_past_year").quantity().notBelow("an exposure")
		e.recorded("level", quantity.Radon, level, n.get("exposure_level"), "as recorded")
		e.exact("exposure", quantity.Exposure, half, "level, equilibrium ratio 0.5, hours over 170 h")
		e.exact("exposure_unit_ratio", quantity.Exposure, exposure(level, hours, 1), "level, equilibrium ratio 1, hours over 170 h: ANSI/AARST SGM-SF 2017 (12/20) 11.3")
		e.exact("past_year", quantity.Exposure, figure{past.si + half.si, units.exposure, join(past.basis, half.basis)}, "the worker's log and this job")
		e.lead("plan_age", n.get("plan_reviewed").day(), work, units.days, "last review of the plan to start of work")
		e.span("credential_margin", completed, n.get("credential_expires").day(), units.days, "last day of work to last day of the credential")
		out = append(out, e)
	}
	return out
}

// exposure is in WLM.
func exposure(level, hours figure, ratio float64) figure {
	f := figure{unit: units.exposure, basis: join(level.basis, hours.basis)}
	if !f.known() {
		return f
	}
	wl, err := radon.WorkingLevel(level.si, ratio)
	if err != nil {
		f.basis = level.refuse(err)
		return f
	}
	if f.si, err = radon.WorkingLevelMonths(wl, hours.si); err != nil {
		f.basis = hours.refuse(err)
	}
	return f
}
