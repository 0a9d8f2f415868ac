package main

import (
	"context"
	"errors"
	"fmt"
	"io/fs"
	"iter"
	"os"
	"path"
	"path/filepath"

	"github.com/spf13/cobra"

	"github.com/slablint/slablint/internal/archive"
	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/gate"
	"github.com/slablint/slablint/internal/pipeline"
	"github.com/slablint/slablint/internal/settings"
)

func newGate(w world) *cobra.Command {
	var (
		f       checkFlags
		call    gateCall
		newOnly bool
	)
	cmd := &cobra.Command{
		Use:   "gate",
		Short: "Judge the records staged in git, as they would be committed",
		Long: "Judges the job records that the index adds or changes, reading them from git and\n" +
			"not from the working tree; with --since REV those that HEAD adds or changes since\n" +
			"it left REV. The file slablint.yaml, found upward from here, says which files are\n" +
			"records and how they are judged; company profiles and requirements that it names\n" +
			"are taken from git too. A hook is not run when git only moves a branch forward,\n" +
			"picks or rebases: --since in a check of the branch sees those.",
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			g, err := openGate(cmd.Context(), call)
			if err != nil {
				return err
			}
			defer g.repository.Close() //nolint:errcheck // only read from
			g.apply(cmd, &f)
			if !cmd.Flags().Changed("new-only") {
				newOnly = g.settings.NewOnly
			}
			return g.judge(cmd.Context(), w, &f, newOnly)
		},
	}
	f.add(cmd)
	cmd.Flags().StringVar(&call.since, "since", "", "judge what HEAD changes since it left this revision, instead of the index")
	cmd.Flags().BoolVar(&newOnly, "new-only", false, "hold only findings that the base did not have")
	cmd.PersistentFlags().StringVar(&call.settings, "settings", "", "settings file, from the top of the repository, instead of the "+settings.FileName+" found upward from here")
	cmd.AddCommand(newGateInstall(w, &call))
	return cmd
}

func newGateInstall(w world, call *gateCall) *cobra.Command {
	return &cobra.Command{
		Use:   "install",
		Short: "Write the hooks that run the gate before every commit",
		Long: "Writes the hooks pre-commit and pre-merge-commit where git looks for them. A hook\n" +
			"that is already there is kept and runs first.",
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			g, err := openGate(cmd.Context(), *call)
			if err != nil {
				return err
			}
			defer g.repository.Close() //nolint:errcheck // only read from
			command := "slablint gate"
			if g.inside != "." || call.settings != "" { // a hook runs at the top
				command += " --settings " + gate.Quote(g.name)
			}
			files, err := g.repository.InstallHook(cmd.Context(), command)
			for _, file := range files {
				if _, err := fmt.Fprintf(w.out, "%s runs %s\n", file, command); err != nil {
					return err
				}
			}
			return err
		},
	}
}

// gateCall is what the gate is asked for.
type gateCall struct {
	since    string
	settings string
}

// gateRun is one run of the gate.
type gateRun struct {
	repository *gate.Repository
	difference gate.Difference
	settings   settings.Settings
	name       string // of the settings file, from the top
	inside     string // its folder, with forward slashes
}

func openGate(ctx context.Context, call gateCall) (*gateRun, error) {
	repository, err := gate.Open(ctx, ".")
	if err != nil {
		return nil, err
	}
	g := &gateRun{repository: repository}
	if call.since != "" {
		g.difference, err = repository.Since(ctx, call.since)
	} else {
		g.difference, err = repository.Staged(ctx)
	}
	if err == nil {
		err = g.readSettings(ctx, call.settings)
	}
	if err != nil {
		return nil, errors.Join(err, repository.Close())
	}
	return g, nil
}

// readSettings takes the settings as the judged state holds them, or from the
// working tree when they are not under version control.
func (g *gateRun) readSettings(ctx context.Context, name string) error {
	all := g.files(ctx, ".")
	if name == "" {
		var err error
		if name, err = settings.Find(all, g.repository.Prefix); errors.Is(err, fs.ErrNotExist) {
			return fmt.Errorf("there is no %s here or above in this repository: write one that says which files are records, such as\nrecords: [\"jobs/**/*.yaml\"]", settings.FileName)
		} else if err != nil {
			return err
		}
	}
	g.name = path.Clean(filepath.ToSlash(name))
	data, err := fs.ReadFile(all, g.name)
	if err != nil {
		return err
	}
	g.inside = path.Dir(g.name)
	g.settings, err = settings.Read(g.name, data)
	return err
}

