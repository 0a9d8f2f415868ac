package rulebook_test

import (
	"encoding/json"
	"fmt"
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"

	"github.com/slablint/slablint/schema"
)

// What OPA's type checker cannot see, this test does: reads of the record are
// direct and spelled right, also in the paths that outcomes carry, and words
// compared with a field are words that the field can hold.
func TestRuleConventions(t *testing.T) {
	root := canonicalTree(t)
	for file, source := range regoFiles(t) {
		if strings.HasSuffix(file, "_test.rego") {
			continue
		}
		for _, m := range mistakes(t, root, file, string(source)) {
			t.Error(m)
		}
	}
}

func mistakes(t *testing.T, root *schemaTree, file, source string) []string {
	t.Helper()
	module, err := ast.ParseModule(file, source)
	if err != nil {
		t.Fatal(err)
	}
	c := convention{file: file, root: root}
	if !slices.ContainsFunc(module.Imports, func(i *ast.Import) bool { return i.Path.String() == "rego.v2" }) && len(module.Rules) > 0 {
		c.say(module.Package.Location, "import rego.v2: without it a missing field under not goes silent")
	}
	for _, rule := range module.Rules {
		c.rule(rule)
	}
	return c.mistakes
}

// Each of these compiles; the convention test has to stop it.
func TestConventionsStopWhatCompiles(t *testing.T) {
	root := canonicalTree(t)
	const head = "package policy.a.b\n\nimport rego.v2\n\n"
	for want, source := range map[string]string{
		"":                     head + `met contains s.id if { some i, s in input.systems; s.fan.place == "attic" }`,
		"import rego.v2":       "package policy.a.b\n\nmet contains 1 if input.job.id",
		"object.get hides":     head + `met contains s.id if { some s in input.systems; object.get(s, "fann", null) != null }`,
		"can never be":         head + `met contains s.id if { some s in input.systems; s.fan.place == "atic" }`,
		"can never be \"x\"":   head + `met contains s.id if { some s in input.systems; s.fan.place in {"attic", "x"} }`,
		"leads nowhere":        head + `subjects contains [s.id, ["systems", i, "fan", "plaice"]] if some i, s in input.systems`,
		"can never be \"y\"":   head + `met contains s.id if { some s in input.systems; not s.fan.place == "y" }`,
		"variable key":         head + `met contains k if { some k; input.job[k] == "x" }`,
		"more than the number": head + `met contains s.id if { some s in input.systems; s.commissioning.measured_flow.text == "80 cfm" }`,
		"inside a function":    head + "f(x) if x.place == \"attic\"\n\nmet contains s.id if { some s in input.systems; f(s.fan) }",
		"every hides":          head + `met contains 1 if { every s in input.systems { s.fan.plaice == "x" } }`,
		"leads nowhere in the": head + `n := count([1 | some s in input.systems; x := ["systems", 0, "fanns"]; x[0] == s.id])`,
	} {
		found := strings.Join(mistakes(t, root, "a/b.rego", source), "\n")
		if (want == "") != (found == "") || !strings.Contains(found, want) {
			t.Errorf("want %q, found %q in\n%s", want, found, source)
		}
		if want != "" && !strings.HasPrefix(found, "policy/a/b.rego:") {
			t.Errorf("no file and line in %q", found)
		}
	}
}

// schemaTree is one node of the canonical schema with references resolved.
type schemaTree struct {
	Properties map[string]*schemaTree `json:"properties"`
	Items      *schemaTree            `json:"items"`
	Enum       []any                  `json:"enum"`
	Ref        string                 `json:"$ref"`
	Defs       map[string]*schemaTree `json:"$defs"`
}

func canonicalTree(t *testing.T) *schemaTree {
	t.Helper()
	var root schemaTree
	if err := json.Unmarshal(schema.Canonical(), &root); err != nil {
		t.Fatal(err)
	}
	return &root
}

type convention struct {
	file     string
	root     *schemaTree
	mistakes []string
}

