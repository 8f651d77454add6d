package bench_test

import "testing"

// The bench knows no heights: names tell what is opened above the liquid.
func TestOpenedAboveTheLiquid(t *testing.T) {
	const entries = `
part "case" {
  name    = "Case"
  sits_on = part.housing
  ports   = ["filler", "bleed", "side"]
}

part "sump" {
  name     = "Sump"
  in_place = 1
  sits_on  = part.case
  ports    = ["drain"]
}

part "bleed_screw" {
  name     = "Bleed screw"
  in_place = 1
  sits_on  = part.case
  covers   = [part.case.port.bleed]
}

part "stick" {
  name     = "Dipstick"
  in_place = 1
  sits_on  = part.case
  covers   = [part.case.port.side]
}

part "glass" {
  name     = "Sight glass"
  in_place = 1
  sits_on  = part.case
  covers   = [part.case.port.side]
}
`
	const filled = `
  fit "case" {
    title = "Set the case on"
    part  = part.case
  }
  fill "case" {
    title   = "Fill the case"
    on      = [part.case]
    through = part.case.port.filler
  }
`
	off := func(part, want string) string {
		return filled + `
  remove "it" {
    title = "Take it off"
    part  = part.` + part + want + `
  }
  fit "it" {
    title = "Put it on again"
    part  = part.` + part + `
  }
`
	}
	tell(t, "a bleed screw", off("bleed_screw", ""), entries, "")
	tell(t, "a dipstick", off("stick", ""), entries, "")
	tell(t, "a sight glass", off("glass", ` # want "opened wet"`), entries, "")
	tell(t, "a sump with a drain", off("sump", ` # want "opened wet"`), entries, "")
}
