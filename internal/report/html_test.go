package report

import (
	"crypto/sha256"
	"encoding/base64"
	"fmt"
	"html"
	"io"
	"math"
	"regexp"
	"strings"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/look"
)

// pages are the reports that the checks of the page go over.
func pages(t testing.TB) map[string]finding.Report {
	t.Helper()
	out := map[string]finding.Report{"big": reportOf(bigJob(t))}
	for _, s := range samples() {
		out[s.name] = s.report
	}
	return out
}

// One file: nothing on the page points anywhere else, and the page itself
// forbids it, whatever a record brings in.
func TestPageNeedsNothingElse(t *testing.T) {
	elsewhere := regexp.MustCompile(`(?i)<(?:link|iframe|object|embed|base|form|audio|video)\b|\ssrc="(?:[^d]|d[^a])|url\(|@import|\shref="[^#]|\son[a-z]+=`)
	for name, r := range pages(t) {
		page := render(t, HTML, r, Options{})
		bare := strings.ReplaceAll(page, "http://www.w3.org/2000/svg", "")
		if at := elsewhere.FindString(bare); at != "" {
			t.Errorf("%s: %q on the page", name, at)
		}
		policy := regexp.MustCompile(`<meta http-equiv="Content-Security-Policy" content="([^"]*)">`).FindStringSubmatch(page)
		if policy == nil || !strings.HasPrefix(html.UnescapeString(policy[1]), "default-src 'none'; ") {
			t.Errorf("%s: the page does not forbid what it does not need", name)
		}
		scripts := regexp.MustCompile(`(?s)<script>(.*?)</script>`).FindAllStringSubmatch(page, -1)
		if strings.Count(strings.ToLower(page), "<script") != len(scripts) || len(scripts) > 1 || (len(scripts) == 1) != (len(r.Jobs) > 1) {
			t.Errorf("%s: %d scripts on a page of %d jobs", name, len(scripts), len(r.Jobs))
		}
		for _, s := range scripts {
			sum := sha256.Sum256([]byte(s[1]))
			if want := "script-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"; !strings.Contains(html.UnescapeString(policy[1]), want) {
				t.Errorf("%s: the policy does not name the script by its digest", name)
			}
		}
	}
}

// Every link leads somewhere, and to one place.
func TestLinksLeadSomewhere(t *testing.T) {
	for name, r := range pages(t) {
		page := render(t, HTML, r, Options{})
		ids := map[string]int{}
		for _, m := range regexp.MustCompile(`\sid="([^"]+)"`).FindAllStringSubmatch(page, -1) {
			ids[m[1]]++
		}
		for id, n := range ids {
			if n > 1 {
				t.Errorf("%s: id %s stands %d times", name, id, n)
			}
		}
		for _, m := range regexp.MustCompile(`\shref="#([^"]+)"`).FindAllStringSubmatch(page, -1) {
			if ids[m[1]] == 0 {
				t.Errorf("%s: a link to #%s, which is nowhere", name, m[1])
			}
		}
	}
}

// Everything that somebody needs to settle a finding is on the page.
func TestPageHoldsTheFindings(t *testing.T) {
	job := heldJob()
	page := render(t, HTML, reportOf(job), Options{})
	for _, f := range job.Findings {
		wanted := []string{f.Title, f.Subject}
		if f.Verdict == finding.Met || f.Verdict == finding.NotApplicable {
			wanted = append(wanted, f.Measured, f.Reason)
		} else {
			wanted = append(wanted, f.Requirement, f.Limit)
			if f.Verdict != finding.Unrecorded {
				wanted = append(wanted, f.Why, f.Remedy, f.Source.String(), f.Reason, f.Profile)
			}
			if f.Measured != "" && f.Limit != "" {
				wanted = append(wanted, f.Measured)
			} else {
				wanted = append(wanted, f.Message)
			}
		}
		for _, want := range wanted {
			if !strings.Contains(page, html.EscapeString(want)) {
				t.Errorf("%s of %s: the page does not say %q", f.Requirement, f.Subject, want)
			}
		}
	}
	for _, want := range []string{"On hold: 8 items to settle", "5 deficient, 2 not recorded, 1 undetermined", job.SHA256, job.Digest, "0.9 inH2O", "Label on the riser", "95 cfm", "where the curves cross", "soil-gas", "Published source", finding.Notice} {
		if !strings.Contains(page, want) {
			t.Errorf("the page does not say %q", want)
		}
	}
}

