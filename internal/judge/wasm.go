package judge

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"fmt"

	"github.com/tetratelabs/wazero"
	"github.com/tetratelabs/wazero/api"

	"github.com/slablint/slablint/internal/rulebook"
)

// wasm evaluates a stack with machines that are made as they are needed and
// used again: as many as there are goroutines asking at one time.
type wasm struct {
	program *program
	idle    chan *machine
}

// mostIdle bounds the machines that are kept.
const mostIdle = 64

func newWasm(ctx context.Context, selection *rulebook.Selection, t *topdown) (*wasm, error) {
	p, err := newProgram(ctx, selection, t)
	if err != nil {
		return nil, err
	}
	return &wasm{program: p, idle: make(chan *machine, mostIdle)}, nil
}

func (w *wasm) ask(ctx context.Context, input map[string]any, names []string) (a answer, err error) {
	var m *machine
	select {
	case m = <-w.idle:
	default:
		if m, err = w.program.machine(context.WithoutCancel(ctx)); err != nil {
			return answer{}, err
		}
	}
	if m.input, err = w.program.encoder.append(m.input[:0], input); err != nil {
		return answer{}, errors.Join(fmt.Errorf("canonical record: %w", err), m.runtime.Close(ctx))
	}
	raw, err := m.answer(ctx, m.input)
	if err == nil {
		err = m.reply.read(raw)
	}
	if err == nil {
		a, err = m.reply.answer(names)
	}
	if err != nil {
		return answer{}, errors.Join(err, m.runtime.Close(ctx)) // its memory cannot be trusted any more
	}
	select {
	case w.idle <- m:
	default:
		err = m.runtime.Close(ctx)
	}
	return a, err
}

// program is a profile stack compiled by OPA to its wasm target, with the data
// it reads. One program serves any number of machines.
type program struct {
	code    []byte
	data    []byte
	cache   wazero.CompilationCache
	encoder encoder
}

func newProgram(ctx context.Context, selection *rulebook.Selection, t *topdown) (*program, error) {
	compiled, err := t.query("answer").Compile(ctx)
	if err != nil {
		return nil, fmt.Errorf("rulebook as wasm: %w", err)
	}
	data, err := json.Marshal(selection.Data())
	if err != nil {
		return nil, fmt.Errorf("profile data: %w", err)
	}
	return &program{
		code: compiled.Bytes, data: data, cache: wazero.NewCompilationCache(),
		encoder: encoder{selection.Mentioned(t.compiler)},
	}, nil
}

// machine runs a program; it serves one goroutine at a time.
type machine struct {
	runtime wazero.Runtime
	memory  api.Memory
	eval    api.Function
	data    uint64 // address of the parsed data
	base    uint64 // first free address above it
	abort   error

	input []byte // that was given last
	reply reply
}

func (p *program) machine(ctx context.Context) (*machine, error) {
	m := &machine{runtime: wazero.NewRuntimeWithConfig(ctx, wazero.NewRuntimeConfig().WithCompilationCache(p.cache))}
	if err := m.start(ctx, p); err != nil {
		return nil, errors.Join(fmt.Errorf("rulebook as wasm: %w", err), m.runtime.Close(ctx))
	}
	return m, nil
}

func (m *machine) start(ctx context.Context, p *program) error {
	host := m.runtime.NewHostModuleBuilder("host")
	host.NewFunctionBuilder().WithFunc(func(at uint32) { m.abort = errors.New(m.text(uint64(at))) }).Export("opa_abort")
	host.NewFunctionBuilder().WithFunc(func(uint32) {}).Export("opa_println")
	host.NewFunctionBuilder().WithFunc(func(id, _ uint32) uint32 { return m.unknown(id) }).Export("opa_builtin0")
	host.NewFunctionBuilder().WithFunc(func(id, _, _ uint32) uint32 { return m.unknown(id) }).Export("opa_builtin1")
	host.NewFunctionBuilder().WithFunc(func(id, _, _, _ uint32) uint32 { return m.unknown(id) }).Export("opa_builtin2")
	host.NewFunctionBuilder().WithFunc(func(id, _, _, _, _ uint32) uint32 { return m.unknown(id) }).Export("opa_builtin3")
	host.NewFunctionBuilder().WithFunc(func(id, _, _, _, _, _ uint32) uint32 { return m.unknown(id) }).Export("opa_builtin4")
	if _, err := host.Instantiate(ctx); err != nil {
		return err
	}
	env, err := m.runtime.InstantiateWithConfig(ctx, environment(), wazero.NewModuleConfig().WithName("env"))
	if err != nil {
		return err
	}
	m.memory = env.Memory()
	policy, err := m.runtime.InstantiateWithConfig(ctx, p.code, wazero.NewModuleConfig().WithName("policy"))
	if err != nil {
		return err
	}
	m.eval = policy.ExportedFunction("opa_eval")
	at, err := policy.ExportedFunction("opa_malloc").Call(ctx, uint64(len(p.data)))
	if err != nil {
		return err
	}
	if !m.memory.Write(uint32(at[0]), p.data) {
		return errors.New("profile data do not fit in memory")
	}
	parsed, err := policy.ExportedFunction("opa_json_parse").Call(ctx, at[0], uint64(len(p.data)))
	if err != nil {
		return err
	}
	base, err := policy.ExportedFunction("opa_heap_ptr_get").Call(ctx)
	if err != nil {
		return err
	}
	m.data, m.base = parsed[0], base[0]
	return nil
}

// unknown answers a call of a built-in that wasm does not bring along; the
// allow-list holds none, so it can only be a mistake.
func (m *machine) unknown(id uint32) uint32 {
	m.abort = fmt.Errorf("built-in function %d is not part of the wasm target", id)
	return 0
}

// page is the unit in which wasm memory grows.
const page = 1 << 16

// answer evaluates one record, given as JSON, and returns the answer as JSON.
func (m *machine) answer(ctx context.Context, input []byte) ([]byte, error) {
	end := m.base + uint64(len(input))
	if size := uint64(m.memory.Size()); end > size {
		if _, ok := m.memory.Grow(uint32((end - size + page) / page)); !ok {
			return nil, errors.New("the record does not fit in memory")
		}
	}
	m.memory.Write(uint32(m.base), input)
	m.abort = nil
	result, err := m.eval.Call(ctx, 0, 0, m.data, m.base, uint64(len(input)), (end+7)&^7, 0)
	if err = errors.Join(m.abort, err); err != nil {
		return nil, err
	}
	return m.bytes(result[0]), nil
}

// bytes is the zero-terminated text at an address.
func (m *machine) bytes(at uint64) []byte {
	rest, _ := m.memory.Read(uint32(at), m.memory.Size()-uint32(at))
	if end := bytes.IndexByte(rest, 0); end >= 0 {
		return rest[:end]
	}
	return nil
}

func (m *machine) text(at uint64) string { return string(m.bytes(at)) }
