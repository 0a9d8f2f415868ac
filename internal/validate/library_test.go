package validate

import (
	"encoding/json"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

// A schema that names a file or an address is refused, even if it is there.
func TestLibraryReadsNothingElse(t *testing.T) {
	file := filepath.Join(t.TempDir(), "other.json")
	if err := os.WriteFile(file, []byte(`{"type": "object"}`), 0o600); err != nil {
		t.Fatal(err)
	}
	for _, ref := range []string{"file://" + filepath.ToSlash(file), "https://slablint.example/other.json", "other.json"} {
		text, err := json.Marshal(map[string]any{"$ref": ref})
		if err != nil {
			t.Fatal(err)
		}
		_, err = compile(text)
		if err == nil || !strings.Contains(err.Error(), "nothing else is read") {
			t.Errorf("%s: got %v", ref, err)
		}
	}
	if _, err := compile([]byte(`{"$ref": "#/$defs/x", "$defs": {"x": {"type": "object"}}}`)); err != nil {
		t.Errorf("a reference inside the schema: %v", err)
	}
}

// The swap of drafts must not silently stop when the schema changes.
func TestDraftIsSwapped(t *testing.T) {
	if !strings.Contains(string(schema.Job()), string(draft2020)) {
		t.Errorf("the schema does not name its draft as %s", draft2020)
	}
	library, err := compileAsDraft7(schema.Job())
	if err != nil {
		t.Fatal(err)
	}
	if got := library.Draft.String(); got != "Draft7" {
		t.Errorf("compiled as %s", got)
	}
}

// The library takes a reader's word for what it is given; a failure of its own
// must not pass for a valid record.
func TestBrokenSchemaIsAnError(t *testing.T) {
	v, err := newValidator([]byte(`{"type": "object", "properties": {"a": {"type": "no such type"}}, "additionalProperties": false}`))
	if err != nil {
		t.Fatal(err)
	}
	got := v.Check(readJSON(t, []byte(`{"a": 1}`)))
	if len(got) != 1 || got[0].Line != 1 || !strings.HasPrefix(got[0].Message, "the record could not be checked, which is a fault of the program: ") {
		t.Errorf("got %v", got)
	}
}

// Every schema of this module is one that the library compiles as published.
func TestPublishedSchemasCompile(t *testing.T) {
	for name, text := range map[string][]byte{
		"job": schema.Job(), "derived": schema.Derived(), "canonical": schema.Canonical(), "report": schema.Report(),
	} {
		if _, err := compile(text); err != nil {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// The quick check and the library agree about numbers that are written in
// another way than usual, or the quick check leaves them to the library.
func TestQuickCheckLeavesDoubtToTheLibrary(t *testing.T) {
	v := newForTest(t)
	for _, c := range []struct {
		storeys      string
		quick, valid bool
	}{
		{"2", true, true},
		{"0", true, true},
		{"-0", true, true},
		{"2.0", false, true},
		{"2e0", false, true},
		{"12345678901234567890", false, true},
		{"-0.0", false, true},
		{"-1", false, false},
		{"2.5", false, false},
		{"1e-3", false, false},
		{"-1e300", false, false},
	} {
		doc := readJSON(t, []byte(`{"job": {"id": "J", "stage": "planned", "profiles": ["p"]}, "house": {"storeys": `+c.storeys+`}}`))
		if got := accepts(doc.Root, v.root); got != c.quick {
			t.Errorf("%s: quick check says %v", c.storeys, got)
		}
		if got := v.Check(doc); (got == nil) != c.valid {
			t.Errorf("%s: got %v", c.storeys, got)
		}
	}
}

// Keywords that the record's schema could use, each with its own words.
func TestWordsForEachKeyword(t *testing.T) {
	v, err := newValidator([]byte(`{
		"$schema": "https://json-schema.org/draft/2020-12/schema",
		"type": "object",
		"properties": {
			"fixed": {"type": "string", "const": "radon"},
			"share": {"type": "number", "minimum": 0, "maximum": 100},
			"word": {"type": "string", "minLength": 3, "maxLength": 5, "examples": ["four"]},
			"long": {"type": "string", "minLength": 3},
			"pair": {"type": "array", "items": {"type": "number"}, "minItems": 2}
		},
		"additionalProperties": false
	}`))
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ text, want string }{
		{`{"fixed": "radon", "share": 7.5, "word": "four", "long": "long", "pair": [1, 2]}`, ``},
		{`{"fixed": "helium"}`, `1:11: fixed: found "helium"; expected "radon"`},
		{`{"share": -0.5}`, `1:11: share: found the number -0.5; expected 0 or more`},
		{`{"share": 101}`, `1:11: share: found the number 101; expected 100 or less`},
		{`{"word": "to"}`, `1:10: word: found text of 2 characters; expected 3 to 5`},
		{`{"word": "äöüäöü"}`, `1:10: word: found text of 6 characters; expected 3 to 5`},
		{`{"word": ""}`, `1:10: word: found empty text; expected text, such as "four", or the field left out`},
		{`{"long": "to"}`, `1:10: long: found text of 2 characters; expected at least 3`},
		{`{"pair": [1]}`, `1:2: pair: found a list of 1; expected at least 2`},
		{`{"pair": [1, "2"]}`, `1:14: pair/#2: found "2" in quotes; write the number without them`},
	} {
		doc := readJSON(t, []byte(c.text))
		if got := strings.Join(lines(v, doc), "\n"); got != c.want {
			t.Errorf("%s: got %s, want %s", c.text, got, c.want)
		}
		if quick := accepts(doc.Root, v.root); quick && c.want != "" {
			t.Errorf("%s: the quick check accepts it", c.text)
		}
	}
}

// Whatever a record holds: no panic, the same errors every time, in order, and
// the quick check accepts nothing that the published schema refuses.
func FuzzCheck(f *testing.F) {
	full, err := os.ReadFile("testdata/full.json")
	if err != nil {
		f.Fatal(err)
	}
	f.Add(full)
	f.Add([]byte(small))
	f.Add([]byte(strings.NewReplacer("stage: closeout", "stage: done", "id: crawl", "id: basement", "storeys: 2", "storeys: 2.0").Replace(small)))
	f.Add([]byte("{}"))
	f.Add([]byte(`{"job": [], "": {"": 1}, "a/b": null, "house": {"foundations": [{"id": null}, 1, {"id": "x y"}]}, "evidence": [{"id": "e", "shows": ["e", "x", ""]}]}`))
	v, err := New()
	if err != nil {
		f.Fatal(err)
	}
	published, err := compile(schema.Job())
	if err != nil {
		f.Fatal(err)
	}
	library, err := v.library()
	if err != nil {
		f.Fatal(err)
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		doc, err := record.Read("job", data, record.Limits{})
		if err != nil {
			return
		}
		first := v.Check(doc)
		for i, e := range v.Check(doc) {
			if e != first[i] {
				t.Errorf("error %d: %v, then %v", i, first[i], e)
			}
			if e.Message == "" || e.Line < 1 || e.Column < 1 || strings.ContainsFunc(e.Message, func(r rune) bool { return r < ' ' }) {
				t.Errorf("error %d: %+v", i, e)
			}
			if i > 0 && (first[i-1].Line > e.Line || first[i-1].Line == e.Line && first[i-1].Column > e.Column) {
				t.Errorf("error %d stands before the one above it", i)
			}
		}
		value := plain(doc.Root, v.root)
		quick, valid := accepts(doc.Root, v.root), published.Validate(value) == nil
		if quick && !valid {
			t.Error("the quick check accepts what the schema refuses")
		}
		if draft7 := library.Validate(value) == nil; draft7 != valid {
			t.Errorf("valid by the published draft: %v, by draft 7: %v", valid, draft7)
		}
		if !valid && first == nil {
			t.Error("the schema refuses it, but there is no error")
		}
	})
}