// What holds the job and can hurt somebody comes first; places that are equally
// bad stand in the order of the work.
func TestWorstPlacesFirst(t *testing.T) {
	f := func(requirement string, grade finding.Grade, holds bool) finding.Finding {
		return finding.Finding{Requirement: requirement, Grade: grade, Holds: holds, Due: true, Verdict: finding.Deficient, Stage: finding.Running}
	}
	groups := htmlGroups([]finding.Finding{
		f("survey.a", finding.Recommended, false), f("sealing.a", finding.Required, true), f("pipe.a", finding.Required, true),
		f("exhaust.a", finding.Hazard, false), f("labels.a", finding.Recommended, false), f("labels.b", finding.Hazard, true),
	})
	worstFirst(groups)
	var got []string
	for _, g := range groups {
		got = append(got, g.Title)
	}
	if want := "Labels, Sealing, Pipe, Exhaust, Survey"; strings.Join(got, ", ") != want {
		t.Errorf("got %s, want %s", strings.Join(got, ", "), want)
	}
}

// Subjects of one requirement share what is said of all of them.
func TestTheSameIsSaidOnceOnThePage(t *testing.T) {
	page := render(t, HTML, reportOf(heldJob()), Options{})
	if n := strings.Count(page, tooClose().Remedy); n != 2 { // once open, once under the variance
		t.Errorf("the remedy stands %d times, want 2", n)
	}
}

// A report saved without what is met says so instead of looking like one
// without anything met.
func TestPageOfAShortReport(t *testing.T) {
	saved, err := Read(strings.NewReader(render(t, JSON, reportOf(readyJob()), Options{})))
	if err != nil {
		t.Fatal(err)
	}
	page := render(t, HTML, saved, Options{})
	if !strings.Contains(page, "Met: 2") || !strings.Contains(page, "lists only what is open") {
		t.Errorf("the page hides that two are met")
	}
}

// Text of a record is text, wherever it comes to stand.
func TestTextIsNoMarkup(t *testing.T) {
	nasty := `"><script>alert(1)</script><img src=x onerror=alert(2)></style></title>{{.}}'` + "\x1b[31m\u202eevil\u2028"
	job := heldJob()
	job.ID, job.Title, job.File, job.Cautions = nasty, nasty, nasty, []string{nasty}
	job.Profiles, job.Digest = []string{nasty}, nasty
	for i := range job.Findings {
		f := &job.Findings[i]
		f.Subject, f.Title, f.Message, f.Measured, f.Limit, f.Reason, f.Why, f.Remedy, f.Profile = nasty, nasty, nasty, nasty, nasty, nasty, nasty, nasty, nasty
		f.Source.Document = nasty
	}
	job.Readings = []finding.Reading{{Group: nasty, Subject: nasty, Title: nasty, Text: nasty, Note: nasty}}
	job.Values = []finding.DerivedValue{{Group: nasty, Subject: nasty, Title: nasty, Text: nasty, Method: nasty, Assumes: []string{nasty}}}
	job.Photos[0].Caption, job.Photos[0].Shows = nasty, []string{nasty}
	job.Figures[0].Title, job.Figures[0].Alt, job.Figures[0].Key = nasty, nasty, []string{nasty}
	r := reportOf(job, job)
	r.Errors = []finding.Error{{File: nasty, Message: nasty}}
	r.Rulebook = finding.Rulebook{Digest: nasty, Profiles: []string{nasty}, Version: nasty}
	page := render(t, HTML, r, Options{})
	if n := strings.Count(page, "<script"); n != 1 {
		t.Errorf("%d scripts on the page, want its own", n)
	}
	for _, bad := range []string{"<img src=x", "</style></title>", "\x1b", "\u202e", "\u2028"} {
		if strings.Contains(page, bad) {
			t.Errorf("the page holds %q", bad)
		}
	}
}

