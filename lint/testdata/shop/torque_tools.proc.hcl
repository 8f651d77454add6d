# What tightens to a torque.

tool "torque_wrench_20" {
  name       = "Torque wrench, 4–20 N·m"
  kind       = "torque wrench"
  range      = "4..20 N·m"
  resolution = "0.1 N·m"
  accuracy   = "4 %"
  drive      = "1/4 in"
  length     = "250 mm"
}

tool "torque_wrench_100" {
  name       = "Torque wrench, 20–100 N·m"
  kind       = "torque wrench"
  range      = "20..100 N·m"
  resolution = "0.5 N·m"
  accuracy   = "4 %"
  drive      = "3/8 in"
  length     = "350 mm"
}

tool "torque_wrench_300" {
  name       = "Torque wrench, 60–300 N·m"
  kind       = "torque wrench"
  range      = "60..300 N·m"
  resolution = "1 N·m"
  accuracy   = "4 %"
  drive      = "1/2 in"
  length     = "550 mm"
}

tool "torque_wrench_lbft" {
  name       = "Torque wrench, 20–100 lb·ft"
  kind       = "torque wrench"
  range      = "20..100 lb·ft"
  resolution = "0.5 lb·ft"
  accuracy   = "4 %"
  drive      = "1/2 in"
  length     = "18 in"
}

tool "socket_8" {
  name  = "Socket, 8 mm, 1/4 in drive"
  kind  = "socket"
  size  = "8 mm"
  drive = "1/4 in"
}

tool "socket_10" {
  name  = "Socket, 10 mm, 1/4 in drive"
  kind  = "socket"
  size  = "10 mm"
  drive = "1/4 in"
}

tool "socket_13_quarter" {
  name  = "Socket, 13 mm, 1/4 in drive"
  kind  = "socket"
  size  = "13 mm"
  drive = "1/4 in"
}

tool "socket_13" {
  name  = "Socket, 13 mm, 3/8 in drive"
  kind  = "socket"
  size  = "13 mm"
  drive = "3/8 in"
}

tool "socket_16" {
  name  = "Socket, 16 mm, 3/8 in drive"
  kind  = "socket"
  size  = "16 mm"
  drive = "3/8 in"
}

tool "socket_18" {
  name  = "Socket, 18 mm, 3/8 in drive"
  kind  = "socket"
  size  = "18 mm"
  drive = "3/8 in"
}

tool "socket_18_half" {
  name  = "Socket, 18 mm, 1/2 in drive"
  kind  = "socket"
  size  = "18 mm"
  drive = "1/2 in"
}

tool "socket_21" {
  name  = "Socket, 21 mm, 1/2 in drive"
  kind  = "socket"
  size  = "21 mm"
  drive = "1/2 in"
}

tool "socket_24" {
  name  = "Socket, 24 mm, 1/2 in drive"
  kind  = "socket"
  size  = "24 mm"
  drive = "1/2 in"
}

tool "socket_30" {
  name  = "Socket, 30 mm, 1/2 in drive"
  kind  = "socket"
  size  = "30 mm"
  drive = "1/2 in"
}

tool "hex_bit_5" {
  name  = "Hexagon bit, 5 mm, 1/4 in drive"
  kind  = "socket"
  size  = "hex 5 mm"
  drive = "1/4 in"
}
