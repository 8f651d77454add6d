procedure "cooling_seawater" {
  title = "Fit the seawater cooling"
  after = [procedure.frame]
  when  = option.cooling == "seawater"
  intro = "The pump pushes the water of the river through both jackets and out over the exhaust elbows."

  coat "impeller" {
    title    = "Grease the impeller's housing"
    on       = [part.raw_pump.feature.housing]
    supplies = [supply.rubber_grease]
    takes    = "1 min"
    why      = "The first turns are dry. Mineral grease would swell the rubber until it jams."
  }

  fit "impeller" {
    title  = "Push the impeller into the pump"
    part   = part.impeller
    facing = "Vanes trailing, as the arrow on the housing shows"
    takes  = "2 min"
  }

  fit "raw_pump" {
    title  = "Set the seawater pump on the timing cover"
    part   = part.raw_pump
    facing = "Suction pipe down"
    takes  = "2 min"
  }

  coat "raw_pump_bolts" {
    title    = "Wipe anti-seize on both pump bolts"
    on       = [fastening.raw_pump_bolts]
    supplies = [supply.anti_seize]
    takes    = "1 min"
  }

  fit "raw_pump_bolts" {
    title     = "Start both pump bolts by hand"
    fastening = fastening.raw_pump_bolts
    takes     = "1 min"
  }

  torque "raw_pump_bolts" {
    title     = "Tighten the seawater pump"
    fastening = fastening.raw_pump_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "1 min"
  }

  fit "raw_hoses" {
    title = "Push the seawater hoses on"
    part  = part.raw_hoses
    tools = [tool.screwdriver]
    takes = "12 min"
    text  = "Each hose goes on to the second bead. Its clip sits between the beads."
  }

  inspect "raw_hoses" {
    title     = "Pull at each hose"
    on        = [part.raw_hoses]
    takes     = "3 min"
    criterion = "No hose creeps on its pipe under a pull of both hands."
    otherwise = "Push the hose back to the second bead, and turn its clip half a turn further."
  }
}
