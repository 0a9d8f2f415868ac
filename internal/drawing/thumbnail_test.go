package drawing

import (
	"bytes"
	"encoding/binary"
	"image"
	"image/color"
	"image/jpeg"
	"image/png"
	"testing"
)

// quarters is a picture with a corner of its own colour each: red green / blue
// white.
func quarters(w, h int) image.Image {
	m := image.NewRGBA(image.Rect(0, 0, w, h))
	for y := range h {
		for x := range w {
			c := color.RGBA{R: 255, A: 255}
			switch {
			case x >= w/2 && y < h/2:
				c = color.RGBA{G: 255, A: 255}
			case x < w/2 && y >= h/2:
				c = color.RGBA{B: 255, A: 255}
			case x >= w/2:
				c = color.RGBA{R: 255, G: 255, B: 255, A: 255}
			}
			m.Set(x, y, c)
		}
	}
	return m
}

// names tells the corners of a picture, in the order of reading.
func names(m image.Image) string {
	b := m.Bounds()
	out := ""
	for _, at := range [][2]int{{1, 1}, {3, 1}, {1, 3}, {3, 3}} {
		r, g, blue, _ := m.At(b.Min.X+b.Dx()*at[0]/4, b.Min.Y+b.Dy()*at[1]/4).RGBA()
		high := func(v uint32) bool { return v > 0x8000 }
		switch {
		case high(r) && high(g) && high(blue):
			out += "w"
		case high(r):
			out += "r"
		case high(g):
			out += "g"
		case high(blue):
			out += "b"
		default:
			out += "?"
		}
	}
	return out
}

// withOrientation puts an Exif part with nothing but the orientation in front
// of a JPEG.
func withOrientation(t *testing.T, picture []byte, order binary.AppendByteOrder, mark string, held uint16) []byte {
	t.Helper()
	tiff := []byte(mark)
	tiff = order.AppendUint16(tiff, 42)
	tiff = order.AppendUint32(tiff, 8)
	tiff = order.AppendUint16(tiff, 1)
	tiff = order.AppendUint16(tiff, 274)
	tiff = order.AppendUint16(tiff, 3)
	tiff = order.AppendUint32(tiff, 1)
	tiff = order.AppendUint16(tiff, held)
	tiff = order.AppendUint16(tiff, 0)
	tiff = order.AppendUint32(tiff, 0)
	part := append([]byte("Exif\x00\x00"), tiff...)
	out := []byte{0xff, 0xd8, 0xff, 0xe1}
	out = binary.BigEndian.AppendUint16(out, uint16(len(part)+2))
	return append(append(out, part...), picture[2:]...)
}

func jpegOf(t *testing.T, m image.Image) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := jpeg.Encode(&b, m, nil); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// Where the first row and column of the file stand in what was seen: Exif 2.32
// (CIPA DC-008), tag 274.
func TestThumbnailsStandUpright(t *testing.T) {
	picture := jpegOf(t, quarters(640, 400))
	for held, want := range map[uint16]string{
		0: "rgbw", 1: "rgbw", 2: "grwb", 3: "wbgr", 4: "bwrg", 5: "rbgw", 6: "brwg", 7: "wgbr", 8: "gwrb", 9: "rgbw",
	} {
		for mark, order := range map[string]binary.AppendByteOrder{"II": binary.LittleEndian, "MM": binary.BigEndian} {
			small, err := Thumbnail(withOrientation(t, picture, order, mark, held))
			if err != nil {
				t.Fatal(err)
			}
			m, err := jpeg.Decode(bytes.NewReader(small))
			if err != nil {
				t.Fatal(err)
			}
			if got := names(m); got != want {
				t.Errorf("orientation %d, %s: corners %s, want %s", held, mark, got, want)
			}
			if wide := m.Bounds().Dx() > m.Bounds().Dy(); wide != (held < 5 || held > 8) {
				t.Errorf("orientation %d: %v", held, m.Bounds())
			}
		}
	}
}

func TestThumbnailSizes(t *testing.T) {
	for _, c := range []struct{ w, h, wantW, wantH int }{
		{640, 400, 320, 200}, {320, 200, 320, 200}, {100, 50, 100, 50}, {1, 1, 1, 1}, {400, 4000, 48, 480}, {4000, 2, 320, 1}, {2, 4000, 1, 480},
	} {
		small, err := Thumbnail(jpegOf(t, quarters(c.w, c.h)))
		if err != nil {
			t.Fatal(err)
		}
		config, err := jpeg.DecodeConfig(bytes.NewReader(small))
		if err != nil {
			t.Fatal(err)
		}
		if config.Width != c.wantW || config.Height != c.wantH {
			t.Errorf("%dx%d becomes %dx%d, want %dx%d", c.w, c.h, config.Width, config.Height, c.wantW, c.wantH)
		}
	}
}

// Where and when a picture was taken stays in the original.
func TestThumbnailsTellNothingElse(t *testing.T) {
	small, err := Thumbnail(withOrientation(t, jpegOf(t, quarters(64, 64)), binary.BigEndian, "MM", 6))
	if err != nil {
		t.Fatal(err)
	}
	if bytes.Contains(small, []byte("Exif")) {
		t.Error("the camera's data went along")
	}
}

// See-through parts of a PNG become white, as on the page.
func TestThumbnailOfATransparentPicture(t *testing.T) {
	var b bytes.Buffer
	if err := png.Encode(&b, image.NewRGBA(image.Rect(0, 0, 40, 40))); err != nil {
		t.Fatal(err)
	}
	small, err := Thumbnail(b.Bytes())
	if err != nil {
		t.Fatal(err)
	}
	m, err := jpeg.Decode(bytes.NewReader(small))
	if err != nil {
		t.Fatal(err)
	}
	if got := names(m); got != "wwww" {
		t.Errorf("corners %s, want white", got)
	}
}

// A file that is no picture, or a huge one, is refused and not opened.
func TestThumbnailRefuses(t *testing.T) {
	var huge bytes.Buffer
	if err := png.Encode(&huge, image.NewGray(image.Rect(0, 0, 1, 1))); err != nil {
		t.Fatal(err)
	}
	data := huge.Bytes()
	binary.BigEndian.PutUint32(data[16:], 1<<30) // the width in its header
	for name, picture := range map[string][]byte{"nothing": nil, "text": []byte("no picture"), "half": jpegOf(t, quarters(64, 64))[:200], "huge": data} {
		if _, err := Thumbnail(picture); err == nil {
			t.Errorf("%s: taken", name)
		}
	}
}

// Whatever stands in front of a picture, reading its orientation ends.
func FuzzOrientation(f *testing.F) {
	f.Add([]byte{0xff, 0xd8, 0xff, 0xe1, 0, 8, 'E', 'x', 'i', 'f', 0, 0})
	f.Add([]byte("\xff\xd8\xff\xe1\x00\x1aExif\x00\x00II*\x00\x08\x00\x00\x00\xff\xff\x12\x01"))
	f.Fuzz(func(t *testing.T, file []byte) {
		if held := orientation(file); held < 1 || held > 8 {
			t.Errorf("orientation %d", held)
		}
	})
}
