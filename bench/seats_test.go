package bench_test

import "testing"

// What is threaded onto one spindle goes on in the order of the stack, and the
// nut on the spindle holds what lies at its bottom.
func TestSpindle(t *testing.T) {
	const entries = `
part "axle" {
  name    = "Axle"
  sits_on = part.housing
}

part "wheel" {
  name    = "Wheel"
  sits_on = part.axle
}

part "washer" {
  name    = "Washer"
  sits_on = part.axle
}

part "axle_nut" {
  name    = "Axle nut"
  sits_on = part.axle
}

part "dust_cap" {
  name    = "Dust cap"
  sits_on = part.wheel
  covers  = [fastening.axle]
}

fastening "axle" {
  name      = "Axle nut"
  stack     = [part.washer, part.wheel]
  fasteners = [part.axle_nut]
  torque    = "20 N·m"
}
`
	put := func(id, want string) string {
		return `
  fit "` + id + `" {
    title = "Put it on"
    part  = part.` + id + want + `
  }
`
	}
	const nut = `
  fit "nut" {
    title     = "Start the nut"
    fastening = fastening.axle
  }
  torque "nut" {
    title     = "Tighten the nut"
    fastening = fastening.axle
  }
`
	tell(t, "washer before wheel", put("axle", "")+put("washer", ` # want "seat not on"`)+put("wheel", "")+nut+put("dust_cap", ""), entries, "")
	tell(t, "wheel before washer", put("axle", "")+put("wheel", "")+put("washer", "")+nut+put("dust_cap", ""), entries, "")
	const rock = `
  inspect "rock" {
    title    = "Rock the wheel"
    on       = [part.wheel]
    critical = true
  }
`
	tell(t, "the nut of a critical wheel is covered", put("axle", "")+put("wheel", "")+put("washer", "")+nut+rock+`
  fit "dust_cap" { # want "covered unheld"
    title = "Put it on"
    part  = part.dust_cap
  }
`, entries, "")
}
