package arch

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"
)

var update = flag.Bool("update", false, "write the import table into DEVELOPERS.md")

const (
	blockBegin = "<!-- imports: written by `go test ./internal/arch -update` -->\n"
	blockEnd   = "<!-- /imports -->\n"
)

// TestDevelopersShowsTheTable holds the printed table to the one that is
// checked, so that nobody plans by a stale one.
func TestDevelopersShowsTheTable(t *testing.T) {
	name := filepath.Join(repository, "DEVELOPERS.md")
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	before, rest, begun := strings.Cut(string(data), blockBegin)
	shown, after, ended := strings.Cut(rest, blockEnd)
	if !begun || !ended {
		t.Fatalf("DEVELOPERS.md has no block between the lines\n%s%s", blockBegin, blockEnd)
	}
	want := "\n" + roomsTable() + "\n" + foreignsTable() + "\n" + restrictedTable() + "\n"
	if shown == want {
		return
	}
	if !*update {
		t.Fatal("DEVELOPERS.md shows another import table than internal/arch/table_test.go: run go test ./internal/arch -update")
	}
	if err := os.WriteFile(name, []byte(before+blockBegin+want+blockEnd+after), 0o644); err != nil {
		t.Fatal(err)
	}
}

func roomsTable() string {
	var b strings.Builder
	b.WriteString("| package | may import, of this module |\n| --- | --- |\n")
	for _, r := range rooms {
		fmt.Fprintf(&b, "| `%s` | %s |\n", r.name, names(r.uses))
	}
	return b.String()
}

func foreignsTable() string {
	var b strings.Builder
	b.WriteString("| module of others | imported by | in tests of | what for |\n| --- | --- | --- | --- |\n")
	for _, f := range foreigns {
		tests := names(f.tests)
		if f.tests == anyTest {
			tests = anyTest
		}
		fmt.Fprintf(&b, "| `%s` | %s | %s | %s |\n", f.module, names(f.code), tests, f.why)
	}
	return b.String()
}

func restrictedTable() string {
	var b strings.Builder
	b.WriteString("| standard package | imported by | why so few |\n| --- | --- | --- |\n")
	for _, s := range restricted {
		fmt.Fprintf(&b, "| `%s` | %s | %s |\n", s.module, names(s.code), s.why)
	}
	return b.String()
}

// names prints a blank-separated list as Markdown code.
func names(list string) string {
	if list == "" {
		return "-"
	}
	return "`" + strings.Join(strings.Fields(list), "`, `") + "`"
}
