package arch

import (
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"maps"
	"path"
	"slices"
	"strings"
	"testing"
)

// TestExportedNamesAreUsed keeps what a package shows to what is used outside
// it, so that everything else can be changed without looking further. Words of
// an enumeration are exported together, and a type is used by whoever uses the
// function that returns it.
func TestExportedNamesAreUsed(t *testing.T) { report(t, unusedNames(t, trackedFiles(t))) }

// shown are names that stay exported although nothing outside uses all of them.
var shown = []struct{ place, why string }{
	{"internal/airflow/", "each formula is held by its own name to a published value, whether or not a record needs it yet"},
	{"internal/report/", "each format can be written, and the saved JSON read, by its own name"},
}

// exported is one exported declaration at the top level of a package.
type exported struct{ folder, name, place string }

func unusedNames(t *testing.T, files map[string][]byte) []string {
	t.Helper()
	var declared []exported
	used := map[string]bool{} // folder.Name
	for _, name := range slices.Sorted(maps.Keys(files)) {
		if path.Ext(name) != ".go" {
			continue
		}
		set := token.NewFileSet()
		file, err := parser.ParseFile(set, name, files[name], 0)
		if err != nil {
			t.Fatal(err)
		}
		folder := path.Dir(name)
		if !strings.HasSuffix(name, "_test.go") && file.Name.Name != "main" {
			for _, id := range declarations(file, folder, used) {
				at := set.Position(id.Pos())
				declared = append(declared, exported{folder, id.Name, fmt.Sprintf("%s:%d", at.Filename, at.Line)})
			}
		}
		noteUses(file, used)
	}
	var out []string
	for _, d := range declared {
		kept := slices.ContainsFunc(shown, func(s struct{ place, why string }) bool { return strings.HasPrefix(d.place, s.place) })
		if !kept && !used[d.folder+"."+d.name] {
			out = append(out, fmt.Sprintf("%s: %s is exported but nothing outside %s uses it: begin it with a small letter, or drop it", d.place, d.name, d.folder))
		}
	}
	return out
}

// declarations lists the exported functions, types, variables and constants of
// a file, and notes the types that exported functions and types speak of.
func declarations(file *ast.File, folder string, used map[string]bool) []*ast.Ident {
	var out []*ast.Ident
	add := func(ids ...*ast.Ident) {
		for _, id := range ids {
			if id.IsExported() {
				out = append(out, id)
			}
		}
	}
	for _, d := range file.Decls {
		switch d := d.(type) {
		case *ast.FuncDecl:
			if d.Name.IsExported() {
				noteTypes(d.Type, folder, used)
			}
			if d.Recv == nil {
				add(d.Name)
			}
		case *ast.GenDecl:
			enumeration := false
			for _, s := range d.Specs {
				switch s := s.(type) {
				case *ast.ValueSpec:
					enumeration = d.Tok == token.CONST && (s.Type != nil || enumeration && s.Values == nil)
					if s.Type != nil {
						noteTypes(s.Type, folder, used)
					}
					if !enumeration {
						add(s.Names...)
					}
				case *ast.TypeSpec:
					add(s.Name)
					if s.Name.IsExported() {
						noteTypes(s.Type, folder, used)
					}
				}
			}
		}
	}
	return out
}

func noteTypes(t ast.Node, folder string, used map[string]bool) {
	ast.Inspect(t, func(n ast.Node) bool {
		if id, ok := n.(*ast.Ident); ok {
			used[folder+"."+id.Name] = true
		}
		return true
	})
}

// noteUses notes the names of other packages of this module that a file uses.
func noteUses(file *ast.File, used map[string]bool) {
	folders := map[string]string{}
	for _, i := range file.Imports {
		importPath := strings.Trim(i.Path.Value, `"`)
		if !ours(importPath) {
			continue
		}
		name := path.Base(importPath)
		if i.Name != nil {
			name = i.Name.Name
		}
		folders[name] = strings.TrimPrefix(importPath, modulePath+"/")
	}
	ast.Inspect(file, func(n ast.Node) bool {
		if s, ok := n.(*ast.SelectorExpr); ok {
			if x, ok := s.X.(*ast.Ident); ok && folders[x.Name] != "" {
				used[folders[x.Name]+"."+s.Sel.Name] = true
			}
		}
		return true
	})
}

func TestUnusedNamesAreFound(t *testing.T) {
	const declared = "package radon\n\ntype Result struct{ of Kind }\n\ntype Kind string\n\nconst (\n\tShort Kind = \"s\"\n\tLong Kind = \"l\"\n)\n\nfunc Average() Result { return Result{} }\n\nfunc Decay() float64 { return 0 }\n"
	const using = "package derive\n\nimport \"" + modulePath + "/internal/radon\"\n\nvar a = radon.Average()\n"
	found := unusedNames(t, map[string][]byte{"internal/radon/a.go": []byte(declared), "internal/derive/b.go": []byte(using)})
	if len(found) != 1 || !strings.HasPrefix(found[0], "internal/radon/a.go:14: Decay is exported but nothing outside internal/radon uses it: begin") {
		t.Errorf("found %q", found)
	}
}
