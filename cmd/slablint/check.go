package main

import (
	"bufio"
	"cmp"
	"context"
	"errors"
	"fmt"
	"io"
	"os"
	"slices"
	"strings"
	"time"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/replace"
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

// batchFlags are the flags of check alone, for many records.
type batchFlags struct {
	failFast bool
	lines    bool // paths are JSON lines whatever they are called
}

func newCheck(w world) *cobra.Command {
	var f checkFlags
	var batch batchFlags
	cmd := &cobra.Command{
		Use:   "check [PATH...]",
		Short: "Judge records: files, folders, - for standard input, .ndjson streams",
		Long: "Judges the records at the given paths: files, every record below a folder, - for\n" +
			"standard input, .ndjson and .jsonl files with one record a line. Records that cannot\n" +
			"be read are reported and the rest is judged all the same. Ctrl-C stops, writes what\n" +
			"is finished and gives exit status 130. Output files are replaced as a whole: one that\n" +
			"was killed leaves the old report and beside it a hidden .NAME.*.unfinished, which a\n" +
			"later run for the same file removes when it is an hour old.",
		Example: "  slablint check jobs/J-0107.yaml\n" +
			"  slablint check --stage roughed-in --format json jobs/\n" +
			"  slablint check --format json --output j.json --format text J-0107.yaml\n" +
			"  zcat archive.ndjson.gz | slablint check --lines --format jsonl -",
		RunE: func(cmd *cobra.Command, args []string) error {
			if len(args) == 0 {
				return errors.New("nothing to check: name a record, a folder, or - for standard input")
			}
			if err := f.spare(args); err != nil {
				return err
			}
			options, err := f.options(w)
			if err != nil {
				return err
			}
			p, err := f.open(options)
			if err != nil {
				return err
			}
			return f.run(cmd.Context(), w, p, args, batch)
		},
	}
	f.add(cmd)
	cmd.Flags().Lookup("format").Usage += ", or alone " + lines + " (a line a record, written as it is judged)"
	cmd.Flags().BoolVar(&batch.failFast, "fail-fast", false, "stop at the first record that is on hold or cannot be judged")
	cmd.Flags().BoolVar(&batch.lines, "lines", false, "standard input and the files are JSON lines, one record a line")
	return cmd
}

// run judges and writes. An interruption does not keep what is finished from
// being written; the reports say that they are not all.
func (f *checkFlags) run(ctx context.Context, w world, p *pipeline.Pipeline, paths []string, batch batchFlags) error {
	sources := archive.Sources(paths, w.in, archive.IsRecord)
	if batch.lines {
		sources = archive.Lines(paths, w.in)
	}
	o := walk{failFast: batch.failFast, world: w}
	if slices.Contains(f.formats, lines) {
		return f.stream(ctx, o, p, paths, sources, batch)
	}
	o.progress = newProgress(w, paths, batch.lines)
	r := newReport()
	err := judgeInto(ctx, o, p, sources, f.pictures(), &r)
	var cut *interrupted
	var last *enough
	switch {
	case errors.As(err, &cut):
		r.Errors = append(r.Errors, cut.asError(paths))
	case errors.As(err, &last):
		last.tell(w)
		r.Stopped = last.sentence()
	case err != nil:
		return err
	}
	return afterCut(cut, f.finish(w, &r))
}

// afterCut is how a run ends that may have been interrupted: a report that could
// not be written is worse.
func afterCut(cut *interrupted, err error) error {
	var status statusError
	if cut != nil && (err == nil || errors.As(err, &status)) {
		return cut
	}
	return err
}

// spare refuses to write a report over one of the records named: it would be lost.
func (f *checkFlags) spare(paths []string) error {
	for _, output := range f.outputs {
		to, err := os.Stat(output)
		if err != nil || !to.Mode().IsRegular() {
			continue
		}
		for _, path := range paths {
			if from, err := os.Stat(path); err == nil && os.SameFile(from, to) {
				return fmt.Errorf("--output %s is the record itself: name another file", output)
			}
		}
	}
	return nil
}

func newReport() finding.Report {
	return finding.Report{Format: finding.Format, Notice: finding.Notice, Rulebook: finding.Rulebook{Version: version}}
}

func (f *checkFlags) add(cmd *cobra.Command) {
	f.ruleFlags.add(cmd)
	cmd.Flags().StringVar(&f.stage, "stage", "", "judge as if the job stood at this stage: planned, roughed-in, running or closeout")
	cmd.Flags().StringVar(&f.holdAt, "hold-at", "required", "lightest grade that holds a job: hazard, required or recommended")
	cmd.Flags().StringVar(&f.asOf, "as-of", "", "day on which variances must be valid, as 2026-03-17 (default today)")
	f.addFormats(cmd)
}

// addFormats adds the flags that say how a report is written.
func (f *checkFlags) addFormats(cmd *cobra.Command) {
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
	err := f.writeFormats(w, func(format string, toFile bool) (func(io.Writer) error, error) {
		write, err := report.Named(format)
		options := report.Options{All: f.all, Width: pageWidth}
		if !toFile {
			options.Colour = w.colour
			options.Width = cmp.Or(w.width, options.Width)
		}
		return func(out io.Writer) error { return write(out, *r, options) }, err
	})
	if err != nil {
		return err
	}
	if status := outcome.Status(*r); status != outcome.StatusReady {
		return statusError(status)
	}
	return nil
}

// writeFormats writes every format asked for, text if none was, to the file at
// the same place or else to standard output.
func (f *checkFlags) writeFormats(w world, writer func(format string, toFile bool) (func(io.Writer) error, error)) error {
	formats := f.formats
	if len(formats) == 0 {
		formats = []string{"text"}
	}
	if len(f.outputs) > len(formats) {
		return errors.New("--output is given more often than --format")
	}
	for i, format := range formats {
		toFile := i < len(f.outputs) && f.outputs[i] != "-"
		write, err := writer(format, toFile)
		if err != nil {
			return err
		}
		if toFile {
			err = replace.File(f.outputs[i], write)
		} else {
			out := bufio.NewWriter(w.out)
			if err = write(out); err == nil {
				err = out.Flush()
			}
		}
		if err != nil {
			return err
		}
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
