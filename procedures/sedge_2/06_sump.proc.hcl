procedure "sump" {
  title      = "Fit the oil pump and close the sump"
  after      = [procedure.barrels]
  conditions = "20 °C"
  intro      = <<-EOT
    Closing the sump is the one job in this manual against the clock. Lay out
    the sump, the ten bolts, the wrench and the socket before you open the tube.
  EOT

  coat "pump" {
    title    = "Fill the pump with oil through its inlet"
    on       = [part.oil_pump.feature.inlet]
    tools    = [tool.oil_can]
    supplies = [supply.engine_oil]
    takes    = "2 min"
    why      = "A dry pump may never begin to draw. Turn its shaft until oil comes out."
  }

  fit "pump" {
    title  = "Set the oil pump on its pad"
    part   = part.oil_pump
    facing = "Inlet towards the sump"
    takes  = "2 min"
  }

  fit "pump_bolts" {
    title     = "Start the two pump bolts by hand"
    fastening = fastening.pump_bolts
    takes     = "1 min"
  }

  torque "pump_bolts" {
    title     = "Tighten the pump bolts"
    fastening = fastening.pump_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "2 min"
  }

  lock "pump_bolts" {
    title     = "Wire the two bolt heads together"
    fastening = fastening.pump_bolts
    by        = supply.lock_wire
    supplies  = [supply.lock_wire]
    tools     = [tool.wire_pliers, tool.side_cutters]
    takes     = "8 min"
    why       = "The wire has to pull both heads clockwise. Laid the other way round, it helps them out."
  }

  fit "strainer" {
    title = "Clip the strainer onto the pump"
    part  = part.strainer
    takes = "1 min"
  }

  run "by_hand" {
    title     = "Turn the crankshaft twice by hand"
    on        = [part.crankshaft, part.oil_pump]
    by        = "hand"
    takes     = "1 min"
    criterion = "Oil wells from the pump's outlet, and no rod touches the strainer."
    otherwise = "Stop. Take the pump off and look at its drive."
  }

  inspect "inside" {
    title     = "Look into the crankcase for the last time"
    on        = [part.crankcase, part.lock_plate, part.strainer]
    tools     = [tool.hand_lamp, tool.inspection_mirror]
    people    = 2
    takes     = "6 min"
    criterion = "Four tabs bent, one wire twisted, no rag, no tool, nothing loose."
    otherwise = "Put it right now. Nobody will look in here again for ten years."
    text      = "Count the rags and the tools on the bench. Each of you counts alone."
  }

  hold "inside" {
    title   = "Stop before the sump closes"
    checks  = [inspect.inside, procedure.rods.inspect.bolts]
    before  = seal.sump
    release = "second person"
    takes   = "3 min"
  }

  clean "faces" {
    title    = "Degrease both faces of the sump joint"
    on       = [part.crankcase.face.sump, part.sump.face.flange]
    tools    = [tool.scraper]
    supplies = [supply.solvent, supply.rags]
    takes    = "6 min"
  }

  seal "sump" {
    title      = "Lay the bead on the sump flange"
    on         = [part.sump.face.flange]
    between    = [part.sump.face.flange, part.crankcase.face.sump]
    supplies   = [supply.silicone_sealant]
    keep_clear = [part.sump.port.drain]
    closed_by  = fit.sump
    figures    = [media.sump_film]
    takes      = "4 min"
    text       = "Run one bead of 2 mm without a break, inside the bolt holes."
  }

  fit "sump" {
    title  = "Lower the sump onto the crankcase"
    part   = part.sump
    facing = "Drain hole aft"
    takes  = "1 min"
    text   = "Set it down straight on its two dowels. A sump that slides wipes the bead away."
  }

  fit "sump_bolts" {
    title     = "Start the ten bolts by hand"
    fastening = fastening.sump_bolts
    takes     = "3 min"
  }

  torque "sump_bolts" {
    title     = "Tighten the sump bolts"
    fastening = fastening.sump_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "5 min"
  }

  clean "squeeze_out" {
    title    = "Wipe off what the joint squeezed out"
    on       = [part.crankcase.face.sump, part.sump.face.flange]
    supplies = [supply.rags]
    takes    = "3 min"
  }

  fit "drain_washer" {
    title    = "Put a copper washer on the drain hole"
    part     = part.drain_washer
    quantity = 1
    takes    = "1 min"
  }

  fit "drain_plug" {
    title     = "Start the drain plug by hand"
    fastening = fastening.drain_plug
    takes     = "1 min"
  }

  torque "drain_plug" {
    title     = "Tighten the drain plug"
    fastening = fastening.drain_plug
    tools     = [tool.torque_wrench_100, tool.socket_18]
    takes     = "1 min"
  }

  work "swing" {
    title  = "Swing the engine right way up"
    on     = [part.crankcase]
    tools  = [tool.build_stand]
    people = 2
    takes  = "2 min"
    text   = "One of you guides the barrels while the other works the locking pin."
  }
}
