package judge

import (
	"encoding/json"
	"fmt"
	"math"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// expander turns the outcome sets of all requirements into findings.
type expander struct {
	judge    *Judge
	doc      *record.Document
	input    map[string]any
	scope    map[string]string // profile → why it does not speak of this job
	findings []finding.Finding
}

// outcome is one tuple of an outcome set.
type outcome struct {
	subject string
	path    place.Pointer
	extra   string // limit name or reason
}

// scopeOf reads which profiles do not speak of a job: profile → why not.
func scopeOf(outside any) map[string]string {
	scope := map[string]string{}
	list, _ := outside.([]any)
	for _, item := range list {
		if pair, ok := item.([]any); ok && len(pair) == 2 {
			profile, _ := pair[0].(string)
			reason, _ := pair[1].(string)
			if scope[profile] == "" || reason < scope[profile] {
				scope[profile] = reason
			}
		}
	}
	return scope
}

// requirement expands the outcome sets of one requirement. Every subject gets
// exactly one verdict; one of which the rule says nothing is unrecorded.
func (e *expander) requirement(name string, value any, failure error) {
	sets, ok := value.([]any)
	order := rulebook.OutcomeSets()
	if failure != nil || !ok || len(sets) != len(order) {
		e.broken(name, failure)
		return
	}
	bySet := map[string][]outcome{}
	for i, set := range order {
		outcomes, err := tuples(sets[i])
		if err != nil {
			e.broken(name, fmt.Errorf("set %q: %w", set, err))
			return
		}
		bySet[set] = outcomes
	}
	row, _ := e.judge.selection.Row(name)
	subjects := firstOfEach(bySet["subjects"])
	if len(subjects) == 0 {
		reason := e.scope[row.Profile]
		if reason == "" {
			reason = "nothing of this kind is recorded as present"
		}
		e.add(name, outcome{subject: "job"}, finding.NotApplicable, reason)
		return
	}
	known := index(subjects)
	for _, set := range []string{"exempt", "met", "deficient", "undetermined", "missing"} {
		for _, o := range bySet[set] {
			if _, ok := known[o.subject]; !ok {
				e.broken(name, fmt.Errorf("set %q names %q, which is no subject", set, o.subject))
				return
			}
		}
	}
	exempt, met := index(bySet["exempt"]), index(bySet["met"])
	deficient, undetermined := group(bySet["deficient"]), index(bySet["undetermined"])
	missing := group(bySet["missing"])
	for _, s := range subjects {
		bad := deficient[s.subject]
		_, isMet := met[s.subject]
		if reason, out := e.scope[row.Profile]; out {
			e.add(name, s, finding.NotApplicable, reason)
		} else if x, ok := exempt[s.subject]; ok {
			e.add(name, s, finding.NotApplicable, x.extra)
		} else if len(bad) > 0 && isMet {
			e.broken(name, fmt.Errorf("%s is both met and deficient", s.subject))
		} else if len(bad) > 0 {
			e.deficient(name, bad)
		} else if isMet {
			e.add(name, s, finding.Met, "")
		} else if u, ok := undetermined[s.subject]; ok {
			e.add(name, u, finding.Undetermined, u.extra)
		} else if unknown := unknownLimits(row); len(unknown) > 0 {
			e.add(name, s, finding.Undetermined, "the profile has no established limit for "+strings.Join(unknown, ", "))
		} else {
			e.unrecorded(name, s, missing[s.subject])
		}
	}
}

func unknownLimits(row rulebook.Row) []string {
	var names []string
	for name, v := range row.Limits {
		if v.Unknown {
			names = append(names, strings.ReplaceAll(name, "_", " "))
		}
	}
	slices.Sort(names)
	return names
}

// finding fills in what is the same for every verdict of a requirement.
func (e *expander) finding(name string, o outcome, v finding.Verdict) finding.Finding {
	s := e.judge.selection
	r := s.Requirement(name)
	row, _ := s.Row(name)
	return finding.Finding{
		Requirement: name, Subject: o.subject, Verdict: v, Grade: s.Grade(name), Stage: s.Stage(name),
		At: e.at(o.path), Title: r.Title, Why: r.Why, Remedy: r.Remedy, Source: row.Source, Profile: row.Profile,
		Measured: e.text(o.path),
	}
}

func (e *expander) add(name string, o outcome, v finding.Verdict, reason string) {
	f := e.finding(name, o, v)
	f.Reason = reason
	switch v {
	case finding.Met:
		f.Message = f.Title + "."
		only := e.onlyLimit(name)
		f.Limit, f.Measured = e.limit(name, only), e.beside(name, only, o.path)
	case finding.NotApplicable:
		f.Message = "Does not apply: " + reason + "."
	default:
		f.Message = "Cannot be decided: " + reason + "."
	}
	e.findings = append(e.findings, f)
}

func (e *expander) deficient(name string, bad []outcome) {
	worst := bad[0]
	f := e.finding(name, worst, finding.Deficient)
	f.Limit = e.limit(name, worst.extra)
	f.Measured = e.beside(name, worst.extra, worst.path)
	found := e.title(worst.path) + ": "
	if f.Measured == "" {
		found += "not there"
	} else {
		found += f.Measured
	}
	f.Message = "Recorded " + lowerFirst(found) + "."
	if f.Limit != "" {
		f.Message = "Recorded " + lowerFirst(found) + "; called for: " + f.Limit + "."
	}
	if len(bad) > 1 {
		var more []string
		for _, o := range bad[1:] {
			more = append(more, lowerFirst(e.title(o.path))+" "+e.beside(name, o.extra, o.path))
		}
		f.Message += " Also: " + strings.Join(more, ", ") + "."
	}
	e.findings = append(e.findings, f)
}

// unrecorded names what the record does not say, and what it says that cannot be
// used.
func (e *expander) unrecorded(name string, s outcome, missing []outcome) {
	f := e.finding(name, s, finding.Unrecorded)
	f.Measured = ""
	f.Limit = e.limit(name, e.onlyLimit(name))
	if len(missing) == 0 {
		missing = []outcome{s}
	}
	var absent, unusable []place.Pointer
	var whys []string
	for _, o := range missing {
		paths, why := e.lacking(o.path)
		for _, p := range paths {
			if _, recorded := record.At(e.input, p); recorded && why != "" {
				unusable = append(unusable, p)
			} else {
				absent = append(absent, p)
			}
		}
		if why != "" && !slices.Contains(whys, why) {
			whys = append(whys, why)
		}
	}
	var told []string
	if len(absent) > 0 {
		told = append(told, "Not recorded: "+e.labels(absent)+".")
	}
	if len(unusable) > 0 {
		told = append(told, "Cannot be used: "+e.labels(unusable)+" ("+strings.Join(whys, "; ")+").")
	}
	f.Message = strings.Join(told, " ")
	for _, p := range slices.Concat(absent, unusable) {
		f.Missing = append(f.Missing, string(p))
	}
	slices.Sort(f.Missing)
	f.Missing = slices.Compact(f.Missing)
	f.At = e.at(place.Pointer(f.Missing[0]))
	e.findings = append(e.findings, f)
}

// lacking says what was not recorded, the inputs that a derived value lacks or
// the path itself, and why what is recorded there cannot be used.
func (e *expander) lacking(path place.Pointer) ([]place.Pointer, string) {
	if value, ok := record.At(e.input, path); ok {
		if derived, ok := value.(map[string]any); ok {
			if list, ok := derived["undetermined"].([]any); ok && len(list) > 0 {
				out := make([]place.Pointer, len(list))
				for i, p := range list {
					text, _ := p.(string)
					out[i] = place.Pointer(text)
				}
				why, _ := derived["method"].(string)
				return out, why
			}
		}
	}
	return []place.Pointer{e.written(path)}, ""
}

func (e *expander) broken(name string, failure error) {
	f := e.finding(name, outcome{subject: "rulebook"}, finding.Undetermined)
	f.Grade = finding.Hazard // holds the job until somebody looks
	f.Message = "The rulebook could not judge this requirement."
	f.Reason = "rulebook error"
	if failure != nil {
		f.Reason = failure.Error()
	}
	e.findings = append(e.findings, f)
}

// written is the pointer into the record that a pointer into derived values
// stands for: the first input of the value, else the subject's own place.
func (e *expander) written(path place.Pointer) place.Pointer {
	if !path.HasPrefix("/derived") {
		return path
	}
	for p := path; p != "" && p != "/derived"; p = p.Parent() {
		value, _ := record.At(e.input, p)
		fields, ok := value.(map[string]any)
		if !ok {
			continue
		}
		if inputs, ok := fields["inputs"].([]any); ok && len(inputs) > 0 {
			text, _ := inputs[0].(string)
			return place.Pointer(text)
		}
		if at, ok := fields["at"].(string); ok {
			return place.Pointer(at)
		}
	}
	return ""
}

func (e *expander) at(path place.Pointer) finding.At {
	p := e.written(path)
	spot, _ := e.doc.Locate(p)
	return finding.At{Path: string(p), Line: spot.Line, Column: spot.Column}
}

// beside is text with as many decimals as it takes to read it against a limit:
// a computed distance that falls short of 10 ft never reads as 10 ft.
func (e *expander) beside(name, limit string, path place.Pointer) string {
	text := e.text(path)
	row, _ := e.judge.selection.Row(name)
	bound := row.Limits[limit].SI
	found, _ := record.At(e.input, path)
	value, ok := found.(map[string]any)
	if bound == "" || !ok || !path.HasPrefix("/derived") {
		return text
	}
	dim := quantity.Dimension(e.judge.selection.Requirement(name).Limits[limit].Dimension)
	si, _ := value["si"].(json.Number)
	unit, _ := value["unit"].(string)
	if !near(si, json.Number(bound)) {
		return text
	}
	if exact, err := quantity.Beside(dim, text, si.String(), unit, bound); err == nil {
		return exact
	}
	return text
}

// near tells whether rounding could put a value on the other side of a limit.
func near(si, limit json.Number) bool {
	a, err := si.Float64()
	b, noLimit := limit.Float64()
	return err == nil && noLimit == nil && (b == 0 || math.Abs(a-b) <= 0.1*math.Abs(b))
}
