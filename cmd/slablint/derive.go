package main

import (
	"encoding/json"
	"io"
	"io/fs"
	"os"
	"path/filepath"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/report"
)

func newDerive(w world) *cobra.Command {
	return &cobra.Command{
		Use:   "derive PATH",
		Short: "Print a record with its computed values, as rules read it",
		Args:  cobra.ExactArgs(1),
		RunE: func(_ *cobra.Command, args []string) error {
			rb, err := (&ruleFlags{}).rulebook()
			if err != nil {
				return err
			}
			p, err := pipeline.New(rb, pipeline.Options{})
			if err != nil {
				return err
			}
			doc, files, err := openRecord(w, args[0])
			if err != nil {
				return reportErrors(w, []finding.Error{archive.AsError(args[0], err)})
			}
			derived, errs := p.Derive(doc, files)
			if len(errs) > 0 {
				return reportErrors(w, errs)
			}
			out := json.NewEncoder(w.out)
			out.SetEscapeHTML(false)
			out.SetIndent("", "  ")
			return out.Encode(record.Plain(derived))
		},
	}
}

// openRecord reads one record and names the folder its evidence lies in.
func openRecord(w world, path string) (*record.Document, fs.FS, error) {
	if path == "-" {
		data, err := io.ReadAll(w.in)
		if err != nil {
			return nil, nil, err
		}
		doc, err := record.Read("-", data, record.Limits{})
		return doc, nil, err
	}
	data, err := os.ReadFile(path)
	if err != nil {
		return nil, nil, err
	}
	doc, err := record.Read(path, data, record.Limits{})
	return doc, os.DirFS(filepath.Dir(path)), err
}

// reportErrors prints errors of the input and gives the exit status.
func reportErrors(w world, errs []finding.Error) error {
	r := finding.Report{Format: finding.Format, Notice: finding.Notice, Errors: errs}
	if err := report.Text(w.errs, r, report.Options{Width: pageWidth}); err != nil {
		return err
	}
	return statusError(outcome.StatusError)
}
