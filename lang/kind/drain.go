package kind

// Drain lets a liquid out.
var Drain = &Kind{
	NeedsOn: true,
	Does:    []Effect{{Drains, "on"}},
	Block: step("drain",
		"Lets a liquid out through an open port.",
		`drain "oil" {
  title   = "Drain the flushing oil"
  on      = [part.gearbox]
  through = part.gearbox.port.drain
}
`,
		liquid()...,
	),
}
