package rulebook

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io/fs"
	"path"
	"slices"
	"strings"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/format"

	"github.com/slablint/slablint/policy"
	"github.com/slablint/slablint/schema"
)

// Rulebook is every requirement that is known, before a profile is chosen. It
// is read-only once loaded and can be shared by goroutines.
type Rulebook struct {
	requirements map[string]Requirement
	modules      []module
	profiles     fs.FS   // of the built-in profiles
	files        fs.FS   // in which other profiles lie, nil for the disk
	folders      []fs.FS // where tests stand beside the rules
	extended     bool    // by rules that no test of ours has read
}

// module is one rule file without comments.
type module struct {
	File        string `json:"file"`
	Requirement string `json:"requirement,omitempty"` // "" for a library
	Source      string `json:"source"`
}

// image is the generated form of the built-in policy folder: what the METADATA
// blocks say and the rules without comments, so that a run parses neither.
type image struct {
	Requirements []Requirement `json:"requirements"`
	Modules      []module      `json:"modules"`
}

// Builtin is the rulebook that is part of the program.
func Builtin() (*Rulebook, error) {
	var img image
	if err := json.Unmarshal(policy.Image(), &img); err != nil {
		return nil, fmt.Errorf("built-in rulebook: %w", err)
	}
	rb := img.rulebook(policy.Profiles())
	rb.folders = []fs.FS{policy.Tests()}
	return rb, nil
}

func (img image) rulebook(profiles fs.FS) *Rulebook {
	rb := &Rulebook{requirements: make(map[string]Requirement, len(img.Requirements)), modules: img.Modules, profiles: profiles}
	for _, r := range img.Requirements {
		rb.requirements[r.Name] = r
	}
	return rb
}

// Image reads a policy folder, checks every rule against the record schema and
// returns the generated form. Errors carry file and line and name what to do.
func Image(folder fs.FS) ([]byte, error) {
	img, err := read(folder)
	if err != nil {
		return nil, err
	}
	var out bytes.Buffer
	enc := json.NewEncoder(&out)
	enc.SetEscapeHTML(false)
	enc.SetIndent("", " ")
	if err := enc.Encode(img); err != nil {
		return nil, fmt.Errorf("rulebook image: %w", err)
	}
	return out.Bytes(), nil
}

// Extend adds the requirements of a policy folder, such as a company's own.
// A requirement of the same name is refused: change its row in a profile.
func (rb *Rulebook) Extend(folder fs.FS) (*Rulebook, error) {
	img, err := read(folder)
	if err != nil {
		return nil, err
	}
	all := image{Modules: slices.Concat(rb.modules, img.Modules)}
	for _, r := range rb.requirements {
		all.Requirements = append(all.Requirements, r)
	}
	for _, r := range img.Requirements {
		if old, taken := rb.requirements[r.Name]; taken {
			return nil, fmt.Errorf("%s:%d: requirement %s is already defined in %s: choose another name, or change its row in a profile",
				r.File, r.Line, r.Name, old.File)
		}
		all.Requirements = append(all.Requirements, r)
	}
	with := all.rulebook(rb.profiles)
	with.files = rb.files
	with.folders = append(slices.Clone(rb.folders), folder)
	with.extended = true
	return with, nil
}

// WithProfileFiles looks for profiles that are files in a file system, such as
// a state of a repository, instead of on the disk.
func (rb *Rulebook) WithProfileFiles(files fs.FS) *Rulebook {
	with := *rb
	with.files = files
	return &with
}

// Requirements lists all requirements by name.
func (rb *Rulebook) Requirements() []Requirement {
	out := make([]Requirement, 0, len(rb.requirements))
	for _, r := range rb.requirements {
		out = append(out, r)
	}
	slices.SortFunc(out, func(a, b Requirement) int { return strings.Compare(a.Name, b.Name) })
	return out
}

// read parses, type-checks and strips every rule file of a folder.
func read(folder fs.FS) (image, error) {
	var img image
	parsed := map[string]*ast.Module{}
	err := fs.WalkDir(folder, ".", func(file string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() || !strings.HasSuffix(file, ".rego") {
			return err
		}
		source, err := fs.ReadFile(folder, file)
		if err != nil {
			return err
		}
		m, err := ast.ParseModuleWithOpts(file, string(source), ast.ParserOptions{ProcessAnnotation: true, Capabilities: Capabilities()})
		if err != nil {
			return err
		}
		if strings.HasSuffix(file, "_test.rego") {
			return isTest(file, m)
		}
		parsed[file] = m
		name := ""
		if isRequirement(m) {
			r, err := requirementOf(file, m)
			if err != nil {
				return err
			}
			if want := strings.ReplaceAll(strings.TrimSuffix(file, ".rego"), "/", "."); want != r.Name {
				return fmt.Errorf("%s:1: package policy.%s belongs in %s.rego", file, r.Name, path.Join(strings.Split(r.Name, ".")...))
			}
			img.Requirements = append(img.Requirements, r)
			name = r.Name
		} else if len(m.Rules) == 0 {
			return nil // a package that only carries annotations
		}
		stripped, err := withoutComments(m)
		if err != nil {
			return fmt.Errorf("%s: %w", file, err)
		}
		img.Modules = append(img.Modules, module{File: file, Requirement: name, Source: stripped})
		return nil
	})
	if err != nil {
		return image{}, err
	}
	addReads(img.Requirements, parsed)
	if len(img.Requirements) == 0 {
		return image{}, fmt.Errorf("no requirement found: a rule file is <topic>/<name>.rego with package policy.<topic>.<name>")
	}
	return img, typeCheck(parsed, img.Requirements)
}

