package page

import (
	"strings"

	"benchproof/kitchen/recipe/lexicon"
)

// Page is a sorted text.
type Page struct {
	Rows  []Row  // every line that is not blank, in order
	Parts []Part // the components, in the order of their ingredients
}

// Part is one component of the recipe.
type Part struct {
	Name   string // "Pastry"; "" for what stands under no heading
	Number int    // its first heading's line number; 0 without one

	lines, steps int // how many rows are its ingredients, its steps
}

// Sort sorts a text's lines. It never fails: what fits nowhere is Unread. Bytes
// that are no UTF-8 become the replacement character.
func Sort(text string) Page {
	s := sorter{rows: split(text), part: -1}
	s.survey()
	for i := range s.rows {
		s.place(i)
	}
	s.finish()
	return Page{Rows: s.rows, Parts: s.parts}
}

// sorter walks over the rows with what it knows so far.
type sorter struct {
	rows  []Row
	parts []Part
	at    section
	part  int // the component in hand; −1 before the first

	shouting bool // the whole text is in capitals
	listed   bool // ingredients come: a heading for them, or a row that starts with an amount
	numbered bool // steps carry numbers
	titled   bool
	yielded  bool
	said     bool // the section in hand was opened by its own heading
	entered  bool // the component in hand was named inside the method
}

// survey looks over the whole text once, for what single rows cannot tell.
func (s *sorter) survey() {
	capitals := 0
	for _, r := range s.rows {
		if isCapitals(r.Words) {
			capitals++
		}
		if sec, _, _, ok := sectionOf(r.Words); ok && sec == inIngredients || startsMeasured(r.Words) || endsMeasured(r.Words) {
			s.listed = true
		}
		s.numbered = s.numbered || r.Numbered
	}
	s.shouting = capitals*2 > len(s.rows)
}

// finish puts the nameless method where it is read in order, and marks a text
// with neither ingredient nor step as not read.
func (s *sorter) finish() {
	placed := false
	for _, r := range s.rows {
		placed = placed || r.Role == Ingredient || r.Role == Step
	}
	for i := range s.rows {
		r := &s.rows[i]
		if !placed && (r.Role == Intro || r.Role == Note) {
			r.Role = Unread
		}
		r.Alone = r.Role == Step && s.parts[r.Part].steps == 1
	}
	s.settle()
}

// settle moves a nameless part that has steps only before the first other part
// whose steps come later in the text.
func (s *sorter) settle() {
	from := -1
	for i, p := range s.parts {
		if p.Name == "" && p.lines == 0 && p.steps > 0 {
			from = i
		}
	}
	if from < 0 {
		return
	}
	first := make([]int, len(s.parts))
	for i := len(s.rows) - 1; i >= 0; i-- {
		if r := s.rows[i]; r.Role == Step {
			first[r.Part] = r.Number
		}
	}
	to := len(s.parts) - 1
	for i := range s.parts {
		if i != from && first[i] > first[from] {
			to = i
			break
		}
	}
	s.move(from, to)
}

// move shifts one part to another place and renumbers the rows.
func (s *sorter) move(from, to int) {
	if from < to && to < len(s.parts)-1 {
		to--
	}
	order := make([]int, 0, len(s.parts))
	for i := range s.parts {
		if i != from {
			order = append(order, i)
		}
	}
	order = append(order[:to], append([]int{from}, order[to:]...)...)
	moved := make([]Part, len(order))
	now := make([]int, len(order))
	for i, was := range order {
		moved[i], now[was] = s.parts[was], i
	}
	s.parts = moved
	for i := range s.rows {
		if s.rows[i].Part >= 0 {
			s.rows[i].Part = now[s.rows[i].Part]
		}
	}
}

// named finds the part that a heading in the method means: the same name, one
// contained in the other, or the same last word. It gives −1 if none or several
// fit.
func (s *sorter) named(name string) int {
	key := partKey(name)
	found := -1
	for i, p := range s.parts {
		if partKey(p.Name) == key {
			return i
		}
	}
	for i, p := range s.parts {
		other := partKey(p.Name)
		if other == "" || !strings.Contains(" "+key+" ", " "+other+" ") && !strings.Contains(" "+other+" ", " "+key+" ") {
			continue
		}
		if found >= 0 {
			return -1
		}
		found = i
	}
	return found
}

func partKey(name string) string {
	key := lexicon.Lower(strings.Join(strings.Fields(name), " "))
	for _, lead := range []string{"make the ", "to make the ", "making the ", "for the ", "the "} {
		key = strings.TrimPrefix(key, lead)
	}
	return key
}
