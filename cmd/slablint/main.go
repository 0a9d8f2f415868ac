// Command slablint checks records of radon mitigation jobs against the
// requirements of chosen profiles and says what is met, deficient or missing.
package main

import (
	"context"
	"os"
	"os/signal"
	"time"

	"golang.org/x/term"
)

func main() {
	ctx, stop := signal.NotifyContext(context.Background(), os.Interrupt)
	defer stop()
	os.Exit(run(ctx, os.Args[1:], world{
		in: os.Stdin, out: os.Stdout, errs: os.Stderr,
		today: time.Now().UTC().Truncate(24 * time.Hour),
		width: terminalWidth(), colour: terminalWidth() > 0 && os.Getenv("NO_COLOR") == "",
	}))
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
