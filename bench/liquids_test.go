package bench_test

import "testing"

func TestLiquids(t *testing.T) {
	const plug = `
  fit "plug" {
    title     = "Start the plug"
    fastening = fastening.plug
  }
  torque "plug" {
    title     = "Tighten the plug"
    fastening = fastening.plug
  }
`
	const fill = `
  fill "oil" {
    title    = "Fill with oil"
    on       = [part.housing]
    through  = part.housing.port.filler
    supplies = [supply.oil]
  }
`
	story(t, "filled and closed", plug+fill+`
  fit "cap" {
    title = "Screw the cap in"
    part  = part.cap
  }
  remove "cap" {
    title = "Take the cap off to look at the level"
    part  = part.cap
  }
  fit "cap_again" {
    title = "Screw the cap in"
    part  = part.cap
  }
`)
	story(t, "filled through the cap", plug+`
  fit "cap" {
    title = "Screw the cap in"
    part  = part.cap
  }
  fill "oil" {
    title    = "Fill with oil"
    on       = [part.housing]
    through  = part.housing.port.filler # want "filled closed"
    supplies = [supply.oil]
  }
`)
	story(t, "opened below the oil", plug+fill+`
  remove "plug" {
    title     = "Take the plug out"
    fastening = fastening.plug # want "opened wet"
  }
  fit "plug_again" {
    title     = "Start the plug"
    fastening = fastening.plug
  }
  torque "plug_again" {
    title     = "Tighten the plug"
    fastening = fastening.plug
  }
`)
	story(t, "opened to drain", plug+fill+`
  remove "plug" {
    title     = "Take the plug out"
    fastening = fastening.plug
  }
  drain "oil" {
    title   = "Let the oil out"
    on      = [part.housing]
    through = part.housing.port.drain
  }
  fit "plug_again" {
    title     = "Start the plug"
    fastening = fastening.plug
  }
  torque "plug_again" {
    title     = "Tighten the plug"
    fastening = fastening.plug
  }
`)
}
