package gate

import (
	"bytes"
	"context"
	"errors"
	"io"
	"io/fs"
	"path"
	"slices"
	"strconv"
	"strings"
	"time"
)

// Files is a folder as one state of the repository holds it, not as it lies in
// the working tree. State is a tree or commit.
func (r *Repository) Files(ctx context.Context, state, folder string) fs.FS {
	return files{ctx, r, state, folder}
}

// files implements fs.ReadFileFS, fs.ReadDirFS and fs.StatFS over git objects.
type files struct {
	ctx    context.Context //nolint:containedctx // fs.FS has no place for one
	r      *Repository
	state  string
	folder string
}

func (f files) at(name string) string { return f.state + ":" + inside(path.Join(f.folder, name)) }

// inside is a path as git wants it behind a state, where the top has no name.
func inside(name string) string {
	if name == "." {
		return ""
	}
	return name
}

func (f files) ReadFile(name string) ([]byte, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	}
	data, err := f.r.Content(f.ctx, f.at(name))
	if err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: err}
	}
	return data, nil
}

func (f files) Open(name string) (fs.File, error) {
	if info, err := f.Stat(name); err == nil && info.IsDir() {
		entries, err := f.ReadDir(name)
		return &dir{info, entries}, err
	}
	data, err := f.ReadFile(name)
	if err != nil {
		return nil, err
	}
	return &file{bytes.NewReader(data), entry{path.Base(name), int64(len(data)), 0o444}}, nil
}

// Stat tells a folder from a file.
func (f files) Stat(name string) (fs.FileInfo, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: fs.ErrInvalid}
	}
	kind, err := f.r.git(f.ctx, "cat-file", "-t", f.at(name))
	if err != nil {
		return nil, &fs.PathError{Op: "stat", Path: name, Err: errors.Join(fs.ErrNotExist, err)}
	}
	if line(kind) == "tree" {
		return entry{path.Base(name), 0, fs.ModeDir | 0o555}, nil
	}
	data, err := f.ReadFile(name)
	return entry{path.Base(name), int64(len(data)), 0o444}, err
}

// ReadDir lists plain files and folders; links and submodules are left out.
func (f files) ReadDir(name string) ([]fs.DirEntry, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "readdir", Path: name, Err: fs.ErrInvalid}
	}
	out, err := f.r.git(f.ctx, "ls-tree", "-z", "--long", f.at(name))
	if err != nil {
		return nil, &fs.PathError{Op: "readdir", Path: name, Err: errors.Join(fs.ErrNotExist, err)}
	}
	var entries []fs.DirEntry
	for _, row := range strings.Split(string(out), "\x00") {
		about, base, _ := strings.Cut(row, "\t")
		words := strings.Fields(about) // mode, kind, object, size
		switch {
		case len(words) < 4:
		case words[1] == "tree":
			entries = append(entries, entry{base, 0, fs.ModeDir | 0o555})
		case plainFile(words[0]):
			size, err := strconv.ParseInt(words[3], 10, 64)
			if err != nil {
				return nil, &fs.PathError{Op: "readdir", Path: name, Err: err}
			}
			entries = append(entries, entry{base, size, 0o444})
		}
	}
	slices.SortFunc(entries, func(a, b fs.DirEntry) int { return strings.Compare(a.Name(), b.Name()) }) // git puts "a.b" before the folder "a"
	return entries, nil
}

// entry is what is known of a file without opening it; git keeps no time.
type entry struct {
	name string
	size int64
	mode fs.FileMode
}

func (e entry) Name() string               { return e.name }
func (e entry) Size() int64                { return e.size }
func (e entry) Mode() fs.FileMode          { return e.mode }
func (e entry) Type() fs.FileMode          { return e.mode.Type() }
func (e entry) ModTime() time.Time         { return time.Time{} }
func (e entry) IsDir() bool                { return e.mode.IsDir() }
func (e entry) Sys() any                   { return nil }
func (e entry) Info() (fs.FileInfo, error) { return e, nil }

// file is one git object as an fs.File.
type file struct {
	*bytes.Reader
	about entry
}

func (f *file) Stat() (fs.FileInfo, error) { return f.about, nil }
func (f *file) Close() error               { return nil }

// dir is one git tree as an fs.ReadDirFile.
type dir struct {
	fs.FileInfo
	rest []fs.DirEntry
}

func (d *dir) Stat() (fs.FileInfo, error) { return d.FileInfo, nil }
func (d *dir) Close() error               { return nil }
func (d *dir) Read([]byte) (int, error)   { return 0, errors.New("is a folder") }

func (d *dir) ReadDir(n int) ([]fs.DirEntry, error) {
	if n > 0 && len(d.rest) == 0 {
		return nil, io.EOF
	}
	if n <= 0 || n > len(d.rest) {
		n = len(d.rest)
	}
	out := d.rest[:n]
	d.rest = d.rest[n:]
	return out, nil
}
