// Command slablint checks records of radon mitigation jobs against the
// requirements of chosen profiles and says what is met, deficient or missing.
package main

import (
	"context"
	"os"
	"os/signal"
	"syscall"
	"time"

	"golang.org/x/term"
)

func main() {
	ctx, stop := interruptible()
	defer stop()
	os.Exit(run(ctx, os.Args[1:], surroundings()))
}

// interruptible ends with the first Ctrl-C or request to terminate, which
// leaves time to write what is finished; the second one ends the program.
func interruptible() (context.Context, context.CancelFunc) {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt, syscall.SIGTERM)
	context.AfterFunc(ctx, stop)
	return ctx, stop
}

// surroundings are what the process was started with.
func surroundings() world {
	width := terminalWidth()
	return world{
		in: os.Stdin, out: os.Stdout, errs: os.Stderr,
		today: time.Now().UTC().Truncate(24 * time.Hour),
		width: width, colour: width > 0 && os.Getenv("NO_COLOR") == "",
		progress: term.IsTerminal(int(os.Stderr.Fd())) && os.Getenv("CI") == "" && os.Getenv("TERM") != "dumb",
	}
}

// terminalWidth is the width of the terminal on standard output, 0 when it is
// no terminal.
func terminalWidth() int {
	if !term.IsTerminal(int(os.Stdout.Fd())) {
		return 0
	}
	width, _, err := term.GetSize(int(os.Stdout.Fd()))
	if err != nil {
		return 80
	}
	return width
}
