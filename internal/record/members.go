package record

import (
	"maps"
	"slices"
)

// Members is an object of a canonical record that is not held as a map: fields,
// or one with many members of which few are ever read, made when they are asked
// for. It never changes. It has no JSON form of its own; see Plain.
type Members interface {
	Len() int
	Name(i int) string
	Get(name string) any // nil when there is none of this name
}

// fields are the members of an object of a canonical record in the order written.
// They are few, and found sooner one by one than by a hash.
type fields struct{ list []field }

type field struct {
	name  string
	value any
}

// Len is the number of members.
func (f *fields) Len() int { return len(f.list) }

// Name is the name of a member.
func (f *fields) Name(i int) string { return f.list[i].name }

// Get is a member by its name.
func (f *fields) Get(name string) any {
	for i := range f.list {
		if f.list[i].name == name {
			return f.list[i].value
		}
	}
	return nil
}

// Get is a member of an object; nil when value is none or has no such member.
func Get(value any, name string) any {
	switch v := value.(type) {
	case map[string]any:
		return v[name]
	case Members:
		return v.Get(name)
	}
	return nil
}

// Names are the names of the members of an object in alphabetical order; nil
// when value is none.
func Names(value any) []string {
	switch v := value.(type) {
	case map[string]any:
		return slices.Sorted(maps.Keys(v))
	case Members:
		names := make([]string, v.Len())
		for i := range names {
			names[i] = v.Name(i)
		}
		slices.Sort(names)
		return names
	}
	return nil
}

// Plain is a canonical value in nothing but the types of encoding/json.
func Plain(value any) any {
	switch v := value.(type) {
	case map[string]any:
		out := make(map[string]any, len(v))
		for name, member := range v {
			out[name] = Plain(member)
		}
		return out
	case Members:
		out := make(map[string]any, v.Len())
		for i := range v.Len() {
			name := v.Name(i)
			out[name] = Plain(v.Get(name))
		}
		return out
	case []any:
		out := make([]any, len(v))
		for i, element := range v {
			out[i] = Plain(element)
		}
		return out
	}
	return value
}
