procedure "control" {
  title = "Connect generator and control box"
  after = [procedure.pressure_test, procedure.generator]
  intro = <<-EOT
    From here on electricity can hurt you. Local electrical codes go before this
    manual, and in many places only a licensed electrician may do the work or
    sign for it. Where that is so, hand these pages over and stay to help. The
    house side of the isolator is not part of this kit: leave it to that person.
  EOT

  fit "control_box" {
    title  = "Hang the control box on its bracket"
    part   = part.control_box
    ppe    = [ppe.boots]
    takes  = "10 min"
    facing = "The gland plate looks down"
  }

  fit "box_screws" {
    title     = "Start the box screws by hand"
    fastening = fastening.box_screws
    takes     = "3 min"
  }

  torque "box" {
    title     = "Tighten the box screws"
    fastening = fastening.box_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "5 min"
  }

  fit "isolator_lock" {
    title = "Lock the isolator in its *off* position"
    tool  = tool.isolator_lock
    takes = "3 min"
    text  = "Put your own padlock on and hang your tag beside it. There are now two locks on this job."
  }

  inspect "dead" {
    title     = "Prove that the terminals of box and generator are dead"
    on        = [part.control_box, part.generator]
    tools     = [tool.voltage_tester]
    ppe       = [ppe.insulating_gloves, ppe.goggles]
    criterion = "The tester shows nothing between any two terminals, nor from any terminal to the frame."
    critical  = true
    takes     = "5 min"
    text      = "Try the tester on a known live source, then the terminals, then the live source again."
    otherwise = "Stop. Call the electrician, and touch nothing."
  }

  hold "electrician" {
    title   = "Stop until the licensed electrician takes over"
    checks  = [inspect.dead, procedure.generator.measure.insulation]
    before  = fit.cable
    release = "licensed electrician"
    takes   = "10 min"
    text    = "The electrician looks at both locks and at the reading of the winding, and says who does the next steps."
  }

  fit "cable" {
    title = "Lead the generator cable into both terminal boxes"
    part  = part.generator_cable
    takes = "20 min"
    text  = "Push every eye fully over its stud. Leave a loop that drips below the gland plate."
  }

  fit "terminal_nuts" {
    title     = "Start the terminal nut by hand, ${place}"
    fastening = fastening.terminal_nuts
    at_each   = places.terminal
    takes     = "1 min"
  }

  torque "terminals" {
    title     = "Tighten the terminal nut, ${place}"
    fastening = fastening.terminal_nuts
    at_each   = places.terminal
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "1 min"
    why       = "A terminal that is too loose burns; a brass stud that is overturned shears."
  }

  fit "earth_strap" {
    title = "Lay the earth strap from bed plate to generator"
    part  = part.earth_strap
    takes = "5 min"
  }

  fit "earth_screws" {
    title     = "Start the earth screws by hand"
    fastening = fastening.earth_screws
    takes     = "2 min"
  }

  torque "earth" {
    title     = "Tighten the earth screws"
    fastening = fastening.earth_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_1_2_in]
    takes     = "3 min"
  }

  measure "earth" {
    title     = "Measure from the generator frame to the earth bar"
    on        = [part.earth_strap]
    tools     = [tool.ohmmeter]
    likely    = "0..0.50 Ω"
    accept    = limit.earth
    takes     = "5 min"
    text      = "Hold both probes together first and subtract what the meter then shows."
    otherwise = "Scrape the paint from under the toothed washers, tighten and measure again."
  }

  measure "insulation" {
    title     = "Measure the insulation of winding and cable together"
    on        = [part.generator_cable]
    tools     = [tool.insulation_tester]
    ppe       = [ppe.insulating_gloves]
    likely    = "20..900 MΩ"
    accept    = limit.insulation
    takes     = "5 min"
    text      = "Unplug the regulator card first; 500 V destroys it. Plug it in again when the tester shows zero."
    otherwise = "Undo the cable at one end and test it alone. Renew what fails."
  }

  hold "connected" {
    title   = "Stop until the licensed electrician has signed"
    checks  = [measure.earth, measure.insulation]
    before  = fit.terminal_cover
    release = "licensed electrician"
    takes   = "10 min"
  }

  fit "terminal_cover" {
    title = "Put the terminal cover on"
    part  = part.terminal_cover
    takes = "2 min"
  }

  fit "cover_screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.cover_screws
    takes     = "2 min"
  }

  torque "cover" {
    title     = "Tighten the cover screws"
    fastening = fastening.cover_screws
    tools     = [tool.torque_wrench_lbin, tool.socket_7_16_in]
    takes     = "3 min"
  }
}