// CSS Syntax Level 3, 4.3.5 and 4.3.7: a string ends at its quote, and an escape
// of six digits needs nothing after it but swallows a blank.
func TestCSSStrings(t *testing.T) {
	for text, want := range map[string]string{
		"J 0107":             `"J\0000200107"`,
		"J-0107":             `"J\00002d0107"`,
		`"};@import "x`:      `"\000022\00007d\00003b\000040import\000020\000022x"`,
		`a\b`:                `"a\00005cb"`,
		"</style>":           `"\00003c\00002fstyle\00003e"`,
		"Röhre 👷":            `"R\0000f6hre\000020\01f477"`,
		"line\nfeed\x00\x1b": `"line\00005cnfeed\00005cx00\00005cx1b"`,
	} {
		if got := cssString(text); got != want {
			t.Errorf("cssString(%q) = %s, want %s", text, got, want)
		}
	}
}

// Each sheet carries the job that it is about.
func TestRunningFooters(t *testing.T) {
	one := runningFooters(reportOf(readyJob()))
	if !strings.Contains(one, "@page{@bottom-left{content:"+cssString("J-0101")) || !strings.Contains(one, cssString("rulebook "+inventedDigest)) {
		t.Errorf("got %s", one)
	}
	many := runningFooters(several())
	for i, job := range several().Jobs {
		for _, want := range []string{fmt.Sprintf("@page job-%d{@bottom-left{content:%s}", i+1, cssString(job.ID)), fmt.Sprintf("#job-%d{page:job-%d}", i+1, i+1), cssString("rulebook " + job.Digest)} {
			if !strings.Contains(many, want) {
				t.Errorf("no %s in %s", want, many)
			}
		}
	}
	long := readyJob()
	long.ID = strings.Repeat("very-long-", 40)
	if got := runningFooters(reportOf(long)); len(got) > 1500 {
		t.Errorf("a long name makes a footer of %d characters", len(got))
	}
}

func TestMostFrequent(t *testing.T) {
	job := func(requirements ...string) finding.Job {
		var j finding.Job
		for _, name := range requirements {
			j.Findings = append(j.Findings, finding.Finding{Requirement: name, Title: "title of " + name, Holds: true}, finding.Finding{Requirement: name, Holds: true}, finding.Finding{Requirement: "advice.only"})
		}
		return j
	}
	got := fmt.Sprint(frequent([]finding.Job{job("a.a", "b.b"), job("b.b"), job("b.b", "c.c"), job()}))
	if want := "[{b.b title of b.b 3 100} {a.a title of a.a 1 33} {c.c title of c.c 1 33}]"; got != want {
		t.Errorf("got %s, want %s", got, want)
	}
	if frequent([]finding.Job{job("a.a")}) != nil {
		t.Error("a chart of one job")
	}
}

// A style sheet that all drawings share comes once.
func TestDrawingsShareTheirStyle(t *testing.T) {
	job := bigJob(t)
	r := reportOf(job, job)
	if n := strings.Count(render(t, HTML, r, Options{}), ".fig text{"); n != 1 {
		t.Errorf("the style of the drawings stands %d times", n)
	}
}

