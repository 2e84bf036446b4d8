package recipe

import (
	"strings"

	"benchproof/kitchen/measure"
)

// words writes what stands beside the measure: size, food, what is done to it,
// what is said about it. before is the amount with which the food was written:
// "1 egg" becomes "eggs" where it is scaled to two.
func words(l Line, before measure.Amount, packed bool) string {
	var b strings.Builder
	if packed && l.Packs.Unit != measure.Each {
		b.WriteString(l.Packs.Unit.Name(l.Packs.Count.To.Cmp(measure.Whole(1)) > 0) + " ")
	}
	if l.Size != "" {
		b.WriteString(l.Size + " ")
	}
	food := l.Food
	if l.HasAmount && l.Amount.Unit == measure.Each && isMany(before) != isMany(l.Amount) {
		food = agree(food, l.Amount)
	}
	b.WriteString(food)
	add := func(text string) {
		if text != "" {
			b.WriteString(", " + text)
		}
	}
	notes := strings.Split(l.Note, "; ")
	for _, n := range notes {
		if strings.HasPrefix(n, "or ") {
			b.WriteString(" " + n) // "butter or lard, melted"
		}
	}
	add(l.Preparation)
	for _, n := range notes {
		if !strings.HasPrefix(n, "or ") {
			add(n)
		}
	}
	if l.ToTaste && !saysTaste(l.Note) {
		add("to taste")
	}
	if l.Divided {
		add("divided")
	}
	if l.Optional {
		b.WriteString(" (optional)")
	}
	return b.String()
}

// saysTaste tells that a note already leaves the amount to the cook.
func saysTaste(note string) bool {
	for _, part := range strings.Split(note, "; ") {
		for _, lead := range []string{"for ", "to ", "as ", "enough"} {
			if strings.HasPrefix(strings.ToLower(part), lead) {
				return true
			}
		}
	}
	return strings.Contains(note, "to taste")
}

func isMany(a measure.Amount) bool { return a.To.Cmp(measure.Whole(1)) > 0 }

// agree makes the last word of a name singular or plural, as the amount asks.
func agree(name string, a measure.Amount) string {
	head, tail := name, ""
	for _, of := range []string{" of ", " with ", " in "} { // "loaves of about 900 g"
		if i := strings.Index(name, of); i > 0 && i < len(head) {
			head, tail = name[:i], name[i:]
		}
	}
	at := strings.LastIndexByte(head, ' ') + 1
	if isMany(a) {
		return head[:at] + plural(head[at:]) + tail
	}
	return head[:at] + singular(head[at:]) + tail
}

// irregular nouns of the kitchen, singular first.
var irregular = [][2]string{{"leaf", "leaves"}, {"loaf", "loaves"}, {"half", "halves"}, {"calf", "calves"}, {"anise", "anise"}, {"fish", "fish"},
	{"person", "people"}, {"squash", "squash"}, {"shortbread", "shortbread"}, {"salmon", "salmon"}, {"trout", "trout"}, {"asparagus", "asparagus"},
	{"sea bass", "sea bass"}, {"lettuce", "lettuces"}, {"knife", "knives"}}

func plural(w string) string {
	for _, pair := range irregular {
		if w == pair[0] || w == pair[1] {
			return pair[1]
		}
	}
	n := len(w)
	switch {
	case n < 3 || strings.HasSuffix(w, "s") && !strings.HasSuffix(w, "ss"):
		return w
	case strings.HasSuffix(w, "y") && !strings.ContainsAny(w[n-2:n-1], "aeiou"):
		return w[:n-1] + "ies"
	case strings.HasSuffix(w, "ch"), strings.HasSuffix(w, "sh"), strings.HasSuffix(w, "x"), strings.HasSuffix(w, "ss"), w == "tomato", w == "potato", w == "mango":
		return w + "es"
	}
	return w + "s"
}

func singular(w string) string {
	for _, pair := range irregular {
		if w == pair[0] || w == pair[1] {
			return pair[0]
		}
	}
	n := len(w)
	switch {
	case n < 4 || !strings.HasSuffix(w, "s"), strings.HasSuffix(w, "ss"), strings.HasSuffix(w, "us"), strings.HasSuffix(w, "is"):
		return w
	case strings.HasSuffix(w, "ies") && n > 4:
		return w[:n-3] + "y"
	case strings.HasSuffix(w, "ches"), strings.HasSuffix(w, "shes"), strings.HasSuffix(w, "xes"), strings.HasSuffix(w, "oes"), strings.HasSuffix(w, "sses"):
		return w[:n-2]
	}
	return w[:n-1]
}
