// Package rulebook loads the requirements and the profiles, compiles them once
// with OPA, checks them against the canonical record schema and says what a
// chosen stack of profiles demands.
package rulebook

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"

	"github.com/slablint/slablint/internal/finding"
)

// Requirement is what the METADATA block of one rule file says.
type Requirement struct {
	Name    string           `json:"name"` // topic.subject, the package path below policy
	Title   string           `json:"title"`
	Why     string           `json:"why"`
	Remedy  string           `json:"remedy"`
	Grade   finding.Grade    `json:"grade"`
	Stage   finding.Stage    `json:"stage"`
	Subject string           `json:"subject"` // kind of thing it is applied to
	Limits  map[string]Limit `json:"limits,omitempty"`
	Caution string           `json:"caution,omitempty"` // shown when the finding is open
	File    string           `json:"file"`
	Line    int              `json:"line"`
	Sets    []string         `json:"sets"`  // which of the outcome sets the rule defines
	Reads   []string         `json:"reads"` // places of the canonical record it depends on, * for an index
}

// Limit names one number or choice that a profile has to fill in.
type Limit struct {
	Dimension string `json:"dimension"` // of internal/quantity, or "choice" or "number"
	Sense     string `json:"sense"`     // what a profile's value means, one of senses
}

// outcomeSets are the sets that a rule can define, in the order in which the
// entry module hands them over.
var outcomeSets = []string{"subjects", "exempt", "met", "deficient", "undetermined", "missing"}

// senses are what a limit can mean. Numbers: the measured value must be at
// least, at most, more or less than it. Choices: the recorded word must be one
// of them or none of them, or all of them must be there. Choices that say to
// what a requirement applies, or not, are no limit on anything recorded.
var senses = []string{"at-least", "at-most", "more-than", "less-than", "one-of", "none-of", "all-of", "applies-to", "not-for"}

// metadataFields are the custom fields that a METADATA block may hold.
var metadataFields = []string{"subject", "grade", "stage", "remedy", "limits", "caution"}

// requirementOf reads a parsed module; errors carry file and line.
func requirementOf(file string, module *ast.Module) (Requirement, error) {
	r := Requirement{File: file, Name: requirementName(module), Line: 1}
	fail := func(format string, args ...any) (Requirement, error) {
		return r, fmt.Errorf("%s:%d: %s", file, r.Line, fmt.Sprintf(format, args...))
	}
	var note *ast.Annotations
	for _, a := range module.Annotations {
		if a.Scope == "package" {
			note = a
		}
	}
	if note == nil {
		return fail("no METADATA block above the package line: give title, description and custom fields")
	}
	r.Line = note.Location.Row
	r.Title, r.Why = strings.TrimSpace(note.Title), strings.Join(strings.Fields(note.Description), " ")
	for _, field := range slices.Sorted(maps.Keys(note.Custom)) {
		if !slices.Contains(metadataFields, field) {
			return fail("unknown METADATA field %q: expected one of %s", field, strings.Join(metadataFields, ", "))
		}
	}
	text := func(field string) string { s, _ := note.Custom[field].(string); return strings.TrimSpace(s) }
	r.Subject, r.Remedy, r.Caution = text("subject"), text("remedy"), text("caution")
	for _, needed := range []struct{ field, value string }{
		{"title", r.Title}, {"description", r.Why}, {"custom.subject", r.Subject}, {"custom.remedy", r.Remedy},
	} {
		if needed.value == "" {
			return fail("METADATA field %s is missing or empty: write it, every report shows it", needed.field)
		}
	}
	var err error
	if r.Grade, err = finding.ParseGrade(text("grade")); err != nil {
		return fail("METADATA field custom.grade: %v", err)
	}
	if r.Stage, err = finding.ParseStage(text("stage")); err != nil {
		return fail("METADATA field custom.stage: %v", err)
	}
	limits, _ := note.Custom["limits"].(map[string]any)
	for _, name := range slices.Sorted(maps.Keys(limits)) {
		fields, _ := limits[name].(map[string]any)
		l := Limit{}
		l.Dimension, _ = fields["dimension"].(string)
		l.Sense, _ = fields["sense"].(string)
		if l.Dimension == "" || !slices.Contains(senses, l.Sense) || len(fields) != 2 {
			return fail("limit %q needs a dimension and a sense (%s)", name, strings.Join(senses, ", "))
		}
		if r.Limits == nil {
			r.Limits = map[string]Limit{}
		}
		r.Limits[name] = l
	}
	for _, rule := range module.Rules {
		name := rule.Head.Ref()[0].Value.String()
		if slices.Contains(outcomeSets, name) && !slices.Contains(r.Sets, name) {
			r.Sets = append(r.Sets, name)
		}
	}
	slices.Sort(r.Sets)
	for _, needed := range []string{"subjects", "deficient"} {
		if !slices.Contains(r.Sets, needed) {
			return fail("the rule defines no set %q: every rule says what it is applied to and what makes it deficient", needed)
		}
	}
	return r, nil
}

// requirementName is the package path below policy, joined by dots.
func requirementName(module *ast.Module) string {
	var parts []string
	for _, term := range module.Package.Path[2:] {
		if s, ok := term.Value.(ast.String); ok {
			parts = append(parts, string(s))
		}
	}
	return strings.Join(parts, ".")
}

// IsScope tells a limit that says to what the requirement applies from one that
// is held against a recorded value.
func (l Limit) IsScope() bool { return l.Sense == "applies-to" || l.Sense == "not-for" }

// Topic is the first part of the name.
func (r Requirement) Topic() string {
	topic, _, _ := strings.Cut(r.Name, ".")
	return topic
}
