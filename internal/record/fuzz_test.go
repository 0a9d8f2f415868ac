package record

import (
	"bytes"
	"encoding/json"
	"errors"
	"reflect"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
)

// fuzzLimits are small, so that fuzzing meets them.
var fuzzLimits = Limits{Bytes: 4096, Depth: 8, Nodes: 200}

func checkLimits(t *testing.T, doc *Document) {
	t.Helper()
	n := 0
	walk(doc.Root, place.Root, func(ptr place.Pointer, node *Node) {
		n++
		depth := len(ptr.Split())
		if node.kind == Object || node.kind == Array {
			depth++
		}
		if depth > fuzzLimits.Depth {
			t.Errorf("%q is deeper than %d", ptr, fuzzLimits.Depth)
		}
	})
	if n > fuzzLimits.Nodes {
		t.Errorf("%d nodes", n)
	}
}

// reread reads the text of one scalar once more, in the place of the star in a
// frame: when its place is right, it is the same value in one of the frames.
func reread(t *testing.T, read reader, all [][]rune, n *Node, frames ...string) {
	t.Helper()
	text, _ := written(all, n.at, n.end)
	var got []string
	for _, frame := range frames {
		doc, err := read("job", []byte(strings.Replace(frame, "*", text, 1)), Limits{})
		if err != nil {
			got = append(got, err.Error())
			continue
		}
		again := doc.Root.Get("v")
		if again.kind == Array && len(again.items) == 1 {
			again = again.Item(0)
		}
		if again.kind == n.kind && again.text == n.text {
			return
		}
		got = append(got, outline(again))
	}
	t.Errorf("%v %q: at %v-%v stands %q, which is read as %q", n.kind, n.text, n.at, n.end, text, got)
}

func FuzzYAML(f *testing.F) {
	for _, c := range twins {
		f.Add([]byte(c.yaml))
		f.Add([]byte(c.json))
	}
	for _, s := range []string{
		"a: |2+ # x\n    b\n\n  c\n\nd: >-\n e\n", "a: [b: c, ? d, {e, f: }, 'g''h', \"i\\\n  j\"] # k\n", "? a\n? |\n  b\n: c\n",
		"a:\r- b\r\n-\r\n- - c\n  - ~\n", "\ufeff---\na: &b *c\n...\n", "a: 012\nb: +.5\nc: 1e400\n<<: !x y\n", "é: { ü: ä ö }\n", "a: b\n  c\n\n  d # e\n", "---", "a: [?]",
	} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		doc, err := ReadYAML("job", data, fuzzLimits)
		if err != nil {
			checkError(t, err, string(data))
			return
		}
		checkPlaces(t, doc, string(data))
		checkLimits(t, doc)
		all := lines(string(data))
		walk(doc.Root, place.Root, func(ptr place.Pointer, n *Node) {
			text, _ := written(all, n.at, n.end)
			switch {
			case n.kind == Object || n.kind == Array:
				if open := strings.IndexByte("[{", text[0]); open >= 0 && !strings.HasSuffix(text, "]}"[open:open+1]) {
					t.Errorf("%q: %q is not the whole collection", ptr, text)
				}
			case text != "" && strings.ContainsAny(text[:1], "|>"):
				if last, _ := written(all, pos{n.end.line, n.end.col - 1}, n.end); strings.TrimSpace(last) == "" {
					t.Errorf("%q: %q ends with white space", ptr, text)
				}
			default:
				reread(t, ReadYAML, all, n, "v: *\n", "v: [*]\n")
			}
		})
		twin, err := json.Marshal(doc.Root.Value())
		if err != nil {
			t.Fatalf("not JSON: %v", err)
		}
		again, err := ReadJSON("job", twin, Limits{})
		if err != nil {
			t.Fatalf("%s: %v", twin, err)
		}
		if !reflect.DeepEqual(again.Root.Value(), doc.Root.Value()) {
			t.Errorf("got %s, its twin %v", contents(doc.Root), contents(again.Root))
		}
	})
}

