package derive

import (
	"errors"
	"math"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/radon"
)

// A test is one radon test as far as several parts of the document read it.
type test struct {
	node
	phase                    string
	phaseBasis               basis
	device                   radon.Device
	deviceBasis              basis
	startAt, endAt, resultAt node
	start, end               figure
	result                   figure
	// blank is a test of no room; blankBasis says what that rests on, and is not
	// known where the record does not tell.
	blank      bool
	blankBasis basis
	// told is the result with its uncertainty.
	told      radon.Result
	toldBasis basis
}

func (d *deriver) readTests() {
	list := d.record.get("measurements").get("tests").rooted()
	d.all = list.mem.tests.several(list.length())
	for i, n := range list.each() {
		t := d.all[i]
		t.node, t.startAt, t.endAt, t.resultAt = n, n.get("start").rooted(), n.get("end").rooted(), n.get("result").rooted()
		t.start, t.end = t.startAt.quantity(), t.endAt.quantity()
		t.result = t.resultAt.quantity().notBelow("a concentration")
		var device string
		device, t.deviceBasis = n.get("device").choice()
		t.device = radon.Device(device)
		t.phase, t.phaseBasis = n.get("phase").choice()
		t.blank, t.blankBasis = t.isBlank()
		t.tell()
	}
}

// isBlank says whether a device was never opened. A monitor cannot be a field
// blank; of other devices the record must say it, and of a blank what it is.
func (t *test) isBlank() (bool, basis) {
	blank, b := t.get("blank").said()
	switch {
	case t.device == radon.ContinuousMonitor:
		return false, t.deviceBasis
	case blank:
		return t.deviceBasis.known(), join(b, t.deviceBasis)
	}
	return false, b
}

// tell finds the uncertainty of a result. One below detection is its own upper
// bound.
func (t *test) tell() {
	t.told.Value = t.result.si
	below := t.get("below_detection")
	t.told.BelowDetection = below.isTrue()
	t.toldBasis = t.result.basis
	if t.told.BelowDetection {
		t.toldBasis = join(t.result.basis, below.read())
		return
	}
	if u := t.get("uncertainty"); u.exists() {
		share := u.quantity()
		t.told.U = share.si * t.result.si
		t.toldBasis = join(t.result.basis, share.basis)
		if share.known() && share.si < 0 {
			t.toldBasis = refused("an uncertainty cannot be below zero", u)
		}
		return
	}
	b := t.deviceBasis
	if t.device == "" {
		b = t.get("uncertainty").lack()
	}
	t.toldBasis = join(t.result.basis, b, assuming(deviceUncertainty))
	if t.toldBasis.known() {
		u, err := radon.AssumedU(t.device, t.result.si)
		if err != nil {
			t.toldBasis = refused(err.Error(), t.get("uncertainty"))
		}
		t.told.U = u
	}
}

// rounded is a concentration as it is reported: in pCi/L with one decimal, else
// in whole Bq/m3.
func rounded(f figure) figure {
	if !f.known() {
		return f
	}
	text, factor := radon.ReportBecquerels(f.si), 1.0
	if strings.HasPrefix(f.unit.String(), "pCi") {
		text, factor = radon.ReportPicocuries(f.si), 37
	}
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		f.basis = f.refuse(errors.New("no concentration can be " + text))
	}
	f.si = x * factor
	return f
}

const roundedMethod = "rounded half up as ANSI/AARST MAH 2019 8.5.2 has it"

