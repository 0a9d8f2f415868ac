package validate

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// explain turns what the library found into mistakes, one for each thing that
// has to be mended.
func (v *Validator) explain(doc *record.Document, wrong []leaf) []mistake {
	var out []mistake
	told := make(map[place.Pointer]bool)
	for _, l := range wrong {
		n, s := doc.Root.At(l.at), v.root.at(l.at)
		switch l.keyword {
		case "additionalProperties":
			out = append(out, v.unknownFields(doc, n, s, l.at)...)
		case "required":
			out = append(out, missingFields(doc, n, s, l.at)...)
		default:
			if told[l.at] {
				continue // too short and not of the right form is one mistake
			}
			told[l.at] = true
			spot, _ := doc.Locate(l.at)
			out = append(out, mistake{spot, l.at, l.keyword, func() string {
				return where(doc, l.at) + ": " + wrongValue(n, s, l.keyword)
			}})
		}
	}
	return out
}

func (v *Validator) unknownFields(doc *record.Document, n *record.Node, s *shape, at place.Pointer) []mistake {
	var out []mistake
	for i := range n.Len() {
		m := n.Item(i)
		if s.Properties[m.Key()] != nil {
			continue
		}
		out = append(out, mistake{m.KeySpot(doc.Name), at.Append(m.Key()), "unknown", func() string {
			return fmt.Sprintf("%s: found the unknown field %s; %s", where(doc, at), quote(m.Key()), v.instead(m.Key(), s))
		}})
	}
	return out
}

// instead says which field was probably meant.
func (v *Validator) instead(key string, s *shape) string {
	near := nearest(key, s.names)
	belongs := v.homes()[key]
	switch {
	case len(belongs) > 0 && len(belongs) <= 3 && (near == nil || distance(fold(key), fold(near[0]), 1) > 1):
		return "it belongs " + either(belongs)
	case near != nil:
		return "did you mean " + either(quoted(near)) + "?"
	}
	return "expected one of " + some(s.names)
}

// homes says for each name of a field in which objects it belongs.
func homes(root *shape) map[string][]string {
	out := make(map[string][]string)
	root.walk(place.Root, func(at place.Pointer, s *shape) {
		if s.Dimension != "" || s.names == nil {
			return
		}
		home := "at the top of the record"
		if at != place.Root {
			home = "in " + plainPath(at)
		}
		for _, name := range s.names {
			out[name] = append(out[name], home)
		}
	})
	return out
}

// missingFields is one mistake for all the fields that an object lacks. A name
// that was only misspelt is not missing as well.
func missingFields(doc *record.Document, n *record.Node, s *shape, at place.Pointer) []mistake {
	misspelt := make(map[string]bool)
	for i := range min(n.Len(), mostErrors) {
		if key := n.Item(i).Key(); s.Properties[key] == nil {
			for _, name := range nearest(key, s.names) {
				misspelt[name] = true
			}
		}
	}
	var missing []string
	for _, name := range s.Required {
		if !isRecorded(n.Get(name)) && !misspelt[name] {
			missing = append(missing, name)
		}
	}
	if missing == nil {
		return nil
	}
	spot, _ := doc.Locate(at)
	want := "each of them"
	if len(missing) == 1 {
		want = s.Properties[missing[0]].want()
		if empty := n.Get(missing[0]); empty != nil {
			spot = empty.KeySpot(doc.Name)
		}
	}
	return []mistake{{spot, at, "missing", func() string {
		return fmt.Sprintf("%s: found no %s; expected %s", where(doc, at), either(quoted(missing)), want)
	}}}
}

// wrongValue says what is wrong with a value, given the keyword it fails.
func wrongValue(n *record.Node, s *shape, keyword string) string {
	switch keyword {
	case "type":
		return wrongKind(n, s)
	case "enum":
		if near := nearest(n.Text(), s.choices()); near != nil && n.Kind() == record.String {
			return fmt.Sprintf("found %s; did you mean %s?", seen(n), either(quoted(near)))
		}
	case "pattern":
		return fmt.Sprintf("found %s; expected %s", seen(n), patternWords[s.Pattern])
	case "minLength", "maxLength":
		if n.Text() != "" {
			return fmt.Sprintf("found text of %d characters; expected %s", len([]rune(n.Text())), bounds(s.MinLength, s.MaxLength))
		}
		return fmt.Sprintf("found empty text; expected %s, or the field left out", s.want())
	case "minItems":
		return fmt.Sprintf("found a list of %d; expected at least %d", n.Len(), *s.MinItems)
	case "minimum":
		return fmt.Sprintf("found %s; expected %s or more", seen(n), s.Minimum)
	case "maximum":
		return fmt.Sprintf("found %s; expected %s or less", seen(n), s.Maximum)
	}
	return fmt.Sprintf("found %s; expected %s", seen(n), s.want())
}

