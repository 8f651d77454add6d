package logbook

import _ "embed"

// Schema is the JSON Schema of one line.
//
//go:embed schema.json
var Schema string
