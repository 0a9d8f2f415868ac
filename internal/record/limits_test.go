package record

import (
	"errors"
	"strings"
	"testing"
)

func TestLimits(t *testing.T) {
	deep := func(n int) string { return strings.Repeat(`{"a":`, n) + "1" + strings.Repeat("}", n) }
	list := func(n int) string { return `{"a":[` + strings.Repeat("1,", n-1) + "1]}" }
	for _, c := range []struct {
		name   string
		limits Limits
		in     string
		want   string // "" when it is read
	}{
		{"bytes, at the limit", Limits{Bytes: 7}, `{"a":1}`, ""},
		{"bytes", Limits{Bytes: 1234}, `{"a":"` + strings.Repeat("x", 1227) + `"}`, "job:1:1: found 1,235 bytes; at most 1,234 are read"},
		{"bytes by default, at the limit", Limits{}, `{"a":"` + strings.Repeat("x", 4<<20-8) + `"}`, ""},
		{"bytes by default", Limits{}, `{"a":"` + strings.Repeat("x", 4<<20-7) + `"}`, "job:1:1: found 4,194,305 bytes; at most 4,194,304 are read"},
		{"depth, at the limit", Limits{Depth: 3}, deep(3), ""},
		{"depth", Limits{Depth: 3}, deep(4), "job:1:16: found more than 3 levels of lists and objects inside each other; that is the limit"},
		{"depth by default, at the limit", Limits{}, deep(64), ""},
		{"depth by default", Limits{}, deep(65), "job:1:321: found more than 64 levels of lists and objects inside each other; that is the limit"},
		{"depth, an empty object", Limits{Depth: 1}, `{"a":{}}`, "job:1:6: found more than 1 levels of lists and objects inside each other; that is the limit"},
		{"nodes, at the limit", Limits{Nodes: 5}, list(3), ""},
		{"nodes", Limits{Nodes: 5}, list(4), "job:1:13: found more than 5 values; that is the limit"},
		{"nodes by default, at the limit", Limits{}, list(199_998), ""},
		{"nodes by default", Limits{}, list(199_999), "job:1:400003: found more than 200,000 values; that is the limit"},
	} {
		for format, read := range map[string]reader{"YAML": ReadYAML, "JSON": ReadJSON} {
			_, err := read("job", []byte(c.in), c.limits)
			switch {
			case c.want == "" && err != nil:
				t.Errorf("%s in %s: %v", c.name, format, err)
			case c.want != "" && (err == nil || err.Error() != c.want):
				t.Errorf("%s in %s:\n got %v\nwant %s", c.name, format, err, c.want)
			}
		}
	}
}

// Texts that make some readers slow, huge or crash. Each must end in an error,
// and none may need more than the test's time.
func TestHostileTexts(t *testing.T) {
	bomb := "a: &a [x,x,x,x,x,x,x,x,x]\n"
	for c := 'b'; c <= 'i'; c++ {
		bomb += string(c) + ": &" + string(c) + " [" + strings.Repeat("*"+string(c-1)+",", 8) + "*" + string(c-1) + "]\n"
	}
	const (
		deep = "found more than 64 levels of lists and objects inside each other; that is the limit"
		many = "found more than 200,000 values; that is the limit"
	)
	for _, c := range []struct {
		name string
		read reader
		in   string
		want string
	}{
		{"alias bomb", ReadYAML, bomb, "job:1:4: found the anchor &a; anchors are not read: write the value out wherever it is needed"},
		{"alias of itself", ReadYAML, "a: &a [*a]\n", "job:1:4: found the anchor &a; anchors are not read: write the value out wherever it is needed"},
		{"brackets", ReadYAML, "a: " + strings.Repeat("[", 1_000_000), "job:1:132: " + deep},
		{"braces", ReadYAML, strings.Repeat("{a: ", 1_000_000), "job:1:513: " + deep},
		{"dashes", ReadYAML, "a:\n" + strings.Repeat("- ", 1_000_000), "job:2:257: " + deep},
		{"question marks", ReadYAML, strings.Repeat("? ", 1_000_000), "job:1:257: " + deep},
		{"empty lists", ReadYAML, "a: [" + strings.Repeat("[],", 250_000) + "]", "job:1:599999: " + many},
		{"commas", ReadYAML, "a: [" + strings.Repeat("x,", 250_000) + "]", "job:1:400001: " + many},
		{"keys in braces", ReadYAML, "a: {" + strings.Repeat("é,", 250_000) + "}", "job:1:400002: " + many},
		{"items", ReadYAML, "a:\n" + strings.Repeat("-\n", 250_000), "job:200000:2: " + many},
		{"brackets", ReadJSON, `{"a":` + strings.Repeat("[", 1_000_000), "job:1:69: " + deep},
		{"braces", ReadJSON, strings.Repeat(`{"a":`, 800_000), "job:1:321: " + deep},
		{"empty lists", ReadJSON, `{"a":[` + strings.Repeat("[],", 250_000) + "]}", "job:1:600001: " + many},
		{"a number of a million digits", ReadJSON, `{"a":` + strings.Repeat("1", 1_000_000) + "}", "job:1:6: found a number of 1,000,000 characters; at most 64 are read"},
		{"a huge exponent", ReadJSON, `{"a":1e999999999}`, "job:1:6: found 1e999999999, which is beyond the largest number that is read, about 1.8e308"},
	} {
		_, err := c.read("job", []byte(c.in), Limits{})
		if err == nil || err.Error() != c.want {
			t.Errorf("%s:\n got %.200v\nwant %s", c.name, err, c.want)
		}
	}
}

// The parser is stopped while it builds the tree, not after.
func TestParserGuard(t *testing.T) {
	g := parserGuard{limits: Limits{Depth: 2, Nodes: 3}}
	for i, c := range []struct {
		depth int
		want  error
	}{{1, nil}, {4, nil}, {5, errTooDeep}, {1, errTooMany}} {
		if err := g.CheckDepth(c.depth, nil); !errors.Is(err, c.want) {
			t.Errorf("call %d: got %v, want %v", i, err, c.want)
		}
	}
}
