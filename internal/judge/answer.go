package judge

import (
	"cmp"
	"encoding/json"
	"errors"
	"math/big"
	"slices"
	"strconv"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// kind is the type of a node, in the order in which Rego sorts types.
type kind uint8

const (
	number kind = iota
	text
	array
	object
)

// node is one value of an answer. The values below it form a list: the first
// is child, the others follow by next; zero ends it.
type node struct {
	kind        kind
	text        string // of a number or text
	name        string // of a member of an object
	child, next int32
}

// reply is the JSON in which wasm gives its answer, taken apart. Its nodes are
// used again for the next record, so nothing may keep them.
type reply struct {
	raw   string
	at    int
	nodes []node
	order []int32           // of the set that is being sorted
	path  []byte            // that is being joined
	known map[string]string // ids and paths told before, so that each is kept once
}

// mostKnown bounds them.
const mostKnown = 1 << 12

var errReply = errors.New("the rulebook gave no answer that can be read")

// read takes the text apart; the first node is the whole of it.
func (r *reply) read(raw []byte) error {
	r.raw, r.at, r.nodes = string(raw), 0, r.nodes[:0]
	_, err := r.value()
	return err
}

func (r *reply) value() (int32, error) {
	at := int32(len(r.nodes))
	r.nodes = append(r.nodes, node{})
	n := node{}
	var err error
	switch c := r.peek(); {
	case c == '"':
		n.kind = text
		n.text, err = r.string()
	case c == '[':
		n.kind = array
		n.child, err = r.list(']')
	case c == '{':
		n.kind = object
		n.child, err = r.list('}')
	case c == '-' || c >= '0' && c <= '9':
		from := r.at
		for c == '-' || c == '+' || c == '.' || c == 'e' || c == 'E' || c >= '0' && c <= '9' {
			r.at++
			c = r.peek()
		}
		n.text = r.raw[from:r.at]
	default:
		err = errReply // no rule answers with true, false or null
	}
	r.nodes[at] = n
	return at, err
}

// list reads the elements of an array or the members of an object.
func (r *reply) list(end byte) (first int32, err error) {
	r.at++
	var last int32
	for r.peek() != end {
		if last != 0 && !r.skip(',') {
			return 0, errReply
		}
		var name string
		if end == '}' {
			if name, err = r.string(); err != nil || !r.skip(':') {
				return 0, errReply
			}
		}
		at, err := r.value()
		if err != nil {
			return 0, err
		}
		r.nodes[at].name = name
		if last == 0 {
			first = at
		} else {
			r.nodes[last].next = at
		}
		last = at
	}
	r.at++
	return first, nil
}

// peek is the next byte, 0 at the end. The wasm target writes no white space.
func (r *reply) peek() byte {
	if r.at < len(r.raw) {
		return r.raw[r.at]
	}
	return 0
}

func (r *reply) skip(c byte) bool {
	if r.peek() != c {
		return false
	}
	r.at++
	return true
}

func (r *reply) string() (string, error) {
	rest := r.raw[r.at:]
	for i := 1; i < len(rest); i++ {
		switch rest[i] {
		case '"':
			r.at += i + 1
			if strings.IndexByte(rest[:i], '\\') < 0 {
				return rest[1:i], nil
			}
			var s string
			err := json.Unmarshal([]byte(rest[:i+1]), &s)
			return s, err
		case '\\':
			i++
		}
	}
	return "", errReply
}

// member is the value under a name; ok is false when there is none.
func (r *reply) member(of int32, name string) (at int32, ok bool) {
	for at := r.nodes[of].child; at != 0; at = r.nodes[at].next {
		if r.nodes[at].name == name {
			return at, true
		}
	}
	return 0, false
}

// set lists the elements of a set in the order in which OPA's own evaluator
// hands them over: wasm gives them as its hash tables have them, and which of
// two outcomes is told first must not depend on the evaluator. The list is
// valid until the next call.
func (r *reply) set(at int32) []int32 {
	r.order = r.order[:0]
	for i := r.nodes[at].child; i != 0; i = r.nodes[i].next {
		r.order = append(r.order, i)
	}
	if len(r.order) > 1 {
		slices.SortFunc(r.order, r.compare)
	}
	return r.order
}

// compare orders what outcomes are made of as Rego does: numbers before text
// before arrays, arrays by their first difference.
func (r *reply) compare(a, b int32) int {
	x, y := &r.nodes[a], &r.nodes[b]
	if x.kind != y.kind {
		return cmp.Compare(x.kind, y.kind)
	}
	switch x.kind {
	case number:
		return compareNumbers(x.text, y.text)
	case text:
		return strings.Compare(x.text, y.text)
	case array, object:
	}
	i, j := x.child, y.child
	for i != 0 && j != 0 {
		if c := r.compare(i, j); c != 0 {
			return c
		}
		i, j = r.nodes[i].next, r.nodes[j].next
	}
	return cmp.Compare(i, j) // one of them is 0: the shorter array goes first
}

func compareNumbers(a, b string) int {
	x, errX := strconv.ParseInt(a, 10, 64)
	y, errY := strconv.ParseInt(b, 10, 64)
	if errX == nil && errY == nil {
		return cmp.Compare(x, y)
	}
	p, okP := new(big.Rat).SetString(a)
	q, okQ := new(big.Rat).SetString(b)
	if !okP || !okQ {
		return strings.Compare(a, b)
	}
	return p.Cmp(q)
}

// answer is what the reply says of the requirements asked. What is not as it
// should be is an error, and the reference then says what is wrong.
func (r *reply) answer(names []string) (answer, error) {
	if r.known == nil || len(r.known) > mostKnown {
		r.known = map[string]string{}
	}
	whole, ok := r.member(r.nodes[0].child, "value")
	asked, okAsked := r.member(whole, "asked")
	outside, okOutside := r.member(whole, "outside")
	cautions, okCautions := r.member(whole, "cautions")
	if !ok || !okAsked || !okOutside || !okCautions {
		return answer{}, errReply
	}
	byName := make(map[string]int32, len(names))
	for at := r.nodes[asked].child; at != 0; at = r.nodes[at].next {
		byName[r.nodes[at].name] = r.nodes[at].child
	}
	a := answer{asked: make([]result, len(names)), cautions: []string{}}
	for i, name := range names {
		at := byName[name]
		for set := range a.asked[i].sets {
			if at == 0 {
				return answer{}, errReply
			}
			var err error
			if a.asked[i].sets[set], err = r.outcomes(at); err != nil {
				return answer{}, err
			}
			at = r.nodes[at].next
		}
	}
	for _, at := range r.set(outside) {
		profile := r.nodes[at].child
		a.outside = append(a.outside, [2]string{r.keep(r.nodes[profile].text), r.keep(r.nodes[r.nodes[profile].next].text)})
	}
	for _, at := range r.set(cautions) {
		a.cautions = append(a.cautions, r.keep(r.nodes[at].text))
	}
	return a, nil
}

// outcomes reads one outcome set.
func (r *reply) outcomes(at int32) ([]outcome, error) {
	members := r.set(at)
	if len(members) == 0 {
		return nil, nil
	}
	out := make([]outcome, len(members))
	for i, member := range members {
		n := &r.nodes[member]
		switch n.kind {
		case text:
			out[i].subject = r.keep(n.text)
		case array:
			for part := n.child; part != 0; part = r.nodes[part].next {
				switch p := &r.nodes[part]; {
				case p.kind == text && part == n.child:
					out[i].subject = r.keep(p.text)
				case p.kind == text:
					out[i].extra = r.keep(p.text)
				case p.kind == array:
					var err error
					if out[i].path, err = r.pointer(part); err != nil {
						return nil, err
					}
				default:
					return nil, errReply
				}
			}
		case number, object:
			return nil, errReply
		}
		if out[i].subject == "" {
			return nil, errReply
		}
	}
	return out, nil
}

// pointer joins the segments of a path: names and indexes.
func (r *reply) pointer(at int32) (place.Pointer, error) {
	r.path = r.path[:0]
	for i := r.nodes[at].child; i != 0; i = r.nodes[i].next {
		segment := r.nodes[i].text
		switch r.nodes[i].kind {
		case text:
			if strings.ContainsAny(segment, "~/") {
				r.path = append(r.path, place.Root.Append(segment)...)
				continue
			}
		case number:
			if _, err := strconv.ParseInt(segment, 10, 64); err != nil {
				return "", errReply
			}
		case array, object:
			return "", errReply
		}
		r.path = append(append(r.path, '/'), segment...)
	}
	if known, ok := r.known[string(r.path)]; ok {
		return place.Pointer(known), nil
	}
	return place.Pointer(r.keep(string(r.path))), nil
}

// keep is the text apart from the reply that it stands in.
func (r *reply) keep(s string) string {
	known, ok := r.known[s]
	if !ok {
		known = strings.Clone(s)
		r.known[known] = known
	}
	return known
}
