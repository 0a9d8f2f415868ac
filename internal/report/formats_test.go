package report

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/finding"
)

var update = flag.Bool("update", false, "write the expected reports in testdata")

func render(t *testing.T, write Writer, r finding.Report, o Options) string {
	t.Helper()
	var b bytes.Buffer
	if err := write(&b, r, o); err != nil {
		t.Fatal(err)
	}
	return b.String()
}

// optionSets are all combinations that readers can ask for.
func optionSets() []Options {
	var sets []Options
	for _, width := range []int{0, 20, 40, 80, 120} {
		for _, colour := range []bool{false, true} {
			for _, all := range []bool{false, true} {
				sets = append(sets, Options{width, colour, all})
			}
		}
	}
	return sets
}

func TestExpectedReports(t *testing.T) {
	written := map[string]bool{}
	for _, s := range samples() {
		for _, f := range Formats() {
			if f.Name == "html" {
				continue // looked at in html_test.go and, as people see it, in browser_test.go
			}
			for _, all := range []bool{false, true} {
				name := s.name + "." + f.Name
				if all {
					name = s.name + ".all." + f.Name
				}
				written[name] = true
				got := render(t, f.Write, s.report, Options{Width: 80, All: all})
				got = strings.ReplaceAll(got, "\r\n", "\n") // as a checkout has it; csv_test.go looks at line ends
				path := filepath.Join("testdata", name)
				if *update {
					if err := os.WriteFile(path, []byte(got), 0o644); err != nil {
						t.Fatal(err)
					}
				}
				want, err := os.ReadFile(path)
				if err != nil {
					t.Errorf("%v: run go test ./internal/report -update and read what it wrote", err)
				} else if diff := cmp.Diff(string(want), got); diff != "" {
					t.Errorf("%s (-want +got):\n%s", path, diff)
				}
			}
		}
	}
	entries, err := os.ReadDir("testdata")
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if !e.IsDir() && !written[e.Name()] {
			t.Errorf("testdata/%s: no sample and format gives this: delete it", e.Name())
		}
	}
}

// listsMet are the formats that list what is met without being asked to.
var listsMet = map[string]bool{"html": true, "junit": true}

// Whatever a format shows is in the saved JSON report, so every format can be
// made from it later. Formats that list what is met need a report saved with it.
func TestEveryFormatFromTheSavedReport(t *testing.T) {
	for _, s := range samples() {
		for _, savedAll := range []bool{false, true} {
			saved, err := Read(strings.NewReader(render(t, JSON, s.report, Options{All: savedAll})))
			if err != nil {
				t.Fatalf("%s: %v", s.name, err)
			}
			for _, f := range Formats() {
				for _, o := range optionSets() {
					if !savedAll && (o.All || listsMet[f.Name]) {
						continue // what was not saved cannot be shown
					}
					direct, later := render(t, f.Write, s.report, o), render(t, f.Write, saved, o)
					if direct != later {
						t.Errorf("%s as %s with %+v (-direct +later):\n%s", s.name, f.Name, o, cmp.Diff(direct, later))
					}
				}
			}
		}
	}
}

func TestSameReportSameBytes(t *testing.T) {
	for _, s := range samples() {
		for _, f := range Formats() {
			for _, o := range optionSets() {
				first := render(t, f.Write, s.report, o)
				for range 3 {
					if again := render(t, f.Write, s.report, o); again != first {
						t.Fatalf("%s as %s with %+v (-first +again):\n%s", s.name, f.Name, o, cmp.Diff(first, again))
					}
				}
			}
		}
	}
}

func TestWritersLeaveTheReportAsItIs(t *testing.T) {
	untouched := samples()
	for i, s := range samples() {
		for _, f := range Formats() {
			for _, o := range optionSets() {
				render(t, f.Write, s.report, o)
			}
			if diff := cmp.Diff(untouched[i].report, s.report); diff != "" {
				t.Errorf("%s changed by %s (-before +after):\n%s", s.name, f.Name, diff)
			}
		}
	}
}

// Every report must show by what and on what it was made, and what it is worth.
func TestEveryFormatStatesItsOriginAndItsEnd(t *testing.T) {
	for _, f := range Formats() {
		for _, s := range samples() {
			got := render(t, f.Write, s.report, Options{})
			wanted := []string{s.report.Notice, s.report.Rulebook.Digest, s.report.Stopped}
			for _, j := range s.report.Jobs {
				wanted = append(append(wanted, j.SHA256), j.Profiles...)
			}
			if len(s.report.Jobs) == 0 {
				wanted = append(wanted, s.report.Rulebook.Profiles...)
			}
			for _, want := range wanted {
				if !strings.Contains(got, want) {
					t.Errorf("%s as %s does not state %q", s.name, f.Name, want)
				}
			}
		}
	}
}

var errFull = errors.New("no space left")

// fullDisk takes so many bytes and no more.
type fullDisk int

func (d *fullDisk) Write(p []byte) (int, error) {
	if len(p) > int(*d) {
		n := int(*d)
		*d = 0
		return n, errFull
	}
	*d -= fullDisk(len(p))
	return len(p), nil
}

func TestWritersTellWhenTheyCannotWrite(t *testing.T) {
	for _, f := range Formats() {
		whole := len(render(t, f.Write, several(), Options{}))
		for _, room := range []int{0, 100, whole - 1} {
			disk := fullDisk(room)
			if err := f.Write(&disk, several(), Options{}); !errors.Is(err, errFull) {
				t.Errorf("%s with room for %d of %d bytes: got %v, want %v", f.Name, room, whole, err, errFull)
			}
		}
	}
}

func TestNamed(t *testing.T) {
	for _, f := range Formats() {
		write, err := Named(f.Name)
		if err != nil {
			t.Fatal(err)
		}
		if got, want := render(t, write, several(), Options{}), render(t, f.Write, several(), Options{}); got != want {
			t.Errorf("Named(%q) writes something else than the format of that name", f.Name)
		}
	}
	_, err := Named("papyrus")
	for _, want := range []string{`"papyrus"`, "text", "json"} {
		if !strings.Contains(fmt.Sprint(err), want) {
			t.Errorf("got %v, want an error that names %s", err, want)
		}
	}
}
