procedure "timing_cover" {
  title = "Close the timing cover"
  after = [procedure.camshaft, procedure.sump]

  fit "front_seal" {
    title  = "Press the front seal into the cover"
    part   = part.front_seal
    facing = "Spring side to the inside"
    tools  = [tool.press]
    ppe    = [ppe.goggles]
    takes  = "5 min"
    text   = "Support the cover under its boss, not under its flange."
  }

  coat "front_seal" {
    title    = "Grease the lip of the front seal"
    on       = [part.front_seal]
    supplies = [supply.grease]
    takes    = "1 min"
  }

  clean "faces" {
    title    = "Degrease both faces of the cover joint"
    on       = [part.crankcase.face.front, part.timing_cover.face.flange]
    tools    = [tool.scraper]
    supplies = [supply.solvent, supply.rags]
    takes    = "5 min"
  }

  seal "cover" {
    title      = "Roll sealant onto the cover's flange"
    on         = [part.timing_cover.face.flange]
    between    = [part.timing_cover.face.flange, part.crankcase.face.front]
    supplies   = [supply.flange_sealant]
    keep_clear = [part.timing_cover.port.breather]
    closed_by  = fit.cover
    takes      = "4 min"
    why        = "This joint is metal to metal: a film is enough, and a bead would end in the oil."
  }

  fit "cover" {
    title = "Put the timing cover on its dowels"
    part  = part.timing_cover
    takes = "2 min"
  }

  fit "cover_bolts" {
    title     = "Start the eight bolts by hand"
    fastening = fastening.cover_bolts
    takes     = "3 min"
  }

  torque "cover_bolts" {
    title     = "Tighten the cover bolts"
    fastening = fastening.cover_bolts
    tools     = [tool.torque_wrench_20, tool.socket_10]
    takes     = "6 min"
  }

  clean "squeeze_out" {
    title    = "Wipe the edge of the cover joint"
    on       = [part.timing_cover.face.flange, part.crankcase.face.front]
    supplies = [supply.rags]
    takes    = "2 min"
  }

  inspect "lip" {
    title     = "Look at the lip of the front seal"
    on        = [part.front_seal]
    tools     = [tool.hand_lamp, tool.inspection_mirror]
    takes     = "2 min"
    criterion = "The lip points inwards all the way round, and none of it is folded under."
    otherwise = "Stop. Draw the cover off while the sealant is soft, and fit a new seal."
  }
}
