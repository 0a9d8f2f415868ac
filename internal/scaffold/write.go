package main

import (
	_ "embed"
	"errors"
	"fmt"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
)

//go:embed rule.rego.txt
var ruleText string

//go:embed test.rego.txt
var testText string

//go:embed next.txt
var nextText string

// write makes the rule and its test below the policy folder of a repository
// and returns their slash-separated names. It overwrites nothing.
func write(top, topic, name string) ([]string, error) {
	policy := filepath.Join(top, "policy")
	topics, err := knownTopics(policy)
	if err != nil {
		return nil, err
	}
	if !slices.Contains(topics, topic) {
		return nil, fmt.Errorf("unknown topic %q: use one of %s; a new one needs its folder in policy/ and its title in internal/report/topics.go",
			topic, strings.Join(topics, ", "))
	}
	if err := checkName(name); err != nil {
		return nil, err
	}
	texts := []struct{ file, text string }{
		{"policy/" + topic + "/" + name + ".rego", ruleText},
		{"policy/" + topic + "/" + name + "_test.rego", testText},
	}
	for _, t := range texts {
		if _, err := os.Lstat(filepath.Join(top, filepath.FromSlash(t.file))); !errors.Is(err, fs.ErrNotExist) {
			return nil, fmt.Errorf("%s is there already: choose another name, or edit it", t.file)
		}
	}
	var files []string
	for _, t := range texts {
		if err := os.WriteFile(filepath.Join(top, filepath.FromSlash(t.file)), []byte(fill(t.text, topic, name)), 0o644); err != nil {
			return files, err
		}
		files = append(files, t.file)
	}
	return files, nil
}

// knownTopics are the folders of a policy folder that hold rules.
func knownTopics(policy string) ([]string, error) {
	rules, err := filepath.Glob(filepath.Join(policy, "*", "*.rego"))
	if err != nil {
		return nil, err
	}
	var topics []string
	for _, rule := range rules {
		topics = append(topics, filepath.Base(filepath.Dir(rule)))
	}
	slices.Sort(topics)
	topics = slices.Compact(topics)
	if len(topics) == 0 {
		return nil, errors.New("no rules in policy/: run it in the repository's top folder")
	}
	return topics, nil
}

var words = regexp.MustCompile(`^[a-z][a-z0-9]*(_[a-z0-9]+)*$`)

// keywords are words that Rego keeps for itself, so no package can end in them.
var keywords = []string{
	"as", "contains", "data", "default", "else", "every", "false", "if", "import", "in", "input", "not", "null", "package", "some", "true", "with",
}

func checkName(name string) error {
	switch {
	case !words.MatchString(name):
		return fmt.Errorf("%q is no name for a requirement: use small letters, digits and single underscores, such as panel_schedule", name)
	case strings.HasSuffix(name, "_test"):
		return fmt.Errorf("%q would be taken for a test: leave _test out, the test file is written as well", name)
	case slices.Contains(keywords, name):
		return fmt.Errorf("%q is a word of the rule language: name what must be true instead", name)
	}
	return nil
}

func fill(text, topic, name string) string {
	return strings.NewReplacer("TOPIC", topic, "NAME", name).Replace(text)
}
