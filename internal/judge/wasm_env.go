package judge

// environment is the wasm module "env" that OPA's wasm target imports: it owns
// the memory and hands on the host's functions. A host module cannot export
// memory in this runtime, so the few bytes are put together here.
func environment() []byte {
	const (
		i32        = 0x7f
		firstPages = 16
	)
	names := []string{"opa_abort", "opa_println", "opa_builtin0", "opa_builtin1", "opa_builtin2", "opa_builtin3", "opa_builtin4"}
	params := []int{1, 1, 2, 3, 4, 5, 6}

	var types, imports, exports [][]byte
	for i, name := range names {
		signature := []byte{0x60, byte(params[i])}
		for range params[i] {
			signature = append(signature, i32)
		}
		if i < 2 {
			signature = append(signature, 0) // no result
		} else {
			signature = append(signature, 1, i32)
		}
		types = append(types, signature)
		imports = append(imports, concat(wasmName("host"), wasmName(name), []byte{0x00, byte(i)}))
		exports = append(exports, concat(wasmName(name), []byte{0x00, byte(i)}))
	}
	exports = append(exports, concat(wasmName("memory"), []byte{0x02, 0x00}))
	return concat(
		[]byte{0x00, 0x61, 0x73, 0x6d, 0x01, 0x00, 0x00, 0x00},
		section(1, types),
		section(2, imports),
		section(5, [][]byte{{0x00, firstPages}}),
		section(7, exports),
	)
}

func wasmName(s string) []byte { return append([]byte{byte(len(s))}, s...) }

// section writes a vector of entries; all lengths here need at most two bytes.
func section(id byte, entries [][]byte) []byte {
	body := concat(append([][]byte{{byte(len(entries))}}, entries...)...)
	return concat([]byte{id}, varint(len(body)), body)
}

func varint(n int) []byte {
	if n < 0x80 {
		return []byte{byte(n)}
	}
	return []byte{byte(n&0x7f) | 0x80, byte(n >> 7)}
}

func concat(parts ...[]byte) []byte {
	var out []byte
	for _, p := range parts {
		out = append(out, p...)
	}
	return out
}
