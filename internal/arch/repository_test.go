package arch

import (
	"bytes"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
)

// topLevel are the entries of the repository's top folder; a new one changes
// the layout that everybody knows, so it is agreed on first.
var topLevel = []string{
	".ci", ".gitattributes", ".gitignore", ".golangci.yml", "CHANGELOG.md", "DEVELOPERS.md", "LICENSE", "README.md",
	"cmd", "fixtures", "go.mod", "go.sum", "internal", "policy", "schema",
}

// longFiles are the Go files of more than maxLines lines, each with the reason.
var longFiles = map[string]string{}

// maxLines is what one can still read in one go.
const maxLines = 400

// forbidden are texts that no tracked file may hold. Each pattern is written
// so that it does not find itself.
var forbidden = []struct {
	pattern *regexp.Regexp
	files   *regexp.Regexp
	advice  string
}{
	{
		regexp.MustCompile(`(^|[^A-Za-z0-9_./-])/(?:work|root|home|Users)/`), regexp.MustCompile(``),
		"a path of somebody's machine: make it relative to the repository",
	},
	{
		regexp.MustCompile(`\b(?:proxy|registry|deb)\.[a-z-]+\.(?:org|com|io)\b`), regexp.MustCompile(``),
		"the address of a package registry: leave that to the reader's own setup",
	},
	{
		regexp.MustCompile(`TO[D]O|FIX[M]E`), regexp.MustCompile(``),
		"unfinished work: finish it, or write the issue",
	},
	{
		regexp.MustCompile(`\b[tbf]\.Skip(?:f|Now)?\(`), regexp.MustCompile(`_test\.go$`),
		"a skipped test counts as a pass: make it run or delete it",
	},
}

// trackedFiles reads every file of the repository by its slash-separated path:
// what git tracks or, outside a checkout, all there is. It walks the tree
// either way, so that the go command sees which files this test depends on and
// does not answer from its cache after one has changed.
func trackedFiles(t *testing.T) map[string][]byte {
	t.Helper()
	tracked := gitFiles()
	files := map[string][]byte{}
	err := filepath.WalkDir(repository, func(name string, entry fs.DirEntry, err error) error {
		if errors.Is(err, fs.ErrNotExist) {
			return nil // the tests of a neighbour may come and go
		} else if err != nil {
			return err
		}
		rel, err := filepath.Rel(repository, name)
		if err != nil {
			return err
		}
		rel = filepath.ToSlash(rel)
		switch {
		case rel == ".git":
			return skip(entry)
		case !entry.Type().IsRegular(), tracked != nil && !tracked[rel]:
			return nil
		}
		files[rel], err = os.ReadFile(name)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

// skip leaves a folder out of a walk; in a linked work tree .git is a file.
func skip(entry fs.DirEntry) error {
	if entry.IsDir() {
		return filepath.SkipDir
	}
	return nil
}

// gitFiles lists what git tracks, or nothing when the repository's top folder
// is not the top of a checkout.
func gitFiles() map[string]bool {
	git := func(args ...string) (string, error) {
		out, err := exec.Command("git", append([]string{"-C", repository}, args...)...).Output()
		return string(out), err
	}
	if prefix, err := git("rev-parse", "--show-prefix"); err != nil || strings.TrimSpace(prefix) != "" {
		return nil
	}
	list, err := git("ls-files", "-z")
	if err != nil || list == "" {
		return nil
	}
	files := map[string]bool{}
	for name := range strings.SplitSeq(strings.TrimSuffix(list, "\x00"), "\x00") {
		files[name] = true
	}
	return files
}

func TestTopFolderIsAsAgreed(t *testing.T) { report(t, topMistakes(trackedFiles(t), topLevel)) }

func topMistakes(files map[string][]byte, topLevel []string) []string {
	var out []string
	found := map[string]bool{}
	for name := range files {
		first, _, _ := strings.Cut(name, "/")
		found[first] = true
	}
	for _, name := range slices.Sorted(maps.Keys(found)) {
		if !slices.Contains(topLevel, name) {
			out = append(out, name+" is not an agreed top-level entry: put it where it belongs, or agree on it and add it to topLevel in internal/arch/repository_test.go")
		}
	}
	for _, name := range topLevel {
		if !found[name] {
			out = append(out, name+" is missing from the top folder: bring it back, or strike it from topLevel in internal/arch/repository_test.go")
		}
	}
	return out
}

func TestNoForbiddenTexts(t *testing.T) { report(t, textMistakes(trackedFiles(t))) }

func textMistakes(files map[string][]byte) []string {
	var out []string
	for _, name := range slices.Sorted(maps.Keys(files)) {
		data := files[name]
		if path.Base(name) == "go.sum" || bytes.IndexByte(data, 0) >= 0 {
			continue // checksums and pictures are not written by people
		}
		for _, f := range forbidden {
			if !f.files.MatchString(name) {
				continue
			}
			for _, at := range f.pattern.FindAllIndex(data, 5) {
				line := 1 + bytes.Count(data[:at[0]], []byte("\n"))
				out = append(out, fmt.Sprintf("%s:%d: %q: %s", name, line, data[at[0]:at[1]], f.advice))
			}
		}
	}
	return out
}

func TestGoFilesAreShortEnoughToRead(t *testing.T) {
	report(t, lengthMistakes(trackedFiles(t), longFiles))
}

func lengthMistakes(files map[string][]byte, longFiles map[string]string) []string {
	var out []string
	for _, name := range slices.Sorted(maps.Keys(files)) {
		if path.Ext(name) != ".go" {
			continue
		}
		lines := bytes.Count(files[name], []byte("\n"))
		switch reason := longFiles[name]; {
		case lines > maxLines && reason == "":
			out = append(out, fmt.Sprintf("%s:%d: the file has %d lines: split it by subject (at most %d), or list it in longFiles with the reason", name, maxLines+1, lines, maxLines))
		case lines <= maxLines && reason != "":
			out = append(out, fmt.Sprintf("%s is down to %d lines: strike it from longFiles", name, lines))
		}
	}
	for _, name := range slices.Sorted(maps.Keys(longFiles)) {
		if files[name] == nil {
			out = append(out, name+" is listed in longFiles but does not exist: strike it")
		}
	}
	return out
}
