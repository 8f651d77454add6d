# Beck: a micro-hydro set of 5 kW. Every name, drawing and value in it is invented.

manual "beck" {
  title       = "Beck micro-hydro set: assembly and first run"
  units       = "inch"
  gallon      = "US"
  revision    = "C"
  issued      = "2026-02-20"
  supplier    = "Beck Turbine Workshop"
  contact     = "The workshop's bench, weekdays"
  shares      = ["../shop"]
  signatories = ["licensed electrician"]
  conditions  = "68 °F"

  order = [
    procedure.site,
    procedure.cartridge,
    procedure.runner,
    procedure.casing,
    procedure.pressure_test,
    procedure.generator,
    procedure.coupling,
    procedure.belt,
    procedure.control,
    procedure.first_run,
  ]

  history "A" {
    issued = "2024-09-02"
    reason = "First issue."
  }

  history "B" {
    issued = "2025-05-16"
    reason = "The runner nut has a split pin; it was staked before."
  }
}

option "drive" {
  name    = "Drive to the generator"
  choices = ["coupling", "belt"]
  default = "coupling"
}

places "end" {
  names = ["runner end", "drive end"]
}

places "foot" {
  names = ["front left", "front right", "rear left", "rear right"]
}

places "terminal" {
  names = ["U", "V", "W", "N"]
}

figure "section" {
  file    = "figures/section.svg"
  alt     = "Section through the set: runner on the left in its casing, two taper bearings in the housing, shims at the housing flange and under the bearing cap, coupling and generator on the right."
  made_at = "C"
  shows   = [procedure.cartridge, procedure.casing]
}

figure "lock_out" {
  file    = "figures/lock_out.svg"
  alt     = "The penstock valve shut, its lever in the lock-out clamp, a padlock and a tag with the builder's name."
  made_at = "C"
  shows   = [procedure.site.fit.valve_lock]
}

figure "feet" {
  file    = "figures/feet.svg"
  alt     = "The generator seen from above with its four feet: front left, front right, rear left and rear right, the drive at the front."
  made_at = "C"
  shows   = [procedure.coupling.measure.foot_gap]
}
