# Sound: a seal made twice, a scribed mark washed with solvent, oil on a bush of the
# casting whose flange is sealed, a shaft turned by hand in a half-built machine.

manual "gearbox" {
  title    = "Spur gearbox: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-01-12"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.bed_in, procedure.close]
}

part "case" {
  name     = "Gear case"
  number   = "GB-1"
  material = "cast iron"
  faces    = ["flange"]
  features = ["bush_in", "bush_out"]
  ports    = ["filler"]
}

part "drain_tap" {
  name     = "Drain tap"
  number   = "GB-2"
  in_place = 1
  sits_on  = part.case
  ports    = ["outlet"]
}

part "input_shaft" {
  name    = "Input shaft with pinion"
  number  = "GB-3"
  sits_on = part.case
  mass    = "1.4 kg"
  faces   = ["pinion"]
}

part "output_shaft" {
  name    = "Output shaft with wheel"
  number  = "GB-4"
  sits_on = part.case
  mass    = "3.2 kg"
  faces   = ["wheel"]
}

part "cover" {
  name    = "Case cover"
  number  = "GB-5"
  sits_on = part.case
  covers  = [part.input_shaft.face.pinion, part.output_shaft.face.wheel, part.case.feature.bush_in, part.case.feature.bush_out]
  mass    = "2.1 kg"
  faces   = ["flange"]
}

part "cover_screw" {
  name     = "Cover screw, M8"
  number   = "GB-6"
  quantity = 6
  sits_on  = part.cover
}

fastening "cover_screws" {
  name            = "Cover screws"
  thread          = "M8"
  bolt_class      = "8.8"
  quantity        = 6
  stack           = [part.cover, part.case]
  fasteners       = [part.cover_screw]
  lubricant       = "dry"
  thread_material = "cast iron"
  thread_length   = "16 mm"
  across_flats    = "13 mm"
  torque          = "25 N·m ± 10 %"
  layout          = "circle"
  pattern         = "criss-cross"
  basis           = "About 74 % of proof at K 0.20"
}

tool "torque_wrench" {
  name       = "Torque wrench, 10–50 N·m"
  kind       = "torque wrench"
  range      = "10..50 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
}

tool "socket" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "scriber" {
  name = "Scriber"
  kind = "scriber"
}

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

supply "solvent" {
  name = "Degreasing solvent"
  kind = "solvent"
  ppe  = [ppe.gloves]

  warning {
    hazard = "The solvent and its vapour catch fire easily."
    result = "Burns; dizziness in a closed room."
    avoid  = "Open a window, and keep flames and sparks out of the room."
  }
}

supply "case_sealant" {
  name            = "Silicone sealant, neutral cure"
  kind            = "sealant"
  assemble_within = "10 min"
  tighten_within  = "20 min"
  cure            = "24 h at 20 °C"
  service         = "-50..200 °C"
  ppe             = [ppe.gloves]

  caution {
    hazard = "Uncured silicone irritates the eyes."
    result = "Red, watering eyes for some hours."
    avoid  = "Keep your gloves away from your face."
  }
}

supply "gear_oil" {
  name = "Gear oil, ISO VG 220"
  kind = "gear oil"
  ppe  = [ppe.gloves]

  caution {
    hazard = "Oil on the floor is slippery."
    result = "A fall."
    avoid  = "Wipe spills up at once."
  }
}

