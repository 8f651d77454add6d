procedure "generator" {
  title = "Test the generator and set it on the bed plate"
  after = [procedure.pressure_test]
  intro = <<-EOT
    The winding is tested before the generator is carried in: damp from storage
    shows now, while it can still be dried in a warm room. The foot bolts stay
    loose until the drive is lined up.
  EOT

  measure "insulation" {
    title     = "Measure the insulation of the winding"
    on        = [part.generator]
    tools     = [tool.insulation_tester]
    ppe       = [ppe.insulating_gloves]
    likely    = "20..900 MΩ"
    accept    = limit.insulation
    takes     = "5 min"
    text      = <<-EOT
      Nothing is connected yet. Put one lead on any terminal of the winding and
      the other on bare metal of the frame. Press for one minute, read, and hold
      the discharge until the tester shows zero.
    EOT
    otherwise = "Dry the generator for two days in a warm room and test again. Do not connect it."
  }

  clean "foot_pads" {
    title    = "Wash the foot pads of the bed plate"
    on       = [part.base.face.foot_pads]
    supplies = [supply.solvent, supply.rags]
    takes    = "5 min"
  }

  fit "generator" {
    title  = "Lower the generator onto its pads"
    part   = part.generator
    facing = "The shaft end looks at the turbine"
    tools  = [tool.hoist]
    ppe    = [ppe.boots, ppe.work_gloves]
    people = 2
    takes  = "20 min"
  }

  fit "foot_bolts" {
    title     = "Start the foot bolts by hand"
    fastening = fastening.foot_bolts
    takes     = "5 min"
  }

  fit "drive_key" {
    title = "Tap the drive key into the turbine shaft"
    part  = part.drive_key
    tools = [tool.soft_mallet]
    takes = "2 min"
  }

  fit "generator_key" {
    title = "Tap the drive key into the generator shaft"
    part  = part.generator_key
    tools = [tool.soft_mallet]
    takes = "2 min"
  }
}
