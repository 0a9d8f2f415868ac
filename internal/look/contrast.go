package look

import (
	"math"
	"strconv"
	"strings"
	"testing"
)

// RGB reads a colour such as #1f2933: red, green and blue from 0 to 255.
func RGB(t *testing.T, hex string) [3]float64 {
	t.Helper()
	n, err := strconv.ParseUint(strings.TrimPrefix(hex, "#"), 16, 32)
	if err != nil || len(hex) != 7 {
		t.Fatalf("colour %q", hex)
	}
	return [3]float64{float64(n >> 16), float64(n >> 8 & 0xff), float64(n & 0xff)}
}

// Contrast is the contrast ratio of WCAG 2.2, from 1 to 21, with relative
// luminance as it is defined there.
func Contrast(a, b [3]float64) float64 {
	luminance := func(c [3]float64) float64 {
		for i := range c {
			v := c[i] / 255
			if v <= 0.04045 {
				c[i] = v / 12.92
			} else {
				c[i] = math.Pow((v+0.055)/1.055, 2.4)
			}
		}
		return 0.2126*c[0] + 0.7152*c[1] + 0.0722*c[2]
	}
	la, lb := luminance(a), luminance(b)
	return (math.Max(la, lb) + 0.05) / (math.Min(la, lb) + 0.05)
}
