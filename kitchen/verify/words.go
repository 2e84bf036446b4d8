package verify

import (
	"strings"

	"benchproof/kitchen/verify/speech"
)

func setOf(words string) map[string]bool {
	m := map[string]bool{}
	for _, w := range strings.Fields(words) {
		m[w] = true
	}
	return m
}

// silent are words that say nothing about where in a recipe one is.
var silent = setOf(`a an the and or but so of to in on at by for with from into onto over under up down out off as is are
	was were be been it its it's this that these those there here then now when while until till if not no all any some
	more most very just only again well also i i'm i've i'll you you're you've you'll we we're we've we'll they he she
	my your our their his her me them us what which who how why because go goes going get gets got do does did don't
	let let's want need have has had will would can could should make makes making take takes use using one two three
	half quarter minute minutes hour hours second seconds day days gram grams g ml kg cup cups tablespoon tablespoons
	teaspoon teaspoons tbsp tsp degree degrees about around really quite bit little lot like thing things way side
	time good nice big small large medium fresh first last next another other until each every few both after before
	put give look looks see know say says said think i'd that's there's what's okay right yes
	yeah well mark gas oz lb fahrenheit celsius c f overnight remaining`)

// classes put words of one meaning together.
var classes = classesOf(
	"bake baked bakes baking oven ovens",
	"chill chilled chills chilling fridge refrigerate refrigerator",
	"cool cooled cools cooling",
	"prove proves proved proving proof proofs proofing proofed rise rises rising rose risen double doubled doubles",
	"knead kneads kneaded kneading",
	"simmer simmers simmered simmering bubble bubbles bubbling blip blips",
	"boil boils boiled boiling",
	"fry fries fried frying sizzle sizzling",
	"brown browned browning browns sear seared searing",
	"soften softened softens sweat sweated sweating",
	"roast roasted roasting roasts",
	"whisk whisked whisking whisks",
	"beat beaten beating beats",
	"mix mixes mixed mixing stir stirs stirred stirring combine combined",
	"roll rolled rolling rolls",
	"soak soaked soaking soaks",
	"freeze freezer frozen freezes freezing",
	"toast toasted toasting toasts",
	"marinate marinated marinating marinade",
	"steep steeped steeping infuse infused infusing",
	"set sets setting",
	"drain drained draining drains",
	"melt melted melting melts",
	"salt salted salting",
	"steam steamed steaming steams",
	"poach poached poaching poaches",
	"grill grilled grilling broil broiled broiler",
	"cut cuts cutting slice sliced slicing slices",
	"divide divided dividing split",
	"cook cooked cooking cooks",
	"shape shaped shaping shapes",
	"fold folds folded folding",
	"stretch stretches stretched stretching",
	"tin tins pan pans",
	"keep keeps kept",
	"rests rested resting",
)

func classesOf(lists ...string) map[string]string {
	m := map[string]string{}
	for _, list := range lists {
		words := strings.Fields(list)
		for _, w := range words {
			m[w] = words[0]
		}
	}
	return m
}

// meaning gives the word that stands for w in comparisons, "" if w says nothing.
func meaning(w speech.Word) string {
	if class, ok := classes[w.Text]; ok {
		return class
	}
	if silent[w.Text] || len(w.Text) < 3 || w.Text[0] >= '0' && w.Text[0] <= '9' {
		return ""
	}
	return w.Stem
}

// partLead are words that make a time a part of a longer one.
var partLead = setOf("after every first last final another extra more further next")

// isPartTime tells times within a longer one: "after 10 minutes", "for the last
// 5 minutes", "ten minutes in".
func isPartTime(t speech.Text, s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-3 && t.Words[k].Stop == speech.None; k-- {
		w := t.Words[k].Text
		if partLead[w] && w != "another" && w != "more" && w != "further" && w != "extra" {
			return true
		}
		if w != "the" && w != "about" && w != "around" && w != "another" && w != "or" && w != "maybe" && w != "that" && w != "just" {
			break
		}
	}
	if s.To < len(t.Words) && t.Words[s.To-1].Stop == speech.None {
		switch t.Words[s.To].Text {
		case "in":
			return s.To+1 >= len(t.Words) || t.Words[s.To].Stop != speech.None || setOf("and i you we turn it's check")[t.Words[s.To+1].Text]
		case "later", "left", "into", "gone":
			return true
		case "before":
			return s.To+2 < len(t.Words) && t.Words[s.To+1].Text == "the" && t.Words[s.To+2].Text == "end"
		}
	}
	return false
}
