package main

import (
	"fmt"
	"io"
	"strings"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/rulebook"
)

func newTry(w world) *cobra.Command {
	return &cobra.Command{
		Use:   "try DIR",
		Short: "Check a folder of your own requirements and run the tests beside them",
		Args:  cobra.ExactArgs(1),
		RunE: func(cmd *cobra.Command, args []string) error {
			rb, err := rulebook.Builtin()
			if err != nil {
				return err
			}
			folder, err := openFolder(args[0])
			if err != nil {
				return err
			}
			trials, err := rb.Try(cmd.Context(), folder)
			if err != nil {
				return err
			}
			var b strings.Builder
			failed := 0
			for _, t := range trials {
				if t.Passed {
					continue
				}
				failed++
				fmt.Fprintf(&b, "%s: %s failed %s\n", t.Place, t.Name, t.Reason)
			}
			fmt.Fprintf(&b, "%d tests, %d failed\n", len(trials), failed)
			if _, err := io.WriteString(w.out, b.String()); err != nil {
				return err
			}
			if failed > 0 {
				return statusError(outcome.StatusHold)
			}
			return nil
		},
	}
}
