package rulebook

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/quantity"
	"github.com/slablint/slablint/internal/record"
)

// Profile is one profile file: which requirements apply, their limits, their
// grade and the source of each.
type Profile struct {
	Name      string
	Title     string
	Kind      string // base, jurisdiction or company
	Authority string // who allows what the profile loosens
	File      string
	Documents map[string]DocumentRef
	Scope     Scope
	Rows      map[string]Row
	doc       *record.Document
}

// DocumentRef is one document that a profile cites.
type DocumentRef struct {
	Title   string
	Edition string
}

// Scope says which jobs the documents of a profile speak of at all. A field
// that is empty or zero sets no bound.
type Scope struct {
	StoreysAtMost int
	Contaminants  []string
	HouseKinds    []string
	SystemKinds   []string
	InstalledFrom string // date: work on systems installed earlier is outside
	NewHouses     string // "only", "never" or ""
	installedFrom string // seconds since 1970-01-01 UTC
}

// Row is what one profile says of one requirement.
type Row struct {
	Requirement string
	Profile     string
	Grade       finding.Grade // "" keeps the requirement's own
	Stage       finding.Stage // "" keeps the requirement's own
	Limits      map[string]Value
	Source      finding.Source
	Note        string
	Line        int
	kind        string // of the profile
}

// Value is one limit as a profile fills it in.
type Value struct {
	Text    string // as written in the profile
	SI      string // decimal, SI unit of the dimension; "" for choices and unknown
	AnyOf   []string
	Unknown bool // no established limit: undetermined, never a pass
}

// readProfile reads and checks one profile file against the requirements it
// may name. Errors carry file, line and column.
func readProfile(file string, data []byte, requirements map[string]Requirement) (*Profile, error) {
	doc, err := record.ReadYAML(file, data, record.Limits{})
	if err != nil {
		return nil, err
	}
	p := profileReader{doc: doc}
	profile := p.profile(requirements)
	if p.err != nil {
		return nil, p.err
	}
	return profile, nil
}

// The fields that a profile file and its parts may hold.
const (
	profileFields  = "profile title kind authority documents scope requirements"
	documentFields = "title edition"
	scopeFields    = "storeys_at_most contaminants house_kinds system_kinds installed_from new_houses"
	rowFields      = "limits grade stage source note"
	sourceFields   = "document section basis"
)

// profileReader keeps the first mistake, like a scanner.
type profileReader struct {
	doc *record.Document
	err error
}

func (p *profileReader) fail(n *record.Node, format string, args ...any) {
	if p.err == nil {
		p.err = &record.Error{Spot: n.KeySpot(p.doc.Name), Message: fmt.Sprintf(format, args...)}
	}
}

// members calls each for every member, refusing names that are not known.
func (p *profileReader) members(n *record.Node, known string, each func(*record.Node)) {
	if n == nil {
		return
	}
	if n.Kind() != record.Object {
		p.fail(n, "expected a mapping with %s", known)
		return
	}
	for i := range n.Len() {
		m := n.Item(i)
		if known != "" && !slices.Contains(strings.Fields(known), m.Key()) {
			p.fail(m, "unknown field %q: expected one of %s", m.Key(), strings.Join(strings.Fields(known), ", "))
			return
		}
		each(m)
	}
}

func (p *profileReader) text(n *record.Node) string {
	if n == nil {
		return ""
	}
	if n.Kind() != record.String && n.Kind() != record.Number {
		p.fail(n, "expected text, found %s", n.Kind())
		return ""
	}
	return n.Text()
}

func (p *profileReader) texts(n *record.Node) []string {
	if n.Kind() != record.Array {
		p.fail(n, "expected a list")
		return nil
	}
	var out []string
	for i := range n.Len() {
		out = append(out, p.text(n.Item(i)))
	}
	return out
}

func (p *profileReader) profile(requirements map[string]Requirement) *Profile {
	root := p.doc.Root
	out := &Profile{File: p.doc.Name, Documents: map[string]DocumentRef{}, Rows: map[string]Row{}, doc: p.doc}
	p.members(root, profileFields, func(m *record.Node) {
		switch m.Key() {
		case "profile":
			out.Name = p.text(m)
		case "title":
			out.Title = p.text(m)
		case "kind":
			out.Kind = p.text(m)
		case "authority":
			out.Authority = p.text(m)
		case "documents":
			p.members(m, "", func(d *record.Node) {
				p.members(d, documentFields, func(*record.Node) {})
				ref := DocumentRef{Title: p.text(d.Get("title")), Edition: p.text(d.Get("edition"))}
				if ref.Title == "" || ref.Edition == "" {
					p.fail(d, "document %q needs a title and an edition", d.Key())
				}
				out.Documents[d.Key()] = ref
			})
		case "scope":
			out.Scope = p.scope(m)
		}
	})
	if out.Name == "" || out.Title == "" || !slices.Contains([]string{"base", "jurisdiction", "company"}, out.Kind) {
		p.fail(root, "a profile needs profile (its name), title and kind (base, jurisdiction or company)")
		return out
	}
	p.members(root.Get("requirements"), "", func(m *record.Node) {
		requirement, known := requirements[m.Key()]
		if !known {
			p.fail(m, "unknown requirement %q%s", m.Key(), nearest(m.Key(), requirements))
			return
		}
		out.Rows[m.Key()] = p.row(m, out, requirement)
	})
	return out
}

