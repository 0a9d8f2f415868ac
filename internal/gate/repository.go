// Package gate is the git side: which records a commit, a branch or the index
// brings in, their content as git holds it, and the hook that asks.
package gate

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os/exec"
	"path"
	"strings"
	"time"
)

// Repository is one git repository, with or without a working tree.
type Repository struct {
	folder string // where git is run
	Top    string // of the working tree; "" in a bare repository
}

// Open finds the repository that a folder belongs to.
func Open(ctx context.Context, folder string) (*Repository, error) {
	r := &Repository{folder: folder}
	out, err := r.git(ctx, "rev-parse", "--is-bare-repository")
	if err != nil {
		return nil, err
	}
	if strings.TrimSpace(string(out)) == "true" {
		return r, nil
	}
	out, err = r.git(ctx, "rev-parse", "--show-toplevel")
	if err != nil {
		return nil, err
	}
	r.Top = strings.TrimSuffix(string(out), "\n")
	r.folder = r.Top
	return r, nil
}

// git runs git and returns its output; a failure carries git's own words.
func (r *Repository) git(ctx context.Context, args ...string) ([]byte, error) {
	cmd := exec.CommandContext(ctx, "git", args...)
	cmd.Dir = r.folder
	var out, errs bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &errs
	if err := cmd.Run(); err != nil {
		if said := strings.TrimSpace(errs.String()); said != "" {
			return nil, fmt.Errorf("git %s: %s", args[0], said)
		}
		return nil, fmt.Errorf("git %s: %w", args[0], err)
	}
	return out.Bytes(), nil
}

// Change is one file that differs between two states.
type Change struct {
	Path string // from the top, with forward slashes, as git spells it
	Old  string // object of the old content, "" for a new file
	New  string // object of the new content, "" for a deleted file
}

// emptyTree is the object name of a tree without entries.
const emptyTree = "4b825dc642cb6eb9a060e54bf8d69288fbee4904"

// Staged lists what the index holds against the last commit.
func (r *Repository) Staged(ctx context.Context) ([]Change, error) {
	base := "HEAD"
	if _, err := r.git(ctx, "rev-parse", "--verify", "--quiet", "HEAD"); err != nil {
		base = emptyTree // nothing was committed yet
	}
	out, err := r.git(ctx, "diff-index", "--cached", "-z", "--raw", "--no-renames", "--full-index", base)
	if err != nil {
		return nil, err
	}
	return changes(out)
}

// Since lists what HEAD holds against the point where it left a revision.
func (r *Repository) Since(ctx context.Context, revision string) ([]Change, error) {
	if strings.HasPrefix(revision, "-") {
		return nil, fmt.Errorf("%q is no revision", revision)
	}
	base, err := r.git(ctx, "merge-base", revision, "HEAD")
	if err != nil {
		return nil, fmt.Errorf("revision %q and HEAD have no common past: %w", revision, err)
	}
	out, err := r.git(ctx, "diff-tree", "-r", "-z", "--raw", "--no-renames", "--full-index", strings.TrimSpace(string(base)), "HEAD")
	if err != nil {
		return nil, err
	}
	return changes(out)
}

// changes reads git's raw difference: ":mode mode object object status", then
// the path, each ended by a zero byte. Only plain files count: a submodule or a
// symbolic link is no record.
func changes(raw []byte) ([]Change, error) {
	var out []Change
	fields := strings.Split(strings.TrimSuffix(string(raw), "\x00"), "\x00")
	if len(fields) == 1 && fields[0] == "" {
		return nil, nil
	}
	for i := 0; i+1 < len(fields); i += 2 {
		parts := strings.Fields(strings.TrimPrefix(fields[i], ":"))
		if len(parts) != 5 {
			return nil, fmt.Errorf("git gave an unexpected difference: %q", fields[i])
		}
		c := Change{Path: fields[i+1]}
		if plainFile(parts[0]) {
			c.Old = parts[2]
		}
		if plainFile(parts[1]) {
			c.New = parts[3]
		}
		if c.Old != "" || c.New != "" {
			out = append(out, c)
		}
	}
	return out, nil
}

func plainFile(mode string) bool { return strings.HasPrefix(mode, "100") }

// Content is the content of one object.
func (r *Repository) Content(ctx context.Context, object string) ([]byte, error) {
	return r.git(ctx, "cat-file", "blob", object)
}

// Index is the state that would be committed, and Head the last commit.
const (
	Index = ":"
	Head  = "HEAD:"
)

// Files is a folder as one state of the repository holds it, not as it lies in
// the working tree.
func (r *Repository) Files(ctx context.Context, state, folder string) fs.FS {
	return files{ctx, r, state, folder}
}

// File is the content of one file in a state; fs.ErrNotExist when it has none.
func (r *Repository) File(ctx context.Context, state, name string) ([]byte, error) {
	return fs.ReadFile(r.Files(ctx, state, "."), name)
}

// files implements fs.FS and fs.ReadFileFS over git objects.
type files struct {
	ctx    context.Context //nolint:containedctx // fs.FS has no place for one
	r      *Repository
	state  string
	folder string
}

func (f files) ReadFile(name string) ([]byte, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrInvalid}
	}
	data, err := f.r.Content(f.ctx, f.state+path.Join(f.folder, name))
	if err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: errors.Join(fs.ErrNotExist, err)}
	}
	return data, nil
}

func (f files) Open(name string) (fs.File, error) {
	data, err := f.ReadFile(name)
	if err != nil {
		return nil, err
	}
	return &file{name: path.Base(name), Reader: bytes.NewReader(data), size: int64(len(data))}, nil
}

// file is one git object as an fs.File.
type file struct {
	*bytes.Reader
	name string
	size int64
}

func (f *file) Stat() (fs.FileInfo, error) { return f, nil }
func (f *file) Close() error               { return nil }
func (f *file) Name() string               { return f.name }
func (f *file) Size() int64                { return f.size }
func (f *file) Mode() fs.FileMode          { return 0o444 }
func (f *file) ModTime() time.Time         { return time.Time{} }
func (f *file) IsDir() bool                { return false }
func (f *file) Sys() any                   { return nil }

var _ io.Reader = (*file)(nil)
