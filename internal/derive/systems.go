package derive

import (
	"errors"
	"math"
	"sync"

	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

func (d *deriver) systemValues() []any {
	out := d.list(len(d.systems))
	for _, s := range d.systems {
		e := d.about(s.node, 25, 5)
		d.sizes(s, e)
		d.fanValues(s, e)
		d.flowValues(s, e)
		d.power(s, e)
		d.waterAndTime(s, e)
		out = append(out, e)
	}
	return out
}

// sizes is what a system treats and the sizes of its pipe.
func (d *deriver) sizes(s *system, e *entry) {
	area := d.areaTreated(s)
	points := s.get("suction_points")
	each := figure{area.si / float64(len(s.points)), area.unit, area.basis}
	if len(s.points) == 0 {
		each.basis = join(area.basis, points.lack())
	} else {
		each.basis = join(area.basis, points.read())
	}
	e.exact("area_treated", quantity.Area, area, "sum of the footprints")
	e.exact("area_per_suction_point", quantity.Area, each, "area treated over suction points")
	all, main := figure{si: math.Inf(1), basis: nothing}, figure{si: math.Inf(1), basis: s.flowing}
	for i, seg := range s.segments {
		all = smaller(all, seg.nominal)
		if s.flowing.known() && s.carriesAll(i) {
			main = smaller(main, seg.nominal)
		}
	}
	if len(s.segments) == 0 {
		all.basis = s.get("pipe").lack()
	}
	if s.flowing.known() && math.IsInf(main.si, 1) && main.known() {
		main.basis = refused("the legs meet at the open end only", s.get("pipe"))
	}
	e.exact("largest_manifold_bore", quantity.Length, s.largestManifold(), "largest trade size of the segments that carry the air of several suction points")
	e.exact("smallest_bore", quantity.Length, all, "smallest trade size")
	e.exact("smallest_main_bore", quantity.Length, main, "smallest trade size of the segments that carry all the air")
}

// largestManifold is the largest segment behind a junction.
func (s *system) largestManifold() figure {
	largest, shared := figure{si: math.Inf(-1), basis: s.flowing}, false
	for _, seg := range s.segments {
		if !s.flowing.known() || seg.feeds < 2 {
			continue
		}
		shared = true
		if seg.nominal.si > largest.si {
			largest = figure{seg.nominal.si, seg.nominal.unit, join(seg.nominal.basis, largest.basis)}
			continue
		}
		largest.basis = join(largest.basis, seg.nominal.basis)
	}
	if s.flowing.known() && !shared {
		largest.basis = refused("no segment carries the air of several suction points", s.get("suction_points"))
	}
	return largest
}

func smaller(least, f figure) figure {
	if f.known() && f.si < least.si {
		return figure{f.si, f.unit, join(f.basis, least.basis)}
	}
	least.basis = join(least.basis, f.basis)
	return least
}

func (d *deriver) areaTreated(s *system) figure {
	list := s.get("foundations")
	areas := d.house.get("foundations").items()
	sum := figure{basis: list.read()}
	seen := map[int]bool{}
	for _, ref := range list.each() {
		i := find(areas, ref.text())
		if seen[i] {
			continue
		}
		seen[i] = i >= 0
		if i < 0 {
			sum.basis = join(sum.basis, refused("no foundation area of the house has this id", ref))
			continue
		}
		area := areas[i].get("footprint").quantity().notBelow("an area")
		if sum.unit == (quantity.Unit{}) {
			sum.unit = area.unit
		}
		sum.si += area.si
		sum.basis = join(sum.basis, area.basis)
	}
	if list.length() == 0 {
		sum.basis = list.lack()
	}
	return sum
}

func (d *deriver) fanValues(s *system, e *entry) {
	shutOff := s.shutOff
	pressure := figure{unit: s.curveUnits[1], basis: s.operating.basis}
	if s.operatingPoint != nil {
		pressure.si = s.operatingPoint.Pressure
	}
	e.model("shutoff_pressure", quantity.Pressure, shutOff, "first point of the fan's curve, by the density of the gas")
	e.model("operating_flow", quantity.Flow, s.operating, "where the fan's curve meets pipe and ground")
	e.model("operating_pressure", quantity.Pressure, pressure, "fan static pressure there")
	if s.operatingState != "" {
		e.set("operating_state", s.operatingState)
	}
	e.recorded("gauge_reading", quantity.Pressure, s.shown, s.shownAt, "last reading with the fan on")
	e.model("gauge_flow", quantity.Flow, s.fromGauge, "flow at which the fan shows its reading to the gauge")
	if s.verdict != "" {
		e.set("gauge_plausibility", string(s.verdict))
	}
	e.model("gauge_share", quantity.Ratio, quotient(s.shown, shutOff), "reading over shut-off pressure")
	mark := s.gauge.get("start_mark").quantity()
	e.exact("start_mark_difference", quantity.Pressure, apart(mark, s.shownFirst), "start mark against the first reading with the fan on, either way")
	e.exact("gauge_change", quantity.Ratio, quotient(difference(s.shown, mark), mark), "last reading less start mark, over the mark")
	// Only drawings ask for the curves, and solving them takes time.
	if s.siteCurve != nil {
		e.set("fan_curve", sync.OnceValue(s.fanCurve))
	}
	if s.curve != nil && s.network != nil && s.soilBasis.known() {
		e.set("system_curve", sync.OnceValue(s.systemCurve))
	}
}

// quotient is a share, written in percent.
func quotient(a, b figure) figure {
	f := figure{a.si / b.si, units.percent, join(a.basis, b.basis)}
	if f.known() && b.si == 0 {
		f.basis = b.refuse(errors.New("nothing is a share of zero"))
	}
	return f
}

func (d *deriver) flowValues(s *system, e *entry) {
	e.value("flow_used", quantity.Flow, s.used, s.usedWord, s.flowDigits(true))
	e.model("flow_difference", quantity.Ratio, quotient(difference(s.fromGauge, s.measured), s.measured), "flow from the gauge less measured, over measured")
	if s.fromGauge.known() && s.measured.known() {
		if agreement, err := airflow.CompareFlows(s.fromGauge.si, s.measured.si); err == nil {
			e.set("flow_agreement", string(agreement))
		}
	}
	highest := figure{si: math.Inf(-1), basis: nothing}
	for _, seg := range s.segments {
		if seg.speed.si > highest.si {
			highest.si, highest.unit = seg.speed.si, seg.speed.unit
		}
		highest.basis = join(highest.basis, seg.speed.basis)
	}
	if len(s.segments) == 0 {
		highest.basis = s.get("pipe").lack()
	}
	e.model("highest_velocity", quantity.Velocity, highest, "flow over bore, at the flow used")
	loss := figure{unit: s.pressureUnit(), basis: s.stateBasis}
	if s.state != nil {
		loss.si = s.state.FanStatic - s.state.Soil
	}
	given := s.fanPressure(s.used)
	share := quotient(loss, given)
	e.model("pipe_loss", quantity.Pressure, loss, "fan static pressure that pipe and fittings take at the flow used: Darcy and Weisbach with Churchill's friction factor")
	e.model("pipe_loss_share", quantity.Ratio, share, "pipe loss over fan pressure at the flow used")
	left := figure{si: math.Inf(1), basis: s.get("suction_points").lack()}
	for i, p := range s.points {
		if i == 0 {
			left.basis = p.pit.basis
		}
		if p.pit.si < left.si {
			left.si, left.unit = p.pit.si, p.pit.unit
		}
	}
	e.model("suction_available", quantity.Pressure, left, "lowest suction in a pit: gauge or fan less the losses between")
}

// pressureUnit is the one in which the writer reads pressures of the pipe.
func (s *system) pressureUnit() quantity.Unit {
	if s.shown.known() {
		return s.shown.unit
	}
	return s.curveUnits[1]
}

// power is the fan's energy and its share of the circuit.
func (d *deriver) power(s *system, e *entry) {
	watts, wired := s.fan.get("power").quantity().notBelow("a power"), s.get("electrical").rooted()
	always := s.get("runs_continuously")
	running, b := always.said()
	energy := figure{airflow.YearlyEnergy(watts.si), units.kilowattHours, join(watts.basis, b)}
	if b.known() && !running {
		energy.basis = refused("how long a year the fan runs is not recorded", always)
	}
	e.exact("yearly_energy", quantity.Energy, energy, "power over 365 days")
	volts, amps := wired.get("circuit_voltage").quantity(), wired.get("circuit_rating").quantity()
	capacity := figure{volts.si * amps.si, units.watts, join(volts.basis, amps.basis)}
	e.exact("circuit_share_fan", quantity.Ratio, quotient(watts, capacity), "power over rating times voltage")
	load := wired.get("circuit_other_load")
	other := load.quantity().notBelow("a power")
	if alone := wired.get("circuit_dedicated"); alone.isTrue() && !load.exists() {
		other = figure{0, units.watts, alone.read()}
	}
	total := figure{watts.si + other.si, units.watts, join(watts.basis, other.basis)}
	e.exact("circuit_share_total", quantity.Ratio, quotient(total, capacity), "power of fan and other load over rating times voltage")
}

// soilTemperature is that of soil gas (K); see the assumption of that name.
const soilTemperature = 273.15 + 12.5

// waterAndTime is the water that may fall out in the pipe, and how long a
// temporary system stood.
func (d *deriver) waterAndTime(s *system, e *entry) {
	winter := d.house.get("winter_design_temperature").quantity()
	water := figure{unit: units.kilogramsPerDay, basis: join(s.used.basis, winter.basis, d.site.basis, assuming(soilGas))}
	if isFeet(s.used.unit) {
		water.unit = units.poundsPerDay
	}
	if water.known() {
		water.si = airflow.CondensateBound(s.used.si, soilTemperature, winter.si, d.site.si)
	}
	e.model("condensate", quantity.MassPerDay, water, "all water that the gas holds more in the ground than at the outlet in design weather; most leaves as vapor")
	ventilation := s.get("ventilation").rooted()
	supply, exhaust := ventilation.get("supply_flow").quantity().notBelow("a flow"), ventilation.get("exhaust_flow").quantity().notBelow("a flow")
	e.exact("ventilation_imbalance", quantity.Ratio, quotient(difference(supply, exhaust), exhaust), "supply less exhaust, over exhaust")
	since, until := s.get("temporary_since"), s.get("replaced_on")
	if s.get("permanence").text() == "temporary" || since.exists() || until.exists() {
		e.span("temporary_days", since.day(), until.day(), units.days, "start to replacement")
	}
}
