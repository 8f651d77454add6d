package bench_test

import "testing"

func TestBranches(t *testing.T) {
	const pack = `
  fit "shaft" {
    title = "Put the shaft in"
    part  = part.shaft
  }
  measure "gap" {
    title  = "Measure the gap"
    on     = [part.shaft]
    tools  = [tool.gauge]
    likely = "0.1..0.4 mm"
  }
  choose "pack" {
    title  = "Choose the shims"
    from   = part.shim
    pieces = "1..3"
    gap    = measure.gap
    leaves = "0..0.1 mm"
  }
  fit "shims" {
    title = "Slide the shims on"
    part  = choose.pack
  }
`
	story(t, "back to the choice, under a cover without a gasket to spare", pack+gasketAndCover+coverBolts+`
  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.gauge]
    accept = "0..0.1 mm"

    otherwise {
      text = "Choose again."
      then = choose.pack
    }
  }
`)
	story(t, "back under a gasket that is spent", `
  inspect "bore" {
    title = "Look at the bore"
    on    = [part.housing.feature.bore]
  }
  fit "gasket" {
    title = "Lay the gasket"
    part  = part.gasket
  }
  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
  }
`+coverBolts+`
  measure "float" {
    title  = "Measure the float"
    on     = [part.cover]
    tools  = [tool.gauge]
    accept = "0..0.1 mm"

    otherwise {
      text = "Lay another gasket."
      then = fit.gasket # want "branch cannot be done"
    }
  }
`)
	story(t, "past something that cannot be undone", pack+`
  inspect "shims" {
    title = "Look at the shims"
    on    = [part.shim]
  }
  hold "shims" {
    title  = "Stop until the shims have been seen"
    checks = [inspect.shims]
  }
  work "peen" {
    title        = "Peen the shims over"
    on           = [part.shim]
    irreversible = true
  }
  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.gauge]
    accept = "0..0.1 mm"

    otherwise {
      text = "Choose again."
      then = choose.pack # want "branch cannot be done"
    }
  }
`)
	story(t, "a branch that works on something covered", shaftAndGear+gasketAndCover+coverBolts+`
  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.gauge]
    accept = "0..0.1 mm"

    otherwise {
      text = "Dress the gear."
      then = "read again"

      work "dress" {
        title = "Dress the gear"
        on    = [part.gear] # want "covered"
      }
    }
  }
  inspect "after" {
    title = "Look at the cover"
    on    = [part.cover]
  }
`)
	story(t, "a branch that undoes what is in its way", shaftAndGear+gasketAndCover+coverBolts+`
  measure "float" {
    title  = "Measure the float"
    on     = [part.shaft]
    tools  = [tool.gauge]
    accept = "0..0.1 mm"

    otherwise {
      text = "Dress the gear."
      then = "stop"

      remove "bolts" {
        title     = "Take the bolts out"
        fastening = fastening.cover_bolts
      }
      remove "cover" {
        title = "Take the cover off"
        part  = part.cover
      }
      work "dress" {
        title = "Dress the gear"
        on    = [part.gear]
      }
    }
  }
`)
	const cover = gasketAndCover + coverBolts + `
  measure "float" {
    title  = "Measure the float"
    on     = [part.cover]
    tools  = [tool.gauge]
    accept = "0..0.1 mm"

    otherwise {
      text = "Slacken the bolts and settle the cover."
`
	story(t, "a branch that leaves bolts loose", cover+`
      loosen "bolts" { # want "left loose"
        title     = "Slacken the bolts"
        fastening = fastening.cover_bolts
      }
    }
  }
`)
	story(t, "a branch that goes back to the tightening", cover+`
      then = torque.bolts

      loosen "bolts" {
        title     = "Slacken the bolts"
        fastening = fastening.cover_bolts
      }
    }
  }
`)
	story(t, "a branch that tightens them again", cover+`
      loosen "bolts" {
        title     = "Slacken the bolts"
        fastening = fastening.cover_bolts
      }
      torque "again" {
        title     = "Tighten the bolts again"
        fastening = fastening.cover_bolts
        from      = "loosened"
      }
    }
  }
`)
}
