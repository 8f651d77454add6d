# Sedge 2: a flat-twin launch engine. Everything here is invented for the demo.

manual "sedge_2" {
  title      = "Sedge 2 launch engine: from bare crankcase to first start"
  units      = "metric"
  revision   = "D"
  issued     = "2026-10-26"
  supplier   = "Withybrook Engine Kits"
  contact    = "Technical desk; have the serial on the crankcase pad ready"
  shares     = ["../shop"]
  conditions = "20 °C"

  order = [
    procedure.crankcase,
    procedure.crankshaft,
    procedure.camshaft,
    procedure.rods,
    procedure.barrels,
    procedure.sump,
    procedure.timing_cover,
    procedure.heads,
    procedure.top_end,
    procedure.flywheel,
    procedure.clearances,
    procedure.ignition_coil,
    procedure.ignition_magneto,
    procedure.breathing,
    procedure.frame,
    procedure.cooling_seawater,
    procedure.cooling_keel,
    procedure.turn_over,
    procedure.first_start,
    procedure.settle,
    procedure.hand_over,
  ]

  signatories = ["boat surveyor"]

  history "A" {
    issued = "2025-11-03"
    reason = "First issue. Revision B gives the barrels plates of three thicknesses in place of one gasket. It also asks a surveyor to look at the fuel line."
  }

  history "B" {
    issued = "2026-05-18"
    reason = "Revision C measures the backlash of the gears before the tab is bent, because a tab bends only once. What was called end play is the float everywhere."
  }

  history "C" {
    issued = "2026-08-10"
    reason = "Revision D tightens the camshaft nut less, and lets the crankshaft float less. It also looks at the cups of the pushrods before a cover hides them."
  }
}

option "ignition" {
  name    = "Ignition"
  choices = ["coil", "magneto"]
  default = "coil"
}

option "cooling" {
  name    = "Cooling"
  choices = ["seawater", "keel"]
  default = "seawater"
}

# Left and right as the helmsman sees them: he faces forward, and the flywheel is towards him.
places "side" {
  names = ["left", "right"]
}

house_rules {
  one_person_lift = "20 kg"
}

figure "layout" {
  file    = "figures/layout.svg"
  alt     = "The engine from above. The timing cover is at the front, the flywheel aft. The left barrel is on the helmsman's left as he faces forward."
  made_at = "B"
  shows   = [procedure.crankcase.inspect.casting]
}

figure "thrust_shims" {
  file    = "figures/thrust_shims.svg"
  alt     = "Section through the aft main bearing. The thrust shims lie on the crankshaft between its shoulder and the aft housing. The dial reads the float at the taper end."
  made_at = "B"
  shows   = [procedure.crankshaft.measure.float, procedure.crankshaft.fit.shims]
}

figure "timing_dots" {
  file    = "figures/timing_dots.svg"
  alt     = "The crankshaft gear below, the camshaft gear above, twice its size. The dot on each gear lies on the line between the two centres, and the dots face each other."
  made_at = "A"
  shows   = [procedure.camshaft.fit.gear, procedure.camshaft.inspect.timing]
}

figure "deck" {
  file    = "figures/deck.svg"
  alt     = "A bridge lies across the barrel's top face. Its dial stands on the piston crown above the gudgeon pin. A crown above the face reads negative."
  made_at = "B"
  shows   = [procedure.barrels.measure.deck, procedure.barrels.measure.deck_final]
}

figure "two_stops" {
  file    = "figures/two_stops.svg"
  alt     = "The flywheel rim with two pen lines, one from each direction of turning, and the punched mark halfway between them."
  made_at = "A"
  shows   = [procedure.flywheel.mark.stop_one, procedure.flywheel.mark.stop_two, procedure.flywheel.mark.tdc]
}

media "sump_film" {
  address = "Film 2 on the kit's disc: closing the sump against the clock"
  made_at = "A"
  shows   = [procedure.sump.seal.sump, procedure.sump.fit.sump]
  governs = "This manual prevails over the film."
}
