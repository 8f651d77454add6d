procedure "cooling_keel" {
  title = "Fit the keel cooling"
  after = [procedure.frame]
  when  = option.cooling == "keel"
  intro = "A closed circuit: the pump drives coolant through the jackets and through a pipe along the keel. A test loop stands in for the keel."

  fit "keel_pump" {
    title  = "Set the circulating pump on the timing cover"
    part   = part.keel_pump
    facing = "Outlet up"
    takes  = "2 min"
  }

  fit "keel_pump_bolts" {
    title     = "Start both pump bolts by hand"
    fastening = fastening.keel_pump_bolts
    takes     = "1 min"
  }

  torque "keel_pump_bolts" {
    title     = "Tighten the circulating pump"
    fastening = fastening.keel_pump_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "1 min"
  }

  fit "header_tank" {
    title = "Hang the header tank on its bracket"
    part  = part.header_tank
    takes = "3 min"
  }

  fit "keel_hoses" {
    title = "Push the keel cooling hoses on"
    part  = part.keel_hoses
    tools = [tool.screwdriver]
    takes = "15 min"
    text  = "Each hose goes on to the second bead. Its clip sits between the beads."
  }

  inspect "keel_hoses" {
    title     = "Pull at each hose"
    on        = [part.keel_hoses]
    takes     = "3 min"
    criterion = "No hose creeps on its pipe under a pull of both hands."
    otherwise = "Push the hose back to the second bead, and turn its clip half a turn further."
  }
}
