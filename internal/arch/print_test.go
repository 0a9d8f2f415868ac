package arch

import (
	"fmt"
	"strings"
)

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
