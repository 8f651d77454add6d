procedure "crankcase" {
  title = "Prepare the crankcase"
  intro = <<-EOT
    Everything else hangs on this casting, so it gets a quiet hour of its own.

    Left and right are the helmsman's: he faces forward, with the flywheel
    towards him. The timing cover is at the front.
  EOT

  inspect "casting" {
    title     = "Look the crankcase over"
    on        = [part.crankcase]
    tools     = [tool.hand_lamp]
    takes     = "10 min"
    figures   = [figure.layout]
    criterion = "No crack and no dented face. The serial on the pad is the serial on the kit card."
    otherwise = "Stop. Send Withybrook a photograph of the fault and of the serial."
  }

  clean "casting" {
    title    = "Wash the crankcase"
    on       = [part.crankcase, part.crankcase.feature.galleries, part.crankcase.feature.front_bore]
    tools    = [tool.brush, tool.drip_tray]
    supplies = [supply.solvent, supply.rags]
    takes    = "20 min"
    why      = "Swarf from the drilling of the galleries would reach the big ends first."
    text     = <<-EOT
      Push the brush through each gallery from both ends, until the solvent
      runs clear. Let the casting dry in the air.
    EOT
  }

  inspect "galleries" {
    title     = "Look through both galleries"
    on        = [part.crankcase.feature.galleries]
    tools     = [tool.hand_lamp]
    takes     = "5 min"
    criterion = "Light shows from end to end, and the walls are bare metal."
    otherwise = "Wash the galleries again before you look again."
  }

  clean "plug_threads" {
    title    = "Degrease the gallery plugs"
    on       = [fastening.gallery_plugs]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  coat "plug_threads" {
    title    = "Wet the plugs with threadlocker"
    on       = [fastening.gallery_plugs]
    supplies = [supply.threadlocker_medium]
    takes    = "2 min"
    why      = "A drop inside the gallery would set there. Keep the first two threads bare."
  }

  fit "gallery_plugs" {
    title     = "Start both gallery plugs by hand"
    fastening = fastening.gallery_plugs
    takes     = "2 min"
  }

  torque "gallery_plugs" {
    title     = "Tighten the gallery plugs"
    fastening = fastening.gallery_plugs
    tools     = [tool.torque_wrench_20, tool.hex_bit_5]
    takes     = "3 min"
  }

  measure "front_bore" {
    title     = "Measure the front bearing bore"
    on        = [part.crankcase.feature.front_bore]
    tools     = [tool.bore_gauge_50]
    spots     = ["up and down", "side to side"]
    take      = "largest"
    accept    = limit.front_bore
    takes     = "6 min"
    otherwise = "Stop. A bore outside its limit needs a bush made for it: call Withybrook."
    text      = "Let casting and gauge lie side by side for an hour first, so that both are at one temperature."
  }

  measure "bush_outside" {
    title     = "Measure the front bush"
    on        = [part.front_bush.feature.outside]
    tools     = [tool.micrometer_50]
    spots     = ["at the line", "a quarter turn on"]
    take      = "smallest"
    accept    = limit.bush_outside
    takes     = "4 min"
    otherwise = "Stop. Send the bush back."
  }

  calculate "interference" {
    title     = "Work out the interference"
    is        = measure.bush_outside - measure.front_bore
    accept    = limit.bush_interference
    takes     = "2 min"
    otherwise = "Stop. Ask Withybrook for a bush from the next grade, and quote both readings."
  }

  example "a bush in the middle of its limits" {
    readings = { measure.bush_outside = "48.051 mm", measure.front_bore = "48.010 mm" }
    gives    = { calculate.interference = "0.041 mm" }
  }

  hold "before_shrink" {
    title   = "Stop before the bush goes in for good"
    checks  = [measure.front_bore, measure.bush_outside, calculate.interference]
    before  = fit.front_bush
    release = "second person"
    takes   = "5 min"
    text    = "The second person reads the bore gauge and the micrometer again, and signs the two numbers."
  }

  heat "crankcase" {
    title = "Heat the crankcase in the oven"
    on    = [part.crankcase]
    tools = [tool.oven, tool.thermometer]
    ppe   = [ppe.heat_gloves]
    to    = "105..120 °C"
    takes = "75 min"
    why   = <<-EOT
      The bore has to open further than ${calculate.interference}. At this
      temperature aluminium gives a bore of this size twice that.
    EOT
  }

  fit "front_bush" {
    title        = "Drop the bush into the hot bore"
    part         = part.front_bush
    facing       = "Flange to the inside of the crankcase"
    align        = [part.front_bush.mark.line, part.crankcase.mark.oil_hole]
    ppe          = [ppe.heat_gloves]
    after        = [heat.crankcase]
    within       = "2 min"
    takes        = "1 min"
    irreversible = true
    why          = "The line stands over the oil hole. A bush turned by 10° starves the front journal."
    text         = "Let it fall under its own weight. Press the flange with a gloved thumb until the bush has gripped."

    caution {
      hazard = "The crankcase is above 100 °C and looks cold."
      result = "Burnt hands and forearms."
      avoid  = "Wear heat-resistant gloves, and chalk HOT on the bench."
    }
  }

  wait "cool" {
    title = "Let the crankcase cool to the shop's temperature"
    until = [heat.crankcase]
    takes = "3 h"
  }

  inspect "bush_seated" {
    title     = "Try the flange of the bush with a feeler"
    on        = [part.front_bush]
    tools     = [tool.feeler_gauges]
    takes     = "3 min"
    criterion = "The 0.05 mm leaf enters nowhere under the flange, and the oil hole is open over its whole width."
    otherwise = "Stop. A bush that stands off has to be bored out: call Withybrook."
  }

  measure "bush_bore" {
    title  = "Measure the bore of the bush"
    on     = [part.front_bush.feature.bore]
    tools  = [tool.bore_gauge_50]
    spots  = ["front end", "back end"]
    take   = "smallest"
    likely = "42.015..42.055 mm"
    accept = limit.bush_bore
    takes  = "5 min"
    why    = "The crankcase squeezes the bush as it cools, so the bore is only true now."

    otherwise {
      when = "below"
      text = "The squeeze has taken more than usual. The bush is supplied with metal to spare."

      work "ream" {
        title = "Ream the bush by 0.01 mm"
        on    = [part.front_bush.feature.bore]
        tools = [tool.expanding_reamer]
        takes = "15 min"
        text  = "Turn the reamer forwards only, also on the way out."
      }

      then = "read again"
    }

    otherwise {
      when = "above"
      text = "Stop. The bore is too large for the crankshaft: call Withybrook."
      then = "stop"
    }
  }

  fit "stand" {
    title  = "Bolt the stand to the starter pad"
    tool   = tool.build_stand
    people = 2
    takes  = "10 min"
    text   = "One of you holds the crankcase level while the other turns the four knobs of the stand."
  }
}
