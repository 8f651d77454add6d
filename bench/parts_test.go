package bench_test

import "testing"

const shaftAndGear = `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear
  }
`

const lid = `
  fit "lid" {
    title = "Put the lid on"
    part  = part.lid
  }
  fit "lid_bolts" {
    title     = "Start the bolts"
    fastening = fastening.lid_bolts
  }
  torque "lid_bolts" {
    title     = "Tighten the bolts"
    fastening = fastening.lid_bolts
  }
`

func TestAccess(t *testing.T) {
	story(t, "a sub-assembly in the tray", `
  fit "gear" {
    title = "Push the gear onto the shaft, in the vice"
    part  = part.gear
  }
  inspect "gear" {
    title = "Look at the gear"
    on    = [part.gear]
  }
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
`+gasketAndCover+coverBolts)
	story(t, "work on something covered", shaftAndGear+gasketAndCover+coverBolts+`
  measure "gear" {
    title = "Measure the gear"
    on    = [part.gear.face.front] # want "covered"
    tools = [tool.gauge]
    likely = "1..2 mm"
  }
  measure "gear_again" {
    title = "Measure the gear"
    on    = [part.gear.face.front]
    tools = [tool.gauge]
    likely = "1..2 mm"
  }
`)
	story(t, "fitted under what covers it", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
`+gasketAndCover+coverBolts+`
  fit "gear" {
    title = "Push the gear on"
    part  = part.gear # want "covered"
  }
`)
	story(t, "a lid that does not cover it", shaftAndGear+lid+`
  inspect "gear" {
    title = "Look at the gear"
    on    = [part.gear]
  }
`)
	story(t, "removal forgotten before the work under it", shaftAndGear+gasketAndCover+`
  inspect "gear" {
    title = "Look at the gear"
    on    = [part.gear] # want "covered"
  }
  fit "cover_again" {
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts)
	story(t, "fitted twice", shaftAndGear+`
  fit "gear_again" {
    title = "Push the gear on"
    part  = part.gear # want "fitted twice"
  }
`)
	story(t, "more than the kit holds", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "circlips" {
    title    = "Fit the circlips"
    part     = part.circlip
    quantity = 4 # want "more than kit"
  }
`)
	story(t, "removed and not refitted", shaftAndGear+`
  remove "gear" { # want "never refitted"
    title = "Pull the gear off"
    part  = part.gear
  }
`)
	story(t, "removed for good", shaftAndGear+`
  remove "gear" {
    title    = "Pull the gear off"
    part     = part.gear
    for_good = true
  }
`)
	story(t, "removed and refitted", shaftAndGear+`
  remove "gear" {
    title = "Pull the gear off"
    part  = part.gear
  }
  fit "gear_again" {
    title = "Push the gear on"
    part  = part.gear
  }
`)
	story(t, "taken off when it is not on", `
  remove "gear" {
    title = "Pull the gear off"
    part  = part.gear # want "not on"
  }
`+shaftAndGear)
	story(t, "removed from under", shaftAndGear+gasketAndCover+`
  remove "gear" {
    title = "Pull the gear off"
    part  = part.gear # want "removed under"
  }
  fit "gear_again" {
    title = "Push the gear on"
    part  = part.gear
  }
`+coverBolts)
	story(t, "the shaft comes out with its gear", shaftAndGear+`
  remove "shaft" {
    title = "Lift the shaft out"
    part  = part.shaft
  }
  fit "shaft_again" {
    title = "Put the shaft in"
    part  = part.shaft
  }
`)
	story(t, "held by a circlip", `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  fit "bush" {
    title = "Push the bush on"
    part  = part.bush
  }
  fit "circlip" {
    title    = "Fit the circlip"
    part     = part.circlip
    quantity = 1
  }
  remove "bush" {
    title = "Pull the bush off"
    part  = part.bush # want "removed held"
  }
  fit "bush_again" {
    title = "Push the bush on"
    part  = part.bush
  }
  fit "circlip_again" {
    title    = "Fit a new circlip"
    part     = part.circlip
    quantity = 1
  }
`)
	story(t, "a gasket used again", gasketAndCover+`
  remove "cover" {
    title = "Lift the cover off"
    part  = part.cover
  }
  remove "gasket" {
    title = "Take the gasket off"
    part  = part.gasket
  }
  fit "gasket_again" {
    title = "Lay the gasket"
    part  = part.gasket # want "spent used again"
  }
  fit "cover_again" {
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts)
	tell(t, "never fitted", shaftAndGear, `
part "key" { # want "never fitted"
  name    = "Key"
  sits_on = part.shaft
}
part "spare_key" {
  name    = "Spare key"
  sits_on = part.shaft
  spare   = true
}
part "own" {
  name     = "The builder's own"
  sits_on  = part.shaft
  supplied = false
}
`, "")
	tell(t, "a group that never joins", shaftAndGear+`
  fit "post" {
    title = "Put the post up"
    part  = part.post
  }
`, `
part "foot" { # want "never joins"
  name = "Foot"
}
part "post" {
  name    = "Post"
  sits_on = part.foot
}
`, "")
	tell(t, "two things that a bridge joins", shaftAndGear+`
  fit "post" {
    title = "Put the post up"
    part  = part.post
  }
  fit "bridge" {
    title = "Lay the bridge"
    part  = part.bridge
  }
`, `
part "foot" {
  name = "Foot"
}
part "post" {
  name    = "Post"
  sits_on = part.foot
}
part "bridge" {
  name    = "Bridge"
  sits_on = [part.post, part.housing]
}
`, "")
	tell(t, "two seats that are not together yet", `
  fit "link" {
    title = "Hook the link in"
    part  = part.link # want "seat not on"
  }
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
`, `
part "link" {
  name    = "Link"
  sits_on = [part.housing, part.shaft]
}
`, "")
	tell(t, "an option that brings a part", `
  fit "key" {
    title = "Lay the key in"
    part  = part.key # want "more than kit"
  }
`, `
option "drive" {
  name    = "Drive"
  choices = ["key", "friction"]
}
part "key" {
  name    = "Key"
  when    = option.drive == "key"
  sits_on = part.housing
}
`, "")
}
