package place

import (
	"encoding/json"
	"slices"
	"testing"
)

func TestSpotString(t *testing.T) {
	for _, c := range []struct {
		spot Spot
		want string
	}{
		{Spot{File: "job.yaml", Line: 88, Column: 7, EndLine: 88, EndColumn: 12}, "job.yaml:88:7"},
		{Spot{File: "job.yaml", Line: 88}, "job.yaml:88"},
		{Spot{File: "job.yaml"}, "job.yaml"},
		{Spot{File: "job.yaml", Column: 7}, "job.yaml"},
		{Spot{Line: 3, Column: 1}, "3:1"},
		{Spot{}, "-"},
	} {
		if got := c.spot.String(); got != c.want {
			t.Errorf("%#v: got %q, want %q", c.spot, got, c.want)
		}
	}
}

// The document and the pointers of RFC 6901 section 5, with the value each one
// names there.
func TestRFC6901Examples(t *testing.T) {
	var document any
	if err := json.Unmarshal([]byte(`{
		"foo": ["bar", "baz"], "": 0, "a/b": 1, "c%d": 2, "e^f": 3, "g|h": 4,
		"i\\j": 5, "k\"l": 6, " ": 7, "m~n": 8}`), &document); err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		pointer  Pointer
		segments []any
		want     any
	}{
		{"", nil, document},
		{"/foo", []any{"foo"}, []any{"bar", "baz"}},
		{"/foo/0", []any{"foo", 0}, "bar"},
		{"/", []any{""}, 0.0},
		{"/a~1b", []any{"a/b"}, 1.0},
		{"/c%d", []any{"c%d"}, 2.0},
		{"/e^f", []any{"e^f"}, 3.0},
		{"/g|h", []any{"g|h"}, 4.0},
		{`/i\j`, []any{`i\j`}, 5.0},
		{`/k"l`, []any{`k"l`}, 6.0},
		{"/ ", []any{" "}, 7.0},
		{"/m~0n", []any{"m~n"}, 8.0},
	} {
		if got := Root.Append(c.segments...); got != c.pointer {
			t.Errorf("Append(%q): got %q, want %q", c.segments, got, c.pointer)
		}
		got, err := json.Marshal(follow(document, c.pointer.Split()))
		if err != nil {
			t.Fatal(err)
		}
		want, err := json.Marshal(c.want)
		if err != nil {
			t.Fatal(err)
		}
		if string(got) != string(want) {
			t.Errorf("%q names %s, want %s", c.pointer, got, want)
		}
	}
}

// follow walks down a decoded JSON document; nil where there is nothing.
func follow(node any, segments []string) any {
	for _, s := range segments {
		switch n := node.(type) {
		case map[string]any:
			node = n[s]
		case []any:
			if s != "0" {
				return nil
			}
			node = n[0]
		}
	}
	return node
}

// RFC 6901 section 4: "~01" is the key "~1", because "~1" is undone first.
func TestEscapeOrder(t *testing.T) {
	p := Root.Append("~1")
	if p != "/~01" {
		t.Errorf("got %q, want /~01", p)
	}
	if got := p.Last(); got != "~1" {
		t.Errorf("got %q, want ~1", got)
	}
}

func TestParentAndLast(t *testing.T) {
	for _, c := range []struct {
		pointer, parent Pointer
		last            string
	}{
		{Root, Root, ""},
		{"/systems", Root, "systems"},
		{"/systems/0/discharge", "/systems/0", "discharge"},
		{"/a~1b/m~0n", "/a~1b", "m~n"},
		{"/", Root, ""},
		{"/a/", "/a", ""},
		{"bare", Root, "bare"},
	} {
		if got := c.pointer.Parent(); got != c.parent {
			t.Errorf("%q: parent %q, want %q", c.pointer, got, c.parent)
		}
		if got := c.pointer.Last(); got != c.last {
			t.Errorf("%q: last %q, want %q", c.pointer, got, c.last)
		}
	}
}

func TestHasPrefix(t *testing.T) {
	for _, c := range []struct {
		p, other Pointer
		want     bool
	}{
		{"/a/b", "/a", true},
		{"/a", "/a", true},
		{"/ab", "/a", false},
		{"/a", "/a/b", false},
		{"/a", Root, true},
		{Root, Root, true},
		{Root, "/a", false},
		{"/a/", "/a", true},
	} {
		if got := c.p.HasPrefix(c.other); got != c.want {
			t.Errorf("%q below %q: got %v", c.p, c.other, got)
		}
	}
}

func TestAppendOtherKinds(t *testing.T) {
	if got := Pointer("/x").Append(json.Number("3"), int64(4), "k"); got != "/x/3/4/k" {
		t.Errorf("got %q", got)
	}
}

// Whatever the keys hold, splitting gives back what was appended.
func FuzzPointer(f *testing.F) {
	f.Add("a/b", "m~n", "~01")
	f.Add("", "/", "~")
	f.Fuzz(func(t *testing.T, a, b, c string) {
		p := Root.Append(a, b, c)
		if got, want := p.Split(), []string{a, b, c}; !slices.Equal(got, want) {
			t.Errorf("%q: got %q, want %q", p, got, want)
		}
		if p.Last() != c || p.Parent() != Root.Append(a, b) || !p.HasPrefix(p.Parent()) {
			t.Errorf("%q: last %q, parent %q", p, p.Last(), p.Parent())
		}
	})
}
