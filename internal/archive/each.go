package archive

import (
	"context"
	"iter"
	"sync"
)

// task is one source on its way through the workers.
type task[T any] struct {
	source Source
	err    error
	done   chan T // closed without a result when nobody took the task
}

// Each has every source judged, by as many goroutines as workers says, and
// hands the results to emit in the order of the sources. It holds few results
// at a time whatever the number of sources. It stops when the context ends or
// emit fails, after handing on what is finished before the first gap. The error
// is the context's only when sources were left out.
func Each[T any](ctx context.Context, sources iter.Seq2[Source, error], workers int, judge func(Source, error) T, emit func(T) error) error {
	ctx, stop := context.WithCancel(ctx)
	defer stop()
	tasks := make(chan task[T])
	order := make(chan task[T], 4*workers) // bounds what is judged ahead of emit
	complete := false                      // to be read when order is closed
	go func() {                            // not waited for: its source may be a pipe in which nothing comes
		defer close(order)
		defer close(tasks)
		complete = produce(ctx, sources, order, tasks)
	}()
	var group sync.WaitGroup
	for range workers {
		group.Go(func() { work(ctx, tasks, judge) })
	}
	all, err := handOn(ctx, order, emit)
	stop()
	group.Wait()
	if err != nil || all && complete {
		return err
	}
	return ctx.Err()
}

// produce makes a task of each source. It tells whether it came to the end.
func produce[T any](ctx context.Context, sources iter.Seq2[Source, error], order, tasks chan<- task[T]) bool {
	for source, err := range sources {
		t := task[T]{source, err, make(chan T, 1)}
		select {
		case order <- t:
		case <-ctx.Done():
			return false
		}
		select {
		case tasks <- t:
		case <-ctx.Done():
			close(t.done)
			return false
		}
	}
	return true
}

func work[T any](ctx context.Context, tasks <-chan task[T], judge func(Source, error) T) {
	for {
		select {
		case t, ok := <-tasks:
			if !ok {
				return
			}
			t.done <- judge(t.source, t.err)
		case <-ctx.Done():
			return
		}
	}
}

// handOn gives results to emit in their order; when the context ends, those
// that are there or being made. It tells whether it saw the last of them.
func handOn[T any](ctx context.Context, order <-chan task[T], emit func(T) error) (all bool, err error) {
	for {
		var t task[T]
		var ok bool
		select {
		case t, ok = <-order:
		case <-ctx.Done():
			select {
			case t, ok = <-order:
			default:
				return false, nil
			}
		}
		if !ok {
			return true, nil
		}
		result, ok := <-t.done
		if !ok {
			return false, nil
		}
		if err := emit(result); err != nil {
			return false, err
		}
	}
}