// apply takes over what the settings say, where no flag says otherwise.
func (g *gateRun) apply(cmd *cobra.Command, f *checkFlags) {
	if !cmd.Flags().Changed("profile") {
		f.profiles = g.settings.Profiles
		f.profileFiles = g.files(cmd.Context(), g.inside)
	}
	if !cmd.Flags().Changed("policy") && g.settings.Policy != "" {
		f.policy = g.settings.Policy
		f.policyFiles = g.files(cmd.Context(), path.Join(g.inside, g.settings.Policy))
	}
	if !cmd.Flags().Changed("hold-at") && g.settings.HoldAt != "" {
		f.holdAt = string(g.settings.HoldAt)
	}
}

// files is a folder of the judged state; what git does not know is looked for
// in the working tree.
func (g *gateRun) files(ctx context.Context, folder string) fs.FS {
	committed := g.repository.Files(ctx, g.difference.New, folder)
	if g.repository.Top == "" {
		return committed
	}
	return layers{committed, os.DirFS(filepath.Join(g.repository.Top, filepath.FromSlash(folder)))}
}

// layers is the first of several file systems that has a file or folder.
type layers []fs.FS

func (l layers) Open(name string) (file fs.File, err error) {
	for _, layer := range l {
		if file, err = layer.Open(name); !errors.Is(err, fs.ErrNotExist) {
			return file, err
		}
	}
	return nil, err
}

func (g *gateRun) isRecord(file string) bool {
	below, err := filepath.Rel(filepath.FromSlash(g.inside), filepath.FromSlash(file))
	return err == nil && filepath.IsLocal(below) && g.settings.IsRecord(filepath.ToSlash(below))
}

func (g *gateRun) judge(ctx context.Context, w world, f *checkFlags, newOnly bool) error {
	options, err := f.options(w)
	if err != nil {
		return err
	}
	if newOnly {
		known, err := g.known(ctx, f, options)
		if err != nil {
			return err
		}
		options.Known = func(job string, finding finding.Finding) bool { return known[finding.Fingerprint(job)] }
	}
	p, err := f.open(options)
	if err != nil {
		return err
	}
	r := newReport()
	if err := judgeAll(ctx, p, g.sources(ctx, g.difference.New, func(c gate.Change) string { return c.New }), f.pictures(), &r); err != nil {
		return err
	}
	return f.finish(w, &r)
}

// known collects the open findings of the base revision. Records are matched by
// job, not by file, so that a moved record keeps its past. A base record that
// cannot be judged knows nothing.
func (g *gateRun) known(ctx context.Context, f *checkFlags, options pipeline.Options) (map[string]bool, error) {
	p, err := f.open(options)
	if err != nil {
		return nil, err
	}
	var base = newReport()
	if err := judgeAll(ctx, p, g.sources(ctx, g.difference.Old, func(c gate.Change) string { return c.Old }), false, &base); err != nil {
		return nil, err
	}
	known := map[string]bool{}
	for _, job := range base.Jobs {
		for _, f := range job.Findings {
			if f.Holds {
				known[f.Fingerprint(job.ID)] = true
			}
		}
	}
	return known, nil
}

// sources lists the changed records in one of their two states.
func (g *gateRun) sources(ctx context.Context, state string, object func(gate.Change) string) iter.Seq2[archive.Source, error] {
	return func(yield func(archive.Source, error) bool) {
		for _, c := range g.difference.Changes {
			if !g.isRecord(c.Path) {
				continue
			}
			var data []byte
			var err error
			switch {
			case object(c) != "":
				data, err = g.repository.Content(ctx, object(c))
			case c.Link && state == g.difference.New:
				err = errors.New("a symbolic link stands where a record is expected: commit the record itself")
			default:
				continue
			}
			source := archive.Bytes(c.Path, data, g.repository.Files(ctx, state, path.Dir(c.Path)))
			if !yield(source, err) {
				return
			}
		}
	}
}
