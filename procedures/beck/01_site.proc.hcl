procedure "site" {
  title = "Lock out the water and set the bed plate"
  intro = <<-EOT
    This set is built where it will run, beside a penstock that may be full.
    The water is locked out before the first part is carried in. The lock comes
    off at the first run, and its key stays in your pocket until then.

    Local codes for water, buildings and electricity go before this manual.
    Where they ask for a licensed person, that person does the work.
  EOT

  fit "valve_lock" {
    title   = "Lock the penstock valve shut"
    tool    = tool.penstock_lock
    ppe     = [ppe.boots]
    takes   = "10 min"
    figures = [figure.lock_out]
    text    = <<-EOT
      Turn the valve lever until it meets the *shut* stop. Close the clamp over
      the lever, snap the padlock on, and write your name and the date on the tag.
    EOT
    why     = "A valve that is only shut can be opened by somebody who means well."
  }

  inspect "no_water" {
    title     = "Open the drain cock of the penstock valve"
    on        = [part.penstock_valve]
    criterion = "The cock runs dry within 5 min and then stays dry for 2 min."
    critical  = true
    takes     = "8 min"
    text      = "Stand to the side of the cock, and leave it open until the first run."
    otherwise = "The valve leaks. Stop, and have it repaired before any part is fitted."
  }

  hold "locked_out" {
    title   = "Stop until a second person has pulled at the lock"
    checks  = [inspect.no_water]
    before  = fit.base
    release = "second person"
    takes   = "2 min"
    text    = "The second person pulls at the padlock and looks at the dry cock."
  }

  clean "plinth" {
    title = "Brush the top of the plinth clean"
    on    = [part.plinth.face.top]
    tools = [tool.brush]
    takes = "5 min"
  }

  fit "base" {
    title  = "Lower the bed plate over the anchor studs"
    part   = part.base
    facing = "The long end points away from the penstock"
    tools  = [tool.hoist]
    ppe    = [ppe.boots, ppe.work_gloves]
    people = 2
    takes  = "20 min"
    text   = <<-EOT
      One person works the hoist; the other steers the plate by its edges and
      keeps both hands above it.
    EOT
  }

  inspect "level" {
    title     = "Look at the level in both directions"
    on        = [part.base]
    tools     = [tool.machine_level]
    criterion = "The bubble stands between its two lines, along the plate and across it."
    takes     = "15 min"
    otherwise = "Grind down the high spot of the plinth and set the plate again."
  }

  fit "anchors" {
    title     = "Run the anchor nuts on by hand"
    fastening = fastening.anchors
    takes     = "5 min"
  }

  torque "anchors" {
    title     = "Tighten the anchor nuts"
    fastening = fastening.anchors
    held_by   = part.plinth
    tools     = [tool.torque_wrench_lbft, tool.socket_3_4_in]
    takes     = "10 min"
  }

  inspect "level_again" {
    title     = "Look at the level again"
    on        = [part.base]
    tools     = [tool.machine_level]
    criterion = "The bubble has not moved out of its lines."
    takes     = "5 min"
    why       = "A plate that bends when it is bolted down takes the shaft line with it."
    otherwise = "Slacken the nuts, grind the plinth and tighten them again."
  }
}
