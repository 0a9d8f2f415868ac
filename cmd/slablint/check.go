package main

import (
	"bufio"
	"context"
	"errors"
	"fmt"
	"io"
	"iter"
	"os"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/report"
)

// checkFlags are the flags of commands that judge records.
type checkFlags struct {
	ruleFlags
	stage   string
	holdAt  string
	asOf    string
	formats []string
	outputs []string
	all     bool
}

func newCheck(w world) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "check [PATH...]",
		Short: "Judge records: files, folders, - for standard input, .ndjson streams",
		Example: "  slablint check jobs/J-0107.yaml\n" +
			"  slablint check --stage roughed-in --format json jobs/\n" +
			"  slablint check --format json --output j.json --format text J-0107.yaml",
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return errors.New("nothing to check: name a record, a folder, or - for standard input")
			}
			options, err := f.options(w)
			if err != nil {
				return err
			}
			p, err := f.open(options)
			if err != nil {
				return err
			}
			sources := archive.Sources(args, w.in, archive.IsRecord)
			if slices.Contains(f.formats, lines) {
				return f.stream(cmd.Context(), w, p, sources)
			}
			r := newReport()
			if err := judgeAll(cmd.Context(), p, sources, f.pictures(), &r); err != nil {
				return err
			}
			return f.finish(w, &r)
		},
	}
	f.add(cmd)
	cmd.Flags().Lookup("format").Usage += ", or alone " + lines + " (a line a record, written as it is judged)"
	return cmd
}

func newReport() finding.Report {
	return finding.Report{Format: finding.Format, Notice: finding.Notice, Rulebook: finding.Rulebook{Version: version}}
}

func (f *checkFlags) add(cmd *cobra.Command) {
	f.ruleFlags.add(cmd)
	cmd.Flags().StringVar(&f.stage, "stage", "", "judge as if the job stood at this stage: planned, roughed-in, running or closeout")
	cmd.Flags().StringVar(&f.holdAt, "hold-at", "required", "lightest grade that holds a job: hazard, required or recommended")
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "day on which variances must be valid, as 2026-03-17 (default today)")
	cmd.Flags().StringArrayVar(&f.formats, "format", nil, "output format, default text (repeat together with --output): "+formatNames())
	cmd.Flags().StringArrayVar(&f.outputs, "output", nil, "file for the format at the same place, default standard output")
	cmd.Flags().BoolVar(&f.all, "all", false, "show met and not applicable too")
}

func formatNames() string {
	var names []string
	for _, format := range report.Formats() {
		names = append(names, format.Name)
	}
	return strings.Join(names, ", ")
}

// options turns the flags into the terms of judging.
func (f *checkFlags) options(w world) (pipeline.Options, error) {
	options := pipeline.Options{Profiles: f.profiles, AsOf: w.today, Values: true}
	var err error
	if options.HoldAt, err = finding.ParseGrade(f.holdAt); err != nil {
		return options, fmt.Errorf("--hold-at: %w", err)
	}
	if f.stage != "" {
		if options.Stage, err = finding.ParseStage(f.stage); err != nil {
			return options, fmt.Errorf("--stage: %w", err)
		}
	}
	if f.asOf != "" {
		if options.AsOf, err = time.Parse(time.DateOnly, f.asOf); err != nil {
			return options, fmt.Errorf("--as-of: expected a day such as 2026-03-17, found %q", f.asOf)
		}
	}
	return options, nil
}

// pictures tells whether one of the formats shows drawings and photos.
func (f *checkFlags) pictures() bool { return slices.Contains(f.formats, "html") }

// open makes the pipeline for the rulebook that the flags choose.
func (f *checkFlags) open(options pipeline.Options) (*pipeline.Pipeline, error) {
	rb, err := f.rulebook()
	if err != nil {
		return nil, err
	}
	if len(f.profiles) > 0 { // a wrong name is a mistake in the call, not in every record
		if _, err := rb.Select(f.profiles...); err != nil {
			return nil, err
		}
	}
	return pipeline.New(rb, options)
}

