package rulebook_test

import (
	"bytes"
	"context"
	"encoding/json"
	"testing"

	"github.com/open-policy-agent/opa/v1/bundle"
	"github.com/open-policy-agent/opa/v1/rego"

	"github.com/slablint/slablint/internal/rulebook"
)

// A stock OPA reads the bundle and answers; that it answers like the program is
// tested where records are judged.
func TestBundleIsReadByStockOPA(t *testing.T) {
	rb, err := rulebook.Builtin()
	if err != nil {
		t.Fatal(err)
	}
	selection, err := rb.Select("us-epa-1994")
	if err != nil {
		t.Fatal(err)
	}
	var out bytes.Buffer
	if err := selection.WriteBundle(&out); err != nil {
		t.Fatal(err)
	}
	b, err := bundle.NewReader(bytes.NewReader(out.Bytes())).Read()
	if err != nil {
		t.Fatal(err)
	}
	results, err := rego.New(rego.ParsedBundle("rulebook", &b), rego.Query("data.verdicts.of"), rego.Input(map[string]any{})).Eval(context.Background())
	if err != nil || len(results) == 0 {
		t.Fatal(results, err)
	}
	verdicts, _ := results[0].Expressions[0].Value.(map[string]any)
	if len(verdicts) != len(selection.Asked()) {
		t.Errorf("%d requirements answered, %d asked", len(verdicts), len(selection.Asked()))
	}
	text, _ := json.Marshal(verdicts)
	if bytes.Contains(text, []byte(`"met"`)) || !bytes.Contains(text, []byte(`"unrecorded"`)) {
		t.Errorf("an empty record gives %s", text)
	}
}
