package main

import (
	"bytes"
	"context"
	"os"
	"slices"
	"strings"
	"testing"
)

// The catalogue is what the program lists. "go test ./cmd/slablint -update"
// rewrites it after a rule or a profile was edited.
func TestCatalogueIsFresh(t *testing.T) {
	const file = "../../policy/CATALOGUE.md"
	var out, errs bytes.Buffer
	if status := run(context.Background(), []string{"rules", "--format", "markdown"}, world{in: strings.NewReader(""), out: &out, errs: &errs}); status != 0 {
		t.Fatalf("exit status %d: %s", status, errs.String())
	}
	if *update {
		if err := os.WriteFile(file, out.Bytes(), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	got, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, out.Bytes()) {
		t.Errorf("%s is stale: run go test ./cmd/slablint -run Catalogue -update", file)
	}
	requirements := map[string]bool{}
	for i, line := range strings.Split(out.String(), "\n") {
		inner, ok := strings.CutPrefix(line, "|")
		if !ok {
			continue
		}
		cells := strings.Split(strings.ReplaceAll(strings.TrimSuffix(inner, "|"), `\|`, ""), "|")
		for j := range cells {
			cells[j] = strings.TrimSpace(cells[j])
		}
		if slices.Contains(cells, "") {
			t.Errorf("line %d of the catalogue has an empty cell: %s", i+1, line)
		}
		if strings.HasPrefix(cells[0], "`") {
			requirements[cells[0]] = true
		}
	}
	if len(requirements) < 150 {
		t.Errorf("the catalogue lists only %d requirements", len(requirements))
	}
}
