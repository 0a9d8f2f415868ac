package validate

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"strings"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// schemaURL is what the library calls the schema by; nothing stands there.
const schemaURL = "https://slablint.example/schema"

// The record's schema is written for draft 2020-12. The keywords that shape
// knows mean the same in draft 7, which the library compiles in less than half
// of the time.
var (
	draft2020 = []byte(`"https://json-schema.org/draft/2020-12/schema"`)
	draft7    = []byte(`"http://json-schema.org/draft-07/schema#"`)
)

func compileAsDraft7(schema []byte) (*jsonschema.Schema, error) {
	return compile(bytes.Replace(schema, draft2020, draft7, 1))
}

// compile hands a schema to the library, which may read nothing else: neither
// files nor addresses that the schema names.
func compile(schema []byte) (*jsonschema.Schema, error) {
	c := jsonschema.NewCompiler()
	c.LoadURL = func(url string) (io.ReadCloser, error) {
		return nil, fmt.Errorf("%s is not part of the schema, and nothing else is read", url)
	}
	if err := c.AddResource(schemaURL, bytes.NewReader(schema)); err != nil {
		return nil, err
	}
	return c.Compile(schemaURL)
}

// leaf is one thing that the library found wrong.
type leaf struct {
	at      place.Pointer
	keyword string
}

// leaves asks the library about a record. Only the innermost failures are
// kept: what is around them says no more than that something inside is wrong.
func leaves(schema *jsonschema.Schema, value any) ([]leaf, error) {
	err := schema.Validate(value)
	if err == nil {
		return nil, nil
	}
	var failed *jsonschema.ValidationError
	if !errors.As(err, &failed) {
		return nil, err
	}
	var found []leaf
	var visit func(*jsonschema.ValidationError)
	visit = func(e *jsonschema.ValidationError) {
		for _, cause := range e.Causes {
			visit(cause)
		}
		if len(e.Causes) == 0 {
			keyword := e.KeywordLocation[strings.LastIndexByte(e.KeywordLocation, '/')+1:]
			// The library escapes more than RFC 6901 says, but a failure stands
			// at a field of the schema, and those have plain names.
			found = append(found, leaf{place.Pointer(e.InstanceLocation), keyword})
		}
	}
	visit(failed)
	return found, nil
}

// plain is the value in the types of encoding/json. Known members that are
// empty are left out; shape s may be nil.
func plain(n *record.Node, s *shape) any {
	if s == nil {
		return n.Value()
	}
	switch n.Kind() {
	case record.Object:
		members := make(map[string]any, n.Len())
		for i := range n.Len() {
			m := n.Item(i)
			known := s.Properties[m.Key()]
			if known != nil && m.Kind() == record.Null {
				continue
			}
			members[m.Key()] = plain(m, known)
		}
		return members
	case record.Array:
		list := make([]any, n.Len())
		for i := range list {
			list[i] = plain(n.Item(i), s.Items)
		}
		return list
	}
	return n.Value()
}
