package record

import "testing"

func TestYAMLErrors(t *testing.T) {
	const (
		noKey  = "found a colon where no key can stand; check the indentation, or put text that holds a colon and a space in quotes"
		tab    = "found a tab used as indentation; expected spaces"
		long   = "the pit, the pipe, the fan, the discharge and the alarm"
		second = "found a second document; expected one in a file"
	)
	for _, c := range []struct{ name, in, want string }{
		{"empty", "", "job:1:1: found an empty file; expected keys and values"},
		{"blank", " \n\r\n", "job:1:1: found an empty file; expected keys and values"},
		{"only comments", "# a\n  # b\n", "job:1:1: found only comments; expected keys and values"},
		{"only a marker", "---\n", "job:2:1: found an empty document; expected keys and values at the top level"},
		{"only a marker, no line break", "---", "job:1:4: found an empty document; expected keys and values at the top level"},
		{"top is a list", "# a\n- b\n", "job:2:1: found a list; expected keys and values at the top level"},
		{"top is text", "job J-1\n", `job:1:1: found the text "job J-1"; expected keys and values at the top level`},
		{"top is null", "~\n", `job:1:1: found the text "~"; expected keys and values at the top level`},
		{"second document", "a: 1\n---\nb: 1\n", "job:2:1: " + second},
		{"second document, empty", "a: 1\n---\n", "job:2:1: " + second},
		{"second document after an end mark", "a: 1\n...\nb: 2\n", "job:3:1: " + second},
		{"text after an end mark", "a: 1\n... x\n", "job:2:5: found 'x' after the end marker ...; expected the end of the file"},
		{"second document, broken", "a: 1\n---\n[b\n", "job:4:1: found the end of the file; expected ',' or ']' in the list that begins at line 3, column 1"},
		{"directive between documents", "a: 1\n...\n%FAN\n---\nb: 1\n", "job:3:1: found a directive; directives are not read: remove this line"},
		{"directive", "# a\n%YAML 1.2\n---\na: 1\n", `job:2:1: found the directive "%YAML 1.2"; directives are not read: remove this line`},

		{"same key twice", "a: 1\nb: 2\n'a': 3\n", `job:3:1: found the key "a" a second time; the first is at line 1, column 1: keep one of them`},
		{"long key twice", long + ": 1\n" + long + ": 2\n", `job:2:1: found the key "the pit, the pipe, the fan, the discharg…" a second time; the first is at line 1, column 1: keep one of them`},
		{"same key in brackets", "v: {é: 1, é: 2}\n", `job:1:11: found the key "é" a second time; the first is at line 1, column 5: keep one of them`},
		{"key is a number", "v:\n  2026: a\n", "job:2:3: found the key 2026, which YAML reads as a value that is no text (number); put it in quotes"},
		{"key starts with a zero", "012: a\n", "job:1:1: found the key 012, which YAML reads as a value that is no text (number); put it in quotes"},
		{"key is a boolean", "true: a\n", "job:1:1: found the key true, which YAML reads as a value that is no text (boolean); put it in quotes"},
		{"key is null", "~: a\n", "job:1:1: found the key ~, which YAML reads as a value that is no text (null); put it in quotes"},
		{"no key", ": a\n", "job:1:1: found no key before the colon; expected text"},
		{"key is a list", "? [a]\n: b\n", "job:1:3: found a list or mapping as a key; expected text"},
		{"key is a mapping", "{a: 1}: b\n", "job:1:1: found a list or mapping as a key; expected text"},
		{"merge key", "a: 1\n<<: {b: 2}\n", "job:2:1: found the merge key <<, which is not read; write the values out"},
		{"anchor", "a: &x 1\nb: *x\n", "job:1:4: found the anchor &x; anchors are not read: write the value out wherever it is needed"},
		{"anchor in a list", "a: [1, &x 1]\n", "job:1:8: found the anchor &x; anchors are not read: write the value out wherever it is needed"},
		{"anchor on a mapping", "a: &x\n  b: 1\n", "job:1:4: found the anchor &x; anchors are not read: write the value out wherever it is needed"},
		{"anchor on a key", "&x a: 1\n", "job:1:1: found the anchor &x; anchors are not read: write the value out wherever it is needed"},
		{"anchor on the record", "&x\na: 1\n", "job:1:1: found the anchor &x; anchors are not read: write the value out wherever it is needed"},
		{"anchor on nothing", "a: &x\n", "job:1:4: found the anchor &x; anchors are not read: write the value out wherever it is needed"},
		{"alias", "a: *fan\n", "job:1:4: found an alias (*); aliases are not read: write the value out, or put text that begins with * in quotes"},
		{"text that begins with *", "a: * see plan\n", "job:1:4: found &, * or ! at the start of a value; put text that begins with it in quotes"},
		{"text that begins with &", "a: & more\n", "job:1:4: found &, * or ! at the start of a value; put text that begins with it in quotes"},
		{"text that begins with !", "a: !<x\n", "job:1:4: found &, * or ! at the start of a value; put text that begins with it in quotes"},
		{"tag", "a: !!str 5\n", "job:1:4: found the tag !!str; tags are not read: write the value alone, in quotes if it is text"},
		{"tag of its own", "a: !fan {b: 1}\n", "job:1:4: found the tag !fan; tags are not read: write the value alone, in quotes if it is text"},
		{"tag without a name", "a: ! 5\n", "job:1:4: found the tag !; tags are not read: write the value alone, in quotes if it is text"},
		{"tag on nothing", "a: !!null\n", "job:1:4: found the tag !!null; tags are not read: write the value alone, in quotes if it is text"},
		{"tag that is not declared", "a: !e!x b\n", "job:1:4: found a tag (!); tags are not read: write the value alone, or put text that begins with ! in quotes"},

		{"tab at the start", "\ta: 1\n", "job:1:1: " + tab},
		{"tab as indentation", "a:\n\tb: 1\n", "job:2:1: " + tab},
		{"tab in a list", "a:\n  - b\n\t- c\n", "job:3:1: " + tab},
		{"two colons", "note: fan: RP\n", "job:1:10: " + noKey},
		{"deeper than the key before", "a: 1\n  b: 2\n", "job:2:4: " + noKey},
		{"key without colon", "a: 1\nfan\nb: 2\n", "job:2:1: found text without a colon after it; expected key: value"},
		{"between two indentations", "a:\n    b: 1\n  c: 2\n", "job:3:3: found 'c'; expected another key of the mapping that begins at line 1, column 1, indented like its first"},
		{"text after quotes", "a: \"x\" y\n", "job:1:8: found 'y' after a value; expected the end of the line, or quotes around the whole text"},
		{"bracket closed twice", "a: [1]]\n", "job:1:7: found ']' after a value; expected the end of the line, or quotes around the whole text"},
		{"key in a list", "a:\n- b\nc: 1\n- d\n", "job:4:1: found '-'; expected another key of the mapping that begins at line 1, column 1, indented like its first"},
		{"key after a list", "- a\nb: 1\n", "job:2:1: found 'b'; expected another '-' of the list that begins at line 1, column 1, indented like its first"},
		{"list after a colon", "a: - b\n", "job:1:4: found a list item where none can stand; begin the list on a line of its own"},
		{"question mark", "a: ? b\n", "job:1:4: found a question mark where no key can stand; put text that begins with it in quotes"},
		{"at sign", "a: @fan\n", "job:1:4: found '@', which cannot begin a value; put the text in quotes"},
		{"per cent sign", "a: %5\n", "job:1:4: found '%', which cannot begin a value; put the text in quotes"},
		{"open list", "a: [1,\n  2\n", "job:3:1: found the end of the file; expected ',' or ']' in the list that begins at line 1, column 4"},
		{"open mapping", "a: {x: 1\nb: 2\n", "job:2:2: found ':'; expected ',' or '}' in the mapping that begins at line 1, column 4"},
		{"wrong bracket", "a: [1}\n", "job:1:6: found '}'; expected ',' or ']' in the list that begins at line 1, column 4"},
		{"two commas", "a: [1,,2]\n", "job:1:7: found ','; expected a value"},
		{"open single quote", "a: 'it\nb: 1\n", "job:3:1: found the end of the file; expected the closing quote of the text that begins at line 1, column 4"},
		{"open double quote", "a: \"it", "job:1:7: found the end of the file; expected the closing quote of the text that begins at line 1, column 4"},
		{"marker in quotes", "a: \"it\n---\n\"\n", "job:2:1: found a document marker; expected the closing quote of the text that begins at line 1, column 4"},
		{"path of Windows", "a: \"C:\\photos\"\n", `job:1:7: found a backslash that begins no escape, in the text at line 1, column 4; write \\, or use single quotes`},
		{"half a character", `a: "\ud83d\ude00"`, "job:1:7: found an escape that is half of a surrogate pair or no character; write the character itself"},
		{"broken escape", `a: "\xZZ"`, `job:1:7: found 'Z'; expected hexadecimal digits after \x, \u or \U`},
		{"comment against quotes", "a: \"x\"#y\n", "job:1:7: found # directly after a value; put a space before a comment, or text that holds # in quotes"},
		{"text beside a block sign", "a: | x\n", "job:1:6: found 'x' after the sign for a block of text; expected the end of the line"},

		{"UTF-16", "\xff\xfea\x00:\x00", "job:1:1: found text in UTF-16; save the file as UTF-8"},
		{"Latin-1", "a: 1\nb: Ärger m\xb2\n", "job:2:11: found byte 0xB2, which is not UTF-8; save the file as UTF-8"},
		{"surrogate in UTF-8", "a: \xed\xa0\x80\n", "job:1:4: found byte 0xED, which is not UTF-8; save the file as UTF-8"},
		{"zero byte", "a: é\x00\n", `job:1:5: found the control character U+0000; remove it, or write \u0000 inside double quotes`},
		{"escape byte", "a: \"\x1b[2J\"\n", `job:1:5: found the control character U+001B; remove it, or write \u001b inside double quotes`},
		{"delete", "a: b\x7f\n", `job:1:5: found the control character U+007F; remove it, or write \u007f inside double quotes`},
		{"line separator", "a: b\u2028c\n", `job:1:5: found the invisible line break U+2028; remove it, or write \u2028 inside double quotes`},
		{"next line", "a: b\u0085c\n", `job:1:5: found the invisible line break U+0085; remove it, or write \u0085 inside double quotes`},
		{"byte order mark inside", "a: 1\n\ufeffb: 2\n", "job:2:1: found a byte order mark (U+FEFF) inside the file; remove it"},
		{"no character", "a: \uffff\n", "job:1:4: found U+FFFF, which is no character; remove it"},
	} {
		doc, err := ReadYAML("job", []byte(c.in), Limits{})
		if err == nil {
			t.Errorf("%s: read as\n%s", c.name, outline(doc.Root))
			continue
		}
		if err.Error() != c.want {
			t.Errorf("%s:\n got %s\nwant %s", c.name, err, c.want)
		}
		checkError(t, err, c.in)
	}
}
