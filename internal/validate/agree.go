package validate

import (
	"fmt"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// contradictions finds where a record says of one thing what cannot both be: no
// rule could judge it, and it would be better judged with half of it left out.
// Measures that differ are no such mistake; rules compare them.
func contradictions(doc *record.Document) []mistake {
	out := append(checkOpenings(doc), checkBurning(doc)...)
	systems := doc.Root.Get("systems")
	for i := range systems.Len() {
		r := newRun(doc, systems.Item(i), place.Root.Append("systems", i, "pipe"))
		out = append(out, r.check()...)
	}
	return out
}

// traits are what the list of openings and a distance measured to one of them
// can both say of it.
var traits = [...]string{"building", "kind", "into_conditioned_space", "operable"}

// said is the first place where a trait of an opening is recorded.
type said struct {
	node *record.Node
	of   place.Pointer // what it stands in
}

// checkOpenings holds all that is said of each opening against what was said of
// it first.
func checkOpenings(doc *record.Document) []mistake {
	first := make(map[[2]string]said)
	var out []mistake
	compare := func(id string, of *record.Node, at place.Pointer) {
		for _, trait := range traits {
			n := of.Get(trait)
			if id == "" || !isRecorded(n) {
				continue
			}
			key := [2]string{id, trait}
			before, known := first[key]
			if !known {
				first[key] = said{n, at}
				continue
			}
			if n.Text() == before.node.Text() {
				continue
			}
			out = append(out, mistake{n.Spot(doc.Name), at.Append(trait), "contradicts", func() string {
				return fmt.Sprintf("%s: found %s, but %s says %s (line %d); correct the one that is wrong",
					where(doc, at.Append(trait)), seen(n), where(doc, before.of), seen(before.node), before.node.Spot(doc.Name).Line)
			}})
		}
	}
	openings := doc.Root.Get("house").Get("openings")
	for i := range openings.Len() {
		compare(openings.Item(i).Get("id").Text(), openings.Item(i), place.Root.Append("house", "openings", i))
	}
	systems := doc.Root.Get("systems")
	for i := range systems.Len() {
		measured := systems.Item(i).Get("discharge").Get("clearances")
		for j := range measured.Len() {
			compare(measured.Item(j).Get("opening").Text(), measured.Item(j), place.Root.Append("systems", i, "discharge", "clearances", j))
		}
	}
	return out
}

// checkBurning holds backdraft tests against a house in which nothing burns. One
// that names its appliance is told already: no list has the id.
func checkBurning(doc *record.Document) []mistake {
	appliances := doc.Root.Get("house").Get("combustion")
	if !isRecorded(appliances) || appliances.Len() > 0 {
		return nil
	}
	var out []mistake
	tests := doc.Root.Get("diagnostics").Get("backdraft_tests")
	for i := range tests.Len() {
		at := place.Root.Append("diagnostics", "backdraft_tests", i)
		if field := firstSaid(tests.Item(i)); field != nil {
			out = append(out, mistake{field.Spot(doc.Name), at.Append(field.Key()), "contradicts", func() string {
				return fmt.Sprintf("%s: found a test of an appliance, but %s says that there is none (line %d); correct the one that is wrong",
					where(doc, at), where(doc, "/house/combustion"), appliances.Spot(doc.Name).Line)
			}})
		}
	}
	return out
}

// firstSaid is the first field that is recorded of an entry besides its id; a form
// that nobody filled in has none.
func firstSaid(entry *record.Node) *record.Node {
	for i := range entry.Len() {
		if field := entry.Item(i); field.Key() != "id" && isRecorded(field) {
			return field
		}
	}
	return nil
}
