package judge

import (
	"cmp"
	"encoding/json"
	"math/big"
	"slices"
	"strings"
)

// inOrder puts the sets of an answer into the order in which OPA's own
// evaluator hands them over: wasm gives them as its hash tables have them, and
// which of two outcomes is told first must not depend on the evaluator.
func (a answer) inOrder() {
	sortSet(a.outside)
	sortSet(a.cautions)
	for _, sets := range a.asked {
		list, _ := sets.([]any)
		for _, set := range list {
			sortSet(set)
		}
	}
}

func sortSet(set any) {
	if list, ok := set.([]any); ok {
		slices.SortFunc(list, compare)
	}
}

// compare orders what outcomes are made of as Rego does: numbers before text
// before arrays, arrays by their first difference.
func compare(a, b any) int {
	switch x := a.(type) {
	case json.Number:
		if y, ok := b.(json.Number); ok {
			return compareNumbers(x, y)
		}
	case string:
		if y, ok := b.(string); ok {
			return strings.Compare(x, y)
		}
	case []any:
		if y, ok := b.([]any); ok {
			return slices.CompareFunc(x, y, compare)
		}
	}
	return cmp.Compare(rank(a), rank(b))
}

func compareNumbers(a, b json.Number) int {
	x, errX := a.Int64()
	y, errY := b.Int64()
	if errX == nil && errY == nil {
		return cmp.Compare(x, y)
	}
	p, okP := new(big.Rat).SetString(a.String())
	q, okQ := new(big.Rat).SetString(b.String())
	if !okP || !okQ {
		return strings.Compare(a.String(), b.String())
	}
	return p.Cmp(q)
}

func rank(v any) int {
	switch v.(type) {
	case json.Number:
		return 0
	case string:
		return 1
	case []any:
		return 2
	}
	return 3
}
