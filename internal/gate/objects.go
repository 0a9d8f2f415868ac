package gate

import (
	"bufio"
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os/exec"
	"strconv"
	"strings"
	"sync"
)

// objects asks one git process for all contents: an archive has thousands, and
// starting git for each would take longer than judging it.
type objects struct {
	mu      sync.Mutex
	started bool
	cmd     *exec.Cmd
	ask     io.WriteCloser
	answer  *bufio.Reader
	failed  error // what broke the conversation; nothing is asked after it
}

// Content is the content of a file by its object, or by state:path, where links
// inside the repository are followed. What is not there or is no file is
// fs.ErrNotExist.
func (r *Repository) Content(ctx context.Context, object string) ([]byte, error) {
	if strings.Contains(object, "\n") { // cannot be asked for in a line
		data, err := r.git(ctx, "cat-file", "blob", object)
		if err != nil {
			return nil, errors.Join(fs.ErrNotExist, err)
		}
		return data, nil
	}
	o := &r.blobs
	o.mu.Lock()
	defer o.mu.Unlock()
	if !o.started {
		o.started = true
		o.failed = o.start(ctx, r.folder)
	}
	if o.failed != nil {
		return nil, o.failed
	}
	kind, data, err := o.converse(object)
	if err != nil {
		o.failed = fmt.Errorf("git cat-file: %w", err)
		return nil, o.failed
	}
	if kind != "blob" {
		return nil, fmt.Errorf("%s is %s in git: %w", object, kind, fs.ErrNotExist)
	}
	return data, nil
}

func (o *objects) start(ctx context.Context, folder string) error {
	o.cmd = exec.CommandContext(ctx, "git", "cat-file", "--batch", "--follow-symlinks")
	o.cmd.Dir = folder
	var err error
	if o.ask, err = o.cmd.StdinPipe(); err != nil {
		return err
	}
	out, err := o.cmd.StdoutPipe()
	if err != nil {
		return err
	}
	o.answer = bufio.NewReader(out)
	return o.cmd.Start()
}

// converse asks for one object. The answer is a line that ends with kind and
// size and then the content; without a size there is no content.
func (o *objects) converse(object string) (kind string, data []byte, err error) {
	if _, err := io.WriteString(o.ask, object+"\n"); err != nil {
		return "", nil, err
	}
	head, err := o.answer.ReadString('\n')
	if err != nil {
		return "", nil, err
	}
	words := strings.Fields(strings.TrimPrefix(head, object))
	if len(words) == 0 {
		return "", nil, fmt.Errorf("unexpected answer %q", head)
	}
	size, err := strconv.Atoi(words[len(words)-1])
	if err != nil || len(words) < 2 {
		return words[len(words)-1], nil, nil // missing, ambiguous
	}
	data = make([]byte, size+1)
	if _, err := io.ReadFull(o.answer, data); err != nil {
		return "", nil, err
	}
	return words[len(words)-2], bytes.TrimSuffix(data, []byte("\n")), nil
}

func (o *objects) close() error {
	o.mu.Lock()
	defer o.mu.Unlock()
	if o.cmd == nil || o.cmd.Process == nil {
		return nil
	}
	return errors.Join(o.ask.Close(), o.cmd.Wait())
}
