package entry

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// Fastening is a bolted joint, plug, gland, nut or adjuster.
var Fastening = &schema.Block{
	Name: "fastening", Label: "id",
	Doc: "A bolted joint, plug, gland, nut or adjuster: what it clamps and how it is tightened.",
	Example: `fastening "cover_bolts" {
  name       = "Cover bolts"
  thread     = "M8x1.25"
  bolt_class = "8.8"
  quantity   = 4
  stack      = [part.cover, part.cover_gasket, part.housing]
  fasteners  = [part.cover_bolt]
  lubricant  = "dry"
  torque     = "22 N·m ± 10 %"
  layout     = "circle"
  pattern    = "criss-cross"
}
`,
	Attrs: []schema.Attr{
		schema.TextAttr("name", schema.Identity, "What a builder calls it.").Must(),
		schema.WordAttr("does", schema.Property, "What it is for. Only clamps are screened for preload and stripping; the others give a basis.",
			"clamp", "plug", "gland", "adjuster", "set bearing", "lock nut", "set screw", "pipe").By("clamp"),
		schema.DesignationAttr("thread", schema.Property, "M10x1.5, 3/8-24 UNF, M8x1 LH."),
		schema.DesignationAttr("bolt_class", schema.Property, "Property class or grade of the bolt: 8.8, grade 5."),
		schema.AnyAmountAttr("proof", schema.Property, "Proof stress or proof load, where there is no class.").WithUnit(),
		schema.DesignationAttr("nut_class", schema.Property, "Property class of the nut."),
		schema.CountAttr("quantity", schema.Property, "How many fasteners, for each place.").By("1"),
		schema.RefAttr("at_each", schema.Where, "The places that each have it.", "places"),
		schema.ConditionAttr("when", schema.Choice, "The option that brings it."),
		schema.RefAttr("stack", schema.Property, "What it clamps, top to bottom, gaskets and shims included.", "part", "tool"),
		schema.RefAttr("fasteners", schema.Property, "The parts it is made of; none: they come assembled.", "part"),
		schema.RefAttr("lubricant", schema.Property, "What is on the threads.", "supply").Or("dry"),
		schema.LimitsAttr("nut_factor", schema.Property, "K of T = K·F·d; default band by lubricant.", calc.Plain),
		schema.LimitsAttr("friction", schema.Property, "Coefficient of friction in thread and under the head, instead of a nut factor.", calc.Plain),
		schema.TextAttr("thread_material", schema.Property, "What the tapped thread is cut in."),
		schema.AmountAttr("thread_length", schema.Property, "Engaged length of thread.", calc.Length),
		schema.DesignationAttr("across_flats", schema.Property, "Width across flats of the head or nut."),
		schema.SettingAttr("torque", schema.Value, "The torque, with its tolerance.", calc.Torque),
		schema.SettingAttr("stages", schema.Value, "The torques on the way, the last being the torque itself.", calc.Torque),
		schema.SettingAttr("angle", schema.Value, "The angle to turn on after the snug torque.", calc.Angle),
		schema.BoolAttr("to_slot", schema.Value, "Castellated: on to the next slot, not above the torque."),
		schema.SettingAttr("drag", schema.Value, "Torque that a self-locking nut needs to turn at all.", calc.Torque),
		schema.BoolAttr("drag_included", schema.Value, "Whether the torque includes the drag."),
		schema.TextAttr("layout", schema.Property, "circle, row, or grid (grid 2x5 where the rows are not plain)."),
		schema.NamesAttr("pattern", schema.Method, "criss-cross, worked out from the layout, or the places in visiting order."),
		schema.RefAttr("locked_by", schema.Property, "What keeps it from coming loose.", "part", "supply").Or("drag"),
		schema.TextAttr("basis", schema.Identity, "Where the torque comes from."),
	},
}
