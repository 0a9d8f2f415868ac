package gate

import (
	"context"
	"errors"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// office is a real repository made for one test.
type office struct {
	*testing.T
	dir string
}

func newOffice(t *testing.T, options ...string) office {
	t.Helper()
	t.Setenv("GIT_CONFIG_GLOBAL", os.DevNull)
	t.Setenv("GIT_CONFIG_NOSYSTEM", "1")
	for _, who := range []string{"AUTHOR", "COMMITTER"} {
		t.Setenv("GIT_"+who+"_NAME", "Office")
		t.Setenv("GIT_"+who+"_EMAIL", "office@example.test")
	}
	o := office{t, filepath.Join(t.TempDir(), "büro mit leer")}
	if err := os.MkdirAll(o.dir, 0o755); err != nil {
		t.Fatal(err)
	}
	o.git(append([]string{"init", "-q", "-b", "main"}, options...)...)
	return o
}

// try runs git, which may fail.
func (o office) try(args ...string) (string, error) {
	cmd := exec.Command("git", args...)
	cmd.Dir = o.dir
	out, err := cmd.CombinedOutput()
	return strings.TrimSuffix(string(out), "\n"), err
}

// ctx outlives the test, so that git ends when it is told and not with it.
func (o office) ctx() context.Context { return context.WithoutCancel(o.Context()) }

func (o office) git(args ...string) string {
	o.Helper()
	out, err := o.try(args...)
	if err != nil {
		o.Fatalf("git %s: %v\n%s", strings.Join(args, " "), err, out)
	}
	return out
}

func (o office) write(name, text string) {
	o.Helper()
	file := filepath.Join(o.dir, filepath.FromSlash(name))
	if err := errors.Join(os.MkdirAll(filepath.Dir(file), 0o755), os.WriteFile(file, []byte(text), 0o644)); err != nil {
		o.Fatal(err)
	}
}

func (o office) commit(message string) {
	o.Helper()
	o.git("add", "-A")
	o.git("commit", "-q", "--allow-empty", "-m", message)
}

func (o office) open() *Repository {
	o.Helper()
	r, err := Open(o.ctx(), o.dir)
	if err != nil {
		o.Fatal(err)
	}
	o.Cleanup(func() {
		if err := r.Close(); err != nil {
			o.Error(err)
		}
	})
	return r
}

// told is a difference as a person would tell it: "+ new", "- gone",
// "~ was > is", with contents.
func (o office) told(r *Repository, d Difference, err error) []string {
	o.Helper()
	if err != nil {
		o.Fatal(err)
	}
	content := func(object string) string {
		data, err := r.Content(o.ctx(), object)
		if err != nil {
			o.Fatal(err)
		}
		return string(data)
	}
	var out []string
	for _, c := range d.Changes {
		switch {
		case c.Link:
			out = append(out, "@ "+c.Path)
		case c.Old == "":
			out = append(out, fmt.Sprintf("+ %s: %s", c.Path, content(c.New)))
		case c.New == "":
			out = append(out, fmt.Sprintf("- %s: %s", c.Path, content(c.Old)))
		default:
			out = append(out, fmt.Sprintf("~ %s: %s > %s", c.Path, content(c.Old), content(c.New)))
		}
	}
	slices.Sort(out)
	return out
}

func (o office) staged() []string {
	o.Helper()
	r := o.open()
	d, err := r.Staged(o.ctx())
	return o.told(r, d, err)
}

func (o office) since(revision string) []string {
	o.Helper()
	r := o.open()
	d, err := r.Since(o.ctx(), revision)
	return o.told(r, d, err)
}

func (o office) want(what string, got []string, want ...string) {
	o.Helper()
	if diff := cmp.Diff(want, got, cmp.Transformer("nothing", func(l []string) string { return strings.Join(l, "\n") })); diff != "" {
		o.Errorf("%s:\n%s", what, diff)
	}
}

// inBothFormats runs a story in repositories with short and with long object
// names; git knows the long ones since 2.29.
func inBothFormats(t *testing.T, story func(o office)) {
	for _, format := range []string{"sha1", "sha256"} {
		t.Run(format, func(t *testing.T) { story(newOffice(t, "--object-format="+format)) })
	}
}
