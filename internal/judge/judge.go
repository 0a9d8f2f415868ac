// Package judge asks the requirements of a profile stack about one derived
// record and turns their bare outcomes into findings with places and sources.
package judge

import (
	"context"
	"fmt"
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
	shape     *record.Shape
	topdown   *topdown // the reference

	judged  atomic.Int64
	compile sync.Once
	wasm    atomic.Pointer[wasm] // the fast way, once many records were seen

	mu     sync.Mutex
	within map[string]*Judge // stacks without the profiles that do not speak of a job
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
	return &Judge{selection: selection, shape: shape, topdown: t, within: map[string]*Judge{}}, nil
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
		return j.expand(doc, input, answer, j.selection.Asked()), err
	}
	found, err := inner.Judge(ctx, doc, input)
	if err != nil {
		return Judgement{}, err
	}
	rest := slices.DeleteFunc(j.selection.Asked(), inner.asks)
	found.Findings = append(found.Findings, j.expand(doc, input, answer, rest).Findings...)
	return found, nil
}

func (j *Judge) expand(doc *record.Document, input map[string]any, a answer, names []string) Judgement {
	e := expander{judge: j, doc: doc, input: input, scope: scopeOf(a.outside)}
	for _, name := range names {
		e.requirement(name, a.asked[name], a.failures[name])
	}
	return Judgement{e.findings, texts(a.cautions)}
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

// answer is what the entry module says, in the types of encoding/json.
type answer struct {
	asked    map[string]any
	outside  any
	cautions any
	failures map[string]error // requirements that could not be evaluated
}

func answerOf(value any) (answer, error) {
	fields, ok := value.(map[string]any)
	if !ok {
		return answer{}, fmt.Errorf("the rulebook gave no answer")
	}
	asked, _ := fields["asked"].(map[string]any)
	return answer{asked: asked, outside: fields["outside"], cautions: fields["cautions"]}, nil
}

// ask takes the fast way when there is one. Both ways give the same answer; a
// requirement that fails is isolated by the reference.
func (j *Judge) ask(ctx context.Context, input map[string]any) (answer, error) {
	if j.judged.Add(1) == manyRecords {
		go j.speedUp(context.WithoutCancel(ctx))
	}
	if fast := j.wasm.Load(); fast != nil {
		if a, err := fast.ask(ctx, input); err == nil {
			return a, nil
		}
	}
	return j.topdown.ask(ctx, input, j.selection.Asked())
}

// speedUp compiles the stack to wasm. When that fails the reference goes on.
func (j *Judge) speedUp(ctx context.Context) {
	j.compile.Do(func() {
		if fast, err := newWasm(ctx, j.selection); err == nil {
			j.wasm.Store(fast)
		}
	})
}

// texts reads a set of strings, which is in order already.
func texts(value any) []string {
	list, _ := value.([]any)
	out := make([]string, 0, len(list))
	for _, item := range list {
		if s, ok := item.(string); ok {
			out = append(out, s)
		}
	}
	return out
}
