package report

import (
	"cmp"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"github.com/slablint/slablint/internal/finding"
)

// topics are the parts of a job in the order of the work, with the titles that
// reports print over them. A topic missing here is shown after these, by its
// own name.
var topics = []struct{ name, title string }{
	{"profiles", "Profiles"},
	{"survey", "Survey"},
	{"sealing", "Sealing"},
	{"membrane", "Membrane"},
	{"suction", "Suction points"},
	{"pipe", "Pipe"},
	{"fan", "Fan"},
	{"exhaust", "Exhaust"},
	{"gauge", "Gauge"},
	{"alarm", "Alarm"},
	{"electrical", "Electrical"},
	{"labels", "Labels"},
	{"special", "Special methods"},
	{"diagnostics", "Diagnostics"},
	{"combustion", "Combustion appliances"},
	{"testing", "Radon tests"},
	{"physics", "What cannot both be true"},
	{"papers", "Papers"},
	{"evidence", "Evidence"},
	{"variances", "Variances"},
	{"safety", "Safety"},
}

// group is what was found under one topic, in the order of the report.
type group struct {
	title    string
	findings []finding.Finding
}

// byTopic groups findings in the order of the work.
func byTopic(findings []finding.Finding) []group {
	of := map[string][]finding.Finding{}
	var names []string
	for _, f := range findings {
		name := f.Topic()
		if of[name] == nil {
			names = append(names, name)
		}
		of[name] = append(of[name], f)
	}
	slices.SortFunc(names, func(a, b string) int {
		return cmp.Or(cmp.Compare(topicRank(a), topicRank(b)), strings.Compare(a, b))
	})
	groups := make([]group, len(names))
	for i, name := range names {
		groups[i] = group{topicTitle(name), of[name]}
	}
	return groups
}

func topicRank(name string) int {
	for i, t := range topics {
		if t.name == name {
			return i
		}
	}
	return len(topics)
}

// topicTitle is the title that readers see; a topic without one becomes
// readable enough by its name.
func topicTitle(name string) string {
	for _, t := range topics {
		if t.name == name {
			return t.title
		}
	}
	first, n := utf8.DecodeRuneInString(name)
	if n == 0 {
		return "Other"
	}
	return string(unicode.ToUpper(first)) + strings.ReplaceAll(name[n:], "_", " ")
}
