package derive_test

import (
	"testing"
	"time"

	"github.com/slablint/slablint/internal/derive"
	"github.com/slablint/slablint/internal/record"
)

// A record of one system that draws at four places, twelve segments, with openings,
// communication test, radon tests and crew.
const fourPoints = "testdata/four.yaml"

// As an archive is judged: one record after another in the same memory.
func BenchmarkDeriveFourSuctionPoints(b *testing.B) {
	var w derive.Workspace
	benchmark(b, fourPoints, func(input map[string]any) { w.Derive(input, nil) })
}

// As a single record is, whose document stays.
func BenchmarkDeriveOnceFourSuctionPoints(b *testing.B) {
	benchmark(b, fourPoints, func(input map[string]any) { derive.Derive(input, nil) })
}

// The same with every number, text and curve of the document written out, of
// which a judgement asks for a part.
func BenchmarkDeriveAndWriteFourSuctionPoints(b *testing.B) {
	benchmark(b, fourPoints, func(input map[string]any) { document(input, nil) })
}

func BenchmarkDeriveDemo(b *testing.B) {
	benchmark(b, "../../fixtures/demo/ready.yaml", func(input map[string]any) { derive.Derive(input, nil) })
}

// benchmark does what it is given with one record, which is not validated here so
// that the collector has no compiled schema to go through. The metric x-reading is the
// time that takes over the time that the YAML of the same record takes to read,
// both in the same run: it means the same on a machine that is busy or slow.
func benchmark(b *testing.B, name string, once func(input map[string]any)) {
	text := source(b, name)
	doc, err := record.ReadYAML(name, text, record.Limits{})
	if err != nil {
		b.Fatal(err)
	}
	input := asRead(b, doc)
	reading := yardstick(b, name, text)
	b.ReportAllocs()
	for b.Loop() {
		once(input)
	}
	reading = (reading + yardstick(b, name, text)) / 2
	b.ReportMetric(float64(b.Elapsed())/float64(b.N)/float64(reading), "x-reading")
}

// yardstick is the time that it takes to read a record.
func yardstick(b *testing.B, name string, text []byte) time.Duration {
	const times = 100
	start := time.Now()
	for range times {
		if _, err := record.ReadYAML(name, text, record.Limits{}); err != nil {
			b.Fatal(err)
		}
	}
	return time.Since(start) / times
}
