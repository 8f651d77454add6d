# Tools that stay on the engine for a while, so that they have a place on it.

tool "build_stand" {
  name     = "Swivel stand with adapter plate WE-T1"
  kind     = "stand"
  capacity = "120 kg"
  stays_on = true
  sits_on  = part.crankcase
  covers   = [part.crankcase.face.starter_pad]

  caution {
    hazard = "The engine swings when the stand is unlocked."
    result = "Crushed fingers."
    avoid  = "Hold the crankcase with one hand before you pull the locking pin."
  }
}

tool "deck_bridge" {
  name       = "Bridge with dial, zeroed on the surface plate, WE-T2"
  kind       = "dial indicator"
  reads      = "depth"
  range      = "-3.000..3.000 mm"
  resolution = "0.005 mm"
  accuracy   = "0.010 mm"
}

tool "spring_compressor" {
  name     = "Valve spring compressor"
  kind     = "spring compressor"
  stays_on = true
  sits_on  = part.head

  warning {
    hazard = "The compressor holds a spring of 400 N and can slip off its cap."
    result = "Loss of an eye; a broken finger."
    avoid  = "Wear goggles. Set the foot square on the cap, and keep your face to one side."
  }
}

tool "piston_stop" {
  name     = "Piston stop, M14, WE-T3"
  kind     = "stop"
  stays_on = true
  sits_on  = part.head
  covers   = [part.head.port.plug]
}

tool "flywheel_lock" {
  name     = "Flywheel lock, WE-T4"
  kind     = "holding tool"
  stays_on = true
  sits_on  = part.crankcase
}
