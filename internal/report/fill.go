package report

import (
	"bufio"
	"io"
	"strconv"
	"strings"
	"unicode"
)

// style is the colour of a word, as the parameters of the terminal's "select
// graphic rendition" sequence (ECMA-48, 8.3.117). It only ever repeats what
// the word itself says.
type style string

const (
	plain   style = ""
	strong  style = "1"
	red     style = "1;31"
	green   style = "32"
	yellow  style = "33"
	magenta style = "35"
	cyan    style = "36"
)

// word is text that stays on one line.
type word struct {
	text string
	style
}

// token makes one word of a name from the record or the command line, whatever
// it holds.
func token(s string, as style) word { return word{visible(s), as} }

// prose splits running text into words; line ends in it are spaces.
func prose(s string, as style) []word {
	var words []word
	for _, w := range strings.FieldsFunc(s, breaks) {
		words = append(words, token(w, as))
	}
	return words
}

// breaks leaves out the no-break space, so that "10 ft" written with one stays
// together.
func breaks(r rune) bool { return r == ' ' || r == '\t' || r == '\n' || r == '\r' }

// showable tells whether a terminal just shows a character. Those it acts on,
// and those that hide or reorder their neighbours, could clear a screen or turn
// "hold" into "ready". The joiners are let through: whole scripts need them.
func showable(r rune) bool {
	return unicode.IsPrint(r) || unicode.Is(unicode.Zs, r) || r == '\u200c' || r == '\u200d'
}

// visible spells out, the way Go source would, what is not showable.
func visible(s string) string {
	var b strings.Builder
	for _, r := range s { // a byte that is no UTF-8 comes out as U+FFFD
		if showable(r) {
			b.WriteRune(r)
			continue
		}
		quoted := strconv.QuoteRuneToASCII(r)
		b.WriteString(quoted[1 : len(quoted)-1])
	}
	return b.String()
}

// wide are the blocks whose characters take two columns: Unicode Standard Annex
// #11, East Asian Width W and F, in whole blocks and from memory.
var wide = &unicode.RangeTable{
	R16: []unicode.Range16{
		{Lo: 0x1100, Hi: 0x115f, Stride: 1},
		{Lo: 0x2e80, Hi: 0x303e, Stride: 1},
		{Lo: 0x3041, Hi: 0x4dbf, Stride: 1},
		{Lo: 0x4e00, Hi: 0xa4cf, Stride: 1},
		{Lo: 0xac00, Hi: 0xd7a3, Stride: 1},
		{Lo: 0xf900, Hi: 0xfaff, Stride: 1},
		{Lo: 0xfe30, Hi: 0xfe6f, Stride: 1},
		{Lo: 0xff01, Hi: 0xff60, Stride: 1},
		{Lo: 0xffe0, Hi: 0xffe6, Stride: 1},
	},
	R32: []unicode.Range32{
		{Lo: 0x1f300, Hi: 0x1f64f, Stride: 1},
		{Lo: 0x1f680, Hi: 0x1f6ff, Stride: 1},
		{Lo: 0x1f900, Hi: 0x1f9ff, Stride: 1},
		{Lo: 0x1fa70, Hi: 0x1faff, Stride: 1},
		{Lo: 0x20000, Hi: 0x3fffd, Stride: 1},
	},
}

// columns is how much of a line a text takes on a terminal.
func columns(s string) int {
	n := 0
	for _, r := range s {
		switch {
		case unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf):
		case unicode.Is(wide, r):
			n += 2
		default:
			n++
		}
	}
	return n
}

// length is what words take with a blank between each two.
func length(words []word) int {
	n := max(len(words)-1, 0)
	for _, w := range words {
		n += columns(w.text)
	}
	return n
}

// page is a terminal being written to. Its writer keeps the first error.
type page struct {
	w *bufio.Writer
	o Options
}

func (p *page) put(s string) { _, _ = p.w.WriteString(s) }

// gap leaves a line empty.
func (p *page) gap() { p.put("\n") }

func (p *page) word(w word) {
	if !p.o.Colour || w.style == plain {
		p.put(w.text)
		return
	}
	p.put("\x1b[" + string(w.style) + "m" + w.text + "\x1b[0m")
}

// line writes words on one line, however long.
func (p *page) line(words ...word) {
	for i, w := range words {
		if i > 0 {
			p.put(" ")
		}
		p.word(w)
	}
	p.put("\n")
}

// Paragraph writes running text in lines of at most width columns, 0 for one
// line, that begins with lead and is indented by as much as indent below it.
func Paragraph(w io.Writer, width int, lead, indent, text string) error {
	p := &page{bufio.NewWriter(w), Options{Width: width}}
	p.fill(lead, indent, prose(text, plain))
	return p.w.Flush()
}

// fill writes words as a paragraph that begins with lead and is indented by as
// much as indent below it. A word too long for any line gets one to itself.
func (p *page) fill(lead, indent string, words []word) {
	if len(words) == 0 {
		return
	}
	p.put(lead)
	at, empty := columns(lead), true
	for _, w := range words {
		n := columns(w.text)
		switch {
		case empty:
		case p.o.Width > 0 && at+1+n > p.o.Width:
			p.put("\n" + indent)
			at = columns(indent)
		default:
			p.put(" ")
			at++
		}
		p.word(w)
		at, empty = at+n, false
	}
	p.put("\n")
}
