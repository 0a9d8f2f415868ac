package judge

import (
	"cmp"
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

// asked is one requirement as the stack asks for it, with what is the same in
// all its verdicts.
type asked struct {
	blank   finding.Finding
	profile string
	limits  map[string]limit
	only    string // the only one that is held against a recorded value
	unknown string // the names of those that are not established
}

// limit is one limit of a requirement.
type limit struct {
	text      string // as its source writes it
	dimension quantity.Dimension
	si        json.Number // "" for choices and unknown ones
}

func newAsked(s *rulebook.Selection, name string) asked {
	r := s.Requirement(name)
	row, _ := s.Row(name)
	q := asked{profile: row.Profile, limits: map[string]limit{}, blank: finding.Finding{
		Requirement: name, Grade: s.Grade(name), Stage: s.Stage(name),
		Title: r.Title, Why: r.Why, Remedy: r.Remedy, Source: row.Source, Profile: row.Profile,
	}}
	for name, value := range row.Limits {
		l := r.Limits[name]
		q.limits[name] = limit{limitText(l, value), quantity.Dimension(l.Dimension), json.Number(value.SI)}
	}
	q.only = onlyLimit(r)
	q.unknown = strings.Join(unknownLimits(row), ", ")
	return q
}

// expander turns the outcome sets of all requirements into findings.
type expander struct {
	judge    *Judge
	doc      *record.Document
	input    map[string]any
	scope    map[string]string // profile → why it does not speak of this job
	findings []finding.Finding

	slots map[string]int // subject → its place in about
	about []about
}

// outcome is one tuple of an outcome set.
type outcome struct {
	subject string
	path    place.Pointer
	extra   string // limit name or reason
}

// about is all that a requirement says of one subject.
type about struct {
	outcome      // of the set of subjects
	exempt       *outcome
	met          bool
	undetermined *outcome
	deficient    []outcome
	missing      []outcome
}

// scopeOf reads which profiles do not speak of a job: profile → why not.
func scopeOf(outside [][2]string) map[string]string {
	scope := map[string]string{}
	for _, p := range outside {
		if profile, reason := p[0], p[1]; scope[profile] == "" || reason < scope[profile] {
			scope[profile] = reason
		}
	}
	return scope
}

// requirement expands the outcome sets of one requirement. Every subject gets
// exactly one verdict; one of which the rule says nothing is unrecorded.
func (e *expander) requirement(q *asked, r *result) {
	if r.failure == nil {
		r.failure = e.gather(&r.sets)
	}
	if r.failure != nil {
		e.broken(q, r.failure)
		return
	}
	reason, out := e.scope[q.profile]
	if len(e.about) == 0 {
		e.add(q, outcome{subject: "job"}, finding.NotApplicable, cmp.Or(reason, "nothing of this kind is recorded as present"))
		return
	}
	for i := range e.about {
		switch s := &e.about[i]; {
		case out:
			e.add(q, s.outcome, finding.NotApplicable, reason)
		case s.exempt != nil:
			e.add(q, s.outcome, finding.NotApplicable, s.exempt.extra)
		case len(s.deficient) > 0 && s.met:
			e.broken(q, fmt.Errorf("%s is both met and deficient", s.subject))
		case len(s.deficient) > 0:
			e.deficient(q, s.deficient)
		case s.met:
			e.add(q, s.outcome, finding.Met, "")
		case s.undetermined != nil:
			e.add(q, *s.undetermined, finding.Undetermined, s.undetermined.extra)
		case q.unknown != "":
			e.add(q, s.outcome, finding.Undetermined, "the profile has no established limit for "+q.unknown)
		default:
			e.unrecorded(q, s.outcome, s.missing)
		}
	}
}

// gather sorts the outcomes of all sets by subject; of several in one set the
// first counts, but for what is deficient and missing.
func (e *expander) gather(all *[sets][]outcome) error {
	clear(e.slots)
	e.about = e.about[:0]
	for _, o := range all[subjects] {
		if _, taken := e.slots[o.subject]; !taken {
			e.slots[o.subject] = len(e.about)
			e.about = append(e.about, about{outcome: o})
		}
	}
	if len(e.about) == 0 {
		return nil
	}
	for set := subjects + 1; set < sets; set++ {
		for i := range all[set] {
			o := &all[set][i]
			slot, ok := e.slots[o.subject]
			if !ok {
				return fmt.Errorf("set %q names %q, which is no subject", rulebook.OutcomeSets()[set], o.subject)
			}
			s := &e.about[slot]
			switch set {
			case exempt:
				s.exempt = cmp.Or(s.exempt, o)
			case met:
				s.met = true
			case deficient:
				s.deficient = append(s.deficient, *o)
			case undetermined:
				s.undetermined = cmp.Or(s.undetermined, o)
			case missing:
				s.missing = append(s.missing, *o)
			}
		}
	}
	return nil
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
func (e *expander) finding(q *asked, o outcome, v finding.Verdict) *finding.Finding {
	e.findings = append(e.findings, q.blank)
	f := &e.findings[len(e.findings)-1]
	f.Subject, f.Verdict, f.At = o.subject, v, e.at(o.path)
	return f
}

func (e *expander) add(q *asked, o outcome, v finding.Verdict, reason string) {
	f := e.finding(q, o, v)
	f.Reason = reason
	switch v {
	case finding.Met:
		f.Message = f.Title + "."
		f.Limit, f.Measured = q.limits[q.only].text, e.beside(q.limits[q.only], o.path)
	case finding.NotApplicable:
		f.Measured, f.Message = e.text(o.path), "Does not apply: "+reason+"."
	default:
		f.Measured, f.Message = e.text(o.path), "Cannot be decided: "+reason+"."
	}
}

func (e *expander) deficient(q *asked, bad []outcome) {
	worst := bad[0]
	f := e.finding(q, worst, finding.Deficient)
	f.Limit, f.Measured = q.limits[worst.extra].text, e.beside(q.limits[worst.extra], worst.path)
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
			more = append(more, lowerFirst(e.title(o.path))+" "+e.beside(q.limits[o.extra], o.path))
		}
		f.Message += " Also: " + strings.Join(more, ", ") + "."
	}
}

