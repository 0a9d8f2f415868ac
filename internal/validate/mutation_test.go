package validate

import (
	"encoding/json"
	"regexp"
	"slices"
	"strings"
	"sync"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// jargon must not stand in a message: people who fill in records do not know
// how the check is made.
var jargon = regexp.MustCompile(`(?i)https?:|schema|keyword|json|additional|properties|regex|pattern|\$ref|#/|\b(enum|string|boolean|integer|object|array|null)\b`)

// Each field of the full record is spoilt in every way that its schema
// forbids, one at a time. Each must give one error, at the field.
func TestEachMistakeGivesOneErrorAtItsPlace(t *testing.T) {
	v := newForTest(t)
	published, err := compile(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	var lock sync.Mutex
	kinds := make(map[string]int)
	t.Run("section", func(t *testing.T) {
		for _, section := range v.root.names {
			t.Run(section, func(t *testing.T) {
				t.Parallel()
				whole := fullRecord(t)
				for _, other := range v.root.names {
					if other != section {
						prune(whole[other], v.root.Properties[other])
					}
				}
				tried := 0
				m := mutator{func(kind string, wrong, wantAt place.Pointer, key bool) {
					lock.Lock()
					kinds[kind]++
					lock.Unlock()
					doc := readJSON(t, pretty(t, whole))
					wantOne(t, v, doc, kind+" of "+string(wrong), wantAt, key)
					if tried++; tried%8 == 0 { // slow
						agree(t, v, published, doc)
					}
				}}
				m.names(whole, v.root, place.Root, section)
				m.visit(whole[section], func(x any) { whole[section] = x }, v.root.Properties[section], place.Root.Append(section))
			})
		}
	})
	t.Logf("%v", kinds)
	for _, kind := range []string{"kind", "not whole", "too low", "bad choice", "bad id", "second id", "dangling",
		"empty text", "empty entry", "too few", "unknown", "misspelt", "missing"} {
		if kinds[kind] == 0 {
			t.Errorf("no mistake of the kind %q was tried", kind)
		}
	}
}

// prune leaves of a section only what others need: ids and required fields.
func prune(value any, s *shape) {
	switch value := value.(type) {
	case map[string]any:
		for name, child := range value {
			if known := s.Properties[name]; known.holdsIDs {
				prune(child, known)
			} else if !slices.Contains(s.Required, name) {
				delete(value, name)
			}
		}
	case []any:
		for _, child := range value {
			prune(child, s.Items)
		}
	}
}

func wantOne(t *testing.T, v *Validator, doc *record.Document, what string, at place.Pointer, key bool) {
	t.Helper()
	spot, exact := doc.Locate(at)
	if !exact {
		t.Fatalf("%s: nothing stands at %s", what, at)
	}
	if key {
		spot = doc.Root.At(at).KeySpot(doc.Name)
	}
	got := v.Check(doc)
	if len(got) != 1 || got[0].Line != spot.Line || got[0].Column != spot.Column {
		t.Errorf("%s: want one error at %v, got %d:", what, spot, len(got))
		for _, e := range got {
			t.Errorf("    %d:%d: %s", e.Line, e.Column, e.Message)
		}
		return
	}
	_, said, _ := strings.Cut(got[0].Message, ": ")
	if found := jargon.FindString(said); found != "" {
		t.Errorf("%s: %q in the message: %s", what, found, got[0].Message)
	}
}

// agree holds the quick check, the schema as the library is given it, and the
// schema as published against each other.
func agree(t *testing.T, v *Validator, published *jsonschema.Schema, doc *record.Document) {
	t.Helper()
	library, err := v.library()
	if err != nil {
		t.Fatal(err)
	}
	value := plain(doc.Root, v.root)
	a, b, c := accepts(doc.Root, v.root), library.Validate(value) == nil, published.Validate(value) == nil
	if a != b || b != c {
		t.Errorf("quick check %v, library %v, library with the published draft %v", a, b, c)
	}
}

// mutator spoils a record. After each change it calls try with the kind of the
// change, the field that was changed, and the place where the error must
// stand: at what stands there, or at its key.
type mutator struct {
	try func(kind string, wrong, wantAt place.Pointer, key bool)
}

// visit spoils value and everything below it; set puts another value there.
func (m mutator) visit(value any, set func(any), s *shape, at place.Pointer) {
	m.spoil(value, set, s, at)
	switch value := value.(type) {
	case map[string]any:
		m.names(value, s, at, s.names...)
		for _, name := range s.names {
			if child, ok := value[name]; ok {
				m.visit(child, func(x any) { value[name] = x }, s.Properties[name], at.Append(name))
			}
		}
	case []any:
		if s.isSubjects() {
			id := value[0].(map[string]any)["id"]
			set(append(slices.Clone(value), map[string]any{"id": id}))
			m.try("second id", at, at.Append(len(value), "id"), false)
			set(value)
		}
		for i, child := range value {
			m.visit(child, func(x any) { value[i] = x }, s.Items, at.Append(i))
		}
	}
}

var oneOfEachKind = []struct {
	kind  record.Kind
	value any
}{
	{record.Bool, true},
	{record.Number, json.Number("7.5")},
	{record.String, "some text"},
	{record.Array, []any{"some text"}},
	{record.Object, map[string]any{"value": json.Number("1")}},
}

func (m mutator) spoil(value any, set func(any), s *shape, at place.Pointer) {
	defer set(value)
	put := func(kind string, x any) {
		set(x)
		m.try(kind, at, at, false)
	}
	var others []any
	for _, v := range oneOfEachKind {
		if !s.Type.allows(v.kind) {
			others = append(others, v.value)
		}
	}
	put("kind", others[len(at)%len(others)]) // each of them somewhere
	if at.Last()[0] >= '0' && at.Last()[0] <= '9' {
		put("empty entry", nil)
	}
	if s.Type.onlyWhole() {
		put("not whole", json.Number("7.5"))
	}
	if s.Minimum != "" {
		put("too low", json.Number("-1"))
	}
	if s.Enum != nil && s.Type.allows(record.String) {
		put("bad choice", "nothing like it")
		put("bad choice", "")
	}
	if s.Pattern != "" {
		for _, id := range []string{"two words", "-first", "ä", strings.Repeat("!", 70)} {
			put("bad id", id)
		}
	}
	if s.MaxLength != nil {
		put("bad id", strings.Repeat("x", *s.MaxLength+1))
	}
	if s.MinLength != nil || s.Pattern != "" {
		put("empty text", "")
	}
	if s.MinItems != nil {
		put("too few", []any{})
	}
	if s.Refers != "" {
		put("dangling", "no such entry")
	}
}

// names spoils some of the names in one object.
func (m mutator) names(members map[string]any, s *shape, at place.Pointer, names ...string) {
	members["zz_unknown"] = "some text"
	m.try("unknown", at, at.Append("zz_unknown"), true)
	delete(members, "zz_unknown")

	for _, name := range names {
		value, ok := members[name]
		if !ok {
			continue
		}
		delete(members, name)
		if other := misspell(name); s.Properties[other] == nil {
			members[other] = value
			m.try("misspelt", at.Append(name), at.Append(other), true)
			delete(members, other)
		}
		if slices.Contains(s.Required, name) {
			m.try("missing", at.Append(name), at, false)
			members[name] = nil
			m.try("missing", at.Append(name), at.Append(name), true)
		}
		members[name] = value
	}
}

// misspell makes one of three slips, by the length of the name.
func misspell(name string) string {
	slip := []byte(name)
	switch n := len(slip); n % 3 {
	case 1:
		return name + "x"
	case 2:
		slip[n-1], slip[n-2] = slip[n-2], slip[n-1]
		return string(slip)
	}
	return strings.ToUpper(name)
}