func bounds(least, most *int) string {
	switch {
	case most == nil:
		return fmt.Sprintf("at least %d", *least)
	case least == nil:
		return fmt.Sprintf("at most %d", *most)
	}
	return fmt.Sprintf("%d to %d", *least, *most)
}

// idPattern is what the schema allows as an id.
const idPattern = "^[A-Za-z0-9][A-Za-z0-9._-]*$"

var plainID = regexp.MustCompile(idPattern)

// patternWords says in words what the patterns of the schema allow.
var patternWords = map[string]string{
	idPattern:                       "letters, digits, dots, dashes and underscores, with a letter or digit first",
	"^[A-Za-z0-9][A-Za-z0-9._/-]*$": "letters, digits, dots, dashes, underscores and slashes, with a letter or digit first",
}

// wrongKind is about text, numbers, true and false, lists and groups in each
// other's place, and how to write what was probably meant.
func wrongKind(n *record.Node, s *shape) string {
	text := n.Text()
	isText, isNumber := n.Kind() == record.String, n.Kind() == record.Number
	switch {
	case isText && s.Type.allows(record.Bool):
		if lower := strings.ToLower(text); lower == "true" || lower == "false" {
			return fmt.Sprintf("found %s in quotes; write %s without them", seen(n), lower)
		}
		return fmt.Sprintf("found %s; write true or false", seen(n))
	case isText && s.Type.allows(record.Number):
		if _, err := strconv.ParseFloat(text, 64); err == nil {
			return fmt.Sprintf("found %s in quotes; write the number without them", seen(n))
		}
	case isNumber && s.isMeasured():
		return fmt.Sprintf("found %s; write it with its unit%s", seen(n), s.such())
	case isNumber && s.Type.allows(record.String) && s.Enum == nil && s.Dimension == "":
		return fmt.Sprintf("found %s; write it in quotes, because it is text: %q", seen(n), text)
	case isText && s.Items != nil && s.Items.Type.allows(record.String):
		return fmt.Sprintf("found %s; expected a list: [%s]", seen(n), quote(text))
	}
	return fmt.Sprintf("found %s; expected %s", seen(n), s.want())
}

// seen names what stands in the record.
func seen(n *record.Node) string {
	switch n.Kind() {
	case record.Null:
		return "nothing"
	case record.Number:
		return "the number " + n.Text()
	case record.String:
		return quote(n.Text())
	case record.Array:
		return "a list"
	case record.Object:
		return "a group of fields"
	}
	return n.Text()
}

// isMeasured says whether the value is a quantity that has a unit.
func (s *shape) isMeasured() bool {
	return s.Dimension != "" && s.Dimension != "date" && s.Dimension != "time"
}

// want says what a value of this shape looks like.
func (s *shape) want() string {
	switch {
	case s.isMeasured():
		return "a quantity with its unit" + s.such()
	case s.Dimension == "date":
		return "a date" + s.such()
	case s.Dimension == "time":
		return "a date and time" + s.such()
	case s.Const != nil:
		return s.Const.String()
	case len(s.Enum) == 1:
		return s.Enum[0].String()
	case s.Enum != nil:
		return "one of " + both(s.choices())
	}
	switch {
	case slices.Contains(s.Type, "boolean"):
		return "true or false"
	case s.Type.onlyWhole():
		return "a whole number" + s.such()
	case slices.Contains(s.Type, "number"):
		return "a number" + s.such()
	case slices.Contains(s.Type, "array"):
		return "a list" + s.such()
	case slices.Contains(s.Type, "object"):
		return "a group of fields: " + some(s.names)
	}
	return "text" + s.such()
}

// choices are the values that a field may have, if there are only so many.
func (s *shape) choices() []string {
	var out []string
	for _, l := range s.Enum {
		out = append(out, l.text)
	}
	return out
}

// such gives the schema's example.
func (s *shape) such() string {
	if len(s.Examples) == 0 {
		return ""
	}
	return ", such as " + s.Examples[0].String()
}

// String is the value as it is written in a record.
func (l literal) String() string {
	if l.kind == record.String {
		return strconv.Quote(l.text)
	}
	return l.text
}
