package gate

import (
	"context"
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
)

func TestBeforeTheFirstCommit(t *testing.T) {
	inBothFormats(t, func(o office) {
		o.want("nothing staged", o.staged())
		o.write("jobs/a.yaml", "a")
		o.want("not staged", o.staged())
		o.git("add", ".")
		o.want("staged", o.staged(), "+ jobs/a.yaml: a")
	})
}

func TestTheIndexCountsNotTheWorkingTree(t *testing.T) {
	inBothFormats(t, func(o office) {
		o.write("jobs/a.yaml", "one")
		o.write("jobs/gone.yaml", "gone")
		o.commit("start")
		o.write("jobs/a.yaml", "two")
		o.git("add", ".")
		o.write("jobs/a.yaml", "three") // the other half is not staged
		o.write("jobs/new.yaml", "not staged")
		o.git("rm", "-q", "--cached", "jobs/gone.yaml") // the file is still there
		o.want("half staged", o.staged(), "- jobs/gone.yaml: gone", "~ jobs/a.yaml: one > two")
		o.git("add", "--intent-to-add", "jobs/new.yaml") // named, with nothing in it yet
		o.want("named for later", o.staged(), "- jobs/gone.yaml: gone", "~ jobs/a.yaml: one > two")
	})
}

// A part of a file can be staged by hunk.
func TestHalfAFileStaged(t *testing.T) {
	o := newOffice(t)
	lines := strings.Split("a b c d e f g h i j k l m n o p", " ")
	o.write("a.yaml", strings.Join(lines, "\n")+"\n")
	o.commit("start")
	lines[0], lines[15] = "first", "last"
	o.write("a.yaml", strings.Join(lines, "\n")+"\n")
	cmd := exec.Command("git", "add", "-p")
	cmd.Dir = o.dir
	cmd.Stdin = strings.NewReader("y\nn\n")
	if out, err := cmd.CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	r := o.open()
	d, err := r.Staged(o.ctx())
	if err != nil || len(d.Changes) != 1 {
		t.Fatalf("%v, %v", d.Changes, err)
	}
	got, err := r.Content(o.ctx(), d.Changes[0].New)
	if err != nil || !strings.HasPrefix(string(got), "first\n") || !strings.HasSuffix(string(got), "p\n") {
		t.Errorf("%q, %v", got, err)
	}
}

// Every name that git can hold arrives as it is.
func TestNames(t *testing.T) {
	inBothFormats(t, func(o office) {
		o.commit("start")
		var want []string
		for _, name := range []string{
			"jobs/a b.yaml", "jobs/näher dran.yaml", "jobs/日本.yaml", "jobs/-rf.yaml", "jobs/\"q\" 'q'.yaml", "jobs/tab\there.yaml",
			"jobs/two\nlines.yaml", "jobs/back\\slash.yaml", "jobs/:1:stage.yaml", "jobs/$(x).yaml", "jobs/nicht\xfcutf8.yaml", "*.yaml",
		} {
			o.write(name, "x")
			want = append(want, "+ "+name+": x")
		}
		slices.Sort(want)
		o.git("add", "-A")
		o.want("names", o.staged(), want...)
		r := o.open()
		d, err := r.Staged(o.ctx())
		if err != nil {
			o.Fatal(err)
		}
		for _, c := range d.Changes {
			if data, err := fs.ReadFile(r.Files(o.ctx(), d.New, "."), c.Path); strings.Contains(c.Path, "\xfc") != errors.Is(err, fs.ErrInvalid) || err == nil && string(data) != "x" {
				o.Errorf("%q by name: %q, %v", c.Path, data, err) // fs.FS allows UTF-8 only
			}
		}
	})
}

func TestRenamesCopiesAndModes(t *testing.T) {
	o := newOffice(t)
	o.write("old name.yaml", strings.Repeat("same\n", 40))
	o.write("tool.yaml", "x")
	o.commit("start")
	o.git("mv", "old name.yaml", "new name.yaml")
	o.git("update-index", "--chmod=+x", "tool.yaml")
	r := o.open()
	d, err := r.Staged(o.ctx())
	if err != nil {
		t.Fatal(err)
	}
	if len(d.Changes) != 3 { // a rename is a file gone and a file new, so that the new one is judged
		t.Errorf("%+v", d.Changes)
	}
	for _, c := range d.Changes {
		if c.Path == "tool.yaml" && c.Old != c.New {
			t.Errorf("the content did not change: %+v", c)
		}
	}
}

