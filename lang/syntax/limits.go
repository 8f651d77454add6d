package syntax

import "strings"

// maxDigits bounds a number as written.
const maxDigits = 40

// A fault is a limit that an item breaks.
type fault struct {
	rule       string
	start, end int
	message    string
}

// A survey is what a look at the characters tells about an item before
// hclsyntax is let near it.
type survey struct {
	end      int     // after the newline that ends the item, or the limit
	balanced bool    // all brackets met their partners
	overrun  bool    // not balanced, for a bracket that closes more than the item
	faults   []fault // limits that are broken
	torn     *fault  // the first text or bracket that is not closed
	comments [][2]int
}

// surveyItem looks at the item that starts at start, up to its end. With all
// set it looks at everything up to limit, whatever the brackets do.
func surveyItem(src string, start, limit int, all bool) survey {
	s := surveyor{src: src, pos: start, limit: limit, all: all, ops: []int{0}}
	s.balanced = true
	s.run()
	s.end = min(s.pos, limit)
	if n := len(s.open); n > 0 { // also where it stopped for depth
		s.balanced, s.overrun = false, false
		s.tear(s.open[n-1])
	}
	return s.survey
}

type surveyor struct {
	survey
	src        string
	pos, limit int
	all        bool
	open       []opening
	ops        []int // operators since the last separator, by depth
	deep       bool
}

// An opening is one of ( [ { for brackets, $ for an interpolation or
// directive, " for a quoted string, < for a heredoc.
type opening struct {
	kind   byte
	pos    int
	marker string
	lines  int
}

// tear notes what is not closed, unless something before it is not either.
func (s *surveyor) tear(o opening) {
	if s.torn != nil {
		return
	}
	first := o.pos + len(strings.TrimRight(line(s.src[o.pos:s.limit]), "\r\n"))
	switch o.kind {
	case '"':
		s.torn = &fault{ruleString, o.pos, first, "This text is not closed on its line."}
	case '<':
		s.torn = &fault{ruleString, o.pos, first, "The closing mark of this text is missing."}
	case '$':
		s.torn = &fault{ruleString, o.pos, o.pos + 2, "This `" + s.src[o.pos:o.pos+2] + "` is not closed."}
	default:
		s.torn = &fault{ruleBracket, o.pos, o.pos + 1, "This `" + string(rune(o.kind)) + "` is not closed."}
	}
}

func (s *surveyor) run() {
	for s.pos < s.limit && (s.all || !s.deep) {
		top := byte(0)
		if n := len(s.open); n > 0 {
			top = s.open[n-1].kind
		}
		var more bool
		switch top {
		case '"':
			more = s.inString()
		case '<':
			more = s.inHeredoc()
		default:
			more = s.inCode(top)
		}
		if !more {
			return
		}
	}
}

func (s *surveyor) push(kind byte, marker string) {
	s.open = append(s.open, opening{kind: kind, pos: s.pos, marker: marker})
	s.ops = append(s.ops, 0)
	if len(s.open) > maxDepth && !s.deep {
		s.deep = true
		s.fault(ruleDeep, s.pos, s.pos+1, "More than 200 brackets are open here.")
	}
}

func (s *surveyor) pop() {
	s.open = s.open[:len(s.open)-1]
	s.ops = s.ops[:len(s.ops)-1]
}

func (s *surveyor) fault(rule string, start, end int, message string) {
	s.faults = append(s.faults, fault{rule, start, end, message})
}

// op counts an operator or a step.
func (s *surveyor) op(n int) {
	count := &s.ops[len(s.ops)-1]
	if *count++; *count == maxChain+1 {
		s.fault(ruleLong, s.pos, s.pos+n, "This expression has more than 500 operators and steps.")
	}
}

