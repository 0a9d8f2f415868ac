package report

import (
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"slices"
	"unicode/utf16"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

// JSON writes the report that other programs read; schema/report.schema.json
// describes it. Without Options.All it leaves out findings that are met or not
// applicable; the counts always cover them.
func JSON(w io.Writer, r finding.Report, o Options) error {
	r.Rulebook.Profiles = present(r.Rulebook.Profiles)
	r.Errors = present(r.Errors)
	jobs := make([]finding.Job, len(r.Jobs))
	for i, j := range r.Jobs {
		j.Profiles = present(j.Profiles)
		j.Cautions = present(j.Cautions)
		j.Findings = shown(j.Findings, o.All)
		jobs[i] = j
	}
	r.Jobs = jobs

	var text bytes.Buffer
	enc := json.NewEncoder(&text)
	enc.SetEscapeHTML(false) // "<" in a message is for people to read
	enc.SetIndent("", "  ")
	if err := enc.Encode(r); err != nil {
		return fmt.Errorf("write JSON report: %w", err)
	}
	if _, err := w.Write(escaped(text.Bytes())); err != nil {
		return fmt.Errorf("write JSON report: %w", err)
	}
	return nil
}

// escaped writes what must not reach a terminal as \uXXXX, which every reader
// of JSON undoes. Line ends apart, such characters stand only inside strings.
// U+FFFD is among them because the encoder escapes it where it replaces a stray
// byte, and a report read back has to give the same bytes.
func escaped(text []byte) []byte {
	out := make([]byte, 0, len(text))
	for _, r := range string(text) {
		switch {
		case r == '\n', showable(r) && r != utf8.RuneError:
			out = utf8.AppendRune(out, r)
		case r > 0xffff:
			high, low := utf16.EncodeRune(r)
			out = fmt.Appendf(out, `\u%04x\u%04x`, high, low)
		default:
			out = fmt.Appendf(out, `\u%04x`, r)
		}
	}
	return out
}

// present makes a list that was never filled an empty one: readers get [],
// never null.
func present[T any](list []T) []T {
	if list == nil {
		return []T{}
	}
	return list
}

// Read takes back a report that JSON wrote. It refuses other versions, unknown
// fields and unknown words: what cannot be understood must not look like an
// empty or a passing report.
func Read(r io.Reader) (finding.Report, error) {
	data, err := io.ReadAll(r)
	if err != nil {
		return finding.Report{}, fmt.Errorf("read report: %w", err)
	}
	var head struct {
		Format *int `json:"report"`
	}
	if err := json.Unmarshal(data, &head); err != nil {
		return finding.Report{}, fmt.Errorf("read report: %w", err)
	}
	if head.Format == nil {
		return finding.Report{}, errors.New(`read report: no "report" with a version: this is not a saved report`)
	}
	if *head.Format != finding.Format {
		return finding.Report{}, fmt.Errorf("read report: version %d: this program reads version %d", *head.Format, finding.Format)
	}
	var report finding.Report
	dec := json.NewDecoder(bytes.NewReader(data))
	dec.DisallowUnknownFields()
	if err := dec.Decode(&report); err != nil {
		return finding.Report{}, fmt.Errorf("read report: %w", err)
	}
	if err := checkWords(report); err != nil {
		return finding.Report{}, fmt.Errorf("read report: %w", err)
	}
	return report, nil
}

// checkWords refuses a report with a word that no reader of it would know how
// to count.
func checkWords(r finding.Report) error {
	for i, j := range r.Jobs {
		at := fmt.Sprintf("/jobs/%d", i)
		if err := errors.Join(
			oneOf(at+"/outcome", j.Outcome, finding.Ready, finding.Hold),
			oneOf(at+"/stage", j.Stage, finding.Stages()...),
		); err != nil {
			return err
		}
		for k, f := range j.Findings {
			at := fmt.Sprintf("%s/findings/%d", at, k)
			if err := errors.Join(
				oneOf(at+"/verdict", f.Verdict, finding.Verdicts()...),
				oneOf(at+"/grade", f.Grade, finding.Hazard, finding.Required, finding.Recommended),
				oneOf(at+"/stage", f.Stage, finding.Stages()...),
				oneOf(at+"/source/basis", f.Source.Basis, finding.Published, finding.CommonPractice, finding.FromMemory),
			); err != nil {
				return err
			}
		}
	}
	return nil
}

func oneOf[T ~string](at string, word T, known ...T) error {
	if slices.Contains(known, word) {
		return nil
	}
	return fmt.Errorf("%s: %q is not one of %q", at, word, known)
}
