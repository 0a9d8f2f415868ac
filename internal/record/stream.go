package record

import (
	"bufio"
	"bytes"
	"errors"
	"io"
	"iter"
)

// Stream reads records in JSON, one on each line that is not blank, and holds
// no more than one line at a time. Spots carry the line of the stream. A line
// that cannot be read, or is longer than limits.Bytes, gives an *Error, and the
// stream goes on with the next; when reading r itself fails, the *Error wraps
// that failure and is the last.
func Stream(name string, r io.Reader, limits Limits) iter.Seq2[*Document, error] {
	return func(yield func(*Document, error) bool) {
		s := lineScanner{in: bufio.NewReaderSize(r, 64<<10), limit: limits.orDefaults().Bytes}
		for {
			line, err := s.next()
			if errors.Is(err, io.EOF) {
				return
			}
			at := pos{int32(s.number), 1}
			switch {
			case errors.Is(err, errLongLine):
				e := newError(name, at, at, "found a line of more than %s bytes; that is the limit", grouped(s.limit))
				if !yield(nil, e) {
					return
				}
				continue
			case err != nil:
				e := newError(name, at, at, "reading stopped here: %v", err)
				e.cause = err
				yield(nil, e)
				return
			}
			if !yield(readJSON(jsonReader{file: name, line: s.number, stream: true}, line, limits)) {
				return
			}
		}
	}
}

var errLongLine = errors.New("record: line too long")

// lineScanner gives the lines of a stream that are not blank.
type lineScanner struct {
	in     *bufio.Reader
	limit  int
	number int    // of the line given last, from 1
	buf    []byte // of a line longer than the reader's buffer
}

// next gives a line without its line break; it stays valid until the next
// call. A line over the limit is skipped without being kept.
func (s *lineScanner) next() ([]byte, error) {
	for {
		s.number++
		line, long, err := s.line()
		switch {
		case long && (err == nil || errors.Is(err, io.EOF)):
			return nil, errLongLine
		case err != nil && (!errors.Is(err, io.EOF) || len(line) == 0):
			return nil, err
		}
		line = bytes.TrimSuffix(line, []byte("\n"))
		line = bytes.TrimSuffix(line, []byte("\r"))
		if len(bytes.TrimLeft(bytes.TrimPrefix(line, []byte(byteOrderMark)), " \t\r")) > 0 {
			return line, nil
		}
		if errors.Is(err, io.EOF) {
			return nil, io.EOF
		}
	}
}

// line reads up to and with the next line feed, or to the end of the stream.
func (s *lineScanner) line() (line []byte, long bool, err error) {
	s.buf = s.buf[:0]
	for {
		part, err := s.in.ReadSlice('\n')
		if !errors.Is(err, bufio.ErrBufferFull) && len(s.buf) == 0 && !long {
			return part, len(bytes.TrimRight(part, "\r\n")) > s.limit, err
		}
		if long = long || len(s.buf)+len(bytes.TrimRight(part, "\r\n")) > s.limit; !long {
			s.buf = append(s.buf, part...)
		}
		if !errors.Is(err, bufio.ErrBufferFull) {
			return s.buf, long, err
		}
	}
}
