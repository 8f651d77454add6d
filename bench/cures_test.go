package bench_test

import "testing"

// What cures on a thread is as soft as what cures on a face.
func TestCuresOnThreads(t *testing.T) {
	const locker = `
supply "slow_locker" {
  name = "Slow threadlocker"
  kind = "threadlocker"
  cure = "12 h at 20 °C"
}
`
	build := func(wait, run string) string {
		return `
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
  }
  coat "lid_bolts" {
    title    = "Wet the bolts"
    on       = [fastening.lid_bolts]
    supplies = [supply.slow_locker]
    takes    = "2 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "2 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "2 min"
  }
` + wait + `
  hold "run" {
    title  = "Stop before the run"
    checks = [torque.lid_bolts]
    before = run.first
  }
  run "first" {` + run + `
    title = "Switch on"
    on    = [part.housing]
    by    = "electric"
  }
`
	}
	tell(t, "run at once", build("", ` # want "run uncured"`), locker, "")
	tell(t, "run the next day", build(`
  wait "cure" {
    title = "Let the threadlocker cure"
    until = [coat.lid_bolts]
  }
`, ""), locker, "")
	tell(t, "a wait that is too short", build(`
  wait "cure" {
    title = "Let the threadlocker cure"
    for   = "2 h" # want "wait too short"
  }
`, ""), locker, "")
}

const sealedLid = `
  clean "flange" {
    title = "Wash the flanges"
    on    = [part.housing.face.flange, part.lid.face.flange]
    takes = "5 min"
  }
  seal "lid" {
    title     = "Lay a bead on the lid"
    on        = [part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid
    takes     = "4 min"
  }
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
    takes = "1 min"
  }
  clean "bead" {
    title = "Wipe off what came out"
    on    = [part.lid, part.housing]
    takes = "1 min"
  }
`

// A rag that goes round a closed joint does not get in between.
func TestSealedFacesStayDirty(t *testing.T) {
	story(t, "opened and sealed again without washing", sealedLid+`
  remove "lid" {
    title = "Pull the lid off"
    part  = part.lid
  }
  seal "again" {
    title     = "Lay a new bead on the lid"
    on        = [part.lid.face.flange] # want "dirtied"
    supplies  = [supply.sealant]
    closed_by = fit.again
    takes     = "4 min"
  }
  fit "again" {
    title = "Put the lid on again"
    part  = part.lid
    takes = "1 min"
  }
  clean "bead_again" {
    title = "Wipe off what came out"
    on    = [part.lid, part.housing]
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
  }
`)
}

// A seal that names the face of the fitted part alone seals it to what that
// part sits on, and the bolts between the two have its clock.
func TestSealOfOneFace(t *testing.T) {
	story(t, "tightened too late", sealedLid+`
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "40 min"
  }
  torque "lid_bolts" { # want "clamped too late"
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
`)
}

// One oven over several seals is one mistake.
func TestHeatOverSeals(t *testing.T) {
	story(t, "baked", sealedLid+`
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
  heat "paint" {
    title = "Bake the paint"
    on    = [part.housing, part.lid]
    to    = "180 °C" # want "seal too hot"
  }
`)
}
