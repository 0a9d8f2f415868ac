package judge

import (
	"context"
	"encoding/json"
	"fmt"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"github.com/slablint/slablint/internal/record"
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
	value, err := term(input)
	if err != nil {
		return answer{}, fmt.Errorf("canonical record: %w", err)
	}
	if whole, err := evaluate(ctx, t.joint, value); err == nil && whole != nil {
		return answerOf(whole, names)
	}
	return t.oneByOne(ctx, value, names)
}

// term is a canonical value as the reference holds it.
func term(value any) (ast.Value, error) {
	switch v := value.(type) {
	case string:
		return ast.String(v), nil
	case json.Number:
		return ast.Number(v), nil
	case bool:
		return ast.Boolean(v), nil
	case nil:
		return ast.NullValue, nil
	case []any:
		terms := make([]*ast.Term, len(v))
		for i, item := range v {
			element, err := term(item)
			if err != nil {
				return nil, err
			}
			terms[i] = &ast.Term{Value: element}
		}
		return ast.NewArray(terms...), nil
	case map[string]any, record.Members:
		names := record.Names(v)
		pairs := make([][2]*ast.Term, len(names))
		for i, name := range names {
			member, err := term(record.Get(v, name))
			if err != nil {
				return nil, err
			}
			pairs[i] = [2]*ast.Term{ast.StringTerm(name), {Value: member}}
		}
		return ast.NewObject(pairs...), nil
	}
	return nil, fmt.Errorf("a canonical record holds no %T", value)
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
