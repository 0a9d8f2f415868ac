package derive_test

import (
	"encoding/json"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"sync"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
	"github.com/slablint/slablint/schema"
)

var update = flag.Bool("update", false, "rewrite the expected documents")

// The expected documents are rewritten by go test ./internal/derive -update,
// after their differences were looked at.
func TestDocumentsAreAsExpected(t *testing.T) {
	expected := map[string]string{} // name of the expected document: record
	for _, name := range records[1:] {
		expected[strings.TrimSuffix(filepath.Base(name), ".yaml")] = name
	}
	for _, state := range []string{"ready", "faulty"} {
		jobs, err := filepath.Glob("../../fixtures/*/" + state + ".yaml")
		if err != nil || len(jobs) == 0 {
			t.Fatalf("no %s jobs: %v", state, err)
		}
		for _, name := range jobs {
			expected[filepath.Base(filepath.Dir(name))+"-"+state] = name
		}
	}
	for as, name := range expected {
		input := load(t, name)
		got := asJSON(t, document(input, os.DirFS(filepath.Dir(name))))
		path := filepath.Join("testdata", as+".json")
		if *update {
			if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
				t.Fatal(err)
			}
		}
		want, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		if diff := cmp.Diff(string(want), got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

func TestDocumentsKeepTheSchema(t *testing.T) {
	for _, name := range records {
		keepsSchema(t, document(load(t, name), os.DirFS(filepath.Dir(name))))
	}
	keepsSchema(t, document(nil, nil))
	keepsSchema(t, document(map[string]any{}, nil))
}

// Every recorded thing has its entry, in the order of the record, whether or
// not anything could be worked out, so that no requirement misses a subject.
func TestEverySubjectIsThere(t *testing.T) {
	lists := map[string][]place.Pointer{
		"systems": {"/systems"}, "segments": {"/systems", "/pipe"}, "suction_points": {"/systems", "/suction_points"},
		"communication": {"/diagnostics/communication_tests"}, "holes": {"/diagnostics/communication_tests", "/holes"},
		"tests": {"/measurements/tests"}, "spikes": {"/measurements/spikes"}, "crew": {"/job/crew"}, "evidence": {"/evidence"},
		"appliances": {"/diagnostics/backdraft_tests"},
	}
	for _, name := range records {
		input := load(t, name)
		derived := document(input, nil)
		for list, path := range lists {
			places := []string{}
			for _, at := range elements(input, path[0]) {
				if len(path) == 1 {
					places = append(places, string(at))
					continue
				}
				for _, inner := range elements(input, at+path[1]) {
					places = append(places, string(inner))
				}
			}
			got := []string{}
			for _, e := range derived[list].([]any) {
				got = append(got, e.(map[string]any)["at"].(string))
			}
			if diff := cmp.Diff(places, got); diff != "" {
				t.Errorf("%s, %s (-record +derived):\n%s", name, list, diff)
			}
		}
	}
}

func elements(input map[string]any, at place.Pointer) []place.Pointer {
	found, _ := record.At(input, at)
	list, _ := found.([]any)
	out := make([]place.Pointer, len(list))
	for i := range list {
		out[i] = at.Append(i)
	}
	return out
}

// The same record gives the same bytes, also from many goroutines at once, and
// is not changed.
func TestSameRecordSameBytes(t *testing.T) {
	for _, name := range records {
		input := load(t, name)
		before := asJSON(t, input)
		want := asJSON(t, document(input, nil))
		var wg sync.WaitGroup
		got := make([]string, 8)
		for i := range got {
			wg.Go(func() { got[i] = asJSON(t, document(input, nil)) })
		}
		wg.Wait()
		for _, g := range got {
			if g != want {
				t.Fatalf("%s: two runs differ:\n%s", name, cmp.Diff(want, g))
			}
		}
		if asJSON(t, input) != before {
			t.Errorf("%s: the record was changed", name)
		}
	}
}

// A record that was read from its JSON form gives the same document.
func TestPlainRecordsGiveTheSame(t *testing.T) {
	for _, name := range records {
		input := load(t, name)
		want, got := document(input, nil), document(record.Plain(input).(map[string]any), nil)
		if diff := cmp.Diff(want, got); diff != "" {
			t.Errorf("%s (-typed +plain):\n%s", name, diff)
		}
	}
}

// A value is known or not, never both, and says why in the terms of the schema.
func TestValuesSayWhatTheyAre(t *testing.T) {
	for _, name := range records {
		input := load(t, name)
		derived := document(input, nil)
		listed := map[string]bool{}
		for _, a := range derived["assumptions"].([]any) {
			listed[a.(map[string]any)["name"].(string)] = true
		}
		used := map[string]bool{}
		walk(derived, "", func(at place.Pointer, v map[string]any) {
			lacking, unknown := v["undetermined"].([]any)
			if _, known := v["si"]; known == unknown {
				t.Errorf("%s %s is both known and not, or neither: %v", name, at, v)
			}
			for _, p := range lacking {
				_, recorded := record.At(input, place.Pointer(p.(string)))
				if _, refused := v["method"]; recorded && !refused {
					t.Errorf("%s %s lacks %s, which is recorded", name, at, p)
				}
			}
			if unknown && len(lacking) == 0 {
				t.Errorf("%s %s is undetermined for want of nothing", name, at)
			}
			inputs, _ := v["inputs"].([]any)
			for _, p := range inputs {
				if _, recorded := record.At(input, place.Pointer(p.(string))); !recorded {
					t.Errorf("%s %s rests on %s, which is not recorded", name, at, p)
				}
			}
			if method, _ := v["method"].(string); !unknown && method == "" {
				t.Errorf("%s %s has no method", name, at)
			}
			assumed, _ := v["assumed"].([]any)
			for _, a := range assumed {
				used[a.(string)] = true
			}
			if len(inputs)+len(assumed) == 0 && !unknown {
				t.Errorf("%s %s rests on nothing", name, at)
			}
		})
		if diff := cmp.Diff(used, listed); diff != "" {
			t.Errorf("%s: assumptions (-used +listed):\n%s", name, diff)
		}
	}
}

// Every field that the schema of derived values promises is worked out for some
// record: a line added there needs its code here.
func TestEveryFieldOfTheSchemaIsThere(t *testing.T) {
	var promised map[string]any
	if err := json.Unmarshal(schema.Derived(), &promised); err != nil {
		t.Fatal(err)
	}
	seen := map[string]bool{}
	for _, name := range records {
		collect(document(load(t, name), os.DirFS(filepath.Dir(name))), "", seen)
	}
	fields(promised, "", func(at string) {
		if !seen[at] {
			t.Errorf("%s is in no document", at)
		}
	})
}

// fields names every property of a schema, lists left out of the names.
func fields(node map[string]any, at string, each func(string)) {
	if items, ok := node["items"].(map[string]any); ok {
		fields(items, at, each)
	}
	properties, _ := node["properties"].(map[string]any)
	for name, p := range properties {
		each(at + "/" + name)
		fields(p.(map[string]any), at+"/"+name, each)
	}
}

func collect(doc any, at string, seen map[string]bool) {
	switch d := doc.(type) {
	case map[string]any:
		for key, inner := range d {
			seen[at+"/"+key] = true
			collect(inner, at+"/"+key, seen)
		}
	case []any:
		for _, inner := range d {
			collect(inner, at, seen)
		}
	}
}
