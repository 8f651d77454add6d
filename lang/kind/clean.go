package kind

// Clean makes faces clean.
var Clean = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Cleans, "on"}},
	Block: step("clean",
		"Makes faces clean until a coat, a seal or too long a wait touches them. Wipes pen and paint marks; a scribed or punched mark stays.",
		`clean "faces" {
  title    = "Clean both flange faces"
  on       = [part.housing.face.flange, part.cover.face.flange]
  supplies = [supply.solvent]
}
`),
}
