package record

import (
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/place"
)

// The places below were counted by hand. Ends are the first rune after.
func TestYAMLPlaces(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"block", `# Ärger im Keller
job: J-1   # id
house:
  areas:
    - kind: slab
      "size": '40 m²'  # here
    - {kind: crawl, size: [1, 2 ]}
`, `
 object at 2:1-7:35
/job string "J-1" key 2:1-2:4 at 2:6-2:9
/house object key 3:1-3:6 at 4:3-7:35
/house/areas array key 4:3-4:8 at 5:5-7:35
/house/areas/0 object at 5:7-6:22
/house/areas/0/kind string "slab" key 5:7-5:11 at 5:13-5:17
/house/areas/0/size string "40 m²" key 6:7-6:13 at 6:15-6:22
/house/areas/1 object at 7:7-7:35
/house/areas/1/kind string "crawl" key 7:8-7:12 at 7:14-7:19
/house/areas/1/size array key 7:21-7:25 at 7:27-7:34
/house/areas/1/size/0 number "1" at 7:28-7:29
/house/areas/1/size/1 number "2" at 7:31-7:32
`},
		{"blocks of text", `a: |
  Pit is 12 in deep,

  lined.

b: >-  # folded
  one
  two
c: |2+
    in

d: |
e: 1
`, `
 object at 1:1-13:5
/a string "Pit is 12 in deep,\n\nlined.\n" key 1:1-1:2 at 1:4-4:9
/b string "one two" key 6:1-6:2 at 6:4-8:6
/c string "  in\n\n" key 9:1-9:2 at 9:4-10:7
/d string key 12:1-12:2 at 12:4-12:5
/e number "1" key 13:1-13:2 at 13:4-13:5
`},
		{"folded without a block", "a: one\n  two\n\n  three # end\nb: \"x \\\n  \\\"y\"\nc: 'it''s\n\n  so'\n", `
 object at 1:1-9:6
/a string "one two\nthree" key 1:1-1:2 at 1:4-4:8
/b string "x \"y" key 5:1-5:2 at 5:4-6:7
/c string "it's\nso" key 7:1-7:2 at 7:4-9:6
`},
		{"nothing written", "a:\nb :   # c\nc: {d, e: , f: }\ng:\n-\n- ~\n? h\ni: \"\"\n", `
 object at 1:1-8:6
/a null key 1:1-1:2 at 1:3-1:3
/b null key 2:1-2:2 at 2:4-2:4
/c object key 3:1-3:2 at 3:4-3:17
/c/d null key 3:5-3:6 at 3:6-3:6
/c/e null key 3:8-3:9 at 3:10-3:10
/c/f null key 3:13-3:14 at 3:15-3:15
/g array key 4:1-4:2 at 5:1-6:4
/g/0 null at 5:2-5:2
/g/1 null at 6:3-6:4
/h null key 7:3-7:4 at 7:4-7:4
/i string key 8:1-8:2 at 8:4-8:6
`},
		{"brackets", "a: [x\n  , y # ] no\n  , [] , { } # ]\n]\nb: [c: d, \"e\": 'f' ]\n", `
 object at 1:1-5:21
/a array key 1:1-1:2 at 1:4-4:2
/a/0 string "x" at 1:5-1:6
/a/1 string "y" at 2:5-2:6
/a/2 array at 3:5-3:7
/a/3 object at 3:10-3:13
/b array key 5:1-5:2 at 5:4-5:21
/b/0 object at 5:5-5:9
/b/0/c string "d" key 5:5-5:6 at 5:8-5:9
/b/1 object at 5:11-5:19
/b/1/e string "f" key 5:11-5:14 at 5:16-5:19
`},
		{"byte order mark and CRLF", "\ufeff# x\r\na:\r\n  - b\r\n  - \"c\r\n    d\"\r\n", `
 object at 2:1-5:7
/a array key 2:1-2:2 at 3:3-5:7
/a/0 string "b" at 3:5-3:6
/a/1 string "c d" at 4:5-5:7
`},
		{"CR alone", "a:\r  - b\r  - c\r\nd: é\ré: 1\r", `
 object at 1:1-5:5
/a array key 1:1-1:2 at 2:3-3:6
/a/0 string "b" at 2:5-2:6
/a/1 string "c" at 3:5-3:6
/d string "é" key 4:1-4:2 at 4:4-4:5
/é number "1" key 5:1-5:2 at 5:4-5:5
`},
		{"begin and end marks", "--- # x\n a: 1\n...\n# y\n", `
 object at 2:2-2:6
/a number "1" key 2:2-2:3 at 2:5-2:6
`},
	} {
		doc := mustRead(t, ReadYAML, c.in)
		if got := outline(doc.Root); got != strings.TrimPrefix(c.want, "\n") {
			t.Errorf("%s: got\n%s", c.name, got)
		}
		checkPlaces(t, doc, c.in)
	}
}