// WCAG 2.2, 1.4.3 and 1.4.11, for words and edges in light, dark and print.
func TestPageContrast(t *testing.T) {
	modes := regexp.MustCompile(`:root\{([^}]*)\}`).FindAllStringSubmatch(pageStyle, -1)
	if len(modes) != 3 {
		t.Fatalf("%d sets of colours, want light, dark and print", len(modes))
	}
	for i, mode := range []string{"light", "dark", "print"} {
		colours := map[string][3]float64{}
		for _, m := range regexp.MustCompile(`--([a-z]+):(#[0-9a-f]{6})`).FindAllStringSubmatch(modes[i][1], -1) {
			colours[m[1]] = look.RGB(t, m[2])
		}
		for _, pair := range []struct {
			on, what string
			least    float64
		}{
			{"paper", "ink", 4.5}, {"paper", "soft", 4.5}, {"paper", "link", 4.5}, {"wash", "ink", 4.5}, {"wash", "soft", 4.5}, {"wash", "bad", 4.5},
			{"badwash", "bad", 4.5}, {"goodwash", "good", 4.5}, {"paper", "bad", 3}, {"paper", "edge", 3}, {"wash", "edge", 3},
		} {
			ground, okG := colours[pair.on]
			colour, okC := colours[pair.what]
			if !okG || !okC {
				t.Fatalf("%s has no colour %s or %s", mode, pair.on, pair.what)
			}
			if c := look.Contrast(colour, ground); c < pair.least {
				t.Errorf("%s: %s on %s has a contrast of %.2f, want %.1f", mode, pair.what, pair.on, c, pair.least)
			}
		}
	}
	if c := look.Contrast([3]float64{}, [3]float64{255, 255, 255}); math.Abs(c-21) > 1e-9 {
		t.Errorf("black on white is %v to 1, want 21", c)
	}
}

// A page without photos stays below 200 kB.
func TestPageIsSmall(t *testing.T) {
	if n := len(render(t, HTML, reportOf(bigJob(t)), Options{})); n >= 200_000 {
		t.Errorf("%d bytes, want less than 200000", n)
	}
}

// Writing the page of one big job takes less than 30 ms.
func BenchmarkHTML(b *testing.B) {
	r := reportOf(bigJob(b))
	if err := HTML(io.Discard, r, Options{}); err != nil { // the first use prepares the template
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if err := HTML(io.Discard, r, Options{}); err != nil {
			b.Fatal(err)
		}
	}
	if each := b.Elapsed() / time.Duration(b.N); each > 30*time.Millisecond {
		b.Errorf("%v each, want less than 30 ms", each)
	}
}

// One input with five errors is one input, and while it is not judged the page
// does not look as if all were well.
func TestPageOfInputsThatCouldNotBeJudged(t *testing.T) {
	r := reportOf(readyJob(), readyJob())
	if page := render(t, HTML, r, Options{}); !strings.Contains(page, `<p class="outcome ready"><span aria-hidden="true">✓</span> 2 ready, 0 on hold</p>`) {
		t.Error("two ready jobs are not called ready")
	}
	for i := range 5 {
		r.Errors = append(r.Errors, finding.Error{File: "bad.yaml", Line: i + 1, Column: 1, Message: "broken"})
	}
	r.Errors = append(r.Errors, finding.Error{File: "many.ndjson", Line: 3, Message: "broken"}, finding.Error{File: "many.ndjson", Line: 9, Message: "broken"})
	page := render(t, HTML, r, Options{})
	if !strings.Contains(page, `<p class="outcome hold"><span aria-hidden="true">■</span> 2 ready, 0 on hold, 3 not judged</p>`) {
		t.Errorf("the page opens with %s", regexp.MustCompile(`<p class="outcome.*`).FindString(page))
	}
	if strings.Count(page, "<code>"+readyJob().File+"</code></th>") != 2 {
		t.Error("two records of the same job are not told apart in the index")
	}
}

// The reason of a finding is called what it is.
func TestReasonsAreNamed(t *testing.T) {
	for verdict, want := range map[finding.Verdict]string{
		finding.Variance: "Allowed", finding.Undetermined: "Undecided because", finding.Deficient: "Besides",
	} {
		if got := (htmlItem{Finding: finding.Finding{Verdict: verdict}}).Reasoned(); got != want {
			t.Errorf("%s: %q, want %q", verdict, got, want)
		}
	}
}
