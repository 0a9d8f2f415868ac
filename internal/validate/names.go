package validate

import (
	"fmt"
	"strconv"
	"strings"
)

// mostCandidates bounds how many names are compared with a misspelt one.
const mostCandidates = 2000

// nearest gives the names that a misspelt word most likely stands for, in the
// order given: none if none is near, and none if more than three are equally so.
func nearest(word string, names []string) []string {
	word = fold(word)
	best := tolerance(word)
	var found []string
	for _, name := range names[:min(len(names), mostCandidates)] {
		switch d := distance(word, fold(name), best); {
		case d < best || d == best && found == nil:
			best, found = d, []string{name}
		case d == best:
			found = append(found, name)
		}
	}
	if len(found) > 3 {
		return nil
	}
	return found
}

// fold leaves out what people write differently: case and what parts words.
func fold(name string) string {
	return strings.Map(func(r rune) rune {
		if r == '_' || r == '-' || r == ' ' || r == '.' {
			return -1
		}
		return r
	}, strings.ToLower(name))
}

// tolerance is how many slips a word of that length may have to be recognised.
func tolerance(folded string) int {
	switch n := len(folded); {
	case n < 6:
		return 1
	case n < 10:
		return 2
	}
	return 3
}

// distance counts the letters added, left out, changed or swapped with the
// next one between two words (optimal string alignment). Beyond limit it gives
// limit+1.
func distance(a, b string, limit int) int {
	x, y := []rune(a), []rune(b)
	if len(x)-len(y) > limit || len(y)-len(x) > limit {
		return limit + 1
	}
	before, last, row := make([]int, len(y)+1), make([]int, len(y)+1), make([]int, len(y)+1)
	for j := range last {
		last[j] = j
	}
	for i := range x {
		row[0] = i + 1
		least := row[0]
		for j := range y {
			cost := 1
			if x[i] == y[j] {
				cost = 0
			}
			row[j+1] = min(last[j]+cost, last[j+1]+1, row[j]+1)
			if i > 0 && j > 0 && x[i] == y[j-1] && x[i-1] == y[j] {
				row[j+1] = min(row[j+1], before[j-1]+1)
			}
			least = min(least, row[j+1])
		}
		if least > limit {
			return limit + 1
		}
		before, last, row = last, row, before
	}
	return min(last[len(y)], limit+1)
}

// either joins words: a, b or c.
func either(words []string) string { return join(words, " or ") }

// both joins words: a, b and c.
func both(words []string) string { return join(words, " and ") }

func join(words []string, last string) string {
	if len(words) < 2 {
		return strings.Join(words, "")
	}
	n := len(words) - 1
	return strings.Join(words[:n], ", ") + last + words[n]
}

// some is like both, but counts what is beyond a dozen.
func some(words []string) string {
	const most = 12
	if len(words) <= most {
		return both(words)
	}
	return fmt.Sprintf("%s and %d more", strings.Join(words[:most-1], ", "), len(words)-most+1)
}

func quoted(words []string) []string {
	out := make([]string, len(words))
	for i, w := range words {
		out[i] = quote(w)
	}
	return out
}

// quote prints a text of the record so that it cannot disturb a terminal, and
// shortens it.
func quote(text string) string {
	const longest = 40 // runes
	n := 0
	for i := range text {
		if n == longest {
			return strconv.Quote(text[:i] + "…")
		}
		n++
	}
	return strconv.Quote(text)
}
