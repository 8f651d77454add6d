package bench_test

import "testing"

func TestTrialFits(t *testing.T) {
	story(t, "a trial fit to measure", `
  fit "trial" {
    title   = "Put the cover on for a trial"
    part    = part.cover
    trial   = true
    without = [part.gasket]
  }
  fit "trial_bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
    trial     = true
  }
  torque "trial" {
    title     = "Tighten the bolts for the trial"
    fastening = fastening.cover_bolts
  }
  measure "gap" {
    title  = "Measure the gap"
    on     = [part.cover]
    tools  = [tool.gauge]
    likely = "1..2 mm"
  }
  remove "trial_bolts" {
    title     = "Take the bolts out"
    fastening = fastening.cover_bolts
  }
  remove "trial" {
    title = "Lift the cover off"
    part  = part.cover
  }
`+gasketAndCover+coverBolts)
	story(t, "never undone", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "trial" { # want "trial never undone"
    title = "Push the gear on for a trial"
    part  = part.gear
    trial = true
  }
`)
	story(t, "never undone, and fitted again", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "trial" { # want "trial never undone"
    title = "Push the gear on for a trial"
    part  = part.gear
    trial = true
  }
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
  }
`)
	story(t, "never undone, and worked under", shaftAndGear+`
  fit "trial" { # want "trial never undone"
    title   = "Put the cover on for a trial"
    part    = part.cover
    trial   = true
    without = [part.gasket]
  }
  inspect "gear" {
    title = "Look at the gear"
    on    = [part.gear]
  }
`+gasketAndCover+coverBolts)
	story(t, "carried on as final", `
  fit "gasket" {
    title = "Lay the gasket"
    part  = part.gasket
  }
  fit "trial" {
    title = "Put the cover on for a trial"
    part  = part.cover
    trial = true
  }
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts # want "trial as final"
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts
  }
`)
	story(t, "fitted for trial only", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "trial" {
    title = "Push the gear on for a trial"
    part  = part.gear
    trial = true
  }
  remove "trial" {
    title = "Pull the gear off"
    part  = part.gear
  }
`)
}

func TestTools(t *testing.T) {
	story(t, "left on", `
  fit "ring" { # want "tool left on"
    title = "Lay the ring on"
    tool  = tool.ring
  }
`)
	story(t, "put on and taken off", `
  fit "ring" {
    title = "Lay the ring on"
    tool  = tool.ring
  }
  remove "ring" {
    title = "Take the ring off"
    tool  = tool.ring
  }
`)
	story(t, "needed while it is on", `
  fit "ring" {
    title = "Lay the ring on"
    tool  = tool.ring
  }
  fit "ring_again" {
    title = "Lay the ring on"
    tool  = tool.ring # want "tool elsewhere"
  }
  remove "ring" {
    title = "Take the ring off"
    tool  = tool.ring
  }
`)
	story(t, "used elsewhere while it is on", `
  fit "ring" {
    title = "Lay the ring on"
    tool  = tool.ring
  }
  inspect "gear" {
    title = "Look at the gear in the tray"
    on    = [part.gear]
    tools = [tool.ring] # want "tool elsewhere"
  }
  inspect "housing" {
    title = "Look at the housing by the ring"
    on    = [part.housing]
    tools = [tool.ring]
  }
  remove "ring" {
    title = "Take the ring off"
    tool  = tool.ring
  }
`+shaftAndGear)
}

func TestMarks(t *testing.T) {
	const mark = `
  mark "line" {
    title = "Draw a line on the end"
    on    = [part.shaft.face.end]
    how   = "pen"
  }
`
	const wash = `
  clean "end" {
    title    = "Wash the end"
    on       = [part.shaft.face.end]
    supplies = [supply.solvent]
  }
`
	const use = `
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
    align = [part.gear.mark.dot, mark.line]
  }
`
	const useAndWant = `
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
    align = [part.gear.mark.dot, mark.line] # want `
	const shaft = `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
`
	story(t, "made and gone by", shaft+mark+use)
	story(t, "washed before it is made", shaft+wash+mark+use)
	story(t, "wiped", shaft+mark+wash+useAndWant+`"mark wiped"
  }
`)
	story(t, "scribed and washed", shaft+`
  mark "line" {
    title = "Scribe a line on the end"
    on    = [part.shaft.face.end]
    how   = "scribe"
  }
`+wash+use)
	story(t, "not made yet", shaft+useAndWant+`"mark not made"
  }
`+mark)
	story(t, "covered", shaftAndGear+gasketAndCover+coverBolts+`
  run "turn" {
    title = "Turn the shaft by hand to the dot"
    on    = [part.shaft]
    by    = "hand"
    marks = [part.gear.mark.dot] # want "mark covered"
  }
`)
}
