package report

import (
	"bytes"
	"encoding/json"
	"os"
	"path/filepath"
	"reflect"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/santhosh-tekuri/jsonschema/v5"

	"github.com/slablint/slablint/internal/finding"
)

// schemaURL is how the tests name the schema to the validator.
const schemaURL = "report.schema.json"

func schemaBytes(t *testing.T) []byte {
	t.Helper()
	data, err := os.ReadFile(filepath.Join("..", "..", "schema", "report.schema.json"))
	if err != nil {
		t.Fatal(err)
	}
	return data
}

// compile gives the schema, or the part of it at a JSON Pointer.
func compile(t *testing.T, pointer string) *jsonschema.Schema {
	t.Helper()
	c := jsonschema.NewCompiler()
	c.Draft = jsonschema.Draft2020
	if err := c.AddResource(schemaURL, bytes.NewReader(schemaBytes(t))); err != nil {
		t.Fatal(err)
	}
	s, err := c.Compile(schemaURL + "#" + pointer)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func decode(t *testing.T, data string) any {
	t.Helper()
	var v any
	if err := json.Unmarshal([]byte(data), &v); err != nil {
		t.Fatal(err)
	}
	return v
}

func TestReportsFollowTheirSchema(t *testing.T) {
	schema := compile(t, "")
	for _, s := range samples() {
		for _, o := range optionSets() {
			if err := schema.Validate(decode(t, render(t, JSON, s.report, o))); err != nil {
				t.Errorf("%s with %+v: %#v", s.name, o, err)
			}
		}
	}
}

func TestSchemaRefuses(t *testing.T) {
	schema := compile(t, "")
	good := render(t, JSON, several(), Options{All: true})
	for _, c := range []struct{ name, old, new string }{
		{"another version", `"report": 1`, `"report": 2`},
		{"another verdict", `"verdict": "met"`, `"verdict": "passed"`},
		{"another outcome", `"outcome": "ready"`, `"outcome": "fine"`},
		{"a short hash", `"sha256": "fedcba`, `"sha256": "`},
		{"a pointer that is none", `"path": "/systems`, `"path": "systems`},
		{"a line before the first", `"line": 80`, `"line": -1`},
		{"no basis", `"basis": "published"`, `"section": "4.1"`},
		{"null for a list", `"cautions": []`, `"cautions": null`},
		{"a picture of another kind", `"media_type": "image/jpeg"`, `"media_type": "image/svg+xml"`},
		{"one more field", `"due": true`, `"due": true, "author": "me"`},
	} {
		bad := strings.Replace(good, c.old, c.new, 1)
		if bad == good {
			t.Fatalf("%s: the sample has no %s", c.name, c.old)
		}
		if err := schema.Validate(decode(t, bad)); err == nil {
			t.Errorf("%s: accepted", c.name)
		}
	}
}

// object is what the tests look at in one object of the schema.
type object struct {
	Type                 string
	Properties           map[string]json.RawMessage
	Required             []string
	AdditionalProperties *bool
}

// The schema lists the fields of the Go types, requires those that are always
// written, and nothing else.
func TestSchemaHasTheFieldsOfTheTypes(t *testing.T) {
	for _, c := range []struct {
		pointer string
		value   any
	}{
		{"", finding.Report{}},
		{"/properties/rulebook", finding.Rulebook{}},
		{"/$defs/job", finding.Job{}},
		{"/$defs/counts", finding.Counts{}},
		{"/$defs/finding", finding.Finding{}},
		{"/$defs/finding/properties/at", finding.At{}},
		{"/$defs/finding/properties/source", finding.Source{}},
		{"/$defs/value", finding.DerivedValue{}},
		{"/$defs/assumption", finding.Assumption{}},
		{"/$defs/reading", finding.Reading{}},
		{"/$defs/figure", finding.Figure{}},
		{"/$defs/photo", finding.Photo{}},
		{"/$defs/error", finding.Error{}},
	} {
		var o object
		if err := json.Unmarshal(part(t, c.pointer), &o); err != nil {
			t.Fatal(err)
		}
		if o.Type != "object" || o.AdditionalProperties == nil || *o.AdditionalProperties {
			t.Errorf("%s: not a closed object", c.pointer)
		}
		var fields, always, properties []string
		for _, f := range reflect.VisibleFields(reflect.TypeOf(c.value)) {
			name, options, _ := strings.Cut(f.Tag.Get("json"), ",")
			fields = append(fields, name)
			if !strings.Contains(options, "omitempty") {
				always = append(always, name)
			}
		}
		for name := range o.Properties {
			properties = append(properties, name)
		}
		slices.Sort(fields)
		slices.Sort(properties)
		if diff := cmp.Diff(fields, properties); diff != "" {
			t.Errorf("%s: properties (-Go +schema):\n%s", c.pointer, diff)
		}
		slices.Sort(always)
		slices.Sort(o.Required)
		if diff := cmp.Diff(always, o.Required); diff != "" {
			t.Errorf("%s: required (-Go +schema):\n%s", c.pointer, diff)
		}
	}
}

func TestSchemaHasTheWordsOfTheTypes(t *testing.T) {
	checkEnum(t, "/$defs/stage", finding.Stages())
	checkEnum(t, "/$defs/job/properties/outcome", []finding.Outcome{finding.Ready, finding.Hold})
	checkEnum(t, "/$defs/finding/properties/verdict", finding.Verdicts())
	checkEnum(t, "/$defs/finding/properties/grade", []finding.Grade{finding.Hazard, finding.Required, finding.Recommended})
	checkEnum(t, "/$defs/finding/properties/source/properties/basis", []finding.Basis{finding.Published, finding.CommonPractice, finding.FromMemory})
	checkEnum(t, "/properties/report", []int{finding.Format})
}

func checkEnum[T any](t *testing.T, pointer string, want []T) {
	t.Helper()
	var got struct{ Enum []T }
	if err := json.Unmarshal(part(t, pointer), &got); err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, got.Enum); diff != "" {
		t.Errorf("%s (-Go +schema):\n%s", pointer, diff)
	}
}

