# What a fitter wears.

ppe "gloves" {
  name     = "Nitrile gloves"
  standard = "EN ISO 374-1"
}

ppe "goggles" {
  name     = "Goggles"
  standard = "ISO 16321-1"
}

ppe "ear_protection" {
  name     = "Ear protection"
  standard = "EN 352-1"
}

ppe "heat_gloves" {
  name     = "Heat-resistant gloves"
  standard = "EN 407"
}

ppe "boots" {
  name     = "Safety boots with toe caps"
  standard = "ISO 20345"
}

ppe "insulating_gloves" {
  name     = "Insulating gloves for work near low voltage"
  standard = "IEC 60903, class 0"
}
