package drawing

import "strings"

// palette are the colours of one way of reading: on a light page and on paper,
// or on a dark page. Texts are in ink, soft or bad; everything else is told by
// its shape as well.
type palette struct {
	paper, ink, soft      string
	ground, wall          string // fills that texts can stand on
	bad, cool, warm       string // what must not be; first and second curve
	zoneShare, reachShare string // how much of bad and cool tints a part of the drawing
}

var (
	light = palette{
		paper: "#ffffff", ink: "#1a232b", soft: "#4a5660", ground: "#e6e1d6", wall: "#f1f3f5",
		bad: "#8f2416", cool: "#1f5a94", warm: "#77500f", zoneShare: ".1", reachShare: ".1",
	}
	dark = palette{
		paper: "#161b20", ink: "#e6eaee", soft: "#b3bec7", ground: "#35332c", wall: "#212930",
		bad: "#ff9d8a", cool: "#8cc4f5", warm: "#e3bd7d", zoneShare: ".14", reachShare: ".14",
	}
)

// variables sets the colours for the classes below.
func (p palette) variables() string {
	return ".fig{--p:" + p.paper + ";--i:" + p.ink + ";--s:" + p.soft + ";--g:" + p.ground + ";--w:" + p.wall +
		";--b:" + p.bad + ";--c:" + p.cool + ";--m:" + p.warm + ";--z:" + p.zoneShare + ";--r:" + p.reachShare + "}"
}

const classes = `
.fig text{font:13px Arial,"Liberation Sans",Roboto,sans-serif;fill:var(--i)}
.fig .small{font-size:11.5px}.fig .strong,.fig .badtext,.fig .number{font-weight:700}.fig .number{font-size:11.5px}.fig .soft{fill:var(--s)}.fig .badtext{fill:var(--b)}
.fig .over{paint-order:stroke;stroke:var(--p);stroke-width:3.5px;stroke-linejoin:round}
.fig .paper{fill:var(--p)}.fig .ground{fill:var(--g)}.fig .wall{fill:var(--w)}.fig .solid{fill:var(--i)}.fig .hole{fill:var(--p);stroke:var(--i);stroke-width:1.6}
.fig .ink,.fig .heavy,.fig .thin,.fig .faint,.fig .bad,.fig .good,.fig .cool,.fig .warm,.fig .pipe{fill:none;stroke:var(--i);stroke-width:1.6}
.fig .heavy{stroke-width:3}.fig .thin{stroke:var(--s);stroke-width:1}.fig .faint{stroke:var(--s);stroke-width:.5;stroke-opacity:.5}
.fig .bad{stroke:var(--b);stroke-width:3}.fig .good{stroke:var(--c);stroke-width:1.4;stroke-dasharray:5 3}.fig .cool{stroke:var(--c);stroke-width:2.6}.fig .warm{stroke:var(--m);stroke-width:2.6;stroke-dasharray:9 4}
.fig .dash{stroke-dasharray:6 4}.fig .dot{stroke-dasharray:1.5 3.5}.fig .tint{fill:var(--c);fill-opacity:var(--r)}
.fig .zone{fill:var(--b);fill-opacity:var(--z);stroke:var(--b);stroke-width:1.5;stroke-dasharray:8 4}
.fig .reach{fill:var(--c);fill-opacity:var(--r);stroke:var(--c);stroke-width:1.2;stroke-dasharray:2 3}
.fig .badge{fill:var(--p);stroke:var(--i);stroke-width:1.2}
`

// style goes into every figure, so that each stands on its own. Paper comes
// last: it is white whatever the screen is.
var style = "<style>\n" + light.variables() + strings.TrimRight(classes, "\n") +
	"\n@media (prefers-color-scheme:dark){" + dark.variables() + "}\n@media print{" + light.variables() + "}\n</style>"
