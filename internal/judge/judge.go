// Package judge asks the requirements of a profile stack about one derived
// record and turns their bare outcomes into findings with places and sources.
package judge

import (
	"context"
	"maps"
	"slices"
	"strings"
	"sync"
	"sync/atomic"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/internal/rulebook"
)

// Judge holds a compiled profile stack. It can be shared by goroutines.
type Judge struct {
	selection *rulebook.Selection
	names     []string // of what is asked
	asked     []asked  // by the same order
	shape     *record.Shape

	judged  atomic.Int64
	compile sync.Once
	wasm    atomic.Pointer[wasm] // the fast way, once many records were seen

	mu      sync.Mutex
	topdown *topdown          // the reference, nil while the fast way does without it
	within  map[string]*Judge // stacks without the profiles that do not speak of a job
}

// manyRecords is how many records tell an archive from a few jobs. Compiling to
// wasm costs about as much as judging thirty records without it, beside which
// the reference goes on.
const manyRecords = 10

// New compiles the stack. The shape names fields in messages.
func New(ctx context.Context, selection *rulebook.Selection, shape *record.Shape) (*Judge, error) {
	t, err := newTopdown(ctx, selection)
	if err != nil {
		return nil, err
	}
	j := &Judge{selection: selection, names: selection.Asked(), shape: shape, topdown: t, within: map[string]*Judge{}}
	for _, name := range j.names {
		j.asked = append(j.asked, newAsked(selection, name))
	}
	return j, nil
}

// Judgement is what the rulebook says of one record.
type Judgement struct {
	Findings []finding.Finding // one for each requirement and subject, in no particular order
	Cautions []string          // safety reminders, in alphabetical order
}

// Judge asks every requirement of the stack; met and not applicable subjects
// are included. The input is the canonical record with its derived values. A
// requirement that cannot be evaluated becomes a finding about the rulebook
// and does not silence its neighbours.
func (j *Judge) Judge(ctx context.Context, doc *record.Document, input map[string]any) (Judgement, error) {
	answer, err := j.ask(ctx, input)
	if err != nil {
		return Judgement{}, err
	}
	inner, err := j.inside(ctx, answer)
	if err != nil || inner == nil {
		return j.expand(doc, input, answer, func(string) bool { return true }), err
	}
	found, err := inner.Judge(ctx, doc, input)
	if err != nil {
		return Judgement{}, err
	}
	rest := func(name string) bool { return !inner.asks(name) }
	found.Findings = append(found.Findings, j.expand(doc, input, answer, rest).Findings...)
	return found, nil
}

// expand makes findings of the requirements that wanted names.
func (j *Judge) expand(doc *record.Document, input map[string]any, a answer, wanted func(name string) bool) Judgement {
	e := expander{
		judge: j, doc: doc, input: input, scope: scopeOf(a.outside),
		slots: map[string]int{}, findings: make([]finding.Finding, 0, 2*len(j.asked)),
	}
	for i, name := range j.names {
		if wanted(name) {
			e.requirement(&j.asked[i], &a.asked[i])
		}
	}
	return Judgement{e.findings, a.cautions}
}

// asks reports whether the stack asks for a requirement.
func (j *Judge) asks(name string) bool {
	_, ok := j.selection.Row(name)
	return ok
}

// inside is the judge of the stack without the profiles that do not speak of
// this job, where their rows stood before rows of others; otherwise nil.
func (j *Judge) inside(ctx context.Context, a answer) (*Judge, error) {
	outside := slices.Sorted(maps.Keys(scopeOf(a.outside)))
	if len(outside) == 0 {
		return nil, nil
	}
	j.mu.Lock()
	defer j.mu.Unlock()
	key := strings.Join(outside, "\x00")
	inner, known := j.within[key]
	if known {
		return inner, nil
	}
	selection, err := j.selection.Without(outside)
	if err != nil {
		return nil, err
	}
	if selection != nil {
		if inner, err = New(ctx, selection, j.shape); err != nil {
			return nil, err
		}
	}
	j.within[key] = inner
	return inner, nil
}

// answer is what the entry module says.
type answer struct {
	asked    []result    // in the order of the names asked for
	outside  [][2]string // profile, and why it does not speak of the job
	cautions []string
}

// result is what one requirement says: its outcome sets, or why it could not be
// evaluated.
type result struct {
	sets    [sets][]outcome
	failure error
}

// The outcome sets in the order in which the entry module hands them over.
const (
	subjects = iota
	exempt
	met
	deficient
	undetermined
	missing
	sets
)

// ask takes the fast way when there is one. Both ways give the same answer; a
// requirement that fails is isolated by the reference.
func (j *Judge) ask(ctx context.Context, input map[string]any) (answer, error) {
	if j.judged.Add(1) == manyRecords {
		go j.speedUp(context.WithoutCancel(ctx))
	}
	if fast := j.wasm.Load(); fast != nil {
		if a, err := fast.ask(ctx, input, j.names); err == nil {
			return a, nil
		}
	}
	t, err := j.reference(ctx)
	if err != nil {
		return answer{}, err
	}
	return t.ask(ctx, input, j.names)
}

// reference is the slow way, compiled again if it was let go.
func (j *Judge) reference(ctx context.Context) (t *topdown, err error) {
	j.mu.Lock()
	defer j.mu.Unlock()
	if j.topdown == nil {
		j.topdown, err = newTopdown(ctx, j.selection)
	}
	return j.topdown, err
}

// speedUp compiles the stack to wasm and lets the compiled rules of the
// reference go, which take several times the memory of a record. When it fails
// the reference goes on.
func (j *Judge) speedUp(ctx context.Context) {
	j.compile.Do(func() {
		t, err := j.reference(ctx)
		if err != nil {
			return
		}
		if fast, err := newWasm(ctx, j.selection, t); err == nil {
			j.wasm.Store(fast)
			j.mu.Lock()
			j.topdown = nil
			j.mu.Unlock()
		}
	})
}
