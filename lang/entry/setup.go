package entry

import "fettle/lang/schema"

// Option is a choice made when the kit is ordered.
var Option = &schema.Block{
	Name: "option", Label: "id",
	Doc: "A choice that the kit is sold with.",
	Example: `option "ignition" {
  name    = "Ignition"
  choices = ["coil", "magneto"]
  default = "coil"
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What is chosen.").Must(),
		schema.NamesAttr("choices", schema.Property, "The choices.").Must(),
		schema.TextAttr("default", schema.Property, "What is built when nothing is said; the first where none is given."),
	},
}

// Places are where a thing occurs more than once.
var Places = &schema.Block{
	Name: "places", Label: "id",
	Doc: "Places where a thing occurs more than once, in working order.",
	Example: `places "side" {
  names = ["left", "right"]
}
`,
	Attrs: []schema.Attr{
		schema.NamesAttr("names", schema.Property, "Their names, in working order.").Must(),
	},
}

// Figure is a picture.
var Figure = &schema.Block{
	Name: "figure", Label: "id",
	Doc: "A picture in the manual's folder.",
	Example: `figure "bead" {
  file    = "figures/bead.svg"
  alt     = "The bead runs inside the bolt holes, unbroken."
  made_at = "A"
  shows   = [procedure.close.seal.flange]
}
`,
	Attrs: []schema.Attr{
		schema.PathAttr("file", schema.Identity, "The file, seen from the manual's folder.").Must(),
		schema.TextAttr("alt", schema.Identity, "What it shows, for who cannot see it."),
		schema.TextAttr("made_at", schema.Identity, "The revision it was made at."),
		schema.RefAttr("shows", schema.Property, "The steps it shows.", "step", "procedure"),
	},
}

// Media is a film or page elsewhere.
var Media = &schema.Block{
	Name: "media", Label: "id",
	Doc: "A film or page outside the manual.",
	Example: `media "bead_film" {
  address = "Film 4 on the kit's disc"
  made_at = "A"
  shows   = [procedure.close.seal.flange]
  governs = "manual"
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("address", schema.Identity, "Where it is found.").Must(),
		schema.TextAttr("made_at", schema.Identity, "The revision it was made at."),
		schema.RefAttr("shows", schema.Property, "The steps it shows.", "step", "procedure"),
		schema.TextAttr("governs", schema.Property, "Which prevails where they differ."),
	},
}

// HouseRules change severities and thresholds.
var HouseRules = &schema.Block{
	Name: "house_rules", Once: true, Open: true,
	Doc: "Changes the severity of rules and the thresholds they judge by.",
	Example: `house_rules {
  severity        = { "words/long-sentence" = "off" }
  one_person_lift = "20 kg"
}
`,
	Attrs: []schema.Attr{
		schema.TableAttr("severity", schema.Property, "Rule names with error, doubt, advice or off."),
	},
}
