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
// applicable; the counts always cover them. One job at a time is held as text.
func JSON(w io.Writer, r finding.Report, o Options) error {
	jobs := r.Jobs
	r.Jobs = []finding.Job{}
	r.Rulebook.Profiles = present(r.Rulebook.Profiles)
	r.Errors = present(r.Errors)
	frame, err := encoded(r, "", "  ")
	if err != nil {
		return fmt.Errorf("write JSON report: %w", err)
	}
	out := &sticky{w: w}
	head, tail, _ := bytes.Cut(frame, []byte("\n  \"jobs\": []")) // a line end stands in no string
	out.write(head)
	out.write([]byte("\n  \"jobs\": ["))
	for i, job := range jobs {
		text, err := encoded(listed(job, o), "    ", "  ")
		if err != nil {
			return fmt.Errorf("write JSON report: %w", err)
		}
		if i > 0 {
			out.write([]byte(","))
		}
		out.write([]byte("\n    "))
		out.write(bytes.TrimSuffix(text, []byte("\n")))
	}
	if len(jobs) > 0 {
		out.write([]byte("\n  "))
	}
	out.write([]byte("]"))
	out.write(tail)
	if out.err != nil {
		return fmt.Errorf("write JSON report: %w", out.err)
	}
	return nil
}

// JSONLine writes what came of one record in one line: the job as JSON has it,
// or an object with the errors that kept the record from being judged.
func JSONLine(w io.Writer, job finding.Job, errs []finding.Error, o Options) error {
	var what any = listed(job, o)
	if len(errs) > 0 {
		what = struct {
			Errors []finding.Error `json:"errors"`
		}{errs}
	}
	return jsonLine(w, what)
}

// JSONStopped writes the last line of a run that left records out, with the
// sentence that says why: an object with that alone.
func JSONStopped(w io.Writer, why string) error {
	return jsonLine(w, struct {
		Stopped string `json:"stopped"`
	}{why})
}

func jsonLine(w io.Writer, what any) error {
	text, err := encoded(what, "", "")
	if err == nil {
		_, err = w.Write(text)
	}
	if err != nil {
		return fmt.Errorf("write JSON line: %w", err)
	}
	return nil
}

// listed is a job as JSON shows it.
func listed(j finding.Job, o Options) finding.Job {
	j.Profiles = present(j.Profiles)
	j.Cautions = present(j.Cautions)
	j.Findings = shown(j.Findings, o.All)
	return j
}

// encoded is a value as JSON with a line end behind it.
func encoded(value any, prefix, indent string) ([]byte, error) {
	var text bytes.Buffer
	enc := json.NewEncoder(&text)
	enc.SetEscapeHTML(false) // "<" in a message is for people to read
	enc.SetIndent(prefix, indent)
	if err := enc.Encode(value); err != nil {
		return nil, err
	}
	return escaped(text.Bytes()), nil
}

// sticky is a writer that keeps its first error.
type sticky struct {
	w   io.Writer
	err error
}

func (s *sticky) write(p []byte) {
	if s.err == nil {
		_, s.err = s.w.Write(p)
	}
}

// escaped writes what must not reach a terminal as \uXXXX, which every reader
// of JSON undoes. Line ends apart, such characters stand only inside strings.
// U+FFFD is among them because the encoder escapes it where it replaces a stray
// byte, and a report read back has to give the same bytes.
func escaped(text []byte) []byte {
	clean := 0 // most text is ASCII and stays as it is
	for clean < len(text) && plainly(text[clean]) {
		clean++
	}
	if clean == len(text) {
		return text
	}
	out := make([]byte, clean, len(text)+len(text)/16)
	copy(out, text)
	for rest := text[clean:]; len(rest) > 0; {
		if plainly(rest[0]) {
			out, rest = append(out, rest[0]), rest[1:]
			continue
		}
		r, size := utf8.DecodeRune(rest)
		rest = rest[size:]
		switch {
		case showable(r) && r != utf8.RuneError:
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

// plainly says that a byte is a character by itself that can be shown.
func plainly(c byte) bool { return c == '\n' || c >= ' ' && c <= '~' }

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
		return finding.Report{}, fmt.Errorf("this is not a saved report: %w", err)
	}
	if head.Format == nil {
		return finding.Report{}, errors.New(`this is not a saved report: it has no "report" with a version`)
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
