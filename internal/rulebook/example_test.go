package rulebook

import (
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"strings"
	"testing"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/storage/inmem"

	"github.com/slablint/slablint/internal/finding"
)

// Every requirement has an example that meets it and one that does not, and
// asked again without its tests the rulebook gives the same verdicts.
func TestExamplesGiveTheirVerdicts(t *testing.T) {
	if flag.Lookup("topics").Value.String() != "" {
		return // the embedded rules may be older than those looked at
	}
	ctx := context.Background()
	rb, err := Builtin()
	if err != nil {
		t.Fatal(err)
	}
	tests := map[string][]byte{}
	for _, r := range rb.Requirements() {
		if tests[r.Name], err = rb.testOf(r); err != nil {
			t.Fatal(err)
		}
	}
	asked, err := rb.listen(ctx, tests)
	if err != nil {
		t.Fatal(err)
	}
	ask := rb.asker(t)
	alike := 0
	for _, r := range rb.Requirements() {
		met, deficient := closest(asked[r.Name])
		for _, e := range []struct {
			example *Example
			want    finding.Verdict
		}{{met, finding.Met}, {deficient, finding.Deficient}} {
			if e.example == nil {
				t.Errorf("policy/%s:%d: no test beside it shows a record that is %s: write one that asks lib.verdict", r.File, r.Line, e.want)
			} else if got := ask(r, e.example); got != string(e.want) {
				t.Errorf("%s: %v of %s is %s, want %s", r.Name, e.example.Record, e.example.Subject, got, e.want)
			}
		}
		if met != nil && deficient != nil && met.distance(deficient) < 3000 {
			alike++
		}
	}
	if alike < 300 {
		t.Errorf("only %d pairs of examples differ in one or two values", alike)
	}
}

// asker asks the rules as they are embedded.
func (rb *Rulebook) asker(t *testing.T) func(Requirement, *Example) string {
	t.Helper()
	modules := map[string]*ast.Module{}
	for _, m := range rb.modules {
		var err error
		if modules[m.File], err = ast.ParseModuleWithOpts(m.File, m.Source, ast.ParserOptions{}); err != nil {
			t.Fatal(err)
		}
	}
	compiler := ast.NewCompiler()
	if compiler.Compile(modules); compiler.Failed() {
		t.Fatal(compiler.Errors)
	}
	return func(r Requirement, e *Example) string {
		results, err := rego.New(
			rego.Compiler(compiler),
			rego.Query(fmt.Sprintf("data.policy.lib.verdict(data.policy.%s, %q)", r.Name, e.Subject)),
			rego.Input(e.Record),
			rego.Store(inmem.NewFromObject(map[string]any{"profile": profileOf(r, e.Limits)})),
		).Eval(context.Background())
		if err != nil {
			t.Fatal(err)
		}
		if len(results) == 0 {
			return "nothing"
		}
		return fmt.Sprint(results[0].Expressions[0].Value)
	}
}

// profileOf is data.profile with the limits of one requirement.
func profileOf(r Requirement, limits map[string]map[string]any) map[string]any {
	named := map[string]any{}
	for name, limit := range limits {
		named[name] = limit
	}
	_, short, _ := strings.Cut(r.Name, ".")
	return map[string]any{r.Topic(): map[string]any{short: named}}
}

func TestExamplesOfHeight(t *testing.T) {
	rb, err := Builtin()
	if err != nil {
		t.Fatal(err)
	}
	met, deficient, err := rb.Examples(context.Background(), "exhaust.height_above_grade")
	if err != nil {
		t.Fatal(err)
	}
	const at = "/derived/discharges/0/height_above_grade/si"
	if a, b := leaves(met.Record)[at], leaves(deficient.Record)[at]; a != "3.048" || b == a || met.distance(deficient) >= 2000 {
		t.Errorf("%v and %v do not differ in the height only", met.Record, deficient.Record)
	}
	if got := met.Limits["minimum"]["si"]; got != json.Number("3.048") {
		t.Errorf("the limit is %v", got)
	}
	if _, _, err := rb.Examples(context.Background(), "exhaust.hight"); err == nil {
		t.Error("an unknown requirement has examples")
	}
}
