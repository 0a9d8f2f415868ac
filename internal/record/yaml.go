package record

import (
	"crypto/sha256"
	"errors"
	"fmt"
	"io"
	"strings"

	"go.yaml.in/yaml/v4"
)

// ReadYAML reads one record in YAML. It reads the part of YAML that people and
// programs agree on: mappings with distinct text keys, lists, and the plain
// values that plainScalar describes. Anchors, aliases, merge keys, tags,
// directives and a second document are refused. A failure is an *Error.
func ReadYAML(name string, data []byte, limits Limits) (*Document, error) {
	limits = limits.orDefaults()
	text, err := decode(name, 1, data, limits)
	if err != nil {
		return nil, err
	}
	if err := checkYAMLText(name, text); err != nil {
		return nil, err
	}
	root, err := parseYAML(name, text, limits)
	if err != nil {
		return nil, err
	}
	return &Document{Name: name, Root: root, SHA256: sha256.Sum256(data)}, nil
}

func parseYAML(name, text string, limits Limits) (*Node, error) {
	loader, err := yaml.NewLoader(strings.NewReader(text), yaml.WithPlugin(&parserGuard{limits: limits}))
	if err != nil {
		return nil, yamlError(name, text, limits, err)
	}
	top, err := firstDocument(loader, name, text, limits)
	if err != nil {
		return nil, err
	}
	count, last := countNodes(top, limits.Nodes)
	if last != nil {
		at := yamlPos(text, last)
		return nil, newError(name, at, at, tooMany, grouped(limits.Nodes))
	}
	r := yamlReader{file: name, limits: limits, cur: newCursor(text), free: make([]Node, count)}
	root := &r.take(1)[0]
	if err := r.value(root, top, 0); err != nil {
		return nil, err
	}

	var second yaml.Node
	switch err := load(loader, &second); {
	case err == nil:
		at := yamlPos(text, &second)
		return nil, newError(name, at, at, "found a second document; expected one in a file")
	case !errors.Is(err, io.EOF):
		return nil, yamlError(name, text, limits, err)
	}
	return root, nil
}

// firstDocument gives the mapping that is the record.
func firstDocument(loader *yaml.Loader, name, text string, limits Limits) (*yaml.Node, error) {
	var document yaml.Node
	top := pos{1, 1}
	switch err := load(loader, &document); {
	case errors.Is(err, io.EOF) && strings.TrimSpace(text) == "":
		return nil, newError(name, top, top, emptyFile)
	case errors.Is(err, io.EOF):
		return nil, newError(name, top, top, "found only comments; expected keys and values")
	case err != nil:
		return nil, yamlError(name, text, limits, err)
	}
	y := document.Content[0]
	what := "a list"
	switch {
	case y.Kind == yaml.MappingNode:
		return y, nil
	case isEmpty(y):
		what = "an empty document"
	case y.Kind == yaml.ScalarNode:
		what = "the text " + quote(y.Value)
	}
	at := yamlPos(text, y)
	return nil, newError(name, at, at, "found %s; expected keys and values at the top level", what)
}

// load runs the parser. It is held to its word that broken text is an error
// and never a panic.
func load(loader *yaml.Loader, into *yaml.Node) (err error) {
	defer func() {
		if p := recover(); p != nil {
			err = fmt.Errorf("the YAML parser failed: %v", p)
		}
	}()
	return loader.Load(into)
}

// parserGuard stops the parser before it has built a tree far beyond the limits.
// What is only a little too deep is left to yamlReader, which knows the place
// better: the parser counts flow and block collections apart.
type parserGuard struct {
	limits      Limits
	collections int
}

var (
	errTooDeep = errors.New("record: too deep")
	errTooMany = errors.New("record: too many values")
)

// CheckDepth is called at the start of each list and mapping.
func (g *parserGuard) CheckDepth(depth int, _ *yaml.DepthContext) error {
	g.collections++
	switch {
	case depth > 2*g.limits.Depth:
		return errTooDeep
	case g.collections > g.limits.Nodes:
		return errTooMany
	}
	return nil
}

// CheckAlias has nothing to count: an alias is refused before it is followed.
func (g *parserGuard) CheckAlias(int, int) error { return nil }

// countNodes counts the values below y, keys left out, and stops with the
// first one over the limit.
func countNodes(y *yaml.Node, limit int) (n int, over *yaml.Node) {
	if n = 1; n > limit {
		return n, y
	}
	step := 1
	if y.Kind == yaml.MappingNode {
		step = 2
	}
	for i := step - 1; i < len(y.Content); i += step {
		below, over := countNodes(y.Content[i], limit-n)
		if n += below; over != nil {
			return n, over
		}
	}
	return n, nil
}

// yamlPos is where a node begins, which for one that is not written can be
// beyond the end of the text.
func yamlPos(text string, y *yaml.Node) pos {
	c := newCursor(text)
	c.seek(y.Line, y.Column)
	return c.pos()
}

// isEmpty recognises a value that is not written at all, as after "alarm:".
func isEmpty(y *yaml.Node) bool {
	return y.Kind == yaml.ScalarNode && y.Value == "" && y.Style == 0 && y.Anchor == "" && y.Tag == "!!null"
}
