package derive_test

import (
	"fmt"
	"math/rand/v2"
	"reflect"
	"testing"

	"github.com/slablint/slablint/internal/record"
)

// Take from any pipe that the record's checks let pass where one segment flows
// or begins, and what flows where is the same or not known: the order of the
// list never stands in for what was said.
func TestRoutesAreNeverMadeUp(t *testing.T) {
	v, err := validator()
	if err != nil {
		t.Fatal(err)
	}
	r := rand.New(rand.NewPCG(1, 0))
	known, unknown, lost := 0, 0, 0
	for range 12_000 {
		system := anyPipe(r)
		if len(v.Check(asRecord(t, system))) > 0 {
			continue
		}
		before := routes(t, system)
		if before == nil {
			unknown++
		} else {
			known++
		}
		for _, s := range system["pipe"].([]any) {
			segment := s.(map[string]any)
			for _, field := range []string{"flows_into", "starts_at"} {
				was, there := segment[field]
				if !there {
					continue
				}
				delete(segment, field)
				after := routes(t, system)
				switch {
				case after == nil && before != nil:
					lost++
				case after != nil && !reflect.DeepEqual(after, before) && len(v.Check(asRecord(t, system))) == 0:
					t.Errorf("without %s %v of %v the air of %v points passes where that of %v did: %v", field, was, segment["id"], after, before, system)
				}
				segment[field] = was
			}
		}
	}
	if known < 500 || unknown < 500 || lost < 10 {
		t.Errorf("%d pipes were known and %d were not; %d were not without a field", known, unknown, lost)
	}
}

// anyPipe is a system of a few segments that name each other, or do not.
func anyPipe(r *rand.Rand) map[string]any {
	points, segments := []any{}, []any{}
	for i := range 1 + r.IntN(3) {
		points = append(points, map[string]any{"id": fmt.Sprint("p", i)})
	}
	n := 2 + r.IntN(4)
	for i := range n {
		segment := map[string]any{"id": fmt.Sprint("s", i)}
		switch {
		case i > 0 && r.IntN(8) == 0: // a branch listed behind the main pipe
			segment["flows_into"] = fmt.Sprint("s", r.IntN(i))
		case i+1 < n && r.IntN(5) < 2:
			segment["flows_into"] = fmt.Sprint("s", i+1+r.IntN(n-i-1))
		}
		if r.IntN(3) == 0 {
			segment["starts_at"] = fmt.Sprint("p", r.IntN(len(points)))
		}
		segments = append(segments, segment)
	}
	return map[string]any{"id": "sys", "kind": "sub-slab", "suction_points": points, "pipe": segments}
}

// routes is from how many suction points the air passes each segment; nil when
// that is not known.
func routes(t *testing.T, system map[string]any) []any {
	t.Helper()
	derived := document(map[string]any{"systems": []any{system}}, nil)
	var out []any
	for _, e := range derived["segments"].([]any) {
		si, _ := record.At(e, "/feeds/si")
		if si == nil {
			return nil
		}
		out = append(out, si)
	}
	return out
}

func asRecord(t *testing.T, system map[string]any) *record.Document {
	t.Helper()
	job := map[string]any{"id": "J-1", "stage": "planned", "profiles": []any{"us-epa-1994"}}
	doc, err := record.ReadJSON("pipe.json", []byte(asJSON(t, map[string]any{"record": 1, "job": job, "systems": []any{system}})), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}
