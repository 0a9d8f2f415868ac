package record

import (
	"strings"

	"go.yaml.in/yaml/v4"
)

// scalarEnd is the offset just after the scalar that starts at the cursor.
func (r *yamlReader) scalarEnd(y *yaml.Node) int {
	text, off := r.cur.text, r.cur.off
	switch {
	case y.Style&yaml.DoubleQuotedStyle != 0:
		for i := off + 1; i < len(text); i++ {
			switch text[i] {
			case '\\':
				i++
			case '"':
				return i + 1
			}
		}
		return len(text)
	case y.Style&yaml.SingleQuotedStyle != 0:
		for i := off + 1; i < len(text); i++ {
			if text[i] != '\'' {
				continue
			}
			if !strings.HasPrefix(text[i+1:], "'") {
				return i + 1
			}
			i++
		}
		return len(text)
	case y.Style&(yaml.LiteralStyle|yaml.FoldedStyle) != 0:
		header := off + len(text[off:]) - len(strings.TrimLeft(text[off:], "|>+-0123456789"))
		if end := endOfInk(text, lineAfter(text, header), y.Value); end >= 0 {
			return end
		}
		return header
	}
	if strings.HasPrefix(text[off:], y.Value) {
		return off + len(y.Value)
	}
	return endOfInk(text, off, y.Value)
}

// endOfInk finds where a scalar ends whose lines are folded or indented: just
// after as many characters that are no white space as its value has. It is -1
// when the value has none.
func endOfInk(text string, off int, value string) int {
	left := 0
	for i := range len(value) {
		if !isWhite(value[i]) {
			left++
		}
	}
	if left == 0 {
		return -1
	}
	for ; off < len(text) && left > 0; off++ {
		if !isWhite(text[off]) {
			left--
		}
	}
	return off
}

func isWhite(b byte) bool { return b == ' ' || b == '\t' || b == '\n' || b == '\r' }

// lineAfter is the offset of the line after the one that holds off.
func lineAfter(text string, off int) int {
	for off < len(text) && text[off] != '\n' && text[off] != '\r' {
		off++
	}
	return off
}
