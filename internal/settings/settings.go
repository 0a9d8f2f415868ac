// Package settings reads the office's settings file, slablint.yaml: which files
// are job records and how they are judged.
package settings

import (
	"errors"
	"fmt"
	"io/fs"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"github.com/bmatcuk/doublestar/v4"

	"github.com/slablint/slablint/internal/finding"
	"github.com/slablint/slablint/internal/record"
)

// FileName is the name under which the settings are looked for.
const FileName = "slablint.yaml"

// Settings is what the file says. Paths are relative to its folder.
type Settings struct {
	Records  []string // patterns; ** stands for any folders
	Profiles []string
	HoldAt   finding.Grade
	Policy   string
	NewOnly  bool
}

// IsRecord reports whether a path, relative to the folder of the settings and
// with forward slashes, is a job record.
func (s Settings) IsRecord(file string) bool {
	return slices.ContainsFunc(s.Records, func(pattern string) bool {
		matched, err := doublestar.Match(pattern, file)
		return matched && err == nil
	})
}

// Find looks for the settings file from a folder of a file system upward to its
// top. Without one, err is fs.ErrNotExist.
func Find(all fs.FS, folder string) (file string, err error) {
	for at := folder; ; at = path.Dir(at) {
		candidate := path.Join(at, FileName)
		if _, err := fs.Stat(all, candidate); err == nil {
			return candidate, nil
		} else if !errors.Is(err, fs.ErrNotExist) {
			return "", err
		}
		if at == "." {
			return "", fs.ErrNotExist
		}
	}
}

// Read reads the settings. Errors carry file, line and column.
func Read(name string, data []byte) (Settings, error) {
	doc, err := record.ReadYAML(name, data, record.Limits{})
	if err != nil {
		return Settings{}, err
	}
	r := reader{name: name}
	s := r.settings(doc.Root)
	if r.err == nil && len(s.Records) == 0 {
		r.fail(doc.Root, "records is missing: give the patterns of the job records, such as jobs/**/*.yaml")
	}
	return s, r.err
}

// reader keeps the first mistake.
type reader struct {
	name string
	err  error
}

func (r *reader) fail(n *record.Node, format string, args ...any) {
	if r.err == nil {
		r.err = &record.Error{Spot: n.Spot(r.name), Message: fmt.Sprintf(format, args...)}
	}
}

func (r *reader) settings(root *record.Node) Settings {
	var s Settings
	for i := range root.Len() {
		n := root.Item(i)
		switch n.Key() {
		case "records":
			s.Records = r.texts(n)
			for _, pattern := range s.Records {
				if !doublestar.ValidatePattern(pattern) {
					r.fail(n, "found %q, which is no valid pattern", pattern)
				}
			}
		case "profiles":
			s.Profiles = r.texts(n)
		case "policy":
			s.Policy = r.local(n)
		case "new_only":
			if n.Kind() != record.Bool {
				r.fail(n, "new_only: write true or false")
			}
			s.NewOnly = n.Bool()
		case "hold_at":
			grade, err := finding.ParseGrade(n.Text())
			if err != nil {
				r.fail(n, "hold_at: %v", err)
			}
			s.HoldAt = grade
		default:
			r.fail(n, "found the unknown field %q; expected records, profiles, hold_at, policy or new_only", n.Key())
		}
	}
	return s
}

func (r *reader) texts(n *record.Node) []string {
	if n.Kind() != record.Array || n.Len() == 0 {
		r.fail(n, "%s: expected a list of texts", n.Key())
		return nil
	}
	var out []string
	for i := range n.Len() {
		if n.Item(i).Kind() != record.String || n.Item(i).Text() == "" {
			r.fail(n.Item(i), "%s: expected a text", n.Key())
		}
		out = append(out, n.Item(i).Text())
	}
	return out
}

// local is a path that stays below the folder of the settings.
func (r *reader) local(n *record.Node) string {
	text := path.Clean(filepath.ToSlash(n.Text()))
	if n.Kind() != record.String || !filepath.IsLocal(text) || strings.HasPrefix(text, "..") {
		r.fail(n, "%s: expected a folder below the one of this file", n.Key())
	}
	return text
}
