package bench_test

import "testing"

const wash = `
  clean "faces" {
    title    = "Wash both faces"
    on       = [part.housing.face.flange, part.lid.face.flange]
    supplies = [supply.solvent]
  }
`

const sealLid = `
  seal "lid" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid
    takes     = "3 min"
  }
`

const closeLid = `
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
    takes = "2 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "3 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
`

const wipe = `
  clean "squeeze_out" {
    title    = "Wipe off what came out"
    on       = [part.housing, part.lid]
    supplies = [supply.solvent]
  }
`

const pressure = `
  inspect "ready" {
    title = "Look it over"
    on    = [part.housing]
  }
  hold "pressure" {
    title  = "Stop before pressure"
    checks = [inspect.ready]
    before = run.pressure
  }
`

const run = `
  run "pressure" {
    title = "Put it under pressure"
    on    = [part.housing]
    by    = "pressure"
  }
`

const waitCure = `
  wait "cure" {
    title = "Let it cure"
    until = [seal.lid]
  }
`

func TestSeals(t *testing.T) {
	story(t, "sealed rightly", wash+sealLid+closeLid+wipe+waitCure+pressure+run)
	story(t, "never cleaned", `
  clean "faces" {
    title    = "Wash one face"
    on       = [part.housing.face.flange]
    supplies = [supply.solvent]
  }
  seal "lid" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.lid.face.flange] # want "not cleaned"
    supplies  = [supply.sealant]
    closed_by = fit.lid
    takes     = "3 min"
  }
`+closeLid+wipe)
	story(t, "dirtied since", wash+`
  coat "oops" {
    title    = "Oil the flange against rust"
    on       = [part.housing.face.flange]
    supplies = [supply.oil]
  }
  seal "lid" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange] # want "dirtied"
    between   = [part.housing.face.flange, part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid
    takes     = "3 min"
  }
`+closeLid+wipe)
	story(t, "oil on another face of the same part", wash+`
  coat "bore" {
    title    = "Oil the bore"
    on       = [part.housing.feature.bore]
    supplies = [supply.oil]
  }
`+sealLid+closeLid+wipe)
	story(t, "cleaned the day before", wash+`
  wait "night" {
    title = "Come back tomorrow"
    for   = "14 h"
  }
  seal "lid" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange] # want "dirtied"
    between   = [part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid
    takes     = "3 min"
  }
`+closeLid+wipe)
	story(t, "closed too late", wash+sealLid+`
  inspect "bead" {
    title = "Look at the bead"
    on    = [part.shaft]
    takes = "6 min"
  }
  fit "lid" { # want "closed too late"
    title = "Put the lid on"
    part  = part.lid
    takes = "2 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "3 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "25 min"
  }
`+wipe)
	story(t, "closed at the last moment", wash+sealLid+`
  inspect "bead" {
    title = "Look at the bead"
    on    = [part.shaft]
    takes = "5 min"
  }
`+closeLid+wipe)
	story(t, "tightened too late", wash+sealLid+`
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
    takes = "2 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "20 min"
  }
  torque "lid_bolts" { # want "clamped too late"
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "6 min"
  }
`+wipe)
	story(t, "sealed after it is closed", wash+closeLid+`
  seal "lid" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid # want "never closed"
  }
`)
	story(t, "run before it has cured", wash+sealLid+closeLid+wipe+pressure+`
  run "pressure" { # want "run uncured"
    title = "Put it under pressure"
    on    = [part.housing]
    by    = "pressure"
  }
`)
	story(t, "a wait that is too short", wash+sealLid+closeLid+wipe+`
  wait "cure" {
    title = "Let it cure"
    for   = "12 h" # want "wait too short"
  }
`+pressure+run)
	story(t, "turned by hand before it has cured", wash+sealLid+closeLid+wipe+`
  run "turn" {
    title = "Turn it by hand"
    on    = [part.housing]
    by    = "hand"
  }
`)
	story(t, "a wait for one of two cures", wash+sealLid+closeLid+wipe+`
  clean "side" {
    title    = "Wash the side"
    on       = [part.housing.face.side]
    supplies = [supply.solvent]
  }
  seal "side" {
    title    = "Seal the side"
    on       = [part.housing.face.side]
    supplies = [supply.quick_sealant]
  }
  wait "cure" {
    title = "Let it cure"
    until = [seal.side] # want "wait too short"
  }
`+pressure+run)
	tell(t, "cured in the cold", wash+sealLid+closeLid+wipe+`
  wait "cure" {
    title = "Let it cure"
    for   = "24 h" # want "wait too short"
  }
`+pressure+run, "", `  conditions = "12 °C"`)
	story(t, "squeeze-out left", wash+sealLid+`
  fit "lid" { # want "squeeze out left"
    title = "Put the lid on"
    part  = part.lid
    takes = "2 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "3 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
  fit "cap" {
    title = "Screw the cap in"
    part  = part.cap
  }
`)
}

func TestSealsBroken(t *testing.T) {
	const off = `
  remove "lid_bolts" {
    title     = "Take the bolts out"
    fastening = fastening.lid_bolts
  }
  remove "lid" {
    title = "Take the lid off"
    part  = part.lid
  }
`
	const bolts = `
  fit "lid_bolts_again" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "3 min"
  }
  torque "lid_bolts_again" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
`
	story(t, "not made again", wash+sealLid+closeLid+wipe+off+`
  fit "lid_again" { # want "seal broken"
    title = "Put the lid on"
    part  = part.lid
  }
`+bolts)
	story(t, "made twice", wash+sealLid+closeLid+wipe+off+`
  clean "again" {
    title    = "Scrape both faces and wash them"
    on       = [part.housing.face.flange, part.lid.face.flange]
    supplies = [supply.solvent]
  }
  seal "again" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange]
    between   = [part.housing.face.flange, part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid_again
    takes     = "3 min"
  }
  fit "lid_again" {
    title = "Put the lid on"
    part  = part.lid
    takes = "3 min"
  }
`+bolts)
	story(t, "over a mark that is needed", `
  mark "line" {
    title = "Scribe a line"
    on    = [part.housing.face.flange]
    how   = "scribe"
  }
`+wash+`
  seal "lid" {
    title     = "Lay a bead"
    on        = [part.housing.face.flange] # want "seal over"
    between   = [part.housing.face.flange, part.lid.face.flange]
    supplies  = [supply.sealant]
    closed_by = fit.lid
    takes     = "3 min"
  }
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
    align = [mark.line]
    takes = "3 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "3 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
`+wipe)
	story(t, "a mark that is kept clear", `
  mark "line" {
    title = "Scribe a line"
    on    = [part.housing.face.flange]
    how   = "scribe"
  }
`+wash+`
  seal "lid" {
    title      = "Lay a bead"
    on         = [part.housing.face.flange]
    between    = [part.housing.face.flange, part.lid.face.flange]
    keep_clear = [mark.line]
    supplies   = [supply.sealant]
    closed_by  = fit.lid
    takes      = "3 min"
  }
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
    align = [mark.line]
    takes = "3 min"
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
    takes     = "3 min"
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
    takes     = "5 min"
  }
`+wipe)
	story(t, "hotter than it stands", wash+sealLid+closeLid+wipe+`
  heat "bore" {
    title = "Warm the housing"
    on    = [part.housing]
    to    = "160..180 °C" # want "seal too hot"
  }
`)
	story(t, "as warm as it stands", wash+sealLid+closeLid+wipe+`
  heat "bore" {
    title = "Warm the housing"
    on    = [part.housing]
    to    = "120..150 °C"
  }
`)
}
