package judge

import (
	"context"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"github.com/slablint/slablint/internal/rulebook"
)

// topdown evaluates a stack with OPA's own evaluator.
type topdown struct {
	compiler *ast.Compiler
	store    storage.Store
	joint    rego.PreparedEvalQuery
}

func newTopdown(ctx context.Context, selection *rulebook.Selection) (*topdown, error) {
	compiler, err := selection.Compile()
	if err != nil {
		return nil, err
	}
	t := &topdown{compiler: compiler, store: inmem.NewFromObject(selection.Data())}
	t.joint, err = t.prepare(ctx, "answer")
	return t, err
}

// prepare makes a query for one value of the entry package.
func (t *topdown) prepare(ctx context.Context, path string) (rego.PreparedEvalQuery, error) {
	return rego.New(
		rego.Compiler(t.compiler), rego.Store(t.store), rego.StrictBuiltinErrors(true),
		rego.Query("value := data."+rulebook.EntryPackage+"."+path),
	).PrepareForEval(ctx)
}

func (t *topdown) ask(ctx context.Context, input map[string]any, asked []string) (answer, error) {
	value, err := ast.InterfaceToValue(input)
	if err != nil {
		return answer{}, fmt.Errorf("canonical record: %w", err)
	}
	if whole, err := evaluate(ctx, t.joint, value); err == nil && whole != nil {
		return answerOf(whole)
	}
	return t.oneByOne(ctx, value, asked)
}

// oneByOne isolates the requirement that made the joint query fail.
func (t *topdown) oneByOne(ctx context.Context, input ast.Value, asked []string) (answer, error) {
	a := answer{asked: map[string]any{}, failures: map[string]error{}}
	var err error
	if a.outside, err = t.single(ctx, "outside", input); err != nil {
		return a, fmt.Errorf("scope of the profiles: %w", err)
	}
	if a.cautions, err = t.single(ctx, "cautions", input); err != nil {
		return a, fmt.Errorf("cautions: %w", err)
	}
	for _, name := range asked {
		if a.asked[name], err = t.single(ctx, fmt.Sprintf("asked[%q]", name), input); err != nil {
			a.failures[name] = err
		}
	}
	return a, nil
}

func (t *topdown) single(ctx context.Context, path string, input ast.Value) (any, error) {
	query, err := t.prepare(ctx, path)
	if err != nil {
		return nil, err
	}
	return evaluate(ctx, query, input)
}

func evaluate(ctx context.Context, query rego.PreparedEvalQuery, input ast.Value) (any, error) {
	results, err := query.Eval(ctx, rego.EvalParsedInput(input))
	if err != nil || len(results) == 0 {
		return nil, err
	}
	return results[0].Bindings["value"], nil
}
