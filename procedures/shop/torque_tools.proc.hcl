# What tightens to a torque.
#
# Widths across flats, drives and hexagon keys are designations: an across_flats of
# "13 mm" is fitted by a size of "13 mm", in these very words.

# Torque wrenches. Below a fifth of full scale a wrench has no accuracy to go by,
# so each range begins there (ISO 6789-1).

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

tool "torque_wrench_lbin" {
  name       = "Torque wrench, 50–250 lb·in"
  kind       = "torque wrench"
  range      = "50..250 lb·in"
  resolution = "1 lb·in"
  accuracy   = "4 %"
  drive      = "3/8 in"
  length     = "11 in"
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

# Sockets, metric.

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

tool "socket_21_spark" {
  name  = "Spark plug socket, 21 mm, 3/8 in drive"
  kind  = "socket"
  size  = "21 mm"
  drive = "3/8 in"
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

tool "socket_36" {
  name  = "Socket, 36 mm, 1/2 in drive"
  kind  = "socket"
  size  = "36 mm"
  drive = "1/2 in"
}

tool "hex_bit_5" {
  name  = "Hexagon bit, 5 mm, 1/4 in drive"
  kind  = "socket"
  size  = "hex 5 mm"
  drive = "1/4 in"
}

tool "hex_bit_6" {
  name  = "Hexagon bit, 6 mm, 3/8 in drive"
  kind  = "socket"
  size  = "hex 6 mm"
  drive = "3/8 in"
}

tool "hex_bit_8" {
  name  = "Hexagon bit, 8 mm, 3/8 in drive"
  kind  = "socket"
  size  = "hex 8 mm"
  drive = "3/8 in"
}

# Sockets, inch.

tool "socket_7_16_in" {
  name  = "Socket, 7/16 in, 3/8 in drive"
  kind  = "socket"
  size  = "7/16 in"
  drive = "3/8 in"
}

tool "socket_1_2_in" {
  name  = "Socket, 1/2 in, 3/8 in drive"
  kind  = "socket"
  size  = "1/2 in"
  drive = "3/8 in"
}

tool "socket_9_16_in_small" {
  name  = "Socket, 9/16 in, 3/8 in drive"
  kind  = "socket"
  size  = "9/16 in"
  drive = "3/8 in"
}

tool "socket_9_16_in" {
  name  = "Socket, 9/16 in, 1/2 in drive"
  kind  = "socket"
  size  = "9/16 in"
  drive = "1/2 in"
}

tool "socket_3_4_in" {
  name  = "Socket, 3/4 in, 1/2 in drive"
  kind  = "socket"
  size  = "3/4 in"
  drive = "1/2 in"
}

tool "socket_15_16_in" {
  name  = "Socket, 15/16 in, 1/2 in drive"
  kind  = "socket"
  size  = "15/16 in"
  drive = "1/2 in"
}

# Adapters. The setting of the wrench is worked out from length and offset.

tool "crowfoot_13" {
  name   = "Crowfoot adapter, 13 mm, 3/8 in drive"
  kind   = "adapter"
  size   = "13 mm"
  drive  = "3/8 in"
  length = "40 mm"
}

tool "crowfoot_17" {
  name   = "Crowfoot adapter, 17 mm, 3/8 in drive"
  kind   = "adapter"
  size   = "17 mm"
  drive  = "3/8 in"
  length = "45 mm"
}

tool "crowfoot_9_16_in" {
  name   = "Crowfoot adapter, 9/16 in, 1/2 in drive"
  kind   = "adapter"
  size   = "9/16 in"
  drive  = "1/2 in"
  length = "2 in"
}
