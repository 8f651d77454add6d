package bench_test

import "testing"

func TestHolds(t *testing.T) {
	const shaft = `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
`
	const critical = `
  measure "bore" {
    title    = "Measure the bore"
    on       = [part.housing.feature.bore]
    tools    = [tool.gauge]
    accept   = "1..2 mm"
    critical = true
  }
`
	const hold = `
  hold "bore" {
    title  = "Stop until the bore has been seen"
    checks = [measure.bore]
  }
`
	const gasket = `
  fit "gasket" {
    title = "Lay the gasket"
    part  = part.gasket
  }
`
	story(t, "accepted, held, covered", shaft+critical+hold+gasketAndCover+coverBolts)
	story(t, "covered and never held", shaft+critical+gasket+`
  fit "cover" { # want "covered unheld"
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts)
	story(t, "covered before it is held", shaft+critical+gasket+`
  fit "cover" { # want "covered unheld"
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts+hold)
	story(t, "covered before it is accepted", shaft+gasket+`
  fit "cover" { # want "covered unaccepted"
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts+critical+hold)
	story(t, "a hold before what it checks", shaft+`
  hold "bore" {
    title  = "Stop until the bore has been seen"
    checks = [measure.bore] # want "hold checks later"
  }
`+critical+gasketAndCover+coverBolts)
	story(t, "a cover that is on for a while", shaft+gasketAndCover+`
  remove "cover" {
    title = "Take the cover off"
    part  = part.cover
  }
`+critical+hold+`
  fit "cover_again" {
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts)
	story(t, "a hold that checks nothing", `
  hold "bore" { # want "hold checks nothing"
    title = "Stop"
  }
`)
	tell(t, "a hold that checks what an option leaves out", `
  inspect "bore" {
    title = "Look at the bore"
    on    = [part.housing.feature.bore]
    when  = option.drive == "key"
  }
  hold "bore" {
    title  = "Stop until the bore has been seen"
    checks = [inspect.bore] # want "hold checks absent"
  }
`, options, "")
	story(t, "a hold after the step that it guards", critical+hold+`
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  inspect "shaft" {
    title = "Look at the shaft"
    on    = [part.shaft]
  }
  hold "shaft" {
    title  = "Stop until the shaft has been seen"
    checks = [inspect.shaft]
    before = fit.shaft # want "hold after its step"
  }
`)
	story(t, "a hold after what it guards is covered", critical+`
  fit "gasket" {
    title = "Lay the gasket"
    part  = part.gasket
  }
  fit "cover" { # want "covered unheld"
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts+`
  hold "bore" {
    title  = "Stop until the bore has been seen"
    checks = [measure.bore]
    before = fit.cover
  }
`)
	story(t, "a hold after the run that it guards", `
  inspect "housing" {
    title = "Look at the housing"
    on    = [part.housing]
  }
  run "first" { # want "run unheld"
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
  hold "run" {
    title  = "Stop before it runs"
    checks = [inspect.housing]
    before = run.first
  }
`)
	story(t, "irreversible", critical+`
  work "peen" {
    title        = "Peen the edge over"
    on           = [part.housing]
    irreversible = true # want "irreversible unheld"
  }
`)
	story(t, "irreversible and held", critical+hold+`
  work "peen" {
    title        = "Peen the edge over"
    on           = [part.housing]
    irreversible = true
  }
`)
	story(t, "critical torque that nobody looks at", gasketAndCover+`
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts
    critical  = true # want "torque unchecked"
  }
`)
	story(t, "critical torque with an independent check", gasketAndCover+`
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts
    critical  = true
  }
  inspect "bolts" {
    title = "Try the bolts"
    on    = [fastening.cover_bolts]
  }
  hold "bolts" {
    title  = "Stop until the bolts have been tried"
    checks = [inspect.bolts]
  }
`)
}

func TestRuns(t *testing.T) {
	const ready = `
  inspect "ready" {
    title = "Look it over"
    on    = [part.shaft]
  }
  hold "run" {
    title  = "Stop before it runs"
    checks = [inspect.ready]
    before = run.first
  }
`
	const first = `
  run "first" {
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
`
	story(t, "fit to run", shaftAndGear+gasketAndCover+coverBolts+ready+first)
	story(t, "without a hold", shaftAndGear+gasketAndCover+coverBolts+`
  run "first" { # want "run unheld"
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
  run "second" {
    title = "Run it again"
    on    = [part.housing]
    by    = "power"
  }
`)
	story(t, "with a hold that no longer stands", shaftAndGear+`
  inspect "gear" {
    title = "Look at the gear"
    on    = [part.gear]
  }
  hold "gear" {
    title  = "Stop until the gear has been seen"
    checks = [inspect.gear]
  }
  remove "gear" {
    title = "Pull the gear off"
    part  = part.gear
  }
  fit "gear_again" {
    title = "Push the gear on"
    part  = part.gear
  }
  run "first" { # want "run unheld"
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
`)
	story(t, "by hand asks nothing", shaftAndGear+`
  run "turn" {
    title = "Turn it"
    on    = [part.housing]
    by    = "hand"
  }
`)
	story(t, "loose", shaftAndGear+gasketAndCover+ready+`
  run "first" { # want "run loose"
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
`+coverBolts)
	story(t, "never tightened at all", shaftAndGear+gasketAndCover+`
  fit "bolts" { # want "never tightened"
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
`+ready+first)
	story(t, "unlocked", gearAndTab+oilNut+nutOnTight+ready+`
  run "first" { # want "run unlocked"
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
`+lockNut)
	story(t, "with a holding tool on", shaftAndGear+gasketAndCover+`
  fit "clamp" { # want "tool left on"
    title = "Clamp the shaft"
    tool  = tool.clamp
  }
  fit "bolts" {
    title     = "Start the bolts"
    fastening = fastening.cover_bolts
  }
  torque "bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.cover_bolts
    held_by   = tool.clamp
  }
`+ready+first)
	story(t, "with a trial fit on", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "trial" {
    title = "Push the gear on for a trial"
    part  = part.gear
    trial = true
  }
`+ready+`
  run "first" { # want "trial as final"
    title = "Run it"
    on    = [part.housing]
    by    = "power"
  }
  remove "trial" {
    title = "Pull the gear off"
    part  = part.gear
  }
`)
}
