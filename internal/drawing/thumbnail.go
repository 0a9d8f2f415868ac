package drawing

import (
	"bytes"
	"fmt"
	"image"
	"image/jpeg"
	_ "image/png" // evidence may be PNG

	"golang.org/x/image/draw"
)

const (
	thumbnailWidth = 320        // px
	thumbnailTall  = 480        // px
	largestPicture = 50_000_000 // px, above which a picture is not opened
)

// Thumbnail makes a small upright JPEG of a JPEG or PNG picture, without what
// cameras write into theirs.
func Thumbnail(picture []byte) ([]byte, error) {
	config, _, err := image.DecodeConfig(bytes.NewReader(picture))
	if err != nil {
		return nil, fmt.Errorf("picture: %w", err)
	}
	if config.Width <= 0 || config.Height <= 0 || config.Width > largestPicture/config.Height {
		return nil, fmt.Errorf("picture of %d by %d is not opened", config.Width, config.Height)
	}
	full, _, err := image.Decode(bytes.NewReader(picture))
	if err != nil {
		return nil, fmt.Errorf("picture: %w", err)
	}
	held := orientation(picture)
	whole := turn(full, held).Bounds()
	share := min(1, thumbnailWidth/float64(whole.Dx()), thumbnailTall/float64(whole.Dy()))
	width, tall := max(1, int(share*float64(whole.Dx()))), max(1, int(share*float64(whole.Dy())))
	// Shrinking first and turning the few pixels left is the cheaper order.
	shrunk := image.Rect(0, 0, width, tall)
	if held >= 5 {
		shrunk = image.Rect(0, 0, tall, width)
	}
	small := image.NewRGBA(shrunk)
	draw.Draw(small, shrunk, image.White, image.Point{}, draw.Src)
	draw.CatmullRom.Scale(small, shrunk, full, full.Bounds(), draw.Over, nil)
	var out bytes.Buffer
	if err := jpeg.Encode(&out, turn(small, held), &jpeg.Options{Quality: 72}); err != nil {
		return nil, fmt.Errorf("thumbnail: %w", err)
	}
	return out.Bytes(), nil
}
