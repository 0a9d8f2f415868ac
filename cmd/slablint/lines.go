package main

import (
	"bufio"
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"io"
	"iter"
	"runtime"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/report"
)

// lines is the format for archives of any size: JSON, one job of the report a
// line, written as records are judged.
const lines = "jsonl"

// line is what came of one record, as text.
type line struct {
	text   []byte
	status int
	err    error
}

// stream judges and writes record by record and keeps none.
func (f *checkFlags) stream(ctx context.Context, w world, p *pipeline.Pipeline, sources iter.Seq2[archive.Source, error]) error {
	if len(f.formats) != 1 || len(f.outputs) > 1 {
		return errors.New("--format " + lines + " stands alone: it is written before the other formats know what to say")
	}
	judge := judgeOne(ctx, p, false)
	status := outcome.StatusReady
	write := func(out io.Writer) error {
		each := func(s archive.Source, err error) line { return f.line(judge(s, err)) }
		return archive.Each(ctx, sources, runtime.GOMAXPROCS(0), each, func(l line) error {
			status = max(status, l.status)
			_, err := out.Write(l.text)
			return errors.Join(l.err, err)
		})
	}
	if len(f.outputs) == 1 && f.outputs[0] != "-" {
		if err := writeFile(f.outputs[0], write); err != nil {
			return err
		}
	} else {
		out := bufio.NewWriter(w.out)
		if err := errors.Join(write(out), out.Flush()); err != nil {
			return err
		}
	}
	if status != outcome.StatusReady {
		return statusError(status)
	}
	return nil
}

// line is the job as the JSON report has it, or the errors that kept the record
// from being judged.
func (f *checkFlags) line(v verdict) line {
	r := newReport()
	if r.Errors = v.errs; len(v.errs) == 0 {
		r.Jobs = []finding.Job{v.job}
	}
	var whole, text bytes.Buffer
	if err := report.JSON(&whole, r, report.Options{All: f.all}); err != nil {
		return line{err: err}
	}
	var parts struct {
		Jobs   []json.RawMessage `json:"jobs"`
		Errors json.RawMessage   `json:"errors"`
	}
	if err := json.Unmarshal(whole.Bytes(), &parts); err != nil {
		return line{err: err}
	}
	var err error
	if len(parts.Jobs) == 1 {
		err = json.Compact(&text, parts.Jobs[0])
	} else {
		text.WriteString(`{"errors":`)
		err = json.Compact(&text, parts.Errors)
		text.WriteByte('}')
	}
	text.WriteByte('\n')
	return line{text.Bytes(), outcome.Status(r), err}
}
