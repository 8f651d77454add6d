package syntax

// maxChain bounds the operators and steps of one expression, which nest as
// deeply as they are many.
const maxChain = 500

// expr reads an expression, or gives nil to refuse.
func (p *parser) expr() Expr {
	if p.depth >= maxDepth {
		return nil
	}
	p.depth++
	x := p.cond()
	p.depth--
	return x
}

func (p *parser) cond() Expr {
	x := p.operation(0)
	if x == nil || p.at(0) != '?' {
		return x
	}
	p.pos++
	then := p.expr()
	if then == nil || p.at(0) != ':' || p.at(1) == ':' {
		return nil
	}
	p.pos++
	otherwise := p.expr()
	if otherwise == nil {
		return nil
	}
	return &Cond{p.node(int(x.Span().Start), int(otherwise.Span().End)), x, then, otherwise}
}

// operation reads operands joined by operators that bind at least as tightly
// as the level given, and stands behind the blanks that follow.
func (p *parser) operation(level int) Expr {
	p.skip()
	x := p.operand()
	if x == nil {
		return nil
	}
	for {
		p.skip()
		op, l := p.operator()
		if op == "" || l < level {
			return x
		}
		if p.chain++; p.chain > maxChain {
			return nil
		}
		at := p.pos
		p.pos += len(op)
		y := p.operation(l + 1)
		if y == nil {
			return nil
		}
		x = p.binary(op, at, x, y)
	}
}

// operator gives the operator at pos and how tightly it binds.
func (p *parser) operator() (op string, level int) {
	next := p.at(1)
	switch p.at(0) {
	case '|':
		if next == '|' {
			return "||", 0
		}
	case '&':
		if next == '&' {
			return "&&", 1
		}
	case '=':
		if next == '=' {
			return "==", 2
		}
	case '!':
		if next == '=' {
			return "!=", 2
		}
	case '>':
		if next == '=' {
			return ">=", 3
		}
		return ">", 3
	case '<':
		if next == '=' {
			return "<=", 3
		}
		if next != '<' {
			return "<", 3
		}
	case '+':
		return "+", 4
	case '-':
		return "-", 4
	case '*':
		return "*", 5
	case '/':
		if next != '/' && next != '*' {
			return "/", 5
		}
	case '%':
		return "%", 5
	}
	return "", 0
}

// operand reads a term and the steps from it.
func (p *parser) operand() Expr {
	start := p.pos
	switch c := p.at(0); {
	case c == '"':
		return p.steps(p.quotedString())
	case class[c]&nameStart != 0:
		return p.named()
	case class[c]&digit != 0:
		return p.numeral()
	case c == '[':
		return p.steps(p.list())
	case c == '{':
		return p.steps(p.object())
	case c == '(':
		return p.steps(p.paren())
	case c == '<':
		return p.heredocString()
	case c == '-' || c == '!':
		if p.chain++; p.chain > maxChain {
			return nil
		}
		p.pos++
		p.skip()
		x := p.operand()
		if x == nil {
			return nil
		}
		return &Unary{p.node(start, int(x.Span().End)), p.src[start : start+1], x}
	}
	return nil
}

// numeral reads digits with at most one point among them, and refuses all
// else that begins with a digit.
func (p *parser) numeral() Expr {
	start := p.pos
	i := start
	for i < p.end && class[p.src[i]]&digit != 0 {
		i++
	}
	if i+1 < p.end && p.src[i] == '.' && class[p.src[i+1]]&digit != 0 {
		for i++; i < p.end && class[p.src[i]]&digit != 0; i++ {
		}
	}
	if i-start > maxDigits {
		return nil
	}
	if i < p.end && (p.src[i] == '.' || class[p.src[i]]&namePart != 0 && p.src[i] != '-' || p.src[i] >= 0x80) {
		return nil
	}
	p.pos = i
	return p.steps(p.number(start, i))
}

// named reads what begins with a name: a word, a call or a traversal.
func (p *parser) named() Expr {
	start := p.pos
	name := p.name()
	if name == "" {
		return nil
	}
	after := p.pos
	p.skip()
	switch p.at(0) {
	case '(':
		return p.steps(p.call(start, name))
	case ':':
		if p.at(1) == ':' {
			return nil
		}
	}
	switch name {
	case "true", "false":
		return p.steps(&Bool{p.node(start, after), name == "true"})
	case "null":
		return p.steps(&Null{p.node(start, after)})
	}
	steps, ok := p.stepList()
	if !ok {
		return nil
	}
	if steps != nil {
		after = int(steps[len(steps)-1].Span.End)
	}
	t := p.traversals.one()
	*t = Traversal{p.node(start, after), name, steps}
	return t
}

