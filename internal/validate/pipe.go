package validate

import (
	"fmt"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// run is the pipe of one system: which way the air goes, as far as it is said.
type run struct {
	doc      *record.Document
	at       place.Pointer // of the list
	segments []segment
	points   int // suction points recorded
}

type segment struct {
	*record.Node
	starts, into *record.Node // fields; nil when left out
	next         int          // the segment that the air goes on to, -1 when not said
	told         int          // a segment that says that it flows into this one, -1 without
	fed          bool         // whether any segment flows into it
}

// newRun reads the pipe of a system. A segment that does not say where it flows
// flows into the next, unless that has another beginning.
func newRun(doc *record.Document, system *record.Node, at place.Pointer) *run {
	list := system.Get("pipe")
	r := &run{doc: doc, at: at, segments: make([]segment, list.Len()), points: system.Get("suction_points").Len()}
	byID := make(map[string]int, list.Len())
	for i := range r.segments {
		n := list.Item(i)
		r.segments[i] = segment{Node: n, starts: recorded(n.Get("starts_at")), into: recorded(n.Get("flows_into")), next: -1, told: -1}
		byID[n.Get("id").Text()] = i
	}
	for i := range r.segments {
		if s := &r.segments[i]; s.into != nil {
			s.next = byID[s.into.Text()]
			if next := &r.segments[s.next]; next.told < 0 && s.next != i {
				next.told = i
			}
		}
	}
	for i := range r.segments {
		s := &r.segments[i]
		if s.into == nil && i+1 < len(r.segments) {
			if next := r.segments[i+1]; next.starts == nil && next.told < 0 {
				s.next = i + 1
			}
		}
		if s.next >= 0 {
			r.segments[s.next].fed = true
		}
	}
	return r
}

func recorded(n *record.Node) *record.Node {
	if !isRecorded(n) {
		return nil
	}
	return n
}

// check finds what keeps the pipe from leading from suction points to one open
// end whatever is recorded besides. What only needs more said is no mistake.
func (r *run) check() []mistake {
	out := r.checkEnds()
	if len(out) == 0 {
		out = r.checkBeginnings()
	}
	return out
}

// checkEnds looks at what each segment says of itself.
func (r *run) checkEnds() []mistake {
	var out []mistake
	begun := map[string]int{}
	for i, s := range r.segments {
		switch {
		case s.into != nil && s.next == i:
			out = append(out, r.mistake(i, "flows_into", "found the id of this segment itself; expected that of the segment after it"))
		case s.into != nil && s.next < i && r.leadsTo(s.next, i):
			out = append(out, r.mistake(i, "flows_into", "found %s, from which the pipe leads back to this segment; air does not flow in a circle", seen(s.into)))
		}
		if s.starts == nil {
			continue
		}
		point := s.starts.Text()
		first, twice := begun[point]
		switch {
		case s.told >= 0:
			out = append(out, r.mistake(i, "starts_at", "found a beginning at %s, but %s flows into this segment (line %d); leave out one of the two", seen(s.starts), r.name(s.told), r.line(s.told, "flows_into")))
		case twice:
			out = append(out, r.mistake(i, "starts_at", "found %s, where %s starts too (line %d); each suction point has a pipe of its own", seen(s.starts), r.name(first), r.line(first, "starts_at")))
		default:
			begun[point] = i
		}
	}
	return out
}

// leadsTo says whether air that flows through one segment comes to another.
func (r *run) leadsTo(from, to int) bool {
	for range r.segments {
		if from == to {
			return true
		}
		if from = r.segments[from].next; from < 0 {
			break
		}
	}
	return false
}

// checkBeginnings counts the segments that air can only come to from the ground:
// there are no more of them than suction points. One that does not say where it
// flows may flow into a later one without a beginning.
func (r *run) checkBeginnings() []mistake {
	beginnings, loose := 0, -1 // the last without a suction point
	for i, s := range r.segments {
		if s.fed {
			continue
		}
		beginnings++
		if s.starts == nil {
			loose = i
		}
	}
	for i, s := range r.segments {
		if s.next < 0 && i < loose {
			beginnings--
		}
	}
	if r.points == 0 || loose < 0 || beginnings <= r.points {
		return nil
	}
	return []mistake{r.mistake(loose, "id", "nothing flows into this segment, and no suction point is left for it (%d recorded); say with flows_into which segment comes before it, or record its suction point", r.points)}
}

// mistake is one of a segment, at a field of it.
func (r *run) mistake(i int, field, format string, args ...any) mistake {
	at := r.at.Append(i, field)
	subject := at
	if field == "id" {
		subject = at.Parent()
	}
	return mistake{r.segments[i].Get(field).Spot(r.doc.Name), at, "contradicts", func() string {
		return where(r.doc, subject) + ": " + fmt.Sprintf(format, args...)
	}}
}

func (r *run) name(i int) string { return quote(r.segments[i].Get("id").Text()) }

func (r *run) line(i int, field string) int {
	return r.segments[i].Get(field).Spot(r.doc.Name).Line
}
