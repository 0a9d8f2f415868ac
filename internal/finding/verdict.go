package finding

import "fmt"

// Verdict is the answer of one requirement about one subject.
type Verdict string

// The verdicts. The zero value is invalid on purpose.
const (
	Met           Verdict = "met"
	Deficient     Verdict = "deficient"
	Unrecorded    Verdict = "unrecorded"     // the record does not say
	Undetermined  Verdict = "undetermined"   // it says, but this cannot be decided
	NotApplicable Verdict = "not-applicable" // the requirement does not reach this subject
	Variance      Verdict = "variance"       // deficient, and a documented variance covers it
)

// Verdicts lists all verdicts in the order reports show them.
func Verdicts() []Verdict {
	return []Verdict{Deficient, Unrecorded, Undetermined, Variance, Met, NotApplicable}
}

// Grade says how much a requirement weighs.
type Grade string

// The grades, heaviest first.
const (
	Hazard      Grade = "hazard"      // someone can be hurt
	Required    Grade = "required"    // a standard says shall
	Recommended Grade = "recommended" // a standard says should, or common practice
)

// weight orders grades; unknown grades weigh most so that they are seen.
func (g Grade) weight() int {
	switch g {
	case Hazard:
		return 3
	case Required:
		return 2
	case Recommended:
		return 1
	}
	return 4
}

// AtLeast reports whether g weighs as much as floor or more.
func (g Grade) AtLeast(floor Grade) bool { return g.weight() >= floor.weight() }

// ParseGrade reads a grade by its name.
func ParseGrade(name string) (Grade, error) {
	switch g := Grade(name); g {
	case Hazard, Required, Recommended:
		return g, nil
	}
	return "", fmt.Errorf("unknown grade %q: expected hazard, required or recommended", name)
}

// Stage is where a job stands.
type Stage string

// The stages in the order of the work.
const (
	Planned  Stage = "planned"
	RoughIn  Stage = "roughed-in"
	Running  Stage = "running"
	Closeout Stage = "closeout"
)

// Stages lists all stages in the order of the work.
func Stages() []Stage { return []Stage{Planned, RoughIn, Running, Closeout} }

// Reached reports whether a job at stage s has come as far as due.
func (s Stage) Reached(due Stage) bool { return s.order() >= due.order() }

func (s Stage) order() int {
	for i, known := range Stages() {
		if s == known {
			return i
		}
	}
	return len(Stages()) - 1 // an unknown stage is held to everything
}

// ParseStage reads a stage by its name.
func ParseStage(name string) (Stage, error) {
	for _, known := range Stages() {
		if Stage(name) == known {
			return known, nil
		}
	}
	return "", fmt.Errorf("unknown stage %q: expected planned, roughed-in, running or closeout", name)
}

// Basis says how a limit is known.
type Basis string

// The bases.
const (
	Published      Basis = "published"       // read in the document named
	CommonPractice Basis = "common-practice" // no source
	FromMemory     Basis = "from-memory"     // published, but not read while writing
)
