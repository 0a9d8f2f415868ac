package report

import (
	"bytes"
	"cmp"
	"encoding/json"
	"fmt"
	"io"
	"net/url"
	"path/filepath"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

const sarifSchema = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json"

// SARIF writes the static analysis results interchange format 2.1.0 (OASIS
// standard, errata 01). What holds the job is an error, what does not a warning,
// what is not due yet a note; a variance suppresses its result.
func SARIF(w io.Writer, r finding.Report, o Options) error {
	run := sarifRun{
		Tool: sarifTool{sarifDriver{
			Name: "slablint", Version: r.Rulebook.Version, FullDescription: sarifMessage{r.Notice}, Rules: []sarifRule{},
		}},
		Invocations: []sarifInvocation{{Successful: len(r.Errors) == 0}},
		Artifacts:   []sarifArtifact{},
		Results:     []sarifResult{},
		ColumnKind:  "unicodeCodePoints",
		Properties:  sarifBag{"notice": r.Notice, "rulebook": r.Rulebook.Digest, "profiles": present(r.Rulebook.Profiles)},
	}
	at := run.addRules(r, o)
	for i, job := range r.Jobs {
		run.Artifacts = append(run.Artifacts, sarifArtifact{
			Location: sarifPlace{URI: fileURI(job.File)}, Roles: []string{"analysisTarget"}, Hashes: map[string]string{"sha-256": job.SHA256},
			Properties: sarifBag{
				"job": job.ID, "stage": job.Stage, "outcome": job.Outcome, "heldBy": job.HeldBy, "counts": job.Counts,
				"profiles": present(job.Profiles), "rulebook": job.Digest,
			},
		})
		for _, f := range shown(job.Findings, o.All) {
			run.Results = append(run.Results, sarifResultOf(job, i, f, at[f.Requirement]))
		}
	}
	if r.Stopped != "" {
		run.Invocations[0].Notifications = append(run.Invocations[0].Notifications, sarifNotification{Level: "warning", Message: sarifMessage{r.Stopped}})
	}
	for _, e := range r.Errors {
		n := sarifNotification{Level: "error", Message: sarifMessage{e.Message}}
		if e.File != "" {
			n.Locations = []sarifLocation{{Physical: sarifPhysical{sarifPlace{URI: fileURI(e.File)}, region(e.Line, e.Column)}}}
		}
		run.Invocations[0].Notifications = append(run.Invocations[0].Notifications, n)
	}
	var text bytes.Buffer
	enc := json.NewEncoder(&text)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	if err := enc.Encode(sarifLog{sarifSchema, "2.1.0", []sarifRun{run}}); err != nil {
		return fmt.Errorf("write SARIF report: %w", err)
	}
	if _, err := w.Write(escaped(text.Bytes())); err != nil {
		return fmt.Errorf("write SARIF report: %w", err)
	}
	return nil
}

// addRules lists the requirements of the results by name and tells where each
// stands.
func (run *sarifRun) addRules(r finding.Report, o Options) map[string]int {
	first := map[string]finding.Finding{}
	for _, job := range r.Jobs {
		for _, f := range shown(job.Findings, o.All) {
			if _, seen := first[f.Requirement]; !seen {
				first[f.Requirement] = f
			}
		}
	}
	at := map[string]int{}
	for _, name := range sortedNames(first) {
		f := first[name]
		at[name] = len(run.Tool.Driver.Rules)
		run.Tool.Driver.Rules = append(run.Tool.Driver.Rules, sarifRule{
			ID: name, Short: sarifMessage{cmp.Or(f.Title, name)}, Full: sarifMessage{cmp.Or(f.Why, f.Title, name)}, Help: sarifMessage{cmp.Or(f.Remedy, f.Title, name)},
			Configuration: sarifConfiguration{gradeLevel(f.Grade)},
			Properties:    sarifBag{"grade": f.Grade, "stage": f.Stage, "topic": f.Topic()},
		})
	}
	return at
}

func sortedNames(m map[string]finding.Finding) []string {
	names := make([]string, 0, len(m))
	for name := range m {
		names = append(names, name)
	}
	slices.Sort(names)
	return names
}

func sarifResultOf(job finding.Job, artifact int, f finding.Finding, rule int) sarifResult {
	kind, level := sarifStanding(f)
	result := sarifResult{
		RuleID: f.Requirement, RuleIndex: rule, Kind: kind, Level: level, Message: sarifMessage{cmp.Or(f.Message, f.Title)},
		Locations: []sarifLocation{{
			Physical: sarifPhysical{sarifPlace{URI: fileURI(job.File), Index: &artifact}, region(f.At.Line, f.At.Column)},
			Logical:  []sarifLogical{{f.At.Path}},
		}},
		// The name carries a version: whatever changes how the value is made
		// needs another.
		Fingerprints: map[string]string{"requirementAndSubject/v1": fingerprint(job, f)},
		Properties: sarifBag{
			"job": job.ID, "subject": f.Subject, "verdict": f.Verdict, "grade": f.Grade, "due": f.Due, "holds": f.Holds,
			"remedy": f.Remedy, "source": f.Source.String(), "basis": f.Source.Basis, "profile": f.Profile,
		},
	}
	for name, text := range map[string]string{"measured": f.Measured, "limit": f.Limit, "reason": f.Reason} {
		if text != "" {
			result.Properties[name] = text
		}
	}
	if len(f.Missing) > 0 {
		result.Properties["missing"] = f.Missing
	}
	if f.Verdict == finding.Variance {
		result.Suppressions = []sarifSuppression{{Kind: "external", Status: "accepted", Justification: f.Reason}}
	}
	return result
}

// fingerprint is the finding's, of text as it is after being saved.
func fingerprint(job finding.Job, f finding.Finding) string {
	f.Requirement, f.Subject = wellFormed(f.Requirement), wellFormed(f.Subject)
	return f.Fingerprint(wellFormed(job.ID))
}

// wellFormed replaces every stray byte the way a saved report does.
func wellFormed(s string) string { return string([]rune(s)) }

// sarifStanding maps verdicts: only what is certainly fine is no failure.
// Missing information must be as visible as what is wrong.
func sarifStanding(f finding.Finding) (kind, level string) {
	switch {
	case f.Verdict == finding.Met:
		return "pass", "none"
	case f.Verdict == finding.NotApplicable:
		return "notApplicable", "none"
	case f.Verdict == finding.Variance:
		return "fail", gradeLevel(f.Grade)
	case f.Holds:
		return "fail", "error"
	case !f.Due:
		return "fail", "note"
	}
	return "fail", "warning"
}

func gradeLevel(g finding.Grade) string {
	if g == finding.Recommended {
		return "warning"
	}
	return "error"
}

// fileURI names a file as RFC 3986 has it, relative names staying relative.
func fileURI(name string) string {
	u := url.URL{Path: filepath.ToSlash(wellFormed(name))}
	if strings.HasPrefix(u.Path, "/") {
		u.Scheme = "file"
	}
	return u.String()
}

// region is nil where the line is not known.
func region(line, column int) *sarifRegion {
	if line < 1 {
		return nil
	}
	return &sarifRegion{line, max(column, 0)}
}

type sarifLog struct {
	Schema  string     `json:"$schema"`
	Version string     `json:"version"`
	Runs    []sarifRun `json:"runs"`
}

// sarifBag is a property bag; keys come out sorted.
type sarifBag map[string]any

type sarifRun struct {
	Tool        sarifTool         `json:"tool"`
	Invocations []sarifInvocation `json:"invocations"`
	Artifacts   []sarifArtifact   `json:"artifacts"`
	Results     []sarifResult     `json:"results"`
	ColumnKind  string            `json:"columnKind"`
	Properties  sarifBag          `json:"properties"`
}

type sarifTool struct {
	Driver sarifDriver `json:"driver"`
}

type sarifDriver struct {
	Name            string       `json:"name"`
	Version         string       `json:"version,omitempty"`
	FullDescription sarifMessage `json:"fullDescription"`
	Rules           []sarifRule  `json:"rules"`
}

type sarifMessage struct {
	Text string `json:"text"`
}

type sarifRule struct {
	ID            string             `json:"id"`
	Short         sarifMessage       `json:"shortDescription"`
	Full          sarifMessage       `json:"fullDescription"`
	Help          sarifMessage       `json:"help"`
	Configuration sarifConfiguration `json:"defaultConfiguration"`
	Properties    sarifBag           `json:"properties"`
}

type sarifConfiguration struct {
	Level string `json:"level"`
}

type sarifInvocation struct {
	Successful    bool                `json:"executionSuccessful"`
	Notifications []sarifNotification `json:"toolExecutionNotifications,omitempty"`
}

type sarifNotification struct {
	Level     string          `json:"level"`
	Message   sarifMessage    `json:"message"`
	Locations []sarifLocation `json:"locations,omitempty"`
}

type sarifArtifact struct {
	Location   sarifPlace        `json:"location"`
	Roles      []string          `json:"roles"`
	Hashes     map[string]string `json:"hashes"`
	Properties sarifBag          `json:"properties"`
}

type sarifResult struct {
	RuleID       string             `json:"ruleId"`
	RuleIndex    int                `json:"ruleIndex"`
	Kind         string             `json:"kind"`
	Level        string             `json:"level"`
	Message      sarifMessage       `json:"message"`
	Locations    []sarifLocation    `json:"locations"`
	Fingerprints map[string]string  `json:"partialFingerprints"`
	Suppressions []sarifSuppression `json:"suppressions,omitempty"`
	Properties   sarifBag           `json:"properties"`
}

type sarifLocation struct {
	Physical sarifPhysical  `json:"physicalLocation"`
	Logical  []sarifLogical `json:"logicalLocations,omitempty"`
}

type sarifPhysical struct {
	Artifact sarifPlace   `json:"artifactLocation"`
	Region   *sarifRegion `json:"region,omitempty"`
}

type sarifPlace struct {
	URI   string `json:"uri"`
	Index *int   `json:"index,omitempty"`
}

type sarifRegion struct {
	StartLine   int `json:"startLine"`
	StartColumn int `json:"startColumn,omitempty"`
}

type sarifLogical struct {
	Name string `json:"fullyQualifiedName"`
}

type sarifSuppression struct {
	Kind          string `json:"kind"`
	Status        string `json:"status"`
	Justification string `json:"justification,omitempty"`
}
