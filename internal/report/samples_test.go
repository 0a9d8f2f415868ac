package report

import (
	"strings"

	"github.com/slablint/slablint/internal/finding"
)

// sample is an invented report. Documents and limits in it are invented too:
// what a writer prints does not depend on their being true.
type sample struct {
	name   string
	report finding.Report
}

func samples() []sample {
	return []sample{
		{"ready", reportOf(readyJob())},
		{"done", reportOf(doneJob())},
		{"noted", reportOf(notedJob())},
		{"held", reportOf(heldJob())},
		{"early", reportOf(earlyJob())},
		{"several", several()},
		{"errors", errorsOnly()},
		{"nothing", finding.Report{Format: finding.Format, Notice: finding.Notice}},
		{"hostile", reportOf(hostileJob())},
	}
}

var inventedDigest = "sha256:" + strings.Repeat("0123456789abcdef", 4)

func reportOf(jobs ...finding.Job) finding.Report {
	return finding.Report{
		Format: finding.Format,
		Notice: finding.Notice,
		Rulebook: finding.Rulebook{
			Digest:   inventedDigest,
			Profiles: []string{"invented-base", "invented-state"},
			Version:  "0.1.0",
		},
		Jobs: jobs,
	}
}

func readyJob() finding.Job {
	return finding.Job{
		File: "jobs/ready.yaml", ID: "J-0101", Title: "Ranch house, one system", Stage: finding.Closeout,
		SHA256: strings.Repeat("fedcba9876543210", 4), Profiles: []string{"invented-base"}, Digest: inventedDigest,
		Outcome: finding.Ready, Counts: finding.Counts{Met: 2, NotApplicable: 1},
		Findings: []finding.Finding{met(), metUnmeasured(), notApplicable()},
		Values: []finding.DerivedValue{
			{Path: "/derived/systems/0/operating_flow", Group: "Systems", Subject: "sys-1", Title: "Operating flow", Text: "95 cfm", Method: "where the curves cross", Assumes: []string{"soil-gas"}},
			{Path: "/derived/systems/0/pipe_loss", Group: "Systems", Subject: "sys-1", Title: "Pipe loss", Lacks: []string{"/systems/0/pipes/1/length"}},
		},
	}
}

// doneJob is ready and finished, so that its cautions have had their time.
func doneJob() finding.Job {
	j := readyJob()
	j.File, j.ID = "jobs/done.yaml", "J-0106"
	j.Cautions = []string{ladders}
	return j
}

const (
	ladders = "Ladders and roofs: tie the ladder and stay off wet roofs."
	attic   = "The fan is wired through the attic: switch the circuit off before opening it, and use a licensed electrician where local code asks for one."
)

func notedJob() finding.Job {
	j := readyJob()
	j.File, j.ID, j.Title = "jobs/noted.yaml", "J-0102", ""
	j.Profiles = []string{"invented-base", "invented-state"}
	j.Digest = "sha256:" + strings.Repeat("00112233", 8)
	j.Counts.Variance, j.Counts.Deficient = 1, 1
	j.Findings = append([]finding.Finding{advice(), variance()}, j.Findings...)
	j.Cautions = []string{ladders, attic}
	return j
}

// heldJob has every verdict, in the order that the pipeline gives.
func heldJob() finding.Job {
	j := notedJob()
	j.File, j.ID, j.Title = "jobs/held.yaml", "J-0103", "Split-level house, drain tile and slab"
	j.Outcome, j.HeldBy = finding.Hold, 8
	j.Assumed = []finding.Assumption{{Name: "soil-gas", Text: "12.5 °C", Basis: "common practice"}}
	j.Readings = []finding.Reading{
		{Group: "Gauge", Subject: "gauge-1", Title: "Start mark", Text: "0.9 inH2O", Path: "/systems/0/gauge/start_mark"},
		{Group: "Gauge", Subject: "hand-over", Title: "Reading", Text: "0.8 inH2O", Note: "2026-03-27 10:00 -05:00", Path: "/systems/0/gauge/readings/0/value"},
	}
	j.Figures = []finding.Figure{{
		Name: "elevation-sys-1", Title: "Outlet of sys-1", Alt: "The outlet is too close to win-2.", Key: []string{"1 win-2: 7 ft 6 in, too close"},
		SVG: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 10 10" role="img" aria-label="Outlet of sys-1"><style>.ink{stroke:#000}</style><path class="ink" d="M0 0L10 10"/></svg>`,
	}}
	j.Photos = []finding.Photo{{ID: "photo-1", Caption: "Label on the riser", Shows: []string{"label-1"}, MediaType: "image/jpeg", Data: []byte("no picture, but the writer does not look")}}
	j.Findings = append(j.Findings, tooClose(), stillTooClose(), tooLow(), unlabelled(), unsure(), company(), startMark(), sealant(), outletWidth())
	for _, f := range j.Findings {
		j.Counts.Add(f.Verdict)
	}
	finding.Sort(j.Findings)
	return j
}

