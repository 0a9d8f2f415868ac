package derive_test

import (
	"testing"

	"github.com/slablint/slablint/internal/derive"
)

// One system that draws at four places, twelve segments, with openings,
// communication test, radon tests and crew.
func BenchmarkDeriveFourSuctionPoints(b *testing.B) {
	input := load(b, "testdata", "four.yaml")
	b.ReportAllocs()
	for b.Loop() {
		derive.Derive(input, nil)
	}
}

func BenchmarkDeriveDemo(b *testing.B) {
	input := load(b, "..", "..", "fixtures", "demo", "ready.yaml")
	b.ReportAllocs()
	for b.Loop() {
		derive.Derive(input, nil)
	}
}
