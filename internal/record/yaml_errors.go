package record

import (
	"errors"
	"fmt"
	"strings"

	"go.yaml.in/yaml/v4"
)

// yamlError says in a writer's words what stopped the parser. %F in a text
// stands for what was found there, %O for the place where the thing that is
// still open began.
func yamlError(file, text string, limits Limits, err error) error {
	var load *yaml.LoadError
	if !errors.As(err, &load) {
		return newError(file, pos{1, 1}, pos{1, 1}, "%s", strings.TrimPrefix(err.Error(), "yaml: "))
	}
	c := newCursor(text)
	c.seek(max(load.Mark.Line, 1), max(load.Mark.Column, 1))
	at := c.pos()
	open := pos{int32(load.ContextMark.Line), int32(load.ContextMark.Column)}
	switch load.ContextMsg {
	case "while scanning an anchor", "while scanning an alias", "while scanning a tag", "while parsing a tag":
		return newError(file, open, open, "found &, * or ! at the start of a value; put text that begins with it in quotes")
	}
	switch load.Message {
	case errTooDeep.Error():
		return newError(file, at, at, tooDeep, limits.Depth)
	case errTooMany.Error():
		return newError(file, at, at, tooMany, grouped(limits.Nodes))
	case "could not find expected ':'":
		return newError(file, open, open, "found text without a colon after it; expected key: value")
	}
	if strings.HasSuffix(load.ContextMsg, "directive") {
		return newError(file, open, open, "found a directive; directives are not read: remove this line")
	}
	message := load.Message
	before := c.text[:c.off]
	before = before[strings.LastIndexAny(before, "\r\n")+1:]
	if message == "did not find expected key" && strings.TrimLeft(before, " ") != "" {
		message = "did not find expected line break"
	}
	words := yamlWords(message, c.rest())
	words = strings.ReplaceAll(words, "%O", fmt.Sprintf("line %d, column %d", open.line, open.col))
	words = strings.ReplaceAll(words, "%F", found(c.rest()))
	return newError(file, at, at, "%s", words)
}

func yamlWords(message, rest string) string {
	switch {
	case strings.HasPrefix(rest, "\t"), strings.HasPrefix(message, "found a tab character"):
		return "found a tab used as indentation; expected spaces"
	case strings.HasPrefix(message, "unknown anchor"):
		return "found an alias (*); aliases are not read: write the value out, or put text that begins with * in quotes"
	case message == "found undefined tag handle":
		return "found a tag (!); tags are not read: write the value alone, or put text that begins with ! in quotes"
	}
	if words, known := yamlMessages[message]; known {
		return words
	}
	return "found %F; " + message
}

// yamlMessages are the parser's messages that a writer of records can meet.
var yamlMessages = map[string]string{
	"mapping values are not allowed in this context":         "found a colon where no key can stand; check the indentation, or put text that holds a colon and a space in quotes",
	"block sequence entries are not allowed in this context": "found a list item where none can stand; begin the list on a line of its own",
	"mapping keys are not allowed in this context":           "found a question mark where no key can stand; put text that begins with it in quotes",
	"found character that cannot start any token":            "found %F, which cannot begin a value; put the text in quotes",
	"did not find expected ',' or ']'":                       "found %F; expected ',' or ']' in the list that begins at %O",
	"did not find expected ',' or '}'":                       "found %F; expected ',' or '}' in the mapping that begins at %O",
	"did not find expected key":                              "found %F; expected another key of the mapping that begins at %O, indented like its first",
	"did not find expected line break":                       "found %F after a value; expected the end of the line, or quotes around the whole text",
	"did not find expected '-' indicator":                    "found %F; expected another '-' of the list that begins at %O, indented like its first",
	"did not find expected node content":                     "found %F; expected a value",
	"did not find expected <document start>":                 "found %F after the end of the document; expected the end of the file",
	"found unexpected end of stream":                         "found the end of the file; expected the closing quote of the text that begins at %O",
	"found unexpected document indicator":                    "found a document marker; expected the closing quote of the text that begins at %O",
	"found unknown escape character":                         `found a backslash that begins no escape, in the text at %O; write \\, or use single quotes`,
	"did not find expected hexadecimal number":               `found %F; expected hexadecimal digits after \x, \u or \U`,
	"found invalid Unicode character escape code":            "found an escape that is half of a surrogate pair or no character; write the character itself",
	"found a comment without preceding whitespace":           "found # directly after a value; put a space before a comment, or text that holds # in quotes",
	"did not find expected comment or line break":            "found %F after the sign for a block of text; expected the end of the line",
	"found unexpected content after document-end marker":     "found %F after the end marker ...; expected the end of the file",
	"did not find expected <document end> before directive":  "found a second document; expected one in a file",
}
