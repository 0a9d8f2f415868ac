package drawing

import (
	"math"
	"regexp"
	"strconv"
	"strings"
	"testing"
)

// WCAG 2.2, 1.4.3 (text 4.5 to 1) and 1.4.11 (what is needed to understand a
// graphic, 3 to 1), on every ground that words and lines stand on.
func TestContrast(t *testing.T) {
	for name, p := range map[string]palette{"light and print": light, "dark": dark} {
		grounds := map[string][3]float64{"paper": rgb(t, p.paper), "ground": rgb(t, p.ground), "wall": rgb(t, p.wall)}
		grounds["zone on paper"] = blend(t, p.bad, p.zoneShare, rgb(t, p.paper))
		grounds["zone on wall"] = blend(t, p.bad, p.zoneShare, rgb(t, p.wall))
		grounds["reach"] = blend(t, p.cool, p.reachShare, rgb(t, p.paper))
		for where, ground := range grounds {
			for what, colour := range map[string]string{"ink": p.ink, "soft": p.soft, "bad": p.bad} {
				if c := contrast(rgb(t, colour), ground); c < 4.5 {
					t.Errorf("%s: words in %s on %s have a contrast of %.2f", name, what, where, c)
				}
			}
			for what, colour := range map[string]string{"cool": p.cool, "warm": p.warm} {
				if c := contrast(rgb(t, colour), ground); c < 3 {
					t.Errorf("%s: lines in %s on %s have a contrast of %.2f", name, what, where, c)
				}
			}
		}
	}
}

func rgb(t *testing.T, hex string) [3]float64 {
	t.Helper()
	n, err := strconv.ParseUint(strings.TrimPrefix(hex, "#"), 16, 32)
	if err != nil || len(hex) != 7 {
		t.Fatalf("colour %q", hex)
	}
	return [3]float64{float64(n >> 16), float64(n >> 8 & 0xff), float64(n & 0xff)}
}

func blend(t *testing.T, hex, share string, ground [3]float64) [3]float64 {
	t.Helper()
	top := rgb(t, hex)
	s, err := strconv.ParseFloat(share, 64)
	if err != nil {
		t.Fatal(err)
	}
	for i := range ground {
		ground[i] = s*top[i] + (1-s)*ground[i]
	}
	return ground
}

// contrast is the contrast ratio of WCAG 2.2, with relative luminance as it is
// defined there.
func contrast(a, b [3]float64) float64 {
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

// Black on white is 21 to 1 by the definition; #767676 is well known as the
// lightest grey that passes on white.
func TestContrastRatio(t *testing.T) {
	near(t, "black on white", contrast(rgb(t, "#000000"), rgb(t, "#ffffff")), 21, 1e-9)
	near(t, "white on white", contrast(rgb(t, "#ffffff"), rgb(t, "#ffffff")), 1, 1e-9)
	near(t, "#767676 on white", contrast(rgb(t, "#767676"), rgb(t, "#ffffff")), 4.54, 0.01)
}

// Every class that a drawing uses has a style, and colours come from the
// palette alone, so that they follow the page.
func TestClassesHaveStyles(t *testing.T) {
	for _, fixture := range allFixtures {
		for _, f := range Figures(input(t, fixture), terms()) {
			for _, s := range parse(t, f.SVG).all() {
				for _, class := range strings.Fields(s.attr("class")) {
					if !regexp.MustCompile(`\.fig \.` + class + `\b`).MatchString(style) {
						t.Errorf("%s: class %s has no style", f.Name, class)
					}
				}
				for _, name := range []string{"fill", "stroke", "style", "color"} {
					if s.attr(name) != "" {
						t.Errorf("%s: %s sets %s itself", f.Name, s.XMLName.Local, name)
					}
				}
			}
		}
	}
	if bare := regexp.MustCompile(`(?:fill|stroke):#`).FindString(classes); bare != "" {
		t.Errorf("a class sets a colour that is not of the palette: %s", bare)
	}
}
