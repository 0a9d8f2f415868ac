package rulebook

import (
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/finding"
)

// named is a profile of the sample requirement.
func named(name, kind, minimum, source, more string) string {
	text := profileText(kind, minimum, "[attic]", source, "")
	return strings.Replace(strings.Replace(text, "profile: p\n", "profile: "+name+"\n", 1), "    source:", more+"    source:", 1)
}

// Which of two rows governs does not depend on the order of the names, but
// where nothing tells the two apart.
func TestWhichRowGoverns(t *testing.T) {
	const practice, memory, lighter = "{basis: common-practice}", "{document: doc, basis: from-memory}", "    grade: recommended\n"
	a := func(kind, minimum, source, more string) string { return named("a", kind, minimum, source, more) }
	b := func(kind, minimum, source, more string) string { return named("b", kind, minimum, source, more) }
	for _, tt := range []struct{ name, a, b, want string }{
		{"practice does not weaken a document", a("base", "10 ft", basis, ""), b("base", "8 ft", practice, ""), "a"},
		{"nor lower its grade", a("base", "10 ft", basis, ""), b("base", "10 ft", practice, lighter), "a"},
		{"nor hide it by asking more", a("base", "10 ft", basis, ""), b("base", "12 ft", practice, ""), "a"},
		{"nor one cited from memory", a("base", "10 ft", memory, ""), b("base", "8 ft", practice, ""), "a"},
		{"not as a jurisdiction either", a("base", "10 ft", basis, ""), b("jurisdiction", "8 ft", practice, ""), "a"},
		{"practice fills in what a document leaves unknown", a("base", "unknown", memory, ""), b("base", "8 ft", practice, ""), "b"},
		{"but not at a lighter grade", a("base", "unknown", memory, ""), b("base", "8 ft", practice, lighter), "a"},
		{"known before unknown", a("base", "10 ft", basis, ""), b("base", "unknown", memory, ""), "a"},
		{"known before unknown in a jurisdiction", a("base", "10 ft", basis, ""), b("jurisdiction", "unknown", memory, ""), "a"},
		{"the stricter of two documents", a("base", "10 ft", basis, ""), b("base", "12 ft", memory, ""), "b"},
		{"the graver of two documents", a("base", "10 ft", basis, ""), b("base", "10 ft", basis, lighter), "a"},
		{"stricter one way and lighter another: the one that was read", a("base", "10 ft", basis, ""), b("base", "12 ft", memory, lighter), "a"},
		{"jurisdiction over base", a("base", "10 ft", basis, ""), b("jurisdiction", "9 ft", basis, ""), "b"},
		{"company over base", a("base", "10 ft", basis, ""), b("company", "12 ft", practice, ""), "b"},
		{"company over jurisdiction", a("jurisdiction", "10 ft", basis, ""), b("company", "12 ft", practice, ""), "b"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			rb := sampleBook(t, map[string]string{"a": tt.a, "b": tt.b})
			for _, order := range [][]string{{"a", "b"}, {"b", "a"}} {
				s, err := rb.Select(order...)
				if err != nil {
					t.Fatal(err)
				}
				if row, _ := s.Row("sample.height"); row.Profile != tt.want {
					t.Errorf("stacked %v, the row of %s governs, want %s", order, row.Profile, tt.want)
				}
			}
		})
	}
	rb := sampleBook(t, map[string]string{"a": a("base", "10 ft", basis, ""), "b": b("base", "10 ft", basis, "")})
	for _, order := range [][]string{{"a", "b"}, {"b", "a"}} {
		s, err := rb.Select(order...)
		if err != nil {
			t.Fatal(err)
		}
		if row, _ := s.Row("sample.height"); row.Profile != order[1] {
			t.Errorf("of equals %v the row of %s governs, want the later", order, row.Profile)
		}
	}
}

// A second company profile answers to the document beneath both, not to the first.
func TestSecondCompanyCannotLoosenTheDocument(t *testing.T) {
	const practice = "{basis: common-practice}"
	stack := func(second string) error {
		rb := sampleBook(t, map[string]string{
			"a": named("a", "base", "10 ft", basis, ""), "b": named("b", "company", "12 ft", practice, ""), "c": named("c", "company", second, practice, ""),
		})
		_, err := rb.Select("a", "b", "c")
		return err
	}
	if err := stack("8 ft"); err == nil || !strings.Contains(err.Error(), "looser than that of the document cited in a") {
		t.Errorf("8 ft over 12 ft over a published 10 ft: %v", err)
	}
	if err := stack("11 ft"); err != nil {
		t.Errorf("11 ft over 12 ft over a published 10 ft: %v", err)
	}
}

// In no stack of two built-in profiles does common practice stand before a
// document that has a limit, nor an unknown limit before a known one.
func TestBuiltInStacksWeakenNothing(t *testing.T) {
	rb, err := Builtin()
	if err != nil {
		t.Fatal(err)
	}
	alone := map[string]*Selection{}
	for _, name := range rb.ProfileNames() {
		if alone[name], err = rb.Select(name); err != nil {
			t.Fatal(err)
		}
	}
	met := 0
	for _, a := range rb.ProfileNames() {
		for _, b := range rb.ProfileNames() {
			if a == b {
				continue
			}
			s, err := rb.Select(a, b)
			if err != nil {
				t.Fatal(err)
			}
			for _, name := range s.Asked() {
				row, _ := s.Row(name)
				for _, under := range []string{a, b} {
					hidden, both := alone[under].Row(name)
					if !both || hidden.Profile == row.Profile {
						continue
					}
					met++
					if row.practice() && !hidden.practice() && !hidden.unknown() {
						t.Errorf("%s, %s: %s: common practice of %s hides the document of %s", a, b, name, row.Profile, hidden.Profile)
					}
					if row.unknown() && !hidden.unknown() && !hidden.practice() {
						t.Errorf("%s, %s: %s: an unknown limit of %s hides a known one of %s", a, b, name, row.Profile, hidden.Profile)
					}
					what, less := loosens(rb.requirements[name], hidden, row)
					if less && row.kind == hidden.kind && hidden.Source.Basis == finding.Published && row.Source.Basis != finding.Published {
						t.Errorf("%s, %s: %s: %s of %s is looser than what was read in %s", a, b, name, what, row.Profile, hidden.Profile)
					}
				}
			}
		}
	}
	if met == 0 {
		t.Error("no two profiles ask for the same requirement")
	}
}
