package airflow

// Basis says how a figure is known.
type Basis string

// The three ways in which a figure of this package can be known.
const (
	Published      Basis = "published"       // a document says so
	CommonPractice Basis = "common-practice" // no document; the trade does so
	FromMemory     Basis = "from-memory"     // published, but not read while writing
)

// Source names where a figure comes from.
type Source struct {
	Document string // document, edition and section; what was done for common practice
	Basis    Basis
}
