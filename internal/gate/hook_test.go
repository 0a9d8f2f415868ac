package gate

import (
	"errors"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
)

// asked is the command that the hooks run in these tests: it counts its calls
// and refuses when the file "hold" is staged.
const asked = "sh -c 'echo asked >> \"$(git rev-parse --git-common-dir)/asked\"; ! git cat-file -e :hold 2>/dev/null'"

func (o office) install() []string {
	o.Helper()
	files, err := o.open().InstallHook(o.ctx(), asked)
	if err != nil {
		o.Fatal(err)
	}
	return files
}

// calls is how often the gate was asked.
func (o office) calls() int {
	o.Helper()
	data, err := os.ReadFile(filepath.Join(o.dir, o.git("rev-parse", "--git-common-dir"), "asked"))
	if err != nil && !os.IsNotExist(err) {
		data, err = os.ReadFile(filepath.Join(o.git("rev-parse", "--git-common-dir"), "asked"))
	}
	if err != nil && !os.IsNotExist(err) {
		o.Fatal(err)
	}
	return strings.Count(string(data), "asked")
}

func (o office) script(name, text string, mode os.FileMode) {
	o.Helper()
	file := filepath.Join(o.dir, name)
	if err := errors.Join(os.MkdirAll(filepath.Dir(file), 0o755), os.WriteFile(file, []byte(text), 0o644), os.Chmod(file, mode)); err != nil {
		o.Fatal(err)
	}
}

func (o office) refuses(what string, args ...string) {
	o.Helper()
	if out, err := o.try(args...); err == nil {
		o.Errorf("%s: the commit went through\n%s", what, out)
	}
}

func TestHookHoldsACommit(t *testing.T) {
	o := newOffice(t)
	files := o.install()
	if len(files) != 2 {
		t.Errorf("%q", files)
	}
	o.commit("start")
	if o.calls() != 1 {
		t.Errorf("asked %d times", o.calls())
	}
	o.write("hold", "")
	o.git("add", "-A")
	o.refuses("a commit", "commit", "-q", "-m", "no")
	o.git("reset", "-q")

	o.git("commit", "-q", "--allow-empty", "-m", "fine again")
	// A commit of named files has an index of its own, which the hook must see.
	o.write("other", "")
	o.git("add", "other")
	o.refuses("a commit of a named file", "commit", "-q", "-m", "no", "--", "hold", "other")
	o.git("reset", "-q")
	o.git("add", "hold")
	o.git("commit", "-q", "--no-verify", "-m", "by force")
}

// A merge that git commits by itself asks too.
func TestHookHoldsAMerge(t *testing.T) {
	o := newOffice(t)
	o.commit("start")
	o.git("checkout", "-q", "-b", "work")
	o.write("hold", "")
	o.commit("before the gate was there")
	o.git("checkout", "-q", "main")
	o.commit("main goes on")
	o.install()
	o.refuses("a merge", "merge", "-q", "--no-edit", "work")
	if o.calls() == 0 {
		t.Error("nobody asked")
	}
}

func TestOlderHookRunsFirst(t *testing.T) {
	for _, tt := range []struct {
		name, text string
		mode       os.FileMode
		ran, holds bool
	}{
		{"shell that exits", "#!/bin/sh\necho \"$0 $#\" > ran\nexit 0\n", 0o755, true, false},
		{"shell without a last newline", "#!/bin/sh\ntouch ran", 0o755, true, false},
		{"refuses", "#!/bin/sh\ntouch ran\nexit 3\n", 0o755, true, true},
		{"another language", "#!/usr/bin/env -S awk -f\nBEGIN { print \"x\" > \"ran\" }\n", 0o755, true, false},
		{"switched off", "#!/bin/sh\ntouch ran\n", 0o644, false, false},
	} {
		t.Run(tt.name, func(t *testing.T) {
			o := newOffice(t)
			o.script(".git/hooks/pre-commit", tt.text, tt.mode)
			o.install()
			o.install() // twice is once
			_, err := o.try("commit", "-q", "--allow-empty", "-m", "x")
			if (err != nil) != tt.holds {
				t.Errorf("holds: %v", err)
			}
			if _, err := os.Stat(filepath.Join(o.dir, "ran")); (err == nil) != tt.ran {
				t.Errorf("the older hook: %v", err)
			}
			if want := map[bool]int{true: 0, false: 1}[tt.holds]; o.calls() != want {
				t.Errorf("asked %d times", o.calls())
			}
			old, err := os.ReadFile(filepath.Join(o.dir, ".git/hooks/pre-commit"+kept))
			if err != nil || string(old) != tt.text {
				t.Errorf("kept %q, %v", old, err)
			}
		})
	}
}

