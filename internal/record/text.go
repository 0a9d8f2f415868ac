package record

import (
	"strings"
	"unicode/utf8"
)

const byteOrderMark = "\ufeff"

// decode checks size and encoding and leaves a byte order mark out. The data
// begins on the given line of the file.
func decode(file string, line int, data []byte, limits Limits) (string, error) {
	top := pos{int32(line), 1}
	if len(data) > limits.Bytes {
		return "", newError(file, top, top, "found %s bytes; at most %s are read",
			grouped(len(data)), grouped(limits.Bytes))
	}
	text := string(data)
	if strings.HasPrefix(text, "\xff\xfe") || strings.HasPrefix(text, "\xfe\xff") {
		return "", newError(file, top, top, "found text in UTF-16; save the file as UTF-8")
	}
	text = strings.TrimPrefix(text, byteOrderMark)
	if !utf8.ValidString(text) {
		off := 0
		for {
			r, size := utf8.DecodeRuneInString(text[off:])
			if r == utf8.RuneError && size == 1 {
				break
			}
			off += size
		}
		at := placeOf(text, off)
		at.line += top.line - 1
		return "", newError(file, at, at, "found byte 0x%02X, which is not UTF-8; save the file as UTF-8", text[off])
	}
	return text, nil
}

// A cursor walks through a text and knows line and column. Lines end with LF,
// CRLF or CR, as in YAML; a column is one rune.
type cursor struct {
	text   string
	off    int
	line   int
	col    int
	ascii  bool // no rune is longer than one byte
	lfOnly bool // every CR stands before an LF
}

func newCursor(text string) cursor {
	c := cursor{text: text, line: 1, col: 1, ascii: true, lfOnly: true}
	for i := 0; i < len(text); i++ {
		switch b := text[i]; {
		case b >= utf8.RuneSelf:
			c.ascii = false
		case b == '\r' && !strings.HasPrefix(text[i+1:], "\n"):
			c.lfOnly = false
		}
	}
	return c
}

func (c *cursor) pos() pos { return pos{int32(c.line), int32(c.col)} }

func (c *cursor) rest() string { return c.text[c.off:] }

// advance goes on to a byte offset at or after the cursor.
func (c *cursor) advance(off int) {
	part := c.text[c.off:off]
	c.off = off
	for part != "" {
		i := strings.IndexByte(part, '\n')
		if !c.lfOnly {
			i = strings.IndexAny(part, "\r\n")
		}
		if i < 0 {
			break
		}
		if strings.HasPrefix(part[i:], "\r\n") {
			i++
		}
		c.line, c.col = c.line+1, 1
		part = part[i+1:]
	}
	c.col += c.runes(part)
}

// seek goes on to a line and column at or after the cursor, or to the end of
// the line or the text if that comes first. Going back costs a new start.
func (c *cursor) seek(line, col int) {
	if line < c.line || line == c.line && col < c.col {
		c.off, c.line, c.col = 0, 1, 1
	}
	for c.line < line {
		i := c.lineBreak()
		if i < 0 {
			c.advance(len(c.text))
			return
		}
		c.advance(i)
	}
	end := c.off
	for n := c.col; n < col && end < len(c.text) && c.text[end] != '\n' && c.text[end] != '\r'; n++ {
		_, size := utf8.DecodeRuneInString(c.text[end:])
		end += size
	}
	c.advance(end)
}

// lineBreak is the offset just after the next line break, or -1.
func (c *cursor) lineBreak() int {
	breaks := "\r\n"
	if c.lfOnly {
		breaks = "\n"
	}
	i := strings.IndexAny(c.rest(), breaks)
	if i < 0 {
		return -1
	}
	if i += c.off; strings.HasPrefix(c.text[i:], "\r\n") {
		i++
	}
	return i + 1
}

func (c *cursor) runes(s string) int {
	if c.ascii {
		return len(s)
	}
	return utf8.RuneCountInString(s)
}
