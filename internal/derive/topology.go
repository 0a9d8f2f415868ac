package derive

import (
	"slices"
	"strconv"
)

// connect finds how the segments follow each other: a tree from the suction
// points to one open end, or what keeps it from being one.
func (s *system) connect() {
	list, points := s.get("pipe"), s.get("suction_points")
	kind, kindBasis := s.get("kind").choice()
	lacks := kindBasis
	switch {
	case kind != "" && !slices.Contains(drawsSoilGas, kind):
		lacks = refused("a system of this kind draws no soil gas through pipe", s.get("kind"))
	case len(s.segments) == 0:
		lacks = join(lacks, list.lack())
	case len(s.points) == 0:
		lacks = join(lacks, points.lack())
	}
	named := s.named()
	for i, seg := range s.segments {
		lacks = join(lacks, s.follow(i, named), s.begin(i))
		if seg.next >= 0 {
			next := s.segments[seg.next]
			if next.from == nil {
				next.from = next.fromFew[:0]
			}
			next.from = append(next.from, i)
		}
	}
	s.nameParts(named)
	if lacks.known() {
		lacks = join(lacks, s.checkStarts())
	}
	if lacks.known() {
		lacks = s.countFeeds()
	}
	s.flowing = lacks
	if lacks.known() {
		s.flowing = join(list.read(), points.read(), s.get("kind").read())
	}
}

// follow finds the segment that one flows into: the one it names, else the next
// in the list unless the air of that comes from elsewhere. Where legs meet, each
// says so: left out by mistake it would move the leg.
func (s *system) follow(i int, named segmentNames) basis {
	seg := s.segments[i]
	seg.next = -1
	into := seg.into
	switch {
	case into.exists():
		j, known := named.index[into.text()]
		switch {
		case !known:
			return refused("no segment of this system has this id", into)
		case j == i:
			return refused("a segment does not flow into itself", into)
		}
		seg.next = j
	case i+1 == len(s.segments):
	case s.segments[i+1].starts.exists(), named.joined[i+1]:
		return into.lack()
	default:
		seg.next = i + 1
	}
	return nothing
}

// segmentNames finds segments by their ids.
type segmentNames struct {
	index  map[string]int
	joined []bool // whether some segment names this one as that which it flows into
}

func (s *system) named() segmentNames {
	n := segmentNames{make(map[string]int, len(s.segments)), make([]bool, len(s.segments))}
	for i, seg := range s.segments {
		id := seg.id
		if _, taken := n.index[id]; id != "" && !taken {
			n.index[id] = i
		}
	}
	for _, seg := range s.segments {
		if i, known := n.index[seg.into.text()]; known {
			n.joined[i] = true
		}
	}
	return n
}

// nameParts names segments and suction points for the network: by their ids, so
// that people understand what it says of them, but each by a name of its own,
// whatever a faulty record calls them.
func (s *system) nameParts(named segmentNames) {
	s.index = named.index
	for i, seg := range s.segments {
		if first, known := s.index[seg.id]; known && first == i {
			seg.name = seg.id
			continue
		}
		seg.name = "segment " + strconv.Itoa(i)
		s.index[seg.name] = i
	}
	taken := make(map[string]bool, len(s.points))
	for i, p := range s.points {
		if p.name = p.id(); p.name == "" || taken[p.name] {
			p.name = "suction point " + strconv.Itoa(i)
		}
		taken[p.name] = true
	}
}

// begin finds the suction point that a segment starts at.
func (s *system) begin(i int) basis {
	seg := s.segments[i]
	seg.startsAt = -1
	starts := seg.starts
	if !starts.exists() {
		return nothing
	}
	for j, p := range s.points {
		switch {
		case starts.text() == "" || p.id() != starts.text():
		case p.first >= 0:
			return refused("two segments begin at one suction point", starts)
		default:
			p.first, seg.startsAt = i, j
			return nothing
		}
	}
	return refused("no suction point of this system has this id", starts)
}

// checkStarts makes sure that air comes in at the suction points and nowhere
// else. Of a system with one suction point and one beginning it is plain where
// the pipe begins.
func (s *system) checkStarts() basis {
	lacks := nothing
	for i, seg := range s.segments {
		switch starts := seg.starts; {
		case len(seg.from) > 0 && seg.startsAt >= 0:
			lacks = join(lacks, refused("a segment that another flows into does not begin at a suction point", starts))
		case len(seg.from) == 0 && seg.startsAt < 0:
			if len(s.points) == 1 && s.points[0].first < 0 {
				seg.startsAt, s.points[0].first = 0, i
				continue
			}
			lacks = join(lacks, starts.lack())
		}
	}
	for _, p := range s.points {
		if p.first < 0 {
			lacks = join(lacks, refused("no pipe begins at this suction point", p.node))
		}
	}
	return lacks
}

// countFeeds counts for each segment the suction points that it carries the air
// of, and finds the open end.
func (s *system) countFeeds() basis {
	for _, p := range s.points {
		steps := 0
		for i := p.first; i >= 0; i = s.segments[i].next {
			s.segments[i].feeds++
			s.last = i
			if steps++; steps > len(s.segments) {
				return refused("the pipe runs in a circle", s.segments[i].into)
			}
		}
	}
	for i, seg := range s.segments {
		if seg.feeds == 0 {
			return refused("no air comes to this segment", seg.node)
		}
		if seg.next < 0 && i != s.last {
			return refused("the pipe has two open ends", seg.node)
		}
	}
	return nothing
}

// placeFan finds the last segment before the fan.
func (s *system) placeFan() {
	by, b := s.get("powered_by").choice()
	after := s.fan.get("after_segment")
	switch {
	case by == "":
		s.driven = b
	case by != "fan":
		s.driven = refused("the system has no fan", s.get("powered_by"))
	case !s.flowing.known():
		s.driven = s.flowing
	case !after.exists():
		s.driven = after.lack()
	default:
		s.driven = refused("no segment that carries all the air has this id", after)
		for i, seg := range s.segments {
			if seg.id == after.text() && s.carriesAll(i) {
				s.afterFan, s.driven = i, join(b, after.read())
				return
			}
		}
	}
}
