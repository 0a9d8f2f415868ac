package rulebook

import (
	"crypto/sha256"
	"encoding/hex"
	"encoding/json"
	"errors"
	"fmt"
	"io/fs"
	"maps"
	"math/big"
	"os"
	"path"
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

// Selection is a rulebook with its profile stack: what is asked of a job.
type Selection struct {
	Profiles []*Profile // as stacked, base first
	Digest   string     // "sha256:" and hex over rules and profile files

	rulebook *Rulebook
	rows     map[string]Row
	beneath  map[string]Row // as they were before company profiles
}

// ProfileNames lists the built-in profiles.
func (rb *Rulebook) ProfileNames() []string {
	entries, err := fs.ReadDir(rb.profiles, ".")
	if err != nil {
		return nil
	}
	var names []string
	for _, e := range entries {
		if name, ok := strings.CutSuffix(e.Name(), ".yaml"); ok {
			names = append(names, name)
		}
	}
	return names
}

// Select stacks profiles by kind: jurisdiction over base, company over both,
// whatever the order of the names. Which of two rows of one kind governs, see
// governs. A name with a path separator or the ending .yaml is a file. An
// overlay that loosens the limit of a document must name an authority.
func (rb *Rulebook) Select(names ...string) (*Selection, error) {
	if len(names) == 0 {
		return nil, errors.New("no profile chosen")
	}
	var profiles []*Profile
	digest := sha256.New()
	for _, m := range rb.modules {
		fmt.Fprintf(digest, "%s\x00%s\x00", m.File, m.Source)
	}
	for _, name := range names {
		data, file, err := rb.profileBytes(name)
		if err != nil {
			return nil, err
		}
		p, err := readProfile(file, data, rb.requirements)
		if err != nil {
			return nil, err
		}
		profiles = append(profiles, p)
		fmt.Fprintf(digest, "profile\x00%s\x00", p.Name)
		digest.Write(data)
	}
	s := &Selection{rulebook: rb, rows: map[string]Row{}, beneath: map[string]Row{}, Digest: "sha256:" + hex.EncodeToString(digest.Sum(nil))}
	slices.SortStableFunc(profiles, func(a, b *Profile) int { return rank(a.Kind) - rank(b.Kind) })
	for _, p := range profiles {
		if err := s.stack(p); err != nil {
			return nil, err
		}
	}
	return s, nil
}

// Without is the stack without some of its profiles, or nil where that uncovers
// no row: a profile that does not speak of a job must not stand before one that
// does.
func (s *Selection) Without(names []string) (*Selection, error) {
	rest := &Selection{rulebook: s.rulebook, rows: map[string]Row{}, beneath: map[string]Row{}, Digest: s.Digest}
	for _, p := range s.Profiles {
		if slices.Contains(names, p.Name) {
			continue
		}
		if err := rest.stack(p); err != nil {
			return nil, err
		}
	}
	for name, row := range rest.rows {
		if s.rows[name].Profile != row.Profile {
			return rest, nil
		}
	}
	return nil, nil
}

// rank orders the kinds of profiles, the lowest first.
func rank(kind string) int { return slices.Index([]string{"base", "jurisdiction", "company"}, kind) }

func (rb *Rulebook) profileBytes(name string) (data []byte, file string, err error) {
	if strings.ContainsAny(name, "/\\") || strings.HasSuffix(name, ".yaml") || strings.HasSuffix(name, ".yml") {
		if rb.files != nil {
			data, err = fs.ReadFile(rb.files, path.Clean(name))
		} else {
			data, err = os.ReadFile(name)
		}
		return data, name, err
	}
	file = name + ".yaml"
	if data, err = fs.ReadFile(rb.profiles, file); err != nil {
		return nil, "", fmt.Errorf("unknown profile %q: expected one of %s, or a file", name, strings.Join(rb.ProfileNames(), ", "))
	}
	return data, path.Join("profiles", file), nil
}

func (s *Selection) stack(p *Profile) error {
	for _, name := range slices.Sorted(maps.Keys(p.Rows)) {
		row, r := p.Rows[name], s.rulebook.requirements[name]
		below, overridden := s.rows[name]
		if overridden && !governs(r, row, below) {
			continue
		}
		if row.kind == "company" {
			below, overridden = s.beneath[name]
		} else {
			s.beneath[name] = row
		}
		if what, looser := loosens(r, below, row); overridden && looser && row.kind != below.kind && p.Authority == "" &&
			!below.practice() && row.Source.Basis != finding.Published {
			return fmt.Errorf("%s:%d: %s: the %s is looser than that of the document cited in %s: name the authority that allows it",
				p.File, row.Line, name, what, below.Profile)
		}
		s.rows[name] = row
	}
	s.Profiles = append(s.Profiles, p)
	return nil
}

// governs reports whether a row takes the place of one stacked before it. A
// company may set its own demands. Otherwise common practice never stands
// before a document, except to fill in a limit that the document leaves unknown
// and then at no lighter grade; a known limit stands before an unknown one; and
// jurisdiction stands over base. Of two rows of one kind the one that asks no
// less governs, then the one that was read, and last the later one.
func governs(r Requirement, row, below Row) bool {
	_, less := loosens(r, below, row)
	_, lessBelow := loosens(r, row, below)
	switch {
	case row.kind == "company":
		return true
	case row.practice() && !below.practice():
		return below.unknown() && r.gradeIn(row).AtLeast(r.gradeIn(below))
	case below.practice() && !row.practice():
		return !row.unknown() || !r.gradeIn(below).AtLeast(r.gradeIn(row))
	case row.unknown() != below.unknown():
		return below.unknown()
	case row.kind != below.kind:
		return true
	case less != lessBelow:
		return lessBelow
	}
	return row.Source.Basis == below.Source.Basis || row.Source.Basis == finding.Published
}

// practice reports whether no document stands behind the row.
func (r Row) practice() bool { return r.Source.Basis == finding.CommonPractice }

// unknown reports whether a limit of the row is not established.
func (r Row) unknown() bool {
	for _, v := range r.Limits {
		if v.Unknown {
			return true
		}
	}
	return false
}

// loosens reports whether a row asks less than another, and in what.
func loosens(r Requirement, below, above Row) (what string, looser bool) {
	for _, name := range slices.Sorted(maps.Keys(r.Limits)) {
		old, now := below.Limits[name], above.Limits[name]
		switch r.Limits[name].Sense {
		case "one-of", "not-for":
			looser = slices.ContainsFunc(now.AnyOf, func(c string) bool { return !slices.Contains(old.AnyOf, c) })
		case "none-of", "all-of", "applies-to":
			looser = slices.ContainsFunc(old.AnyOf, func(c string) bool { return !slices.Contains(now.AnyOf, c) })
		case "at-least", "more-than":
			looser = compare(now.SI, old.SI) < 0
		case "at-most", "less-than":
			looser = compare(now.SI, old.SI) > 0
		}
		if looser || now.Unknown && !old.Unknown {
			return "limit " + strconv.Quote(name), true
		}
	}
	return "grade", !r.gradeIn(above).AtLeast(r.gradeIn(below))
}

// compare orders decimals exactly; what is not a number compares equal.
func compare(a, b string) int {
	x, okX := new(big.Rat).SetString(a)
	y, okY := new(big.Rat).SetString(b)
	if !okX || !okY {
		return 0
	}
	return x.Cmp(y)
}

// Names lists the profiles of the stack, base first.
func (s *Selection) Names() []string {
	names := make([]string, len(s.Profiles))
	for i, p := range s.Profiles {
		names[i] = p.Name
	}
	return names
}

// Asked lists the requirements that the stack demands, by name.
func (s *Selection) Asked() []string { return slices.Sorted(maps.Keys(s.rows)) }

// Requirement is what the rule file says of one requirement.
func (s *Selection) Requirement(name string) Requirement { return s.rulebook.requirements[name] }

// Row is the row that applies to a requirement; ok is false when the stack
// does not ask for it.
func (s *Selection) Row(name string) (row Row, ok bool) {
	row, ok = s.rows[name]
	return row, ok
}

// Grade is the grade that applies to a requirement.
func (s *Selection) Grade(name string) finding.Grade {
	return s.rulebook.requirements[name].gradeIn(s.rows[name])
}

func (r Requirement) gradeIn(row Row) finding.Grade {
	if row.Grade != "" {
		return row.Grade
	}
	return r.Grade
}

// Stage is the stage from which a requirement is due.
func (s *Selection) Stage(name string) finding.Stage {
	if row := s.rows[name]; row.Stage != "" {
		return row.Stage
	}
	return s.rulebook.requirements[name].Stage
}

// Data is what rules read as data: the limits of the stack as data.profile and
// the scope of each profile as data.scopes.
func (s *Selection) Data() map[string]any {
	topics := map[string]any{}
	for name, row := range s.rows {
		topic, short, _ := strings.Cut(name, ".")
		if topics[topic] == nil {
			topics[topic] = map[string]any{}
		}
		limits := map[string]any{}
		for limit, v := range row.Limits {
			switch {
			case v.Unknown:
				limits[limit] = map[string]any{}
			case v.SI != "":
				limits[limit] = map[string]any{"si": json.Number(v.SI)}
			default:
				limits[limit] = map[string]any{"any_of": anySlice(v.AnyOf)}
			}
		}
		topics[topic].(map[string]any)[short] = limits
	}
	scopes := make([]any, len(s.Profiles))
	for i, p := range s.Profiles {
		scopes[i] = p.Scope.data(p.Name)
	}
	return map[string]any{"profile": topics, "scopes": scopes}
}

func (s Scope) data(profile string) map[string]any {
	out := map[string]any{"profile": profile}
	if s.StoreysAtMost > 0 {
		out["storeys_at_most"] = json.Number(fmt.Sprint(s.StoreysAtMost))
	}
	for name, list := range map[string][]string{"contaminants": s.Contaminants, "house_kinds": s.HouseKinds, "system_kinds": s.SystemKinds} {
		if len(list) > 0 {
			out[name] = anySlice(list)
		}
	}
	if s.installedFrom != "" {
		out["installed_from"] = map[string]any{"si": json.Number(s.installedFrom)}
	}
	if s.NewHouses != "" {
		out["new_houses"] = s.NewHouses
	}
	return out
}

func anySlice(list []string) []any {
	out := make([]any, len(list))
	for i, v := range list {
		out[i] = v
	}
	return out
}
