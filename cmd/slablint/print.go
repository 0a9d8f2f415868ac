package main

import (
	"encoding/hex"
	"errors"
	"fmt"
	"io"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/report"
)

func newPrint(w world) *cobra.Command {
	var f checkFlags
	cmd := &cobra.Command{
		Use:   "print SAVED",
		Short: "Write a saved JSON report in other formats, without judging again",
		Long: "print takes a report that check saved with --format json and writes it in other\n" +
			"formats. Nothing is judged again: findings, outcome and exit status are those of\n" +
			"the saved report. What is met is there if it was saved with --all.\n\n" +
			"Drawings, measurements and photos are there if the report holds them, which it\n" +
			"does when html was asked for in the same run. Otherwise they are made from the\n" +
			"record, if it lies where it was judged and has not changed since.",
		Example: "  slablint print J-0107.report.json --format html --output J-0107.html",
		Args:    cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			r, err := saved(args[0], w.in)
			if err != nil {
				return inWords(args[0], err)
			}
			if f.pictures() {
				if err := f.complete(&r, w.errs); err != nil {
					return err
				}
			}
			return f.finish(w, &r)
		},
	}
	f.addFormats(cmd)
	cmd.Flags().StringVar(&f.policy, "policy", "", "folder with further requirements that the record was judged by")
	return cmd
}

// saved reads the report in a file, or from standard input.
func saved(path string, in io.Reader) (finding.Report, error) {
	if path != "-" {
		file, err := os.Open(path)
		if err != nil {
			return finding.Report{}, err
		}
		defer file.Close() //nolint:errcheck // only read from
		in = file
	}
	r, err := report.Read(in)
	if err != nil {
		return finding.Report{}, fmt.Errorf("%s: %w", path, err)
	}
	return r, nil
}

// complete makes drawings, measurements and photos for jobs that were saved
// without, and says for which it cannot.
func (f *checkFlags) complete(r *finding.Report, says io.Writer) error {
	var p *pipeline.Pipeline
	for i := range r.Jobs {
		job := &r.Jobs[i]
		if len(job.Figures)+len(job.Readings)+len(job.Photos) > 0 {
			continue
		}
		if p == nil {
			var err error
			if p, err = f.open(pipeline.Options{}); err != nil {
				return err
			}
		}
		if err := f.redraw(p, job); err != nil {
			if _, err := fmt.Fprintf(says, "slablint: %s: without drawings, measurements and photos: %v\n", job.ID, err); err != nil {
				return err
			}
		}
	}
	return nil
}

// redraw illustrates a saved job from its record, if that and the rulebook are
// what they were.
func (f *checkFlags) redraw(p *pipeline.Pipeline, job *finding.Job) error {
	if job.File == "-" || filepath.Ext(job.File) == ".ndjson" {
		return errors.New("the record came in a stream")
	}
	rb, err := f.rulebook()
	if err != nil {
		return err
	}
	selection, err := rb.Select(job.Profiles...)
	if err != nil {
		return err
	}
	if selection.Digest != job.Digest {
		return errors.New("it was judged by another rulebook than this program has")
	}
	for source, err := range archive.Sources([]string{job.File}, nil, archive.IsRecord) {
		if err != nil {
			return fmt.Errorf("%s: %s", job.File, archive.AsError(job.File, err).Message)
		}
		doc, bad := source.Read()
		if bad != nil {
			return fmt.Errorf("%s: %s", job.File, bad.Message)
		}
		if hex.EncodeToString(doc.SHA256[:]) != job.SHA256 {
			return fmt.Errorf("%s has changed since it was judged", job.File)
		}
		input, errs := p.Derive(doc, source.Files)
		if len(errs) > 0 {
			return fmt.Errorf("%s: %s", job.File, errs[0].Message)
		}
		illustrate(job, pipeline.Done{Input: input, Selection: selection, Files: source.Files})
	}
	return nil
}
