package finding

// Format is the version of the JSON report.
const Format = 1

// Notice is the reminder that every report carries.
const Notice = "This checks a record against encoded requirements; it does not inspect a house. " +
	"Local code and licensed practice govern."

// Report is the outcome of one run over any number of records.
type Report struct {
	Format   int      `json:"report"`
	Notice   string   `json:"notice"`
	Rulebook Rulebook `json:"rulebook"`
	Jobs     []Job    `json:"jobs"`
	Errors   []Error  `json:"errors"`
	Stopped  string   `json:"stopped,omitempty"` // why records were left out, as a sentence; "" when all were judged
}

// Rulebook identifies what the records were judged by. When the jobs of one
// report use different profiles, Profiles lists all of them and every job its own.
type Rulebook struct {
	Digest   string   `json:"digest"` // "sha256:" and hex, over policy files and profiles
	Profiles []string `json:"profiles"`
	Version  string   `json:"version"`
}

// Outcome says whether a job may be closed.
type Outcome string

// The outcomes.
const (
	Ready Outcome = "ready"
	Hold  Outcome = "hold"
)

// Job is the outcome of one record.
type Job struct {
	File     string         `json:"file"`
	ID       string         `json:"job"`
	Title    string         `json:"title,omitempty"`
	Stage    Stage          `json:"stage"`
	SHA256   string         `json:"sha256"`
	Profiles []string       `json:"profiles"`
	Digest   string         `json:"digest"` // of the rulebook with these profiles
	Outcome  Outcome        `json:"outcome"`
	HeldBy   int            `json:"held_by"` // findings that hold the job
	Counts   Counts         `json:"counts"`
	Findings []Finding      `json:"findings"`
	Cautions []string       `json:"cautions"`
	Values   []DerivedValue `json:"values,omitempty"`
	Assumed  []Assumption   `json:"assumed,omitempty"`
	Readings []Reading      `json:"readings,omitempty"`
	Figures  []Figure       `json:"figures,omitempty"`
	Photos   []Photo        `json:"photos,omitempty"`
}

// Reading is one measurement that the record holds.
type Reading struct {
	Group   string `json:"group"`          // what sort of measurement, such as "Gauge"
	Subject string `json:"subject"`        // id of what was measured, or of the test
	Title   string `json:"title"`          // what was read
	Text    string `json:"text"`           // value and unit, as the record writes them
	Note    string `json:"note,omitempty"` // when, with what, under which conditions
	Path    string `json:"path"`           // JSON Pointer into the record
}

// Figure is a drawing of the job.
type Figure struct {
	Name  string   `json:"name"` // unique in the job, such as elevation-sys-1
	Title string   `json:"title"`
	Alt   string   `json:"alt"`           // what the drawing says, in words
	Key   []string `json:"key,omitempty"` // what its numbers and signs stand for
	SVG   string   `json:"svg"`
}

// Photo is one picture of the evidence, made small.
type Photo struct {
	ID        string   `json:"id"`
	Caption   string   `json:"caption"`
	Shows     []string `json:"shows"` // ids of what it shows
	MediaType string   `json:"media_type"`
	Data      []byte   `json:"data"` // base64 in JSON
}

// Counts tells how many subjects got each verdict.
type Counts struct {
	Met           int `json:"met"`
	Deficient     int `json:"deficient"`
	Unrecorded    int `json:"unrecorded"`
	Undetermined  int `json:"undetermined"`
	NotApplicable int `json:"not-applicable"`
	Variance      int `json:"variance"`
}

// Add counts one more verdict.
func (c *Counts) Add(v Verdict) {
	switch v {
	case Met:
		c.Met++
	case Deficient:
		c.Deficient++
	case Unrecorded:
		c.Unrecorded++
	case Undetermined:
		c.Undetermined++
	case NotApplicable:
		c.NotApplicable++
	case Variance:
		c.Variance++
	}
}

// Of returns the count of one verdict.
func (c Counts) Of(v Verdict) int {
	switch v {
	case Met:
		return c.Met
	case Deficient:
		return c.Deficient
	case Unrecorded:
		return c.Unrecorded
	case Undetermined:
		return c.Undetermined
	case NotApplicable:
		return c.NotApplicable
	case Variance:
		return c.Variance
	}
	return 0
}

// DerivedValue is one computed value as a report shows it.
type DerivedValue struct {
	Path    string   `json:"path"`              // JSON Pointer into the derived record
	Group   string   `json:"group,omitempty"`   // what sort of thing it is about, such as "Systems"
	Subject string   `json:"subject,omitempty"` // id of the one thing, if there can be several
	Title   string   `json:"title"`
	Text    string   `json:"text"` // value and unit, empty when it could not be computed
	Method  string   `json:"method,omitempty"`
	Lacks   []string `json:"lacks,omitempty"`   // pointers of what was not recorded
	Assumes []string `json:"assumes,omitempty"` // names of assumptions that it rests on
}

// Assumption is a default that computed values rest on.
type Assumption struct {
	Name  string `json:"name"`
	Text  string `json:"text"`  // the value with its unit
	Basis string `json:"basis"` // where it comes from
}

// Error is an input that could not be judged.
type Error struct {
	File    string `json:"file"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Message string `json:"message"`
}
