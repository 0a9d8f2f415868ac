package main

import (
	"flag"
	"os"
	"os/exec"
	"path/filepath"
	"testing"
	"time"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "rewrite the expected output in the scripts")

// The test binary is the program itself, on a fixed day.
func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){
		"slablint": func() {
			ctx, stop := interruptible()
			defer stop()
			w := surroundings()
			w.today = time.Date(2026, 6, 1, 0, 0, 0, 0, time.UTC)
			os.Exit(run(ctx, os.Args[1:], w))
		},
	})
}

// Each script in testdata is one story of a user: commands, files and what must
// come out. "go test ./cmd/slablint -update" rewrites the expected output.
func TestScripts(t *testing.T) {
	if _, err := exec.LookPath("git"); err != nil {
		t.Fatalf("the stories of the gate need git: %v", err)
	}
	fixtures, err := filepath.Abs("../../fixtures")
	if err != nil {
		t.Fatal(err)
	}
	testscript.Run(t, testscript.Params{
		Dir:           "testdata",
		UpdateScripts: *update,
		Setup: func(e *testscript.Env) error {
			e.Setenv("FIXTURES", fixtures)
			for name, value := range map[string]string{
				"GIT_CONFIG_NOSYSTEM": "1", "GIT_AUTHOR_NAME": "Office", "GIT_AUTHOR_EMAIL": "office@example.test",
				"GIT_COMMITTER_NAME": "Office", "GIT_COMMITTER_EMAIL": "office@example.test",
			} {
				e.Setenv(name, value)
			}
			return nil
		},
	})
}
