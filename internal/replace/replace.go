// Package replace writes files as a whole: whoever reads one sees what it was
// before or all of what it is now, also when the writer is killed half-way or
// the disk is full.
package replace

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"time"
)

// A temporary lies beside its file, hidden, with an ending that no record and
// no report has: ".report.json.17.unfinished".
const unfinished = ".unfinished"

// staleAfter is how much older than a new temporary another one must be to
// count as left behind by a writer that was killed.
const staleAfter = time.Hour

// File puts what write writes in the place of a file. When write or the disk
// fails, the file stays as it was. A file that is there keeps its permissions, a
// symbolic link is followed, and what is no plain file (a pipe, a device) is
// written to directly, since it cannot be replaced. Temporaries that a killed
// writer of the same file left behind are removed.
func File(path string, write func(io.Writer) error) error {
	return whole(path, 0o666, false, write)
}

// Program is File for a file that is run: whoever may read it may run it, also
// where the old one could not be run.
func Program(path string, write func(io.Writer) error) error {
	return whole(path, 0o777, true, write)
}

// whole writes a file that gets the mode as far as the user's mask leaves it. An
// old file keeps its own permissions unless they are to be made anew.
func whole(path string, mode fs.FileMode, anew bool, write func(io.Writer) error) error {
	var old fs.FileInfo
	target, err := filepath.EvalSymlinks(path)
	if err != nil {
		target = path // not there yet; whatever else is wrong shows when it is written
	}
	switch info, err := os.Stat(target); {
	case err != nil:
	case info.IsDir():
		return fmt.Errorf("%s is a folder: name a file in it", path)
	case !info.Mode().IsRegular():
		return direct(path, write)
	default:
		old = info
	}
	if anew {
		old = nil
	}
	temporary, err := create(target, mode, old)
	if err != nil {
		return err
	}
	removeStale(target, temporary)
	if err := fill(temporary, write); err != nil {
		return errors.Join(named(path, err), os.Remove(temporary.Name()))
	}
	if err := os.Rename(temporary.Name(), target); err != nil {
		return errors.Join(err, os.Remove(temporary.Name()))
	}
	return nil
}

// create makes a temporary of its own for each writer, with the permissions of
// the old file or what the user's mask leaves of the mode.
func create(target string, mode fs.FileMode, old fs.FileInfo) (*os.File, error) {
	for n := 0; ; n++ {
		name := fmt.Sprintf("%s.%d-%d%s", hidden(target), os.Getpid(), n, unfinished)
		file, err := os.OpenFile(name, os.O_WRONLY|os.O_CREATE|os.O_EXCL, mode)
		if errors.Is(err, fs.ErrExist) {
			continue
		}
		if err != nil {
			return nil, err
		}
		if old != nil {
			if err := file.Chmod(old.Mode().Perm()); err != nil {
				return nil, errors.Join(err, file.Close(), os.Remove(name))
			}
		}
		return file, nil
	}
}

func hidden(target string) string {
	return filepath.Join(filepath.Dir(target), "."+filepath.Base(target))
}

// fill writes a file to the disk itself, so that a rename never comes first.
func fill(file *os.File, write func(io.Writer) error) error {
	out := bufio.NewWriterSize(file, 64<<10)
	err := write(out)
	if err == nil {
		err = out.Flush()
	}
	if err == nil {
		err = file.Sync()
	}
	return errors.Join(err, file.Close())
}

func direct(path string, write func(io.Writer) error) error {
	file, err := os.OpenFile(path, os.O_WRONLY, 0)
	if err != nil {
		return err
	}
	out := bufio.NewWriterSize(file, 64<<10)
	if err = write(out); err == nil {
		err = out.Flush()
	}
	if err = errors.Join(err, file.Close()); err != nil {
		return named(path, err)
	}
	return nil
}

// named says what was to be written: the error itself knows only a temporary.
func named(path string, err error) error {
	var at *fs.PathError
	if errors.As(err, &at) {
		err = at.Err
	}
	return fmt.Errorf("%s was not written: %w", path, err)
}

// removeStale tidies up after killed writers. Ages are compared on the disk's
// own clock, and a writer at work keeps its temporary young.
func removeStale(target string, own *os.File) {
	info, err := own.Stat()
	if err != nil {
		return
	}
	entries, err := os.ReadDir(filepath.Dir(target))
	if err != nil {
		return // tidying up is no reason to fail
	}
	prefix := "." + filepath.Base(target) + "."
	for _, entry := range entries {
		var pid, n int
		name := entry.Name()
		if len(name) <= len(prefix) || name[:len(prefix)] != prefix {
			continue
		}
		rest := name[len(prefix):]
		if _, err := fmt.Sscanf(rest, "%d-%d", &pid, &n); err != nil || rest != fmt.Sprintf("%d-%d%s", pid, n, unfinished) {
			continue // another file's, or none of ours
		}
		other, err := entry.Info()
		if err != nil || !other.Mode().IsRegular() || info.ModTime().Sub(other.ModTime()) < staleAfter {
			continue
		}
		_ = os.Remove(filepath.Join(filepath.Dir(target), name)) // tidying up is no reason to fail
	}
}