// steps reads the steps from x, if there are any.
func (p *parser) steps(x Expr) Expr {
	if x == nil {
		return nil
	}
	p.skip()
	steps, ok := p.stepList()
	if !ok {
		return nil
	}
	if steps == nil {
		return x
	}
	return &Access{p.node(int(x.Span().Start), int(steps[len(steps)-1].Span.End)), x, steps}
}

// stepList reads .name and [index] from pos on.
func (p *parser) stepList() (steps []Step, ok bool) {
	base := len(p.openSteps)
	for {
		start := p.pos
		switch p.at(0) {
		case '.':
			p.pos++
			name := p.name()
			if name == "" {
				return nil, false
			}
			p.openSteps = append(p.openSteps, Step{Name: name, Span: p.span(start, p.pos)})
		case '[':
			lines := p.lines
			p.lines = false
			p.pos++
			x := p.expr()
			if x == nil || p.at(0) != ']' {
				return nil, false
			}
			p.pos++
			p.lines = lines
			p.openSteps = append(p.openSteps, Step{Index: x, Span: p.span(start, p.pos)})
		default:
			steps = p.builder.steps.copy(p.openSteps[base:])
			p.openSteps = p.openSteps[:base]
			return steps, true
		}
		if p.chain++; p.chain > maxChain {
			return nil, false
		}
		p.skip()
	}
}

func (p *parser) paren() Expr {
	start, lines := p.pos, p.lines
	p.lines = false
	p.pos++
	x := p.expr()
	if x == nil || p.at(0) != ')' {
		return nil
	}
	p.pos++
	p.lines = lines
	return &Paren{p.node(start, p.pos), x}
}

// call reads from the ( on.
func (p *parser) call(start int, name string) Expr {
	args, ok := p.items(')')
	if !ok {
		return nil
	}
	c := p.calls.one()
	*c = Call{p.node(start, p.pos), name, args}
	return c
}

func (p *parser) list() Expr {
	start := p.pos
	items, ok := p.items(']')
	if !ok {
		return nil
	}
	if len(items) > 0 && isFor(items[0]) {
		return nil
	}
	l := p.lists.one()
	*l = List{p.node(start, p.pos), items}
	return l
}

// isFor reports whether x is the word that begins a for expression.
func isFor(x Expr) bool {
	t, ok := x.(*Traversal)
	return ok && t.Root == "for"
}

// items reads expressions between brackets, separated by commas.
func (p *parser) items(closer byte) (items []Expr, ok bool) {
	base, lines := len(p.openExprs), p.lines
	chain := p.chain
	p.lines = false
	p.pos++
	for {
		p.skip()
		if p.at(0) == closer {
			break
		}
		p.chain = 0
		x := p.expr()
		if x == nil {
			return nil, false
		}
		p.openExprs = append(p.openExprs, x)
		if p.at(0) == ',' {
			p.pos++
		} else if p.at(0) != closer {
			return nil, false
		}
	}
	p.pos++
	p.lines, p.chain = lines, chain
	items = p.exprs.copy(p.openExprs[base:])
	p.openExprs = p.openExprs[:base]
	return items, true
}

// object reads pairs, each on a line of its own or separated by commas.
func (p *parser) object() Expr {
	start, base, lines, chain := p.pos, len(p.openPairs), p.lines, p.chain
	p.pos++
	for {
		p.blankLines()
		if p.at(0) == '}' {
			break
		}
		p.chain = 0
		key := p.expr()
		if key == nil || isFor(key) && len(p.openPairs) == base {
			return nil
		}
		switch c := p.at(0); {
		case c == '=' && p.at(1) != '>', c == ':' && p.at(1) != ':':
			p.pos++
		default:
			return nil
		}
		p.chain = 0
		value := p.expr()
		if value == nil {
			return nil
		}
		p.openPairs = append(p.openPairs, Pair{key, value})
		if c := p.at(0); c == ',' {
			p.pos++
		} else if c != '}' && (p.pos >= p.end || !p.newline()) {
			return nil
		}
	}
	p.pos++
	p.lines, p.chain = lines, chain
	o := p.objects.one()
	*o = Object{p.node(start, p.pos), p.pairs.copy(p.openPairs[base:])}
	p.openPairs = p.openPairs[:base]
	return o
}
