package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/form"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/replace"
	"github.com/slablint/slablint/schema"
)

// startFlags say what is known of a job before anybody goes there.
type startFlags struct {
	ruleFlags
	start  form.Start
	output string
}

func (f *startFlags) add(cmd *cobra.Command) {
	f.ruleFlags.add(cmd)
	cmd.Flags().StringVar(&f.start.Job, "job", "J-0000", "job number")
	cmd.Flags().StringVar(&f.start.Foundation, "foundation", "basement", "kind of foundation: slab-on-grade, basement, crawlspace, ...")
	cmd.Flags().StringVar(&f.start.System, "system", "sub-slab", "kind of system: sub-slab, drain-tile, block-wall, sub-membrane, ...")
	cmd.Flags().StringVar(&f.start.Stage, "stage", "closeout", "ask for all that is due by this stage")
	cmd.Flags().StringVar(&f.output, "output", "", "file to write, default standard output")
}

func newNew(w world) *cobra.Command {
	var f startFlags
	cmd := &cobra.Command{
		Use:     "new",
		Short:   "Write a record to fill in, for this kind of house and system",
		Example: "  slablint new --job J-0130 --foundation crawlspace --system sub-membrane --profile us-epa-1994",
		Args:    cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			q, err := f.questions(cmd.Context())
			if err != nil {
				return err
			}
			return f.write(w, func(out io.Writer) error { return form.WriteYAML(out, q.fields, f.start) })
		},
	}
	f.add(cmd)
	return cmd
}

func newWorksheet(w world) *cobra.Command {
	var f startFlags
	cmd := &cobra.Command{
		Use:   "worksheet",
		Short: "Write the same questions as a sheet to print and take on site",
		Args:  cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			q, err := f.questions(cmd.Context())
			if err != nil {
				return err
			}
			return f.write(w, func(out io.Writer) error {
				return form.WriteSheet(out, q.fields, f.start, finding.Notice, q.cautions)
			})
		},
	}
	f.add(cmd)
	return cmd
}

func (f *startFlags) write(w world, write func(io.Writer) error) error {
	if f.output == "" || f.output == "-" {
		return write(w.out)
	}
	return replace.File(f.output, write)
}

// questions is what the requirements of a job will read.
type questions struct {
	fields   []form.Field
	cautions []string
}

// questions judges a record in which nothing is filled in: a requirement that
// does not apply to such a house and system has no question, and a computed
// value asks for what it was not given.
func (f *startFlags) questions(ctx context.Context) (questions, error) {
	if len(f.profiles) == 0 {
		return questions{}, errors.New("--profile is needed: it says what will be asked")
	}
	f.start.Profiles = f.profiles
	stage, err := finding.ParseStage(f.start.Stage)
	if err != nil {
		return questions{}, fmt.Errorf("--stage: %w", err)
	}
	rb, err := f.rulebook()
	if err != nil {
		return questions{}, err
	}
	selection, err := rb.Select(f.profiles...)
	if err != nil {
		return questions{}, err
	}
	p, err := pipeline.New(rb, pipeline.Options{Profiles: f.profiles})
	if err != nil {
		return questions{}, err
	}
	fields, err := form.Fields(schema.Job())
	if err != nil {
		return questions{}, err
	}
	var blank bytes.Buffer
	if err := form.WriteYAML(&blank, fields, f.start); err != nil {
		return questions{}, err
	}
	doc, err := record.ReadYAML("a blank record", blank.Bytes(), record.Limits{})
	if err != nil {
		return questions{}, err
	}
	job, done, errs := p.RunWithInput(ctx, doc, nil)
	if len(errs) > 0 { // a kind that the schema does not know
		return questions{}, errors.New(errs[0].Message)
	}
	needed := map[string]bool{
		"/job/title": true, "/job/id": true, "/house/foundations/*/kind": true,
		"/systems/*/kind": true, "/systems/*/powered_by": true, "/systems/*/foundations": true,
	}
	for _, name := range applicable(job, stage) {
		for _, path := range selection.Requirement(name).Reads {
			addNeeded(needed, path, done.Input)
		}
	}
	for _, finding := range job.Findings {
		if finding.Verdict != "not-applicable" && stage.Reached(finding.Stage) {
			for _, missing := range finding.Missing {
				needed[digits.ReplaceAllString(missing, "/*")] = true
			}
		}
	}
	return questions{form.Select(fields, needed), job.Cautions}, nil
}

var digits = regexp.MustCompile(`/\d+`)

// applicable lists the requirements that are due by a stage and reach this job.
func applicable(job finding.Job, stage finding.Stage) []string {
	var names []string
	for _, f := range job.Findings {
		if f.Verdict != finding.NotApplicable && stage.Reached(f.Stage) && !slices.Contains(names, f.Requirement) {
			names = append(names, f.Requirement)
		}
	}
	return names
}

// addNeeded adds a place of the record, or the places that a computed value was
// not given.
func addNeeded(needed map[string]bool, path string, input map[string]any) {
	if !place.Pointer(path).HasPrefix("/derived") {
		needed[path] = true
		return
	}
	collect(input, place.Pointer(path).Split(), func(value any) {
		fields, _ := value.(map[string]any)
		for _, list := range []string{"undetermined", "inputs"} {
			pointers, _ := fields[list].([]any)
			for _, p := range pointers {
				if text, ok := p.(string); ok {
					needed[digits.ReplaceAllString(text, "/*")] = true
				}
			}
		}
	})
}

// collect visits every value at a template, in which * stands for any index.
func collect(value any, path []string, visit func(any)) {
	if len(path) == 0 {
		visit(value)
		return
	}
	switch v := value.(type) {
	case map[string]any:
		if next, ok := v[path[0]]; ok {
			collect(next, path[1:], visit)
		}
	case []any:
		for _, item := range v {
			collect(item, path[1:], visit)
		}
	}
}
