// Package entry holds the definitions of all blocks that are not steps: the
// manual, the catalogue, procedures and worked examples, one file each.
//
// It is data for bind, explain and the reference page. Nothing else may state
// what a block can hold.
package entry

import "fettle/lang/schema"

// Top lists the blocks that stand at the top of a file, in the order of the reference.
func Top() []*schema.Block {
	return []*schema.Block{
		Manual, Part, Tool, Supply, PPE, Fastening, Limit, Option, Places, Figure, Media,
		HouseRules, Procedure, Example,
	}
}

// Shared reports whether a block may stand in a shared catalogue folder.
func Shared(b *schema.Block) bool {
	switch b {
	case Tool, Supply, PPE, Fastening, Part, Limit, Places:
		return true
	}
	return false
}
