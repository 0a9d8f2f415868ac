package rulebook

import (
	"context"
	"fmt"
	"io/fs"
	"strings"
	"time"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/storage/inmem"
	"github.com/open-policy-agent/opa/v1/tester"
)

// Trial is the result of one test of a company's own requirements.
type Trial struct {
	Name   string // package and rule
	Place  string // file and line
	Passed bool
	Reason string // of a failure, when there is more to say
}

// tryFor bounds how long one test may run.
const tryFor = 10 * time.Second

// Try checks the requirements of a folder as Extend does, then runs the tests
// beside them.
func (rb *Rulebook) Try(ctx context.Context, folder fs.FS) ([]Trial, error) {
	all, err := rb.Extend(folder)
	if err != nil {
		return nil, err
	}
	modules := map[string]*ast.Module{}
	for _, m := range all.modules {
		if modules[m.File], err = ast.ParseModuleWithOpts(m.File, m.Source, ast.ParserOptions{}); err != nil {
			return nil, err
		}
	}
	err = fs.WalkDir(folder, ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(file, "_test.rego") {
			return err
		}
		source, err := fs.ReadFile(folder, file)
		if err != nil {
			return err
		}
		modules[file], err = ast.ParseModuleWithOpts(file, string(source), ast.ParserOptions{})
		return err
	})
	if err != nil {
		return nil, err
	}
	results, err := tester.NewRunner().SetStore(inmem.New()).SetModules(modules).SetTimeout(tryFor).RunTests(ctx, nil)
	if err != nil {
		return nil, err
	}
	var trials []Trial
	for r := range results {
		t := Trial{Name: strings.TrimPrefix(r.Package, "data.") + "." + r.Name, Passed: r.Pass()}
		t.Place = fmt.Sprintf("%s:%d", r.Location.File, r.Location.Row)
		if r.Error != nil {
			t.Reason = r.Error.Error()
		}
		trials = append(trials, t)
	}
	return trials, nil
}
