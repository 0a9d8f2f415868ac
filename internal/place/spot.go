// Package place says where something stands: a spot in a source file, and a
// JSON Pointer into the document read from it.
package place

import "strconv"

// Spot is a stretch of text in one source file. Lines and columns count from 1
// and columns count runes, not bytes; EndLine and EndColumn name the first rune
// after the stretch. A zero means unknown.
type Spot struct {
	File      string
	Line      int
	Column    int
	EndLine   int
	EndColumn int
}

// String gives file:line:col, the form editors jump to. It leaves out what is
// unknown, and gives "-" when nothing is known.
func (s Spot) String() string {
	text := s.File
	if s.Line > 0 {
		if text != "" {
			text += ":"
		}
		text += strconv.Itoa(s.Line)
		if s.Column > 0 {
			text += ":" + strconv.Itoa(s.Column)
		}
	}
	if text == "" {
		return "-"
	}
	return text
}
