package rulebook

import (
	"slices"

	"github.com/open-policy-agent/opa/v1/ast"
)

// builtins is the allow-list of what a rule may call. It holds nothing that
// reads clock, network, environment or chance, and nothing that cannot be
// cancelled (bits.lsh grows a number past any limit).
var builtins = []string{
	"and", "or", "minus", "union", "intersection", "set_diff",
	"assign", "eq", "equal", "neq", "lt", "lte", "gt", "gte",
	"internal.member_2", "internal.member_3", "internal.print",
	"count", "sum", "max", "min", "sort",
	"plus", "mul", "div", "rem", "abs", "round", "ceil", "floor",
	"is_array", "is_boolean", "is_number", "is_object", "is_string", "is_set", "is_null", "type_name",
	"concat", "contains", "startswith", "endswith", "lower", "upper", "split", "trim", "format_int", "sprintf",
	"array.concat", "array.slice", "object.keys", "numbers.range",
}

// Capabilities is what OPA may use when it parses and compiles rules.
func Capabilities() *ast.Capabilities {
	all := ast.CapabilitiesForThisVersion()
	limited := *all
	limited.Builtins = slices.DeleteFunc(slices.Clone(all.Builtins), func(b *ast.Builtin) bool {
		return !slices.Contains(builtins, b.Name)
	})
	limited.AllowNet = []string{}
	return &limited
}
