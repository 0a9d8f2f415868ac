package replace

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"testing"
	"time"
)

func text(s string) func(io.Writer) error {
	return func(out io.Writer) error { _, err := io.WriteString(out, s); return err }
}

func put(t *testing.T, path, s string, mode fs.FileMode) {
	t.Helper()
	if err := os.WriteFile(path, []byte(s), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := os.Chmod(path, mode); err != nil {
		t.Fatal(err)
	}
}

func content(t *testing.T, path string) string {
	t.Helper()
	data, err := os.ReadFile(path)
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

func names(t *testing.T, folder string) []string {
	t.Helper()
	entries, err := os.ReadDir(folder)
	if err != nil {
		t.Fatal(err)
	}
	var out []string
	for _, e := range entries {
		out = append(out, e.Name())
	}
	return out
}

func TestNewAndOldFile(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "r.json")
	for _, s := range []string{"first", "", strings.Repeat("second", 100_000)} {
		if err := File(path, text(s)); err != nil {
			t.Fatal(err)
		}
		if got := content(t, path); got != s {
			t.Errorf("%d bytes, want %d", len(got), len(s))
		}
	}
	if got := names(t, folder); !slices.Equal(got, []string{"r.json"}) {
		t.Errorf("left behind: %q", got)
	}
}

// Whatever goes wrong while writing, the old file stays and nothing lies about.
func TestFailureKeepsTheOldFile(t *testing.T) {
	folder := t.TempDir()
	path := filepath.Join(folder, "r.json")
	put(t, path, "old", 0o640)
	full := errors.New("no space left on device")
	for name, write := range map[string]func(io.Writer) error{
		"at once": func(io.Writer) error { return full },
		"half-way": func(out io.Writer) error {
			return errors.Join(text(strings.Repeat("x", 1<<20))(out), full)
		},
	} {
		err := File(path, write)
		if !errors.Is(err, full) || !strings.Contains(err.Error(), path+" was not written: ") {
			t.Errorf("%s: %v", name, err)
		}
		if got := content(t, path); got != "old" {
			t.Errorf("%s: the file is now %.20q", name, got)
		}
	}
	if got := names(t, folder); !slices.Equal(got, []string{"r.json"}) {
		t.Errorf("left behind: %q", got)
	}
}

func TestPermissionsAreKept(t *testing.T) {
	path := filepath.Join(t.TempDir(), "r.json")
	for _, mode := range []fs.FileMode{0o600, 0o644, 0o666} {
		put(t, path, "old", mode)
		if err := File(path, text("new")); err != nil {
			t.Fatal(err)
		}
		info, err := os.Stat(path)
		if err != nil || info.Mode().Perm() != mode {
			t.Errorf("%v became %v (%v)", mode, info.Mode().Perm(), err)
		}
	}
}

// What is to be run can be run, also in the place of what could not be.
func TestPrograms(t *testing.T) {
	path := filepath.Join(t.TempDir(), "hook")
	for _, before := range []fs.FileMode{0, 0o644, 0o755} {
		if before != 0 {
			put(t, path, "old", before)
		}
		if err := Program(path, text("new")); err != nil {
			t.Fatal(err)
		}
		info, err := os.Stat(path)
		if err != nil || info.Mode().Perm()&0o500 != 0o500 || content(t, path) != "new" {
			t.Errorf("after %v: %v (%v)", before, info.Mode(), err)
		}
	}
}

func TestLinksAreFollowed(t *testing.T) {
	folder, other := t.TempDir(), t.TempDir()
	target, link := filepath.Join(other, "real.json"), filepath.Join(folder, "r.json")
	put(t, target, "old", 0o644)
	if err := os.Symlink(target, link); err != nil {
		t.Fatal(err)
	}
	if err := File(link, text("new")); err != nil {
		t.Fatal(err)
	}
	if info, err := os.Lstat(link); err != nil || info.Mode()&fs.ModeSymlink == 0 {
		t.Errorf("the link is gone: %v", err)
	}
	if got := content(t, target); got != "new" {
		t.Errorf("behind the link: %q", got)
	}
}

// A folder is refused, a device is written to and never replaced: renaming over
// it would take it away from every other program.
func TestWhatIsNoPlainFile(t *testing.T) {
	folder := t.TempDir()
	if err := File(folder, text("x")); err == nil || !strings.Contains(err.Error(), "is a folder") {
		t.Error(err)
	}
	if err := File(filepath.Join(folder, "none", "r.json"), text("x")); !errors.Is(err, fs.ErrNotExist) {
		t.Error(err)
	}
	if err := File(os.DevNull, text("x")); err != nil {
		t.Error(err)
	}
	if info, err := os.Stat(os.DevNull); err != nil || info.Mode().IsRegular() {
		t.Errorf("%s is no device any more (%v)", os.DevNull, err)
	}
}

func TestStaleTemporariesGo(t *testing.T) {
	folder := t.TempDir()
	long := time.Now().Add(-2 * staleAfter)
	for name, old := range map[string]bool{
		".r.json.17-0.unfinished":  true,
		".r.json.18-0.unfinished":  false, // its writer may still be at work
		".rr.json.17-0.unfinished": true,  // another file's
		".r.json.bak.unfinished":   true,  // not ours
		".r.json.17-0":             true,
	} {
		put(t, filepath.Join(folder, name), "half", 0o600)
		if old {
			if err := os.Chtimes(filepath.Join(folder, name), long, long); err != nil {
				t.Fatal(err)
			}
		}
	}
	if err := File(filepath.Join(folder, "r.json"), text("x")); err != nil {
		t.Fatal(err)
	}
	want := []string{".r.json.17-0", ".r.json.18-0.unfinished", ".r.json.bak.unfinished", ".rr.json.17-0.unfinished", "r.json"}
	if got := names(t, folder); !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
}

// Two writers of one file never mix, and a reader never sees half a file.
func TestWritersAtTheSameTime(t *testing.T) {
	path := filepath.Join(t.TempDir(), "r.json")
	put(t, path, strings.Repeat("0", 1<<18), 0o644)
	var group sync.WaitGroup
	for w := range 4 {
		group.Go(func() {
			for range 20 {
				if err := File(path, func(out io.Writer) error {
					part := bytes.Repeat([]byte{byte('0' + w)}, 1<<10)
					for range 1 << 8 {
						if _, err := out.Write(part); err != nil {
							return err
						}
					}
					return nil
				}); err != nil {
					t.Error(err)
				}
			}
		})
	}
	done := make(chan bool)
	go func() { group.Wait(); close(done) }()
	for reading := true; reading; {
		select {
		case <-done:
			reading = false
		default:
		}
		if got := content(t, path); len(got) != 1<<18 || strings.Trim(got, got[:1]) != "" {
			t.Fatalf("%d bytes, mixed: %t", len(got), strings.Trim(got, got[:1]) != "")
		}
	}
}
