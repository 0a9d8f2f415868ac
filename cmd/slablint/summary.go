package main

import (
	"context"
	"errors"
	"io"
	"iter"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/summary"
)

func newSummary(w world) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "summary [PATH...]",
		Short: "Count over an archive: outcomes, what holds jobs, radon reduction, retests due",
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return errors.New("nothing to sum up: name the folder of the records")
			}
			options, err := f.options(w)
			if err != nil {
				return err
			}
			counter := summary.NewCounter(options.AsOf)
			if err := count(cmd.Context(), &f, options, walk{progress: newProgress(w, args, false), world: w}, archive.Sources(args, w.in, archive.IsRecord), counter); err != nil {
				return err
			}
			return f.writeSummary(w, counter.Summary())
		},
	}
	f.add(cmd)
	cmd.Flags().Lookup("format").Usage = "text, json, csv or html (repeat together with --output)"
	cmd.Flags().Lookup("as-of").Usage = "day by which retests are due and variances must be valid, as 2026-03-17 (default today)"
	return cmd
}

// writeSummary writes the summary in every format asked for. Records that
// could not be judged make the exit status that of wrong input.
func (f *checkFlags) writeSummary(w world, s summary.Summary) error {
	err := f.writeFormats(w, func(format string, _ bool) (func(io.Writer) error, error) {
		return func(out io.Writer) error { return summary.Write(out, s, format) }, nil
	})
	if err != nil {
		return err
	}
	if s.NotJudged > 0 {
		return statusError(outcome.StatusError)
	}
	return nil
}

// counted is what the count keeps of one record.
type counted struct {
	file  string
	facts summary.Facts
	errs  []finding.Error
}

func (c counted) of() (string, int) { return c.file, outcome.StatusReady }

func count(ctx context.Context, f *checkFlags, options pipeline.Options, o walk, sources iter.Seq2[archive.Source, error], counter *summary.Counter) error {
	options.Values = false
	p, err := f.open(options)
	if err != nil {
		return err
	}
	judge := func(s archive.Source, err error) counted {
		doc, errs := readSource(s, err)
		if len(errs) > 0 {
			return counted{file: s.Name, errs: errs}
		}
		job, done, errs := p.RunWithInput(context.WithoutCancel(ctx), doc, s.Files)
		if len(errs) > 0 {
			return counted{file: s.Name, errs: errs}
		}
		return counted{file: s.Name, facts: summary.FactsOf(job, done.Input)}
	}
	return through(ctx, o, sources, judge, func(c counted) error {
		if len(c.errs) > 0 {
			counter.Fail(c.errs)
		} else {
			counter.Add(c.facts)
		}
		return nil
	})
}
