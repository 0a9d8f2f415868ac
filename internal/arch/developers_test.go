package arch

import (
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/record"
)

var update = flag.Bool("update", false, "write the generated parts of DEVELOPERS.md")

// guideLines is how long DEVELOPERS.md may be and still be read.
const guideLines = 350

// TestDevelopersIsFresh holds the generated parts of the page to what they are
// made of, so that nobody plans by a stale one.
func TestDevelopersIsFresh(t *testing.T) {
	name := filepath.Join(repository, "DEVELOPERS.md")
	shown := read(t, "DEVELOPERS.md")
	want := shown
	for _, part := range []struct{ title, text string }{
		{"imports", roomsTable() + "\n" + foreignsTable() + "\n" + restrictedTable()},
		{"requirement", requirementExample(t, "papers", "records_kept", "us-epa-1994")},
		{"profile fields", profileTable(t)},
	} {
		want = replaceBlock(t, want, part.title, part.text)
	}
	if lines := strings.Count(want, "\n"); lines > guideLines {
		t.Errorf("DEVELOPERS.md:%d: the page has %d lines: nobody reads more than %d", guideLines+1, lines, guideLines)
	}
	if shown == want {
		return
	}
	if !*update {
		t.Fatalf("DEVELOPERS.md:%d: stale from here on: run go test ./internal/arch -update", firstDifference(shown, want))
	}
	if err := os.WriteFile(name, []byte(want), 0o644); err != nil {
		t.Fatal(err)
	}
}

// replaceBlock puts a text between the two comments that mark a generated part.
func replaceBlock(t *testing.T, page, title, text string) string {
	t.Helper()
	begin := "<!-- " + title + ": written by `go test ./internal/arch -update` -->\n"
	end := "<!-- /" + title + " -->\n"
	before, rest, begun := strings.Cut(page, begin)
	_, after, ended := strings.Cut(rest, end)
	if !begun || !ended {
		t.Fatalf("DEVELOPERS.md has no block between the lines\n%s%s", begin, end)
	}
	return before + begin + "\n" + text + "\n" + end + after
}

func firstDifference(a, b string) int {
	i := 0
	for i < len(a) && i < len(b) && a[i] == b[i] {
		i++
	}
	return 1 + strings.Count(a[:i], "\n")
}

