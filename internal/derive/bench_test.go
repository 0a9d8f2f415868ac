package derive_test

import (
	"testing"
	"time"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/record"
)

// One system that draws at four places, twelve segments, with openings,
// communication test, radon tests and crew.
func BenchmarkDeriveFourSuctionPoints(b *testing.B) { benchmark(b, "testdata/four.yaml") }

func BenchmarkDeriveDemo(b *testing.B) { benchmark(b, "../../fixtures/demo/ready.yaml") }

// benchmark derives one record. The metric x-reading is the time that takes over
// the time that the YAML of the same record takes to read, both in the same run:
// it means the same on a machine that is busy or slow.
func benchmark(b *testing.B, name string) {
	input, text := load(b, name), source(b, name)
	b.ReportAllocs()
	var reading time.Duration
	for b.Loop() {
		derive.Derive(input, nil)
		b.StopTimer()
		start := time.Now()
		if _, err := record.ReadYAML(name, text, record.Limits{}); err != nil {
			b.Fatal(err)
		}
		reading += time.Since(start)
		b.StartTimer()
	}
	b.ReportMetric(float64(b.Elapsed())/float64(reading), "x-reading")
}
