package archive

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"io/fs"
	"os"
	"path/filepath"
)

// Count tells how many records Sources or, with lines, Lines will list, without
// reading them. It is not known of standard input and of pipes, which can be
// read only once, nor when something is in the way.
func Count(paths []string, lines bool, isRecord func(path string) bool) (n int, known bool) {
	for _, path := range paths {
		here, known := countAt(path, lines, isRecord)
		if !known {
			return 0, false
		}
		n += here
	}
	return n, true
}

func countAt(path string, lines bool, isRecord func(string) bool) (int, bool) {
	if path == "-" {
		return 0, false
	}
	info, err := os.Stat(path)
	switch {
	case err != nil:
		return 0, false
	case lines || filepath.Ext(path) == ".ndjson" || filepath.Ext(path) == ".jsonl":
		return countLines(path, info)
	case !info.IsDir():
		return 1, true
	}
	n := 0
	err = filepath.WalkDir(path, func(at string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			return err
		case entry.IsDir():
			if at != path && entry.Name()[0] == '.' {
				return fs.SkipDir
			}
		case isRecord(at) && filepath.Ext(at) == ".ndjson":
			info, err := entry.Info()
			if err != nil {
				return err
			}
			here, known := countLines(at, info)
			if !known {
				return errUnknown
			}
			n += here
		case isRecord(at):
			n++
		}
		return nil
	})
	return n, err == nil
}

var errUnknown = errors.New("archive: number of records not known")

// countLines counts the lines of a plain file that hold more than blanks.
func countLines(path string, info fs.FileInfo) (int, bool) {
	if !info.Mode().IsRegular() {
		return 0, false
	}
	in, err := os.Open(path)
	if err != nil {
		return 0, false
	}
	defer in.Close() //nolint:errcheck // only read from
	n, blank := 0, true
	for r := bufio.NewReaderSize(in, 64<<10); ; {
		part, err := r.ReadSlice('\n')
		if blank && len(bytes.TrimSpace(part)) > 0 {
			n, blank = n+1, false
		}
		switch {
		case err == nil:
			blank = true
		case errors.Is(err, io.EOF):
			return n, true
		case !errors.Is(err, bufio.ErrBufferFull):
			return 0, false
		}
	}
}
