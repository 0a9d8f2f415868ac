package rulebook

import (
	"bytes"
	"cmp"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"iter"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"

	"github.com/slablint/slablint/internal/finding"
)

// Example is a piece of a record on which a requirement was asked for one
// subject, as a test beside the rule has it.
type Example struct {
	Subject string
	Verdict finding.Verdict
	Record  map[string]any            // canonical form, with computed values under "derived"
	Limits  map[string]map[string]any // as a rule reads them: "si" or "any_of"; empty when none is established
}

// askedMark opens a line that the listening verdict prints.
const askedMark = "asked "

// listening stands in for lib.verdict, which all tests of rules call, and
// prints what it was asked and what it answered.
const listening = `package policy.lib

import rego.v2

verdict(sets, subject) := answer if {
	answer := answered(sets, subject)
	print("asked", json.marshal({"subject": subject, "verdict": answer, "record": input, "profile": profile}))
}

default profile := {}

profile := data.profile
`

// Examples returns a record that meets a requirement and one that does not, as
// alike as the tests beside the rule have them. They are found by running those
// tests, so the verdicts are real. Either is nil when no test shows it.
func (rb *Rulebook) Examples(ctx context.Context, name string) (met, deficient *Example, err error) {
	r, known := rb.requirements[name]
	if !known {
		return nil, nil, fmt.Errorf("unknown requirement %q", name)
	}
	source, err := rb.testOf(r)
	if errors.Is(err, fs.ErrNotExist) {
		return nil, nil, nil
	} else if err != nil {
		return nil, nil, err
	}
	asked, err := rb.listen(ctx, map[string][]byte{name: source})
	if err != nil {
		return nil, nil, fmt.Errorf("tests of %s: %w", name, err)
	}
	met, deficient = closest(asked[name])
	return met, deficient, nil
}

// testOf reads the test that stands beside a rule.
func (rb *Rulebook) testOf(r Requirement) ([]byte, error) {
	err := error(fs.ErrNotExist)
	for _, folder := range slices.Backward(rb.folders) {
		var source []byte
		if source, err = fs.ReadFile(folder, strings.TrimSuffix(r.File, ".rego")+"_test.rego"); err == nil {
			return source, nil
		}
	}
	return nil, err
}

// listen runs the tests of rules and returns what was asked by requirement, in
// the order of the tests.
func (rb *Rulebook) listen(ctx context.Context, tests map[string][]byte) (map[string][]*Example, error) {
	sources := map[string]string{"listening.rego": listening}
	for _, m := range rb.modules {
		if _, wanted := tests[m.Requirement]; wanted || m.Requirement == "" {
			sources[m.File] = m.Source
		}
	}
	for name, test := range tests {
		sources[name+"_test.rego"] = string(test)
	}
	modules := make(map[string]*ast.Module, len(sources))
	for file, source := range sources {
		m, err := ast.ParseModuleWithOpts(file, source, ast.ParserOptions{})
		if err != nil {
			return nil, err
		}
		modules[file] = m
		if file == "lib.rego" {
			rename(m, "verdict", "answered")
		}
	}
	results, err := tester.NewRunner().SetStore(inmem.New()).SetModules(modules).SetTimeout(tryFor).CapturePrintOutput(true).RunTests(ctx, nil)
	if err != nil {
		return nil, err
	}
	inOrder := slices.SortedFunc(received(results), func(a, b *tester.Result) int {
		return cmp.Or(cmp.Compare(a.Package, b.Package), cmp.Compare(a.Location.Row, b.Location.Row))
	})
	asked := map[string][]*Example{}
	for _, result := range inOrder {
		name := strings.TrimSuffix(strings.TrimPrefix(result.Package, "data.policy."), "_test")
		for line := range bytes.Lines(result.Output) {
			text, ours := bytes.CutPrefix(line, []byte(askedMark))
			if !ours {
				continue
			}
			e, err := exampleOf(name, text)
			if err != nil {
				return nil, err
			}
			asked[name] = append(asked[name], e)
		}
	}
	return asked, nil
}

// received ranges over a channel; tests finish in any order.
func received[T any](from <-chan T) iter.Seq[T] {
	return func(yield func(T) bool) {
		for v := range from {
			if !yield(v) {
				return
			}
		}
	}
}

func exampleOf(name string, text []byte) (*Example, error) {
	var said struct {
		Subject string                                          `json:"subject"`
		Verdict finding.Verdict                                 `json:"verdict"`
		Record  map[string]any                                  `json:"record"`
		Profile map[string]map[string]map[string]map[string]any `json:"profile"`
	}
	decoder := json.NewDecoder(bytes.NewReader(text))
	decoder.UseNumber()
	if err := decoder.Decode(&said); err != nil {
		return nil, err
	}
	topic, short, _ := strings.Cut(name, ".")
	return &Example{Subject: said.Subject, Verdict: said.Verdict, Record: said.Record, Limits: said.Profile[topic][short]}, nil
}

// rename gives the rules of a module with one name another.
func rename(m *ast.Module, from, to string) {
	for _, rule := range m.Rules {
		for r := rule; r != nil; r = r.Else {
			if r.Head.Name == ast.Var(from) {
				r.Head.Name = ast.Var(to)
				r.Head.Reference = ast.Ref{ast.VarTerm(to)}
			}
		}
	}
}

// closest picks the met and the deficient example that differ least, then the
// shortest, then the first, so that what decides is easy to see.
func closest(asked []*Example) (met, deficient *Example) {
	least := 0
	for _, m := range asked {
		if m.Verdict != finding.Met {
			continue
		}
		for _, d := range asked {
			if d.Verdict != finding.Deficient {
				continue
			}
			if distance := m.distance(d); met == nil || distance < least {
				met, deficient, least = m, d, distance
			}
		}
	}
	if met != nil {
		return met, deficient
	}
	find := func(v finding.Verdict) *Example {
		i := slices.IndexFunc(asked, func(e *Example) bool { return e.Verdict == v })
		if i < 0 {
			return nil
		}
		return asked[i]
	}
	return find(finding.Met), find(finding.Deficient)
}

// distance weighs how hard it is to see why two examples differ in verdict:
// other limits most, then another subject, then each value, then their length.
func (e *Example) distance(other *Example) int {
	mine, theirs := leaves(e.Record), leaves(other.Record)
	differ := 0
	for _, at := range slices.Sorted(maps.Keys(mine)) {
		if value, there := theirs[at]; !there || value != mine[at] {
			differ++
		}
	}
	for at := range theirs {
		if _, there := mine[at]; !there {
			differ++
		}
	}
	distance := 1000*differ + len(mine) + len(theirs)
	if e.Subject != other.Subject {
		distance += 100_000
	}
	if fmt.Sprint(e.Limits) != fmt.Sprint(other.Limits) {
		distance += 1_000_000
	}
	return distance
}

// leaves are the values of a record by their place. A list or object without
// members counts as a value.
func leaves(record any) map[string]string {
	out := map[string]string{}
	var walk func(at string, value any)
	walk = func(at string, value any) {
		switch v := value.(type) {
		case map[string]any:
			for name, member := range v {
				walk(at+"/"+name, member)
			}
			if len(v) > 0 {
				return
			}
		case []any:
			for i, element := range v {
				walk(fmt.Sprintf("%s/%d", at, i), element)
			}
			if len(v) > 0 {
				return
			}
		}
		out[at] = fmt.Sprint(value)
	}
	walk("", record)
	return out
}
