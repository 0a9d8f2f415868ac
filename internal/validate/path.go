package validate

import (
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// anyIndex stands for every index in a pointer of the schema.
const anyIndex = "*"

// where names a place in a record by ids: systems/sys-1/discharge. An entry
// without an id counts from 1: systems/sys-1/pipe/leg-1/fittings/#2.
func where(doc *record.Document, at place.Pointer) string {
	if at == place.Root {
		return "record"
	}
	tokens := at.Split()
	n := doc.Root
	for i, token := range tokens {
		if n == nil {
			break
		}
		parent := n
		n = n.At(place.Root.Append(token))
		if parent.Kind() == record.Array {
			tokens[i] = entryName(token, n)
		}
	}
	return strings.Join(tokens, "/")
}

func entryName(index string, n *record.Node) string {
	id := n.Get("id")
	if id != nil && id.Kind() == record.String && len(id.Text()) <= 64 && plainID.MatchString(id.Text()) {
		return id.Text()
	}
	i, err := strconv.Atoi(index)
	if err != nil {
		return index
	}
	return "#" + strconv.Itoa(i+1)
}

// plainPath is a pointer of the schema as people write it, without indexes.
func plainPath(at place.Pointer) string {
	var kept []string
	for _, token := range at.Split() {
		if token != anyIndex {
			kept = append(kept, token)
		}
	}
	return strings.Join(kept, "/")
}

// bind puts the indexes of a place into a pattern that leads the same way as
// far as it has any: seen from a pipe of the first system, the suction points
// are those of the first system.
func bind(pattern, at place.Pointer) place.Pointer {
	if !strings.Contains(string(pattern), anyIndex) {
		return pattern
	}
	tokens, own := pattern.Split(), at.Split()
	out := place.Root
	for i, token := range tokens {
		if token == anyIndex {
			token = own[i]
		}
		out = out.Append(token)
	}
	return out
}

// binds says whether bind can be used from a field of the schema.
func binds(pattern, field place.Pointer) bool {
	tokens, own := pattern.Split(), field.Split()
	for i := len(tokens) - 1; i >= 0; i-- {
		if tokens[i] == anyIndex {
			return len(own) > i && slices.Equal(tokens[:i+1], own[:i+1])
		}
	}
	return true
}
