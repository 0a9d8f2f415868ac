//go:build linux

package main

import (
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
	"time"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/report"
)

// Killed at any moment, a run leaves each report as it was or whole.
func TestKilledRunLeavesNoHalfReport(t *testing.T) {
	records := size(10_000, 2_000)
	pages := []string{"--profile", "one.yaml", "--format", "json", "--output", "r.json", "--format", "html", "--output", "r.html"}
	lines := []string{"--profile", "one.yaml", "--format", "jsonl", "--output", "r.jsonl"}

	t.Run("while records are judged", func(t *testing.T) {
		for _, args := range [][]string{pages, lines} {
			p := begin(t, args...)
			p.start(t)
			p.give(t, 0, records/2)
			if !p.kill(t) {
				t.Fatalf("ended before it was killed: %s", p.said.String())
			}
			for _, name := range []string{"r.json", "r.html", "r.jsonl"} {
				if p.whole(t, name, records) {
					t.Errorf("%s was replaced before all records were judged", name)
				}
			}
			// Lines go to a temporary as they come: it must be there for this
			// test to mean anything.
			if args[3] == "jsonl" && !p.underWay(t, "r.jsonl", 1) {
				t.Error("no line was written before the process was killed")
			}
		}
	})
	for _, c := range []struct {
		killed string // the report that is being written when the process is killed
		args   []string
		new    []string // reports that are there by then
	}{
		{"r.json", pages, nil},
		{"r.html", pages, []string{"r.json"}},
	} {
		t.Run("while "+c.killed+" is written", func(t *testing.T) {
			if !killedWhileWriting(t, c.killed, c.args, records, c.new) {
				t.Error("writing was over each time before the process could be killed")
			}
		})
	}
}

// killedWhileWriting tries a few times to hit the moment: how long it lasts is
// up to the disk.
func killedWhileWriting(t *testing.T, name string, args []string, records int, replaced []string) bool {
	for range 5 {
		p := begin(t, args...)
		p.start(t)
		p.give(t, 0, records)
		if err := p.feed.Close(); err != nil {
			t.Fatal(err)
		}
		for !p.underWay(t, name, 1) && !p.whole(t, "r.html", records) {
			time.Sleep(time.Millisecond)
		}
		hit := p.kill(t) && len(p.unfinished(t, name)) > 0
		for _, report := range []string{"r.json", "r.html"} {
			is := p.whole(t, report, records)
			if want := strings.Contains(strings.Join(replaced, " "), report); hit && is != want {
				t.Errorf("%s is new: %t, want %t", report, is, want)
			}
		}
		if hit {
			return true
		}
	}
	return false
}

// Ctrl-C and a request to terminate stop a run: what is finished is written,
// says that it is not all, and so does the exit status.
func TestInterruptedRunWritesWhatIsFinished(t *testing.T) {
	for _, signal := range []os.Signal{os.Interrupt, syscall.SIGTERM} {
		t.Run(signal.String(), func(t *testing.T) {
			p := begin(t, "--profile", "one.yaml", "--format", "json", "--output", "r.json", "--format", "html", "--output", "r.html")
			r := interrupt(t, p, signal, 500)
			got, err := report.Read(strings.NewReader(r("r.json")))
			if err != nil {
				t.Fatal(err)
			}
			checkInterruption(t, p, got.Errors, len(got.Jobs))
			for i, job := range got.Jobs {
				if want := fmt.Sprintf("J-%d", i); job.ID != want {
					t.Fatalf("job %d is %s: the finished ones have a gap", i, job.ID)
				}
			}
			if page := r("r.html"); strings.Count(page, "<article ") != len(got.Jobs) || !strings.Contains(page, "the rest was not judged") {
				t.Error("the page does not say what was judged")
			}
		})
		t.Run(signal.String()+" of lines", func(t *testing.T) {
			p := begin(t, "--profile", "one.yaml", "--format", "jsonl", "--output", "r.jsonl")
			r := interrupt(t, p, signal, 500)
			all := strings.Split(strings.TrimSuffix(r("r.jsonl"), "\n"), "\n")
			var last struct {
				Errors []finding.Error `json:"errors"`
			}
			if err := json.Unmarshal([]byte(all[len(all)-1]), &last); err != nil {
				t.Fatal(err)
			}
			checkInterruption(t, p, last.Errors, len(all)-1)
		})
	}
}

// interrupt signals when records are given and more could come, and reads what
// was written.
func interrupt(t *testing.T, p *program, signal os.Signal, records int) func(name string) string {
	t.Helper()
	p.start(t)
	p.give(t, 0, records)
	if err := p.Process.Signal(signal); err != nil {
		t.Fatal(err)
	}
	err := p.Wait() // the input is still open: nothing may wait for it
	if got := p.ProcessState.ExitCode(); got != outcome.StatusInterrupted {
		t.Errorf("exit status %d (%v), want %d", got, err, outcome.StatusInterrupted)
	}
	return func(name string) string {
		if left := p.unfinished(t, name); len(left) > 0 {
			t.Errorf("left behind: %q", left)
		}
		return p.read(t, name)
	}
}

func checkInterruption(t *testing.T, p *program, errs []finding.Error, judged int) {
	t.Helper()
	want := fmt.Sprintf("interrupted after %d records, the last one in -; the rest was not judged", judged)
	if len(errs) != 1 || errs[0].Message != want || errs[0].File != "-" {
		t.Errorf("the report says %+v, want %q", errs, want)
	}
	if got := p.said.String(); got != "slablint: "+want+"\n" {
		t.Errorf("said %q", got)
	}
	if judged == 0 {
		t.Error("nothing was judged: the test shows nothing")
	}
}

// When the disk fills up the old report stays, nothing lies about, and the
// error names the report. The kernel refuses the write as a full disk would.
func TestFullDiskKeepsTheOldReport(t *testing.T) {
	for _, format := range []string{"json", "html", "jsonl", "csv"} {
		p := begin(t)
		report := "r." + format
		if err := os.WriteFile(filepath.Join(p.folder, report), []byte(old), 0o600); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(p.folder, "in.ndjson"), []byte(strings.Repeat(small(1), 100)), 0o600); err != nil {
			t.Fatal(err)
		}
		// 16 blocks of 512 or 1024 bytes, as the shell counts them.
		p.Cmd = exec.CommandContext(t.Context(), "sh", "-c", "ulimit -f 16; exec slablint check --profile one.yaml --format "+format+" --output "+report+" in.ndjson")
		p.Dir, p.Stderr = p.folder, &p.said
		err := p.Run()
		if got := p.ProcessState.ExitCode(); got != outcome.StatusError {
			t.Errorf("%s: exit status %d (%v)", format, got, err)
		}
		if got := p.said.String(); !strings.HasPrefix(got, "slablint: "+report+" was not written: ") || strings.Count(got, "\n") != 1 {
			t.Errorf("%s: said %q", format, got)
		}
		if p.read(t, report) != old || len(p.unfinished(t, report)) > 0 {
			t.Errorf("%s: the old report is gone, or a part of the new one lies about", format)
		}
	}
}
