package place

import (
	"fmt"
	"strconv"
	"strings"
)

// Pointer is a JSON Pointer (RFC 6901) in its string form, with "/" and "~"
// inside a key written "~1" and "~0". Pointers compare with ==.
type Pointer string

// Root points to the whole document.
const Root Pointer = ""

// In this order "~" inside a key cannot be mistaken for an escape, and "~01"
// reads as "~1" (RFC 6901 section 4).
var (
	escape   = strings.NewReplacer("~", "~0", "/", "~1")
	unescape = strings.NewReplacer("~1", "/", "~0", "~")
)

// Append gives the pointer that goes down from p by one segment after another:
// a string is a key of an object, an int an index of an array, and any other
// value stands for the key that fmt.Sprint makes of it.
func (p Pointer) Append(segments ...any) Pointer {
	var b strings.Builder
	b.WriteString(string(p))
	for _, segment := range segments {
		b.WriteByte('/')
		switch s := segment.(type) {
		case string:
			b.WriteString(escape.Replace(s))
		case int:
			b.WriteString(strconv.Itoa(s))
		default:
			b.WriteString(escape.Replace(fmt.Sprint(s)))
		}
	}
	return Pointer(b.String())
}

// Split gives the segments of p with escapes undone; Root has none. Text that
// does not start with "/" is no JSON Pointer and is read as if it did.
func (p Pointer) Split() []string {
	if p == Root {
		return nil
	}
	segments := strings.Split(strings.TrimPrefix(string(p), "/"), "/")
	for i, s := range segments {
		segments[i] = unescape.Replace(s)
	}
	return segments
}

// Parent is the pointer one segment up; the parent of Root is Root.
func (p Pointer) Parent() Pointer {
	return p[:max(strings.LastIndexByte(string(p), '/'), 0)]
}

// Last is the last segment with escapes undone, and "" for Root.
func (p Pointer) Last() string {
	return unescape.Replace(string(p[strings.LastIndexByte(string(p), '/')+1:]))
}

// HasPrefix reports whether p is other or lies below it. Whole segments count:
// /ab is not below /a.
func (p Pointer) HasPrefix(other Pointer) bool {
	rest, ok := strings.CutPrefix(string(p), string(other))
	return ok && (rest == "" || rest[0] == '/')
}
