package main

import (
	"context"
	"errors"
	"fmt"
	"iter"
	"runtime"
	"runtime/debug"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/record"
)

// verdict is what came of one source.
type verdict struct {
	file string
	job  finding.Job
	errs []finding.Error
}

func (v verdict) of() (file string, status int) {
	r := finding.Report{Errors: v.errs}
	if len(v.errs) == 0 {
		r.Jobs = []finding.Job{v.job}
	}
	return v.file, outcome.Status(r)
}

// judgeAll judges every source and adds to the report in their order. One bad
// record never stops the others.
func judgeAll(ctx context.Context, p *pipeline.Pipeline, sources iter.Seq2[archive.Source, error], pictures bool, r *finding.Report) error {
	return judgeInto(ctx, walk{}, p, sources, pictures, r)
}

func judgeInto(ctx context.Context, o walk, p *pipeline.Pipeline, sources iter.Seq2[archive.Source, error], pictures bool, r *finding.Report) error {
	return through(ctx, o, sources, judgeOne(ctx, p, pictures), func(v verdict) error {
		if len(v.errs) > 0 {
			r.Errors = append(r.Errors, v.errs...)
		} else {
			r.Jobs = append(r.Jobs, v.job)
		}
		return nil
	})
}

// judgeOne judges one source, or says why it cannot be judged. A record that is
// being judged when the context ends is judged to the end.
func judgeOne(ctx context.Context, p *pipeline.Pipeline, pictures bool) func(archive.Source, error) verdict {
	ctx = context.WithoutCancel(ctx)
	return func(s archive.Source, err error) verdict {
		doc, errs := readSource(s, err)
		if len(errs) > 0 {
			return verdict{file: s.Name, errs: errs}
		}
		if !pictures {
			job, errs := p.Run(ctx, doc, s.Files)
			return verdict{s.Name, job, errs}
		}
		job, done, errs := p.RunWithInput(ctx, doc, s.Files)
		if len(errs) == 0 {
			illustrate(&job, done)
		}
		return verdict{s.Name, job, errs}
	}
}

// readSource reads one source, or says why it cannot be read.
func readSource(s archive.Source, err error) (*record.Document, []finding.Error) {
	if err != nil {
		return nil, []finding.Error{archive.AsError(s.Name, err)}
	}
	doc, bad := s.Read()
	if bad != nil {
		return nil, []finding.Error{*bad}
	}
	return doc, nil
}

// walk is how a command goes through many records; the zero value goes through
// all of them and shows nothing.
type walk struct {
	failFast bool
	progress progress
	world    world
}

// interrupted says where a walk was told to stop.
type interrupted struct {
	records int
	last    string // file of the last record that was judged
}

func (e *interrupted) Error() string {
	if e.records == 0 {
		return "interrupted before the first record was judged"
	}
	return fmt.Sprintf("interrupted after %d records, the last one in %s; the rest was not judged", e.records, e.last)
}

// Unwrap makes the program exit as one that was interrupted.
func (e *interrupted) Unwrap() error { return context.Canceled }

// asError is the interruption as a report shows it, so that what is finished
// does not look like all there is.
func (e *interrupted) asError(paths []string) finding.Error {
	return finding.Error{File: paths[0], Line: 1, Column: 1, Message: e.Error()}
}

// enough says at which record a walk ended that was to end at the first one
// that is not ready.
type enough struct{ last string }

func (e *enough) Error() string {
	return "stopped at " + e.last + ", the first record that is not ready"
}

// sentence is the same as a report shows it, so that what is judged does not
// look like all there is.
func (e *enough) sentence() string {
	return "S" + e.Error()[1:] + "; records after it were not judged."
}

func (e *enough) tell(w world) {
	_, _ = fmt.Fprintf(w.errs, "slablint: %v\n", e) // nobody is left to tell
}

// Once this many records are judged the start is long over: the rulebook runs
// the fast way, and what preparing it took is given back. Collecting less often
// then saves a sixth of the time and still takes less memory than the start did;
// any sooner it can meet the start, and the two together take half as much again.
const (
	settled   = 500
	archiveGC = 400
)

// through judges sources with several goroutines and emits what came of them in
// their order. It returns *interrupted when the context ends and *enough when a
// record was the last by the terms of the walk.
func through[T interface {
	of() (file string, status int)
}](ctx context.Context, o walk, sources iter.Seq2[archive.Source, error], judge func(archive.Source, error) T, emit func(T) error) error {
	var so interrupted
	err := archive.Each(ctx, sources, runtime.GOMAXPROCS(0), judge, func(t T) error {
		file, status := t.of()
		if so.records, so.last = so.records+1, file; so.records == settled {
			debug.SetGCPercent(archiveGC)
		}
		if err := emit(t); err != nil {
			return err
		}
		o.progress.tick()
		if o.failFast && status != outcome.StatusReady {
			return &enough{file}
		}
		return nil
	})
	o.progress.end(o.world.errs)
	if err != nil && errors.Is(err, ctx.Err()) {
		return &so
	}
	return err
}
