package derive

import (
	"github.com/slablint/slablint/internal/airflow"
	"github.com/slablint/slablint/internal/quantity"
)

// A system is one mitigation system of the record and what was worked out of
// it. Rooms fill it in the order of work.
type system struct {
	node
	fan, discharge, gauge node

	segments []*segment
	points   []*suctionPoint

	index    map[string]int // of the segments, by their names
	flowing  basis          // how the segments follow each other
	last     int            // the segment that ends in the open
	afterFan int            // the last segment before the fan
	driven   basis          // that there is a fan, and where

	curve      *airflow.FanCurve // at standard air
	siteCurve  *airflow.FanCurve // in the gas of the pipe
	curveBasis basis
	curveUnits [2]quantity.Unit // of flow and pressure

	pipe      basis            // all pipe from the pits to the open end
	network   *airflow.Network // nil when pipe is not known
	soilBasis basis            // the ground at every suction point

	shutOff        figure // Pa
	shown          figure // Pa, the last reading of the gauge
	shownFirst     figure // Pa, the first
	shownAt        node   // where it is recorded
	verdict        airflow.GaugeVerdict
	gaugeSays      basis                   // of the suction in the pits as far as the gauge tells it
	fromGauge      figure                  // m3/s
	operating      figure                  // m3/s
	operatingPoint *airflow.OperatingPoint // nil when there is none
	operatingState string

	measured, used figure // m3/s
	usedWord       string
	split          basis          // how the flow used splits between legs
	splitSolved    bool           // the split is worked out from the ground, not measured
	state          *airflow.State // at the flow used, nil when not known
	stateBasis     basis
}

// A segment is one piece of pipe, at the index it has in the record.
type segment struct {
	node
	id           string
	name         string // in the network: the id, unless another before it has the same
	into, starts node   // what it says of the segment it flows into, and of where it begins
	next         int    // the segment it flows into, -1 for the open
	from         []int  // the segments that flow into it
	fromFew      [2]int // room for from
	startsAt     int    // the suction point it begins at, -1 for none
	feeds        int    // how many suction points it carries the air of

	nominal    figure // m
	bore       airflow.Bore
	boreBasis  basis
	boreUnit   quantity.Unit
	boreMethod string
	length     figure  // m
	rise       figure  // m, in the direction of flow
	roughness  float64 // m
	roughBasis basis
	fittings   []airflow.Fitting
	tee        tee  // the tee at its end, if any
	reducer    bool // a reducer of recorded loss stands in it
	fitBasis   basis

	flow   figure                // m3/s
	speed  figure                // m/s
	state  *airflow.SegmentState // at the flow used, zero when not known
	stated basis                 // Reynolds number
	rubbed basis                 // friction factor
	lost   basis                 // loss

	trap figure // m, depth of the low point that it ends in
}

// tee is a tee at the end of a segment, which may be where legs meet.
type tee struct {
	kind    airflow.FittingKind // "" of none
	fitting airflow.Fitting
}

// A suctionPoint is where the pipe draws from the ground.
type suctionPoint struct {
	node
	name      string // in the network, as of a segment
	first     int    // the segment that begins here, -1 when none does
	told      figure // m3/s, measured in this leg
	soil      airflow.Soil
	soilBasis basis
	flow      figure // m3/s
	pit       figure // Pa
}

func (s *system) read(n node) {
	s.node, s.fan, s.discharge, s.gauge = n, n.get("fan").rooted(), n.get("discharge").rooted(), n.get("gauge").rooted()
	s.last, s.afterFan = -1, -1
	list := n.get("suction_points").rooted()
	s.points = n.mem.points.several(list.length())
	for i, item := range list.each() {
		s.points[i].read(item)
	}
	list = n.get("pipe").rooted()
	s.segments = n.mem.segments.several(list.length())
	for i, item := range list.each() {
		s.segments[i].read(item)
	}
}

func (p *suctionPoint) read(n node) {
	p.node, p.first, p.told = n, -1, n.get("flow").quantity().notBelow("a flow")
	flow, suction, exponent := n.get("soil_flow").quantity(), n.get("soil_suction").quantity(), n.get("soil_exponent").number()
	p.soilBasis = join(flow.basis, suction.basis, exponent.basis)
	if p.soilBasis.known() {
		soil, err := airflow.SoilThrough(flow.si, suction.si, exponent.si)
		if err != nil {
			p.soilBasis = p.soilBasis.refuse(err)
		}
		p.soil = soil
	}
}

// drawsSoilGas are the kinds of system whose pipe leads from the ground to a fan
// or stack.
var drawsSoilGas = []string{"sub-slab", "drain-tile", "block-wall", "sub-membrane", "crawlspace-depressurization", "baseboard-channel"}

// work fills in what is worked out of a system, each step from those before.
func (d *deriver) work(s *system) {
	s.connect()
	s.placeFan()
	s.readCurve(d)
	s.fit()
	s.build(d)
	s.operate()
	s.readGauge(d)
	s.chooseFlow()
	s.distribute(d)
	s.findPits()
}

// carriesAll reports whether a segment carries the air of all suction points.
func (s *system) carriesAll(i int) bool { return s.segments[i].feeds == len(s.points) }