// finish completes the report, writes it in every format asked for and gives
// the exit status as an error.
func (f *checkFlags) finish(w world, r *finding.Report) error {
	completeRulebook(r)
	formats := f.formats
	if len(formats) == 0 {
		formats = []string{"text"}
	}
	if len(f.outputs) > len(formats) {
		return errors.New("--output is given more often than --format")
	}
	for i, name := range formats {
		write, err := report.Named(name)
		if err != nil {
			return err
		}
		options := report.Options{All: f.all, Width: 80}
		if i < len(f.outputs) && f.outputs[i] != "-" {
			if err := writeFile(f.outputs[i], func(out io.Writer) error { return write(out, *r, options) }); err != nil {
				return err
			}
			continue
		}
		options.Colour = w.colour
		if w.width > 0 {
			options.Width = w.width
		}
		out := bufio.NewWriter(w.out)
		if err := write(out, *r, options); err != nil {
			return err
		}
		if err := out.Flush(); err != nil {
			return err
		}
	}
	if status := outcome.Status(*r); status != outcome.StatusReady {
		return statusError(status)
	}
	return nil
}

// completeRulebook fills in what all jobs of the report have in common.
func completeRulebook(r *finding.Report) {
	for _, job := range r.Jobs {
		for _, name := range job.Profiles {
			if !slices.Contains(r.Rulebook.Profiles, name) {
				r.Rulebook.Profiles = append(r.Rulebook.Profiles, name)
			}
		}
		if r.Rulebook.Digest == "" {
			r.Rulebook.Digest = job.Digest
		} else if r.Rulebook.Digest != job.Digest {
			r.Rulebook.Digest = "several, see each job"
		}
	}
}

// writeFile replaces a file as a whole: readers see the old one or the new one.
func writeFile(path string, write func(io.Writer) error) error {
	temporary, err := os.CreateTemp(filepath.Dir(path), "."+filepath.Base(path)+".*")
	if err != nil {
		return err
	}
	defer os.Remove(temporary.Name()) //nolint:errcheck // gone after the rename
	out := bufio.NewWriter(temporary)
	err = errors.Join(write(out), out.Flush(), temporary.Chmod(0o644), temporary.Sync(), temporary.Close())
	if err != nil {
		return fmt.Errorf("%s: %w", path, err)
	}
	return os.Rename(temporary.Name(), path)
}

// verdict is what came of one source.
type verdict struct {
	job  finding.Job
	errs []finding.Error
}

// judgeAll judges every source and adds to the report in their order. One bad
// record never stops the others.
func judgeAll(ctx context.Context, p *pipeline.Pipeline, sources iter.Seq2[archive.Source, error], pictures bool, r *finding.Report) error {
	judge := judgeOne(ctx, p, pictures)
	return archive.Each(ctx, sources, runtime.GOMAXPROCS(0), judge, func(v verdict) error {
		if len(v.errs) > 0 {
			r.Errors = append(r.Errors, v.errs...)
		} else {
			r.Jobs = append(r.Jobs, v.job)
		}
		return nil
	})
}

// judgeOne judges one source, or says why it cannot be judged.
func judgeOne(ctx context.Context, p *pipeline.Pipeline, pictures bool) func(archive.Source, error) verdict {
	return func(s archive.Source, err error) verdict {
		if err != nil {
			return verdict{errs: []finding.Error{archive.AsError(s.Name, err)}}
		}
		doc, bad := s.Read()
		if bad != nil {
			return verdict{errs: []finding.Error{*bad}}
		}
		job, done, errs := p.RunWithInput(ctx, doc, s.Files)
		if pictures && len(errs) == 0 {
			illustrate(&job, done)
		}
		return verdict{job, errs}
	}
}