func (c *convention) say(at *ast.Location, format string, args ...any) {
	c.mistakes = append(c.mistakes, fmt.Sprintf("policy/%s:%d: %s", c.file, at.Row, fmt.Sprintf(format, args...)))
}

// scope maps variables to the part of the record that they stand for.
type scope map[ast.Var]*schemaTree

func (c *convention) rule(rule *ast.Rule) {
	known := scope{}
	for r := rule; r != nil; r = r.Else {
		inner := maps.Clone(known)
		for _, arg := range r.Head.Args {
			if v, ok := arg.Value.(ast.Var); ok {
				inner[v] = nil // a value handed in: its fields are out of sight
			}
		}
		c.body(r.Body, inner, len(r.Head.Args) > 0)
		c.term(r.Head.Key, inner, false)
		c.term(r.Head.Value, inner, false)
	}
}

func (c *convention) body(body ast.Body, known scope, function bool) {
	for range 2 { // a variable may be bound below its use
		for _, e := range body {
			c.bind(e, known)
		}
	}
	for _, e := range body {
		if _, every := e.Terms.(*ast.Every); every {
			c.say(e.Location, "every hides field names from the type checker: use a comprehension or a helper set")
			continue
		}
		switch terms := e.Terms.(type) {
		case []*ast.Term:
			c.compared(e, known)
			for _, t := range terms[1:] {
				c.term(t, known, function)
			}
		case *ast.Term:
			c.term(terms, known, function)
		case *ast.SomeDecl:
			for _, s := range terms.Symbols {
				c.term(s, known, function)
			}
		case *ast.Not:
			c.body(terms.Body, maps.Clone(known), function)
		case *ast.LogicalAnd, *ast.LogicalOr:
			c.say(e.Location, "and, or hide field names from the type checker: write two rules")
		}
	}
}

// bind notes what some x in y and x := y make of a variable.
func (c *convention) bind(e *ast.Expr, known scope) {
	switch terms := e.Terms.(type) {
	case *ast.SomeDecl:
		for _, s := range terms.Symbols {
			call, ok := s.Value.(ast.Call)
			if !ok {
				continue
			}
			item, list := call[len(call)-2], call[len(call)-1]
			if v, ok := item.Value.(ast.Var); ok {
				if node := c.resolve(list, known); node != nil && node.Items != nil {
					known[v] = node.Items
				}
			}
		}
	case []*ast.Term:
		if e.IsAssignment() || e.IsEquality() {
			if v, ok := terms[1].Value.(ast.Var); ok {
				if node := c.resolve(terms[2], known); node != nil {
					known[v] = node
				}
			}
		}
	}
}

// resolve finds the schema of a reference into the record, or nil.
func (c *convention) resolve(t *ast.Term, known scope) *schemaTree {
	switch v := t.Value.(type) {
	case ast.Var:
		return known[v]
	case ast.Ref:
		node, rest := c.head(v, known)
		for _, part := range rest {
			if node = c.step(node, part); node == nil {
				return nil
			}
		}
		return node
	}
	return nil
}

func (c *convention) head(ref ast.Ref, known scope) (*schemaTree, []*ast.Term) {
	name, ok := ref[0].Value.(ast.Var)
	if !ok {
		return nil, nil
	}
	if name == "input" {
		return c.root, ref[1:]
	}
	return known[name], ref[1:]
}

func (c *convention) step(node *schemaTree, part *ast.Term) *schemaTree {
	if node == nil {
		return nil
	}
	if name, ok := strings.CutPrefix(node.Ref, "#/$defs/"); ok {
		node = c.root.Defs[name]
	}
	if s, ok := part.Value.(ast.String); ok {
		return node.Properties[string(s)]
	}
	return node.Items
}

