package drawing

import (
	"encoding/binary"
	"image"
	"image/color"
)

// orientation is how a camera was held, as JPEG files carry it in their Exif
// part: 1 to 8, upright being 1 (CIPA DC-008, tag 274). Anything that cannot be
// read counts as upright.
func orientation(file []byte) int {
	for at := 2; at+4 <= len(file) && file[at] == 0xff; {
		marker, size := file[at+1], int(binary.BigEndian.Uint16(file[at+2:]))
		if marker == 0xda || size < 2 || at+2+size > len(file) { // the picture itself begins
			break
		}
		if part := file[at+4 : at+2+size]; marker == 0xe1 && len(part) > 6 && string(part[:6]) == "Exif\x00\x00" {
			return tiffOrientation(part[6:])
		}
		at += 2 + size
	}
	return 1
}

// tiffOrientation reads tag 274 of the first directory.
func tiffOrientation(tiff []byte) int {
	if len(tiff) < 8 {
		return 1
	}
	var order binary.ByteOrder = binary.BigEndian
	if string(tiff[:2]) == "II" {
		order = binary.LittleEndian
	}
	directory := int64(order.Uint32(tiff[4:]))
	if directory+2 > int64(len(tiff)) {
		return 1
	}
	entries := tiff[directory+2:]
	for range order.Uint16(tiff[directory:]) {
		if len(entries) < 12 {
			break
		}
		if order.Uint16(entries) == 274 {
			if held := order.Uint16(entries[8:]); held >= 1 && held <= 8 {
				return int(held)
			}
			break
		}
		entries = entries[12:]
	}
	return 1
}

// turned is a picture taken with the camera held in one of those ways.
type turned struct {
	image.Image
	held int
}

// turn gives the picture as it was seen.
func turn(picture image.Image, held int) image.Image {
	if held <= 1 || held > 8 {
		return picture
	}
	return turned{picture, held}
}

// Bounds are those of the turned picture.
func (t turned) Bounds() image.Rectangle {
	b := t.Image.Bounds()
	if t.held >= 5 {
		return image.Rect(0, 0, b.Dy(), b.Dx())
	}
	return image.Rect(0, 0, b.Dx(), b.Dy())
}

// At finds the pixel that comes to stand there.
func (t turned) At(x, y int) color.Color {
	b := t.Image.Bounds()
	w, h := b.Dx()-1, b.Dy()-1
	switch t.held {
	case 2:
		x = w - x
	case 3:
		x, y = w-x, h-y
	case 4:
		y = h - y
	case 5:
		x, y = y, x
	case 6:
		x, y = y, h-x
	case 7:
		x, y = w-y, h-x
	case 8:
		x, y = w-y, x
	}
	return t.Image.At(b.Min.X+x, b.Min.Y+y)
}
