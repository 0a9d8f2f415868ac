package validate

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"regexp"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// shape is one node of the record's schema: what the schema language says of a
// value, with references resolved. Its fields are the keywords understood here.
type shape struct {
	Schema      string            `json:"$schema"`
	ID          string            `json:"$id"`
	Defs        map[string]*shape `json:"$defs"`
	Ref         string            `json:"$ref"`
	Title       string            `json:"title"`
	Description string            `json:"description"`
	Examples    []literal         `json:"examples"`
	Dimension   string            `json:"dimension"` // of a quantity
	Refers      string            `json:"refers"`    // for a string: the array whose ids it may name, or "*"

	Type       types             `json:"type"`
	Enum       []literal         `json:"enum"`
	Const      *literal          `json:"const"`
	Pattern    string            `json:"pattern"`
	MinLength  *int              `json:"minLength"` // in runes
	MaxLength  *int              `json:"maxLength"` // in runes
	Minimum    json.Number       `json:"minimum"`
	Maximum    json.Number       `json:"maximum"`
	Items      *shape            `json:"items"`
	MinItems   *int              `json:"minItems"`
	Properties map[string]*shape `json:"properties"`
	Required   []string          `json:"required"`
	Additional *bool             `json:"additionalProperties"`

	names    []string // of Properties, sorted
	pattern  *regexp.Regexp
	linked   bool
	holdsIDs bool // whether s or something below is a list of entries with an id
	namesIDs bool // whether s or something below refers to an id
}

// types is the keyword "type", which is one name or a list.
type types []string

func (t *types) UnmarshalJSON(data []byte) error {
	var one string
	if json.Unmarshal(data, &one) == nil {
		*t = types{one}
		return nil
	}
	return json.Unmarshal(data, (*[]string)(t))
}

// allows says whether a value of that kind may stand there; whether a number
// is whole is another question.
func (t types) allows(kind record.Kind) bool {
	return len(t) == 0 || slices.Contains(t, kind.String()) ||
		kind == record.Number && slices.Contains(t, "integer")
}

// onlyWhole says whether a number must be a whole one.
func (t types) onlyWhole() bool {
	return slices.Contains(t, "integer") && !slices.Contains(t, "number")
}

// literal is a value written in the schema.
type literal struct {
	kind record.Kind
	text string // as record.Node has it; of lists and objects, the JSON
}

func (l *literal) UnmarshalJSON(data []byte) error {
	l.text = string(data)
	switch data[0] {
	case '"':
		l.kind = record.String
		return json.Unmarshal(data, &l.text)
	case '{':
		l.kind = record.Object
	case '[':
		l.kind = record.Array
	case 't', 'f':
		l.kind = record.Bool
	case 'n':
		l.kind, l.text = record.Null, ""
	default:
		l.kind = record.Number
	}
	return nil
}

// is compares the written forms: 1.0 is not 1 here, which the caller has to
// allow for.
func (l literal) is(n *record.Node) bool {
	return l.kind == n.Kind() && l.kind != record.Array && l.kind != record.Object && l.text == n.Text()
}

// parseShape reads a schema. A keyword that is not known here is an error, so
// that none is ever overlooked.
func parseShape(schema []byte) (*shape, error) {
	decoder := json.NewDecoder(bytes.NewReader(schema))
	decoder.DisallowUnknownFields()
	root := new(shape)
	if err := decoder.Decode(root); err != nil {
		return nil, fmt.Errorf("record schema: %w", err)
	}
	if err := root.link(root.Defs); err != nil {
		return nil, fmt.Errorf("record schema: %w", err)
	}
	return root, root.checkTargets()
}

