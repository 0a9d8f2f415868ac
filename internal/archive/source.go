// Package archive goes through many records: it finds them in files, folders
// and streams, has them judged by several goroutines, and hands the results on
// in the order in which the records were found.
package archive

import (
	"errors"
	"io"
	"io/fs"
	"iter"
	"os"
	"path/filepath"
	"strings"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
)

// Source is one record that can be read.
type Source struct {
	Name  string
	Files fs.FS // the job's folder, in which its evidence lies; nil for streams
	read  func() (*record.Document, error)
}

// Read reads the record. A failure is an error with a place.
func (s Source) Read() (*record.Document, *finding.Error) {
	doc, err := s.read()
	if err != nil {
		e := AsError(s.Name, err)
		return nil, &e
	}
	return doc, nil
}

// AsError gives a failure of reading its place, line 1 when it has none.
func AsError(name string, err error) finding.Error {
	var at *record.Error
	if errors.As(err, &at) {
		return finding.Error{File: at.Spot.File, Line: at.Spot.Line, Column: at.Spot.Column, Message: at.Message}
	}
	message := err.Error()
	var failed *fs.PathError
	switch {
	case errors.Is(err, fs.ErrNotExist):
		message = "there is no such file or folder"
	case errors.As(err, &failed): // the name is said already
		message = "it cannot be read: " + failed.Err.Error()
	}
	return finding.Error{File: name, Line: 1, Column: 1, Message: message}
}

// Sources lists the records at the given paths in order: files, every record
// file below a folder, - for standard input, and each line of .ndjson and .jsonl
// files. IsRecord decides by the path which files below a folder are records. A path
// that cannot be read yields its error and the rest goes on.
func Sources(paths []string, in io.Reader, isRecord func(path string) bool) iter.Seq2[Source, error] {
	return func(yield func(Source, error) bool) {
		for _, path := range paths {
			if !sourcesAt(path, in, isRecord, yield) {
				return
			}
		}
	}
}

// Lines lists the records of JSON lines, one a line, in the files at the given
// paths, whatever they are called; - is standard input, read as it comes.
func Lines(paths []string, in io.Reader) iter.Seq2[Source, error] {
	return func(yield func(Source, error) bool) {
		for _, path := range paths {
			goOn := false
			if path == "-" {
				goOn = linesOf(path, in, yield)
			} else {
				goOn = stream(path, yield)
			}
			if !goOn {
				return
			}
		}
	}
}

func sourcesAt(path string, in io.Reader, isRecord func(string) bool, yield func(Source, error) bool) bool {
	switch {
	case path == "-":
		return standardInput(in, yield)
	case filepath.Ext(path) == ".ndjson", filepath.Ext(path) == ".jsonl":
		return stream(path, yield)
	}
	info, err := os.Stat(path)
	if err != nil {
		return yield(Source{Name: path}, err)
	}
	if !info.IsDir() {
		return yield(file(path), nil)
	}
	goOn := true
	err = filepath.WalkDir(path, func(at string, entry fs.DirEntry, err error) error {
		switch {
		case err != nil:
			goOn = yield(Source{Name: at}, err)
		case entry.IsDir():
			if at != path && strings.HasPrefix(entry.Name(), ".") {
				return fs.SkipDir
			}
		case isRecord(at) && filepath.Ext(at) == ".ndjson":
			goOn = stream(at, yield)
		case isRecord(at):
			goOn = yield(file(at), nil)
		}
		if !goOn {
			return fs.SkipAll
		}
		return nil
	})
	if err != nil && goOn {
		goOn = yield(Source{Name: path}, err)
	}
	return goOn
}

// IsRecord is the usual answer to which files are records: YAML and JSON,
// except saved reports, hidden files and the configuration.
func IsRecord(path string) bool {
	name := filepath.Base(path)
	if strings.HasPrefix(name, ".") || strings.HasSuffix(name, ".report.json") || name == "slablint.yaml" {
		return false
	}
	switch filepath.Ext(name) {
	case ".yaml", ".yml", ".json", ".ndjson":
		return true
	}
	return false
}

func file(path string) Source {
	return Source{Name: path, Files: os.DirFS(filepath.Dir(path)), read: func() (*record.Document, error) {
		data, err := os.ReadFile(path)
		if err != nil {
			return nil, err
		}
		return record.Read(path, data, record.Limits{})
	}}
}

// Bytes is a record that is already in memory.
func Bytes(name string, data []byte, files fs.FS) Source {
	return Source{Name: name, Files: files, read: func() (*record.Document, error) {
		return record.Read(name, data, record.Limits{})
	}}
}

func standardInput(in io.Reader, yield func(Source, error) bool) bool {
	data, err := io.ReadAll(in)
	if err != nil {
		return yield(Source{Name: "-"}, err)
	}
	return yield(Bytes("-", data, nil), nil)
}

// stream yields one source a line; a bad line is that source's error.
func stream(path string, yield func(Source, error) bool) bool {
	in, err := os.Open(path)
	if err != nil {
		return yield(Source{Name: path}, err)
	}
	defer in.Close() //nolint:errcheck // only read from
	return linesOf(path, in, yield)
}

func linesOf(name string, in io.Reader, yield func(Source, error) bool) bool {
	for doc, err := range record.Stream(name, in, record.Limits{}) {
		s := Source{Name: name, read: func() (*record.Document, error) { return doc, err }}
		if !yield(s, nil) {
			return false
		}
	}
	return true
}