// term checks references and outcome paths inside a term.
func (c *convention) term(t *ast.Term, known scope, function bool) {
	if t == nil {
		return
	}
	switch v := t.Value.(type) {
	case ast.Ref:
		c.reference(t, v, known, function)
	case ast.Call:
		if name := v[0].String(); name == "object.get" && len(v) > 1 && (c.resolve(v[1], known) != nil || strings.HasPrefix(v[1].String(), "input")) {
			c.say(t.Location, "object.get hides the field name from the type checker: read the field directly")
		}
		for _, arg := range v[1:] {
			c.term(arg, known, function)
		}
	case *ast.Array:
		c.path(t, v)
		v.Foreach(func(e *ast.Term) { c.term(e, known, function) })
	case ast.Set:
		v.Foreach(func(e *ast.Term) { c.term(e, known, function) })
	case ast.Object:
		v.Foreach(func(k, e *ast.Term) { c.term(k, known, function); c.term(e, known, function) })
	case *ast.SetComprehension:
		c.comprehension(v.Body, known, function, v.Term)
	case *ast.ArrayComprehension:
		c.comprehension(v.Body, known, function, v.Term)
	case *ast.ObjectComprehension:
		c.comprehension(v.Body, known, function, v.Key, v.Value)
	}
}

func (c *convention) comprehension(body ast.Body, known scope, function bool, heads ...*ast.Term) {
	inner := maps.Clone(known)
	c.body(body, inner, function)
	for _, h := range heads {
		c.term(h, inner, function)
	}
}

func (c *convention) reference(t *ast.Term, ref ast.Ref, known scope, function bool) {
	name, _ := ref[0].Value.(ast.Var)
	if node, given := known[name]; function && given && node == nil && len(ref) > 1 {
		if _, field := ref[1].Value.(ast.String); field && c.file != "lib.rego" {
			c.say(t.Location, "%s is read inside a function, where the type checker does not see it: pass the value", ref)
		}
	}
	node, rest := c.head(ref, known)
	for _, part := range rest {
		if node == nil {
			return
		}
		field, literal := part.Value.(ast.String)
		if !literal && len(node.Properties) > 0 {
			c.say(t.Location, "%s has a variable key into an object of the record: name the field", ref)
			return
		}
		if strings.HasSuffix(node.Ref, "/quantity") || strings.HasSuffix(node.Ref, "/value") {
			if literal && field != "si" {
				c.say(t.Location, "%s reads more than the number of a quantity: the fast evaluator is given si alone", ref)
			}
		}
		node = c.step(node, part)
	}
}

// path checks an array that starts with a top-level field of the record.
func (c *convention) path(t *ast.Term, list *ast.Array) {
	if list.Len() == 0 {
		return
	}
	first, ok := list.Elem(0).Value.(ast.String)
	nested := false // a tuple of subject and path, not a path
	list.Foreach(func(part *ast.Term) { _, isArray := part.Value.(*ast.Array); nested = nested || isArray })
	if !ok || nested || c.root.Properties[string(first)] == nil {
		return
	}
	node := c.root
	list.Foreach(func(part *ast.Term) {
		if node == nil {
			return
		}
		if node = c.step(node, part); node == nil {
			c.say(t.Location, "the path %s leads nowhere in the record: %s is unknown there; spell it as in schema/canonical.schema.json", t, part)
		}
	})
}

// compared checks words that a field is compared with against the field's list.
func (c *convention) compared(e *ast.Expr, known scope) {
	operator := e.Operator().String()
	if operator != "equal" && operator != "neq" && operator != "eq" && operator != "internal.member_2" {
		return
	}
	a, b := e.Operand(0), e.Operand(1)
	for _, pair := range [][2]*ast.Term{{a, b}, {b, a}} {
		node := c.resolve(pair[0], known)
		if node == nil || len(node.Enum) == 0 {
			continue
		}
		check := func(word *ast.Term) {
			if s, ok := word.Value.(ast.String); ok && !slices.Contains(node.Enum, any(string(s))) {
				c.say(e.Location, "%s can never be %s: use one of %v, or add the word in schema/job.schema.json", pair[0], word, node.Enum)
			}
		}
		check(pair[1])
		if set, ok := pair[1].Value.(ast.Set); ok {
			set.Foreach(check)
		}
	}
}
