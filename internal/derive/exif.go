package derive

import (
	"bytes"
	"encoding/binary"
	"time"
)

// This file reads one thing out of a JPEG: when the camera says the photo was
// taken. None of the modules in use reads EXIF, and a whole library for two
// tags would be more code to trust than these few checks of bounds.
// Tags and layout: CIPA DC-008 (Exif 2.32) 4.6, from memory.

const (
	tagExifFolder = 0x8769 // where the photo's own tags stand
	tagOriginal   = 0x9003 // DateTimeOriginal
	tagOffset     = 0x9011 // OffsetTimeOriginal
	typeASCII     = 2
)

// captured is a time read off a camera's clock.
type captured struct {
	clock  time.Time      // as the clock showed it, kept in UTC
	offset *time.Duration // of the clock from UTC; nil when it is not told
}

// captureTime is when a photo was taken, nil when the file does not say.
func captureTime(head []byte) *captured {
	tiff := exifBlock(head)
	if len(tiff) < 8 {
		return nil
	}
	var order binary.ByteOrder = binary.BigEndian
	switch string(tiff[:4]) {
	case "II*\x00":
		order = binary.LittleEndian
	case "MM\x00*":
	default:
		return nil
	}
	first := folder{tiff, order, order.Uint32(tiff[4:])}
	at, ok := first.find(tagExifFolder)
	if !ok {
		return nil
	}
	photo := folder{tiff, order, order.Uint32(at[8:])}
	clock, err := time.Parse("2006:01:02 15:04:05", photo.text(tagOriginal))
	if err != nil {
		return nil
	}
	c := &captured{clock: clock}
	if t, err := time.Parse("-07:00", photo.text(tagOffset)); err == nil {
		_, seconds := t.Zone()
		offset := time.Duration(seconds) * time.Second
		c.offset = &offset
	}
	return c
}

// exifBlock finds the EXIF segment among the segments of a JPEG.
func exifBlock(jpeg []byte) []byte {
	const startOfScan, exif = 0xda, 0xe1
	if !bytes.HasPrefix(jpeg, []byte{0xff, 0xd8}) {
		return nil
	}
	for rest := jpeg[2:]; len(rest) >= 4 && rest[0] == 0xff && rest[1] != startOfScan; {
		size := int(binary.BigEndian.Uint16(rest[2:]))
		if size < 2 || 2+size > len(rest) {
			return nil
		}
		body := rest[4 : 2+size]
		if rest[1] == exif && bytes.HasPrefix(body, []byte("Exif\x00\x00")) {
			return body[6:]
		}
		rest = rest[2+size:]
	}
	return nil
}

// folder is a list of tags somewhere in the block.
type folder struct {
	tiff  []byte
	order binary.ByteOrder
	at    uint32
}

const tagBytes = 12

// find gives the twelve bytes of a tag.
func (f folder) find(tag uint16) ([]byte, bool) {
	if uint64(f.at)+2 > uint64(len(f.tiff)) {
		return nil, false
	}
	list := f.tiff[f.at:]
	count := int(f.order.Uint16(list))
	list = list[2:]
	for range count {
		if len(list) < tagBytes {
			return nil, false
		}
		if f.order.Uint16(list) == tag {
			return list[:tagBytes], true
		}
		list = list[tagBytes:]
	}
	return nil, false
}

// text is the value of a text tag, "" when there is none.
func (f folder) text(tag uint16) string {
	entry, ok := f.find(tag)
	if !ok || f.order.Uint16(entry[2:]) != typeASCII {
		return ""
	}
	count, value := uint64(f.order.Uint32(entry[4:])), entry[8:]
	if count > 4 {
		start := uint64(f.order.Uint32(value))
		if start+count > uint64(len(f.tiff)) {
			return ""
		}
		value = f.tiff[start:]
	}
	return string(bytes.TrimRight(value[:count], "\x00"))
}