// addReads fills in what each requirement depends on, by itself and through the
// shared modules that it imports.
func addReads(requirements []Requirement, parsed map[string]*ast.Module) {
	shared := map[string]*ast.Module{}
	for _, m := range parsed {
		shared[requirementName(m)] = m
	}
	for i, r := range requirements {
		all := map[string]bool{}
		seen := map[string]bool{}
		var visit func(m *ast.Module)
		visit = func(m *ast.Module) {
			for _, path := range reads(m) {
				all[path] = true
			}
			for _, name := range imports(m) {
				if next := shared[name]; next != nil && !seen[name] {
					seen[name] = true
					visit(next)
				}
			}
		}
		visit(parsed[r.File])
		requirements[i].Reads = collector{all}.leaves()
	}
}

// isTest refuses a rule in a file that is left out because of its name: nobody
// would notice that the requirement is never asked.
func isTest(file string, m *ast.Module) error {
	tests := 0
	for _, r := range m.Rules {
		switch name := r.Head.Ref()[0].Value.String(); {
		case name == "subjects":
			return fmt.Errorf("%s:%d: files that end in _test.rego hold tests, and this declares subjects: give the requirement a name that does not end in _test", file, r.Location.Row)
		case strings.HasPrefix(name, "test_"):
			tests++
		}
	}
	if !strings.HasSuffix(m.Package.Path.String(), "_test") {
		return fmt.Errorf("%s:%d: files that end in _test.rego hold tests, but the package is %s: rename one of them", file, m.Package.Location.Row, m.Package.Path)
	}
	if tests == 0 {
		return fmt.Errorf("%s:%d: the file ends in _test.rego and holds no test: write one whose name starts with test_, or rename the file", file, m.Package.Location.Row)
	}
	return nil
}

func isRequirement(m *ast.Module) bool {
	return len(m.Package.Path) == 4 && m.Package.Path[1].Value.Compare(ast.String("policy")) == 0
}

func withoutComments(m *ast.Module) (string, error) {
	bare := m.Copy()
	bare.Comments, bare.Annotations = nil, nil
	for _, r := range bare.Rules {
		r.Annotations = nil
	}
	out, err := format.AstWithOpts(bare, format.Opts{RegoVersion: ast.RegoV1})
	return string(out), err
}

// typeCheck compiles all rules against the canonical record schema and a
// schema of the limits that the METADATA blocks declare: a misspelled field or
// limit is an error.
func typeCheck(parsed map[string]*ast.Module, requirements []Requirement) error {
	schemas := ast.NewSchemaSet()
	var canonical any
	if err := json.Unmarshal(schema.Canonical(), &canonical); err != nil {
		return fmt.Errorf("canonical schema: %w", err)
	}
	schemas.Put(ast.MustParseRef("schema.canonical"), canonical)
	schemas.Put(ast.MustParseRef("schema.profile"), limitSchema(requirements))
	modules := make(map[string]*ast.Module, len(parsed)+1)
	hasRoot := false
	for file, m := range parsed {
		modules[file] = m
		hasRoot = hasRoot || len(m.Package.Path) == 2 && len(m.Annotations) > 0
	}
	if !hasRoot {
		root, err := ast.ParseModuleWithOpts("policy.rego", rootPackage, ast.ParserOptions{ProcessAnnotation: true})
		if err != nil {
			return err
		}
		modules["policy.rego"] = root
	}
	c := ast.NewCompiler().WithCapabilities(Capabilities()).WithSchemas(schemas).
		WithUseTypeCheckAnnotations(true).WithStrict(true)
	if c.Compile(modules); c.Failed() {
		return c.Errors
	}
	return nil
}

// rootPackage declares the schemas for a policy folder that does not.
const rootPackage = `# METADATA
# scope: subpackages
# schemas:
#   - input: schema.canonical
#   - data.profile: schema.profile
package policy
`

// limitSchema is the JSON Schema of data.profile.
func limitSchema(requirements []Requirement) any {
	object := func(properties map[string]any) map[string]any {
		return map[string]any{"type": "object", "properties": properties, "additionalProperties": false}
	}
	number := object(map[string]any{"si": map[string]any{"type": "number"}})
	choice := object(map[string]any{"any_of": map[string]any{"type": "array", "items": map[string]any{"type": "string"}}})
	topics := map[string]any{}
	for _, r := range requirements {
		topic, name, _ := strings.Cut(r.Name, ".")
		if topics[topic] == nil {
			topics[topic] = object(map[string]any{})
		}
		limits := map[string]any{}
		for limit, l := range r.Limits {
			if l.Dimension == "choice" {
				limits[limit] = choice
			} else {
				limits[limit] = number
			}
		}
		topics[topic].(map[string]any)["properties"].(map[string]any)[name] = object(limits)
	}
	return object(topics)
}
