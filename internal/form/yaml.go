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
		"/house/foundations/*/id": "area-1", "/systems/*/id": "sys-1", "/systems/*/foundations": "[area-1]",
	}
}

// WriteYAML writes a record to fill in: every field with what it means, empty
// until somebody writes it down. An empty field counts as not recorded.
func WriteYAML(w io.Writer, fields []Field, s Start) error {
	var out strings.Builder
	y := yamlWriter{&out, s.given()}
	fmt.Fprintf(&out, "# Job record to fill in. A field left empty counts as not recorded.\n"+
		"# Repeat an entry that starts with a dash for each further one; give each its own id.\n"+
		"# Take out an entry of which there is none, and write [] for a list with nothing in it.\n")
	y.fields(fields, "", false)
	_, err := io.WriteString(w, out.String())
	return err
}

type yamlWriter struct {
	out   *strings.Builder
	given map[string]string
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
	fmt.Fprintf(y.out, "%s# %s{%s}\n", indent, dash, strings.Join(parts, ", "))
}

func (y yamlWriter) value(f Field, lead string) {
	value, known := y.given[f.Path]
	if !known && f.Name == "id" {
		value = strings.TrimSuffix(lastList(f.Path), "s") + "-1"
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

// lastList is the name of the list that an element's id belongs to.
func lastList(path string) string {
	parts := strings.Split(strings.TrimSuffix(path, "/*/id"), "/")
	return strings.ReplaceAll(parts[len(parts)-1], "_", "-")
}
