package derive_test

import (
	"crypto/sha256"
	"encoding/binary"
	"encoding/hex"
	"strings"
	"testing"
	"testing/fstest"
)

// photo is the start of a JPEG with an EXIF block that tells when it was taken
// and, if not "", the offset of the clock.
func photo(order binary.AppendByteOrder, taken, offset string) []byte {
	tag := func(b []byte, id, kind uint16, count, value uint32) []byte {
		b = order.AppendUint16(order.AppendUint16(b, id), kind)
		return order.AppendUint32(order.AppendUint32(b, count), value)
	}
	const first, folder, text = 8, 8 + 2 + 12 + 4, 8 + 2 + 12 + 4 + 2 + 24 + 4
	tiff := []byte("II*\x00")
	if order == binary.AppendByteOrder(binary.BigEndian) {
		tiff = []byte("MM\x00*")
	}
	tiff = order.AppendUint32(tiff, first)
	tiff = tag(order.AppendUint16(tiff, 1), 0x8769, 4, 1, folder)
	tiff = order.AppendUint32(tiff, 0)
	tiff = tag(order.AppendUint16(tiff, 2), 0x9003, 2, 20, text)
	tiff = tag(tiff, 0x9011, 2, 7, text+20)
	tiff = order.AppendUint32(tiff, 0)
	tiff = append(tiff, taken+"\x00"...)
	tiff = append(tiff, offset+"\x00"...)
	body := append([]byte("Exif\x00\x00"), tiff...)
	jpeg := []byte("\xff\xd8\xff\xe0\x00\x04JF\xff\xe1")
	jpeg = binary.BigEndian.AppendUint16(jpeg, uint16(2+len(body)))
	return append(append(jpeg, body...), "\xff\xda\x00\x02pixels\xff\xd9"...)
}

func digest(data []byte) string {
	sum := sha256.Sum256(data)
	return hex.EncodeToString(sum[:])
}

