package record

import (
	"crypto/sha256"
	"strings"
)

// ReadJSON reads one record in JSON as RFC 8259 defines it, which leaves no
// room for comments, trailing commas or a second value. Beyond that it refuses
// what readers would understand differently: a key that comes twice, half of a
// surrogate pair, and numbers outside the range of checkRange. A failure is an
// *Error.
func ReadJSON(name string, data []byte, limits Limits) (*Document, error) {
	return readJSON(jsonReader{file: name, line: 1}, data, limits)
}

func readJSON(r jsonReader, data []byte, limits Limits) (*Document, error) {
	r.limits = limits.orDefaults()
	var err error
	if r.text, err = decode(r.file, r.line, data, r.limits); err != nil {
		return nil, err
	}
	root, err := r.record()
	if err != nil {
		return nil, err
	}
	return &Document{Name: r.file, Root: root, SHA256: sha256.Sum256(data)}, nil
}

// jsonReader walks through the text once. Texts without escapes are not
// copied: they stay part of the record's text.
type jsonReader struct {
	file   string
	text   string
	limits Limits
	stream bool // the text is one line of a stream: CR does not begin another

	off     int
	line    int // of off
	lineOff int // where that line begins
	wide    int // bytes between lineOff and off that continue a rune

	count int    // values so far
	open  []Node // elements and members of the objects and arrays still open
	free  []Node // handed out by keep
}

func (r *jsonReader) pos() pos {
	return pos{int32(r.line), int32(r.off - r.lineOff - r.wide + 1)}
}

func (r *jsonReader) fail(format string, args ...any) error {
	at := r.pos()
	return newError(r.file, at, at, format, args...)
}

// found names what stands at the cursor.
func (r *jsonReader) found() string {
	if r.off == len(r.text) && r.stream {
		return "the end of the line"
	}
	return found(r.text[r.off:])
}

func (r *jsonReader) record() (*Node, error) {
	r.space()
	switch c := r.peek(); {
	case c == '{':
	case c == 0 && r.off == len(r.text):
		return nil, newError(r.file, pos{1, 1}, pos{1, 1}, emptyFile)
	case c == '[':
		return nil, r.fail("found an array at the top level; expected an object, which begins with {")
	default:
		return nil, r.fail("found %s; expected {", r.found())
	}
	// One node for each comma and opening bracket is enough, and too many only
	// where texts hold commas.
	most := 1 + strings.Count(r.text, ",") + strings.Count(r.text, "{") + strings.Count(r.text, "[")
	r.free = make([]Node, 0, min(most, 4096))
	r.open = make([]Node, 0, 64)
	root := &Node{}
	if err := r.value(root, 0); err != nil {
		return nil, err
	}
	r.space()
	if r.off < len(r.text) {
		return nil, r.fail("found %s after the object; expected nothing more", r.found())
	}
	return root, nil
}

// peek is the byte at the cursor, 0 at the end.
func (r *jsonReader) peek() byte {
	if r.off < len(r.text) {
		return r.text[r.off]
	}
	return 0
}

// space skips white space and counts lines.
func (r *jsonReader) space() {
	for ; r.off < len(r.text); r.off++ {
		switch r.text[r.off] {
		case ' ', '\t':
			continue
		case '\r':
			if r.stream || strings.HasPrefix(r.text[r.off+1:], "\n") {
				continue
			}
		case '\n':
		default:
			return
		}
		r.line++
		r.lineOff, r.wide = r.off+1, 0
	}
}

// value reads the value at the cursor into n; depth counts the objects and
// arrays around it.
func (r *jsonReader) value(n *Node, depth int) error {
	if r.count++; r.count > r.limits.Nodes {
		return r.fail(tooMany, grouped(r.limits.Nodes))
	}
	n.at = r.pos()
	var err error
	switch c := r.peek(); {
	case c == '{' || c == '[':
		if depth == r.limits.Depth {
			return r.fail(tooDeep, r.limits.Depth)
		}
		n.kind = Object
		if c == '[' {
			n.kind = Array
		}
		n.items, err = r.items(n.kind, depth+1)
	case c == '"':
		n.kind = String
		n.text, err = r.str()
	case c == '-' || c >= '0' && c <= '9':
		n.kind = Number
		n.text, err = r.number()
	default:
		n.kind, n.text, err = r.word()
	}
	n.end = r.pos()
	return err
}

// items reads the elements of an array or the members of an object, from the
// opening bracket to the closing one.
func (r *jsonReader) items(kind Kind, depth int) ([]Node, error) {
	closer, item := byte(']'), "a value"
	if kind == Object {
		closer, item = '}', "a key in double quotes"
	}
	begin := r.pos()
	base := len(r.open)
	var seen keys
	r.off++
	r.space()
	if r.peek() == closer {
		r.off++
		return nil, nil
	}
	for {
		var n Node
		if kind == Object {
			if err := r.key(&n, item); err != nil {
				return nil, err
			}
			if first := seen.find(r.open[base:], n.key); first != nil {
				return nil, twice(r.file, &n, first)
			}
		}
		if err := r.value(&n, depth); err != nil {
			return nil, err
		}
		r.open = append(r.open, n)
		r.space()
		switch r.peek() {
		case closer:
			r.off++
			return r.keep(base), nil
		case ',':
			r.off++
			r.space()
			if r.peek() == closer {
				return nil, r.fail("found %s after a comma; expected %s", r.found(), item)
			}
		default:
			return nil, r.fail("found %s; expected ',' or '%c' of the %s that begins at line %d, column %d",
				r.found(), closer, kind, begin.line, begin.col)
		}
	}
}

// key reads a key and its colon.
func (r *jsonReader) key(n *Node, item string) error {
	if r.peek() != '"' {
		return r.fail("found %s; expected %s", r.found(), item)
	}
	n.keyAt = r.pos()
	var err error
	if n.key, err = r.str(); err != nil {
		return err
	}
	n.keyEnd = r.pos()
	r.space()
	if r.peek() != ':' {
		return r.fail("found %s; expected ':' after the key %s", r.found(), quote(n.key))
	}
	r.off++
	r.space()
	return nil
}

// keep moves the finished children above base to where they stay.
func (r *jsonReader) keep(base int) []Node {
	children := r.open[base:]
	if len(children) > cap(r.free)-len(r.free) {
		r.free = make([]Node, 0, max(len(children), 1024))
	}
	start := len(r.free)
	r.free = append(r.free, children...)
	r.open = r.open[:base]
	return r.free[start:len(r.free):len(r.free)]
}
