package derive

import (
	"bufio"
	"bytes"
	"crypto/sha256"
	"encoding/hex"
	"errors"
	"io"
	"io/fs"
	"strings"
	"sync"
	"time"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/quantity"
)

// headBytes is how much of a file's start is looked at for its type and the
// time of a photo.
const headBytes = 128 << 10

// evidence is what is found of each file in the job's folder. Without a folder
// nothing is said of the files: they were not looked for.
func (d *deriver) evidence(files fs.FS) []any {
	work := d.dates.get("work_started").day()
	list := d.record.get("evidence").rooted()
	out := d.list(list.length())
	for _, n := range list.each() {
		e := d.about(n, 1, 4)
		out = append(out, e)
		var found seen
		if path := n.get("path").text(); files != nil && path != "" {
			found = look(files, path)
			e.set("present", found.present)
			if told := n.get("sha256").text(); found.present && told != "" {
				e.set("digest_matches", strings.EqualFold(told, found.digest))
			}
			if told := n.get("media_type").text(); found.present && told != "" {
				e.set("type_matches", told == found.mediaType)
			}
		}
		taken, day, method := moment(n, found.shot)
		e.exact("taken", quantity.Time, taken, method)
		if n.isPhoto() && day.known() && work.known() {
			e.set("before_work", day.si < work.si)
		}
	}
	return out
}

func (n node) isPhoto() bool { return strings.HasPrefix(n.get("media_type").text(), "image/") }

// seen is what is found of a file.
type seen struct {
	present   bool
	digest    string // SHA-256 as hex digits
	mediaType string // see mediaType
	shot      *captured
}

// readers are for reading one file after another.
var readers = sync.Pool{New: func() any { return bufio.NewReaderSize(nil, headBytes) }}

// look reads one file of the job's folder. A path that leads out of the folder
// and what is no plain file are not there.
func look(files fs.FS, path string) seen {
	if !fs.ValidPath(path) {
		return seen{}
	}
	file, err := files.Open(path)
	if err != nil {
		return seen{}
	}
	defer func() { _ = file.Close() }() // only read from
	if info, err := file.Stat(); err != nil || !info.Mode().IsRegular() {
		return seen{}
	}
	r := readers.Get().(*bufio.Reader)
	defer readers.Put(r)
	r.Reset(file)
	head, err := r.Peek(headBytes)
	if err != nil && !errors.Is(err, io.EOF) {
		return seen{}
	}
	found := seen{present: true, mediaType: mediaType(head), shot: captureTime(head)}
	sum := sha256.New()
	if _, err := io.Copy(sum, r); err != nil {
		return seen{}
	}
	found.digest = hex.EncodeToString(sum.Sum(nil))
	return found
}

// mediaType tells the types that a record may claim by the first bytes of a
// file; "" for any other. Package net/http could tell more, but is not let in.
func mediaType(head []byte) string {
	for _, known := range [...]struct{ prefix, name string }{
		{"\xff\xd8\xff", "image/jpeg"},
		{"\x89PNG\r\n\x1a\n", "image/png"},
		{"%PDF-", "application/pdf"},
	} {
		if bytes.HasPrefix(head, []byte(known.prefix)) {
			return known.name
		}
	}
	if len(head) == headBytes { // it may end within a character
		for range utf8.UTFMax {
			if utf8.Valid(head) {
				break
			}
			head = head[:len(head)-1]
		}
	}
	if len(head) == 0 || !utf8.Valid(head) || bytes.ContainsFunc(head, func(r rune) bool {
		return r < ' ' && r != '\t' && r != '\n' && r != '\r' && r != '\f'
	}) {
		return ""
	}
	return "text/plain"
}

// moment is when a file was made and on which day: as the camera says, else as
// recorded. A camera's clock that names no zone is read in the one of the
// recorded time.
func moment(n node, shot *captured) (taken, day figure, method string) {
	told := n.get("taken")
	if shot == nil {
		return told.quantity(), told.day(), "as recorded"
	}
	b := n.get("path").read()
	clock := shot.clock
	day = figure{float64(clock.Truncate(24 * time.Hour).Unix()), units.seconds, b}
	offset := shot.offset
	if offset == nil {
		if recorded := told.quantity(); recorded.known() {
			offset = zoneOf(told)
			b = join(b, recorded.basis)
		}
	}
	if offset == nil {
		offset = new(time.Duration)
		b = join(b, assuming(cameraZone))
	}
	return figure{float64(clock.Add(-*offset).Unix()), units.seconds, b}, day, "capture time inside the file"
}

// zoneOf is the offset from UTC in which a time was written.
func zoneOf(n node) *time.Duration {
	text := n.words()
	if len(text) < len("-05:00") {
		return nil
	}
	t, err := time.Parse("-07:00", text[len(text)-len("-05:00"):])
	if err != nil {
		return nil
	}
	_, seconds := t.Zone()
	offset := time.Duration(seconds) * time.Second
	return &offset
}