// part is the piece of the schema at a JSON Pointer without escapes.
func part(t *testing.T, pointer string) json.RawMessage {
	t.Helper()
	at := json.RawMessage(schemaBytes(t))
	for _, segment := range strings.Split(pointer, "/")[1:] {
		var members map[string]json.RawMessage
		if err := json.Unmarshal(at, &members); err != nil {
			t.Fatal(err)
		}
		if at = members[segment]; at == nil {
			t.Fatalf("the schema has no %s", pointer)
		}
	}
	return at
}

// Every field says what it is, and its examples are what it describes.
func TestSchemaExplainsItsFields(t *testing.T) {
	examples := 0
	var walk func(pointer string, node any)
	walk = func(pointer string, node any) {
		members, ok := node.(map[string]any)
		if !ok {
			return
		}
		for name, child := range members {
			switch name {
			case "properties", "$defs":
				for field, schema := range child.(map[string]any) {
					at := pointer + "/" + name + "/" + field
					described := schema.(map[string]any)
					for _, key := range []string{"title", "description"} {
						if text, ok := described[key].(string); !ok || text == "" {
							t.Errorf("%s has no %s", at, key)
						}
					}
					if list, ok := described["examples"].([]any); ok {
						compiled := compile(t, at)
						for _, example := range list {
							examples++
							if err := compiled.Validate(example); err != nil {
								t.Errorf("%s: the example does not fit: %v", at, err)
							}
						}
					}
					walk(at, schema)
				}
			case "items":
				walk(pointer+"/items", child)
			}
		}
	}
	walk("", decode(t, string(schemaBytes(t))))
	if examples == 0 {
		t.Error("the schema has no examples")
	}
}
