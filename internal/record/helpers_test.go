package record

import (
	"errors"
	"fmt"
	"strings"
	"testing"
	"unicode"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/place"
)

type reader func(name string, data []byte, limits Limits) (*Document, error)

// mustRead reads a text that is expected to be a record.
func mustRead(t testing.TB, read reader, text string) *Document {
	t.Helper()
	doc, err := read("job", []byte(text), Limits{})
	if err != nil {
		t.Fatalf("%q: %v", text, err)
	}
	return doc
}

// outline prints a tree, one value a line: pointer, kind, text, place of the
// key and place of the value.
func outline(n *Node) string {
	var b strings.Builder
	walk(n, place.Root, func(ptr place.Pointer, n *Node) {
		fmt.Fprintf(&b, "%s %s", ptr, n.kind)
		if n.text != "" {
			fmt.Fprintf(&b, " %q", n.text)
		}
		if n.keyAt != (pos{}) {
			fmt.Fprintf(&b, " key %d:%d-%d:%d", n.keyAt.line, n.keyAt.col, n.keyEnd.line, n.keyEnd.col)
		}
		fmt.Fprintf(&b, " at %d:%d-%d:%d\n", n.at.line, n.at.col, n.end.line, n.end.col)
	})
	return b.String()
}

// contents prints a tree without places.
func contents(n *Node) string {
	var b strings.Builder
	walk(n, place.Root, func(ptr place.Pointer, n *Node) {
		fmt.Fprintf(&b, "%q %s %q\n", ptr, n.kind, n.text)
	})
	return b.String()
}

func walk(n *Node, ptr place.Pointer, visit func(place.Pointer, *Node)) {
	visit(ptr, n)
	for i := range n.items {
		child := &n.items[i]
		if n.kind == Object {
			walk(child, ptr.Append(child.key), visit)
		} else {
			walk(child, ptr.Append(i), visit)
		}
	}
}

// lines cuts a text into lines of runes, apart from the code under test.
func lines(text string) [][]rune {
	text = strings.TrimPrefix(text, byteOrderMark)
	text = strings.ReplaceAll(text, "\r\n", "\n")
	text = strings.ReplaceAll(text, "\r", "\n")
	var all [][]rune
	for line := range strings.SplitSeq(text, "\n") {
		all = append(all, []rune(line))
	}
	return all
}

// written is the text between two places; ok is false when a place lies
// outside of the text.
func written(all [][]rune, from, to pos) (text string, ok bool) {
	inside := func(p pos) bool {
		return p.line >= 1 && int(p.line) <= len(all) && p.col >= 1 && int(p.col) <= len(all[p.line-1])+1
	}
	if !inside(from) || !inside(to) || after(from, to) {
		return "", false
	}
	var b strings.Builder
	for line := from.line; line <= to.line; line++ {
		runes := all[line-1]
		if line == to.line {
			runes = runes[:to.col-1]
		}
		if line == from.line {
			runes = runes[from.col-1:]
		}
		if line > from.line {
			b.WriteByte('\n')
		}
		b.WriteString(string(runes))
	}
	return b.String(), true
}

func after(a, b pos) bool { return a.line > b.line || a.line == b.line && a.col > b.col }

// checkPlaces holds every node of a tree to its place in the text: inside the
// text, inside its parent, after what comes before it, and found by Locate.
func checkPlaces(t *testing.T, doc *Document, text string) {
	t.Helper()
	all := lines(text)
	last := pos{1, 1}
	walk(doc.Root, place.Root, func(ptr place.Pointer, n *Node) {
		if n.keyAt != (pos{}) {
			if _, ok := written(all, n.keyAt, n.keyEnd); !ok || after(last, n.keyAt) || after(n.keyEnd, n.at) {
				t.Errorf("%q: key at %v-%v, value at %v, before it %v", ptr, n.keyAt, n.keyEnd, n.at, last)
			}
			last = n.keyEnd
		}
		if _, ok := written(all, n.at, n.end); !ok || after(last, n.at) {
			t.Errorf("%q: value at %v-%v, before it %v", ptr, n.at, n.end, last)
		}
		last = n.at
		for i := range n.items {
			if after(n.items[i].end, n.end) {
				t.Errorf("%q: ends at %v, before its item %d at %v", ptr, n.end, i, n.items[i].end)
			}
		}
		if len(n.items) == 0 {
			last = n.end
		}
		if at, exact := doc.Locate(ptr); !exact || at != n.entrySpot(doc.Name) && at != n.Spot(doc.Name) {
			t.Errorf("%q: located at %v, exact %v", ptr, at, exact)
		}
		if doc.Root.At(ptr) != n {
			t.Errorf("%q leads to another node", ptr)
		}
	})
}

// checkError holds an error to what every error promises.
func checkError(t *testing.T, err error, text string) {
	t.Helper()
	var e *Error
	if !errors.As(err, &e) {
		t.Fatalf("%T is no *Error: %v", err, err)
	}
	s := e.Spot
	if s.File != "job" {
		t.Errorf("file %q", s.File)
	}
	if utf8.ValidString(text) {
		from, to := pos{int32(s.Line), int32(s.Column)}, pos{int32(s.EndLine), int32(s.EndColumn)}
		if _, ok := written(lines(text), from, to); !ok {
			t.Errorf("the place %v-%v lies outside of the text: %v", from, to, err)
		}
	}
	if !strings.HasPrefix(e.Message, "found ") {
		t.Errorf("does not say what was found: %q", e.Message)
	}
	for _, r := range e.Message {
		if !unicode.IsPrint(r) {
			t.Errorf("%U in the message %q", r, e.Message)
		}
	}
}