// Layout and tags of the EXIF block: CIPA DC-008 (Exif 2.32) 4.6, from memory.
func TestEvidence(t *testing.T) {
	little := photo(binary.LittleEndian, "2026:03:09 18:30:00", "-05:00")
	big := photo(binary.BigEndian, "2026:03:10 08:30:00", "")
	pdf, text := []byte("%PDF-1.7\n..."), []byte("Permit closed.\n")
	files := fstest.MapFS{
		"photos/before.jpg": {Data: little}, "photos/start.jpg": {Data: big}, "papers/permit.pdf": {Data: pdf},
		"notes.txt": {Data: text}, "photos/raw.bin": {Data: []byte("\x00\x01")}, "outside.txt": {Data: text},
		"empty.txt": {}, "long.txt": {Data: []byte(strings.Repeat("å", 100_000))},
	}
	const none = "not said"
	for _, c := range []struct {
		name, entry                             string
		present, digest, kind, before, when, is string
	}{
		{"before the work, by the camera", "path: photos/before.jpg, sha256: " + digest(little) + ", media_type: image/jpeg, taken: 2026-03-12T09:00:00-05:00", "true", "true", "true", "true", "2026-03-09T23:30:00Z", "capture time inside the file"},
		{"camera without zone, read in the recorded one", "path: photos/start.jpg, sha256: " + strings.ToUpper(digest(big)) + ", media_type: image/jpeg, taken: 2026-03-12T09:00:00-06:00", "true", "true", "true", "false", "2026-03-10T14:30:00Z", "capture time inside the file"},
		{"camera without any zone", "path: photos/start.jpg, media_type: image/jpeg", "true", none, "true", "false", "2026-03-10T08:30:00Z", "capture time inside the file"},
		{"altered", "path: photos/before.jpg, sha256: " + digest(big), "true", "false", none, none, "2026-03-09T23:30:00Z", "capture time inside the file"},
		{"not what it claims", "path: papers/permit.pdf, media_type: image/png, taken: 2026-03-01T09:00:00-05:00", "true", none, "false", "true", "2026-03-01T14:00:00Z", "as recorded"},
		{"paper", "path: papers/permit.pdf, media_type: application/pdf, taken: 2026-03-01T09:00:00-05:00", "true", none, "true", none, "2026-03-01T14:00:00Z", "as recorded"},
		{"note", "path: notes.txt, media_type: text/plain", "true", none, "true", none, none, ""},
		{"long note that is cut within a letter", "path: long.txt, media_type: text/plain", "true", none, "true", none, none, ""},
		{"nothing in it", "path: empty.txt, media_type: text/plain, sha256: " + digest(nil), "true", "true", "false", none, none, ""},
		{"bytes", "path: photos/raw.bin, media_type: text/plain", "true", none, "false", none, none, ""},
		{"not there", "path: photos/none.jpg, sha256: " + digest(big) + ", media_type: image/jpeg", "false", none, none, none, none, ""},
		{"a folder", "path: photos", "false", none, none, none, none, ""},
		{"out of the folder", "path: ../outside.txt", "false", none, none, none, none, ""},
		{"through the folder", "path: photos/../outside.txt", "false", none, none, none, none, ""},
		{"from the root", "path: /outside.txt", "false", none, none, none, none, ""},
		{"no path", "caption: The lid", none, none, none, none, none, ""},
	} {
		record := "record: 1\njob: {id: J-1, stage: running, profiles: [us-epa-1994], dates: {work_started: 2026-03-10}}\nevidence: [{id: e, " + c.entry + "}]\n"
		derived := document(canonical(t, c.name, []byte(record)), files)
		keepsSchema(t, derived)
		e := derived["evidence"].([]any)[0].(map[string]any)
		said := func(field string) string {
			switch b, ok := e[field].(bool); {
			case !ok:
				return none
			case b:
				return "true"
			}
			return "false"
		}
		taken := e["taken"].(map[string]any)
		when, _ := taken["text"].(string)
		if when == "" {
			when = none
		}
		method, _ := taken["method"].(string)
		got := []string{said("present"), said("digest_matches"), said("type_matches"), said("before_work"), when, method}
		want := []string{c.present, c.digest, c.kind, c.before, c.when, c.is}
		if strings.Join(got, "|") != strings.Join(want, "|") {
			t.Errorf("%s: %v, want %v", c.name, got, want)
		}
		// Without a folder nothing is said of what is in it.
		e = document(canonical(t, c.name, []byte(record)), nil)["evidence"].([]any)[0].(map[string]any)
		if said("present") != none || said("digest_matches") != none || said("type_matches") != none {
			t.Errorf("%s: without a folder: %v", c.name, e)
		}
	}
}

// A damaged photo is a photo without a time, never a crash.
func FuzzCaptureTime(f *testing.F) {
	f.Add(photo(binary.LittleEndian, "2026:03:09 18:30:00", "-05:00"))
	f.Add(photo(binary.BigEndian, "2026:03:09 18:30:00", ""))
	f.Add([]byte("\xff\xd8\xff\xe1\xff\xff"))
	record := "record: 1\njob: {id: J-1, stage: running, profiles: [us-epa-1994]}\nevidence: [{id: e, path: p, media_type: image/jpeg}]\n"
	f.Fuzz(func(t *testing.T, data []byte) {
		derived := document(canonical(t, "photo", []byte(record)), fstest.MapFS{"p": {Data: data}})
		if e := derived["evidence"].([]any)[0].(map[string]any); e["present"] != true {
			t.Errorf("the file is not found: %v", e)
		}
	})
}

// Every cut and every changed byte of a good photo.
func TestDamagedPhotos(t *testing.T) {
	good := photo(binary.LittleEndian, "2026:03:09 18:30:00", "-05:00")
	record := canonical(t, "photo", []byte("record: 1\njob: {id: J-1, stage: running, profiles: [us-epa-1994]}\nevidence: [{id: e, path: p}]\n"))
	for i := range good {
		for _, change := range []byte{0x00, 0x7f, 0xff} {
			bad := append([]byte{}, good...)
			bad[i] = change
			for _, data := range [][]byte{bad, good[:i]} {
				derived := document(record, fstest.MapFS{"p": {Data: data}})
				if e := derived["evidence"].([]any)[0].(map[string]any); e["present"] != true {
					t.Fatalf("byte %d: the file is not found: %v", i, e)
				}
			}
		}
	}
}
