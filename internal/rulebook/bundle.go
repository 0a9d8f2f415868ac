package rulebook

import (
	"fmt"
	"io"
	"maps"
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/bundle"
)

// verdictModule gives a stock OPA the verdict of every subject, by the same
// rules by which the program reads the outcome sets.
const verdictModule = `package verdicts

import data.entry
import data.policy.lib
import rego.v2

of[name] := {id: verdict(name, id) | some [id, _] in outcomes[0]} if some name, outcomes in entry.asked

verdict(name, id) := "not-applicable" if {
	data.rows[name].profile in {profile | some [profile, _] in entry.outside}
} else := known if {
	known := lib.verdict(sets(name), id)
	known != "unrecorded"
} else := "undetermined" if {
	data.rows[name].unknown
} else := "unrecorded"

sets(name) := {
	"subjects": entry.asked[name][0], "exempt": entry.asked[name][1], "met": entry.asked[name][2],
	"deficient": entry.asked[name][3], "undetermined": entry.asked[name][4],
}
`

// WriteBundle writes the stack as an OPA bundle. Given the output of "slablint
// derive" as input, data.verdicts.of holds requirement, subject and verdict.
func (s *Selection) WriteBundle(w io.Writer) error {
	modules := s.Modules()
	modules["verdicts.rego"] = verdictModule
	b := bundle.Bundle{Data: s.Data()}
	rows := map[string]any{}
	for name, row := range s.rows {
		unknown := false
		for _, v := range row.Limits {
			unknown = unknown || v.Unknown
		}
		rows[name] = map[string]any{"profile": row.Profile, "unknown": unknown}
	}
	b.Data["rows"] = rows
	b.Manifest.Init()
	b.Manifest.Revision = s.Digest
	for _, file := range slices.Sorted(maps.Keys(modules)) {
		parsed, err := ast.ParseModuleWithOpts(file, modules[file], ast.ParserOptions{})
		if err != nil {
			return err
		}
		b.Modules = append(b.Modules, bundle.ModuleFile{URL: "/" + file, Path: "/" + file, Raw: []byte(modules[file]), Parsed: parsed})
	}
	if err := bundle.Write(w, b); err != nil {
		return fmt.Errorf("bundle: %w", err)
	}
	return nil
}
