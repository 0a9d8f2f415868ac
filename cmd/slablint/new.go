package main

import (
	"bytes"
	"context"
	"errors"
	"fmt"
	"io"
	"regexp"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/form"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/replace"
	"github.com/slablint/slablint/internal/rulebook"
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

// turns is how many ways of filling in are tried: what a computed value lacks
// shows only once the rest is there.
const turns = 4

// questions finds out what the requirements of a job will read.
func (f *startFlags) questions(ctx context.Context) (questions, error) {
	if len(f.profiles) == 0 {
		return questions{}, errors.New("--profile is needed: it says what will be asked")
	}
	f.start.Profiles = f.profiles
	rb, err := f.rulebook()
	if err != nil {
		return questions{}, err
	}
	a, err := newAsker(rb, f.profiles)
	if err != nil {
		return questions{}, err
	}
	return a.questions(ctx, f.start)
}

// asker knows what there is to ask and what a profile stack will read.
type asker struct {
	fields    []form.Field
	selection *rulebook.Selection
	pipeline  *pipeline.Pipeline
}

func newAsker(rb *rulebook.Rulebook, profiles []string) (asker, error) {
	var a asker
	var err error
	if a.selection, err = rb.Select(profiles...); err != nil {
		return a, err
	}
	if a.pipeline, err = pipeline.New(rb, pipeline.Options{Profiles: profiles}); err != nil {
		return a, err
	}
	a.fields, err = form.Fields(schema.Job())
	return a, err
}

// questions judges a record in which nothing is filled in: a requirement that
// does not apply to such a house and system has no question, and a computed
// value asks for what it was not given. Then it fills in what was asked and
// asks for what is still missing, until nothing is.
func (a asker) questions(ctx context.Context, start form.Start) (questions, error) {
	stage, err := finding.ParseStage(start.Stage)
	if err != nil {
		return questions{}, fmt.Errorf("--stage: %w", err)
	}
	i := interview{asker: a, stage: stage, needed: map[string]bool{
		"/job/title": true, "/job/id": true, "/house/foundations/*/kind": true,
		"/systems/*/kind": true, "/systems/*/powered_by": true, "/systems/*/foundations": true,
	}}
	var blank bytes.Buffer
	if err := form.WriteYAML(&blank, a.fields, start); err != nil {
		return questions{}, err
	}
	job, err := i.ask(ctx, blank.Bytes(), true)
	if err != nil {
		return questions{}, err
	}
	for before := 0; before < len(i.needed); {
		before = len(i.needed)
		chosen := form.Select(a.fields, i.needed)
		for turn := range turns {
			if _, err := i.ask(ctx, form.Sample(chosen, start, turn), false); err != nil {
				return questions{}, err
			}
		}
	}
	return questions{form.Select(a.fields, i.needed), job.Cautions}, nil
}

// interview finds out what has to be asked about one job.
type interview struct {
	asker
	stage  finding.Stage
	needed map[string]bool // places of the record, with * for any index
}

// ask judges a record and notes what is missing in it. Of an empty record it
// notes all that the requirements that reach it read.
func (i *interview) ask(ctx context.Context, text []byte, empty bool) (finding.Job, error) {
	doc, err := record.ReadYAML("a sample record", text, record.Limits{})
	if err != nil {
		return finding.Job{}, err
	}
	job, done, errs := i.pipeline.RunWithInput(ctx, doc, nil)
	if len(errs) > 0 { // a kind that the schema does not know
		return finding.Job{}, errors.New(errs[0].Message)
	}
	for _, f := range job.Findings {
		if f.Verdict == finding.NotApplicable || !i.stage.Reached(f.Stage) {
			continue
		}
		for _, missing := range f.Missing {
			i.needed[digits.ReplaceAllString(missing, "/*")] = true
		}
		if !empty && f.Verdict != finding.Unrecorded && f.Verdict != finding.Undetermined {
			continue
		}
		for _, path := range i.selection.Requirement(f.Requirement).Reads {
			if place.Pointer(path).HasPrefix("/derived") {
				i.lacks(done.Input, path, empty)
			} else if empty {
				i.needed[path] = true
			}
		}
	}
	return job, nil
}

// lacks notes what a computed value was not given, or everything that it rests
// on.
func (i *interview) lacks(input map[string]any, path string, everything bool) {
	lists := []string{"undetermined"}
	if everything {
		lists = append(lists, "inputs")
	}
	collect(input, place.Pointer(path).Split(), func(value any) {
		for _, list := range lists {
			pointers, _ := record.Get(value, list).([]any)
			for _, p := range pointers {
				if text, ok := p.(string); ok {
					i.needed[digits.ReplaceAllString(text, "/*")] = true
				}
			}
		}
	})
}

var digits = regexp.MustCompile(`/\d+`)

// collect visits every value at a template, in which * stands for any index.
func collect(value any, path []string, visit func(any)) {
	if len(path) == 0 {
		visit(value)
		return
	}
	if list, ok := value.([]any); ok {
		for _, item := range list {
			collect(item, path[1:], visit)
		}
	} else if next := record.Get(value, path[0]); next != nil {
		collect(next, path[1:], visit)
	}
}
