package main

import (
	"io"
	"time"

	"github.com/schollz/progressbar/v3"

	"github.com/slablint/slablint/internal/archive"
)

// worthABar is the number of records from which on people want to know how long
// they will wait.
const worthABar = 50

// progress shows on a terminal how far a walk through many records has come.
// One that shows nothing is ready to use too.
type progress struct {
	bar *progressbar.ProgressBar
}

// newProgress counts what is to come and shows a bar, or a running number when
// only the stream itself knows. Nothing is shown without a terminal and for few
// records.
func newProgress(w world, paths []string, lines bool) progress {
	if !w.progress {
		return progress{}
	}
	n, known := archive.Count(paths, lines, archive.IsRecord)
	if !known {
		n = -1
	} else if n < worthABar {
		return progress{}
	}
	return progress{progressbar.NewOptions(n,
		progressbar.OptionSetWriter(w.errs),
		progressbar.OptionSetDescription("judging records"),
		progressbar.OptionShowCount(),
		progressbar.OptionSetWidth(24),
		progressbar.OptionThrottle(100*time.Millisecond),
		progressbar.OptionSetSpinnerChangeInterval(0), // moves with the records, not by itself
		progressbar.OptionClearOnFinish(),
		progressbar.OptionSetRenderBlankState(true),
	)}
}

// tick counts one record. A terminal that went away is no reason to stop.
func (p progress) tick() {
	if p.bar != nil {
		_ = p.bar.Add(1)
	}
}

// end takes the bar away, so that what is said next has the line for itself.
func (p progress) end(out io.Writer) {
	if p.bar == nil {
		return
	}
	_ = p.bar.Exit()
	_, _ = io.WriteString(out, "\r\x1b[K") // also what the library's own blanks did not reach
}
