// Command scaffold writes the files of a new requirement, with placeholders
// that the rulebook's tests refuse until they are filled in.
//
//	go run ./internal/scaffold TOPIC NAME
package main

import (
	"fmt"
	"io"
	"os"
)

func main() {
	os.Exit(run(os.Args[1:], ".", os.Stdout, os.Stderr))
}

// run is the program seen from the repository's top folder: 0 when the files
// are written, 2 when the call is wrong.
func run(args []string, top string, out, errs io.Writer) int {
	if len(args) != 2 {
		_, _ = fmt.Fprintln(errs, "usage: go run ./internal/scaffold TOPIC NAME, such as: labels panel_schedule")
		return 2
	}
	files, err := write(top, args[0], args[1])
	if err != nil {
		_, _ = fmt.Fprintf(errs, "scaffold: %v\n", err)
		return 2
	}
	for _, file := range files {
		_, _ = fmt.Fprintf(out, "wrote %s\n", file)
	}
	_, _ = fmt.Fprint(out, fill(nextText, args[0], args[1]))
	return 0
}
