package rulebook

import (
	"fmt"
	"maps"
	"runtime"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/open-policy-agent/opa/v1/ast"
)

// EntryPackage is the package of the generated entry module. Its rule "answer"
// holds "asked" (each requirement with the array of its outcome sets),
// "outside" (which profiles do not speak of the job) and "cautions".
const EntryPackage = "entry"

// OutcomeSets names the places of that array.
func OutcomeSets() []string { return outcomeSets }

// Compile compiles the requirements of the stack with an entry module. The
// type check against the record schema happens when the rulebook is read from
// its folder, so it is not repeated here.
func (s *Selection) Compile() (*ast.Compiler, error) {
	modules, err := s.Parsed()
	if err != nil {
		return nil, err
	}
	c := ast.NewCompiler().WithCapabilities(Capabilities())
	if !replaces(modules) {
		c = c.WithSkipStages(ast.StageCheckTypes)
	}
	if c.Compile(modules); c.Failed() {
		return nil, c.Errors
	}
	return c, nil
}

// replaces tells whether a rule says "with": the evaluator then needs to know
// the types of what is replaced.
func replaces(modules map[string]*ast.Module) bool {
	found := false
	for _, m := range modules {
		ast.WalkWiths(m, func(*ast.With) bool {
			found = true
			return true
		})
	}
	return found
}

// Mentioned is every text that the compiled rules of the stack mention: under
// no other name can they read a member of an object. It is nil when anything
// may be read, which is so for rules of others: no test has seen to it that
// they name the fields they read.
func (s *Selection) Mentioned(compiled *ast.Compiler) map[string]bool {
	if s.rulebook.extended {
		return nil
	}
	found := map[string]bool{}
	for _, m := range compiled.Modules {
		ast.WalkTerms(m, func(t *ast.Term) bool {
			if text, ok := t.Value.(ast.String); ok {
				found[string(text)] = true
			}
			return false
		})
	}
	return found
}

// Parsed is every module of the stack by file name, parsed on all processors.
func (s *Selection) Parsed() (map[string]*ast.Module, error) {
	sources := s.Modules()
	files := slices.Sorted(maps.Keys(sources))
	parsed, errs := make([]*ast.Module, len(files)), make([]error, len(files))
	var next atomic.Int64
	var group sync.WaitGroup
	for range min(runtime.GOMAXPROCS(0), len(files)) {
		group.Go(func() {
			for i := int(next.Add(1)) - 1; i < len(files); i = int(next.Add(1)) - 1 {
				parsed[i], errs[i] = ast.ParseModuleWithOpts(files[i], sources[files[i]], ast.ParserOptions{})
			}
		})
	}
	group.Wait()
	modules := make(map[string]*ast.Module, len(files))
	for i, file := range files {
		if errs[i] != nil {
			return nil, errs[i]
		}
		modules[file] = parsed[i]
	}
	return modules, nil
}

// Modules is the source of every module of the stack by file name, the entry
// module included.
func (s *Selection) Modules() map[string]string {
	out := map[string]string{"entry.rego": s.entry()}
	for _, m := range s.rulebook.modules {
		if _, asked := s.rows[m.Requirement]; asked || m.Requirement == "" {
			out[m.File] = m.Source
		}
	}
	return out
}

// entry writes the entry module. Sets that a rule does not define are empty.
func (s *Selection) entry() string {
	var b strings.Builder
	fmt.Fprintf(&b, "package %s\n\nimport rego.v2\n\noutside := data.policy.scope.outside\n\ncautions := data.policy.cautions.show\n\n"+
		"answer := {\"asked\": asked, \"outside\": outside, \"cautions\": cautions}\n", EntryPackage)
	for _, name := range s.Asked() {
		r := s.rulebook.requirements[name]
		fmt.Fprintf(&b, "\nasked[%q] := [", name)
		for i, set := range outcomeSets {
			if i > 0 {
				b.WriteString(", ")
			}
			if r.defines(set) {
				fmt.Fprintf(&b, "data.policy.%s.%s", name, set)
			} else {
				b.WriteString("set()")
			}
		}
		b.WriteString("]\n")
	}
	return b.String()
}

func (r Requirement) defines(set string) bool {
	for _, s := range r.Sets {
		if s == set {
			return true
		}
	}
	return false
}
