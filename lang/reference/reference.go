// Package reference prints the definitions of the dialect for people: one block
// for explain, and the whole for lang/REFERENCE.md.
//
// It reads the same tables as the decoder, so that it cannot be out of date.
package reference

import (
	"fmt"
	"strings"

	"fettle/lang/entry"
	"fettle/lang/kind"
	"fettle/lang/schema"
)

// Block prints one block as Markdown, or gives "" for a name that is no block's.
func Block(name string) string {
	var b strings.Builder
	for _, def := range entry.Top() {
		if def.Name == name {
			block(&b, def, "##")
			return b.String()
		}
	}
	if k := kind.Of(name); k != nil {
		step(&b, k, true)
		return b.String()
	}
	for _, def := range nested() {
		if def.Name == name {
			block(&b, def, "##")
			return b.String()
		}
	}
	return ""
}

// Names lists every block that Block knows, in the order of the page.
func Names() []string {
	var names []string
	for _, b := range entry.Top() {
		names = append(names, b.Name)
	}
	for _, k := range kind.All() {
		names = append(names, k.Block.Name)
	}
	for _, b := range nested() {
		names = append(names, b.Name)
	}
	return names
}

func nested() []*schema.Block {
	return append([]*schema.Block{kind.Otherwise, entry.History, entry.Size}, entry.Messages()...)
}

// Page is lang/REFERENCE.md.
func Page() string {
	var b strings.Builder
	b.WriteString("# The dialect\n\n<!-- Generated from the tables in lang/entry and lang/kind: go test ./lang/reference -update -->\n\n" +
		"A manual is a folder of `*.proc.hcl` files. Block headers start in column one, a block with\n" +
		"several attributes is written on several lines, and names hold no `-`. An attribute that takes\n" +
		"one thing takes a list too, and a map by place wherever its block is at places.\n\n# Blocks at the top of a file\n\n")
	for _, def := range entry.Top() {
		block(&b, def, "##")
	}
	b.WriteString("# Blocks inside others\n\n")
	for _, def := range nested() {
		block(&b, def, "##")
	}
	b.WriteString("# Steps\n\nEvery step may have:\n\n")
	attrs(&b, kind.Common())
	for _, k := range kind.All() {
		step(&b, k, false)
	}
	b.WriteString("# Thresholds of the house rules\n\n| name | default | judges | source |\n|---|---|---|---|\n")
	for _, t := range entry.Thresholds() {
		fmt.Fprintf(&b, "| `%s` | `%s` | %s | %s |\n", t.Name, t.Default, t.Doc, t.Source)
	}
	return b.String()
}

func step(b *strings.Builder, k *kind.Kind, common bool) {
	own := *k.Block
	if !common {
		own.Attrs = nil
		for _, a := range k.Block.Attrs {
			if !isCommon(a.Name) {
				own.Attrs = append(own.Attrs, a)
			}
		}
	}
	block(b, &own, "##")
	if k.NeedsOn {
		b.WriteString("`on` is required.\n\n")
	}
}

func isCommon(name string) bool {
	for _, a := range kind.Common() {
		if a.Name == name {
			return true
		}
	}
	return false
}

func block(b *strings.Builder, def *schema.Block, mark string) {
	head := def.Name
	if def.Label != "" {
		head += ` "` + def.Label + `"`
	}
	fmt.Fprintf(b, "%s `%s`\n\n%s\n\n", mark, head, def.Doc)
	if def.Example != "" {
		fmt.Fprintf(b, "```hcl\n%s```\n\n", def.Example)
	}
	if len(def.Attrs) > 0 {
		attrs(b, def.Attrs)
	}
	if len(def.Blocks) > 0 {
		names := make([]string, len(def.Blocks))
		for i, n := range def.Blocks {
			names[i] = "`" + n.Name + "`"
		}
		fmt.Fprintf(b, "Blocks inside: %s.\n\n", strings.Join(names, ", "))
	}
}

func attrs(b *strings.Builder, list []schema.Attr) {
	b.WriteString("| attribute | takes | |\n|---|---|---|\n")
	for i := range list {
		a := &list[i]
		doc := a.Doc
		if a.Required {
			doc += " **Required.**"
		}
		if a.Default != "" {
			doc += " Default: " + a.Default + "."
		}
		fmt.Fprintf(b, "| `%s` | %s | %s |\n", a.Name, Takes(a), doc)
	}
	b.WriteString("\n")
}

// Takes says in words what an attribute takes: "a torque", "one of hand, press".
func Takes(a *schema.Attr) string {
	switch a.Type {
	case schema.Text:
		return "text"
	case schema.Prose:
		return "text (CommonMark)"
	case schema.Word:
		return "one of `" + strings.Join(a.Words, "`, `") + "`"
	case schema.Bool:
		return "true or false"
	case schema.Count:
		return "a whole number"
	case schema.Date:
		return "a day, `\"2026-03-14\"`"
	case schema.Designation:
		return "a designation, as written"
	case schema.Amount, schema.Setting, schema.Limits:
		return quantity(a)
	case schema.Condition:
		return "a condition"
	case schema.Reference:
		return reference(a)
	case schema.Names:
		return "names"
	case schema.Path:
		return "a path"
	case schema.TimeAt:
		return "a time, or times at temperatures"
	case schema.Table:
		return "a map"
	}
	return ""
}

func quantity(a *schema.Attr) string {
	what := "a value"
	if a.HasDim {
		what = a.Dim.String()
	}
	switch a.Type {
	case schema.Setting:
		return what + ", with its tolerance"
	case schema.Limits:
		if a.HasDim {
			return "limits of " + what
		}
		return "limits"
	}
	return what
}

func reference(a *schema.Attr) string {
	s := "addresses: " + strings.Join(a.To, ", ")
	for _, w := range a.Words {
		if w == "*" {
			s += ", or words"
		} else {
			s += ", or `\"" + w + "\"`"
		}
	}
	return s
}
