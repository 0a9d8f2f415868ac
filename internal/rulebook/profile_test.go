package rulebook

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
	"testing/fstest"

	"github.com/slablint/slablint/internal/finding"
)

// rule is a small requirement with one limit of each kind.
const rule = `# METADATA
# title: The outlet is high enough
# description: Low outlets blow soil gas back.
# custom:
#   subject: outlet
#   grade: hazard
#   stage: running
#   remedy: Raise it.
#   limits:
#     minimum: {dimension: length, sense: at-least}
#     places: {dimension: choice, sense: one-of}
package policy.sample.height

import rego.v2

subjects contains [s.id, ["systems", i, "discharge"]] if some i, s in input.systems

deficient contains [s.id, ["systems", i, "discharge", "height_above_grade"], "minimum"] if {
	some i, s in input.systems
	s.discharge.height_above_grade.si < data.profile.sample.height.minimum.si
	s.fan.place in data.profile.sample.height.places.any_of
}
`

func sampleBook(t *testing.T, profiles map[string]string) *Rulebook {
	t.Helper()
	img, err := read(fstest.MapFS{"sample/height.rego": {Data: []byte(rule)}})
	if err != nil {
		t.Fatal(err)
	}
	folder := fstest.MapFS{}
	for name, text := range profiles {
		folder[name+".yaml"] = &fstest.MapFile{Data: []byte(text)}
	}
	return img.rulebook(folder)
}

const basis = "{document: doc, section: 1.2, basis: published}"

func profileText(kind, minimum, places, source, more string) string {
	return "profile: p\ntitle: A profile\nkind: " + kind + "\n" + more +
		"documents:\n  doc: {title: A document, edition: \"2020\"}\nrequirements:\n  sample.height:\n    limits: {minimum: " +
		minimum + ", places: " + places + "}\n    source: " + source + "\n"
}

func TestProfileMistakes(t *testing.T) {
	good := profileText("base", "10 ft", "[attic]", basis, "")
	tests := []struct{ name, text, want string }{
		{"unknown requirement", strings.Replace(good, "sample.height", "sample.hight", 1), `p.yaml:7:3: unknown requirement "sample.hight"; did you mean sample.height?`},
		{"unknown limit", strings.Replace(good, "minimum:", "minimun:", 1), `p.yaml:8:14: sample.height has no limit "minimun"`},
		{"limit left out", strings.Replace(good, "minimum: 10 ft, ", "", 1), `p.yaml:7:3: sample.height needs the limit "minimum"; write unknown when no limit is established`},
		{"no unit", strings.Replace(good, "10 ft", "10", 1), "p.yaml:8:14: "},
		{"no source", strings.Replace(good, "    source: "+basis+"\n", "", 1), "p.yaml:7:3: sample.height needs a source with its basis"},
		{"unknown document", strings.Replace(good, "document: doc", "document: dok", 1), `p.yaml:9:14: document "dok" is not among the documents of this profile`},
		{"published without section", strings.Replace(good, "section: 1.2, ", "", 1), "p.yaml:9:5: basis published needs a document and a section"},
		{"practice with a document", strings.Replace(good, "basis: published", "basis: common-practice", 1), "p.yaml:9:5: basis common-practice has no document"},
		{"unknown basis", strings.Replace(good, "basis: published", "basis: hearsay", 1), "p.yaml:9:5: basis is published, common-practice or from-memory"},
		{"unknown field", good + "colour: red\n", `p.yaml:10:1: unknown field "colour"`},
		{"unknown kind", strings.Replace(good, "kind: base", "kind: bass", 1), "a profile needs profile (its name), title and kind"},
		{"document without edition", strings.Replace(good, ", edition: \"2020\"", "", 1), `p.yaml:5:3: document "doc" needs a title and an edition`},
	}
	rb := sampleBook(t, nil)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := readProfile("p.yaml", []byte(tt.text), rb.requirements)
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("got %v\nwant %s", err, tt.want)
			}
		})
	}
	if _, err := readProfile("p.yaml", []byte(good), rb.requirements); err != nil {
		t.Fatal(err)
	}
}

func TestOverlays(t *testing.T) {
	base := profileText("base", "10 ft", "[attic, garage]", basis, "")
	practice := "{basis: common-practice}"
	tests := []struct{ name, overlay, want string }{
		{"stricter", profileText("company", "12 ft", "[attic]", practice, ""), ""},
		{"same height in another unit", profileText("company", "3.048 m", "[attic]", practice, ""), ""},
		{"looser than memory has it", profileText("company", "9 ft", "[attic]", practice, ""), `limit "minimum" is looser`},
		{"looser", profileText("company", "9 ft", "[attic]", practice, ""), `limit "minimum" is looser than that of the document cited in p`},
		{"looser by a hair", profileText("company", "3.0479 m", "[attic]", practice, ""), `limit "minimum" is looser`},
		{"one place more", profileText("company", "10 ft", "[attic, roof]", practice, ""), `limit "places" is looser`},
		{"unknown instead of known", profileText("company", "unknown", "[attic]", practice, ""), `limit "minimum" is looser`},
		{"looser with an authority", profileText("company", "9 ft", "[attic]", practice, "authority: Town of Ashgrove\n"), ""},
		{"another published document", profileText("jurisdiction", "9 ft", "[attic]", basis, ""), ""},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			base := base
			if tt.name == "looser than memory has it" {
				base = strings.Replace(base, basis, "{document: doc, basis: from-memory}", 1)
			}
			rb := sampleBook(t, map[string]string{"base": base, "over": tt.overlay})
			s, err := rb.Select("base", "over")
			if tt.want == "" {
				if err != nil {
					t.Fatal(err)
				}
				if row, _ := s.Row("sample.height"); row.Limits["minimum"].Text == "10 ft" && tt.name != "one place more" {
					t.Error("the overlay did not override the base")
				}
				return
			}
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Fatalf("got %v, want %s", err, tt.want)
			}
			if !atLine.MatchString(err.Error()) {
				t.Errorf("no file and line in %v", err)
			}
		})
	}
}

