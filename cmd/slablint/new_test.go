package main

import (
	"bytes"
	"hash/fnv"
	"regexp"
	"slices"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/form"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
	"github.com/slablint/slablint/schema"
)

var (
	blankLine  = regexp.MustCompile(`^( *(?:- )?)([a-z_0-9]+): # `)
	sampleLine = regexp.MustCompile(`^( *)# ((?:- )?\{.*\})$`)
)

// filled is a record as "new" writes it with something written behind every
// question, by a person who answers differently with every seed.
func filled(t *testing.T, fields []form.Field, start form.Start, seed uint32) string {
	t.Helper()
	var blank bytes.Buffer
	if err := form.WriteYAML(&blank, fields, start); err != nil {
		t.Fatal(err)
	}
	questions := asked(fields)
	next := 0
	var out []string
	for _, line := range strings.Split(blank.String(), "\n") {
		if sample := sampleLine.FindStringSubmatch(line); sample != nil {
			out = append(out, sample[1]+sample[2])
			continue
		}
		if m := blankLine.FindStringSubmatch(line); m != nil {
			for next < len(questions) && questions[next].Name != m[2] { // given ones have a value already
				next++
			}
			if next < len(questions) && len(questions[next].Fields) == 0 {
				line = m[1] + m[2] + ": " + answer(questions[next], seed)
			}
			next++
		}
		out = append(out, line)
	}
	return strings.Join(out, "\n")
}

// asked lists fields in the order in which they are written.
func asked(fields []form.Field) []form.Field {
	var out []form.Field
	for _, f := range fields {
		out = append(out, f)
		if !slices.ContainsFunc(f.Fields, func(m form.Field) bool { return m.Required && m.Name != "id" && f.Path != "/job" }) {
			out = append(out, asked(f.Fields)...)
		}
	}
	return out
}

func answer(f form.Field, seed uint32) string {
	h := fnv.New32a()
	// Of one opening the same is said wherever it is asked.
	path := strings.Replace(f.Path, "/systems/*/discharge/clearances/", "/house/openings/", 1)
	_, _ = h.Write([]byte(path)) // a hash takes everything
	n := int(h.Sum32()>>3 + seed)
	if f.Path == "/systems/*/pipe/*/flows_into" {
		return "" // there is one segment
	}
	if f.Refers != "" {
		id := firstID(f.Refers)
		if f.Kind == "list" {
			id = "[" + id + "]"
		}
		return id
	}
	switch {
	case f.Kind == "yes-or-no":
		return []string{"true", "false"}[(n/(1+int(seed)))%2]
	case f.Kind == "list" && len(f.Choices) > 0:
		return "[" + strings.Join(f.Choices, ", ") + "]"
	case len(f.Choices) > 0:
		return f.Choices[n%len(f.Choices)]
	}
	return f.Example
}

// Over all profiles, every third pair of foundation and kind of system, with the
// stages in turn:
// the record that "new" writes is valid once it is filled in, whatever is
// written, and no requirement then misses what nobody asked for.
func TestNewAsksForAllThatIsNeeded(t *testing.T) {
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	all, err := form.Fields(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	stages := finding.Stages()
	every := 3
	if testing.Short() {
		every = 19
	}
	n := 0
	for _, profile := range rb.ProfileNames() {
		t.Run(profile, func(t *testing.T) {
			a, err := newAsker(rb, []string{profile})
			if err != nil {
				t.Fatal(err)
			}
			for _, foundation := range choicesOf(all, "/house/foundations/*/kind") {
				for _, kind := range choicesOf(all, "/systems/*/kind") {
					n++
					if n%every != 0 {
						continue
					}
					start := form.Start{Job: "J-1", Profiles: []string{profile}, Foundation: foundation, System: kind, Stage: string(stages[n/every%len(stages)])}
					t.Run(foundation+" "+kind+" "+start.Stage, func(t *testing.T) { newAsksForAll(t, a, start) })
				}
			}
		})
	}
}

func newAsksForAll(t *testing.T, a asker, start form.Start) {
	q, err := a.questions(t.Context(), start)
	if err != nil {
		t.Fatal(err)
	}
	have := map[string]bool{}
	for _, field := range asked(q.fields) {
		have[field.Path] = true
	}
	for seed := range uint32(3) {
		text := filled(t, q.fields, start, seed)
		doc, err := record.ReadYAML("filled", []byte(text), record.Limits{})
		if err != nil {
			t.Fatalf("%v\n%s", err, text)
		}
		job, errs := a.pipeline.Run(t.Context(), doc, nil)
		if len(errs) > 0 {
			t.Fatalf("%v\n%s", errs, text)
		}
		for _, open := range job.Findings {
			if open.Verdict != finding.Unrecorded || !finding.Stage(start.Stage).Reached(open.Stage) {
				continue
			}
			for _, missing := range open.Missing {
				if path := digits.ReplaceAllString(missing, "/*"); !have[path] {
					t.Errorf("%s misses %s, for which nobody asked", open.Requirement, path)
				}
			}
		}
	}
}

// firstID is the id of the first entry of a list, as "new" gives it.
func firstID(list string) string {
	switch list {
	case "/house/foundations":
		return "area-1"
	case "/systems", "*":
		return "sys-1"
	}
	name := list[strings.LastIndex(list, "/")+1:]
	return strings.TrimSuffix(strings.ReplaceAll(name, "_", "-"), "s") + "-1"
}

func choicesOf(fields []form.Field, path string) []string {
	for _, f := range fields {
		if f.Path == path {
			return f.Choices
		}
		if c := choicesOf(f.Fields, path); c != nil {
			return c
		}
	}
	return nil
}
