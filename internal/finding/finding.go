package finding

import (
	"cmp"
	"crypto/sha256"
	"encoding/hex"
	"slices"
	"strings"
)

// Finding is one verdict on one subject with all that a reader needs to act.
type Finding struct {
	Requirement string   `json:"requirement"`
	Subject     string   `json:"subject"` // id, or ids joined by "/"
	Verdict     Verdict  `json:"verdict"`
	Grade       Grade    `json:"grade"`
	Stage       Stage    `json:"stage"` // from which the requirement is due
	Due         bool     `json:"due"`   // whether the job has reached that stage
	Holds       bool     `json:"holds"` // whether this finding holds the job
	At          At       `json:"at"`
	Title       string   `json:"title"`
	Message     string   `json:"message"`
	Measured    string   `json:"measured,omitempty"` // as the record writes it
	Limit       string   `json:"limit,omitempty"`    // as the source writes it
	Missing     []string `json:"missing,omitempty"`  // pointers of what was not recorded or cannot be used
	Reason      string   `json:"reason,omitempty"`   // why not applicable, undetermined or covered
	Why         string   `json:"why"`
	Remedy      string   `json:"remedy"`
	Source      Source   `json:"source"`
	Profile     string   `json:"profile"` // the profile whose row applied
}

// At is the place in the record.
type At struct {
	Path   string `json:"path"` // JSON Pointer, RFC 6901
	Line   int    `json:"line"`
	Column int    `json:"column"`
}

// Source says where a limit comes from.
type Source struct {
	Document string `json:"document,omitempty"`
	Edition  string `json:"edition,omitempty"`
	Section  string `json:"section,omitempty"`
	Basis    Basis  `json:"basis"`
}

// String writes the source the way reports print it.
func (s Source) String() string {
	var parts []string
	for _, p := range []string{s.Document, s.Edition, s.Section} {
		if p != "" {
			parts = append(parts, p)
		}
	}
	switch s.Basis {
	case CommonPractice:
		parts = append(parts, "common practice")
	case FromMemory:
		parts = append(parts, "from memory, not read while writing")
	case Published:
	}
	return strings.Join(parts, ", ")
}

// Topic is the first part of the requirement's name.
func (f Finding) Topic() string {
	topic, _, _ := strings.Cut(f.Requirement, ".")
	return topic
}

// Fingerprint identifies a finding across edits of the record: it depends on
// job, requirement and subject alone, never on lines or wording.
func (f Finding) Fingerprint(job string) string {
	sum := sha256.Sum256([]byte(job + "\x00" + f.Requirement + "\x00" + f.Subject))
	return hex.EncodeToString(sum[:16])
}

// Sort puts findings in the one order of all reports: those that hold the job
// first, then by verdict, weight, place in the record, requirement and subject.
func Sort(findings []Finding) {
	was := slices.Clone(findings)
	order := make([]*Finding, len(was)) // findings are large to move about
	for i := range was {
		order[i] = &was[i]
	}
	slices.SortStableFunc(order, func(a, b *Finding) int {
		return cmp.Or(
			-compareBool(a.Holds, b.Holds),
			cmp.Compare(rank(a.Verdict), rank(b.Verdict)),
			-cmp.Compare(a.Grade.weight(), b.Grade.weight()),
			cmp.Compare(a.At.Line, b.At.Line),
			cmp.Compare(a.At.Column, b.At.Column),
			cmp.Compare(a.Requirement, b.Requirement),
			cmp.Compare(a.Subject, b.Subject),
		)
	})
	for i, f := range order {
		findings[i] = *f
	}
}

var verdicts = Verdicts()

func rank(v Verdict) int { return slices.Index(verdicts, v) }

func compareBool(a, b bool) int {
	switch {
	case a == b:
		return 0
	case a:
		return 1
	}
	return -1
}
