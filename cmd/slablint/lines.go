package main

import (
	"bytes"
	"context"
	"errors"
	"io"
	"iter"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/replace"
	"github.com/slablint/slablint/internal/report"
)

// lines is the format for archives of any size: JSON, one job of the report a
// line, written as records are judged.
const lines = "jsonl"

// line is what came of one record, as text.
type line struct {
	text   []byte
	file   string
	status int
	err    error
}

func (l line) of() (file string, status int) { return l.file, l.status }

// stream judges and writes record by record and keeps none.
func (f *checkFlags) stream(ctx context.Context, o walk, p *pipeline.Pipeline, paths []string, sources iter.Seq2[archive.Source, error], batch batchFlags) error {
	if len(f.formats) != 1 || len(f.outputs) > 1 {
		return errors.New("--format " + lines + " stands alone: it is written before the other formats know what to say")
	}
	toFile := len(f.outputs) == 1 && f.outputs[0] != "-"
	if toFile || o.world.width == 0 { // lines and bar do not share a terminal
		o.progress = newProgress(o.world, paths, batch.lines)
	}
	judge := judgeOne(ctx, p, false)
	status := outcome.StatusReady
	var cut *interrupted
	write := func(out io.Writer) error {
		each := func(s archive.Source, err error) line { return f.line(judge(s, err)) }
		err := through(ctx, o, sources, each, func(l line) error {
			if l.err != nil {
				return l.err
			}
			status = max(status, l.status)
			_, err := out.Write(l.text)
			return err
		})
		var last *enough
		switch {
		case errors.As(err, &cut):
			return report.JSONLine(out, finding.Job{}, []finding.Error{cut.asError(paths)}, report.Options{})
		case errors.As(err, &last):
			last.tell(o.world)
			return report.JSONStopped(out, last.sentence())
		}
		return err
	}
	var err error
	if toFile {
		err = replace.File(f.outputs[0], write)
	} else {
		err = write(o.world.out) // each line at once: a program may wait for it
	}
	if err == nil && status != outcome.StatusReady {
		err = statusError(status)
	}
	return afterCut(cut, err)
}

// line is the job as the JSON report has it, or the errors that kept the record
// from being judged.
func (f *checkFlags) line(v verdict) line {
	var text bytes.Buffer
	file, status := v.of()
	err := report.JSONLine(&text, v.job, v.errs, report.Options{All: f.all})
	return line{text.Bytes(), file, status, err}
}
