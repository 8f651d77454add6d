package bench_test

import "testing"

func TestClock(t *testing.T) {
	const heat = `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  heat "gear" {
    title = "Warm the gear"
    on    = [part.gear]
    to    = "90..100 °C"
    takes = "20 min"
  }
`
	story(t, "in time", heat+`
  fit "gear" {
    title  = "Push the gear on"
    part   = part.gear
    after  = [heat.gear]
    within = "3 min"
  }
`)
	story(t, "too late", heat+`
  inspect "shaft" {
    title = "Look at the shaft"
    on    = [part.shaft]
    takes = "4 min"
  }
  fit "gear" {
    title  = "Push the gear on"
    part   = part.gear
    after  = [heat.gear]
    within = "3 min" # want "too late"
  }
`)
	story(t, "exactly in time, in thirds of a minute", heat+`
  inspect "shaft" {
    title = "Look at the shaft"
    on    = [part.shaft]
    takes = "1/3 min"
  }
  inspect "again" {
    title = "Look at the shaft"
    on    = [part.shaft]
    takes = "1/7 h"
  }
  fit "gear" {
    title  = "Push the gear on"
    part   = part.gear
    after  = [heat.gear]
    within = "187/21 min"
  }
`)
	story(t, "too early", heat+`
  fit "gear" {
    title      = "Push the gear on"
    part       = part.gear
    after      = [heat.gear]
    not_before = "3 min" # want "too early"
  }
`)
	story(t, "after what comes later", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
    after = [inspect.housing] # want "out of order"
  }
  inspect "housing" {
    title = "Look at the housing"
    on    = [part.housing]
  }
`)
	story(t, "place to place", `
  heat "arm" {
    title   = "Warm the arm"
    on      = [part.arm]
    at_each = places.side
    to      = "90..100 °C"
    takes   = "20 min"
  }
  fit "arm" {
    title   = "Put the arm on"
    part    = part.arm
    at_each = places.side
    after   = [heat.arm]
    within  = "3 min"
    takes   = "1 min"
  }
`)
	tell(t, "procedures in the wrong order", `
procedure "second" {
  title = "Gear"
  after = [procedure.first] # want "out of order"
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
  }
  inspect "shaft" {
    title = "Look at both"
    on    = [part.gear]
  }
}
procedure "first" {
  title = "Shaft"
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
}
`, "", `  order = [procedure.second, procedure.first]`)
	tell(t, "a procedure left out of the order has a rule of its own", `
procedure "first" {
  title = "Shaft"
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
}
procedure "second" {
  title = "Gear"
  after = [procedure.first]
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
  }
}
`, "", `  order = [procedure.second]`)
}

func TestReadings(t *testing.T) {
	const measure = `
  measure "gap" {
    title  = "Measure the gap"
    on     = [part.housing]
    tools  = [tool.gauge]
    likely = "1..2 mm"
  }
`
	const calculate = `
  calculate "rest" {
    title = "Work out the rest"
    is    = measure.gap - "0.5 mm"
  }
`
	story(t, "read and used", measure+calculate)
	story(t, "used before it is read", `
  calculate "rest" {
    title = "Work out the rest"
    is    = measure.gap - "0.5 mm" # want "used before read"
  }
`+measure)
	tell(t, "read under an option only", `
  measure "gap" {
    title  = "Measure the gap"
    on     = [part.housing]
    when   = option.drive == "key"
    tools  = [tool.gauge]
    likely = "1..2 mm"
  }
  calculate "rest" {
    title = "Work out the rest"
    is    = measure.gap - "0.5 mm" # want "read sometimes"
  }
`, options, "")
	tell(t, "read and used under the same option", `
  measure "gap" {
    title  = "Measure the gap"
    on     = [part.housing]
    when   = option.drive == "key"
    tools  = [tool.gauge]
    likely = "1..2 mm"
  }
  calculate "rest" {
    title = "Work out the rest"
    when  = option.drive == "key"
    is    = measure.gap - "0.5 mm"
  }
`, options, "")
	story(t, "a setting and its lock nut", `
  adjust "gap" {
    title      = "Set the gap"
    on         = [part.housing]
    tools      = [tool.gauge]
    accept     = "1..2 mm"
    locks_with = fastening.adjuster_nut # want "setting disturbed"
  }
  torque "nut" {
    title     = "Tighten the lock nut"
    fastening = fastening.adjuster_nut
  }
`)
	story(t, "a setting that is read again", `
  adjust "gap" {
    title      = "Set the gap"
    on         = [part.housing]
    tools      = [tool.gauge]
    accept     = "1..2 mm"
    locks_with = fastening.adjuster_nut
  }
  torque "nut" {
    title     = "Tighten the lock nut"
    fastening = fastening.adjuster_nut
  }
`+measure)
}

const options = `
option "drive" {
  name    = "Drive"
  choices = ["key", "friction"]
}
`

func TestWaits(t *testing.T) {
	const hot = `
  heat "gear" {
    title = "Warm the gear"
    on    = [part.gear]
    to    = "100 °C"
    takes = "1 h"
  }
`
	const wait = `
  wait "cold" {
    title = "Let the gear grow cold"
    until = [heat.gear]
    takes = "1 h"
  }
`
	story(t, "a wait for what is done", hot+wait)
	story(t, "a wait for what is done later", `
  wait "cold" {
    title = "Let the gear grow cold"
    until = [heat.gear] # want "waits for later"
    takes = "1 h"
  }
`+hot)
}
