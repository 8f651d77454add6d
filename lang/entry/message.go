package entry

import "fettle/lang/schema"

// The safety messages. Signal words and their content follow ANSI Z535.6.
var (
	Danger  = message("danger", "Will kill or seriously injure if it is not avoided.")
	Warning = message("warning", "Could kill or seriously injure if it is not avoided.")
	Caution = message("caution", "Could injure if it is not avoided.")
	Notice  = &schema.Block{
		Name: "notice",
		Doc:  "Damage to property, not to persons.",
		Attrs: []schema.Attr{
			schema.TextAttr("text", schema.Instruction, "What to know.").Must(),
		},
	}
)

// Messages lists them, the gravest first.
func Messages() []*schema.Block { return []*schema.Block{Danger, Warning, Caution, Notice} }

func message(name, doc string) *schema.Block {
	return &schema.Block{
		Name: name, Doc: doc,
		Attrs: []schema.Attr{
			schema.TextAttr("hazard", schema.Reason, "What can hurt."),
			schema.TextAttr("result", schema.Reason, "What it does to a person."),
			schema.TextAttr("avoid", schema.Instruction, "How not to get hurt."),
		},
	}
}