func read(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(repository, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// requirementExample shows the three places of one requirement.
func requirementExample(t *testing.T, topic, short, profile string) string {
	t.Helper()
	rule := "policy/" + topic + "/" + short
	profileFile := "policy/profiles/" + profile + ".yaml"
	_, rows, found := strings.Cut(read(t, profileFile), "\n  "+topic+"."+short+":\n")
	if !found {
		t.Fatalf("%s has no row for %s.%s", profileFile, topic, short)
	}
	row := "  " + topic + "." + short + ":\n"
	for line := range strings.Lines(rows) {
		if !strings.HasPrefix(line, "    ") {
			break
		}
		row += line
	}
	return fmt.Sprintf("`%s.rego`:\n\n```rego\n%s```\n\n`%s_test.rego`:\n\n```rego\n%s```\n\nand its row in `%s`:\n\n```yaml\n%s```\n",
		rule, read(t, rule+".rego"), rule, read(t, rule+"_test.rego"), profileFile, row)
}

// profileTable lists the fields of a profile as its schema has them.
func profileTable(t *testing.T) string {
	t.Helper()
	doc, err := record.ReadYAML("profile.schema.json", []byte(read(t, "schema/profile.schema.json")), record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	var b strings.Builder
	b.WriteString("| profile field | what it says |\n| --- | --- |\n")
	var list func(prefix string, n *record.Node)
	list = func(prefix string, n *record.Node) {
		properties := n.Get("properties")
		for i := range properties.Len() {
			p := properties.Item(i)
			words := p.Get("description").Text()
			if enum := p.Get("enum"); enum != nil && p.Key() != "basis" {
				var names []string
				for j := range enum.Len() {
					names = append(names, "`"+enum.Item(j).Text()+"`")
				}
				words = strings.TrimSuffix(words, ".") + ": " + strings.Join(names, ", ") + "."
			}
			if !slices.Contains([]string{"documents", "requirements", "source"}, p.Key()) { // their parts say it all
				fmt.Fprintf(&b, "| `%s%s` | %s |\n", prefix, p.Key(), words)
			}
			list(prefix+p.Key()+".", p)
			if each := p.Get("additionalProperties"); each.Get("properties") != nil {
				list(prefix+p.Key()+".*.", each)
			}
		}
	}
	list("", doc.Root)
	return b.String()
}

var (
	codeSpan   = regexp.MustCompile("`([^`\n]+)`")
	pathPrefix = regexp.MustCompile(`^(?:internal|policy|schema|fixtures|cmd|\.ci)/[^ ]*$`)
	testCall   = regexp.MustCompile(`go test (\./[a-z/.]*[a-z.])(?:[^a-z/.<]|$)(?:-run '?([A-Za-z|^$]+)'?)?`)
)

// TestDocumentsNameWhatExists looks up every file and every test run that the
// pages for people mention.
func TestDocumentsNameWhatExists(t *testing.T) {
	for _, page := range []string{"README.md", "DEVELOPERS.md", "CHANGELOG.md", "internal/scaffold/next.txt"} {
		report(t, lostMentions(t, page, read(t, page)))
	}
}

func lostMentions(t *testing.T, page, text string) []string {
	t.Helper()
	var out []string
	line := 0
	for s := range strings.Lines(text) {
		line++
		for _, span := range codeSpan.FindAllStringSubmatch(s, -1) {
			name := span[1]
			if !pathPrefix.MatchString(name) || strings.ContainsAny(name, "<") {
				continue
			}
			if !exists(t, name) {
				out = append(out, fmt.Sprintf("%s:%d: %s does not exist: name what does", page, line, name))
			}
		}
		for _, call := range testCall.FindAllStringSubmatch(s, -1) {
			folder := strings.TrimSuffix(call[1], "/...")
			if folder == "." {
				continue
			}
			tests := testNames(t, folder)
			if len(tests) == 0 {
				out = append(out, fmt.Sprintf("%s:%d: %s has no tests: name a package that has", page, line, folder))
			} else if call[2] != "" && !slices.ContainsFunc(tests, regexp.MustCompile(call[2]).MatchString) {
				out = append(out, fmt.Sprintf("%s:%d: no test of %s is called like %s: name one that is", page, line, folder, call[2]))
			}
		}
	}
	return out
}

// exists tells whether a path is there; it may hold wildcards and alternatives.
func exists(t *testing.T, name string) bool {
	t.Helper()
	before, rest, alternatives := strings.Cut(name, "{")
	if alternatives {
		list, after, _ := strings.Cut(rest, "}")
		for one := range strings.SplitSeq(list, ",") {
			if !exists(t, before+one+after) {
				return false
			}
		}
		return true
	}
	found, err := filepath.Glob(filepath.Join(repository, filepath.FromSlash(name)))
	if err != nil {
		t.Fatal(err)
	}
	return len(found) > 0
}

var testFunc = regexp.MustCompile(`(?m)^func (Test[A-Za-z0-9]+)\(`)

func testNames(t *testing.T, folder string) []string {
	t.Helper()
	files, err := filepath.Glob(filepath.Join(repository, filepath.FromSlash(folder), "*_test.go"))
	if err != nil {
		t.Fatal(err)
	}
	var names []string
	for _, file := range files {
		data, err := os.ReadFile(file)
		if err != nil {
			t.Fatal(err)
		}
		for _, m := range testFunc.FindAllStringSubmatch(string(data), -1) {
			names = append(names, m[1])
		}
	}
	return names
}

func TestLostMentionsAreFound(t *testing.T) {
	for text, want := range map[string]string{
		"see `internal/arch/doc.go` and `go test ./internal/arch -run Lost`\n":   "",
		"`policy/*/*_test.rego` and `internal/{airflow,radon}`\n":                "",
		"\nsee `internal/arch/docs.go`\n":                                        "page:2: internal/arch/docs.go does not exist: name what does",
		"`internal/{airflow,raddon}`\n":                                          "page:1: internal/{airflow,raddon} does not exist",
		"run go test ./internal/arc -update\n":                                   "page:1: ./internal/arc has no tests",
		"run go test ./internal/arch -run 'Found|Lots' and ./internal/arch\n":    "",
		"\n\nrun go test ./internal/rulebook -run 'Foormatted|Imaage' -update\n": "page:3: no test of ./internal/rulebook is called like Foormatted|Imaage",
	} {
		found := strings.Join(lostMentions(t, "page", text), "\n")
		if (want == "") != (found == "") || !strings.Contains(found, want) {
			t.Errorf("%q: want %q, found %q", text, want, found)
		}
	}
}
