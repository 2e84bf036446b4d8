package food

import "strings"

// phrase is a written name taken apart: the name itself, and what stands in
// brackets or behind commas.
type phrase struct {
	all    []token // every word, in order
	main   []token
	asides [][]token
}

// parsePhrase cuts a written name at brackets, commas, semicolons, colons and
// spaced dashes. If nothing stands before the first of them, the first part
// that has words is the name.
func parsePhrase(written string) phrase {
	if !strings.ContainsAny(written, "([{,;:–—") && !strings.Contains(written, " - ") {
		list := tokens(written)
		return phrase{all: list, main: list}
	}
	parts := []*strings.Builder{{}}
	depth, behind := 0, false
	for i, r := range written {
		switch {
		case strings.ContainsRune("([{", r):
			depth++
			parts = append(parts, &strings.Builder{})
		case strings.ContainsRune(")]}", r):
			depth = max(0, depth-1)
			parts = append(parts, &strings.Builder{})
		case strings.ContainsRune(",;:–—", r), r == '-' && i > 0 && strings.HasPrefix(written[i-1:], " - "):
			behind = behind || depth == 0
			parts = append(parts, &strings.Builder{})
		case depth == 0 && !behind:
			parts[0].WriteRune(r) // "unsalted (sweet) butter" goes on behind the bracket
		default:
			parts[len(parts)-1].WriteRune(r)
		}
	}
	p := phrase{all: tokens(written), main: tokens(parts[0].String())}
	for _, part := range parts[1:] {
		if list := tokens(part.String()); len(list) > 0 {
			p.asides = append(p.asides, list)
		}
	}
	if len(p.main) == 0 && len(p.asides) > 0 {
		p.main, p.asides = p.asides[0], p.asides[1:]
	}
	return p
}
