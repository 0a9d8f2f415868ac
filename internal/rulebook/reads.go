package rulebook

import (
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
)

// reads lists the places of the canonical record that a module mentions, as
// templates such as /systems/*/fan/place. Rules read the record directly (the
// convention test sees to that), so this is all a rule can depend on.
func reads(m *ast.Module) []string {
	c := collector{found: map[string]bool{}}
	for _, rule := range m.Rules {
		for r := rule; r != nil; r = r.Else {
			known := map[ast.Var]string{}
			c.body(r.Body, known)
			c.term(r.Head.Key, known)
			c.term(r.Head.Value, known)
		}
	}
	return c.leaves()
}

// imports lists the modules of the rulebook that a module uses, as package
// paths below policy.
func imports(m *ast.Module) []string {
	var out []string
	for _, i := range m.Imports {
		if name, ok := strings.CutPrefix(i.Path.String(), "data.policy."); ok {
			out = append(out, name)
		}
	}
	return out
}

type collector struct{ found map[string]bool }

// leaves drops what is only on the way to something longer, and the parts of
// quantities.
func (c collector) leaves() []string {
	out := slices.Sorted(maps.Keys(c.found))
	return slices.DeleteFunc(out, func(path string) bool {
		return slices.ContainsFunc(out, func(other string) bool { return strings.HasPrefix(other, path+"/") })
	})
}

func (c collector) body(body ast.Body, known map[ast.Var]string) {
	for range 2 { // a variable may be bound below its use
		for _, e := range body {
			c.bind(e, known)
		}
	}
	for _, e := range body {
		switch terms := e.Terms.(type) {
		case []*ast.Term:
			for _, t := range terms[1:] {
				c.term(t, known)
			}
		case *ast.Term:
			c.term(terms, known)
		case *ast.SomeDecl:
			for _, s := range terms.Symbols {
				c.term(s, known)
			}
		case *ast.Not: // of rego.v2: a body of its own
			c.body(terms.Body, maps.Clone(known))
		}
	}
}

// bind notes what some x in y and x := y make of a variable.
func (c collector) bind(e *ast.Expr, known map[ast.Var]string) {
	switch terms := e.Terms.(type) {
	case *ast.SomeDecl:
		for _, s := range terms.Symbols {
			if call, ok := s.Value.(ast.Call); ok {
				if v, ok := call[len(call)-2].Value.(ast.Var); ok {
					if path, ok := template(call[len(call)-1], known); ok {
						known[v] = path + "/*"
					}
				}
			}
		}
	case []*ast.Term:
		if e.IsAssignment() || e.IsEquality() {
			if v, ok := terms[1].Value.(ast.Var); ok {
				if path, ok := template(terms[2], known); ok {
					known[v] = path
				}
			}
		}
	}
}

// template is the place that a reference into the record stands for.
func template(t *ast.Term, known map[ast.Var]string) (string, bool) {
	switch v := t.Value.(type) {
	case ast.Var:
		path, ok := known[v]
		return path, ok
	case ast.Ref:
		head, ok := v[0].Value.(ast.Var)
		if !ok {
			return "", false
		}
		path, bound := known[head]
		if !bound && head != "input" {
			return "", false
		}
		for _, part := range v[1:] {
			name, literal := part.Value.(ast.String)
			switch {
			case literal && (name == "si" || name == "text" || name == "value" || name == "unit"):
				return path, true
			case literal:
				path += "/" + string(name)
			default:
				path += "/*"
			}
		}
		return path, true
	}
	return "", false
}

func (c collector) term(t *ast.Term, known map[ast.Var]string) {
	if t == nil {
		return
	}
	switch v := t.Value.(type) {
	case ast.Ref:
		if path, ok := template(t, known); ok && path != "" {
			c.found[path] = true
		}
	case ast.Call:
		for _, arg := range v[1:] {
			c.term(arg, known)
		}
	case *ast.Array:
		v.Foreach(func(e *ast.Term) { c.term(e, known) })
	case ast.Set:
		v.Foreach(func(e *ast.Term) { c.term(e, known) })
	case ast.Object:
		v.Foreach(func(k, e *ast.Term) { c.term(k, known); c.term(e, known) })
	case *ast.SetComprehension:
		c.comprehension(v.Body, known, v.Term)
	case *ast.ArrayComprehension:
		c.comprehension(v.Body, known, v.Term)
	case *ast.ObjectComprehension:
		c.comprehension(v.Body, known, v.Key, v.Value)
	}
}

func (c collector) comprehension(body ast.Body, known map[ast.Var]string, heads ...*ast.Term) {
	inner := maps.Clone(known)
	c.body(body, inner)
	for _, h := range heads {
		c.term(h, inner)
	}
}
