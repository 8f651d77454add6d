package markdown

import (
	"fmt"
	"strings"

	"fettle/calc"
	"fettle/render"
)

// line is words on one line as Markdown, values in bold.
func line(l render.Line) string { return inline(l, "**") }

// bold is a line in bold. Marks inside marks end them, so it holds no others.
func bold(l render.Line) string {
	if len(l) == 0 {
		return ""
	}
	return "**" + strings.TrimSpace(inline(l, "")) + "**"
}

// inline is a line with a mark around its values, and none in it without.
func inline(l render.Line, mark string) string {
	var b strings.Builder
	for _, in := range l {
		switch in.Kind {
		case render.Text:
			b.WriteString(escape(in.Text))
		case render.Value:
			switch {
			case in.Text == calc.Blank && (b.Len() == 0 || strings.HasSuffix(b.String(), " ")):
				b.WriteString(blank)
			case in.Text == calc.Blank:
				b.WriteString(escape(blank))
			default:
				b.WriteString(mark + escape(in.Text) + mark)
			}
		case render.Emphasis:
			b.WriteString(marked(mark[:len(mark)/2], in.Line))
		case render.Strong:
			b.WriteString(marked(mark, in.Line))
		case render.Code:
			b.WriteString(code(in.Text))
		case render.Link: // nothing leads out
			b.WriteString(inline(in.Line, mark))
			if in.Line.Plain() != in.Text && in.Text != "" {
				b.WriteString(" (" + escape(in.Text) + ")")
			}
		case render.Break:
			b.WriteString(" ")
		case render.Picture:
			b.WriteString(picture(in.Figure))
		}
	}
	return b.String()
}

// marked puts marks around text, blanks outside.
func marked(mark string, l render.Line) string {
	s := inline(l, "")
	inner := strings.TrimSpace(s)
	if inner == "" {
		return s
	}
	return strings.Replace(s, inner, mark+inner+mark, 1)
}

// picture names a picture: paper shows its file, and what is seen on it.
func picture(f *render.Figure) string {
	switch {
	case f.Film != "":
		return joined(escape(f.Film), escape(f.Note))
	case f.Missing != "" && f.Data == nil:
		return joined("*"+escape(f.File)+"*: "+escape(f.Alt), escape(f.Note))
	}
	return joined("*"+escape(f.File)+"*: "+escape(f.Alt), escape(f.Note))
}

func joined(a, b string) string {
	if b == "" {
		return a
	}
	return a + " " + b
}

// blocks writes prose, each line behind indent.
func (p *page) blocks(indent string, all []render.Block) {
	for _, b := range all {
		p.end()
		switch b.Kind {
		case render.Paragraph:
			p.para(indent, leading(line(b.Line)))
		case render.Heading:
			p.para(indent, bold(b.Line))
		case render.Bullets, render.Numbers:
			for i, item := range b.Items {
				mark := "* " // not the mark of our own lists, which would go on
				if b.Kind == render.Numbers {
					mark = fmt.Sprintf("%d. ", b.Start+i)
				}
				p.item(indent, mark, item)
			}
			p.WriteString("\n")
		case render.Quote:
			p.blocks(indent+"> ", b.Quote)
		case render.Verbatim:
			fence := "```"
			for strings.Contains(b.Text, fence) {
				fence += "`"
			}
			p.WriteString(indent + fence + "\n")
			for l := range strings.SplitSeq(strings.TrimRight(render.Printable(b.Text), "\n"), "\n") {
				p.WriteString(indent + l + "\n")
			}
			p.WriteString(indent + fence + "\n\n")
		case render.Rule:
			p.WriteString(indent + "---\n\n")
		}
	}
}

func (p *page) item(indent, mark string, item []render.Block) {
	if len(item) == 1 && item[0].Kind == render.Paragraph {
		p.WriteString(indent + mark + leading(line(item[0].Line)) + "\n")
		return
	}
	inner := &page{d: p.d}
	inner.blocks("", item)
	pad := strings.Repeat(" ", len(mark))
	for i, l := range strings.Split(strings.TrimRight(inner.String(), "\n"), "\n") {
		switch {
		case i == 0:
			p.WriteString(indent + mark + l + "\n")
		case l == "":
			p.WriteString("\n")
		default:
			p.WriteString(indent + pad + l + "\n")
		}
	}
}