// unrecorded names what the record does not say, and what it says that cannot be
// used.
func (e *expander) unrecorded(q *asked, s outcome, missing []outcome) {
	f := e.finding(q, s, finding.Unrecorded)
	f.Limit = q.limits[q.only].text
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
}

// lacking says what was not recorded, the inputs that a derived value lacks or
// the path itself, and why what is recorded there cannot be used.
func (e *expander) lacking(path place.Pointer) ([]place.Pointer, string) {
	value, _ := record.At(e.input, path)
	if list, _ := record.Get(value, "undetermined").([]any); len(list) > 0 {
		out := make([]place.Pointer, len(list))
		for i, p := range list {
			text, _ := p.(string)
			out[i] = place.Pointer(text)
		}
		why, _ := record.Get(value, "method").(string)
		return out, why
	}
	return []place.Pointer{e.written(path)}, ""
}

func (e *expander) broken(q *asked, failure error) {
	f := e.finding(q, outcome{subject: "rulebook"}, finding.Undetermined)
	f.Grade = finding.Hazard // holds the job until somebody looks
	f.Message = "The rulebook could not judge this requirement."
	f.Reason = failure.Error()
}

// written is the pointer into the record that a pointer into derived values
// stands for: the first input of the value, else the subject's own place.
func (e *expander) written(path place.Pointer) place.Pointer {
	if !path.HasPrefix("/derived") {
		return path
	}
	for p := path; p != "" && p != "/derived"; p = p.Parent() {
		value, _ := record.At(e.input, p)
		if derived, ok := value.(record.Derived); ok {
			if at := derived.Origin(); at != "" {
				return at
			}
		}
		if at, ok := record.Get(value, "at").(string); ok {
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
func (e *expander) beside(l limit, path place.Pointer) string {
	text := e.text(path)
	if l.si == "" || !path.HasPrefix("/derived") {
		return text
	}
	value, _ := record.At(e.input, path)
	si, _ := record.Get(value, "si").(json.Number)
	unit, _ := record.Get(value, "unit").(string)
	if !near(si, l.si) {
		return text
	}
	if exact, err := quantity.Beside(l.dimension, text, si.String(), unit, l.si.String()); err == nil {
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
