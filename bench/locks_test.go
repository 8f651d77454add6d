package bench_test

import "testing"

const gearAndTab = `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
  }
  fit "tab" {
    title = "Lay the tab washer on"
    part  = part.tab
  }
`

const oilNut = `
  coat "thread" {
    title    = "Oil the thread"
    on       = [fastening.gear_nut]
    supplies = [supply.oil]
  }
`

const nutOnTight = `
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.gear_nut
  }
`

const lockNut = `
  lock "nut" {
    title     = "Bend the tab"
    fastening = fastening.gear_nut
  }
`

func TestLocksAndLubricants(t *testing.T) {
	story(t, "locked", gearAndTab+oilNut+nutOnTight+lockNut)
	story(t, "lock missing", gearAndTab+oilNut+`
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
  torque "nut" { # want "lock missing"
    title     = "Tighten the nut"
    fastening = fastening.gear_nut
  }
`)
	story(t, "locked before it is tight", gearAndTab+oilNut+`
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
  lock "nut" {
    title     = "Bend the tab"
    fastening = fastening.gear_nut # want "locked loose"
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.gear_nut
    from      = "tight"
  }
`)
	story(t, "never tightened, but locked", gearAndTab+oilNut+`
  fit "nut" { # want "never tightened"
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
`+lockNut)
	story(t, "no oil", gearAndTab+`
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.gear_nut # want "wrong lubricant"
  }
`+lockNut)
	story(t, "grease for oil", gearAndTab+`
  coat "thread" {
    title    = "Grease the thread"
    on       = [fastening.gear_nut]
    supplies = [supply.grease]
  }
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.gear_nut # want "wrong lubricant"
  }
`+lockNut)
	story(t, "oil washed off", gearAndTab+oilNut+`
  clean "thread" {
    title    = "Wash the thread"
    on       = [fastening.gear_nut]
    supplies = [supply.solvent]
  }
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.gear_nut
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.gear_nut # want "wrong lubricant"
  }
`+lockNut)
	story(t, "a tab used again", gearAndTab+oilNut+nutOnTight+lockNut+`
  loosen "nut" {
    title     = "Slacken the nut"
    fastening = fastening.gear_nut
  }
  torque "again" {
    title     = "Tighten the nut again"
    fastening = fastening.gear_nut
    from      = "loosened"
  }
  lock "again" {
    title     = "Bend the tab"
    fastening = fastening.gear_nut # want "spent used again"
  }
`)
	story(t, "threadlocker", `
  coat "screw" {
    title    = "Wet the screw"
    on       = [fastening.grub_screw]
    supplies = [supply.locker]
  }
  torque "screw" {
    title     = "Tighten the screw"
    fastening = fastening.grub_screw
    from      = "loosened" # want "not as found"
  }
`)
	story(t, "threadlocker not renewed", `
  loosen "screw" {
    title     = "Slacken the screw"
    fastening = fastening.grub_screw
  }
  torque "screw" { # want "lock missing"
    title     = "Tighten the screw"
    fastening = fastening.grub_screw
    from      = "loosened"
  }
`)
	story(t, "threadlocker renewed", `
  loosen "screw" {
    title     = "Slacken the screw"
    fastening = fastening.grub_screw
  }
  coat "screw" {
    title    = "Wet the screw"
    on       = [fastening.grub_screw]
    supplies = [supply.locker]
  }
  torque "screw" {
    title     = "Tighten the screw"
    fastening = fastening.grub_screw
    from      = "loosened"
  }
`)
}
