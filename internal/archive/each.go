package archive

import (
	"context"
	"iter"
	"sync"
)

// Each has every source judged, by as many goroutines as workers says, and
// hands the results to emit in the order of the sources. It holds few results
// at a time whatever the number of sources. It stops when the context ends or
// emit fails, after handing on what is finished before the first gap.
func Each[T any](ctx context.Context, sources iter.Seq2[Source, error], workers int, judge func(Source, error) T, emit func(T) error) error {
	type task struct {
		source Source
		err    error
		done   chan T
	}
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	tasks := make(chan task)
	order := make(chan task, 4*workers) // bounds what is judged ahead of emit
	var group sync.WaitGroup
	group.Go(func() {
		defer close(tasks)
		defer close(order)
		for source, err := range sources {
			t := task{source, err, make(chan T, 1)}
			select {
			case order <- t:
			case <-ctx.Done():
				return
			}
			select {
			case tasks <- t:
			case <-ctx.Done():
				close(t.done)
				return
			}
		}
	})
	for range workers {
		group.Go(func() {
			for t := range tasks {
				t.done <- judge(t.source, t.err)
			}
		})
	}
	err := func() error {
		for t := range order {
			result, ok := <-t.done
			if !ok {
				return ctx.Err()
			}
			if err := emit(result); err != nil {
				return err
			}
		}
		return ctx.Err()
	}()
	stop()
	for t := range order { // let a waiting producer go
		_ = t
	}
	group.Wait()
	return err
}