func (d *deriver) testValues() []any {
	fan := d.started
	completed := d.dates.get("completed").day()
	occupied := d.house.get("occupied_since").day()
	out := d.list(len(d.all))
	for _, t := range d.all {
		e := d.about(t.node, 13, 1)
		out = append(out, e)
		if t.phase != "" {
			e.set("phase", t.phase)
		}
		started := t.startAt.day()
		closed, reported := t.get("closed_from").quantity(), t.reported()
		e.span("duration", t.start, t.end, units.hours, "start to end")
		e.span("after_fan_start", fan, t.start, units.hours, "start of the last fan to start of the test")
		e.lead("closed_lead", closed, t.start, units.hours, "closing of the house to start of the test")
		e.exact("valid_hours", quantity.Duration, t.validHours(fan, closed, reported), "whole hours that count, from 24 h after the fan and 12 h after closing: ANSI/AARST MAH 2019 7.3.2, 8.5.3")
		e.span("lead_out", t.start, reported.from, units.hours, "start to the first hour reported")
		e.lead("tail_left_out", reported.to, t.end, units.hours, "end of the last hour reported to the end")
		e.span("calibration_left", t.endAt.day(), t.get("calibration_expires").day(), units.days, "day of the end to last day of the calibration")
		e.span("days_after_occupancy", occupied, started, units.days, "days on the calendar of the place")
		e.span("days_after_completion", completed, started, units.days, "days on the calendar of the place")
		e.span("days_to_report", t.get("picked_up").day(), t.get("report_delivered").day(), units.days, "pick-up to report")
		method := "as recorded"
		if t.told.BelowDetection {
			method = "as recorded: an upper bound, below detection"
		}
		result := t.result
		result.basis = join(result.basis, bounds(t))
		e.recorded("concentration", quantity.Radon, result, t.resultAt, method)
		e.exact("reported", quantity.Radon, rounded(result), roundedMethod)
		_, upper := t.told.Bounds()
		e.model("upper_bound", quantity.Radon, figure{upper, t.result.unit, t.toldBasis}, "one-sided 95 %, 1.645 standard uncertainties")
	}
	return out
}

// fanStart is when the last of the fans first ran.
func (d *deriver) fanStart() figure {
	list := d.record.get("systems")
	last := figure{si: math.Inf(-1), basis: nothing}
	for _, s := range d.systems {
		switch driven, b := s.get("powered_by").choice(); driven {
		case "fan":
			started := s.fan.get("started").quantity()
			last.si = math.Max(last.si, started.si)
			last.basis = join(last.basis, b, started.basis)
		default:
			last.basis = join(last.basis, b)
		}
	}
	switch {
	case len(d.systems) == 0:
		last.basis = list.lack()
	case last.known() && math.IsInf(last.si, -1):
		last.basis = refused("no system of the record has a fan", list)
	}
	return last
}

// span is the first and the end of the last hour that a result counts.
type span struct{ from, to figure }

func (t *test) reported() span {
	return span{t.get("reported_from").quantity(), t.get("reported_to").quantity()}
}

// validHours are the contiguous whole hours of a monitor that can count.
func (t *test) validHours(fan, closed figure, reported span) figure {
	switch t.device {
	case "":
		return figure{basis: t.deviceBasis}
	case radon.ContinuousMonitor:
	default:
		return figure{basis: refused("only a monitor tells one hour from another", t.get("device"))}
	}
	from, to, left := reported.from, reported.to, t.get("hours_left_out").quantity()
	parts := []basis{from.basis, to.basis, left.basis, closed.basis, t.deviceBasis}
	conditions := []radon.Condition{{Since: closed.si, Lead: 12 * secondsPerHour}}
	switch t.phase {
	case "before", "":
		parts = append(parts, t.phaseBasis)
	default:
		parts = append(parts, fan.basis, t.phaseBasis)
		conditions = append(conditions, radon.Condition{Since: fan.si, Lead: 24 * secondsPerHour})
	}
	f := figure{unit: units.hours, basis: join(parts...)}
	if !f.known() {
		return f
	}
	if left.si != 0 {
		f.basis = refused("hours were left out, and the record does not say which", t.get("hours_left_out"))
		return f
	}
	ready, err := radon.ReadyAt(conditions...)
	if err == nil {
		var span radon.Span
		span, err = radon.ContiguousHours(radon.Span{From: from.si, To: to.si}, ready, nil)
		f.si = span.Length()
	}
	if err != nil {
		f.basis = refused(err.Error(), t.get("reported_from"), t.get("reported_to"))
	}
	return f
}
