package report

import (
	"regexp"
	"strings"
	"testing"
	"unicode"

	"github.com/google/go-cmp/cmp"

	"github.com/slablint/slablint/internal/finding"
)

var colour = regexp.MustCompile("\x1b\\[[0-9;]*m")

// Colour only repeats what the words say.
func TestColourIsOnlyAddedToTheText(t *testing.T) {
	coloured := 0
	for _, s := range samples() {
		for _, o := range optionSets() {
			o.Colour = false
			without := render(t, Text, s.report, o)
			o.Colour = true
			with := render(t, Text, s.report, o)
			if diff := cmp.Diff(without, colour.ReplaceAllString(with, "")); diff != "" {
				t.Errorf("%s with %+v (-without colour +with it taken off):\n%s", s.name, o, diff)
			}
			if with != without {
				coloured++
			}
		}
	}
	if coloured == 0 {
		t.Error("no sample showed any colour")
	}
}

// Nothing in a record or a file name reaches the terminal as a command. ECMA-48
// keeps its control functions in C0 and C1 (5.2, 5.3), which are the category
// Cc of Unicode; Cf holds what reorders or hides text.
func TestNoControlCharactersWithoutColour(t *testing.T) {
	for _, s := range samples() {
		for _, o := range optionSets() {
			o.Colour = false
			for line := range strings.Lines(render(t, Text, s.report, o) + render(t, JSON, s.report, o)) {
				for _, r := range strings.TrimSuffix(line, "\n") {
					if unicode.Is(unicode.Cc, r) || unicode.In(r, unicode.Zl, unicode.Zp) || unicode.Is(unicode.Cf, r) && r != '\u200d' {
						t.Errorf("%s with %+v: %U in %q", s.name, o, r, line)
					}
				}
			}
		}
	}
}

// leads are what a line can begin with before the first word that may have to
// overflow it.
var leads = regexp.MustCompile(`^(?:-- |  \* | *(?:(?:measured|limit|missing|reason|wanted|found|why|source|sha256|rulebook|remedy) +)?)`)

func TestLinesFitThePage(t *testing.T) {
	for _, s := range samples() {
		for _, o := range optionSets() {
			if o.Width == 0 || o.Colour {
				continue
			}
			for line := range strings.Lines(render(t, Text, s.report, o)) {
				line = strings.TrimSuffix(line, "\n")
				rest := strings.TrimPrefix(line, leads.FindString(line))
				if columns(line) > o.Width && strings.Contains(rest, " ") {
					t.Errorf("%s at width %d: %d columns and could be broken: %q", s.name, o.Width, columns(line), line)
				}
				if strings.TrimRight(line, " ") != line {
					t.Errorf("%s at width %d: blanks at the end of %q", s.name, o.Width, line)
				}
			}
		}
	}
}

// At the usual width nothing in an ordinary record needs to stick out.
func TestOrdinaryReportsFitInEightyColumns(t *testing.T) {
	for _, s := range samples() {
		if s.name == "hostile" {
			continue
		}
		for line := range strings.Lines(render(t, Text, s.report, Options{Width: 80, All: true})) {
			if n := columns(strings.TrimSuffix(line, "\n")); n > 80 {
				t.Errorf("%s: %d columns: %q", s.name, n, line)
			}
		}
	}
}

func TestUnwrappedFindingsAreOneLine(t *testing.T) {
	got := render(t, Text, reportOf(heldJob()), Options{})
	for _, want := range []string{
		"\njobs/held.yaml:88:7: deficient hazard  exhaust.clearance_to_openings [sys-1/win-2]\n",
		"\n    why      What the fan takes from under the slab comes back in through an open window, into the room where somebody sleeps.\n",
	} {
		if !strings.Contains(got, want) {
			t.Errorf("no line %q in:\n%s", want, got)
		}
	}
}

// The last line is the one that matters.
func TestLastLine(t *testing.T) {
	unknown := readyJob()
	unknown.Outcome = ""
	for _, c := range []struct {
		name   string
		report finding.Report
		want   string
	}{
		{"ready", reportOf(readyJob()), "ready (2 met)"},
		{"noted", reportOf(notedJob()), "ready (2 met, 2 noted)"},
		{"not due", reportOf(earlyJob()), "ready (1 met)"},
		{"held", reportOf(heldJob()), "hold: 8 open (5 deficient, 2 unrecorded, 1 undetermined)"},
		{"no outcome", reportOf(unknown), "hold: 0 open"},
		{"several", several(), "3 jobs: 2 ready, 1 on hold, 2 errors"},
		{"two", reportOf(readyJob(), readyJob()), "2 jobs: 2 ready, 0 on hold, 0 errors"},
		{"errors", errorsOnly(), "nothing judged: 2 errors"},
		{"nothing", reportOf(), "nothing judged: no record was found"},
	} {
		for _, all := range []bool{false, true} {
			lines := strings.Split(strings.TrimSuffix(render(t, Text, c.report, Options{Width: 80, All: all}), "\n"), "\n")
			if got := lines[len(lines)-1]; got != c.want {
				t.Errorf("%s, all %v: got %q, want %q", c.name, all, got, c.want)
			}
		}
	}
}

// One job and one broken file: neither may hide the other.
func TestOneJobAndOneError(t *testing.T) {
	r := reportOf(readyJob())
	r.Errors = errorsOnly().Errors[:1]
	got := render(t, Text, r, Options{Width: 80})
	for _, want := range []string{"\nready (2 met)\n", "\njobs/broken.yaml:12:3: the key", "\n1 job: 1 ready, 0 on hold, 1 error\n"} {
		if !strings.Contains(got, want) {
			t.Errorf("no %q in:\n%s", want, got)
		}
	}
}

