package judge

import (
	"encoding/json"
	"errors"
	"fmt"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/rulebook"
)

// answerOf reads the answer of the reference, whose sets are in order already.
func answerOf(value any, names []string) (answer, error) {
	fields, ok := value.(map[string]any)
	if !ok {
		return answer{}, errors.New("the rulebook gave no answer")
	}
	asked, _ := fields["asked"].(map[string]any)
	a := answer{asked: make([]result, len(names)), outside: pairs(fields["outside"]), cautions: texts(fields["cautions"])}
	for i, name := range names {
		a.asked[i] = resultOf(asked[name])
	}
	return a, nil
}

// resultOf reads what one requirement says.
func resultOf(value any) (r result) {
	list, ok := value.([]any)
	if !ok || len(list) != sets {
		return result{failure: errors.New("the rule gave no outcome sets")}
	}
	for i := range list {
		if r.sets[i], r.failure = tuples(list[i]); r.failure != nil {
			return result{failure: fmt.Errorf("set %q: %w", rulebook.OutcomeSets()[i], r.failure)}
		}
	}
	return r
}

// texts reads a set of strings.
func texts(value any) []string {
	list, _ := value.([]any)
	out := make([]string, 0, len(list))
	for _, item := range list {
		if s, ok := item.(string); ok {
			out = append(out, s)
		}
	}
	return out
}

// pairs reads a set of pairs of strings.
func pairs(value any) [][2]string {
	list, _ := value.([]any)
	var out [][2]string
	for _, item := range list {
		if pair, ok := item.([]any); ok && len(pair) == 2 {
			first, _ := pair[0].(string)
			second, _ := pair[1].(string)
			out = append(out, [2]string{first, second})
		}
	}
	return out
}

// tuples reads one outcome set: subject ids, or arrays of subject id, path and
// limit name, or of subject id and reason.
func tuples(value any) ([]outcome, error) {
	list, ok := value.([]any)
	if !ok {
		return nil, fmt.Errorf("expected a set, found %T", value)
	}
	out := make([]outcome, len(list))
	for i, item := range list {
		switch v := item.(type) {
		case string:
			out[i].subject = v
		case []any:
			for at, part := range v {
				switch p := part.(type) {
				case string:
					if at == 0 {
						out[i].subject = p
					} else {
						out[i].extra = p
					}
				case []any:
					pointer, err := pointerOf(p)
					if err != nil {
						return nil, err
					}
					out[i].path = pointer
				default:
					return nil, fmt.Errorf("unexpected %T in an outcome", part)
				}
			}
		default:
			return nil, fmt.Errorf("unexpected %T as an outcome", item)
		}
		if out[i].subject == "" {
			return nil, fmt.Errorf("an outcome names no subject")
		}
	}
	return out, nil
}

func pointerOf(path []any) (place.Pointer, error) {
	var p place.Pointer
	for _, segment := range path {
		switch s := segment.(type) {
		case string:
			p = p.Append(s)
		case json.Number:
			i, err := s.Int64()
			if err != nil {
				return "", fmt.Errorf("path segment %s is no index", s)
			}
			p = p.Append(int(i))
		default:
			return "", fmt.Errorf("unexpected %T in a path", segment)
		}
	}
	return p, nil
}
