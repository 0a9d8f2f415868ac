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
	t.joint, err = t.query("answer").PrepareForEval(ctx)
	return t, err
}

// query asks for one value of the entry package.
func (t *topdown) query(path string) *rego.Rego {
	return rego.New(
		rego.Compiler(t.compiler), rego.Store(t.store), rego.StrictBuiltinErrors(true),
		rego.Query("value := data."+rulebook.EntryPackage+"."+path),
	)
}

func (t *topdown) ask(ctx context.Context, input map[string]any, names []string) (answer, error) {
	value, err := ast.InterfaceToValue(input)
	if err != nil {
		return answer{}, fmt.Errorf("canonical record: %w", err)
	}
	if whole, err := evaluate(ctx, t.joint, value); err == nil && whole != nil {
		return answerOf(whole, names)
	}
	return t.oneByOne(ctx, value, names)
}

// oneByOne isolates the requirement that made the joint query fail.
func (t *topdown) oneByOne(ctx context.Context, input ast.Value, names []string) (answer, error) {
	a := answer{asked: make([]result, len(names))}
	outside, err := t.single(ctx, "outside", input)
	if err != nil {
		return a, fmt.Errorf("scope of the profiles: %w", err)
	}
	cautions, err := t.single(ctx, "cautions", input)
	if err != nil {
		return a, fmt.Errorf("cautions: %w", err)
	}
	a.outside, a.cautions = pairs(outside), texts(cautions)
	for i, name := range names {
		value, err := t.single(ctx, fmt.Sprintf("asked[%q]", name), input)
		if err != nil {
			a.asked[i].failure = err
		} else {
			a.asked[i] = resultOf(value)
		}
	}
	return a, nil
}

func (t *topdown) single(ctx context.Context, path string, input ast.Value) (any, error) {
	query, err := t.query(path).PrepareForEval(ctx)
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
