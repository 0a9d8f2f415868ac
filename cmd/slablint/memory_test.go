//go:build linux

package main

import (
	"bufio"
	"bytes"
	"encoding/json"
	"errors"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/record"
)

// peak is the most memory that a process has held so far, in units of 1024 bytes.
func peak(t *testing.T, pid int) int {
	t.Helper()
	status, err := os.ReadFile(fmt.Sprintf("/proc/%d/status", pid))
	if err != nil {
		t.Fatal(err)
	}
	_, rest, _ := strings.Cut(string(status), "VmHWM:")
	fields := strings.Fields(rest)
	kB, err := strconv.Atoi(fields[0])
	if err != nil || fields[1] != "kB" {
		t.Fatalf("/proc status has VmHWM %q", fields[:2])
	}
	return kB
}

// mixed gives one line of JSON for each number: a whole job every tenth time,
// else one of which little is recorded, whose report is long.
func mixed(t *testing.T) func(i int) []byte {
	t.Helper()
	text, err := os.ReadFile("../../fixtures/demo/ready.yaml")
	if err != nil {
		t.Fatal(err)
	}
	doc, err := record.ReadYAML("ready.yaml", text, record.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	line, err := json.Marshal(doc.Root.Value())
	if err != nil {
		t.Fatal(err)
	}
	number := []byte(doc.Root.Get("job").Get("id").Text())
	if bytes.Count(line, number) == 0 {
		t.Fatal("the record does not hold its number")
	}
	return func(i int) []byte {
		if i%10 > 0 {
			return []byte(small(i))
		}
		return append(bytes.ReplaceAll(line, number, fmt.Appendf(nil, "J-%d", i)), '\n')
	}
}

// memoryLimit is what judging an archive of any size may take on two
// processors, in units of 1024 bytes; under the
// race detector a program needs several times as much.
func memoryLimit() int {
	if raceDetector {
		return 2000 << 10
	}
	return 200 << 10
}

// The memory for a long stream stays within one and a half times that for a
// short one: nothing of a record is kept when its line is written.
func TestMemoryDoesNotGrowWithTheStream(t *testing.T) {
	first, last := size(1_000, 100), size(10_000, 400)
	line := mixed(t)
	p := begin(t, "--profile", "us-epa-1994", "--format", "jsonl")
	p.Env = append(os.Environ(), "GOMAXPROCS=2") // each processor has a machine of its own to run the rulebook
	out, err := p.StdoutPipe()
	if err != nil {
		t.Fatal(err)
	}
	p.start(t)
	fed := make(chan error, 1)
	go func() {
		for i := range last {
			if _, err := p.feed.Write(line(i)); err != nil {
				fed <- err
				return
			}
		}
		fed <- nil
	}()
	peaks := map[int]int{}
	reader := bufio.NewReaderSize(out, 1<<20)
	for n := 1; n <= last; n++ {
		got, err := reader.ReadBytes('\n')
		if err != nil || !bytes.HasPrefix(got, fmt.Appendf(nil, `{"file":"-","job":"J-%d",`, n-1)) {
			t.Fatalf("line %d is %.60q: %v; %s", n, got, err, p.said.String())
		}
		if n == first || n == last { // it waits for more, so it is still there
			peaks[n] = peak(t, p.Process.Pid)
		}
	}
	if err := errors.Join(<-fed, p.feed.Close()); err != nil {
		t.Error(err)
	}
	if err := p.Wait(); p.ProcessState.ExitCode() != outcome.StatusHold {
		t.Errorf("%v; %s", err, p.said.String())
	}
	t.Logf("%d kB after %d records, %d kB after %d", peaks[first], first, peaks[last], last)
	if peaks[last] > peaks[first]*3/2 || peaks[last] > memoryLimit() {
		t.Errorf("%d kB after %d records, %d kB after %d: more than 1.5 times as much, or more than %d kB", peaks[first], first, peaks[last], last, memoryLimit())
	}
}
