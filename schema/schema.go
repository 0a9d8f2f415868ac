// Package schema embeds the JSON Schemas of records, derived values,
// profiles, settings and reports. It holds no logic.
package schema

import _ "embed"

//go:embed job.schema.json
var job []byte

//go:embed derived.schema.json
var derived []byte

//go:embed canonical.schema.json
var canonical []byte

//go:embed profile.schema.json
var profile []byte

//go:embed settings.schema.json
var settings []byte

//go:embed report.schema.json
var report []byte

// Job is the schema of the record that people write.
func Job() []byte { return job }

// Derived is the schema of what is computed from a record.
func Derived() []byte { return derived }

// Canonical is the generated schema of what rules read: the record in its
// canonical form with derived values.
func Canonical() []byte { return canonical }

// Profile is the schema of profile files.
func Profile() []byte { return profile }

// Settings is the schema of the office's settings file.
func Settings() []byte { return settings }

// Report is the schema of the JSON report that other programs read.
func Report() []byte { return report }
