package archive

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"
)

// broken is a stream as it comes out of other programs: a byte order mark, both
// kinds of line end, blank lines, lines that are no record, a line over the
// limit, and no line end at the end.
func broken() string {
	return "\ufeff{\"job\":1}\r\n" + // 1
		"\r\n" +
		"   \t\n" +
		"{\"job\":\n" + // 4: no record
		"{\"job\":2}\n" +
		"not json\r\n" + // 6: no record
		"{\"long\":\"" + strings.Repeat("x", 17<<20) + "\"}\n" + // 7: over the limit
		"{\"wide\":\"" + strings.Repeat("y", 1<<20) + "\"}\n" + // 8: long, but a record
		"[1]\n" + // 9: no record
		"{\"job\":\"\xff\"}\n" + // 10: no UTF-8
		"{\"job\":3}"
}

var brokenWant = []string{"ok", "bad 4", "ok", "bad 6", "bad 7", "ok", "bad 9", "bad 10", "ok"}

func TestBrokenLinesStopNothing(t *testing.T) {
	folder := t.TempDir()
	for _, name := range []string{"a.ndjson", "a.jsonl", "a.txt"} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(broken()), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	at := func(name string) []string { return []string{filepath.Join(folder, name)} }
	for how, sources := range map[string]func(func(Source, error) bool){
		"named .ndjson":     Sources(at("a.ndjson"), nil, IsRecord),
		"named .jsonl":      Sources(at("a.jsonl"), nil, IsRecord),
		"in a folder":       Sources([]string{folder}, nil, IsRecord),
		"called lines":      Lines(at("a.txt"), nil),
		"on standard input": Lines([]string{"-"}, strings.NewReader(broken())),
	} {
		var got []string
		for s, err := range sources {
			if err != nil {
				t.Fatalf("%s: %v", how, err)
			}
			if _, bad := s.Read(); bad != nil {
				got = append(got, fmt.Sprintf("bad %d", bad.Line))
			} else {
				got = append(got, "ok")
			}
		}
		if !slices.Equal(got, brokenWant) {
			t.Errorf("%s:\n got %q\nwant %q", how, got, brokenWant)
		}
	}
}

func TestLinesOfWhatIsNotThere(t *testing.T) {
	folder := t.TempDir()
	var got []string
	for s, err := range Lines([]string{filepath.Join(folder, "none"), folder, "-"}, strings.NewReader("{}")) {
		if err == nil {
			if _, bad := s.Read(); bad != nil {
				err = fmt.Errorf("%s", bad.Message)
			}
		}
		got = append(got, fmt.Sprint(filepath.Base(s.Name), " ", err != nil))
	}
	if want := []string{"none true", filepath.Base(folder) + " true", "- false"}; !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}

// The count is what the walk will list, or not known.
func TestCount(t *testing.T) {
	folder := t.TempDir()
	for name, text := range map[string]string{
		"a.yaml": "", "b.ndjson": broken(), "c.txt": "{}\n{}\n", "d.jsonl": "{}\n", "e.report.json": "", "sub/f.yml": "",
		".hidden/g.yaml": "", "empty.ndjson": "\n\n",
	} {
		path := filepath.Join(folder, name)
		if err := os.MkdirAll(filepath.Dir(path), 0o750); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(path, []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	in := func(names ...string) []string {
		for i, name := range names {
			names[i] = filepath.Join(folder, name)
		}
		return names
	}
	for _, paths := range [][]string{in("."), in("a.yaml", "sub"), in("b.ndjson"), in("d.jsonl", "empty.ndjson"), in(".hidden")} {
		listed := 0
		for s, err := range Sources(paths, nil, IsRecord) {
			if err != nil {
				t.Errorf("%s: %v", s.Name, err)
			}
			listed++
		}
		if n, known := Count(paths, false, IsRecord); n != listed || !known {
			t.Errorf("%q: counted %d (%t), listed %d", paths, n, known, listed)
		}
	}
	if n, known := Count(in("c.txt", "d.jsonl"), true, IsRecord); n != 3 || !known {
		t.Errorf("lines: %d (%t)", n, known)
	}
	for _, paths := range [][]string{{"-"}, in("a.yaml", "none"), {os.DevNull + ".none"}} {
		if n, known := Count(paths, false, IsRecord); known {
			t.Errorf("%q: %d is said to be known", paths, n)
		}
	}
	if n, known := Count([]string{os.DevNull}, true, IsRecord); known {
		t.Errorf("a device: %d is said to be known", n)
	}
}