// earlyJob has something wrong, but nothing that is due.
func earlyJob() finding.Job {
	j := readyJob()
	j.File, j.ID, j.Stage = "jobs/early.yaml", "J-0104", finding.RoughIn
	label, mark := unlabelled(), startMark()
	label.Due, label.Holds, mark.Due, mark.Holds = false, false, false, false
	j.Findings = []finding.Finding{label, mark, met()}
	j.Cautions = []string{ladders}
	j.Counts = finding.Counts{Deficient: 1, Unrecorded: 1, Met: 1}
	return j
}

func several() finding.Report {
	r := reportOf(readyJob(), heldJob(), earlyJob())
	r.Rulebook.Digest = "several, see each job"
	r.Errors = errorsOnly().Errors
	r.Stopped = "Stopped at jobs/early.yaml, the first record that is not ready; records after it were not judged."
	return r
}

func errorsOnly() finding.Report {
	r := reportOf()
	r.Errors = []finding.Error{
		{File: "jobs/broken.yaml", Line: 12, Column: 3, Message: `the key "fan" stands here for the second time in this system; the first is in line 8, and only one of the two can be true`},
		{File: "jobs/gone.yaml", Message: "no such file"},
	}
	return r
}

// hostileJob holds text that would like to do something to the terminal, and
// text whose width is not its number of bytes.
func hostileJob() finding.Job {
	j := heldJob()
	j.File = "jobs/\x1b]0;owned\a\nready.yaml"
	j.ID = "J\r\x1b[2J\x9b31m"
	j.Title = "\x1b[32mready\x1b[0m \u202eydaer\u202c \u2028next\u0085line \xff\xfe"
	f := tooClose()
	f.Subject = "win\u200b-2\x00"
	f.Message = "排気口が窓に近すぎます: 居室の窓から 十分に 離して ください。 " +
		"L’évacuation est trop près de la fenêtre de la cuisine; 8\u00a0ft au lieu de 10\u00a0ft. " +
		"Cafe\u0301 nai\u0308ve, tab\there,\nline feed there. 👷 👨\u200d👩\u200d👧 ok"
	f.Why = strings.Repeat("unbreakable", 12) + " and on it goes until the line is full and has to be broken somewhere"
	f.Measured = "\x1b[31m8 ft\x1b[0m"
	f.Remedy = "Run `\x1b[A`; echo\x7f."
	odd := f
	odd.Requirement, odd.Subject, odd.Verdict = "été_indien.naïve", "", finding.Unrecorded
	odd.Missing = []string{"/a\x1b~1b/" + strings.Repeat("long", 30)}
	j.Findings = []finding.Finding{f, odd}
	j.Cautions = []string{"\x1b]8;;http://example.com\x1b\\click\x1b]8;;\x1b\\"}
	j.Outcome, j.HeldBy = finding.Hold, 2
	j.Counts = finding.Counts{Deficient: 1, Unrecorded: 1}
	return j
}

func invented(section string) finding.Source {
	return finding.Source{Document: "Invented Mitigation Standard", Edition: "2001", Section: section, Basis: finding.Published}
}

func met() finding.Finding {
	return finding.Finding{
		Requirement: "exhaust.height_above_grade", Subject: "sys-1", Verdict: finding.Met, Grade: finding.Hazard,
		Stage: finding.RoughIn, Due: true, At: finding.At{Path: "/systems/0/discharge", Line: 80, Column: 7},
		Title: "The outlet is high above the ground", Measured: "14 ft", Limit: "9 ft",
		Why: "Soil gas let out low drifts back in.", Remedy: "Extend the stack.",
		Source: invented("4.1"), Profile: "invented-base",
	}
}

func metUnmeasured() finding.Finding {
	f := met()
	f.Requirement, f.Title = "papers.warranty", "The homeowner has the warranty in writing"
	f.Measured, f.Limit, f.Grade, f.Stage = "", "", finding.Required, finding.Closeout
	f.At = finding.At{Path: "/closeout/warranty", Line: 140, Column: 3}
	return f
}

func notApplicable() finding.Finding {
	f := met()
	f.Requirement, f.Subject, f.Verdict = "sealing.sump_cover", "sump-1", finding.NotApplicable
	f.Measured, f.Limit, f.Title = "", "", "The sump has a tight cover"
	f.Reason = "the sump was filled with concrete before the work began"
	f.At = finding.At{Path: "/entry_routes/2", Line: 41, Column: 5}
	return f
}

func advice() finding.Finding {
	f := met()
	f.Requirement, f.Verdict, f.Grade, f.Stage = "pipe.insulation", finding.Deficient, finding.Recommended, finding.Running
	f.Subject = "sys-1/seg-3"
	f.At = finding.At{Path: "/systems/0/pipes/2", Line: 66, Column: 9}
	f.Message, f.Measured, f.Limit = "The pipe in the attic has no insulation.", "", ""
	f.Title = "Pipe in the cold is insulated"
	f.Why, f.Remedy = "Water that freezes in the pipe stops the air.", "Wrap the pipe where it is cold."
	f.Source = finding.Source{Basis: finding.CommonPractice}
	return f
}