// Ten pipes without a label have one remedy, but each its own place.
func TestTheSameIsExplainedOnce(t *testing.T) {
	one, two, other := tooClose(), tooClose(), tooClose()
	two.Subject, two.At.Line = "sys-1/win-9", 91
	other.Subject, other.At.Line, other.Source = "sys-1/door-1", 92, invented("4.3")
	job := heldJob()
	job.Findings = []finding.Finding{one, two, other}
	job.Digest = inventedDigest
	got := render(t, Text, reportOf(job, job), Options{})
	for _, c := range []struct {
		text string
		want int // in both jobs together
	}{
		{"\n    wanted   ", 6}, {"\n    why      ", 4}, {"\n    source   ", 4}, {"\n    remedy   ", 4},
		{"\n    (the rest as above)\n", 2},
		{"\n    measured ", 6}, {"\njobs/held.yaml:91:7: deficient", 2},
		{ladders, 1}, {attic, 1}, {"\n  * 2 cautions of those above\n", 1},
		{inventedDigest, 1},
	} {
		if n := strings.Count(got, c.text); n != c.want {
			t.Errorf("%q stands there %d times, want %d, in:\n%s", c.text, n, c.want, got)
		}
	}
}

// When all is well there are three lines about the job, whatever it took.
func TestQuietWhenAllIsWell(t *testing.T) {
	got := render(t, Text, reportOf(doneJob()), Options{Width: 80})
	want := "jobs/done.yaml: job J-0106, stage closeout, profiles invented-base\n" +
		"    sha256 " + doneJob().SHA256 + "\n" +
		"    1 caution (shown with --all)\n"
	if about, _, _ := strings.Cut(got, "rulebook"); about != want {
		t.Errorf("got\n%swant\n%s", about, want)
	}
	// Before the work is done, nobody should have to ask for them.
	working := doneJob()
	working.Stage = finding.Running
	for name, got := range map[string]string{
		"all":     render(t, Text, reportOf(doneJob()), Options{All: true}),
		"running": render(t, Text, reportOf(working), Options{}),
	} {
		if !strings.Contains(got, "\n  * "+ladders+"\n") {
			t.Errorf("%s: no caution in:\n%s", name, got)
		}
	}
}

func TestSays(t *testing.T) {
	for _, c := range []struct {
		text, phrase string
		want         bool
	}{
		{"Recorded width: 8 ft; called for: 10 ft.", "8 ft", true},
		{"Recorded width: 8 ft; called for: 10 ft.", "10 ft", true},
		{"Recorded width: 8 ft; called for: 10 ft.", "0 ft", false},
		{"110 ft, then 10 ft", "10 ft", true},
		{"0.8 in", "8 in", false},
		{"8 inches", "8 in", false},
		{"-8 Pa", "8 Pa", false},
		{"8 ft", "", true},
		{"", "8 ft", false},
		{"éé", "é", false},
	} {
		if got := says(c.text, c.phrase); got != c.want {
			t.Errorf("says(%q, %q) = %v, want %v", c.text, c.phrase, got, c.want)
		}
	}
}

func TestTopicsComeInTheOrderOfTheWork(t *testing.T) {
	var findings []finding.Finding
	for _, name := range []string{"zeal.a", "safety.a", "exhaust.b", "sealing.a", "apple_pie.a", "exhaust.a", "survey.a", "naked", ""} {
		findings = append(findings, finding.Finding{Requirement: name})
	}
	var got []string
	for _, g := range byTopic(findings) {
		line := g.title + ":"
		for _, f := range g.findings {
			line += " " + f.Requirement
		}
		got = append(got, line)
	}
	want := []string{
		"Survey: survey.a", "Sealing: sealing.a", "Exhaust: exhaust.b exhaust.a", "Safety: safety.a",
		"Other: ", "Apple pie: apple_pie.a", "Naked: naked", "Zeal: zeal.a",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
}

// The examples are those of Unicode Standard Annex #11 (wide: ideographs, kana,
// Hangul syllables, fullwidth forms) and #29 (marks join what they stand on).
func TestColumns(t *testing.T) {
	for text, want := range map[string]int{
		"": 0, "ready": 5, "près": 4, "pre\u0300s": 4, "窓": 2, "カナ": 4, "한": 2, "Ａ": 2, "10\u00a0ft": 5, "👷": 2, "±": 1,
	} {
		if got := columns(text); got != want {
			t.Errorf("columns(%q) = %d, want %d", text, got, want)
		}
	}
}

func TestVisible(t *testing.T) {
	for text, want := range map[string]string{
		"plain 'text' \"quoted\" \\": "plain 'text' \"quoted\" \\",
		"\x1b[2J":                    `\x1b[2J`,
		"a\nb\tc\rd\x00\x7f":         `a\nb\tc\rd\x00\x7f`,
		"\u009b31m":                  `\u009b31m`,
		"\u202egnol\u202c":           `\u202egnol\u202c`,
		"\u2028\ufeff\u200b":         `\u2028\ufeff\u200b`,
		"été 窓 👷 10\u00a0ft":         "été 窓 👷 10\u00a0ft",
		"नमस्\u200dते":               "नमस्\u200dते",
		"\xff":                       "\ufffd",
	} {
		if got := visible(text); got != want {
			t.Errorf("visible(%q) = %q, want %q", text, got, want)
		}
	}
}