func (p *profileReader) scope(n *record.Node) Scope {
	var s Scope
	p.members(n, scopeFields, func(m *record.Node) {
		switch m.Key() {
		case "storeys_at_most":
			if _, err := fmt.Sscanf(p.text(m), "%d", &s.StoreysAtMost); err != nil {
				p.fail(m, "storeys_at_most needs a whole number")
			}
		case "contaminants":
			s.Contaminants = p.texts(m)
		case "house_kinds":
			s.HouseKinds = p.texts(m)
		case "system_kinds":
			s.SystemKinds = p.texts(m)
		case "installed_from":
			s.InstalledFrom = p.text(m)
			date, err := quantity.Parse(quantity.Date, s.InstalledFrom)
			if err != nil {
				p.fail(m, "installed_from needs a date: %v", err)
				return
			}
			s.installedFrom = date.SI()
		case "new_houses":
			s.NewHouses = p.text(m)
			if s.NewHouses != "only" && s.NewHouses != "never" {
				p.fail(m, "new_houses is only or never, found %q", s.NewHouses)
			}
		}
	})
	return s
}

func (p *profileReader) row(n *record.Node, profile *Profile, requirement Requirement) Row {
	row := Row{Requirement: requirement.Name, Profile: profile.Name, kind: profile.Kind, Line: n.KeySpot("").Line}
	p.members(n, rowFields, func(m *record.Node) {
		var err error
		switch m.Key() {
		case "grade":
			row.Grade, err = finding.ParseGrade(p.text(m))
		case "stage":
			row.Stage, err = finding.ParseStage(p.text(m))
		case "note":
			row.Note = p.text(m)
		case "source":
			row.Source = p.source(m, profile)
		case "limits":
			row.Limits = p.limits(m, requirement)
		}
		if err != nil {
			p.fail(m, "%v", err)
		}
	})
	if row.Source.Basis == "" {
		p.fail(n, "%s needs a source with its basis", requirement.Name)
	}
	for name := range requirement.Limits {
		if _, given := row.Limits[name]; !given {
			p.fail(n, "%s needs the limit %q; write unknown when no limit is established", requirement.Name, name)
		}
	}
	return row
}

func (p *profileReader) source(n *record.Node, profile *Profile) finding.Source {
	var s finding.Source
	p.members(n, sourceFields, func(m *record.Node) {
		switch m.Key() {
		case "document":
			ref, known := profile.Documents[p.text(m)]
			if !known {
				p.fail(m, "document %q is not among the documents of this profile", p.text(m))
			}
			s.Document, s.Edition = ref.Title, ref.Edition
		case "section":
			s.Section = p.text(m)
		case "basis":
			s.Basis = finding.Basis(p.text(m))
		}
	})
	switch s.Basis {
	case finding.Published:
		if s.Document == "" || s.Section == "" {
			p.fail(n, "basis published needs a document and a section")
		}
	case finding.FromMemory:
		if s.Document == "" {
			p.fail(n, "basis from-memory needs a document")
		}
	case finding.CommonPractice:
		if s.Document != "" {
			p.fail(n, "basis common-practice has no document")
		}
	default:
		p.fail(n, "basis is published, common-practice or from-memory, found %q", s.Basis)
	}
	return s
}

func (p *profileReader) limits(n *record.Node, requirement Requirement) map[string]Value {
	out := map[string]Value{}
	p.members(n, "", func(m *record.Node) {
		limit, known := requirement.Limits[m.Key()]
		if !known {
			p.fail(m, "%s has no limit %q", requirement.Name, m.Key())
			return
		}
		out[m.Key()] = p.value(m, limit)
	})
	return out
}

func (p *profileReader) value(n *record.Node, limit Limit) Value {
	if n.Kind() == record.String && n.Text() == "unknown" {
		return Value{Unknown: true, Text: "unknown"}
	}
	switch limit.Dimension {
	case "choice":
		choices := p.texts(n)
		return Value{AnyOf: choices, Text: strings.Join(choices, ", ")}
	case "number":
		text := p.text(n)
		if n.Kind() != record.Number {
			p.fail(n, "expected a number")
		}
		return Value{SI: text, Text: text}
	}
	q, err := quantity.Parse(quantity.Dimension(limit.Dimension), p.text(n))
	if err != nil {
		p.fail(n, "%v", err)
		return Value{}
	}
	return Value{SI: q.SI(), Text: q.Text()}
}

// nearest suggests a requirement of the same topic or says nothing.
func nearest(name string, requirements map[string]Requirement) string {
	topic, _, _ := strings.Cut(name, ".")
	var same []string
	for known := range requirements {
		if strings.HasPrefix(known, topic+".") {
			same = append(same, known)
		}
	}
	if len(same) == 0 {
		return ""
	}
	slices.SortFunc(same, func(a, b string) int {
		return cmp.Or(-cmp.Compare(sharedPrefix(a, name), sharedPrefix(b, name)), cmp.Compare(a, b))
	})
	return fmt.Sprintf("; did you mean %s?", same[0])
}

func sharedPrefix(a, b string) int {
	n := 0
	for n < len(a) && n < len(b) && a[n] == b[n] {
		n++
	}
	return n
}
