package schema

import (
	"encoding/json"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/quantity"
)

type node struct {
	Title       string           `json:"title"`
	Description string           `json:"description"`
	Type        any              `json:"type"`
	Ref         string           `json:"$ref"`
	Dimension   string           `json:"dimension"`
	Refers      string           `json:"refers"`
	Enum        []any            `json:"enum"`
	Examples    []any            `json:"examples"`
	Properties  map[string]*node `json:"properties"`
	Items       *node            `json:"items"`
	Defs        map[string]*node `json:"$defs"`
}

// fields calls visit for each field of the record's schema.
func fields(t *testing.T, visit func(at string, n *node)) {
	t.Helper()
	var root node
	if err := json.Unmarshal(Job(), &root); err != nil {
		t.Fatal(err)
	}
	var below func(at string, n *node)
	below = func(at string, n *node) {
		for name, p := range n.Properties {
			visit(at+"/"+name, p)
			below(at+"/"+name, p)
		}
		if n.Items != nil {
			below(at+"/*", n.Items)
		}
	}
	below("", &root)
	for name, def := range root.Defs {
		if name != "quantity" { // which is one value, described where it is used
			below("/$defs/"+name, def)
		}
	}
}

// isContainer says whether what a field holds is described field by field.
func (n *node) isContainer() bool {
	return n.Properties != nil || n.Dimension == "" && n.Ref != "" ||
		n.Items != nil && (n.Items.Properties != nil || n.Items.Ref != "" && n.Items.Dimension == "")
}

func TestEveryFieldIsDescribed(t *testing.T) {
	count := 0
	fields(t, func(at string, n *node) {
		count++
		if n.Title == "" || n.Description == "" {
			t.Errorf("%s lacks a title or a description", at)
		}
		if len(n.Examples) == 0 && !n.isContainer() {
			t.Errorf("%s lacks an example", at)
		}
		if n.Description != "" && !strings.HasSuffix(n.Description, ".") {
			t.Errorf("%s: the description is no sentence: %s", at, n.Description)
		}
	})
	if count < 600 {
		t.Errorf("found only %d fields", count)
	}
}

// A quantity's example is one that the program can read.
func TestDimensions(t *testing.T) {
	known := quantity.Dimensions()
	count := 0
	check := func(at, dimension string, examples ...any) {
		count++
		dim := quantity.Dimension(dimension)
		if !slices.Contains(known, dim) {
			t.Errorf("%s has the unknown dimension %q", at, dimension)
			return
		}
		for _, e := range examples {
			text, ok := e.(string)
			if !ok {
				t.Errorf("%s: the example %v is not text", at, e)
				continue
			}
			if _, err := quantity.Parse(dim, text); err != nil {
				t.Errorf("%s: example: %v", at, err)
			}
		}
	}
	fields(t, func(at string, n *node) {
		if n.Dimension != "" {
			check(at, n.Dimension, n.Examples...)
			if n.Ref != "#/$defs/quantity" {
				t.Errorf("%s has a dimension but is no quantity", at)
			}
		}
		if n.Items != nil && n.Items.Dimension != "" {
			list, _ := n.Examples[0].([]any)
			check(at, n.Items.Dimension, list...)
		}
	})
	if count < 100 {
		t.Errorf("found only %d quantities", count)
	}
}

// A choice's example is one of its choices.
func TestExamplesOfChoices(t *testing.T) {
	fields(t, func(at string, n *node) {
		for _, e := range n.Examples {
			if n.Enum != nil && !slices.Contains(n.Enum, e) {
				t.Errorf("%s: the example %v is none of its choices", at, e)
			}
			if list, ok := e.([]any); ok && n.Items.Enum != nil {
				for _, e := range list {
					if !slices.Contains(n.Items.Enum, e) {
						t.Errorf("%s: the example %v is none of its choices", at, e)
					}
				}
			}
		}
	})
}

var namesAnID = regexp.MustCompile(`\bThe (crew )?ids? of\b`)

// A field that holds an id of something else says of what, so that it can be
// checked to lead there.
func TestReferencesSayWhereTo(t *testing.T) {
	count := 0
	fields(t, func(at string, n *node) {
		refers := n.Refers
		if n.Items != nil && refers == "" {
			refers = n.Items.Refers
		}
		if says := namesAnID.MatchString(n.Description); says != (refers != "") {
			t.Errorf("%s refers to %q, and its description says: %s", at, refers, n.Description)
		}
		if refers != "" {
			count++
		}
	})
	if count < 20 {
		t.Errorf("found only %d references", count)
	}
}
