package validate

import (
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestDistance(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"", "", 0},
		{"pipe", "pipe", 0},
		{"pipe", "pip", 1},
		{"pipe", "piper", 1},
		{"pipe", "pike", 1},
		{"pipe", "ippe", 1},
		{"über", "uber", 1},
		{"kitten", "sitting", 3},
		{"ca", "abc", 3}, // no letter may be moved twice
		{"abcdef", "ghijkl", 4},
		{"", "abcdef", 4},
	} {
		if got := distance(c.a, c.b, 3); got != c.want {
			t.Errorf("%q to %q: got %d, want %d", c.a, c.b, got, c.want)
		}
		if got := distance(c.b, c.a, 3); got != c.want {
			t.Errorf("%q to %q: got %d, want %d", c.b, c.a, got, c.want)
		}
	}
}

func TestNearest(t *testing.T) {
	names := []string{"height_above_grade", "height_above_eave", "height_above_roof", "guard", "x", "y", "z", "id", "win-1", "win-2"}
	for _, c := range []struct {
		word string
		want []string
	}{
		{"heightAboveGrade", []string{"height_above_grade"}},
		{"height above eaves", []string{"height_above_eave"}},
		{"height_abvoe_rof", []string{"height_above_roof"}},
		{"guards", []string{"guard"}},
		{"a", []string{"x", "y", "z"}},
		{"ID", []string{"id"}},
		{"win-3", []string{"win-1", "win-2"}},
		{"win1", []string{"win-1"}},
		{"fan", nil},
		{"", []string{"x", "y", "z"}},
		{strings.Repeat("height", 100), nil},
	} {
		if diff := cmp.Diff(c.want, nearest(c.word, names)); diff != "" {
			t.Errorf("%q (-want +got)\n%s", c.word, diff)
		}
	}
	var many []string
	for i := range mostCandidates {
		many = append(many, fmt.Sprintf("segment-%d", i))
	}
	if got := nearest("segment-xx", many); got != nil {
		t.Errorf("more than three are as near, got %q", got)
	}
	if got := nearest("last-on", append(many, "last-one")); got != nil {
		t.Errorf("names beyond the first %d are not compared, got %q", mostCandidates, got)
	}
}

func TestJoining(t *testing.T) {
	words := strings.Fields("a b c d e f g h i j k l m n")
	for _, c := range []struct{ got, want string }{
		{both(words[:1]), "a"},
		{both(words[:2]), "a and b"},
		{either(words[:3]), "a, b or c"},
		{some(words[:12]), "a, b, c, d, e, f, g, h, i, j, k and l"},
		{some(words), "a, b, c, d, e, f, g, h, i, j, k and 3 more"},
		{quote("tab\there"), `"tab\there"`},
		{quote(strings.Repeat("ä", 41)), `"` + strings.Repeat("ä", 40) + `…"`},
	} {
		if c.got != c.want {
			t.Errorf("got %s, want %s", c.got, c.want)
		}
	}
}
