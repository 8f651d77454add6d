package entry

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Manual is the one block that makes a folder a manual.
var Manual = &schema.Block{
	Name: "manual", Label: "id", Once: true,
	Doc: "Says what this manual is, who issues it and in which order its procedures are done.",
	Example: `manual "hoist" {
  title    = "Yard hoist: assembly"
  units    = "metric"
  revision = "A"
  issued   = "2026-03-14"
  supplier = "Beck Turbine Workshop"
  order    = [procedure.drum]
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("title", schema.Title, "The manual's title.").Must(),
		schema.WordAttr("units", schema.Property, "The system of units shown first.", "metric", "inch").Must(),
		schema.WordAttr("gallon", schema.Property, "Which gallon, pint and fluid ounce are meant.", "US", "UK"),
		schema.TextAttr("revision", schema.Identity, "The revision's letter or number.").Must(),
		schema.DateAttr("issued", schema.Identity, "The day this revision was issued."),
		schema.TextAttr("supplier", schema.Identity, "Who supplies the kit."),
		schema.TextAttr("contact", schema.Identity, "Whom a builder asks."),
		schema.PathAttr("shares", schema.Property, "Shared catalogue folders, seen from this folder."),
		schema.RefAttr("order", schema.Order, "The procedures in the order in which they are printed and done.", "procedure").Must(),
		schema.NamesAttr("signatories", schema.Release, "Who may release a hold, besides the builder, a second person, the supplier and an inspector."),
		schema.AmountAttr("conditions", schema.Property, "Temperature of the workshop.", calc.Temperature).By("20 °C"),
	},
	Blocks: []*schema.Block{History},
}

// History is one past revision.
var History = &schema.Block{
	Name: "history", Label: "a revision",
	Doc: "A past revision: when it was issued and why it was replaced.",
	Attrs: []schema.Attr{
		schema.DateAttr("issued", schema.Identity, "The day it was issued.").Must(),
		schema.TextAttr("reason", schema.Reason, "What it changed.").Must(),
	},
}
