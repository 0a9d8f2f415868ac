package drawing

import (
	"regexp"
	"strconv"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/look"
)

// WCAG 2.2, 1.4.3 (text 4.5 to 1) and 1.4.11 (what is needed to understand a
// graphic, 3 to 1), on every ground that words and lines stand on.
func TestContrast(t *testing.T) {
	for name, p := range map[string]palette{"light and print": light, "dark": dark} {
		grounds := map[string][3]float64{"paper": look.RGB(t, p.paper), "ground": look.RGB(t, p.ground), "wall": look.RGB(t, p.wall)}
		grounds["zone on paper"] = blend(t, p.bad, p.zoneShare, look.RGB(t, p.paper))
		grounds["zone on wall"] = blend(t, p.bad, p.zoneShare, look.RGB(t, p.wall))
		grounds["reach"] = blend(t, p.cool, p.reachShare, look.RGB(t, p.paper))
		for where, ground := range grounds {
			for what, colour := range map[string]string{"ink": p.ink, "soft": p.soft, "bad": p.bad} {
				if c := look.Contrast(look.RGB(t, colour), ground); c < 4.5 {
					t.Errorf("%s: words in %s on %s have a contrast of %.2f", name, what, where, c)
				}
			}
			for what, colour := range map[string]string{"cool": p.cool, "warm": p.warm} {
				if c := look.Contrast(look.RGB(t, colour), ground); c < 3 {
					t.Errorf("%s: lines in %s on %s have a contrast of %.2f", name, what, where, c)
				}
			}
		}
	}
}

func blend(t *testing.T, hex, share string, ground [3]float64) [3]float64 {
	t.Helper()
	top := look.RGB(t, hex)
	s, err := strconv.ParseFloat(share, 64)
	if err != nil {
		t.Fatal(err)
	}
	for i := range ground {
		ground[i] = s*top[i] + (1-s)*ground[i]
	}
	return ground
}

// Black on white is 21 to 1 by the definition; #767676 is well known as the
// lightest grey that passes on white.
func TestContrastRatio(t *testing.T) {
	near(t, "black on white", look.Contrast(look.RGB(t, "#000000"), look.RGB(t, "#ffffff")), 21, 1e-9)
	near(t, "white on white", look.Contrast(look.RGB(t, "#ffffff"), look.RGB(t, "#ffffff")), 1, 1e-9)
	near(t, "#767676 on white", look.Contrast(look.RGB(t, "#767676"), look.RGB(t, "#ffffff")), 4.54, 0.01)
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
