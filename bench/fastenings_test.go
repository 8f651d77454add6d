package bench_test

import "testing"

// cover is a cover that is put on rightly; other stories build on it.
const gasketAndCover = `
  fit "gasket" {
    title = "Lay the gasket"
    part  = part.gasket
  }
  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
  }
`

const coverBolts = `
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts
  }
`

func TestFastenings(t *testing.T) {
	story(t, "a cover that is put on rightly", gasketAndCover+coverBolts)
	story(t, "never tightened", gasketAndCover+`
  fit "bolts" { # want "never tightened"
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
`)
	story(t, "not started by hand", gasketAndCover+`
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts # want "not started"
  }
`)
	story(t, "tightened twice", gasketAndCover+coverBolts+`
  torque "again" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts # want "tightened twice"
  }
`)
	story(t, "tightened again after settling", gasketAndCover+coverBolts+`
  torque "again" {
    title     = "Tighten the bolts again"
    fastening = fastening.cover_bolts
    from      = "tight"
  }
`)
	story(t, "a re-tightening of what is loose", gasketAndCover+coverBolts+`
  loosen "bolts" {
    title     = "Slacken the bolts"
    fastening = fastening.cover_bolts
  }
  torque "again" {
    title     = "Tighten the bolts again"
    fastening = fastening.cover_bolts
    from      = "tight" # want "not as found"
  }
`)
	story(t, "from loosened, and not loosened", gasketAndCover+coverBolts+`
  torque "again" {
    title     = "Tighten the bolts again"
    fastening = fastening.cover_bolts
    from      = "loosened" # want "not as found"
  }
`)
	story(t, "loosened and tightened again", gasketAndCover+coverBolts+`
  loosen "bolts" {
    title     = "Slacken the bolts"
    fastening = fastening.cover_bolts
  }
  torque "again" {
    title     = "Tighten the bolts again"
    fastening = fastening.cover_bolts
    from      = "loosened"
  }
`)
	story(t, "left loose", gasketAndCover+coverBolts+`
  loosen "bolts" { # want "left loose"
    title     = "Slacken the bolts"
    fastening = fastening.cover_bolts
  }
`)
	story(t, "loosened when it is loose", gasketAndCover+coverBolts+`
  loosen "bolts" {
    title     = "Slacken the bolts"
    fastening = fastening.cover_bolts
  }
  loosen "twice" {
    title     = "Slacken the bolts"
    fastening = fastening.cover_bolts # want "nothing to loosen"
  }
  torque "again" {
    title     = "Tighten the bolts again"
    fastening = fastening.cover_bolts
    from      = "loosened"
  }
`)
	story(t, "stack not on", `
  fit "cover" {
    title = "Put the cover on"
    part  = part.cover # want "seat not on"
  }
`+coverBolts+`
  fit "gasket" {
    title = "Lay the gasket"
    part  = part.gasket
  }
`)
	story(t, "bolts before the lid", `
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts # want "seat not on"
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
  }
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
  }
`)
	tell(t, "bolts before the plate behind the wall", `
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
  }
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.through_bolts
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.through_bolts # want "stack not on"
  }
  fit "plate" {
    title = "Hold the plate behind the wall"
    part  = part.plate
  }
`, `
part "plate" {
  name    = "Backing plate"
  sits_on = part.housing
}
fastening "through_bolts" {
  name   = "Through bolts"
  stack  = [part.lid, part.housing, part.plate]
  torque = "10 N·m"
}
`, "")
	story(t, "removed while its bolts are tight", gasketAndCover+coverBolts+`
  remove "cover" {
    title = "Take the cover off"
    part  = part.cover # want "removed fastened"
  }
  fit "cover_again" {
    title = "Put the cover on"
    part  = part.cover
  }
  fit "bolts_again" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
  torque "bolts_again" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts
  }
`)
	story(t, "bolts taken out and not put back", gasketAndCover+coverBolts+`
  remove "bolts" { # want "never refitted"
    title     = "Take the bolts out"
    fastening = fastening.cover_bolts
  }
`)
	story(t, "a drain plug out and in again", `
  fit "plug" {
    title     = "Start the plug"
    fastening = fastening.plug
  }
  torque "plug" {
    title     = "Tighten the plug"
    fastening = fastening.plug
  }
  remove "plug" {
    title     = "Take the plug out"
    fastening = fastening.plug
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
	story(t, "a nut that comes assembled", `
  torque "nut" {
    title     = "Tighten the lock nut"
    fastening = fastening.adjuster_nut
  }
`)
	story(t, "places one after the other", `
  fit "arm" {
    title   = "Put the arm on"
    part    = part.arm
    at_each = places.side
  }
  fit "arm_bolt" {
    title     = "Start the bolt"
    fastening = fastening.arm_bolts
    at_each   = places.side
  }
  torque "arm" {
    title     = "Tighten the bolt"
    fastening = fastening.arm_bolts
    at_each   = places.side
    only      = ["left"]
  }
  torque "arm_right" {
    title     = "Tighten the bolt"
    fastening = fastening.arm_bolts
    at_each   = places.side
    only      = ["right"]
  }
`)
	story(t, "one place forgotten", `
  fit "arm" {
    title   = "Put the arm on"
    part    = part.arm
    at_each = places.side
  }
  fit "arm_bolt" { # want "never tightened"
    title     = "Start the bolt"
    fastening = fastening.arm_bolts
    at_each   = places.side
  }
  torque "arm" {
    title     = "Tighten the bolt"
    fastening = fastening.arm_bolts
    at_each   = places.side
    only      = ["left"]
  }
`)
}