func TestLowerGradeIsLooser(t *testing.T) {
	over := strings.Replace(profileText("company", "10 ft", "[attic]", "{basis: common-practice}", ""), "    source", "    grade: recommended\n    source", 1)
	rb := sampleBook(t, map[string]string{"base": profileText("base", "10 ft", "[attic]", basis, ""), "over": over})
	if _, err := rb.Select("base", "over"); err == nil || !strings.Contains(err.Error(), "the grade is looser") {
		t.Error("an overlay lowered the grade of a published requirement without an authority")
	}
}

// Same rules and profiles give the same digest, any change gives another.
func TestDigest(t *testing.T) {
	digest := func(text string) string {
		s, err := sampleBook(t, map[string]string{"p": text}).Select("p")
		if err != nil {
			t.Fatal(err)
		}
		return s.Digest
	}
	text := profileText("base", "10 ft", "[attic]", basis, "")
	again := digest(text)
	if digest(text) != again || again == digest(text+"# a remark\n") {
		t.Error("the digest does not identify the rulebook")
	}
}

func TestUnknownProfile(t *testing.T) {
	rb := sampleBook(t, map[string]string{"base": profileText("base", "10 ft", "[attic]", basis, "")})
	if _, err := rb.Select("bass"); err == nil || !strings.Contains(err.Error(), `unknown profile "bass": expected one of base, or a file`) {
		t.Errorf("got %v", err)
	}
	file := filepath.Join(t.TempDir(), "own.yaml")
	if err := os.WriteFile(file, []byte(profileText("base", "11 ft", "[attic]", basis, "")), 0o600); err != nil {
		t.Fatal(err)
	}
	s, err := rb.Select(file)
	if err != nil || s.Names()[0] != "p" || s.Grade("sample.height") != finding.Hazard || s.Stage("sample.height") != finding.Running {
		t.Errorf("profile from a file: %v, %v", s, err)
	}
}

// What the type checker must refuse: each of these would go unnoticed at run time.
func TestRuleMistakes(t *testing.T) {
	tests := []struct{ name, old, with, want string }{
		{"misspelled field", "s.discharge.height_above_grade.si", "s.discharge.hight_above_grade.si", "undefined ref"},
		{"misspelled field under not", "s.fan.place in", "not is_string(s.fan.plaice)\n\ts.fan.place in", "undefined ref"},
		{"misspelled limit", "height.minimum.si", "height.minimun.si", "undefined ref"},
		{"wrong type", "s.fan.place in", "startswith(s.discharge, \"x\")\n\ts.fan.place in", "rego_type_error"},
		{"network", "s.fan.place in", "http.send({}).status_code == 200\n\ts.fan.place in", "undefined function http.send"},
		{"clock", "s.fan.place in", "time.now_ns() > 0\n\ts.fan.place in", "undefined function time.now_ns"},
		{"unstoppable shift", "s.fan.place in", "bits.lsh(1, 9) > 0\n\ts.fan.place in", "undefined function bits.lsh"},
		{"no title", "# title: The outlet is high enough\n", "", "METADATA field title is missing or empty"},
		{"unknown METADATA field", "#   remedy:", "#   remdy: x\n#   remedy:", `unknown METADATA field "remdy"`},
		{"unknown grade", "grade: hazard", "grade: grave", `unknown grade "grave"`},
		{"limit without sense", ", sense: at-least", "", `limit "minimum" needs a dimension and a sense`},
		{"no subjects", "subjects contains", "things contains", `the rule defines no set "subjects"`},
		{"file and package differ", "package policy.sample.height", "package policy.sample.depth", "belongs in sample/depth.rego"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			source := strings.Replace(rule, tt.old, tt.with, 1)
			if source == rule {
				t.Fatal("the test changes nothing")
			}
			_, err := read(fstest.MapFS{"sample/height.rego": {Data: []byte(source)}})
			if err == nil || !strings.Contains(err.Error(), tt.want) {
				t.Fatalf("got %v, want %s", err, tt.want)
			}
			if !atLine.MatchString(err.Error()) {
				t.Errorf("no file and line in %v", err)
			}
		})
	}
}

// atLine is how a mistake in a rule or in a profile says where it stands.
var atLine = regexp.MustCompile(`(\.rego|\.yaml):[0-9]+`)