func variance() finding.Finding {
	f := tooClose()
	f.Verdict, f.Holds, f.Subject = finding.Variance, false, "sys-1/win-5"
	f.Message = "The outlet is too close to win-5."
	f.At.Line = 90
	f.Reason = "variance var-1, granted by the state radon office on 2026-02-01, ends 2026-12-31"
	return f
}

func tooClose() finding.Finding {
	return finding.Finding{
		Requirement: "exhaust.clearance_to_openings", Subject: "sys-1/win-2", Verdict: finding.Deficient, Grade: finding.Hazard,
		Stage: finding.RoughIn, Due: true, Holds: true, At: finding.At{Path: "/systems/0/discharge", Line: 88, Column: 7},
		Title: "The outlet stands clear of openings", Message: "The outlet is too close to win-2.",
		Measured: "7 ft 6 in", Limit: "9 ft",
		Why:    "What the fan takes from under the slab comes back in through an open window, into the room where somebody sleeps.",
		Remedy: "Move the outlet, or extend the stack until it ends above the opening by the height that the standard names.",
		Source: invented("4.2"), Profile: "invented-state",
	}
}

func stillTooClose() finding.Finding {
	f := tooClose()
	f.Subject, f.At.Line, f.Measured = "sys-1/door-1", 89, "6 ft"
	f.Message = "The outlet is too close to door-1."
	return f
}

// tooLow has a message that leaves nothing for the line below it.
func tooLow() finding.Finding {
	f := met()
	f.Subject, f.Verdict, f.Holds, f.Measured = "sys-2", finding.Deficient, true, "8 ft"
	f.Message = "Recorded height above the ground: 8 ft; called for: 9 ft."
	return f
}

func unlabelled() finding.Finding {
	f := tooClose()
	f.Requirement, f.Subject, f.Grade, f.Stage = "labels.breaker", "sys-1", finding.Required, finding.Closeout
	f.At = finding.At{Path: "/systems/0/labels", Line: 120, Column: 7}
	f.Message, f.Measured, f.Limit = "The breaker that feeds the fan bears no label.", "none", ""
	f.Title = "The breaker says what it feeds"
	f.Why, f.Remedy = "Somebody switches it off without knowing what stops.", "Label the breaker."
	f.Source = finding.Source{Document: "Invented Mitigation Standard", Basis: finding.FromMemory}
	return f
}

func unsure() finding.Finding {
	f := tooClose()
	f.Requirement, f.Subject, f.Verdict = "testing.below_action_level", "post-1", finding.Undetermined
	f.At = finding.At{Path: "/measurements/1/result", Line: 130, Column: 5}
	f.Message, f.Measured, f.Limit = "The result cannot be told from the limit.", "3.9 pCi/L ± 0.4 pCi/L", "4.0 pCi/L"
	f.Reason = "the uncertainty of the measurement spans the limit"
	f.Title = "The test after the work is below the action level"
	f.Why, f.Remedy = "Radon above the limit harms the people who live there.", "Test for longer."
	return f
}

func company() finding.Finding {
	f := unlabelled()
	f.Requirement, f.Message = "van_stock.spare_fuse", "No spare fuse was left."
	f.Measured, f.Limit = "", "1 fuse"
	f.Title, f.Why, f.Remedy = "A spare fuse stays with the system", "A dead fan goes unnoticed for months.", "Leave one."
	f.Source = finding.Source{Basis: finding.CommonPractice}
	return f
}

func startMark() finding.Finding {
	f := unlabelled()
	f.Requirement, f.Verdict, f.Subject = "gauge.start_mark", finding.Unrecorded, "gauge-1"
	f.At = finding.At{Path: "/systems/0/gauge", Line: 101, Column: 7}
	f.Message, f.Measured = "The record does not say what the gauge read when the fan was first started.", ""
	f.Title = "The gauge bears a mark of its first reading"
	f.Missing = []string{"/systems/0/gauge/start_mark", "/systems/0/gauge/readings"}
	return f
}

func sealant() finding.Finding {
	f := startMark()
	f.Requirement, f.Subject, f.Grade, f.Holds = "sealing.sealant", "crack-1", finding.Recommended, false
	f.At = finding.At{Path: "/entry_routes/0", Line: 22, Column: 5}
	f.Title = "Cracks are filled with a sealant that stays elastic"
	f.Message, f.Missing = "The record does not say what the crack was filled with.", []string{"/entry_routes/0/material"}
	return f
}

func outletWidth() finding.Finding {
	f := sealant()
	f.Requirement, f.Grade, f.Holds, f.Limit = "exhaust.velocity_at_cap", finding.Hazard, true, "500 ft/min"
	f.At = finding.At{Path: "/systems/0/discharge", Line: 88, Column: 7}
	f.Subject, f.Title = "sys-1", "The air leaves fast enough to carry away"
	f.Message, f.Missing = "The record does not say how wide the outlet is.", []string{"/systems/0/discharge/diameter"}
	return f
}
