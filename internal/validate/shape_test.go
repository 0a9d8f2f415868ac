package validate

import (
	"strings"
	"testing"
)

// What is not understood in the schema stops the program at its start and is
// not overlooked.
func TestSchemaRefused(t *testing.T) {
	const subjects = `"a": {"type": "array", "items": {"type": "object", "properties": {"id": {"type": "string"},
		"b": {"type": "array", "items": {"type": "object", "properties": {"id": {"type": "string"}}, "additionalProperties": false}}},
		"additionalProperties": false}}`
	for _, c := range []struct{ name, properties, want string }{
		{"unknown keyword", `"a": {"type": "number", "multipleOf": 2}`, `unknown field "multipleOf"`},
		{"pattern without words", `"a": {"type": "string", "pattern": "^x$"}`, "has no words to explain it"},
		{"open object", `"a": {"title": "A", "type": "object", "properties": {}}`, `the object "A" is not closed`},
		{"free keys", `"a": {"title": "A", "type": "object", "additionalProperties": true}`, `the object "A" is not closed`},
		{"required but unknown", `"a": {"title": "A", "type": "object", "properties": {}, "required": ["b"], "additionalProperties": false}`, `"b" is required of "A"`},
		{"odd name", `"a/b": {"type": "number"}`, `the name "a/b"`},
		{"reference to nothing", `"a": {"$ref": "#/$defs/x"}`, "#/$defs/x leads to nothing"},
		{"limit beside a reference", `"a": {"$ref": "#/$defs/d", "type": "string"}`, "stands beside the reference"},
		{"ids of nothing", `"a": {"type": "string", "refers": "/b"}`, `/a refers to "/b"`},
		{"ids of a list inside another", subjects + `, "c": {"type": "string", "refers": "/a/*/b"}`, `/c refers to "/a/*/b"`},
		{"no JSON", `"a": `, "record schema: "},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, err := newValidator([]byte(`{"type": "object", "properties": {` + c.properties + `}, "additionalProperties": false,
				"$defs": {"d": {"type": "number"}}}`))
			if err == nil || !strings.Contains(err.Error(), c.want) {
				t.Errorf("got %v, want %s", err, c.want)
			}
		})
	}
	if _, err := newValidator([]byte(`{"type": "object", "properties": {` + subjects + `,
		"c": {"type": "string", "refers": "/a"}, "d": {"type": "string", "refers": "*"}}, "additionalProperties": false}`)); err != nil {
		t.Errorf("a schema in order: %v", err)
	}
}
