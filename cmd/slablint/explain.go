package main

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/report"
)

func newExplain(w world) *cobra.Command {
	var f ruleFlags
	cmd := &cobra.Command{
		Use:   "explain REQUIREMENT",
		Short: "Say why a requirement exists, its limits, sources and remedy, with examples",
		Args:  cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			rb, stacks, list, err := f.demanded()
			if err != nil {
				return err
			}
			for _, d := range list {
				if d.Requirement == args[0] {
					examples, err := examplesOf(cmd.Context(), rb, stacks[0].Requirement(d.Requirement))
					if err != nil {
						return err
					}
					return explain(w, d, examples)
				}
			}
			for _, d := range outcome.Demands() {
				if d.Requirement == args[0] {
					return explain(w, demand{
						Requirement: d.Requirement, Title: d.Title, Why: d.Why, Remedy: d.Remedy, Grade: d.Grade, Stage: d.Stage, Subject: "variance",
					}, "")
				}
			}
			return fmt.Errorf("unknown requirement %q%s", args[0], similar(args[0], list))
		},
	}
	f.add(cmd)
	return cmd
}

// pageWidth is the width of texts that are not for a terminal, columns.
const pageWidth = 80

// explained is an explanation in lines that fit the reader's page. Only names
// and the examples, which are there to be copied, stay as they are.
type explained struct {
	strings.Builder
	width int // columns
}

// say adds a paragraph that begins with lead and is indented by as much as
// indent below it.
func (e *explained) say(lead, indent, text string) {
	_ = report.Paragraph(e, e.width, lead, indent, text) // a builder takes everything
}

func explain(w world, d demand, examples string) error {
	b := explained{width: cmp.Or(w.width, pageWidth)}
	fmt.Fprintf(&b.Builder, "%s\n", d.Requirement)
	b.say("  ", "  ", d.Title+".")
	b.WriteByte('\n')
	for _, line := range []struct{ label, text string }{
		{"Why     ", d.Why}, {"Remedy  ", d.Remedy}, {"Grade   ", string(d.Grade)},
		{"Due     ", fmt.Sprintf("from stage %s, for each %s", d.Stage, d.Subject)},
	} {
		b.say("  "+line.label, "          ", line.text)
	}
	b.WriteByte('\n')
	for _, profile := range sortedKeys(d.Limits) {
		l := d.Limits[profile]
		fmt.Fprintf(&b.Builder, "  %s (%s, from %s)\n", profile, l.Grade, l.Stage)
		for _, name := range sortedKeys(l.Values) {
			b.say("    ", "      ", strings.ReplaceAll(name, "_", " ")+": "+l.Values[name])
		}
		b.say("    source: ", "      ", l.sourceText())
		if l.Note != "" {
			b.say("    note: ", "      ", l.Note)
		}
	}
	if len(d.Limits) == 0 {
		b.say("  ", "  ", "Asked of every variance, whatever the profiles. A variance covers a deficiency that the record shows; what is not recorded or cannot be decided stays open.")
	}
	b.WriteString(examples + "\n")
	b.say("  ", "  ", finding.Notice)
	_, err := io.WriteString(w.out, b.String())
	return err
}

// similar suggests up to five requirements, those first that share most words
// with what was asked for.
func similar(name string, list []demand) string {
	shared := map[string]int{}
	var near []string
	for _, d := range list {
		for _, word := range strings.FieldsFunc(name, func(r rune) bool { return strings.ContainsRune("._-", r) }) {
			if len(word) > 3 && strings.Contains(d.Requirement, word) {
				shared[d.Requirement]++
			}
		}
		if shared[d.Requirement] > 0 {
			near = append(near, d.Requirement)
		}
	}
	if len(near) == 0 {
		return ": slablint rules lists them"
	}
	slices.SortStableFunc(near, func(a, b string) int { return shared[b] - shared[a] })
	return "; near it: " + strings.Join(near[:min(len(near), 5)], ", ")
}