// checkTargets makes sure that what fields refer to can be found.
func (s *shape) checkTargets() error {
	lists := make(map[place.Pointer]bool)
	s.walk(place.Root, func(at place.Pointer, s *shape) {
		if s.isSubjects() {
			lists[at] = true
		}
	})
	var err error
	s.walk(place.Root, func(at place.Pointer, s *shape) {
		to := place.Pointer(s.Refers)
		if to != "" && to != anyID && (!lists[to] || !binds(to, at)) {
			err = errors.Join(err, fmt.Errorf("record schema: %s refers to %q, which is no list of entries with an id that it can tell", at, to))
		}
	})
	return err
}

// isSubjects says whether s is a list of entries with an id.
func (s *shape) isSubjects() bool {
	return s != nil && s.Items != nil && s.Items.Properties["id"] != nil
}

var plainName = regexp.MustCompile(`^[a-z][a-z0-9_]*$`)

// link resolves references into $defs and prepares what is looked up often.
func (s *shape) link(defs map[string]*shape) error {
	if s.linked {
		return nil
	}
	s.linked = true
	s.namesIDs = s.Refers != ""
	if s.Ref != "" {
		return s.resolve(defs)
	}
	if s.Pattern != "" {
		if patternWords[s.Pattern] == "" {
			return fmt.Errorf("the pattern %s has no words to explain it", s.Pattern)
		}
		var err error
		if s.pattern, err = regexp.Compile(s.Pattern); err != nil {
			return err
		}
	}
	if slices.Contains(s.Type, "object") && (s.Additional == nil || *s.Additional) {
		return fmt.Errorf("the object %q is not closed", s.Title)
	}
	for _, name := range s.Required {
		if s.Properties[name] == nil {
			return fmt.Errorf("%q is required of %q but is no field of it", name, s.Title)
		}
	}
	s.names = slices.Sorted(maps.Keys(s.Properties))
	for _, name := range s.names {
		if !plainName.MatchString(name) {
			return fmt.Errorf("the name %q has more than small letters, digits and underscores", name)
		}
		if err := s.Properties[name].link(defs); err != nil {
			return fmt.Errorf("%s: %w", name, err)
		}
		s.inherit(s.Properties[name])
	}
	if s.Items == nil {
		return nil
	}
	err := s.Items.link(defs)
	s.holdsIDs = s.isSubjects()
	s.inherit(s.Items)
	return err
}

func (s *shape) inherit(below *shape) {
	s.holdsIDs = s.holdsIDs || below.holdsIDs
	s.namesIDs = s.namesIDs || below.namesIDs
}

// resolve puts what a reference leads to beside the annotations that stand
// with the reference.
func (s *shape) resolve(defs map[string]*shape) error {
	def := defs[strings.TrimPrefix(s.Ref, "#/$defs/")]
	switch {
	case def == nil:
		return fmt.Errorf("the reference %s leads to nothing", s.Ref)
	case s.Type != nil || s.Properties != nil || s.Items != nil || s.Required != nil || s.Enum != nil || s.Pattern != "":
		return fmt.Errorf("something stands beside the reference %s that is no annotation", s.Ref)
	}
	if err := def.link(defs); err != nil {
		return err
	}
	own := *s
	*s = *def
	s.Ref, s.Title, s.Description = own.Ref, own.Title, own.Description
	s.Examples, s.Dimension, s.Refers = own.Examples, own.Dimension, own.Refers
	return nil
}

// walk visits s and everything below it, in the order of the names. Pointers
// have "*" for an index. A quantity is one value: what is in it is not visited.
func (s *shape) walk(at place.Pointer, visit func(place.Pointer, *shape)) {
	visit(at, s)
	if s.Dimension != "" {
		return
	}
	for _, name := range s.names {
		s.Properties[name].walk(at.Append(name), visit)
	}
	if s.Items != nil {
		s.Items.walk(at.Append(anyIndex), visit)
	}
}

// at follows a pointer of a record; nil where the schema knows nothing.
func (s *shape) at(ptr place.Pointer) *shape {
	for _, token := range ptr.Split() {
		if s == nil {
			return nil
		}
		if s.Items != nil {
			s = s.Items
		} else {
			s = s.Properties[token]
		}
	}
	return s
}
