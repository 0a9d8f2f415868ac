package gate

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"strings"
)

// mark is the line by which the hook's own part is known again.
const mark = "# slablint gate: judge staged job records"

// InstallHook makes the pre-commit hook run a command. A hook that is already
// there keeps running first; installing twice changes nothing. The hook lies
// where git says it is, which in a worktree is the main repository.
func (r *Repository) InstallHook(ctx context.Context, command string) (file string, err error) {
	out, err := r.git(ctx, "rev-parse", "--git-path", "hooks")
	if err != nil {
		return "", err
	}
	folder := strings.TrimSuffix(string(out), "\n")
	if !filepath.IsAbs(folder) {
		folder = filepath.Join(r.folder, folder)
	}
	file = filepath.Join(folder, "pre-commit")
	old, err := os.ReadFile(file)
	if err != nil && !errors.Is(err, fs.ErrNotExist) {
		return "", err
	}
	if bytes.Contains(old, []byte(mark)) {
		return file, nil
	}
	if len(old) > 0 && !isShell(old) {
		return "", fmt.Errorf("%s is no shell script: add this line to it by hand: %s", file, command)
	}
	if err := os.MkdirAll(folder, 0o755); err != nil {
		return "", err
	}
	text := string(old)
	if text == "" {
		text = "#!/bin/sh\n"
	}
	if !strings.HasSuffix(text, "\n") {
		text += "\n"
	}
	first, rest, _ := strings.Cut(text, "\n")
	// The old hook runs in a subshell: an exit at its end must not skip the gate.
	if strings.TrimSpace(rest) != "" {
		rest = "(\n" + rest + ") || exit $?\n"
	}
	text = first + "\n" + rest + mark + "\n" + command + "\n"
	temporary := file + ".new"
	if err := os.WriteFile(temporary, []byte(text), 0o755); err != nil {
		return "", err
	}
	return file, os.Rename(temporary, file)
}

func isShell(script []byte) bool {
	first, _, _ := bytes.Cut(script, []byte("\n"))
	return bytes.HasPrefix(first, []byte("#!")) && (bytes.HasSuffix(bytes.TrimSpace(first), []byte("sh")) || bytes.Contains(first, []byte("sh ")))
}
