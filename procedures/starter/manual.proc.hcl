# A small sound manual to start from: change every line of it to your own machine.
# fettle explain names every block and attribute: try fettle explain measure.

manual "starter" {
  title       = "My machine"
  units       = "metric"
  revision    = "A"
  issued      = "2026-01-01"
  supplier    = "My workshop"
  signatories = ["foreman"]
  order       = [procedure.bearing, procedure.first_turn]
}

tool "depth_gauge" {
  name       = "Depth micrometer"
  kind       = "depth"
  range      = "0..25 mm"
  resolution = "0.01 mm"
  accuracy   = "± 0.005 mm"
}

tool "torque_wrench" {
  name     = "Torque wrench"
  kind     = "torque wrench"
  range    = "5..50 N·m"
  accuracy = "± 4 %"
  drive    = "3/8 in"
}

tool "socket_13" {
  name  = "Socket, 13 mm"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "clamp" {
  name = "Bench clamp"
  kind = "clamp"
}

supply "oil" {
  name    = "Machine oil, ISO VG 32"
  kind    = "oil"
  service = "-10..80 °C"
}
