procedure "frame" {
  title = "Set the engine on its frame"
  after = [procedure.breathing]
  intro = "By now the engine is heavier than two people. From here on the hoist carries it."

  fit "mounts" {
    title = "Stand the four mounts on the bearers"
    part  = part.mount
    takes = "4 min"
  }

  fit "mount_nuts" {
    title     = "Start the four mount nuts by hand"
    fastening = fastening.mount_nuts
    takes     = "3 min"
  }

  torque "mount_nuts" {
    title     = "Tighten the mounts"
    fastening = fastening.mount_nuts
    tools     = [tool.torque_wrench_100, tool.socket_16]
    takes     = "4 min"
  }

  inspect "sling" {
    title     = "Look over hoist and sling"
    on        = [tool.hoist]
    tools     = [tool.hoist]
    people    = 2
    takes     = "4 min"
    criterion = "Hook closed, sling uncut and in date, both shackles pinned, and the path of the load clear."
    otherwise = "Stop. Hang a better sling."
  }

  hold "lift" {
    title   = "Stop before the lift"
    checks  = [inspect.sling]
    before  = work.lift
    release = "second person"
    takes   = "1 min"
  }

  work "lift" {
    title  = "Take the engine's weight on the hoist"
    on     = [part.crankcase]
    tools  = [tool.hoist]
    ppe    = [ppe.boots, ppe.work_gloves]
    lifts  = [part.crankcase]
    people = 2
    takes  = "6 min"
    text   = "One of you works the chain. The other steadies the engine from the side, and calls the stop."
  }

  remove "stand" {
    title  = "Unbolt the stand from the crankcase"
    tool   = tool.build_stand
    people = 2
    takes  = "6 min"
  }

  fit "engine" {
    title  = "Lower the engine onto its mounts"
    part   = part.crankcase
    facing = "Flywheel towards the end of the frame that is painted white"
    tools  = [tool.hoist]
    ppe    = [ppe.boots, ppe.work_gloves]
    people = 2
    takes  = "8 min"
    text   = "Guide the feet over the studs with a bar, never with fingers."
  }

  fit "foot_nuts" {
    title     = "Start the four foot nuts by hand"
    fastening = fastening.foot_nuts
    takes     = "3 min"
  }

  torque "foot_nuts" {
    title     = "Tighten the engine's feet"
    fastening = fastening.foot_nuts
    tools     = [tool.torque_wrench_100, tool.socket_16]
    takes     = "4 min"
    why       = "These nuts lock by their own drag. Feel it on the way down: one that spins freely is scrap."
  }

  fit "starter" {
    title = "Slide the starter motor into its pad"
    part  = part.starter
    takes = "3 min"
  }

  fit "starter_bolts" {
    title     = "Start both starter bolts by hand"
    fastening = fastening.starter_bolts
    takes     = "1 min"
  }

  torque "starter_bolts" {
    title     = "Tighten the starter motor"
    fastening = fastening.starter_bolts
    tools     = [tool.torque_wrench_100, tool.socket_16]
    takes     = "2 min"
  }
}
