package archive

import (
	"context"
	"errors"
	"fmt"
	"iter"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"sync/atomic"
	"testing"
	"time"
)

func numbered(n int) iter.Seq2[Source, error] {
	return func(yield func(Source, error) bool) {
		for i := range n {
			if !yield(Source{Name: fmt.Sprint(i)}, nil) {
				return
			}
		}
	}
}

func TestResultsKeepTheOrderOfTheSources(t *testing.T) {
	var got []string
	err := Each(context.Background(), numbered(200), 8, func(s Source, _ error) string {
		if strings.HasSuffix(s.Name, "3") {
			time.Sleep(time.Millisecond) // finished late, handed on in time
		}
		return s.Name
	}, func(name string) error { got = append(got, name); return nil })
	if err != nil {
		t.Fatal(err)
	}
	for i, name := range got {
		if name != fmt.Sprint(i) {
			t.Fatalf("result %d is %s", i, name)
		}
	}
	if len(got) != 200 {
		t.Fatalf("%d results", len(got))
	}
}

func TestFewResultsAreHeldAtATime(t *testing.T) {
	var judged, emitted atomic.Int64
	most := int64(0)
	err := Each(context.Background(), numbered(500), 2, func(Source, error) int {
		judged.Add(1)
		return 0
	}, func(int) error {
		most = max(most, judged.Load()-emitted.Add(1))
		return nil
	})
	if err != nil || most > 4*2+2+1 {
		t.Errorf("%d results were held at a time (%v)", most, err)
	}
}

func TestEndOfContextStops(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	n := 0
	err := Each(ctx, numbered(1_000_000), 2, func(Source, error) int { return 0 }, func(int) error {
		if n++; n == 10 {
			stop()
		}
		return nil
	})
	if !errors.Is(err, context.Canceled) || n > 100 {
		t.Errorf("stopped after %d with %v", n, err)
	}
}

func TestFailureOfEmitStops(t *testing.T) {
	full := errors.New("disk full")
	err := Each(context.Background(), numbered(1_000_000), 2, func(Source, error) int { return 0 }, func(int) error { return full })
	if !errors.Is(err, full) {
		t.Error(err)
	}
}

func TestSources(t *testing.T) {
	folder := t.TempDir()
	for name, text := range map[string]string{
		"b.yaml": "job: 1\n", "a.json": "{}", "c.ndjson": "{}\nnot json\n{}\n", "x.txt": "", "a.report.json": "{}",
		".hidden/h.yaml": "", "sub/d.yml": "job: 1\n", "slablint.yaml": "",
	} {
		path := filepath.Join(folder, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o750); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	var got []string
	for s, err := range Sources([]string{folder, filepath.Join(folder, "none.yaml"), "-"}, strings.NewReader("job: 2\n"), IsRecord) {
		name := strings.TrimPrefix(s.Name, folder+string(filepath.Separator))
		if err != nil {
			got = append(got, name+": "+AsError(s.Name, err).Message)
			continue
		}
		if _, bad := s.Read(); bad != nil {
			name += fmt.Sprintf(" bad at line %d", bad.Line)
		}
		got = append(got, filepath.ToSlash(name))
	}
	want := []string{"a.json", "b.yaml", "c.ndjson", "c.ndjson bad at line 2", "c.ndjson", "sub/d.yml", "none.yaml: there is no such file or folder", "-"}
	if !slices.Equal(got, want) {
		t.Errorf("got  %q\nwant %q", got, want)
	}
}

// What is being judged when the context ends is finished and handed on, what
// nobody began is not, and a source in which nothing comes any more does not
// keep the walk from ending.
func TestEndOfContextHandsOnWhatIsFinished(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	never := make(chan bool)
	sources := func(yield func(Source, error) bool) {
		for s, err := range numbered(3) {
			if !yield(s, err) {
				return
			}
		}
		<-never // as reading from a silent pipe
	}
	var got []string
	err := Each(ctx, sources, 4, func(s Source, _ error) string {
		if s.Name == "2" {
			stop()
			time.Sleep(20 * time.Millisecond)
		}
		return s.Name
	}, func(name string) error { got = append(got, name); return nil })
	if want := []string{"0", "1", "2"}; !errors.Is(err, context.Canceled) || !slices.Equal(got, want) {
		t.Errorf("handed on %q (%v), want %q", got, err, want)
	}
}

// A context that ends when nothing is left to do spoils nothing.
func TestEndOfContextAfterTheLastSource(t *testing.T) {
	ctx, stop := context.WithCancel(context.Background())
	n := 0
	err := Each(ctx, numbered(5), 1, func(s Source, _ error) string { return s.Name }, func(name string) error {
		if n++; name == "4" {
			time.Sleep(20 * time.Millisecond) // the walk has found its end
			stop()
		}
		return nil
	})
	if err != nil || n != 5 {
		t.Errorf("%d handed on: %v", n, err)
	}
}
