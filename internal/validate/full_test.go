package validate

import (
	"bytes"
	"encoding/json"
	"flag"
	"os"
	"strconv"
	"testing"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

var update = flag.Bool("update", false, "write testdata/full.json again")

// testdata/full.json is one valid record with every field of the schema, made
// of the schema's own examples. It makes no sense as a house.
func TestFullRecordIsCurrent(t *testing.T) {
	want := pretty(t, fullRecord(t))
	if *update {
		if err := os.WriteFile("testdata/full.json", want, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile("testdata/full.json")
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Error("testdata/full.json is stale: run go test ./internal/validate -update")
	}
}

func TestFullRecordIsValid(t *testing.T) {
	v := newForTest(t)
	doc := readJSON(t, pretty(t, fullRecord(t)))
	if !accepts(doc.Root, v.root) {
		t.Error("the quick check does not accept it")
	}
	if found := v.Check(doc); found != nil {
		t.Errorf("got %v", found)
	}
	missing := make(map[place.Pointer]bool)
	v.root.walk(place.Root, func(at place.Pointer, _ *shape) { missing[at] = true })
	var visit func(n *record.Node, s *shape, at place.Pointer)
	visit = func(n *record.Node, s *shape, at place.Pointer) {
		delete(missing, at)
		for i := range n.Len() {
			if child := n.Item(i); n.Kind() == record.Array {
				visit(child, s.Items, at.Append(anyIndex))
			} else if s.Dimension == "" {
				visit(child, s.Properties[child.Key()], at.Append(child.Key()))
			}
		}
	}
	visit(doc.Root, v.root, place.Root)
	for at := range missing {
		t.Errorf("it lacks %s", at)
	}
}

func newForTest(t testing.TB) *Validator {
	t.Helper()
	v, err := New()
	if err != nil {
		t.Fatal(err)
	}
	return v
}

func readJSON(t testing.TB, data []byte) *record.Document {
	t.Helper()
	doc, err := record.ReadJSON("job.json", data, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	return doc
}

// pretty writes each field on a line of its own, so that a line names a field.
func pretty(t testing.TB, value any) []byte {
	t.Helper()
	var out bytes.Buffer
	encoder := json.NewEncoder(&out)
	encoder.SetEscapeHTML(false)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(value); err != nil {
		t.Fatal(err)
	}
	return out.Bytes()
}

// fullRecord builds a record with every field. Lists have one entry, or two
// where an entry can name another one of the same list.
func fullRecord(t testing.TB) map[string]any {
	t.Helper()
	root, err := parseShape(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	b := builder{t: t, counts: make(map[string]int), lists: make(map[place.Pointer][]string)}
	whole := b.value(root, place.Root, place.Root).(map[string]any)
	for _, fill := range b.references {
		fill()
	}
	return whole
}

type builder struct {
	t          testing.TB
	counts     map[string]int
	lists      map[place.Pointer][]string // ids of each list
	references []func()                   // filled in when all ids are known
}

// value builds the value at a place; pattern is the same place in the schema.
func (b *builder) value(s *shape, at, pattern place.Pointer) any {
	switch {
	case s.Properties != nil && s.Dimension == "":
		members := make(map[string]any)
		for _, name := range s.names {
			b.member(members, name, s.Properties[name], at, pattern)
		}
		return members
	case s.Items != nil && len(s.Examples) == 0:
		count := 1
		s.Items.walk(pattern.Append(anyIndex), func(_ place.Pointer, below *shape) {
			if below.Refers == string(pattern) {
				count = 2
			}
		})
		list := make([]any, count)
		for i := range list {
			list[i] = b.value(s.Items, at.Append(i), pattern.Append(anyIndex))
		}
		return list
	case s.Items != nil && s.Items.Refers != "":
		list := []any{nil}
		b.references = append(b.references, func() { list[0] = b.idFor(s.Items, at.Append(0)) })
		return list
	}
	return b.example(s, at)
}

func (b *builder) member(members map[string]any, name string, s *shape, at, pattern place.Pointer) {
	switch {
	case name == "id" && at != "/job":
		list := at.Parent()
		b.counts[list.Last()]++
		id := list.Last() + "-" + strconv.Itoa(b.counts[list.Last()])
		b.lists[list] = append(b.lists[list], id)
		members[name] = id
	case name == "starts_at" && at.Last() != "0":
		// The segment before flows into this one.
	case s.Refers != "":
		b.references = append(b.references, func() {
			if id := b.idFor(s, at.Append(name)); id != "" {
				members[name] = id
			}
		})
	default:
		members[name] = b.value(s, at.Append(name), pattern.Append(name))
	}
}

// idFor gives the id that a reference names. An entry of the list itself names
// the one after it, and the last names none, so that nothing goes in circles.
func (b *builder) idFor(s *shape, at place.Pointer) string {
	target := place.Pointer("/evidence")
	if s.Refers != anyID {
		target = bind(place.Pointer(s.Refers), at)
	}
	ids := b.lists[target]
	if !at.HasPrefix(target) || s.Refers == anyID {
		return ids[0]
	}
	own, err := strconv.Atoi(place.Pointer(at[len(target):]).Split()[0])
	if err != nil {
		b.t.Fatal(err)
	}
	if own+1 < len(ids) {
		return ids[own+1]
	}
	return ""
}

func (b *builder) example(s *shape, at place.Pointer) any {
	if len(s.Examples) == 0 {
		b.t.Fatalf("%s has no example", at)
	}
	var value any
	decoder := json.NewDecoder(bytes.NewReader([]byte(s.Examples[0].String())))
	decoder.UseNumber()
	if err := decoder.Decode(&value); err != nil {
		b.t.Fatalf("example of %s: %v", at, err)
	}
	return value
}
