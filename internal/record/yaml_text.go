package record

import (
	"fmt"
	"strings"
	"unicode"
	"unicode/utf8"
)

// checkYAMLText stops at what the parser would refuse without saying where, or
// read in its own way: control characters, directives, and the characters that
// break a line in YAML 1.1 but neither in YAML 1.2 nor in an editor.
func checkYAMLText(file, text string) error {
	for i := 0; i < len(text); i++ {
		b := text[i]
		if b >= ' ' && b < 0x7F || b == '\n' || b == '\t' || b == '\r' {
			continue
		}
		r, size := utf8.DecodeRuneInString(text[i:])
		if problem := unfitForYAML(r); problem != "" {
			at := placeOf(text, i)
			return newError(file, at, at, "%s", problem)
		}
		i += size - 1
	}
	return checkDirectives(file, text)
}

func unfitForYAML(r rune) string {
	switch {
	case r == '\u0085', r == '\u2028', r == '\u2029':
		return fmt.Sprintf(`found the invisible line break %U; remove it, or write \u%04x inside double quotes`, r, r)
	case unicode.IsControl(r):
		return fmt.Sprintf(`found the control character %U; remove it, or write \u%04x inside double quotes`, r, r)
	case r == '\ufeff':
		return "found a byte order mark (U+FEFF) inside the file; remove it"
	case r == '\ufffe', r == '\uffff':
		return fmt.Sprintf("found %U, which is no character; remove it", r)
	}
	return ""
}

// checkDirectives refuses %YAML and %TAG lines, which could change how the
// same text is read. They can only stand before anything else.
func checkDirectives(file, text string) error {
	for rest := text; rest != ""; {
		line := rest
		if i := strings.IndexAny(rest, "\r\n"); i >= 0 {
			line, rest = rest[:i], rest[i+1:]
		} else {
			rest = ""
		}
		if strings.HasPrefix(line, "%") {
			at := placeOf(text, strings.Index(text, line))
			return newError(file, at, at, "found the directive %s; directives are not read: remove this line", quote(line))
		}
		if line = strings.TrimLeft(line, " \t"); line != "" && line[0] != '#' {
			return nil
		}
	}
	return nil
}