func FuzzJSON(f *testing.F) {
	for _, c := range twins {
		f.Add([]byte(c.json))
	}
	for _, s := range []string{
		`{"a":"\ud83d\ude00\u00e9\n\"\\","é":[{},[],"",null,true,false]}`, "\ufeff{\"a\":\r\n-1.50e+3\r, \"b\":0}", `{"a":1,"a":2}`, `{"a":1e400}`, "{\"a\":\"\xff\"}", `{"a":[[[[[[[[1]]]]]]]]}`,
	} {
		f.Add([]byte(s))
	}
	// What is refused although encoding/json takes it.
	stricter := []string{
		"bytes; at most", "levels of lists", "values; that", "UTF-", "surrogate pair", "a second time", "characters; at most",
		"beyond the largest", "nearer to zero", "at the top level", "expected {",
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		doc, err := ReadJSON("job", data, fuzzLimits)
		want, stdErr := decodeJSON(bytes.TrimPrefix(data, []byte(byteOrderMark)))
		if err != nil {
			checkError(t, err, string(data))
			for _, s := range stricter {
				if strings.Contains(err.Error(), s) {
					return
				}
			}
			if stdErr == nil {
				t.Errorf("encoding/json reads it: %v", err)
			}
			return
		}
		if stdErr != nil {
			t.Fatalf("encoding/json refuses it: %v", stdErr)
		}
		if got := doc.Root.Value(); !reflect.DeepEqual(got, want) {
			t.Errorf("got %#v, want %#v", got, want)
		}
		checkPlaces(t, doc, string(data))
		checkLimits(t, doc)
		all := lines(string(data))
		walk(doc.Root, place.Root, func(ptr place.Pointer, n *Node) {
			text, _ := written(all, n.at, n.end)
			switch n.kind {
			case Object, Array:
				if brackets := text[:1] + text[len(text)-1:]; brackets != "{}" && brackets != "[]" {
					t.Errorf("%q: %q is not the whole collection", ptr, text)
				}
			default:
				reread(t, ReadJSON, all, n, `{"v":*}`)
			}
			if n.keyAt != (pos{}) {
				key := Node{kind: String, text: n.key, at: n.keyAt, end: n.keyEnd}
				reread(t, ReadJSON, all, &key, `{"v":*}`)
			}
		})
	})
}

// A stream gives what reading its lines one by one gives.
func FuzzStream(f *testing.F) {
	f.Add([]byte("{\"a\":1}\n\r\nx\n{\"a\":\"é\"}"))
	f.Add([]byte("\ufeff{}\n\ufeff{}\n\xff\n" + strings.Repeat("x", 200)))
	f.Fuzz(func(t *testing.T, data []byte) {
		limits := Limits{Bytes: 100}
		lines := bytes.Split(data, []byte("\n"))
		number := 0
		for doc, err := range Stream("job", bytes.NewReader(data), limits) {
			if number < len(lines) {
				number++
			}
			for len(bytes.Trim(bytes.TrimPrefix(lines[number-1], []byte(byteOrderMark)), " \t\r")) == 0 {
				if number++; number > len(lines) {
					t.Fatalf("more documents than lines: %v, %v", doc, err)
				}
			}
			line := bytes.TrimSuffix(lines[number-1], []byte("\r"))
			want, wantErr := ReadJSON("job", line, limits)
			if (err == nil) != (wantErr == nil) {
				t.Fatalf("line %d, %q: got %v, want %v", number, line, err, wantErr)
			}
			if err != nil {
				var at *Error
				if !errors.As(err, &at) || at.Spot.Line != number {
					t.Errorf("line %d: %v", number, err)
				}
				continue
			}
			if contents(doc.Root) != contents(want.Root) || int(doc.Root.at.line) != number {
				t.Errorf("line %d at %v: got\n%s", number, doc.Root.at, contents(doc.Root))
			}
		}
	})
}
