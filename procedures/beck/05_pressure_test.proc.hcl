procedure "pressure_test" {
  title = "Prove the casing with water"
  after = [procedure.casing]
  intro = <<-EOT
    The casing is filled with water and pumped up to one and a half times the
    highest head it may ever see. Water hardly gives, so a leak shows itself and
    nothing bursts. Never do this test with air.
  EOT

  wait "cure" {
    title = "Let the sealant of the elbow cure"
    until = [procedure.casing.seal.front]
  }

  fit "inlet_blank" {
    title = "Clamp the test blank onto the inlet"
    tool  = tool.inlet_blank
    takes = "5 min"
  }

  fit "outlet_blank" {
    title = "Clamp the test blank onto the draft elbow"
    tool  = tool.outlet_blank
    takes = "5 min"
  }

  fill "water" {
    title    = "Fill the casing with water through the vent cock"
    on       = [part.casing]
    through  = part.vent_cock.port.outlet
    supplies = [supply.test_water]
    tools    = [tool.funnel]
    amount   = "3.5 gal"
    takes    = "15 min"
    text     = "Rock the shaft until no more bubbles come up."
    why      = "Air left inside is a spring that stores what water cannot."
  }

  inspect "ready" {
    title     = "Look over blanks, clamps and bolts"
    on        = [part.casing, part.draft_elbow]
    criterion = "Every clamp is closed over its stop, and no drop hangs anywhere."
    takes     = "5 min"
    otherwise = "Drain the casing and put right what leaks."
  }

  hold "pressure" {
    title   = "Stop before the casing is put under pressure"
    checks  = [inspect.ready]
    before  = run.pressure
    release = "second person"
    takes   = "3 min"
  }

  run "pressure" {
    title     = "Pump the casing up to the test pressure"
    on        = [part.casing, part.draft_elbow]
    by        = "pressure"
    tools     = [tool.test_pump, tool.test_gauge]
    ppe       = [ppe.goggles]
    criterion = "The gauge reaches 46 psi, and nothing sprays."
    takes     = "10 min"
    text      = "Stand beside the blanks, never in front of one."
    otherwise = "Let the pressure off at the pump, drain the casing, and put right what leaks."
  }

  wait "ten_minutes" {
    title = "Leave the pump alone"
    for   = "10 min"
  }

  measure "held" {
    title     = "Read the pressure after ten minutes"
    on        = [part.casing]
    tools     = [tool.test_gauge]
    likely    = "40..46 psi"
    accept    = limit.test_pressure
    takes     = "1 min"
    otherwise = "Dry everything, find where water comes out, and let the pressure off before you touch it."
    text      = "Drops at the gland are as they should be. Drops at a flange are not."
  }

  work "let_off" {
    title = "Let the pressure off at the pump"
    on    = [part.casing]
    tools = [tool.test_pump]
    ppe   = [ppe.goggles]
    takes = "1 min"
  }

  drain "water" {
    title   = "Drain the casing through its cock"
    on      = [part.casing]
    through = part.drain_cock.port.outlet
    amount  = "3.5 gal"
    takes   = "10 min"
  }

  remove "outlet_blank" {
    title = "Take the blank off the draft elbow"
    tool  = tool.outlet_blank
    takes = "3 min"
  }

  remove "inlet_blank" {
    title = "Take the blank off the inlet"
    tool  = tool.inlet_blank
    takes = "3 min"
  }

  hold "tested" {
    title   = "Stop until the pressure reading is signed for"
    checks  = [run.pressure, measure.held]
    before  = procedure.first_run.fit.inlet_pipe
    release = "second person"
    takes   = "2 min"
  }
}