func TestJSONPlaces(t *testing.T) {
	for _, c := range []struct{ name, in, want string }{
		{"several lines", "{\n \"é\": [1, \"ü\",\t-2.5e3 ],\r\n \"b\" : {\r  \"c\":null}\n}\n", `
 object at 1:1-5:2
/é array key 2:2-2:5 at 2:7-2:24
/é/0 number "1" at 2:8-2:9
/é/1 string "ü" at 2:11-2:14
/é/2 number "-2.5e3" at 2:16-2:22
/b object key 3:2-3:5 at 3:8-4:12
/b/c null key 4:3-4:6 at 4:7-4:11
`},
		{"byte order mark", "\ufeff {\"a\":true,\"\":{},\"d\":[]}", `
 object at 1:2-1:25
/a boolean "true" key 1:3-1:6 at 1:7-1:11
/ object key 1:12-1:14 at 1:15-1:17
/d array key 1:18-1:21 at 1:22-1:24
`},
		{"escapes", `{"a\n\u00e9€":"\ud83d\ude00ü","b":1}`, `
 object at 1:1-1:37
/a` + "\n" + `é€ string "😀ü" key 1:2-1:14 at 1:15-1:30
/b number "1" key 1:31-1:34 at 1:35-1:36
`},
	} {
		doc := mustRead(t, ReadJSON, c.in)
		if got := outline(doc.Root); got != strings.TrimPrefix(c.want, "\n") {
			t.Errorf("%s: got\n%s", c.name, got)
		}
		checkPlaces(t, doc, c.in)
	}
}

func TestLocate(t *testing.T) {
	const text = `job: J-1
house:
  areas:
    - kind: slab
      drain:
    - kind: crawl
  list: []
a/b: {"m~n": 1}
`
	at := func(line, col, endLine, endCol int) place.Spot {
		return place.Spot{File: "job", Line: line, Column: col, EndLine: endLine, EndColumn: endCol}
	}
	doc := mustRead(t, ReadYAML, text)
	for _, c := range []struct {
		ptr   place.Pointer
		exact bool
		want  place.Spot
	}{
		{"", true, at(1, 1, 8, 16)},
		{"/job", true, at(1, 6, 1, 9)},                    // a scalar: the value alone
		{"/house", true, at(2, 1, 7, 11)},                 // an object: from its key
		{"/house/areas/1", true, at(6, 7, 6, 18)},         // an element has no key
		{"/house/areas/0/drain", true, at(5, 7, 5, 13)},   // nothing written: the key
		{"/house/areas/0/size", false, at(4, 7, 5, 13)},   // missing: the element
		{"/house/areas/0/kind/x", false, at(4, 7, 4, 17)}, // below a scalar
		{"/house/areas/2/kind", false, at(3, 3, 6, 18)},   // beyond the end
		{"/house/areas/01", false, at(3, 3, 6, 18)},       // no index by RFC 6901
		{"/house/areas/-", false, at(3, 3, 6, 18)},        // the element after the last
		{"/house/areas/kind", false, at(3, 3, 6, 18)},     // a name in an array
		{"/house/list/0", false, at(7, 3, 7, 11)},         // an empty array
		{"/systems/0/fan", false, at(1, 1, 8, 16)},        // missing at the top
		{"/a~1b/m~0n", true, at(8, 14, 8, 15)},            // escapes
		{"/house/areas/99999999999999999999", false, at(3, 3, 6, 18)},
	} {
		got, exact := doc.Locate(c.ptr)
		if got != c.want || exact != c.exact {
			t.Errorf("%q: got %+v, exact %v", c.ptr, got, exact)
		}
		if found := doc.Root.At(c.ptr); (found != nil) != c.exact {
			t.Errorf("%q: At gives %v", c.ptr, found)
		}
	}
}
