// Package judge asks the requirements of a profile stack about one derived
// record and turns their bare outcomes into findings with places and sources.
package judge

import (
	"context"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// Judge holds a compiled profile stack. It can be shared by goroutines.
type Judge struct {
	selection *rulebook.Selection
	shape     *record.Shape
	compiler  *ast.Compiler
	store     storage.Store
	all       rego.PreparedEvalQuery
}

// New compiles the stack. The shape names fields in messages.
func New(ctx context.Context, selection *rulebook.Selection, shape *record.Shape) (*Judge, error) {
	compiler, err := selection.Compile()
	if err != nil {
		return nil, err
	}
	j := &Judge{selection: selection, shape: shape, compiler: compiler, store: inmem.NewFromObject(selection.Data())}
	if j.all, err = j.prepare(ctx, "data."+rulebook.EntryPackage); err != nil {
		return nil, err
	}
	return j, nil
}

func (j *Judge) prepare(ctx context.Context, query string) (rego.PreparedEvalQuery, error) {
	return rego.New(rego.Compiler(j.compiler), rego.Store(j.store), rego.Query(query), rego.StrictBuiltinErrors(true)).PrepareForEval(ctx)
}

// Judgement is what the rulebook says of one record.
type Judgement struct {
	Findings []finding.Finding // one for each requirement and subject, in no particular order
	Cautions []string          // safety reminders, in alphabetical order
}

// Judge asks every requirement of the stack; met and not applicable subjects
// are included. The input is the canonical record with its derived values. A
// requirement that cannot be evaluated becomes a finding about the rulebook
// and does not silence its neighbours.
func (j *Judge) Judge(ctx context.Context, doc *record.Document, input map[string]any) (Judgement, error) {
	value, err := ast.InterfaceToValue(input)
	if err != nil {
		return Judgement{}, fmt.Errorf("canonical record: %w", err)
	}
	e := expander{judge: j, doc: doc, input: input}
	answer, err := ask(ctx, j.all, value)
	if err != nil {
		return j.oneByOne(ctx, value, &e)
	}
	e.outside(answer["outside"])
	asked, _ := answer["asked"].(map[string]any)
	for _, name := range j.selection.Asked() {
		e.requirement(name, asked[name], nil)
	}
	return Judgement{e.findings, texts(answer["cautions"])}, nil
}

// oneByOne isolates the requirement that made the joint query fail.
func (j *Judge) oneByOne(ctx context.Context, input ast.Value, e *expander) (Judgement, error) {
	outside, err := j.single(ctx, "outside", input)
	if err != nil {
		return Judgement{}, fmt.Errorf("scope of the profiles: %w", err)
	}
	e.outside(outside)
	for _, name := range j.selection.Asked() {
		sets, err := j.single(ctx, fmt.Sprintf("asked[%q]", name), input)
		e.requirement(name, sets, err)
	}
	cautions, err := j.single(ctx, "cautions", input)
	return Judgement{e.findings, texts(cautions)}, err
}

// texts reads a set of strings; OPA hands sets over in order.
func texts(value any) []string {
	list, _ := value.([]any)
	out := make([]string, 0, len(list))
	for _, item := range list {
		if s, ok := item.(string); ok {
			out = append(out, s)
		}
	}
	return out
}

func (j *Judge) single(ctx context.Context, path string, input ast.Value) (any, error) {
	query, err := j.prepare(ctx, fmt.Sprintf("answer := data.%s.%s", rulebook.EntryPackage, path))
	if err != nil {
		return nil, err
	}
	results, err := query.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil || len(results) == 0 {
		return nil, err
	}
	return results[0].Bindings["answer"], nil
}

func ask(ctx context.Context, query rego.PreparedEvalQuery, input ast.Value) (map[string]any, error) {
	results, err := query.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil {
		return nil, err
	}
	if len(results) == 0 {
		return nil, fmt.Errorf("the rulebook gave no answer")
	}
	answer, _ := results[0].Expressions[0].Value.(map[string]any)
	return answer, nil
}
