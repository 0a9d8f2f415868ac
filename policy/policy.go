// Package policy embeds the rulebook: the requirements in their generated form,
// the tests that examples are taken from, and the profiles. It holds no logic.
package policy

import (
	"embed"
	"io/fs"
)

//go:embed rulebook.json
var image []byte

//go:embed profiles/*.yaml
var profiles embed.FS

//go:embed */*_test.rego
var tests embed.FS

// Image is the generated form of the rule files beside it.
func Image() []byte { return image }

// Tests holds the test of each rule, <topic>/<name>_test.rego.
func Tests() fs.FS { return tests }

// Profiles is the folder of built-in profile files.
func Profiles() fs.FS {
	sub, err := fs.Sub(profiles, "profiles")
	if err != nil {
		panic(err) // the folder is part of the program
	}
	return sub
}
