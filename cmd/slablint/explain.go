package main

import (
	"fmt"
	"io"
	"slices"
	"strings"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
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
					return explain(w.out, d, examples)
				}
			}
			for _, d := range outcome.Demands() {
				if d.Requirement == args[0] {
					return explain(w.out, demand{
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

func explain(w io.Writer, d demand, examples string) error {
	var b strings.Builder
	fmt.Fprintf(&b, "%s\n  %s.\n\n", d.Requirement, d.Title)
	fmt.Fprintf(&b, "  Why     %s\n  Remedy  %s\n  Grade   %s\n  Due     from stage %s, for each %s\n\n", d.Why, d.Remedy, d.Grade, d.Stage, d.Subject)
	for _, profile := range sortedKeys(d.Limits) {
		l := d.Limits[profile]
		fmt.Fprintf(&b, "  %s (%s, from %s)\n", profile, l.Grade, l.Stage)
		for _, name := range sortedKeys(l.Values) {
			fmt.Fprintf(&b, "    %s: %s\n", strings.ReplaceAll(name, "_", " "), l.Values[name])
		}
		fmt.Fprintf(&b, "    source: %s\n", l.sourceText())
		if l.Note != "" {
			fmt.Fprintf(&b, "    note: %s\n", l.Note)
		}
	}
	if len(d.Limits) == 0 {
		fmt.Fprintf(&b, "  Asked of every variance, whatever the profiles. A variance covers a deficiency\n  that the record shows; what is not recorded or cannot be decided stays open.\n")
	}
	fmt.Fprintf(&b, "%s\n  %s\n", examples, finding.Notice)
	_, err := io.WriteString(w, b.String())
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