// A hook that is a link to a script under version control stays that script.
func TestLinkedHook(t *testing.T) {
	o := newOffice(t)
	o.script("tools/check.sh", "#!/bin/sh\ntouch ran\n", 0o755)
	if err := errors.Join(os.MkdirAll(filepath.Join(o.dir, ".git/hooks"), 0o755),
		os.Symlink("../../tools/check.sh", filepath.Join(o.dir, ".git/hooks/pre-commit"))); err != nil {
		t.Fatal(err)
	}
	o.install()
	o.commit("x")
	if _, err := os.Stat(filepath.Join(o.dir, "ran")); err != nil || o.calls() != 1 {
		t.Errorf("%v, asked %d times", err, o.calls())
	}
	if text, err := os.ReadFile(filepath.Join(o.dir, "tools/check.sh")); err != nil || strings.Contains(string(text), mark) {
		t.Errorf("the script was written to: %q, %v", text, err)
	}
}

// When another tool has put its hook over the gate's, neither is lost.
func TestThirdHookIsNotLost(t *testing.T) {
	o := newOffice(t)
	o.script(".git/hooks/pre-commit", "#!/bin/sh\nexit 0\n", 0o755)
	o.install()
	o.script(".git/hooks/pre-commit", "#!/bin/sh\nexit 1\n", 0o755)
	if _, err := o.open().InstallHook(o.ctx(), asked); err == nil || !strings.Contains(err.Error(), kept) {
		t.Errorf("%v", err)
	}
}

func TestHooksPath(t *testing.T) {
	o := newOffice(t)
	o.git("config", "core.hooksPath", "tools/hooks")
	o.script("tools/hooks/pre-commit", "#!/bin/sh\ntouch ran\n", 0o755)
	files := o.install()
	if want := filepath.Join("tools", "hooks", "pre-commit"); !strings.HasSuffix(files[0], want) {
		t.Errorf("installed in %q", files)
	}
	o.write("hold", "")
	o.git("add", "hold")
	o.refuses("a commit", "commit", "-q", "-m", "no")
	if _, err := os.Stat(filepath.Join(o.dir, "ran")); err != nil {
		t.Error(err)
	}

	shared := t.TempDir() // serves other repositories
	o.git("config", "core.hooksPath", shared)
	if files, err := o.open().InstallHook(o.ctx(), asked); err == nil || !strings.Contains(err.Error(), "core.hooksPath") {
		t.Errorf("%q, %v", files, err)
	}
	if entries, err := os.ReadDir(shared); err != nil || len(entries) != 0 {
		t.Errorf("%v, %v", entries, err)
	}
}

// A hook serves all worktrees of a repository, and a submodule has its own.
func TestHookInWorktreeAndSubmodule(t *testing.T) {
	o := newOffice(t)
	o.commit("start")
	other := office{t, o.dir + " two"}
	o.git("worktree", "add", "-q", other.dir, "-b", "two")
	other.install()
	for _, tree := range []office{o, other} {
		tree.write("hold", "")
		tree.git("add", "hold")
		tree.refuses("a worktree", "commit", "-q", "-m", "no")
	}

	part := newOffice(t)
	part.commit("part")
	o.git("rm", "-q", "--cached", "hold")
	o.git("-c", "protocol.file.allow=always", "submodule", "--quiet", "add", part.dir, "part")
	inner := office{t, filepath.Join(o.dir, "part")}
	inner.git("commit", "-q", "--allow-empty", "-m", "no gate here yet")
	inner.install()
	inner.write("hold", "")
	inner.git("add", "hold")
	inner.refuses("a submodule", "commit", "-q", "-m", "no")
}

func TestQuote(t *testing.T) {
	for _, word := range []string{"north/slablint.yaml", "a b", "it's", "$(x) `y` \"z\"", "näh\n"} {
		out, err := exec.Command("sh", "-c", "printf %s "+Quote(word)).Output()
		if err != nil || string(out) != word {
			t.Errorf("%q became %q, %v", word, out, err)
		}
	}
}
