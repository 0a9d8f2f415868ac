package geometry

import (
	"math"
	"math/rand/v2"
	"testing"
)

func BenchmarkRectDistance(b *testing.B) {
	r := must[Rect](b)(newWallOpening(Point{3, 2, 1}, PlanPoint{X: 1}, 1, 1.2))
	p := Point{0, 0, 6}
	for b.Loop() {
		r.Distance(p)
	}
}

func BenchmarkPathRoundSloped(b *testing.B) {
	r := must[Rect](b)(NewRect(Point{3, 2, 1}, Point{X: 1}, Point{Y: 1, Z: 1}))
	for b.Loop() {
		pathRound(Point{0, 0, 6}, []PlanPoint{{1, 1}}, r)
	}
}

func BenchmarkJetAngle(b *testing.B) {
	r := must[Rect](b)(newWallOpening(Point{3, 2, 1}, PlanPoint{X: 1}, 1, 1.2))
	j := must[jet](b)(newJet(Point{}, Point{Z: 1}))
	for b.Loop() {
		j.Angle(r, 6)
	}
}

func benchSlab(b *testing.B) (Polygon, []PlanPoint) {
	rng := rand.New(rand.NewPCG(17, 18))
	slab := randomSlab(b, rng)
	return slab, randomHoles(slab, 8, rng)
}

func BenchmarkShareWithin8Points(b *testing.B) {
	slab, points := benchSlab(b)
	for b.Loop() {
		must[float64](b)(slab.ShareWithin(points, 4))
	}
}

func BenchmarkFarthest8Holes(b *testing.B) {
	slab, holes := benchSlab(b)
	for b.Loop() {
		must[Gap](b)(slab.Farthest(holes))
	}
}

func BenchmarkFitField(b *testing.B) {
	var readings []Reading
	for i := range 12 {
		readings = append(readings, Reading{float64(i), -20 * math.Exp(-0.2*float64(i))})
	}
	for b.Loop() {
		must[Field](b)(FitField(readings, 0.25))
	}
}

func BenchmarkBesselK0(b *testing.B) {
	for b.Loop() {
		besselK0(0.3)
	}
}
