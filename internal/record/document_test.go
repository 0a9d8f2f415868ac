package record

import (
	"crypto/sha256"
	"encoding/json"
	"reflect"
	"strings"
	"testing"
)

func TestReadChoosesTheFormat(t *testing.T) {
	// Each text is a record in only one of the two formats.
	const (
		yamlOnly = "a: 1\n"
		flowYAML = "{a: 1}"
		jsonOnly = `{"a":"\ud83d\ude00"}`
	)
	for _, c := range []struct {
		name, in string
		ok       bool
	}{
		{"job.yaml", yamlOnly, true}, {"job.yml", flowYAML, true}, {"JOB.YAML", yamlOnly, true}, {"job.yaml", jsonOnly, false},
		{"job.json", jsonOnly, true}, {"job.ndjson", jsonOnly, true}, {"a.b/JOB.JSON", jsonOnly, true}, {"job.json", yamlOnly, false},
		{"<stdin>", yamlOnly, true}, {"<stdin>", " \r\n\t" + jsonOnly, true}, {"<stdin>", "\ufeff" + jsonOnly, true},
		{"<stdin>", flowYAML, false}, {"<stdin>", "# a\n" + flowYAML, true}, {"job", yamlOnly, true}, {"job.txt", jsonOnly, true},
	} {
		doc, err := Read(c.name, []byte(c.in), Limits{})
		if (err == nil) != c.ok {
			t.Errorf("%s with %q: %v", c.name, c.in, err)
		}
		if err == nil && doc.Name != c.name {
			t.Errorf("%s is named %s", c.name, doc.Name)
		}
	}
}

func TestDigestIsOfTheBytes(t *testing.T) {
	for _, in := range []string{"\ufeff{\"a\":1}\r\n", "{\"a\": 1}"} {
		for _, read := range []reader{ReadYAML, ReadJSON} {
			if got := mustRead(t, read, in).SHA256; got != sha256.Sum256([]byte(in)) {
				t.Errorf("%q: %x", in, got)
			}
		}
	}
}

// twins are the same record in both formats.
var twins = []struct{ name, yaml, json string }{
	{"scalars", `
text: 11 ft 6 in
quoted: "a\tb"
single: 'it''s'
empty: ""
unicode: "4 \u00b5m, 10 m²"
integer: 7
decimal: 3.10
exponent: -1.5e-3
big: 12345678901234567890
point: .5
plus: +5
yes: yes
right: true
wrong: False
nothing:
tilde: ~
date: 2026-03-01
time: 2026-03-01T10:00:00Z
clock: 08:30
grouped: 1_000
`, `{"text": "11 ft 6 in", "quoted": "a\tb", "single": "it's", "empty": "", "unicode": "4 µm, 10 m\u00b2",
 "integer": 7, "decimal": 3.10, "exponent": -1.5e-3, "big": 12345678901234567890, "point": 0.5, "plus": 5,
 "yes": "yes", "right": true, "wrong": false, "nothing": null, "tilde": null, "date": "2026-03-01",
 "time": "2026-03-01T10:00:00Z", "clock": "08:30", "grouped": "1_000"}`},
	{"nesting", `
systems:
- id: S1
  pipes:
    - {diameter: 4 in, length: [1, 2.0], fittings: []}
    -
    - - a
      - b
  fan: {}
notes: |
  one

  two
folded: >-
  one
  two
`, `{"systems": [{"id": "S1", "pipes": [{"diameter": "4 in", "length": [1, 2.0], "fittings": []}, null, ["a", "b"]],
 "fan": {}}], "notes": "one\n\ntwo\n", "folded": "one two"}`},
	{"keys", "'': 1\na/b: 2\nm~n: 3\n'1': 4\n\"\\u00e9\": 5\n2026-03-01: 6\nno: 7\n", `{"":1,"a/b":2,"m~n":3,"1":4,"é":5,"2026-03-01":6,"no":7}`},
}

func TestTwinsAreEqual(t *testing.T) {
	for _, c := range twins {
		y, j := mustRead(t, ReadYAML, c.yaml), mustRead(t, ReadJSON, c.json)
		if got, want := contents(y.Root), contents(j.Root); got != want {
			t.Errorf("%s: YAML\n%s\nJSON\n%s", c.name, got, want)
		}
		if got, want := y.Root.Value(), j.Root.Value(); !reflect.DeepEqual(got, want) {
			t.Errorf("%s: YAML %v, JSON %v", c.name, got, want)
		}
		checkPlaces(t, y, c.yaml)
		checkPlaces(t, j, c.json)
	}
}

func TestNode(t *testing.T) {
	root := mustRead(t, ReadJSON, `{"o":{"k":"v"},"a":[1.50,true,false,null],"s":"x"}`).Root
	list := root.Get("a")
	if root.Kind() != Object || root.Len() != 3 || root.Item(1) != list || list.Key() != "a" || root.Key() != "" {
		t.Errorf("got %v of %d, item 1 %q", root.Kind(), root.Len(), root.Item(1).Key())
	}
	if n := list.Item(0); n.Kind() != Number || n.Text() != "1.50" || n.Value() != json.Number("1.50") {
		t.Errorf("got %v %q %#v", n.Kind(), n.Text(), n.Value())
	}
	if !list.Item(1).Bool() || list.Item(2).Bool() || root.Get("s").Bool() {
		t.Error("Bool is not true for true alone")
	}
	if n := root.At("/o/k"); n.Value() != "v" || n.KeySpot("f").Column != 7 || n.Spot("f").Column != 11 || root.KeySpot("f") != root.Spot("f") {
		t.Errorf("got %#v at %v, key at %v", n.Value(), n.Spot("f"), n.KeySpot("f"))
	}
	want := map[string]any{"o": map[string]any{"k": "v"}, "a": []any{json.Number("1.50"), true, false, nil}, "s": "x"}
	if got := root.Value(); !reflect.DeepEqual(got, want) {
		t.Errorf("got %#v", got)
	}
	missing := root.Get("none").Get("deeper")
	if missing != nil || missing.Kind() != Null || missing.Text() != "" || missing.Len() != 0 || missing.Bool() ||
		missing.Key() != "" || missing.Value() != nil || missing.At("/x") != nil || list.Get("0") != nil {
		t.Error("a missing node does not answer like null")
	}
	var kinds []string
	for k := Null; k <= Object; k++ {
		kinds = append(kinds, k.String())
	}
	if got := strings.Join(kinds, " "); got != "null boolean number string array object" {
		t.Errorf("kinds: %s", got)
	}
}
