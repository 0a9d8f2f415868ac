package arch

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
)

const modulePath = "github.com/slablint/slablint"

// repository is the repository's top folder, seen from this package.
var repository = filepath.Join("..", "..")

// goPackage is what this test needs of one package in go list's answer.
type goPackage struct {
	ImportPath, Name, Doc              string
	Imports, TestImports, XTestImports []string
}

// goList asks the go command for every package of this module, once.
var goList = sync.OnceValues(func() (map[string]goPackage, error) {
	cmd := exec.Command("go", "list", "-e", "-json=ImportPath,Name,Doc,Imports,TestImports,XTestImports", "./...")
	cmd.Dir = repository
	var stderr strings.Builder
	cmd.Stderr = &stderr
	out, err := cmd.Output()
	if err != nil {
		return nil, fmt.Errorf("go list ./...: %w\n%s", err, stderr.String())
	}
	packages := map[string]goPackage{}
	for dec := json.NewDecoder(bytes.NewReader(out)); ; {
		var p goPackage
		if err := dec.Decode(&p); errors.Is(err, io.EOF) {
			return packages, nil
		} else if err != nil {
			return nil, fmt.Errorf("go list ./...: %w", err)
		}
		packages[roomName(p.ImportPath)] = p
	}
})

// listPackages returns every package of this module by its room name.
func listPackages(t *testing.T) map[string]goPackage {
	t.Helper()
	// The go command cannot see that this test depends on what its child reads;
	// reading the files here keeps it from answering out of its cache.
	trackedFiles(t)
	packages, err := goList()
	if err != nil {
		t.Fatal(err)
	}
	return packages
}

// roomName shortens an import path of this module to the name used in rooms.
func roomName(importPath string) string {
	return strings.TrimPrefix(strings.TrimPrefix(importPath, modulePath+"/"), "internal/")
}

// ours tells whether an import path belongs to this module.
func ours(importPath string) bool {
	return importPath == modulePath || strings.HasPrefix(importPath, modulePath+"/")
}

// foreignOf finds the row of the module that an import path belongs to.
func foreignOf(importPath string) (foreign, bool) {
	for _, f := range foreigns {
		if importPath == f.module || strings.HasPrefix(importPath, f.module+"/") {
			return f, true
		}
	}
	return foreign{}, false
}

// standard tells whether an import path is the standard library's: those have
// no dot in their first element.
func standard(importPath string) bool {
	first, _, _ := strings.Cut(importPath, "/")
	return !strings.Contains(first, ".")
}

func has(list, name string) bool { return slices.Contains(strings.Fields(list), name) }

// importsOf lists what the code of a package imports of this module, by room
// name, and of others.
func importsOf(p goPackage) (own, others []string) {
	for _, path := range p.Imports {
		switch {
		case ours(path):
			own = append(own, roomName(path))
		case !standard(path):
			others = append(others, path)
		}
	}
	return own, others
}

func TestTableIsOrdered(t *testing.T) {
	above := map[string]bool{}
	for _, r := range rooms {
		if above[r.name] {
			t.Errorf("%s has two rows", r.name)
		}
		for _, used := range strings.Fields(r.uses) {
			if !above[used] {
				t.Errorf("the row of %s names %s, which has no row above it: data flows one way, so order the rows as a record passes through them", r.name, used)
			}
		}
		above[r.name] = true
	}
}

func TestImportsAreThoseOfTheTable(t *testing.T) {
	packages := listPackages(t)
	rows := map[string]bool{}
	for _, r := range rooms {
		rows[r.name] = true
		p, exists := packages[r.name]
		if !exists {
			t.Errorf("%s has a row in table_test.go but no package: strike the row", r.name)
			continue
		}
		own, _ := importsOf(p)
		for _, used := range own {
			if !has(r.uses, used) {
				t.Errorf("%s imports %s, which its row in table_test.go does not allow: hand it what it needs as an argument or, if the design has changed, add it to the row and run go test ./internal/arch -update", r.name, used)
			}
		}
		for _, used := range strings.Fields(r.uses) {
			if !slices.Contains(own, used) {
				t.Errorf("%s does not import %s any more: strike it from the row in table_test.go and run go test ./internal/arch -update", r.name, used)
			}
		}
	}
	for name := range packages {
		if !rows[name] {
			t.Errorf("%s has no row in table_test.go: add one where a record passes through it, with what it may import", name)
		}
	}
}

func TestModulesOfOthersStayInTheirRoom(t *testing.T) {
	inCode, inTests := map[string]string{}, map[string]string{} // module -> rooms that import it
	for name, p := range listPackages(t) {
		_, others := importsOf(p)
		for _, path := range others {
			f, known := foreignOf(path)
			switch {
			case !known:
				t.Errorf("%s imports %s: its module has no row in table_test.go; every module is a debt, so add one only with the room that owns it and the reason", name, path)
			case !has(f.code, name):
				t.Errorf("%s imports %s, which is kept to %q: call that room instead", name, path, f.code)
			}
			inCode[f.module] += " " + name
		}
		for _, path := range slices.Concat(p.TestImports, p.XTestImports) {
			if ours(path) || standard(path) {
				continue
			}
			f, known := foreignOf(path)
			if !known || f.tests != anyTest && !has(f.tests, name) && !has(f.code, name) {
				t.Errorf("the tests of %s import %s: give its module a row in table_test.go that allows this, with the reason", name, path)
			}
			inTests[f.module] += " " + name
		}
	}
	for _, f := range foreigns {
		for _, name := range strings.Fields(f.code) {
			if !has(inCode[f.module], name) {
				t.Errorf("%s does not import %s any more: strike it from the module's row in table_test.go", name, f.module)
			}
		}
		if f.tests == anyTest {
			if inTests[f.module] == "" {
				t.Errorf("no test imports %s any more: strike it from the module's row in table_test.go", f.module)
			}
			continue
		}
		for _, name := range strings.Fields(f.tests) {
			if !has(inTests[f.module], name) {
				t.Errorf("the tests of %s do not import %s any more: strike it from the module's row in table_test.go", name, f.module)
			}
		}
	}
}

func TestStandardPackagesThatResultsMustNotDependOn(t *testing.T) {
	packages := listPackages(t)
	for _, s := range restricted {
		for name, p := range packages {
			switch imports := slices.Contains(p.Imports, s.module); {
			case imports && !has(s.code, name):
				t.Errorf("%s imports %s: %s (table_test.go, restricted)", name, s.module, s.why)
			case !imports && has(s.code, name):
				t.Errorf("%s does not import %s any more: strike it from restricted in table_test.go", name, s.module)
			}
		}
	}
}

func TestEveryPackageSaysWhatItIs(t *testing.T) {
	for name, p := range listPackages(t) {
		opening := "Package " + p.Name + " "
		if p.Name == "main" {
			opening = "Command " + filepath.Base(p.ImportPath) + " "
		}
		if !strings.HasPrefix(p.Doc, opening) || !strings.HasSuffix(p.Doc, ".") {
			t.Errorf("the package comment of %s is %q: begin it %q and end its first sentence with a full stop", name, p.Doc, opening)
		}
		switch p.Name {
		case "util", "utils", "common", "helper", "helpers", "misc", "shared":
			t.Errorf("%s: name a package after what it is about; %q tells nothing", name, p.Name)
		}
	}
}
