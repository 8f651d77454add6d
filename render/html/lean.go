package html

import "bytes"

// lean leaves out the end tags that HTML lets one leave out (HTML Living Standard,
// 13.1.2.4): a tenth of a long checklist. Text holds no "<" of its own.
func lean(page []byte) []byte {
	out := make([]byte, 0, len(page))
	for len(page) > 0 {
		i := bytes.IndexByte(page, '<')
		if i < 0 {
			break
		}
		out = append(out, page[:i]...)
		page = page[i:]
		end := bytes.IndexByte(page, '>') + 1
		tag := page[:end]
		page = page[end:]
		if string(tag) == "</p>" && endsParagraph(page) || always[string(tag)] {
			if after := bytes.TrimLeft(page, "\n"); len(after) > 0 && after[0] == '<' {
				page = after
			}
			continue
		}
		out = append(out, tag...)
	}
	return append(out, page...)
}

// always may be left out wherever this page has it: what follows is another of
// their kind, or the end of what they stand in.
var always = map[string]bool{"</dt>": true, "</dd>": true, "</li>": true, "</td>": true, "</th>": true, "</tr>": true, "</thead>": true, "</tbody>": true, "</tfoot>": true}

// endsParagraph reports that what follows ends a paragraph by itself.
func endsParagraph(rest []byte) bool {
	rest = bytes.TrimLeft(rest, "\n")
	for _, tag := range []string{"<p>", "<p ", "<div", "<dl", "<ul", "<ol", "<table", "<figure", "<section", "<article", "<h", "</div>", "</article>", "</section>", "</footer>", "</dd>", "</li>", "</blockquote>"} {
		if bytes.HasPrefix(rest, []byte(tag)) {
			return true
		}
	}
	return false
}