func TestLinksAndSubmodulesAreNoFiles(t *testing.T) {
	o := newOffice(t)
	o.write("jobs/a.yaml", "a")
	o.write("jobs/b.yaml", "b")
	o.commit("start")
	other := newOffice(t)
	other.write("jobs/inner.yaml", "inner")
	other.commit("inner")
	o.git("-c", "protocol.file.allow=always", "submodule", "--quiet", "add", other.dir, "partner.yaml")
	if err := errors.Join(os.Remove(filepath.Join(o.dir, "jobs/b.yaml")), os.Symlink("a.yaml", filepath.Join(o.dir, "jobs/b.yaml")),
		os.Symlink("jobs", filepath.Join(o.dir, "more"))); err != nil {
		t.Fatal(err)
	}
	o.git("add", "-A")
	var got []string
	for _, line := range o.staged() {
		if !strings.Contains(line, ".gitmodules") {
			got = append(got, line)
		}
	}
	o.want("links", got, "@ jobs/b.yaml", "@ more")

	// Inside the submodule the gate sees the submodule.
	inner := office{t, filepath.Join(o.dir, "partner.yaml")}
	inner.write("jobs/inner.yaml", "changed")
	inner.git("add", "-A")
	inner.want("in the submodule", inner.staged(), "~ jobs/inner.yaml: inner > changed")
}

func TestSinceABranchLeft(t *testing.T) {
	inBothFormats(t, func(o office) {
		o.write("jobs/a.yaml", "a")
		o.commit("start")
		o.git("checkout", "-q", "-b", "work")
		o.write("jobs/b.yaml", "b")
		o.commit("b")
		o.git("checkout", "-q", "main")
		o.write("jobs/other.yaml", "other")
		o.commit("main goes on")
		o.git("checkout", "-q", "work")
		o.write("jobs/a.yaml", "not committed")
		o.git("add", "-A")
		o.want("since main", o.since("main"), "+ jobs/b.yaml: b") // neither main's nor the index's
		o.git("reset", "-q", "--hard")
		o.git("merge", "-q", "--no-edit", "main")
		o.want("since main, merged", o.since("main"), "+ jobs/b.yaml: b")
		o.want("since the start", o.since("main~1"), "+ jobs/b.yaml: b", "+ jobs/other.yaml: other")

		bare := office{o.T, o.dir + ".git"}
		o.git("clone", "-q", "--bare", o.dir, bare.dir)
		bare.want("in a bare clone", bare.since("main"), "+ jobs/b.yaml: b")
		r := bare.open()
		if r.Top != "" || r.Prefix != "." {
			o.Errorf("a bare repository has the working tree %q, %q", r.Top, r.Prefix)
		}
		if _, err := r.InstallHook(o.ctx(), "true"); err == nil {
			o.Error("a hook was installed where nobody commits")
		}
		if d, err := r.Staged(o.ctx()); err == nil {
			o.Errorf("an index where nobody commits: %+v", d)
		}
	})
}

func TestSinceAnUnknownPast(t *testing.T) {
	o := newOffice(t)
	o.commit("start")
	o.git("checkout", "-q", "--orphan", "alone")
	o.commit("another start")
	r := o.open()
	for _, revision := range []string{"main", "nowhere", "--help", "", "HEAD:jobs"} {
		if d, err := r.Since(o.ctx(), revision); err == nil {
			t.Errorf("since %q: %+v", revision, d)
		}
	}
}

// A merge brings in what the other branch changed; one with conflicts is not
// judged before they are resolved.
func TestMerge(t *testing.T) {
	o := newOffice(t)
	o.write("jobs/a.yaml", "a")
	o.commit("start")
	o.git("checkout", "-q", "-b", "work")
	o.write("jobs/b.yaml", "b")
	o.write("jobs/a.yaml", "theirs")
	o.commit("work")
	o.git("checkout", "-q", "main")
	o.write("jobs/a.yaml", "ours")
	o.commit("main goes on")
	if out, err := o.try("merge", "work"); err == nil {
		t.Fatalf("no conflict: %s", out)
	}
	r := o.open()
	if _, err := r.Staged(o.ctx()); err == nil || !strings.Contains(err.Error(), "unmerged") {
		t.Errorf("conflicts: %v", err)
	}
	o.write("jobs/a.yaml", "both")
	o.git("add", "-A")
	o.want("resolved", o.staged(), "+ jobs/b.yaml: b", "~ jobs/a.yaml: ours > both")
}

