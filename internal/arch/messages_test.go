package arch

import (
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"
)

// Whoever is stopped by one of these tests reads its message and nothing else,
// so each says where and what to do.
func TestMessagesSayWhereAndWhatToDo(t *testing.T) {
	dir := t.TempDir()
	source := "package radon\n\nimport (\n\t\"net/http\"\n\n\t\"example.org/m/sub\"\n\n\t\"" + modulePath + "/internal/report\"\n)\n"
	if err := os.WriteFile(filepath.Join(dir, "decay.go"), []byte(source), 0o600); err != nil {
		t.Fatal(err)
	}
	radon := goPackage{
		Dir: dir, ImportPath: modulePath + "/internal/radon", Name: "radon", Doc: "Package radon counts.", GoFiles: []string{"decay.go"},
		Imports: []string{"net/http", "example.org/m/sub", modulePath + "/internal/report"},
	}
	mute, vague := radon, radon
	mute.Doc, vague.Name = "Radon things", "util"
	one := map[string]goPackage{"radon": radon}
	tests := []struct {
		name  string
		found []string
		want  string // a regular expression
	}{
		{"a fine table", orderMistakes([]room{{"place", ""}, {"record", "place"}}), `^$`},
		{"a row against the flow", orderMistakes([]room{{"record", "place"}, {"place", ""}}), `table_test\.go:\d+: the row of record names place.*order the rows`},
		{"two rows", orderMistakes([]room{{"place", ""}, {"place", ""}}), `table_test\.go:\d+: place has two rows: make them one`},
		{"an allowed import", importMistakes(one, []room{{"radon", "report"}}), `^$`},
		{"a forbidden import", importMistakes(one, []room{{"radon", ""}}), `internal/radon/decay\.go:8: radon imports report.*hand it what it needs`},
		{"a stale import", importMistakes(one, []room{{"radon", "report place"}}), `table_test\.go:\d+: radon does not import place any more: strike it`},
		{"a package without a row", importMistakes(one, nil), `internal/radon/decay\.go:1: radon has no row.*add one`},
		{"a row without a package", importMistakes(one, []room{{"radon", "report"}, {"drawing", ""}}), `table_test\.go:\d+: drawing has a row but no package: strike`},
		{"a module in its room", foreignMistakes(one, []foreign{{"example.org/m", "radon", "", "counts"}}), `^$`},
		{"an unknown module", foreignMistakes(one, nil), `internal/radon/decay\.go:6: radon imports example\.org/m/sub: its module has no row.*add one only with`},
		{"a module elsewhere", foreignMistakes(one, []foreign{{"example.org/m", "", "radon", "counts"}}), `decay\.go:6: radon imports example\.org/m/sub, which is kept to "": call that room`},
		{"a module without a reason", foreignMistakes(one, []foreign{{"example.org/m", "radon", "", ""}}), `example\.org/m has no reason: say`},
		{"a stale module", foreignMistakes(one, []foreign{{"example.org/m", "radon derive", "", "counts"}}), `derive does not import example\.org/m any more: strike`},
		{"a module for tests nobody uses", foreignMistakes(one, []foreign{{"example.org/m", "radon", "", "counts"}, {"example.org/n", "", anyTest, "shows"}}), `no test imports example\.org/n any more: strike`},
		{"a restricted package in its room", restrictedMistakes(one, []foreign{{"net/http", "radon", "", "no network"}}), `^$`},
		{"a restricted package", restrictedMistakes(one, []foreign{{"net/http", "", "", "a record never leaves the machine"}}), `internal/radon/decay\.go:4: radon imports net/http: a record never leaves the machine; take`},
		{"a stale restricted package", restrictedMistakes(one, []foreign{{"net", "radon", "", "no network"}}), `table_test\.go:\d+: radon does not import net any more: strike`},
		{"a fine comment", commentMistakes(one), `^$`},
		{"a bare comment", commentMistakes(map[string]goPackage{"radon": mute}), `decay\.go:1: the package comment of radon is "Radon things": begin it "Package radon "`},
		{"a name for nothing", commentMistakes(map[string]goPackage{"util": vague}), `name a package after what it is about`},
		{"an agreed entry", topMistakes(map[string][]byte{"cmd/a.go": nil}, []string{"cmd"}), `^$`},
		{"a new entry", topMistakes(map[string][]byte{"cmd/a.go": nil, "docs/a.md": nil}, []string{"cmd"}), `docs is not an agreed top-level entry: put it`},
		{"a lost entry", topMistakes(nil, []string{"cmd"}), `cmd is missing from the top folder: bring it back`},
		{"a fine file", textMistakes(map[string][]byte{"a.go": []byte("package a\n")}), `^$`},
		{"a path of a machine", textMistakes(map[string][]byte{"a.md": []byte("see\n /" + "home/me/a\n")}), `^a\.md:2: .*make it relative`},
		{"unfinished work", textMistakes(map[string][]byte{"a.rego": []byte("# TO" + "DO\n")}), `^a\.rego:1: .*finish it`},
		{"a skipped test", textMistakes(map[string][]byte{"a_test.go": []byte("\n\nt.Sk" + "ip()\n")}), `^a_test\.go:3: .*make it run or delete it`},
		{"a long file", lengthMistakes(map[string][]byte{"a.go": []byte(strings.Repeat("\n", 401))}, nil), `^a\.go:401: the file has 401 lines: split it`},
		{"a short file that is listed", lengthMistakes(map[string][]byte{"a.go": []byte("\n")}, map[string]string{"a.go": "one table"}), `a\.go is down to 1 lines: strike`},
		{"a listed file that is gone", lengthMistakes(nil, map[string]string{"a.go": "one table"}), `a\.go is listed in longFiles but does not exist: strike`},
	}
	for _, tt := range tests {
		if found := strings.Join(tt.found, "\n"); !regexp.MustCompile(tt.want).MatchString(found) {
			t.Errorf("%s: want %s, found %q", tt.name, tt.want, found)
		}
	}
	if place := rowPlace("rulebook"); !regexp.MustCompile(`table_test\.go:\d+$`).MatchString(place) {
		t.Errorf("the row of rulebook is at %s", place)
	}
}
