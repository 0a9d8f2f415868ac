package drawing

import (
	"fmt"
	"strings"

	"github.com/slablint/slablint/internal/place"
)

// elevationWords says what the elevation shows as a whole.
func elevationWords(job view, at place.Pointer, openings []seen, grounded bool, terms Terms) string {
	var said []string
	if grounded {
		said = append(said, "The outlet ends "+job.words(at.Append("height_above_grade"))+" above the ground nearest to it.")
	} else {
		said = append(said, "How high the outlet ends above the ground is not recorded.")
	}
	var close []string
	open := 0
	for _, o := range openings {
		if o.standing == TooClose || o.standing == Allowed {
			close = append(close, o.id+" at "+o.counts())
		}
		if o.standing == Undecided || o.standing == NotJudged {
			open++
		}
	}
	switch {
	case len(close) > 0 && terms.ClearanceText != "":
		said = append(said, fmt.Sprintf("Too close, with %s called for: %s.", terms.ClearanceText, strings.Join(close, ", ")))
	case len(close) > 0:
		said = append(said, "Too close: "+strings.Join(close, ", ")+".")
	case len(openings) > open:
		said = append(said, "No opening is found too close.")
	}
	if open > 0 {
		said = append(said, fmt.Sprintf("Not decided: %d of %d openings.", open, len(openings)))
	}
	return strings.Join(said, " ")
}

// counts is the distance that is judged.
func (o seen) counts() string {
	switch {
	case o.round != "":
		return o.round + " round what stands between, " + o.words + " straight"
	case o.words == "":
		return "a distance that is not recorded"
	}
	return o.words
}

// judged says what was found of the opening.
func (o seen) judged(terms Terms) string {
	if o.standing == FarEnough && o.round == "" && o.distance < terms.Clearance && o.drop != "" {
		return "far enough below the outlet (" + o.drop + ")"
	}
	return o.standing.String()
}

func elevationKey(job view, id string, openings []seen, levels []level, terms Terms, inMetres bool) []string {
	var key []string
	for i, o := range openings {
		words := o.id
		if o.kind != "" && o.kind != o.id {
			words += ", " + o.kind
		}
		if o.adjacent {
			words += " of a neighbor"
		}
		words += ": " + o.counts() + ", " + o.judged(terms)
		if !o.drawnToScale && o.words != "" {
			words += " (too far away to be drawn)"
		}
		key = append(key, numbered(i+1, words))
	}
	for _, l := range levels {
		key = append(key, strings.ToUpper(l.words[:1])+l.words[1:]+".")
	}
	if len(openings) > 0 {
		key = append(key, "Seen from the "+job.facingSide(id)+". Level distances are turned into the paper, so every line from the outlet is as long as the distance it stands for. A broken outline: size or side not recorded, or a neighbor's.")
	}
	if terms.Clearance > 0 {
		key = append(key, "Tinted, with a broken edge: the zone in which an opening would be too close.")
	}
	if terms.Clearance > 0 && terms.Waiver > 0 {
		key = append(key, "Thick broken line, "+lengthText(terms.Waiver, inMetres)+" below the outlet: an opening wholly below it does not count, unless it is a neighbor's.")
	}
	return key
}
