package entry

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Procedure is a list of steps in the order the builder does them.
var Procedure = &schema.Block{
	Name: "procedure", Label: "id", Steps: true,
	Doc: "A list of steps in the order the builder does them.",
	Example: `procedure "close" {
  title = "Close the housing"
  after = [procedure.thrust_end]

  clean "faces" {
    title    = "Clean both faces"
    on       = [part.housing.face.flange, part.cover.face.flange]
    supplies = [supply.solvent]
  }
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("title", schema.Title, "What is done, in a few words.").Must(),
		schema.ProseAttr("intro", schema.Reason, "What to know before it starts."),
		schema.RefAttr("after", schema.Order, "Procedures that must be done first.", "procedure"),
		schema.RefAttr("at_each", schema.Where, "Done place by place.", "places"),
		schema.ConditionAttr("when", schema.Choice, "The option under which it is done."),
		schema.AmountAttr("conditions", schema.Property, "Temperature it is done at.", calc.Temperature),
		schema.NamesAttr("was", schema.Renamed, "Its former labels."),
	},
	Blocks: []*schema.Block{Example},
}

// Example is a worked example that check executes.
var Example = &schema.Block{
	Name: "example", Label: "a title",
	Doc: "A worked example: readings, and what must come out. check executes it.",
	Example: `example "middle of the range" {
  readings = { measure.float = "1.02 mm" }
  gives    = { choose.pack.total = "0.90 mm", choose.pack.result = "0.12 mm" }
}
`,
	Attrs: []schema.Attr{
		schema.TableAttr("readings", schema.Expected, "Addresses of readings with their values.", "value").Must(),
		schema.TableAttr("gives", schema.Value, "Addresses with the values that must come out, at the decimals written.", "value").Must(),
		schema.TableAttr("options", schema.Choice, "Options that differ from their defaults.", "option"),
		schema.BoolAttr("shown", schema.Record, "Printed for the builder."),
	},
}
