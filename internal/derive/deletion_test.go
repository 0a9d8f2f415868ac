package derive_test

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// without is a record less what stands at a place; the rest of a list moves up.
func without(value any, tokens []string) any {
	switch v := value.(type) {
	case map[string]any, record.Members:
		out := map[string]any{}
		for _, key := range record.Names(v) {
			inner := record.Get(v, key)
			switch {
			case key != tokens[0]:
				out[key] = inner
			case len(tokens) > 1:
				out[key] = without(inner, tokens[1:])
			}
		}
		return out
	case []any:
		out := make([]any, 0, len(v))
		for i, inner := range v {
			switch at := place.Root.Append(i).Last(); {
			case at != tokens[0]:
				out = append(out, inner)
			case len(tokens) > 1:
				out = append(out, without(inner, tokens[1:]))
			}
		}
		return out
	}
	return value
}

// values are the values of a document, by subject and name: entries move up when
// one before them goes.
func values(doc map[string]any) map[string]map[string]any {
	all := map[string]map[string]any{}
	walk(doc, "", func(at place.Pointer, v map[string]any) {
		key := string(at)
		if entry, ok := record.At(doc, at.Parent()); ok {
			if e, _ := entry.(map[string]any); e["at"] != nil {
				key = fmt.Sprint(at.Split()[0], " ", e["id"], " at ", e["at"], " ", at.Last())
			}
		}
		all[key] = v
	})
	return all
}

// Take any input of a value away and the value must be undetermined or come out
// differently, with another way to it named: it is never silently kept.
func TestDeletionIsNeverSilent(t *testing.T) {
	for _, name := range records {
		input := load(t, name)
		before := values(document(input, nil))
		rests := map[string][]string{}
		for at, v := range before {
			inputs, _ := v["inputs"].([]any)
			for _, p := range inputs {
				rests[p.(string)] = append(rests[p.(string)], at)
			}
		}
		for p, dependents := range rests {
			reduced := without(input, place.Pointer(p).Split()).(map[string]any)
			after := values(document(reduced, nil))
			for _, at := range dependents {
				if now, there := after[at]; there && reflect.DeepEqual(now, before[at]) {
					t.Errorf("%s: %s is the same without %s: %s", name, at, p, asJSON(t, now))
				}
			}
		}
	}
}

// Take any field of the record away: a value that was known and comes out
// differently must have named the field, or what it stands in, as an input.
func TestInputsAreComplete(t *testing.T) {
	for _, name := range records[1:] {
		input := load(t, name)
		before := values(document(input, nil))
		for _, p := range leaves(input, "") {
			if p.Last() == "id" {
				continue // a name of a thing, through which fields are found
			}
			after := values(document(without(input, p.Split()).(map[string]any), nil))
			for at, was := range before {
				now, there := after[at]
				if was["si"] == nil || !there || reflect.DeepEqual(now, was) {
					continue
				}
				if !names(was, p) {
					t.Errorf("%s: %s does not name %s, without which it becomes\n%sfrom\n%s", name, at, p, asJSON(t, now), asJSON(t, was))
				}
			}
		}
	}
}

func names(v map[string]any, p place.Pointer) bool {
	inputs, _ := v["inputs"].([]any)
	for _, in := range inputs {
		if at := place.Pointer(in.(string)); at.HasPrefix(p) || p.HasPrefix(at) {
			return true
		}
	}
	return false
}

// leaves are the places of a record that can be left out one by one: quantities
// and what is smaller.
func leaves(value any, at place.Pointer) []place.Pointer {
	var out []place.Pointer
	switch v := value.(type) {
	case record.Measure:
		return []place.Pointer{at}
	case map[string]any, record.Members:
		for _, key := range record.Names(v) {
			out = append(out, leaves(record.Get(v, key), at.Append(key))...)
		}
	case []any:
		for i, inner := range v {
			if record.Names(inner) != nil {
				out = append(out, leaves(inner, at.Append(i))...)
			}
		}
		if !strings.Contains(string(at), "/job/profiles") {
			out = append(out, at)
		}
	default:
		return []place.Pointer{at}
	}
	return out
}
