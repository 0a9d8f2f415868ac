package main

import (
	"cmp"
	"context"
	"encoding/json"
	"fmt"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
	"github.com/slablint/slablint/schema"
)

// fewDifferences is how many values may differ for a second example to be
// shown as changes to the first.
const fewDifferences = 3

// examplesOf runs the tests of a requirement for the two records to show.
func examplesOf(ctx context.Context, rb *rulebook.Rulebook, r rulebook.Requirement) (string, error) {
	met, deficient, err := rb.Examples(ctx, r.Name)
	if err != nil {
		return "", err
	}
	return examplesText(r, met, deficient)
}

// examplesText shows a record that meets a requirement and one that does not,
// indented by two. Either can be nil.
func examplesText(r rulebook.Requirement, met, deficient *rulebook.Example) (string, error) {
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		return "", err
	}
	values, err := record.ParseShape(schema.Derived())
	if err != nil {
		return "", err
	}
	shape = shape.With("derived", values)
	b := explained{width: pageWidth}
	var first any
	if met != nil {
		first = record.Written(met.Record, shape)
		b.WriteByte('\n')
		b.say("  ", "    ", "A record that meets it"+judgedWith(r, met)+":")
		b.WriteString(recordText(first))
	}
	if deficient == nil {
		return b.String(), nil
	}
	second := record.Written(deficient.Record, shape)
	with := judgedWith(r, deficient)
	if met != nil && with == judgedWith(r, met) {
		if changes := differences(first, second); len(changes) > 0 && len(changes) <= fewDifferences {
			fmt.Fprintf(&b.Builder, "\n  It does not when this is changed:\n    %s\n", strings.Join(changes, "\n    "))
			return b.String(), nil
		}
	}
	b.WriteByte('\n')
	b.say("  ", "    ", "A record that does not"+with+":")
	b.WriteString(recordText(second))
	return b.String(), nil
}

// judgedWith names the subject and the limits of an example.
func judgedWith(r rulebook.Requirement, e *rulebook.Example) string {
	parts := []string{"for " + e.Subject}
	for _, name := range sortedKeys(e.Limits) {
		value := "not established"
		if si, ok := e.Limits[name]["si"].(json.Number); ok {
			value = record.WrittenSI(quantity.Dimension(r.Limits[name].Dimension), si.String())
		} else if words, ok := e.Limits[name]["any_of"].([]any); ok {
			value = cmp.Or(strings.Trim(plain(words), "[]"), "none")
		}
		parts = append(parts, strings.ReplaceAll(name, "_", " ")+" "+value)
	}
	return " (" + strings.Join(parts, "; ") + ")"
}

// recordText writes a record as YAML, indented by four.
func recordText(value any) string {
	object, ok := value.(map[string]any)
	if !ok || len(object) == 0 {
		return "    {}\n"
	}
	var b strings.Builder
	writeMembers(&b, object, "    ", "    ")
	return b.String()
}

// writeMembers writes the members of an object, the first behind its own
// indent, which may carry the dash of a list.
func writeMembers(b *strings.Builder, object map[string]any, first, indent string) {
	lead := first
	for _, name := range memberOrder(object) {
		writeMember(b, lead, name, object[name], indent)
		lead = indent
	}
}

func writeMember(b *strings.Builder, lead, name string, value any, indent string) {
	switch v := value.(type) {
	case map[string]any:
		if len(v) == 0 {
			break
		}
		remark := ""
		if name == "derived" {
			remark = " # computed from the rest of a record"
		}
		fmt.Fprintf(b, "%s%s:%s\n", lead, name, remark)
		writeMembers(b, v, indent+"  ", indent+"  ")
		return
	case []any:
		if len(v) == 0 || !holdsObjects(v) {
			break
		}
		fmt.Fprintf(b, "%s%s:\n", lead, name)
		for _, element := range v {
			if object, ok := element.(map[string]any); ok && len(object) > 0 {
				writeMembers(b, object, indent+"  - ", indent+"    ")
			} else {
				fmt.Fprintf(b, "%s  - %s\n", indent, plain(element))
			}
		}
		return
	}
	fmt.Fprintf(b, "%s%s: %s\n", lead, name, plain(value))
}

func holdsObjects(list []any) bool {
	return slices.ContainsFunc(list, func(e any) bool {
		_, object := e.(map[string]any)
		return object
	})
}

// memberOrder puts what identifies a thing before what is said of it, and
// computed values last.
func memberOrder(object map[string]any) []string {
	rank := map[string]int{"id": -2, "kind": -1, "derived": 1}
	names := sortedKeys(object)
	slices.SortStableFunc(names, func(a, b string) int { return rank[a] - rank[b] })
	return names
}

// plain is a value in one line.
func plain(value any) string {
	switch v := value.(type) {
	case []any:
		parts := make([]string, len(v))
		for i, element := range v {
			parts[i] = plain(element)
		}
		return "[" + strings.Join(parts, ", ") + "]"
	case map[string]any:
		parts := make([]string, 0, len(v))
		for _, name := range memberOrder(v) {
			parts = append(parts, name+": "+plain(v[name]))
		}
		return "{" + strings.Join(parts, ", ") + "}"
	case string:
		if v == "" {
			return `""`
		}
	}
	return fmt.Sprint(value)
}

// differences says, one line a place, what a second value has otherwise.
func differences(first, second any) []string {
	var out []string
	var compare func(at string, a, b any)
	compare = func(at string, a, b any) {
		left, right := membersOf(a), membersOf(b)
		if left == nil || right == nil {
			if plain(a) != plain(b) {
				out = append(out, at+": "+plain(b))
			}
			return
		}
		for _, name := range sortedKeys(right) {
			if _, there := left[name]; !there {
				out = append(out, at+"/"+name+": "+plain(right[name]))
				continue
			}
			compare(at+"/"+name, left[name], right[name])
		}
		for _, name := range sortedKeys(left) {
			if _, there := right[name]; !there {
				out = append(out, at+"/"+name+" is left out")
			}
		}
	}
	compare("", first, second)
	return out
}

// membersOf is what an object or a list that is not empty holds, by name or place.
func membersOf(value any) map[string]any {
	switch v := value.(type) {
	case map[string]any:
		return v
	case []any:
		if len(v) == 0 {
			return nil
		}
		members := make(map[string]any, len(v))
		for i, element := range v {
			members[fmt.Sprint(i)] = element
		}
		return members
	}
	return nil
}
