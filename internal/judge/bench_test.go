package judge

import (
	"context"
	"testing"

	"github.com/slablint/slablint/internal/derive"
)

// Both evaluators on the same job by the whole rulebook, and what is made of
// their answer. The metric is how many times as long the reference takes.
func BenchmarkEvaluators(b *testing.B) {
	bench := newBench(b)
	base, ctx := bench.bases[0], context.Background()
	input, _ := base.doc.Canonical(bench.shape)
	input["derived"] = derive.Derive(input, base.files)
	a, err := bench.fast.ask(ctx, input, bench.judge.names) // makes the machine
	if err != nil {
		b.Fatal(err)
	}
	slow := 0.0
	each := func(name string, once func() error) {
		b.Run(name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				if err := once(); err != nil {
					b.Fatal(err)
				}
			}
			per := b.Elapsed().Seconds() / float64(b.N)
			switch {
			case name == "reference":
				slow = per
			case name == "wasm" && slow > 0:
				b.ReportMetric(slow/per, "times-as-fast")
			}
		})
	}
	each("reference", func() (err error) {
		a, err = bench.judge.topdown.ask(ctx, input, bench.judge.names)
		return err
	})
	each("wasm", func() (err error) {
		a, err = bench.fast.ask(ctx, input, bench.judge.names)
		return err
	})
	each("findings", func() error {
		bench.judge.expand(base.doc, input, a, func(string) bool { return true })
		return nil
	})
}
