package syntax

// Again reads a block of a sound file once more, from its own bytes; nil where
// that does not give the one block. Reading is cheap and trees are not: whoever
// holds many files lets trees go and reads again what is needed.
func Again(b *Block) *Block {
	f := b.Span.File
	p := newParser(f)
	p.pos, p.end = int(b.Span.Start), int(b.Span.End)
	p.body(false)
	p.dropRepeats(0)
	if p.faults > 0 || p.damaged || p.swallowed || len(p.findings) > 0 || len(p.openBlocks) != 1 || len(p.openAttrs) > 0 {
		return nil
	}
	again := p.openBlocks[0]
	if !alike(again, b) {
		return nil
	}
	return again
}

// alike reports blocks of one shape at one place.
func alike(a, b *Block) bool {
	if a.Span != b.Span || len(a.Blocks) != len(b.Blocks) {
		return false
	}
	for i := range a.Blocks {
		if !alike(a.Blocks[i], b.Blocks[i]) {
			return false
		}
	}
	return true
}
