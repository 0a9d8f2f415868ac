package judge

import (
	"encoding/json"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// labels names places in words, each once, in the order of their pointers.
func (e *expander) labels(paths []place.Pointer) string {
	slices.Sort(paths)
	var all []string
	for _, p := range paths {
		if label := lowerFirst(e.label(p)); !slices.Contains(all, label) {
			all = append(all, label)
		}
	}
	return strings.Join(all, ", ")
}

// label is the name of a field, or of a list with the entry that is meant.
func (e *expander) label(path place.Pointer) string {
	i, err := strconv.Atoi(path.Last())
	if err != nil {
		return e.title(path)
	}
	if value, _ := record.At(e.input, path.Append("id")); value != nil {
		return e.title(path) + " " + plain(value)
	}
	return e.title(path) + " " + strconv.Itoa(i+1)
}

// text is what the record says at a path, in the writer's own words and units.
func (e *expander) text(path place.Pointer) string {
	value, ok := record.At(e.input, path)
	if !ok {
		return ""
	}
	return plain(value)
}

func plain(value any) string {
	switch v := value.(type) {
	case string:
		return v
	case bool:
		if v {
			return "yes"
		}
		return "no"
	case json.Number:
		return v.String()
	case []any:
		if len(v) == 0 {
			return "none"
		}
		var parts []string
		for _, item := range v {
			if s, ok := item.(string); ok {
				parts = append(parts, s)
			}
		}
		if len(parts) == len(v) {
			return strings.Join(parts, ", ")
		}
		return fmt.Sprintf("%d listed", len(v))
	}
	text, _ := record.Get(value, "text").(string)
	return text
}

// title is the schema's name of the field that a path ends in.
func (e *expander) title(path place.Pointer) string {
	shape, last := e.judge.shape, "record"
	for _, token := range path.Split() {
		if next := shape.Field(token); next != nil {
			shape, last = next, next.Title()
		} else {
			shape = shape.Items()
		}
	}
	return last
}

// limitText is one limit as its source writes it.
func limitText(l rulebook.Limit, v rulebook.Value) string {
	if v.Unknown {
		return ""
	}
	switch l.Sense {
	case "at-least":
		return "at least " + v.Text
	case "at-most":
		return "at most " + v.Text
	case "more-than":
		return "more than " + v.Text
	case "less-than":
		return "less than " + v.Text
	case "none-of":
		return "none of: " + v.Text
	case "all-of":
		return "all of: " + v.Text
	case "applies-to", "not-for":
		return ""
	}
	return "one of: " + v.Text
}

// onlyLimit is the limit that a verdict without one must be about: the only one
// that is held against a recorded value.
func onlyLimit(r rulebook.Requirement) string {
	only := ""
	for limit, l := range r.Limits {
		if l.IsScope() {
			continue
		}
		if only != "" {
			return ""
		}
		only = limit
	}
	return only
}

func lowerFirst(s string) string {
	if len(s) > 1 && s[1] >= 'a' && s[1] <= 'z' || len(s) == 1 {
		return strings.ToLower(s[:1]) + s[1:]
	}
	return s
}
