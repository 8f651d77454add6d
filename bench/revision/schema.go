package revision

import _ "embed"

// Schema is the JSON Schema of a snapshot.
//
//go:embed schema.json
var Schema string
