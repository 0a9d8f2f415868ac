// Package pipeline runs the steps for one record in their order: validate,
// derive, judge, decide. Reading comes before it and reporting after.
package pipeline

import (
	"context"
	"encoding/hex"
	"encoding/json"
	"fmt"
	"io/fs"
	"strings"
	"sync"
	"time"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/judge"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
	"github.com/slablint/slablint/internal/validate"
	"github.com/slablint/slablint/schema"
)

// Options choose how records are judged; the zero value takes profiles and
// stage from each record and holds at grade required.
type Options struct {
	Profiles []string // instead of the record's own
	Stage    finding.Stage
	HoldAt   finding.Grade
	AsOf     time.Time
	Known    func(job string, f finding.Finding) bool
	Values   bool // list derived values in the job
}

// Done is what a job was judged from and by.
type Done struct {
	Input     map[string]any // the canonical record with derived values
	Selection *rulebook.Selection
	Files     fs.FS // the job's folder, or nil
}

// Pipeline judges records. It can be shared by goroutines.
type Pipeline struct {
	rulebook  *rulebook.Rulebook
	validator *validate.Validator
	shape     *record.Shape
	values    *record.Shape // of derived values
	options   Options

	workspaces sync.Pool // of *derive.Workspace

	mu     sync.Mutex
	judges map[string]*stack // by profile stack
}

// stack is one compiled profile stack.
type stack struct {
	once      sync.Once
	selection *rulebook.Selection
	judge     *judge.Judge
	err       error
}

// New prepares everything that does not depend on a record.
func New(rb *rulebook.Rulebook, options Options) (*Pipeline, error) {
	validator, err := validate.New()
	if err != nil {
		return nil, err
	}
	shape, err := record.ParseShape(schema.Job())
	if err != nil {
		return nil, err
	}
	values, err := record.ParseShape(schema.Derived())
	if err != nil {
		return nil, err
	}
	return &Pipeline{
		rulebook: rb, validator: validator, shape: shape, values: values, options: options,
		workspaces: sync.Pool{New: func() any { return new(derive.Workspace) }},
		judges:     map[string]*stack{},
	}, nil
}

// Derive validates one record and completes it with computed values: the
// canonical record with the member "derived". Files is the job's folder, nil
// when there is none to look into.
func (p *Pipeline) Derive(doc *record.Document, files fs.FS) (map[string]any, []finding.Error) {
	return p.complete(doc, files, derive.Derive)
}

// deriver is derive.Derive, or what does the same in memory of its own.
type deriver func(input map[string]any, files fs.FS) record.Members

func (p *Pipeline) complete(doc *record.Document, files fs.FS, work deriver) (map[string]any, []finding.Error) {
	if errs := p.validator.Check(doc); len(errs) > 0 {
		return nil, errs
	}
	input, unreadable := doc.Canonical(p.shape)
	if len(unreadable) > 0 {
		errs := make([]finding.Error, len(unreadable))
		for i, e := range unreadable {
			errs[i] = finding.Error{File: e.Spot.File, Line: e.Spot.Line, Column: e.Spot.Column, Message: e.Message}
		}
		return nil, errs
	}
	input["derived"] = work(input, files)
	return input, nil
}

// Run judges one record. It returns the job, or the errors that keep it from
// being judged.
func (p *Pipeline) Run(ctx context.Context, doc *record.Document, files fs.FS) (finding.Job, []finding.Error) {
	w := p.workspaces.Get().(*derive.Workspace)
	defer p.workspaces.Put(w)
	job, _, errs := p.run(ctx, doc, files, w.Derive)
	return job, errs
}

// RunWithInput is Run for those who need what the job was judged from besides.
func (p *Pipeline) RunWithInput(ctx context.Context, doc *record.Document, files fs.FS) (finding.Job, Done, []finding.Error) {
	return p.run(ctx, doc, files, derive.Derive)
}

func (p *Pipeline) run(ctx context.Context, doc *record.Document, files fs.FS, work deriver) (finding.Job, Done, []finding.Error) {
	input, errs := p.complete(doc, files, work)
	if len(errs) > 0 {
		return finding.Job{}, Done{}, errs
	}
	names := p.profiles(input)
	s := p.stack(ctx, names)
	if s.err != nil {
		spot, _ := doc.Locate("/job/profiles")
		return finding.Job{}, Done{}, []finding.Error{{File: spot.File, Line: spot.Line, Column: spot.Column, Message: s.err.Error()}}
	}
	judgement, err := s.judge.Judge(ctx, doc, input)
	if err != nil {
		return finding.Job{}, Done{}, []finding.Error{{File: doc.Name, Line: 1, Column: 1, Message: err.Error()}}
	}
	job := finding.Job{
		File: doc.Name, ID: textAt(input, "/job/id"), Title: textAt(input, "/job/title"),
		SHA256: hex.EncodeToString(doc.SHA256[:]), Profiles: names, Digest: s.selection.Digest, Cautions: judgement.Cautions,
	}
	spot, _ := doc.Locate("/job/profiles")
	terms := outcome.Terms{
		Stage: p.options.Stage, HoldAt: p.options.HoldAt, AsOf: p.options.AsOf,
		Chosen: finding.At{Path: "/job/profiles", Line: spot.Line, Column: spot.Column},
	}
	if terms.Stage == "" {
		terms.Stage = finding.Stage(textAt(input, "/job/stage"))
	}
	if p.options.Known != nil {
		terms.Known = func(f finding.Finding) bool { return p.options.Known(job.ID, f) }
	}
	outcome.Decide(&job, judgement.Findings, variances(doc, input), terms)
	if p.options.Values {
		job.Values = p.listValues(input["derived"])
		job.Assumed = assumptions(input)
	}
	return job, Done{input, s.selection, files}, nil
}

