limit "bearing_float" {
  name     = "End float of the shaft in its taper bearings"
  range    = "0.0020..0.0050 in"
  target   = "0.0035 in"
  basis    = "Drawing BK-030, issue 2"
  critical = true
}

limit "runner_clearance" {
  name     = "Running clearance of the runner at the ring seat"
  range    = "0.010..0.016 in"
  target   = "0.013 in"
  basis    = "Drawing BK-010, issue 4"
  critical = true
}

limit "runner_runout" {
  name  = "Run-out of the runner rim, total reading"
  range = "0..0.004 in"
  basis = "Drawing BK-050, issue 2"
}

limit "foot_fit" {
  name   = "Gap left under a generator foot"
  range  = "-0.001..0.001 in"
  target = "0 in"
  basis  = "Drawing BK-072, issue 1"
}

limit "coupling_rim" {
  name  = "Coupling rim, total reading over one turn"
  range = "0..0.006 in"
  basis = "Drawing BK-082, issue 1"
}

limit "belt_force" {
  name  = "Force that deflects the belt by 3/8 in at mid-span"
  range = "25 ± 4 N"
  basis = "Drawing BK-089, issue 1"
}

limit "test_pressure" {
  name     = "Casing pressure after the ten minutes of the test"
  range    = "44..46 psi"
  basis    = "Drawing BK-010, issue 4: 1.5 times the highest head of 70 ft"
  critical = true
}

limit "insulation" {
  name     = "Insulation of the winding to the frame at 500 V d.c."
  range    = "≥ 100 MΩ"
  basis    = "Drawing BK-070, issue 3"
  critical = true
}

limit "earth" {
  name     = "Resistance from the frame to the earth bar"
  range    = "0..0.20 Ω"
  basis    = "Drawing BK-070, issue 3; a stricter local code goes before it"
  critical = true
}

limit "vane_opening" {
  name  = "Opening of the guide vanes against the stop"
  range = "0.025..0.035 in"
  basis = "Drawing BK-020, issue 2"
}

limit "gland_drip" {
  name  = "Drip of the packed gland"
  range = "20..40 drops/min"
  basis = "Workshop practice, sheet BK-W4"
}

limit "speed" {
  name     = "Speed of the generator at no load"
  range    = "1780..1820 rpm"
  basis    = "Drawing BK-070, issue 3"
  critical = true
}
