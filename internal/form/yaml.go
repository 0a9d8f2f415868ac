package form

import (
	"fmt"
	"io"
	"strings"
)

// Start is what is known of a job before anybody goes to the house.
type Start struct {
	Job        string
	Stage      string
	Profiles   []string
	Foundation string // kind
	System     string // kind
}

// given are the values that the start fills in, by path.
func (s Start) given() map[string]string {
	return map[string]string{
		"/record": "1", "/job/id": s.Job, "/job/stage": s.Stage, "/job/profiles": "[" + strings.Join(s.Profiles, ", ") + "]",
		"/house/foundations/*/kind": s.Foundation, "/systems/*/kind": s.System, "/systems/*/powered_by": "fan",
		"/systems/*/foundations": "[" + firstID("/house/foundations") + "]",
	}
}

// WriteYAML writes a record to fill in: every field with what it means, empty
// until somebody writes it down. An empty field counts as not recorded.
func WriteYAML(w io.Writer, fields []Field, s Start) error {
	var out strings.Builder
	y := yamlWriter{&out, s.given(), nil}
	fmt.Fprintf(&out, "# Job record to fill in. A field left empty counts as not recorded.\n"+
		"# Repeat an entry that starts with a dash for each further one; give each its own id.\n"+
		"# Take out an entry of which there is none, and write [] for a list with nothing in it.\n")
	y.fields(fields, "", false)
	_, err := io.WriteString(w, out.String())
	return err
}

// Sample is the same record with every question answered: by its example, or
// by one of its choices. Different turns answer differently.
func Sample(fields []Field, s Start, turn int) []byte {
	var out strings.Builder
	y := yamlWriter{&out, s.given(), func(f Field) string { return f.answer(turn) }}
	y.fields(fields, "", false)
	return []byte(out.String())
}

// answer is what somebody could write, in YAML.
func (f Field) answer(turn int) string {
	switch {
	case f.Path == "/systems/*/pipe/*/flows_into":
		return "" // the only segment has none after it
	case f.Refers != "" && f.Kind == "list":
		return "[" + firstID(f.Refers) + "]"
	case f.Refers != "":
		return firstID(f.Refers)
	case f.Kind == "yes-or-no":
		return []string{"true", "false"}[turn%2]
	case f.Kind == "list" && len(f.Choices) > 0:
		return "[" + strings.Join(f.Choices, ", ") + "]"
	case len(f.Choices) > 0:
		return f.Choices[turn%len(f.Choices)]
	}
	return f.Example
}

type yamlWriter struct {
	out    *strings.Builder
	given  map[string]string
	answer func(Field) string // nil: everything is left to be filled in
}

// fields writes the members of one object. First tells that the first line
// carries the dash of a list.
func (y yamlWriter) fields(fields []Field, indent string, first bool) {
	for i, f := range fields {
		lead := indent
		if first && i == 0 {
			lead = indent[:len(indent)-2] + "- "
		}
		switch f.Kind {
		case "object":
			y.object(f, lead, indent)
		case "array":
			fmt.Fprintf(y.out, "%s%s: # %s\n", lead, f.Name, f.Description)
			if mandatory(f.Fields) {
				y.sample(f, indent+"  ")
				continue
			}
			y.fields(f.Fields, indent+"    ", true)
		default:
			y.value(f, lead)
		}
	}
}

func (y yamlWriter) object(f Field, lead, indent string) {
	if mandatory(f.Fields) {
		fmt.Fprintf(y.out, "%s%s: # %s\n", lead, f.Name, f.Description)
		y.sample(f, indent+"  ")
		return
	}
	fmt.Fprintf(y.out, "%s%s: # %s\n", lead, f.Name, f.Description)
	y.fields(f.Fields, indent+"  ", false)
}

// mandatory tells that an object cannot be left half empty, such as a position
// or a point of a curve: its sample is a comment.
func mandatory(fields []Field) bool {
	for _, f := range fields {
		if f.Required && f.Name != "id" && f.Path != "/job/stage" && f.Path != "/job/profiles" {
			return true
		}
	}
	return false
}

func (y yamlWriter) sample(f Field, indent string) {
	var parts []string
	for _, member := range f.Fields {
		if len(member.Fields) == 0 {
			parts = append(parts, member.Name+": "+member.Example)
		}
	}
	dash := ""
	if f.Kind == "array" {
		dash = "- "
	}
	if y.answer == nil {
		indent += "# "
	}
	fmt.Fprintf(y.out, "%s%s{%s}\n", indent, dash, strings.Join(parts, ", "))
}

func (y yamlWriter) value(f Field, lead string) {
	value, known := y.given[f.Path]
	switch {
	case known:
	case f.Name == "id":
		value = firstID(strings.TrimSuffix(f.Path, "/*/id"))
	case y.answer != nil:
		value = y.answer(f)
	}
	if value != "" {
		value = " " + value
	}
	comment := f.Title
	if hint := f.hint(); hint != "" {
		comment += ": " + hint
	}
	if f.Name == "id" {
		comment = "a short name of its own"
	}
	fmt.Fprintf(y.out, "%s%s:%s # %s\n", lead, f.Name, value, comment)
}

// firstID is the id that the first entry of a list gets.
func firstID(list string) string {
	switch list {
	case "/house/foundations":
		return "area-1"
	case "/systems", "*": // any id will do
		return "sys-1"
	}
	name := list[strings.LastIndex(list, "/")+1:]
	return strings.TrimSuffix(strings.ReplaceAll(name, "_", "-"), "s") + "-1"
}
