package record

import (
	"strings"

	"go.yaml.in/yaml/v4"
)

// yamlReader turns the parser's tree into a record's. It goes through the text
// beside the tree, because the parser tells where a value starts but not where
// it ends.
type yamlReader struct {
	file   string
	limits Limits
	cur    cursor
	free   []Node // one for each value of the record, handed out by take
}

func (r *yamlReader) take(n int) []Node {
	items := r.free[:n:n]
	r.free = r.free[n:]
	return items
}

func (r *yamlReader) fail(from, to pos, format string, args ...any) error {
	return newError(r.file, from, to, format, args...)
}

// value reads y into n; depth counts the objects and arrays around it. The
// cursor ends up just after the value.
func (r *yamlReader) value(n *Node, y *yaml.Node, depth int) error {
	r.cur.seek(y.Line, y.Column)
	n.at = r.cur.pos()
	if err := r.refuse(y); err != nil {
		return err
	}
	if y.Kind == yaml.ScalarNode {
		return r.scalar(n, y)
	}
	if depth == r.limits.Depth {
		return r.fail(n.at, n.at, tooDeep, r.limits.Depth)
	}
	start := r.cur.off
	var err error
	if y.Kind == yaml.SequenceNode {
		n.kind = Array
		n.items = r.take(len(y.Content))
		err = r.list(n.items, y.Content, depth+1)
	} else {
		n.kind = Object
		n.items = r.take(len(y.Content) / 2)
		err = r.mapping(n.items, y.Content, depth+1)
	}
	if err != nil {
		return err
	}
	if y.Style&yaml.FlowStyle != 0 {
		r.closeFlow(start)
	}
	n.end = r.cur.pos()
	return nil
}

func (r *yamlReader) list(items []Node, content []*yaml.Node, depth int) error {
	for i, y := range content {
		if err := r.value(&items[i], y, depth); err != nil {
			return err
		}
	}
	return nil
}

func (r *yamlReader) mapping(items []Node, content []*yaml.Node, depth int) error {
	var seen keys
	for i := range items {
		n, key, value := &items[i], content[2*i], content[2*i+1]
		if err := r.key(n, key); err != nil {
			return err
		}
		if first := seen.find(items[:i], n.key); first != nil {
			return twice(r.file, n, first)
		}
		if isEmpty(value) {
			r.passColon()
			n.at = r.cur.pos()
			n.end = n.at
			continue
		}
		if err := r.value(n, value, depth); err != nil {
			return err
		}
	}
	return nil
}

// key reads the key of a member. It must be text: a number, date or list as a
// key would be another key in JSON.
func (r *yamlReader) key(n *Node, y *yaml.Node) error {
	r.cur.seek(y.Line, y.Column)
	n.keyAt = r.cur.pos()
	if err := r.refuse(y); err != nil {
		return err
	}
	if y.Kind != yaml.ScalarNode {
		return r.fail(n.keyAt, n.keyAt, "found a list or mapping as a key; expected text")
	}
	r.cur.advance(r.scalarEnd(y))
	n.keyEnd = r.cur.pos()
	n.key = y.Value
	if y.Style != 0 {
		return nil
	}
	if y.Value == "<<" {
		return r.fail(n.keyAt, n.keyEnd, "found the merge key <<, which is not read; write the values out")
	}
	if y.Value == "" {
		return r.fail(n.keyAt, n.keyEnd, "found no key before the colon; expected text")
	}
	if kind, _, problem := plainScalar(y.Value); kind != String || problem != "" {
		return r.fail(n.keyAt, n.keyEnd, "found the key %s, which YAML reads as a value that is no text (%s); put it in quotes", shorten(y.Value), kind)
	}
	return nil
}

func (r *yamlReader) scalar(n *Node, y *yaml.Node) error {
	r.cur.advance(r.scalarEnd(y))
	n.end = r.cur.pos()
	if y.Style != 0 {
		n.kind, n.text = String, y.Value
		return nil
	}
	var problem string
	n.kind, n.text, problem = plainScalar(y.Value)
	if problem != "" {
		return r.fail(n.at, n.end, "%s", problem)
	}
	return nil
}

// refuse stops at what makes a value something else than what is written at
// its place. Without aliases nothing in a record can grow while it is read.
func (r *yamlReader) refuse(y *yaml.Node) error {
	at := r.cur.pos()
	switch {
	case y.Anchor != "":
		return r.fail(at, at, "found the anchor &%s; anchors are not read: write the value out wherever it is needed", shorten(y.Anchor))
	case y.Kind == yaml.AliasNode:
		return r.fail(at, at, "found the alias *%s; aliases are not read: write the value out", shorten(y.Value))
	case y.Style&yaml.TaggedStyle != 0 || y.Tag == "!":
		return r.fail(at, at, "found the tag %s; tags are not read: write the value alone, in quotes if it is text", shorten(y.Tag))
	}
	return nil
}

// passColon goes just after the colon of a key without a value; in a flow
// mapping the colon may be missing.
func (r *yamlReader) passColon() {
	rest := strings.TrimLeft(r.cur.rest(), " \t")
	if strings.HasPrefix(rest, ":") {
		r.cur.advance(len(r.cur.text) - len(rest) + 1)
	}
}

// closeFlow goes just after the bracket that closes the collection started at
// an offset. A single pair inside a list, [a: 1], has no bracket of its own.
func (r *yamlReader) closeFlow(start int) {
	text := r.cur.text
	closer := byte(']')
	switch text[start] {
	case '{':
		closer = '}'
	case '[':
	default:
		return
	}
	for i := r.cur.off; i < len(text); i++ {
		switch text[i] {
		case closer:
			r.cur.advance(i + 1)
			return
		case '#':
			for i+1 < len(text) && text[i+1] != '\n' && text[i+1] != '\r' {
				i++
			}
		}
	}
}
