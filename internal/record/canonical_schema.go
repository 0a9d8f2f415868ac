package record

import (
	"bytes"
	"encoding/json"
	"fmt"
)

// CanonicalSchema makes the JSON Schema of the canonical form out of the
// written schema and the schema of derived values. Rules are compiled against
// it: objects are closed, every quantity is the same object, and annotations
// that only people need are left out.
func CanonicalSchema(written, derived []byte) ([]byte, error) {
	var record, computed map[string]any
	if err := json.Unmarshal(written, &record); err != nil {
		return nil, fmt.Errorf("record schema: %w", err)
	}
	if err := json.Unmarshal(derived, &computed); err != nil {
		return nil, fmt.Errorf("schema of derived values: %w", err)
	}
	root := canonicalNode(record)
	root["properties"].(map[string]any)["derived"] = canonicalNode(computed)
	root["$schema"] = "http://json-schema.org/draft-07/schema#"
	root["$id"] = "https://slablint.example/schema/canonical.schema.json"
	root["title"] = "Canonical record with derived values"
	root["description"] = "Generated from job.schema.json and derived.schema.json: what rules read."
	defs := map[string]any{
		"quantity": closed(map[string]any{
			"si": typed("number"), "value": typed("number"), "unit": typed("string"), "text": typed("string"),
		}),
	}
	for _, source := range []map[string]any{record, computed} {
		written, _ := source["$defs"].(map[string]any)
		for name, def := range written {
			if name != "quantity" {
				defs[name] = canonicalNode(def.(map[string]any))
			}
		}
	}
	root["$defs"] = defs
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	if err := enc.Encode(root); err != nil {
		return nil, fmt.Errorf("canonical schema: %w", err)
	}
	return out.Bytes(), nil
}

func typed(name string) map[string]any { return map[string]any{"type": name} }

func closed(properties map[string]any) map[string]any {
	return map[string]any{"type": "object", "properties": properties, "additionalProperties": false}
}

// canonicalNode keeps what a type checker reads of one schema node.
func canonicalNode(node map[string]any) map[string]any {
	out := map[string]any{}
	for _, keyword := range []string{"type", "$ref", "enum", "additionalProperties"} {
		if v, ok := node[keyword]; ok {
			out[keyword] = v
		}
	}
	if properties, ok := node["properties"].(map[string]any); ok {
		kept := make(map[string]any, len(properties))
		for name, p := range properties {
			kept[name] = canonicalNode(p.(map[string]any))
		}
		out["properties"] = kept
	}
	if items, ok := node["items"].(map[string]any); ok {
		out["items"] = canonicalNode(items)
	}
	return out
}
