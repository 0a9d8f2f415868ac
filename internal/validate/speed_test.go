package validate

import (
	"fmt"
	"os"
	"strings"
	"testing"
	"time"

	"github.com/slablint/slablint/schema"
)

// A file that is wrong everywhere must not keep the program busy. Without
// bounds each of these takes minutes; the limit here is far above what they
// take, because machines differ.
func TestHostileRecordsTakeLittleTime(t *testing.T) {
	v := newForTest(t)
	const job = `{"job": {"id": "J", "stage": "planned", "profiles": ["p"]}, `
	many := func(n int, format string) string {
		var b strings.Builder
		for i := range n {
			if i > 0 {
				b.WriteString(",\n")
			}
			fmt.Fprintf(&b, format, i)
		}
		return b.String()
	}
	for _, c := range []struct{ name, text string }{
		{"unknown fields", job + many(60_000, `"height_above_grade_%d": 1`) + "}"},
		{"unknown references", job + `"house": {"foundations": [` + many(40_000, `{"id": "foundation-area-with-a-long-name-%d"}`) + `]},` +
			`"evidence": [{"id": "e", "shows": [` + many(40_000, `"foundation-area-with-a-long-mane-%d"`) + `]}]}`},
		{"one id", job + `"evidence": [` + many(30_000, `{"id": "e"}, {"id": "x%d", "shows": ["e"]}`) + "]}"},
		{"entries without an id", job + `"systems": [` + many(15_000, `{"id": "s%d", "pipe": [{"flows_into": "nothing"}]}`) + "]}"},
		{"long texts", job + `"evidence": [` + many(20, `{"id": "e%d", "shows": ["`+strings.Repeat("x", 100_000)+`"], "`+strings.Repeat("y", 100_000)+`": 1}`) + "]}"},
	} {
		t.Run(c.name, func(t *testing.T) {
			doc := readJSON(t, []byte(c.text))
			start := time.Now()
			found := v.Check(doc)
			if took := time.Since(start); took > 20*time.Second {
				t.Errorf("took %v", took)
			}
			if len(found) == 0 || len(found) > mostErrors+1 {
				t.Errorf("got %d errors", len(found))
			}
			for _, e := range found {
				if len(e.Message) > 2000 {
					t.Errorf("a message of %d bytes", len(e.Message))
				}
			}
		})
	}
}

func BenchmarkNew(b *testing.B) {
	for b.Loop() {
		newForTest(b)
	}
}

func BenchmarkCompile(b *testing.B) {
	b.Run("published", func(b *testing.B) {
		for b.Loop() {
			if _, err := compile(schema.Job()); err != nil {
				b.Fatal(err)
			}
		}
	})
	b.Run("draft7", func(b *testing.B) {
		for b.Loop() {
			if _, err := compileAsDraft7(schema.Job()); err != nil {
				b.Fatal(err)
			}
		}
	})
}

func BenchmarkCheck(b *testing.B) {
	v := newForTest(b)
	full, err := os.ReadFile("testdata/full.json")
	if err != nil {
		b.Fatal(err)
	}
	for _, c := range []struct{ name, text string }{
		{"valid", string(full)},
		{"one mistake", strings.Replace(string(full), `"stage": "closeout"`, `"stage": "done"`, 1)},
	} {
		doc := readJSON(b, []byte(c.text))
		v.Check(doc)
		b.Run(c.name, func(b *testing.B) {
			b.ReportAllocs()
			for b.Loop() {
				v.Check(doc)
			}
		})
		b.Run(c.name+", library alone", func(b *testing.B) {
			library, err := v.library()
			if err != nil {
				b.Fatal(err)
			}
			b.ReportAllocs()
			for b.Loop() {
				if _, err := leaves(library, plain(doc.Root, v.root)); err != nil {
					b.Fatal(err)
				}
			}
		})
	}
}