procedure "bed_in" {
  title = "Bed the gears in"
  intro = "The case is closed and sealed for a short turn in oil, opened again to look at the teeth, and only then closed for good."

  clean "faces" {
    title    = "Wash both flanges"
    on       = [part.case.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "5 min"
  }

  coat "bushes" {
    title    = "Oil both bushes"
    on       = [part.case.feature.bush_in, part.case.feature.bush_out]
    supplies = [supply.gear_oil]
    takes    = "2 min"
  }

  fit "input" {
    title = "Slide the input shaft into its bush"
    part  = part.input_shaft
    takes = "2 min"
  }

  fit "output" {
    title = "Slide the output shaft into its bush"
    part  = part.output_shaft
    takes = "2 min"
  }

  run "mesh" {
    title     = "Turn the input shaft by hand"
    on        = [part.input_shaft]
    by        = "hand"
    criterion = "Both shafts turn through one full turn of the wheel without a stiff spot."
    takes     = "2 min"
    otherwise = "Look for a burr on the teeth, and dress it."
  }

  mark "mesh" {
    title = "Scribe a line across the pair of teeth in mesh"
    on    = [part.input_shaft.face.pinion, part.output_shaft.face.wheel]
    how   = "scribe"
    tools = [tool.scriber]
    takes = "2 min"
  }

  seal "first" {
    title     = "Lay a bead on the flange of the case"
    on        = [part.case.face.flange]
    between   = [part.case.face.flange, part.cover.face.flange]
    supplies  = [supply.case_sealant]
    closed_by = fit.cover
    takes     = "4 min"
  }

  fit "cover" {
    title = "Put the cover on"
    part  = part.cover
    takes = "2 min"
  }

  fit "screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.cover_screws
    takes     = "3 min"
  }

  torque "cover" {
    title     = "Tighten the cover screws"
    fastening = fastening.cover_screws
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "5 min"
  }

  clean "first_bead" {
    title = "Wipe off the sealant that came out"
    on    = [part.case, part.cover]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "first_cure" {
    title = "Let the sealant cure"
    until = [seal.first]
  }

  fill "bedding_oil" {
    title    = "Pour the bedding oil in"
    on       = [part.case]
    through  = part.case.port.filler
    supplies = [supply.gear_oil]
    amount   = "0.5 L"
    takes    = "5 min"
  }

  run "bed" {
    title     = "Turn the gears a hundred turns by hand"
    on        = [part.input_shaft]
    by        = "hand"
    criterion = "The sound stays even."
    takes     = "10 min"
    otherwise = "Drain the oil, open the case and look for what knocks."
  }

  drain "bedding_oil" {
    title   = "Drain the bedding oil"
    on      = [part.case]
    through = part.drain_tap.port.outlet
    takes   = "10 min"
  }

  remove "screws" {
    title     = "Take the cover screws out"
    fastening = fastening.cover_screws
    takes     = "3 min"
  }

  remove "cover" {
    title = "Lift the cover off"
    part  = part.cover
    takes = "2 min"
  }
}

procedure "close" {
  title = "Look at the teeth, then close the case"
  after = [procedure.bed_in]

  clean "teeth" {
    title    = "Wash the teeth of both gears"
    on       = [part.input_shaft.face.pinion, part.output_shaft.face.wheel]
    supplies = [supply.solvent]
    takes    = "5 min"
    why      = "The scribed line stays; the oil that hides the polish goes."
  }

  inspect "contact" {
    title     = "Look at the polish on the marked teeth"
    on        = [part.input_shaft.face.pinion, part.output_shaft.face.wheel]
    marks     = [procedure.bed_in.mark.mesh]
    criterion = "The polish covers at least half the width of each marked tooth, in its middle."
    takes     = "5 min"
    otherwise = "Send the pair back to the workshop."
  }

  clean "faces" {
    title    = "Clean the old bead off both flanges"
    on       = [part.case.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
    takes    = "15 min"
  }

  seal "second" {
    title     = "Lay a new bead on the flange of the case"
    on        = [part.case.face.flange]
    between   = [part.case.face.flange, part.cover.face.flange]
    supplies  = [supply.case_sealant]
    closed_by = fit.cover
    takes     = "4 min"
  }

  fit "cover" {
    title = "Put the cover on for good"
    part  = part.cover
    takes = "2 min"
  }

  fit "screws" {
    title     = "Start the cover screws by hand"
    fastening = fastening.cover_screws
    takes     = "3 min"
  }

  torque "cover" {
    title     = "Tighten the cover screws"
    fastening = fastening.cover_screws
    tools     = [tool.torque_wrench, tool.socket]
    takes     = "5 min"
  }

  clean "second_bead" {
    title = "Wipe off the sealant that came out"
    on    = [part.case, part.cover]
    ppe   = [ppe.gloves]
    takes = "2 min"
  }

  wait "second_cure" {
    title = "Let the sealant cure"
    until = [seal.second]
  }

  fill "oil" {
    title    = "Pour the gear oil in"
    on       = [part.case]
    through  = part.case.port.filler
    supplies = [supply.gear_oil]
    amount   = "0.8 L"
    takes    = "5 min"
  }
}