func (s *surveyor) inCode(top byte) bool {
	rest := s.src[s.pos:s.limit]
	switch c := rest[0]; c {
	case '\n':
		s.pos++
		if top == 0 || top == '{' {
			s.ops[len(s.ops)-1] = 0
		}
		return top != 0 || s.all
	case '#', '/':
		n := commentLen(rest)
		if n > 0 {
			s.comments = append(s.comments, [2]int{s.pos, s.pos + n})
			s.pos += n
			return true
		}
		s.op(1)
	case '"':
		s.push('"', "")
	case '(', '[', '{':
		s.op(1)
		s.push(c, "")
	case ')', ']', '}':
		if top == partner(c) || c == '}' && top == '$' {
			s.pop()
		} else {
			s.balanced = false
			s.overrun = top == 0
			s.pos++
			return s.all
		}
	case '=':
		if strings.HasPrefix(rest, "==") {
			s.op(2)
			s.pos += 2
			return true
		}
		s.ops[len(s.ops)-1] = 0
	case ',':
		s.ops[len(s.ops)-1] = 0
	case '<':
		if marker, _, n := heredocOpen(rest); n > 0 {
			s.push('<', marker)
			s.pos += n
			return true
		}
		s.compare(rest)
	case '>', '!':
		s.compare(rest)
	case '.', '+', '-', '*', '%', '&', '|', '?':
		s.op(1)
	default:
		if class[c]&namePart != 0 {
			s.word(rest)
			return true
		}
	}
	s.pos++
	return true
}

// compare counts an operator that a = may belong to, and passes the =.
func (s *surveyor) compare(rest string) {
	s.op(1)
	if len(rest) > 1 && rest[1] == '=' {
		s.pos++
	}
}

func partner(c byte) byte {
	switch c {
	case ')':
		return '('
	case ']':
		return '['
	}
	return '{'
}

// word passes a name or a number.
func (s *surveyor) word(src string) {
	n := 1
	if class[src[0]]&digit == 0 {
		for n < len(src) && (class[src[n]]&namePart != 0 || src[n] >= 0x80) {
			n++
		}
		s.pos += n
		return
	}
	exponent := false
	for n < len(src) {
		c := src[n]
		switch {
		case class[c]&digit != 0 || c == '.':
		case (c == 'e' || c == 'E') && exponentDigits(src[n+1:]):
			exponent = true
			n++
		default:
			s.numeral(n, exponent)
			return
		}
		n++
	}
	s.numeral(n, exponent)
}

func exponentDigits(src string) bool {
	if src != "" && (src[0] == '+' || src[0] == '-') {
		src = src[1:]
	}
	return src != "" && class[src[0]]&digit != 0
}

func (s *surveyor) numeral(n int, exponent bool) {
	switch {
	case exponent:
		s.fault(ruleExponent, s.pos, s.pos+n, "A number is written without an exponent.")
	case n > maxDigits:
		s.fault(ruleDigits, s.pos, s.pos+n, "This number has more than 40 digits.")
	}
	s.pos += n
}

func (s *surveyor) inString() bool {
	rest := s.src[s.pos:s.limit]
	n := strings.IndexAny(rest, "\\\"$%\n")
	if n < 0 {
		s.pos = s.limit
		return false
	}
	s.pos += n
	rest = rest[n:]
	switch c := rest[0]; c {
	case '"':
		s.pop()
	case '\n':
		n := len(s.open) - 1
		if n > 0 && s.open[n-1].kind == '$' { // the quote that closes the text around
			n--
		}
		s.tear(s.open[n])
		s.pop() // the line end is seen again, as code
		return true
	case '\\':
		if len(rest) > 1 && rest[1] != '\n' {
			s.pos++
		}
	default:
		return s.template(rest)
	}
	s.pos++
	return true
}

// template passes a $ or %, and what it opens.
func (s *surveyor) template(rest string) bool {
	c := rest[0]
	switch {
	case len(rest) > 2 && rest[1] == c && rest[2] == '{':
		s.pos += 3
	case len(rest) > 1 && rest[1] == '{':
		s.push('$', "")
		s.pos += 2
	default:
		s.pos++
	}
	return true
}

func (s *surveyor) inHeredoc() bool {
	top := &s.open[len(s.open)-1]
	rest := s.src[s.pos:s.limit]
	if s.src[s.pos-1] == '\n' {
		text := line(rest)
		if strings.TrimSpace(text) == top.marker && strings.HasSuffix(text, "\n") {
			s.pop()
			s.pos += len(strings.TrimRight(text, "\r\n"))
			return true
		}
		if top.lines++; top.lines == maxHeredoc+1 {
			s.fault(ruleHeredocLines, s.pos, s.pos+len(strings.TrimRight(text, "\r\n")),
				"This text has more than 500 lines.")
		}
	}
	n := strings.IndexAny(rest, "$%\n")
	if n < 0 {
		s.pos = s.limit
		return false
	}
	s.pos += n
	if rest[n] != '\n' {
		return s.template(rest[n:])
	}
	s.pos++
	return true
}
