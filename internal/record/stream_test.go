package record

import (
	"bufio"
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"strings"
	"testing"
	"testing/iotest"
)

// collect prints what a stream gives, one line for each document or error.
func collect(r io.Reader, limits Limits) string {
	var b strings.Builder
	for doc, err := range Stream("job", r, limits) {
		if err != nil {
			fmt.Fprintln(&b, err)
			continue
		}
		at, _ := doc.Locate("/job")
		fmt.Fprintf(&b, "%s %s\n", at, doc.Root.Get("job").Text())
	}
	return b.String()
}

func TestStream(t *testing.T) {
	long := `{"job":"` + strings.Repeat("x", 100_000) + `"}`
	for _, c := range []struct {
		name, in string
		limits   Limits
		want     string
	}{
		{"nothing", "", Limits{}, ""},
		{"only blank lines", "\n \r\n\t", Limits{}, ""},
		{"records and blank lines", "\ufeff{\"job\":\"a\"}\r\n\n  \n{\"é\":1, \"job\":\"b\"}\n{\"job\":\"c\"}", Limits{},
			"job:1:8 a\njob:4:15 b\njob:5:8 c\n"},
		{"a bad line in between", "{\"job\":\"a\"}\n{\"job\":}\n\"job\"\n{\"job\":\"b\"\n{\"job\":\"c\"}\n", Limits{},
			"job:1:8 a\njob:2:8: found '}'; expected a value\njob:3:1: found '\"'; expected {\n" +
				"job:4:11: found the end of the line; expected ',' or '}' of the object that begins at line 4, column 1\njob:5:8 c\n"},
		{"a byte that is not UTF-8", "{\"job\":\"a\"}\n{\"job\":\"é\xff\"}\n{\"job\":\"c\"}\n", Limits{},
			"job:1:8 a\njob:2:10: found byte 0xFF, which is not UTF-8; save the file as UTF-8\njob:3:8 c\n"},
		{"CR inside a line", "{\"x\":\r1,\r\"job\":\"a\"}\r\n{\"job\":\"b\"}\n", Limits{}, "job:1:16 a\njob:2:8 b\n"},
		{"two records on a line", "{\"job\":\"a\"} {\"job\":\"b\"}\n{\"job\":\"c\"}\n", Limits{},
			"job:1:13: found '{' after the object; expected nothing more\njob:2:8 c\n"},
		{"same key on one line", "\n{\"job\":1,\"job\":2}\n", Limits{},
			"job:2:10: found the key \"job\" a second time; the first is at line 2, column 2: keep one of them\n"},
		{"longer than the buffer", long + "\n{\"job\":\"b\"}\n", Limits{}, "job:1:8 " + strings.Repeat("x", 100_000) + "\njob:2:8 b\n"},
		{"too long", "{\"job\":\"a\"}\n" + long + "\n{\"job\":\"b\"}\n" + long, Limits{Bytes: 100_000},
			"job:1:8 a\njob:2:1: found a line of more than 100,000 bytes; that is the limit\n" +
				"job:3:8 b\njob:4:1: found a line of more than 100,000 bytes; that is the limit\n"},
		{"at the limit and above", "{\"job\":\"a\"}\r\n{\"job\":\"bc\"}\n{\"job\":\"d\"}", Limits{Bytes: 11},
			"job:1:8 a\njob:2:1: found a line of more than 11 bytes; that is the limit\njob:3:8 d\n"},
		{"other limits", "{\"a\":{}}\n{\"job\":\"b\",\"c\":1}\n{\"job\":\"c\"}\n", Limits{Depth: 1, Nodes: 2},
			"job:1:6: found more than 1 levels of lists and objects inside each other; that is the limit\n" +
				"job:2:16: found more than 2 values; that is the limit\njob:3:8 c\n"},
	} {
		for how, r := range map[string]io.Reader{
			"at once":    strings.NewReader(c.in),
			"byte wise":  iotest.OneByteReader(strings.NewReader(c.in)),
			"with error": iotest.DataErrReader(strings.NewReader(c.in)),
		} {
			if got := collect(r, c.limits); got != c.want {
				t.Errorf("%s, %s:\n got %.300s\nwant %.300s", c.name, how, got, c.want)
			}
		}
	}
}

func TestStreamStopsWhenReadingFails(t *testing.T) {
	broken := errors.New("cable pulled")
	r := io.MultiReader(strings.NewReader("{\"job\":\"a\"}\n{\"job\":"), iotest.ErrReader(broken))
	if got, want := collect(r, Limits{}), "job:1:8 a\njob:2:1: reading stopped here: cable pulled\n"; got != want {
		t.Errorf("got %q", got)
	}
	for _, err := range Stream("job", iotest.ErrReader(broken), Limits{}) {
		if !errors.Is(err, broken) {
			t.Errorf("%v does not wrap the failure", err)
		}
	}
}

func TestStreamCanBeLeft(t *testing.T) {
	for _, in := range []string{"{}\n{}\n", "x\nx\n", strings.Repeat("x", 20) + "\nx\n"} {
		n := 0
		for _, err := range Stream("job", strings.NewReader(in), Limits{Bytes: 10}) {
			_ = err // leaving is what counts here
			n++
			break
		}
		if n != 1 {
			t.Errorf("%q: %d turns", in, n)
		}
	}
}

// A record stays as it was when the stream has gone on.
func TestStreamDocumentsAreTheirOwn(t *testing.T) {
	var docs []*Document
	for doc, err := range Stream("job", strings.NewReader("{\"job\":\"first\"}\r\n{\"job\":\"other\"}\n"), Limits{}) {
		if err != nil {
			t.Fatal(err)
		}
		docs = append(docs, doc)
	}
	if got := docs[0].Root.Get("job").Text(); got != "first" {
		t.Errorf("the first record changed to %q", got)
	}
	if docs[0].SHA256 != sha256.Sum256([]byte(`{"job":"first"}`)) {
		t.Error("the digest is not of the line without its line break")
	}
}

// endless is one line without end, up to a number of bytes.
type endless struct{ left int }

func (e *endless) Read(p []byte) (int, error) {
	if e.left == 0 {
		return 0, io.EOF
	}
	n := min(len(p), e.left)
	for i := range n {
		p[i] = 'x'
	}
	e.left -= n
	return n, nil
}

func TestStreamHoldsOneLineAtMost(t *testing.T) {
	const limit = 1 << 20
	s := lineScanner{in: bufio.NewReader(io.MultiReader(&endless{64 << 20}, strings.NewReader("\n{}"))), limit: limit}
	if _, err := s.next(); !errors.Is(err, errLongLine) {
		t.Errorf("got %v", err)
	}
	if cap(s.buf) > 2*limit {
		t.Errorf("kept %d bytes of a line over the limit of %d", cap(s.buf), limit)
	}
	if line, err := s.next(); string(line) != "{}" || err != nil || s.number != 2 {
		t.Errorf("line %d: %q, %v", s.number, line, err)
	}
}
