package main

import (
	"errors"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/replace"
)

func newBundle() *cobra.Command {
	var (
		f      ruleFlags
		output string
	)
	cmd := &cobra.Command{
		Use:   "bundle --profile NAME --output FILE",
		Short: "Write the rulebook of a profile stack as a standard OPA bundle",
		Long: "Writes an OPA bundle (.tar.gz). A stock OPA that loads it and gets the output of\n" +
			"slablint derive as input gives the same verdicts under data.verdicts.of. A bundle\n" +
			"does not restack: name only profiles that speak of the jobs it will judge.",
		Args: cobra.NoArgs,
		RunE: func(*cobra.Command, []string) error {
			if len(f.profiles) == 0 {
				return errors.New("--profile is needed: a bundle holds one profile stack")
			}
			rb, err := f.rulebook()
			if err != nil {
				return err
			}
			selection, err := rb.Select(f.profiles...)
			if err != nil {
				return err
			}
			if output == "" {
				return errors.New("--output is needed: a bundle is not for the terminal")
			}
			return replace.File(output, selection.WriteBundle)
		},
	}
	f.add(cmd)
	cmd.Flags().StringVar(&output, "output", "", "file to write, such as rulebook.tar.gz")
	return cmd
}