func (p *Pipeline) profiles(input map[string]any) []string {
	if len(p.options.Profiles) > 0 {
		return p.options.Profiles
	}
	list, _ := record.At(input, "/job/profiles")
	var names []string
	for _, v := range list.([]any) {
		names = append(names, v.(string))
	}
	return names
}

// Select gives the profile stack by name, compiled once.
func (p *Pipeline) stack(ctx context.Context, names []string) *stack {
	key := strings.Join(names, "\x00")
	p.mu.Lock()
	s := p.judges[key]
	if s == nil {
		s = &stack{}
		p.judges[key] = s
	}
	p.mu.Unlock()
	s.once.Do(func() {
		if s.selection, s.err = p.rulebook.Select(names...); s.err == nil {
			s.judge, s.err = judge.New(ctx, s.selection, p.shape.With("derived", p.values))
		}
	})
	return s
}

func textAt(input map[string]any, ptr place.Pointer) string {
	value, _ := record.At(input, ptr)
	text, _ := value.(string)
	return text
}

// variances reads the variances of a canonical record.
func variances(doc *record.Document, input map[string]any) []outcome.Variance {
	list, _ := input["variances"].([]any)
	out := make([]outcome.Variance, len(list))
	for i := range list {
		at := place.Root.Append("variances", i)
		text := func(field string) string { return textAt(input, at.Append(field)) }
		spot, _ := doc.Locate(at)
		out[i] = outcome.Variance{
			ID: text("id"), Requirement: text("requirement"), Subject: text("subject"), Authority: text("authority"),
			Role: text("approver_role"), Reason: text("reason"), Document: text("document"),
			At: finding.At{Path: string(at), Line: spot.Line, Column: spot.Column},
		}
		if si, ok := record.At(input, at.Append("expires", "si")); ok {
			if seconds, err := si.(json.Number).Int64(); err == nil {
				out[i].Expires = time.Unix(seconds, 0).UTC()
			}
		}
	}
	return out
}

// listValues flattens derived values for reports, in the order of their places.
func (p *Pipeline) listValues(derived any) []finding.DerivedValue {
	var out []finding.DerivedValue
	p.walkValues(derived, p.values, "/derived", finding.DerivedValue{}, &out)
	return out
}

// walkValues adds the values at and below a place, in the order of names and of
// lists; about carries the group and subject that they belong to.
func (p *Pipeline) walkValues(value any, shape *record.Shape, at place.Pointer, about finding.DerivedValue, out *[]finding.DerivedValue) {
	switch v := value.(type) {
	case []any:
		about.Group = shape.Title()
		for i, item := range v {
			p.walkValues(item, shape.Items(), at.Append(i), about, out)
		}
	case record.Members:
		if shape.Dimension() == "" {
			if id, ok := v.Get("id").(string); ok {
				about.Subject = id
			} else if about.Group == "" && at != "/derived" {
				about.Group = shape.Title()
			}
			for _, name := range record.Names(v) {
				p.walkValues(v.Get(name), shape.Field(name), at.Append(name), about, out)
			}
			return
		}
		text, _ := v.Get("text").(string)
		method, _ := v.Get("method").(string)
		d := about
		d.Path, d.Title, d.Text, d.Method = string(at), shape.Title(), text, method
		if lacks, ok := v.Get("undetermined").([]any); ok {
			for _, l := range lacks {
				d.Lacks = append(d.Lacks, fmt.Sprint(l))
			}
		}
		if assumes, ok := v.Get("assumed").([]any); ok {
			for _, a := range assumes {
				d.Assumes = append(d.Assumes, fmt.Sprint(a))
			}
		}
		*out = append(*out, d)
	}
}

// assumptions are the defaults that derived values rest on.
func assumptions(input map[string]any) []finding.Assumption {
	list, _ := record.At(input, "/derived/assumptions")
	entries, _ := list.([]any)
	var out []finding.Assumption
	for i := range entries {
		at := place.Pointer("/derived/assumptions").Append(i)
		out = append(out, finding.Assumption{
			Name: textAt(input, at.Append("name")), Text: textAt(input, at.Append("value")), Basis: textAt(input, at.Append("basis")),
		})
	}
	return out
}
