// Package record turns the bytes of a job record, in YAML or JSON, into a tree
// of values in which every value knows its line and column.
package record

import (
	"bytes"
	"crypto/sha256"
	"path/filepath"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// Document is one record as read.
type Document struct {
	Name   string            // of the file, as spots name it
	Root   *Node             // always an object
	SHA256 [sha256.Size]byte // of the bytes given, byte order mark included; of a stream, of one line
}

// Locate finds the place to report for a pointer: a scalar's own, and for an
// object, an array or an empty null the whole entry from its key to its end.
// When the pointer leads to nothing, the spot is that of the deepest value on
// the way that does exist, and exact is false.
func (d *Document) Locate(ptr place.Pointer) (at place.Spot, exact bool) {
	n, exact := d.Root.descend(ptr)
	if !exact || n.kind == Object || n.kind == Array || n.at == n.end {
		return n.entrySpot(d.Name), exact
	}
	return n.Spot(d.Name), true
}

// Limits keep a hostile or broken file from using up the machine. A field that
// is zero stands for its default.
type Limits struct {
	Bytes int // of one record; default 4 MiB
	Depth int // of objects and arrays inside each other; default 64
	Nodes int // values in one record; default 200,000
}

// What is said in YAML and JSON alike.
const (
	emptyFile = "found an empty file; expected keys and values"
	tooDeep   = "found more than %d levels of lists and objects inside each other; that is the limit"
	tooMany   = "found more than %s values; that is the limit"
)

func (l Limits) orDefaults() Limits {
	if l.Bytes == 0 {
		l.Bytes = 4 << 20
	}
	if l.Depth == 0 {
		l.Depth = 64
	}
	if l.Nodes == 0 {
		l.Nodes = 200_000
	}
	return l
}

// Read reads one record, as JSON when the name ends in .json or .ndjson, as
// YAML when it ends in .yaml or .yml, and otherwise (standard input) as JSON
// when the first character that is no white space is an opening brace. A
// failure is an *Error.
func Read(name string, data []byte, limits Limits) (*Document, error) {
	switch strings.ToLower(filepath.Ext(name)) {
	case ".json", ".ndjson":
		return ReadJSON(name, data, limits)
	case ".yaml", ".yml":
		return ReadYAML(name, data, limits)
	}
	if looksLikeJSON(data) {
		return ReadJSON(name, data, limits)
	}
	return ReadYAML(name, data, limits)
}

func looksLikeJSON(data []byte) bool {
	data = bytes.TrimPrefix(data, []byte(byteOrderMark))
	return bytes.HasPrefix(bytes.TrimLeft(data, " \t\r\n"), []byte("{"))
}