func TestWorktreeAndFolderBelow(t *testing.T) {
	o := newOffice(t)
	o.write("north/jobs/a.yaml", "a")
	o.commit("start")
	other := office{t, o.dir + " two"}
	o.git("worktree", "add", "-q", other.dir, "-b", "two")
	other.write("north/jobs/b.yaml", "b")
	other.git("add", "-A")
	o.want("here", o.staged())
	below := office{t, filepath.Join(other.dir, "north", "jobs")}
	below.want("there", below.staged(), "+ north/jobs/b.yaml: b")
	if r := below.open(); r.Prefix != "north/jobs" || filepath.Base(r.Top) != filepath.Base(other.dir) {
		t.Errorf("top %q, prefix %q", r.Top, r.Prefix)
	}
	if _, err := Open(o.ctx(), t.TempDir()); err == nil {
		t.Error("a folder without a repository was opened")
	}
}

// What git has beside a record is read as the state has it.
func TestFilesOfAState(t *testing.T) {
	o := newOffice(t)
	o.write("jobs/photos/one.jpg", "first")
	o.write("jobs/photos.txt", "list")
	o.write("jobs/a.yaml", "a")
	o.commit("start")
	o.write("jobs/photos/one.jpg", "second")
	if err := os.Symlink("photos/one.jpg", filepath.Join(o.dir, "jobs", "cover.jpg")); err != nil {
		t.Fatal(err)
	}
	o.git("add", "-A")
	o.write("jobs/photos/one.jpg", "third")
	r := o.open()
	d, err := r.Staged(o.ctx())
	if err != nil {
		t.Fatal(err)
	}
	for state, want := range map[string]string{d.New: "second", d.Old: "first"} {
		got, err := fs.ReadFile(r.Files(o.ctx(), state, "jobs"), "photos/one.jpg")
		if err != nil || string(got) != want {
			t.Errorf("%s: %q, %v", state, got, err)
		}
	}
	staged := r.Files(o.ctx(), d.New, "jobs")
	if got, err := fs.ReadFile(staged, "cover.jpg"); err != nil || string(got) != "second" {
		t.Errorf("a link inside the repository: %q, %v", got, err)
	}
	if err := fstest.TestFS(r.Files(o.ctx(), "HEAD", "jobs"), "a.yaml", "photos.txt", "photos/one.jpg"); err != nil {
		t.Error(err)
	}
	for _, name := range []string{"none.jpg", "photos", "../jobs/a.yaml", "/etc/passwd", "a.yaml/b"} {
		if _, err := fs.ReadFile(staged, name); err == nil {
			t.Errorf("%s was read", name)
		}
	}
	if _, err := fs.ReadFile(staged, "none.jpg"); !errors.Is(err, fs.ErrNotExist) {
		t.Errorf("a missing file is %v", err)
	}
}

// Git gone in the middle is an error, for this content and all that follow.
func TestGitGoneIsAnError(t *testing.T) {
	o := newOffice(t)
	o.write("a.yaml", "a")
	o.commit("start")
	r, err := Open(o.ctx(), o.dir)
	if err != nil {
		t.Fatal(err)
	}
	ctx, cancel := context.WithCancel(t.Context())
	if _, err := r.Content(ctx, "HEAD:a.yaml"); err != nil {
		t.Fatal(err)
	}
	cancel()
	for err == nil { // until git is really gone
		_, err = r.Content(o.ctx(), "HEAD:a.yaml")
	}
	for range 2 {
		if data, err := r.Content(o.ctx(), "HEAD:a.yaml"); err == nil || errors.Is(err, fs.ErrNotExist) {
			t.Errorf("%q, %v", data, err)
		}
	}
	if r.Close() == nil {
		t.Error("nobody says that git was stopped")
	}
}
