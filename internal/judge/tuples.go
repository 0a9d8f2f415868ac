package judge

import (
	"encoding/json"
	"fmt"

	"github.com/slablint/slablint/internal/place"
)

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

// index maps subjects to their outcome; the first wins.
func index(outcomes []outcome) map[string]outcome {
	out := make(map[string]outcome, len(outcomes))
	for _, o := range outcomes {
		if _, taken := out[o.subject]; !taken {
			out[o.subject] = o
		}
	}
	return out
}

func group(outcomes []outcome) map[string][]outcome {
	out := make(map[string][]outcome, len(outcomes))
	for _, o := range outcomes {
		out[o.subject] = append(out[o.subject], o)
	}
	return out
}

func firstOfEach(outcomes []outcome) []outcome {
	seen := make(map[string]bool, len(outcomes))
	var out []outcome
	for _, o := range outcomes {
		if !seen[o.subject] {
			seen[o.subject] = true
			out = append(out, o)
		}
	}
	return out
}
