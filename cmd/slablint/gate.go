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
		since   string
		newOnly bool
	)
	cmd := &cobra.Command{
		Use:   "gate",
		Short: "Judge the records staged in git, as they would be committed",
		Long: "Judges the job records that the index adds or changes, reading them from git and\n" +
			"not from the working tree; with --since REV those that HEAD adds or changes since\n" +
			"it left REV. The file slablint.yaml, found upward from here, says which files are\n" +
			"records and how they are judged.",
		Args: cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			g, err := openGate(cmd.Context(), since)
			if err != nil {
				return err
			}
			g.settings.apply(cmd, &f)
			if !cmd.Flags().Changed("new-only") {
				newOnly = g.settings.NewOnly
			}
			return g.judge(cmd.Context(), w, &f, newOnly)
		},
	}
	f.add(cmd)
	cmd.Flags().StringVar(&since, "since", "", "judge what HEAD changes since it left this revision, instead of the index")
	cmd.Flags().BoolVar(&newOnly, "new-only", false, "hold only findings that the base did not have")
	cmd.AddCommand(newGateInstall(w))
	return cmd
}

func newGateInstall(w world) *cobra.Command {
	return &cobra.Command{
		Use:   "install",
		Short: "Write the hook that runs the gate before every commit",
		Args:  cobra.NoArgs,
		RunE: func(cmd *cobra.Command, _ []string) error {
			repository, err := gate.Open(cmd.Context(), ".")
			if err != nil {
				return err
			}
			file, err := repository.InstallHook(cmd.Context(), "slablint gate")
			if err != nil {
				return err
			}
			_, err = fmt.Fprintf(w.out, "%s runs slablint gate\n", file)
			return err
		},
	}
}

// office is the settings file and the folder it lies in.
type office struct {
	settings.Settings
	folder string // from the top of the repository or from here, "." for the top
}

// apply takes over what the settings say, where no flag says otherwise.
func (o office) apply(cmd *cobra.Command, f *checkFlags) {
	if !cmd.Flags().Changed("profile") {
		for _, p := range o.Profiles {
			if path.Ext(p) == ".yaml" {
				p = filepath.Join(o.folder, filepath.FromSlash(p))
			}
			f.profiles = append(f.profiles, p)
		}
	}
	if !cmd.Flags().Changed("policy") && o.Policy != "" {
		f.policy = filepath.Join(o.folder, filepath.FromSlash(o.Policy))
	}
	if !cmd.Flags().Changed("hold-at") && o.HoldAt != "" {
		f.holdAt = string(o.HoldAt)
	}
}

// gateRun is one run of the gate.
type gateRun struct {
	repository *gate.Repository
	state      string // what is judged: the index or HEAD
	changes    []gate.Change
	settings   office
	inside     string // folder of the settings from the top, with forward slashes
}

func openGate(ctx context.Context, since string) (*gateRun, error) {
	repository, err := gate.Open(ctx, ".")
	if err != nil {
		return nil, err
	}
	g := &gateRun{repository: repository, state: gate.Index}
	if since != "" {
		g.state = gate.Head
		g.changes, err = repository.Since(ctx, since)
	} else {
		g.changes, err = repository.Staged(ctx)
	}
	if err != nil {
		return nil, err
	}
	return g, g.readSettings(ctx)
}

// readSettings takes the settings as the judged state holds them.
func (g *gateRun) readSettings(ctx context.Context) error {
	g.inside = "."
	if g.repository.Top != "" {
		file, err := settings.Find(".")
		if errors.Is(err, fs.ErrNotExist) {
			return fmt.Errorf("there is no %s here or above: write one that says which files are records, such as\nrecords: [\"jobs/**/*.yaml\"]", settings.FileName)
		} else if err != nil {
			return err
		}
		top, err := filepath.EvalSymlinks(g.repository.Top)
		if err != nil {
			return err
		}
		folder, err := filepath.EvalSymlinks(filepath.Dir(file))
		if err != nil {
			return err
		}
		inside, err := filepath.Rel(top, folder)
		if err != nil || !filepath.IsLocal(inside) {
			return fmt.Errorf("%s lies outside the repository", file)
		}
		g.inside = filepath.ToSlash(inside)
		g.settings.folder = folder
	}
	name := path.Join(g.inside, settings.FileName)
	data, err := g.repository.File(ctx, g.state, name)
	if errors.Is(err, fs.ErrNotExist) && g.settings.folder != "" { // not under version control
		data, err = os.ReadFile(filepath.Join(g.settings.folder, settings.FileName))
	}
	if err != nil {
		return fmt.Errorf("%s: %w", name, err)
	}
	g.settings.Settings, err = settings.Read(name, data)
	return err
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
	if err := judgeAll(ctx, p, g.sources(ctx, func(c gate.Change) string { return c.New }, g.state), f.pictures(), &r); err != nil {
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
	if err := judgeAll(ctx, p, g.sources(ctx, func(c gate.Change) string { return c.Old }, gate.Head), false, &base); err != nil {
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
func (g *gateRun) sources(ctx context.Context, object func(gate.Change) string, state string) iter.Seq2[archive.Source, error] {
	return func(yield func(archive.Source, error) bool) {
		for _, c := range g.changes {
			if object(c) == "" || !g.isRecord(c.Path) {
				continue
			}
			data, err := g.repository.Content(ctx, object(c))
			source := archive.Bytes(c.Path, data, g.repository.Files(ctx, state, path.Dir(c.Path)))
			if !yield(source, err) {
				return
			}
		}
	}
}
