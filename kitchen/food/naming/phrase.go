package naming

import "strings"

// phrase is a written name taken apart: the name itself, and what stands in
// brackets or behind commas.
type phrase struct {
	all    []token // every word, the name's first
	main   []token
	asides [][]token
}

// A name is read up to mostWords words before the first comma and mostBytes in
// all; a longer text is no name.
const (
	mostWords = 24
	mostBytes = 1000
)

// orForSlash reads "caster/superfine sugar" as one or the other; a slash beside a
// digit ("80/20 ground beef") parts no names.
func orForSlash(written string) string {
	if !strings.Contains(written, "/") {
		return written
	}
	var b strings.Builder
	for i, r := range written {
		if r == '/' && !strings.ContainsAny(written[max(0, i-1):min(len(written), i+2)], "0123456789") {
			b.WriteString(" or ")
			continue
		}
		b.WriteRune(r)
	}
	return b.String()
}

// parsePhrase cuts a written name at brackets, commas, semicolons, colons and
// spaced dashes. If nothing stands before the first of them, the first part
// that has words is the name.
func parsePhrase(written string) phrase {
	written = orForSlash(written[:min(len(written), mostBytes)])
	if !strings.ContainsAny(written, "([{,;:–—") && !strings.Contains(written, " - ") {
		return newPhrase(tokens(written), nil)
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
	var asides [][]token
	for _, part := range parts[1:] {
		if list := tokens(part.String()); len(list) > 0 {
			asides = append(asides, list)
		}
	}
	return newPhrase(tokens(parts[0].String()), asides)
}

// newPhrase puts a phrase together: the first words there are become the name,
// those beyond mostWords an aside.
func newPhrase(main []token, asides [][]token) phrase {
	if len(main) == 0 && len(asides) > 0 {
		main, asides = asides[0], asides[1:]
	}
	if len(main) > mostWords {
		main, asides = main[:mostWords], append([][]token{main[mostWords:]}, asides...)
	}
	p := phrase{all: main, main: main, asides: asides}
	for _, aside := range asides {
		p.all = append(p.all[:len(p.all):len(p.all)], aside...)
	}
	return p
}
