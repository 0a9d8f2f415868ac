//go:build linux

package main

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/report"
)

// oneRequirement is a profile by which an archive is judged fast.
const oneRequirement = `profile: one-requirement
title: One requirement
kind: base
requirements:
  fan.sizing_basis:
    limits: {no_basis: [none, unknown]}
    source: {basis: common-practice}
`

// size is a number of records, a smaller one for quick runs.
func size(n, quick int) int {
	if testing.Short() {
		return quick
	}
	return n
}

// small is a record of few fields, but long enough that buffers between two
// processes hold some hundred and not thousands.
func small(i int) string {
	return fmt.Sprintf("{\"job\":{\"id\":\"J-%d\",\"title\":\""+strings.Repeat("long ", 100)+"\",\"stage\":\"planned\",\"profiles\":[\"us-epa-1994\"]}}\n", i)
}

// program is slablint as a process of its own, which reads its records from us.
type program struct {
	*exec.Cmd
	folder string
	feed   io.WriteCloser
	said   bytes.Buffer // on standard error
}

// begin starts "slablint check --lines -" with further arguments in a folder
// that holds a profile and old reports.
func begin(t *testing.T, args ...string) *program {
	t.Helper()
	p := &program{folder: t.TempDir()}
	for name, text := range map[string]string{"one.yaml": oneRequirement, "r.json": old, "r.html": old, "r.jsonl": old} {
		if err := os.WriteFile(filepath.Join(p.folder, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	p.Cmd = exec.CommandContext(t.Context(), "slablint", append([]string{"check", "--lines", "-"}, args...)...)
	p.Dir, p.Stderr = p.folder, &p.said
	return p
}

const old = "the old report"

func (p *program) start(t *testing.T) {
	t.Helper()
	var err error
	if p.feed, err = p.StdinPipe(); err == nil {
		err = p.Start()
	}
	if err != nil {
		t.Fatal(err)
	}
}

// give feeds records of numbers from and up to, without the latter. It comes
// back when all but what fits into a pipe is read.
func (p *program) give(t *testing.T, from, to int) {
	t.Helper()
	for i := from; i < to; i++ {
		if _, err := io.WriteString(p.feed, small(i)); err != nil {
			t.Fatalf("record %d: %v; %s", i, err, p.said.String())
		}
	}
}

func (p *program) read(t *testing.T, name string) string {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(p.folder, name))
	if err != nil {
		t.Fatal(err)
	}
	return string(data)
}

// unfinished lists the temporaries of a report, and fails when one of them
// would be taken for a record.
func (p *program) unfinished(t *testing.T, name string) []string {
	t.Helper()
	found, err := filepath.Glob(filepath.Join(p.folder, "."+name+".*"))
	if err != nil {
		t.Fatal(err)
	}
	for _, file := range found {
		if archive.IsRecord(file) {
			t.Errorf("%s passes for a record", file)
		}
	}
	return found
}

// underWay tells whether a report is being written just now.
func (p *program) underWay(t *testing.T, name string, bytes int64) bool {
	t.Helper()
	for _, file := range p.unfinished(t, name) {
		if info, err := os.Stat(file); err == nil && info.Size() >= bytes {
			return true
		}
	}
	return false
}

// kill ends the process as a power cut would. It tells whether it was in time.
func (p *program) kill(t *testing.T) bool {
	t.Helper()
	if err := p.Process.Kill(); err != nil && !errors.Is(err, os.ErrProcessDone) {
		t.Fatal(err)
	}
	_ = p.Wait() // its failure is what the state below says
	return p.ProcessState.ExitCode() == -1
}

// whole checks that a report is the old one, or all of a new one over so many
// records; it tells whether it is the new one.
func (p *program) whole(t *testing.T, name string, records int) bool {
	t.Helper()
	text := p.read(t, name)
	if text == old {
		return false
	}
	switch filepath.Ext(name) {
	case ".json":
		r, err := report.Read(strings.NewReader(text))
		if err != nil || len(r.Jobs) != records {
			t.Errorf("%s holds %d of %d jobs: %v", name, len(r.Jobs), records, err)
		}
	case ".html":
		if n := strings.Count(text, "<article "); n != records || !strings.HasSuffix(text, "</html>\n") {
			t.Errorf("%s holds %d of %d jobs and ends in %q", name, n, records, text[max(0, len(text)-20):])
		}
	default:
		if n := strings.Count(text, "\n"); n != records || !strings.HasSuffix(text, "}\n") {
			t.Errorf("%s holds %d of %d lines", name, n, records)
		}
	}
	return true
}

// However many records are judged at a time, and whatever some of them are, a
// report is the same byte for byte.
func TestOrderDoesNotDependOnWorkers(t *testing.T) {
	var in strings.Builder
	for i := range 100 {
		switch {
		case i%17 == 0:
			in.WriteString("broken\n")
		case i%5 == 0:
			in.WriteString(strings.Replace(small(i), "long ", strings.Repeat("longer ", 1+i%7), 1))
		default:
			in.WriteString(small(i))
		}
	}
	for _, format := range []string{"json", "jsonl", "csv", "html"} {
		var first []byte
		for _, workers := range []string{"1", "16"} {
			p := begin(t, "--profile", "one.yaml", "--format", format)
			p.Stdin, p.Env = strings.NewReader(in.String()), append(os.Environ(), "GOMAXPROCS="+workers)
			out, err := p.Output()
			if got := p.ProcessState.ExitCode(); got != outcome.StatusError {
				t.Errorf("exit status %d (%v), want %d: %s", got, err, outcome.StatusError, p.said.String())
			}
			if first == nil {
				first = out
			}
			if len(out) == 0 || !bytes.Equal(out, first) {
				t.Errorf("%s with %s workers differs from that with 1", format, workers)
			}
		}
	}
}
