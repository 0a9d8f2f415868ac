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
	largestPicture = 50_000_000 // px, above which a picture is not opened
)

// Thumbnail makes a small JPEG of a JPEG or PNG picture, without what cameras
// write into theirs.
func Thumbnail(picture []byte) ([]byte, error) {
	config, _, err := image.DecodeConfig(bytes.NewReader(picture))
	if err != nil {
		return nil, fmt.Errorf("picture: %w", err)
	}
	if config.Width <= 0 || config.Height <= 0 || config.Width*config.Height > largestPicture {
		return nil, fmt.Errorf("picture of %d by %d is not opened", config.Width, config.Height)
	}
	full, _, err := image.Decode(bytes.NewReader(picture))
	if err != nil {
		return nil, fmt.Errorf("picture: %w", err)
	}
	width := min(thumbnailWidth, config.Width)
	small := image.NewRGBA(image.Rect(0, 0, width, max(1, config.Height*width/config.Width)))
	draw.Draw(small, small.Bounds(), image.White, image.Point{}, draw.Src)
	draw.CatmullRom.Scale(small, small.Bounds(), full, full.Bounds(), draw.Over, nil)
	var out bytes.Buffer
	if err := jpeg.Encode(&out, small, &jpeg.Options{Quality: 72}); err != nil {
		return nil, fmt.Errorf("thumbnail: %w", err)
	}
	return out.Bytes(), nil
}
