package words

import (
	"fettle/calc"
	"fettle/lang/schema"
)

// labels name the lines of a step, by the attribute that they come from.
var labels = map[string]string{
	"on":              "Works on",
	"between":         "Between",
	"part":            "Part",
	"fastening":       "Fastening",
	"tool":            "Tool",
	"from":            "From",
	"facing":          "Facing",
	"align":           "Line up",
	"marks":           "Go by",
	"keep_clear":      "Keep clear",
	"through":         "Through",
	"by":              "By",
	"how":             "With",
	"held_by":         "Hold with",
	"locks_with":      "Locked afterwards by",
	"without":         "Left out for now",
	"lifts":           "Lifts",
	"loosens":         "Leaves loose",
	"criterion":       "Accept when",
	"until":           "Until",
	"for":             "For",
	"to":              "Bring to",
	"quantity":        "Quantity",
	"amount":          "Amount",
	"torque":          "Tighten to",
	"angle":           "Then turn on by",
	"drag":            "Drag of the nut",
	"locked_by":       "Locked by",
	"lubricant":       "On the threads",
	"within":          "At the latest",
	"not_before":      "Not before",
	"assemble_within": "Close the joint within",
	"tighten_within":  "Have it tight within",
	"handling":        "Handle after",
	"cure":            "Cured after",
	"pieces":          "Pieces",
	"closed_by":       "Closed by",
	"accept":          "Must be",
	"gives":           "Gives",
	"mass":            "Weighs",
}

// byRole name what has no label of its own.
var byRole = map[schema.Role]string{
	schema.Touches:   "Works on",
	schema.Subject:   "With",
	schema.Guide:     "Go by",
	schema.Value:     "Set",
	schema.Judgement: "Accept when",
	schema.Method:    "How",
	schema.State:     "Then",
	schema.Property:  "Note",
	schema.Clock:     "Time",
	schema.Duration:  "Takes",
	schema.Order:     "After",
}

// Label names the line that an attribute is printed on.
func Label(a *schema.Attr) string {
	if l := labels[a.Name]; l != "" {
		return l
	}
	if l := byRole[a.Role]; l != "" {
		return l
	}
	return "Note"
}

// flags say what an attribute means that is true.
var flags = map[string]string{
	"trial":         "A trial fit. It comes off again.",
	"for_good":      "It does not go back on.",
	"turning":       "Tighten while the part is turned.",
	"to_slot":       "Stop inside the band, then go on to the next slot. Never above the band, never back.",
	"cool":          "Cool it, do not heat it.",
	"drag_included": "The torque includes the drag of the nut.",
}

// Flag is the sentence for an attribute that is true, or "".
func Flag(name string) string { return flags[name] }

// DragExcluded says that the drag comes on top.
const DragExcluded = "The torque does not include the drag. Read the drag while the nut runs down, and add it."

// states say how a thing is found, by attribute and word.
var states = map[string]string{
	"from loosened": "It has been loosened: tighten it anew.",
	"from tight":    "It is tight already: this is a re-tightening.",
}

// Found is the sentence for the state in which something is found, or "".
func Found(attr, word string) string { return states[attr+" "+word] }

// SecondPerson is the word for who else may hold or release.
const SecondPerson = "a second person"

// DriveWord says what drives a machine.
func DriveWord(word string) string {
	switch word {
	case "hand":
		return "hand"
	case "fluid":
		return "its own liquid"
	case "pressure":
		return "pressure"
	case "electric":
		return "electricity"
	case "power":
		return "its own power"
	}
	return word
}

// SetWrench and AtFastening tell a wrench's setting with an adapter from the torque.
const (
	SetWrench   = "Set the wrench to"
	AtFastening = "Torque at the fastening"
)

// WithAdapter says how the adapter stands to the wrench.
func WithAdapter(name string, angle calc.Quantity) string {
	if !angle.Valid() || angle.Sign() == 0 {
		return name + ", straight on in line with the wrench"
	}
	return name + ", at " + angle.String() + " to the wrench"
}
