package main

import (
	"bytes"
	"context"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/rulebook"
)

// Every command, flag, profile and requirement that the pages for people
// mention exists, and what needs no files of a job is run as it stands there.
func TestDocumentsNameRealCommands(t *testing.T) {
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	names := rb.ProfileNames()
	for _, r := range rb.Requirements() {
		names = append(names, r.Name)
	}
	for _, d := range outcome.Demands() {
		names = append(names, d.Requirement)
	}
	root := newRoot(world{})
	var runnable [][]string
	for _, page := range []string{"README.md", "DEVELOPERS.md", "CHANGELOG.md"} {
		text, err := os.ReadFile(filepath.Join("..", "..", page))
		if err != nil {
			t.Fatal(err)
		}
		for _, name := range rb.ProfileNames() {
			if page == "README.md" && !strings.Contains(string(text), "`"+name+"`") {
				t.Errorf("%s does not list the profile %s: add it", page, name)
			}
		}
		calls := callsIn(string(text))
		if page == "README.md" && len(calls) < 15 {
			t.Errorf("found only %d commands in %s", len(calls), page)
		}
		for _, c := range calls {
			if problem := callProblem(root, names, c.words); problem != "" {
				t.Errorf("%s:%d: %s: %s", page, c.line, strings.Join(c.words, " "), problem)
			}
			if len(c.words) > 2 && slices.Contains([]string{"new", "worksheet", "explain", "rules"}, c.words[1]) && !slices.Contains(c.words, "DIR") {
				runnable = append(runnable, c.words[1:])
			}
		}
	}
	if len(runnable) < 3 {
		t.Errorf("only %d commands can be run as they stand", len(runnable))
	}
	t.Chdir(t.TempDir())
	for _, args := range runnable {
		var out, errs bytes.Buffer
		if i := slices.Index(args, ">"); i > 0 {
			args = args[:i]
		}
		if status := run(context.Background(), args, world{in: strings.NewReader(""), out: &out, errs: &errs}); status != 0 {
			t.Errorf("slablint %s: exit status %d: %s", strings.Join(args, " "), status, errs.String())
		}
	}
}

// call is a command line that a page mentions; the first word is slablint, or
// a flag when only flags are named.
type call struct {
	line  int
	words []string
}

var (
	codeSpan    = regexp.MustCompile("`([^`\n]+)`")
	programLine = regexp.MustCompile(`(?:^|[ ;&|])(?:go run \./cmd/)?(slablint .*)`)
)

// callsIn finds command lines in code: indented lines and spans of text. Spans
// may go over the end of a line.
func callsIn(page string) []call {
	var out []call
	add := func(offset int, code string) {
		line := 1 + strings.Count(page[:offset], "\n")
		if strings.HasPrefix(code, "--") {
			out = append(out, call{line, strings.Fields(code)})
		} else if m := programLine.FindStringSubmatch(code); m != nil {
			out = append(out, call{line, strings.Fields(m[1])})
		}
	}
	offset := 0
	fenced := false
	for line := range strings.Lines(page) {
		switch {
		case strings.HasPrefix(line, "```"):
			fenced = !fenced
		case !fenced && strings.HasPrefix(line, "    "):
			add(offset, strings.TrimSpace(line))
		}
		offset += len(line)
	}
	joined := regexp.MustCompile("(`[^`\n]*)\n([^`\n]*`)").ReplaceAllString(page, "$1 $2\n")
	for _, m := range codeSpan.FindAllStringSubmatchIndex(joined, -1) {
		if joined[m[2]:m[3]] != "" {
			add(min(m[2], len(page)), joined[m[2]:m[3]])
		}
	}
	return out
}

// callProblem says what of a command line does not exist, or "".
func callProblem(root *cobra.Command, names, words []string) string {
	cmd := root
	if words[0] == "slablint" {
		words = words[1:]
		found, rest, err := root.Find(words)
		if err != nil {
			return err.Error()
		}
		if found == root && !strings.HasPrefix(words[0], "-") {
			return fmt.Sprintf("there is no command %s", words[0])
		}
		cmd, words = found, rest
	}
	for i, word := range words {
		if flag, ok := strings.CutPrefix(word, "--"); ok {
			flag, _, _ = strings.Cut(flag, "=")
			if !hasFlag(cmd, root, flag) {
				return fmt.Sprintf("there is no flag --%s", flag)
			}
			continue
		}
		profile := i > 0 && words[i-1] == "--profile" && !strings.HasSuffix(word, ".yaml") && word != "NAME"
		requirement := cmd.Name() == "explain" && i == 0 && word != "REQUIREMENT"
		if (profile || requirement) && !slices.Contains(names, word) {
			return fmt.Sprintf("there is no profile or requirement %s", word)
		}
	}
	return ""
}

// hasFlag looks at one command or, when only flags are named, at all.
func hasFlag(cmd, root *cobra.Command, name string) bool {
	if cmd.Flag(name) != nil {
		return true
	}
	return cmd == root && slices.ContainsFunc(root.Commands(), func(c *cobra.Command) bool { return c.Flag(name) != nil })
}

func TestCallProblemsAreFound(t *testing.T) {
	root := newRoot(world{})
	names := []string{"canada", "fan.place"}
	for text, want := range map[string]string{
		"    slablint check --format html jobs\n":            "",
		"    slablint chekc jobs\n":                          "unknown command",
		"see `slablint gate install` and `--new-only`\n":     "",
		"see `--newest-only`\n":                              "no flag --newest-only",
		"    go run ./cmd/slablint check --fromat html a\n":  "no flag --fromat",
		"    slablint explain fan.place --profile canada\n":  "",
		"    slablint explain fan.plaice\n":                  "no profile or requirement fan.plaice",
		"and `slablint check\n--profile cannada a` here\n":   "no profile or requirement cannada",
		"```\nslablint: unknown profile\n```\n`slablint`.\n": "",
	} {
		var found []string
		for _, c := range callsIn(text) {
			if problem := callProblem(root, names, c.words); problem != "" {
				found = append(found, problem)
			}
		}
		got := strings.Join(found, "\n")
		if (want == "") != (got == "") || !strings.Contains(got, want) {
			t.Errorf("%q: want %q, found %q", text, want, got)
		}
	}
}

// The changelog's first entry is what the program says it is.
func TestChangelogIsOfThisVersion(t *testing.T) {
	text, err := os.ReadFile("../../CHANGELOG.md")
	if err != nil {
		t.Fatal(err)
	}
	heading := regexp.MustCompile(`(?m)^## (\S+)`).FindStringSubmatch(string(text))
	if heading == nil || heading[1] != version {
		t.Errorf("CHANGELOG.md begins with %v, cmd/slablint/root.go has version %s: make them one", heading, version)
	}
	if entry, _, _ := strings.Cut(string(text), "\n## 0.0"); !strings.Contains(entry, "### Records that passed may now be held") {
		t.Error("CHANGELOG.md has no section on records that passed and may now be held")
	}
}
