package arch

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"maps"
	"os"
	"os/exec"
	"path"
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
	Dir, ImportPath, Name, Doc         string
	GoFiles, TestGoFiles, XTestGoFiles []string
	Imports, TestImports, XTestImports []string
}

// goList asks the go command for every package of this module, once.
var goList = sync.OnceValues(func() (map[string]goPackage, error) {
	cmd := exec.Command("go", "list", "-e", "-json=Dir,ImportPath,Name,Doc,GoFiles,TestGoFiles,XTestGoFiles,Imports,TestImports,XTestImports", "./...")
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
func foreignOf(foreigns []foreign, importPath string) (foreign, bool) {
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

// place is where a package first holds a text, as file and line; the folder
// when none of its files does.
func (p goPackage) place(text string) string {
	folder := strings.TrimPrefix(strings.TrimPrefix(p.ImportPath, modulePath), "/")
	for _, name := range slices.Concat(p.GoFiles, p.TestGoFiles, p.XTestGoFiles) {
		if data, err := os.ReadFile(filepath.Join(p.Dir, name)); err == nil {
			if before, _, found := strings.Cut(string(data), text); found {
				return fmt.Sprintf("%s:%d", path.Join(folder, name), 1+strings.Count(before, "\n"))
			}
		}
	}
	return folder
}

// rowPlace is the file and line of a row in the tables of table_test.go.
func rowPlace(name string) string {
	data, err := os.ReadFile("table_test.go")
	if err != nil {
		return "internal/arch/table_test.go"
	}
	before, _, found := strings.Cut(string(data), "\t{\""+name+"\", ")
	if !found {
		return "internal/arch/table_test.go"
	}
	return fmt.Sprintf("internal/arch/table_test.go:%d", 1+strings.Count(before, "\n"))
}

func report(t *testing.T, mistakes []string) {
	t.Helper()
	for _, m := range mistakes {
		t.Error(m)
	}
}

func TestTableIsOrdered(t *testing.T) { report(t, orderMistakes(rooms)) }

func orderMistakes(rooms []room) []string {
	var out []string
	above := map[string]bool{}
	for _, r := range rooms {
		if above[r.name] {
			out = append(out, fmt.Sprintf("%s: %s has two rows: make them one", rowPlace(r.name), r.name))
		}
		for _, used := range strings.Fields(r.uses) {
			if !above[used] {
				out = append(out, fmt.Sprintf("%s: the row of %s names %s, which has no row above it: data flows one way, so order the rows as a record passes through them", rowPlace(r.name), r.name, used))
			}
		}
		above[r.name] = true
	}
	return out
}

func TestImportsAreThoseOfTheTable(t *testing.T) { report(t, importMistakes(listPackages(t), rooms)) }

func importMistakes(packages map[string]goPackage, rooms []room) []string {
	var out []string
	rows := map[string]bool{}
	for _, r := range rooms {
		rows[r.name] = true
		p, exists := packages[r.name]
		if !exists {
			out = append(out, fmt.Sprintf("%s: %s has a row but no package: strike the row", rowPlace(r.name), r.name))
			continue
		}
		own, _ := importsOf(p)
		for _, used := range own {
			if !has(r.uses, used) {
				out = append(out, fmt.Sprintf("%s: %s imports %s, which its row in internal/arch/table_test.go does not allow: hand it what it needs as an argument or, if the design has changed, add it to the row and run go test ./internal/arch -update", p.place(used+`"`), r.name, used))
			}
		}
		for _, used := range strings.Fields(r.uses) {
			if !slices.Contains(own, used) {
				out = append(out, fmt.Sprintf("%s: %s does not import %s any more: strike it from the row and run go test ./internal/arch -update", rowPlace(r.name), r.name, used))
			}
		}
	}
	for _, name := range slices.Sorted(maps.Keys(packages)) {
		if !rows[name] {
			out = append(out, fmt.Sprintf("%s: %s has no row in internal/arch/table_test.go: add one where a record passes through it, with what it may import", packages[name].place("package "), name))
		}
	}
	return out
}

func TestModulesOfOthersStayInTheirRoom(t *testing.T) {
	report(t, foreignMistakes(listPackages(t), foreigns))
}

func foreignMistakes(packages map[string]goPackage, foreigns []foreign) []string {
	var out []string
	inCode, inTests := map[string]string{}, map[string]string{} // module -> rooms that import it
	for _, name := range slices.Sorted(maps.Keys(packages)) {
		p := packages[name]
		_, others := importsOf(p)
		for _, path := range others {
			f, known := foreignOf(foreigns, path)
			switch {
			case !known:
				out = append(out, fmt.Sprintf("%s: %s imports %s: its module has no row in internal/arch/table_test.go; every module is a debt, so add one only with the room that owns it and the reason", p.place(path), name, path))
			case !has(f.code, name):
				out = append(out, fmt.Sprintf("%s: %s imports %s, which is kept to %q: call that room instead", p.place(path), name, path, f.code))
			}
			inCode[f.module] += " " + name
		}
		for _, path := range slices.Concat(p.TestImports, p.XTestImports) {
			if ours(path) || standard(path) {
				continue
			}
			f, known := foreignOf(foreigns, path)
			if !known || f.tests != anyTest && !has(f.tests, name) && !has(f.code, name) {
				out = append(out, fmt.Sprintf("%s: the tests of %s import %s: give its module a row in internal/arch/table_test.go that allows this, with the reason", p.place(path), name, path))
			}
			inTests[f.module] += " " + name
		}
	}
	for _, f := range foreigns {
		if f.why == "" {
			out = append(out, fmt.Sprintf("%s: %s has no reason: say what it does that we would otherwise write", rowPlace(f.module), f.module))
		}
		for _, name := range strings.Fields(f.code) {
			if !has(inCode[f.module], name) {
				out = append(out, fmt.Sprintf("%s: %s does not import %s any more: strike it from the row", rowPlace(f.module), name, f.module))
			}
		}
		if f.tests == anyTest {
			if inTests[f.module] == "" {
				out = append(out, fmt.Sprintf("%s: no test imports %s any more: strike the row", rowPlace(f.module), f.module))
			}
			continue
		}
		for _, name := range strings.Fields(f.tests) {
			if !has(inTests[f.module], name) {
				out = append(out, fmt.Sprintf("%s: the tests of %s do not import %s any more: strike it from the row", rowPlace(f.module), name, f.module))
			}
		}
	}
	return out
}

func TestStandardPackagesThatResultsMustNotDependOn(t *testing.T) {
	report(t, restrictedMistakes(listPackages(t), restricted))
}

func restrictedMistakes(packages map[string]goPackage, restricted []foreign) []string {
	var out []string
	for _, s := range restricted {
		for _, name := range slices.Sorted(maps.Keys(packages)) {
			switch imports := slices.Contains(packages[name].Imports, s.module); {
			case imports && !has(s.code, name):
				out = append(out, fmt.Sprintf("%s: %s imports %s: %s; take what it gives as an argument (restricted in internal/arch/table_test.go)", packages[name].place(`"`+s.module+`"`), name, s.module, s.why))
			case !imports && has(s.code, name):
				out = append(out, fmt.Sprintf("%s: %s does not import %s any more: strike it from the row", rowPlace(s.module), name, s.module))
			}
		}
	}
	return out
}

func TestEveryPackageSaysWhatItIs(t *testing.T) { report(t, commentMistakes(listPackages(t))) }

func commentMistakes(packages map[string]goPackage) []string {
	var out []string
	for _, name := range slices.Sorted(maps.Keys(packages)) {
		p := packages[name]
		opening := "Package " + p.Name + " "
		if p.Name == "main" {
			opening = "Command " + path.Base(p.ImportPath) + " "
		}
		if !strings.HasPrefix(p.Doc, opening) || !strings.HasSuffix(p.Doc, ".") {
			out = append(out, fmt.Sprintf("%s: the package comment of %s is %q: begin it %q and end its first sentence with a full stop", p.place("package "+p.Name+"\n"), name, p.Doc, opening))
		}
		switch p.Name {
		case "util", "utils", "common", "helper", "helpers", "misc", "shared":
			out = append(out, fmt.Sprintf("%s: %s: name a package after what it is about; %q tells nothing", p.place("package "), name, p.Name))
		}
	}
	return out
}
