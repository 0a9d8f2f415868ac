// Package gate is the git side: which records a commit, a branch or the index
// brings in, their content as git holds it, and the hook that asks.
package gate

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"os/exec"
	"path/filepath"
	"strings"
)

// Repository is one git repository, with or without a working tree.
type Repository struct {
	Top    string // of the working tree; "" in a bare repository
	Prefix string // from the top to the folder it was opened from, "." for the top
	folder string // where git is run
	blobs  objects
}

// Open finds the repository that a folder belongs to. Close it after use.
func Open(ctx context.Context, folder string) (*Repository, error) {
	r := &Repository{folder: folder, Prefix: "."}
	out, err := r.git(ctx, "rev-parse", "--is-bare-repository")
	if err != nil {
		return nil, err
	}
	if line(out) == "true" {
		return r, nil
	}
	if out, err = r.git(ctx, "rev-parse", "--show-prefix"); err != nil {
		return nil, err
	}
	r.Prefix = filepath.ToSlash(filepath.Clean(line(out)))
	if out, err = r.git(ctx, "rev-parse", "--show-toplevel"); err != nil {
		return nil, err
	}
	r.Top = line(out)
	r.folder = r.Top // a hook runs there too
	return r, nil
}

// Close ends what Open and the reading started.
func (r *Repository) Close() error { return r.blobs.close() }

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

// line is the output of a command that prints one line; the line itself may
// hold any other character.
func line(out []byte) string { return strings.TrimSuffix(string(out), "\n") }

// Difference is what lies between two states of the repository, each named by
// a tree or commit.
type Difference struct {
	Old, New string
	Changes  []Change
}

// Change is one file that differs between two states.
type Change struct {
	Path string // from the top, with forward slashes, as git spells it
	Old  string // object of the old content, "" for a new file
	New  string // object of the new content, "" for a deleted file
	Link bool   // the new state has a symbolic link there
}

var errBare = errors.New("this is a bare repository, in which nobody commits: judge a branch with --since REV")

// Staged is what the index holds against the last commit. The index is read
// once, as a tree: what is staged meanwhile changes nothing.
func (r *Repository) Staged(ctx context.Context) (Difference, error) {
	if r.Top == "" {
		return Difference{}, errBare
	}
	out, err := r.git(ctx, "write-tree", "--missing-ok")
	if err != nil {
		return Difference{}, err
	}
	d := Difference{Old: "HEAD", New: line(out)}
	if _, err := r.git(ctx, "rev-parse", "--verify", "--quiet", "HEAD"); err != nil { // nothing was committed yet
		if out, err = r.git(ctx, "hash-object", "-t", "tree", "--stdin"); err != nil {
			return Difference{}, err
		}
		d.Old = line(out)
	}
	return r.compare(ctx, d)
}

// Since is what HEAD holds against the point where it left a revision.
func (r *Repository) Since(ctx context.Context, revision string) (Difference, error) {
	if strings.HasPrefix(revision, "-") {
		return Difference{}, fmt.Errorf("%q is no revision", revision)
	}
	out, err := r.git(ctx, "merge-base", revision, "HEAD")
	if err != nil {
		return Difference{}, fmt.Errorf("revision %q and HEAD have no common past that this clone knows (a shallow clone has to fetch more): %w", revision, err)
	}
	return r.compare(ctx, Difference{Old: line(out), New: "HEAD"})
}

func (r *Repository) compare(ctx context.Context, d Difference) (Difference, error) {
	out, err := r.git(ctx, "diff-tree", "-r", "-z", "--raw", "--no-renames", "--full-index", d.Old, d.New)
	if err != nil {
		return Difference{}, err
	}
	d.Changes, err = changes(out)
	return d, err
}

// changes reads git's raw difference: ":mode mode object object status", then
// the path, each ended by a zero byte. A submodule is no file.
func changes(raw []byte) ([]Change, error) {
	fields := strings.Split(string(raw), "\x00")
	fields = fields[:len(fields)-1] // what follows the last zero byte
	if len(fields)%2 != 0 {
		return nil, fmt.Errorf("git gave an unexpected difference: %q", raw)
	}
	var out []Change
	for i := 0; i < len(fields); i += 2 {
		parts := strings.Fields(strings.TrimPrefix(fields[i], ":"))
		if len(parts) != 5 {
			return nil, fmt.Errorf("git gave an unexpected difference: %q", fields[i])
		}
		c := Change{Path: fields[i+1], Link: parts[1] == "120000"}
		if plainFile(parts[0]) {
			c.Old = parts[2]
		}
		if plainFile(parts[1]) {
			c.New = parts[3]
		}
		if c.Old != "" || c.New != "" || c.Link {
			out = append(out, c)
		}
	}
	return out, nil
}

func plainFile(mode string) bool { return strings.HasPrefix(mode, "100") }
