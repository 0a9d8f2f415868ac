// Package validate checks a record against the published JSON Schema, and that it
// does not say two things of one, and says of each mistake where it stands, what
// was found and what was expected.
package validate

import (
	"cmp"
	"fmt"
	"slices"
	"sync"

	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// mostErrors is how many mistakes of one record are told one by one.
const mostErrors = 50

// Validator checks records. Goroutines may share it.
type Validator struct {
	root    *shape
	homes   func() map[string][]string // name of a field -> where it belongs, in words
	library func() (*jsonschema.Schema, error)
}

// New reads the embedded schema of records. The library compiles it when a
// record first needs it.
func New() (*Validator, error) { return newValidator(schema.Job()) }

func newValidator(schema []byte) (*Validator, error) {
	root, err := parseShape(schema)
	if err != nil {
		return nil, err
	}
	return &Validator{
		root:    root,
		homes:   sync.OnceValue(func() map[string][]string { return homes(root) }),
		library: sync.OnceValues(func() (*jsonschema.Schema, error) { return compileAsDraft7(schema) }),
	}, nil
}

// Check gives the mistakes in a record in the order in which they stand there,
// and none if it can be judged. After 50 it only says how many more there are.
// One mistake gives one error: what follows from it alone is left out.
//
// An empty field is taken as left out. Quantities are only known to be text or
// {value, unit} here; whether they can be read is found when they are.
func (v *Validator) Check(doc *record.Document) []finding.Error {
	var found []mistake
	quick := accepts(doc.Root, v.root)
	if !quick {
		library, err := v.library()
		if err != nil {
			return brokenSchema(doc, err)
		}
		wrong, err := leaves(library, plain(doc.Root, v.root))
		if err != nil {
			return brokenSchema(doc, err)
		}
		found = v.explain(doc, wrong)
	}
	found = append(found, v.checkIDs(doc, quick)...)
	if len(found) == 0 {
		found = contradictions(doc) // which are told by ids that can be trusted
	}
	return report(doc.Name, found)
}

// brokenSchema tells of a fault of the program as of any other: a record that
// could not be checked must not pass.
func brokenSchema(doc *record.Document, err error) []finding.Error {
	return []finding.Error{{
		File: doc.Name, Line: 1, Column: 1,
		Message: fmt.Sprintf("the record could not be checked, which is a fault of the program: %v", err),
	}}
}

// mistake is one thing to mend. Its sentence is only made when it is shown: a
// broken file can have a hundred thousand.
type mistake struct {
	spot place.Spot
	at   place.Pointer
	kind string // the keyword; with at it makes the order complete
	say  func() string
}

func report(file string, found []mistake) []finding.Error {
	slices.SortFunc(found, func(a, b mistake) int {
		return cmp.Or(
			cmp.Compare(a.spot.Line, b.spot.Line),
			cmp.Compare(a.spot.Column, b.spot.Column),
			cmp.Compare(a.at, b.at),
			cmp.Compare(a.kind, b.kind),
		)
	})
	var out []finding.Error
	for i, m := range found {
		message := ""
		if i == mostErrors {
			message = fmt.Sprintf("%d more mistakes stand from here on; mend those above first", len(found)-i)
		} else {
			message = m.say()
		}
		out = append(out, finding.Error{File: file, Line: m.spot.Line, Column: m.spot.Column, Message: message})
		if i == mostErrors {
			break
		}
	}
	return out
}
