package main

import (
	"encoding/json"
	"regexp"
	"strings"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/place"
	"github.com/slablint/slablint/internal/record"
)

// measured is where a record holds measurements, in the order of the page. A
// star stands for every entry of a list; notes are fields beside the value that
// say when and how it was taken.
var measured = []struct{ group, below, value, title, notes string }{
	{"Radon", "measurements/tests/*", "result", "Radon", "phase device room start end uncertainty"},
	{"Gauge", "systems/*/gauge", "start_mark", "Start mark", ""},
	{"Gauge", "systems/*/gauge/readings/*", "value", "Reading", "at"},
	{"Air and suction", "systems/*/commissioning", "measured_flow", "Flow in the main pipe", ""},
	{"Air and suction", "systems/*/suction_points/*", "suction", "Suction in the pit", ""},
	{"Air and suction", "systems/*/suction_points/*", "flow", "Flow", ""},
	{"Suction below the slab", "diagnostics/communication_tests/*", "applied_suction", "Suction applied", "on outdoor_temperature"},
	{"Suction below the slab", "diagnostics/communication_tests/*", "applied_flow", "Flow drawn", "on"},
	{"Suction below the slab", "diagnostics/communication_tests/*/holes/*", "pressure", "Below the slab against the room", "distance smoke"},
	{"Combustion", "diagnostics/backdraft_tests/*", "pressure", "Room against outdoors", "appliance baseline spillage at"},
	{"Combustion", "diagnostics/backdraft_tests/*", "draft", "Draft in the flue", "appliance outdoor_temperature"},
	{"Outlet", "systems/*/discharge", "height_above_grade", "Height above the ground", ""},
	{"Outlet", "systems/*/discharge", "height_above_eave", "Height above the eave", ""},
	{"Outlet", "systems/*/discharge", "height_above_roof", "Height above the roof", ""},
	{"Outlet", "systems/*/discharge/clearances/*", "distance", "Distance to opening", "opening"},
}

// readings lists the measurements of a canonical record.
func readings(input map[string]any) []finding.Reading {
	var out []finding.Reading
	for _, m := range measured {
		eachAt(input, strings.Split(m.below, "/"), place.Root, "", func(fields any, at place.Pointer, subject string) {
			text := shownText(record.Get(fields, m.value))
			if text == "" {
				return
			}
			r := finding.Reading{Group: m.group, Subject: subject, Title: m.title, Text: text, Path: string(at.Append(m.value))}
			var notes []string
			for _, name := range strings.Fields(m.notes) {
				if note := shownText(record.Get(fields, name)); note != "" {
					notes = append(notes, noteText(name, note))
				}
			}
			r.Note = strings.Join(notes, ", ")
			out = append(out, r)
		})
	}
	return out
}

// eachAt visits the objects that a path with stars leads to, with the id of the
// innermost thing that has one.
func eachAt(value any, path []string, at place.Pointer, subject string, visit func(any, place.Pointer, string)) {
	if id, known := record.Get(value, "id").(string); known {
		subject = id
	}
	switch {
	case len(path) == 0:
		visit(value, at, subject)
	case path[0] == "*":
		list, _ := value.([]any)
		for i, item := range list {
			eachAt(item, path[1:], at.Append(i), subject, visit)
		}
	default:
		if next, found := record.At(value, place.Root.Append(path[0])); found {
			eachAt(next, path[1:], at.Append(path[0]), subject, visit)
		}
	}
}

// shownText is a quantity, word or number as a reader sees it.
func shownText(value any) string {
	switch v := value.(type) {
	case string: // a word of a list, or an id
		return v
	case json.Number:
		return v.String()
	}
	text, _ := record.Get(value, "text").(string)
	return moment.ReplaceAllString(text, "$1 $2 $3")
}

// moment is a time with its offset, as records write it; seconds of none are
// left out.
var moment = regexp.MustCompile(`^(\d{4}-\d\d-\d\d)T(\d\d:\d\d)(?::00)?(Z|[+-]\d\d:\d\d)$`)

// noteText says what a note is about where its words alone do not.
func noteText(name, text string) string {
	switch name {
	case "uncertainty":
		return "uncertainty " + text
	case "start":
		return "from " + text
	case "end":
		return "to " + text
	case "outdoor_temperature":
		return text + " outdoors"
	case "baseline":
		return "before: " + text
	case "spillage":
		return "spillage: " + text
	case "smoke":
		return "smoke " + text
	case "distance":
		return text + " away"
	}
	return text
}
