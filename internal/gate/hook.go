package gate

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path/filepath"
	"strings"

	"github.com/slablint/slablint/internal/replace"
)

// mark is the line by which the gate's own hook is known again.
const mark = "# slablint gate: judge staged job records"

// kept is what the name of a hook that was there before ends with.
const kept = ".before-slablint"

// hookNames are the moments at which git asks: before a commit, and before the
// commit that a merge makes by itself.
var hookNames = []string{"pre-commit", "pre-merge-commit"}

// InstallHook makes every commit run a command. A hook that is already there,
// in whatever language, is kept beside the new one and runs first. Installing
// twice changes nothing. The hooks lie where git looks for them, which in a
// worktree is the main repository.
func (r *Repository) InstallHook(ctx context.Context, command string) (written []string, err error) {
	folder, err := r.hookFolder(ctx)
	if err != nil {
		return nil, err
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return nil, err
	}
	for _, name := range hookNames {
		file := filepath.Join(folder, name)
		if err := installHook(file, command); err != nil {
			return written, err
		}
		written = append(written, file)
	}
	return written, nil
}

// hookFolder is where git looks for hooks. A folder outside the repository may
// serve other repositories, in which the gate has no business.
func (r *Repository) hookFolder(ctx context.Context) (string, error) {
	if r.Top == "" {
		return "", errBare
	}
	out, err := r.git(ctx, "rev-parse", "--git-path", "hooks")
	if err != nil {
		return "", err
	}
	folder := line(out)
	if !filepath.IsAbs(folder) {
		folder = filepath.Join(r.folder, folder)
	}
	if out, err = r.git(ctx, "rev-parse", "--git-common-dir"); err != nil {
		return "", err
	}
	common := line(out)
	if !filepath.IsAbs(common) {
		common = filepath.Join(r.folder, common)
	}
	if !below(folder, r.Top) && !below(folder, common) {
		return "", fmt.Errorf("git looks for hooks in %s (core.hooksPath), which other repositories may share: call slablint gate from the pre-commit hook there by hand", folder)
	}
	return folder, nil
}

// below reports whether a path lies in a folder, links resolved as far as they
// exist.
func below(path, folder string) bool {
	rel, err := filepath.Rel(resolve(folder), resolve(path))
	return err == nil && filepath.IsLocal(rel)
}

func resolve(path string) string {
	if real, err := filepath.EvalSymlinks(path); err == nil {
		return real
	}
	parent := filepath.Dir(path)
	if parent == path {
		return path
	}
	return filepath.Join(resolve(parent), filepath.Base(path))
}

func installHook(file, command string) error {
	text := "#!/bin/sh\n" + mark + "\n" +
		"# The hook that was here before, if any, lies beside this one and runs first.\n" +
		"before=\"$0" + kept + "\"\n" +
		"if [ -x \"$before\" ]; then \"$before\" \"$@\" || exit $?; fi\n" +
		"exec " + command + "\n"
	old, err := os.ReadFile(file)
	switch {
	case err == nil && bytes.Contains(old, []byte(mark)):
		if string(old) == text {
			return nil
		}
	case err == nil:
		if err := keep(file); err != nil {
			return err
		}
	case !errors.Is(err, fs.ErrNotExist):
		return err
	}
	return replace.Program(file, func(out io.Writer) error { _, err := io.WriteString(out, text); return err })
}

func keep(file string) error {
	if _, err := os.Lstat(file + kept); err == nil {
		return fmt.Errorf("%s is in the way: %s is another hook again; put one of them aside", file+kept, file)
	}
	return os.Rename(file, file+kept)
}

// Quote writes one word for the shell that runs hooks.
func Quote(word string) string { return "'" + strings.ReplaceAll(word, "'", `'\''`) + "'" }
