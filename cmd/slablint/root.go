package main

import (
	"context"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"time"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/outcome"
	"github.com/slablint/slablint/internal/rulebook"
)

// version is the program's own version, as the changelog counts it.
const version = "0.1.0"

// world is everything a command may know of its surroundings.
type world struct {
	in     io.Reader
	out    io.Writer
	errs   io.Writer
	today  time.Time // the day on which variances must be valid, unless a flag says otherwise
	width  int       // of the terminal, 0 when there is none
	colour bool

	progress bool // whether errs is a terminal on which a bar may move
}

// statusError carries an exit status that is no failure of the program.
type statusError int

func (s statusError) Error() string { return fmt.Sprintf("exit status %d", int(s)) }

// run is the program: arguments and streams in, exit status out.
func run(ctx context.Context, args []string, w world) int {
	root := newRoot(w)
	root.SetArgs(args)
	err := root.ExecuteContext(ctx)
	var status statusError
	switch {
	case err == nil:
		return outcome.StatusReady
	case errors.As(err, &status):
		return int(status)
	}
	_, _ = fmt.Fprintf(w.errs, "slablint: %v\n", err) // nobody is left to tell
	if errors.Is(err, context.Canceled) {
		return outcome.StatusInterrupted
	}
	return outcome.StatusError
}

func newRoot(w world) *cobra.Command {
	root := &cobra.Command{
		Use:   "slablint",
		Short: "Check radon mitigation job records against encoded requirements",
		Long: "slablint checks the record of a radon mitigation job against the requirements of\n" +
			"the profiles it names. " + finding.Notice + "\n\n" +
			"Exit status: 0 every job is ready, 1 a job is on hold, 2 input or call is wrong,\n" +
			"130 interrupted.",
		Version:       version,
		SilenceErrors: true,
		SilenceUsage:  true,
	}
	root.SetIn(w.in)
	root.SetOut(w.out)
	root.SetErr(w.errs)
	root.AddCommand(newCheck(w), newPrint(w), newRules(w), newExplain(w), newDerive(w), newBundle(), newTry(w), newGate(w), newNew(w), newWorksheet(w), newSummary(w), newImport(w))
	return root
}

// ruleFlags are the flags that choose a rulebook.
type ruleFlags struct {
	profiles []string
	policy   string

	profileFiles fs.FS // in which profile files lie, nil for the disk
	policyFiles  fs.FS // the policy folder, nil for the one on the disk
}

func (f *ruleFlags) add(cmd *cobra.Command) {
	cmd.Flags().StringArrayVar(&f.profiles, "profile", nil, "profile name or file, instead of the record's own (repeat to stack, base first)")
	cmd.Flags().StringVar(&f.policy, "policy", "", "folder with further requirements, such as a company's own")
}

func (f *ruleFlags) rulebook() (*rulebook.Rulebook, error) {
	rb, err := rulebook.Builtin()
	if err != nil {
		return nil, err
	}
	if f.profileFiles != nil {
		rb = rb.WithProfileFiles(f.profileFiles)
	}
	switch {
	case f.policy == "":
		return rb, nil
	case f.policyFiles != nil:
		return rb.Extend(f.policyFiles)
	}
	folder, err := openFolder(f.policy)
	if err != nil {
		return nil, err
	}
	return rb.Extend(folder)
}

// openFolder is a folder that must be there.
func openFolder(path string) (fs.FS, error) {
	switch info, err := os.Stat(path); {
	case err != nil:
		return nil, inWords(path, err)
	case !info.IsDir():
		return nil, fmt.Errorf("%s: this is a file, not a folder", path)
	}
	return os.DirFS(path), nil
}

// inWords is a failure of the file system as people say it; other errors stay
// what they are.
func inWords(path string, err error) error {
	var failed *fs.PathError
	if !errors.As(err, &failed) {
		return err
	}
	return fmt.Errorf("%s: %s", path, archive.AsError(path, err).Message)
}

// stackOrAll is the chosen stack, or every built-in profile on its own.
func (f *ruleFlags) stackOrAll(rb *rulebook.Rulebook) ([]*rulebook.Selection, error) {
	var stacks [][]string
	if len(f.profiles) > 0 {
		stacks = [][]string{f.profiles}
	} else {
		for _, name := range rb.ProfileNames() {
			stacks = append(stacks, []string{name})
		}
	}
	out := make([]*rulebook.Selection, len(stacks))
	for i, names := range stacks {
		var err error
		if out[i], err = rb.Select(names...); err != nil {
			return nil, err
		}
	}
	return out, nil
}
