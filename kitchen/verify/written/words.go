package written

import (
	"strings"

	"benchproof/kitchen/verify/speech"
)

// Silent are words that say nothing about where in a recipe one is.
var Silent = speech.SetOf(`a an the and or but so of to in on at by for with from into onto over under up down out off as is are
	was were be been it its it's this that these those there here then now when while until till if not no all any some
	more most very just only again well also i i'm i've i'll you you're you've you'll we we're we've we'll they he she
	my your our their his her me them us what which who how why because go goes going get gets got do does did don't
	let let's want need have has had will would can could should make makes making take takes use using one two three
	half quarter minute minutes hour hours second seconds day days gram grams g ml kg cup cups tablespoon tablespoons
	teaspoon teaspoons tbsp tsp degree degrees about around really quite bit little lot like thing things way side
	time good nice big small large medium fresh first last next another other until each every few both after before
	put give look looks see know say says said think i'd that's there's what's okay right yes
	yeah well too mark gas oz lb fahrenheit celsius c f overnight remaining`)

// classes put words of one meaning together.
var classes = classesOf(
	"bake baked bakes baking",
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
	"rub rubs rubbed rubbing",
	"blend blends blended blending blender blitz blitzed blitzing",
	"turn turns turned turning flip flips flipped flipping",
	"reduce reduces reduced reducing",
	"ferment ferments fermented fermenting",
	"cure cures cured curing",
	"churn churns churned churning",
	"rinse rinses rinsed rinsing",
	"smoke smokes smoked smoking",
	"oven ovens",
	"ice iced",
	"inside", "middle", "core", "centre center", "probe", "thermometer", "internal", "reheat",
	"rests rested resting stand stands standing sit sits sitting leave leaving stay stays staying stayed",
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

// IsClass tells whether a word is one of the kitchen's that have several forms.
func IsClass(word string) bool { return classes[word] != "" }

// Meaning gives the word that stands for w in comparisons, "" if w says nothing.
func Meaning(w speech.Word) string {
	if class := classOf(w); class != "" {
		return class
	}
	if Silent[w.Text] || len(w.Text) < 3 || w.Text[0] >= '0' && w.Text[0] <= '9' {
		return ""
	}
	return plain(w.Stem)
}

// classOf gives the class of a word in any of its forms, "" for none.
func classOf(w speech.Word) string {
	if class := classes[w.Text]; class != "" || len(w.Text) < 5 {
		return class
	}
	if class := classes[w.Stem]; class != "" {
		return class
	}
	root := plain(w.Stem)
	if class := classes[root]; class != "" {
		return class
	}
	return classes[root+"e"]
}

// plain takes the endings of verbs off a stem: "rubbed" and "rubbing" mean what
// "rub" does.
func plain(w string) string {
	for _, ending := range []string{"ing", "ed"} {
		root, ok := strings.CutSuffix(w, ending)
		n := len(root)
		if !ok || n < 3 || !strings.ContainsAny(root, "aeiouy") {
			continue
		}
		if root[n-1] == root[n-2] && !strings.ContainsRune("slzf", rune(root[n-1])) {
			return root[:n-1]
		}
		return root
	}
	if n := len(w); n > 4 && w[n-1] == 'e' {
		return w[:n-1] // "grated" and "grate"
	}
	return w
}

// isVerb tells of a class whether it is something done to food.
var isVerb = speech.SetOf("bake chill cool prove knead simmer boil fry brown soften roast whisk beat mix roll soak freeze toast marinate steep set drain melt steam poach grill cook rests fold stretch smoke rub blend reduce ferment cure churn")

// IsAbout tells words that may stand between a number and what leads to it: "about",
// "a good".
func IsAbout(word string) bool { return abouts[word] }

var abouts = speech.SetOf("about around like roughly just only a good another maybe say the")

// Turns are words by which talk comes to something else.
var Turns = speech.SetOf("but so now then because okay right anyway well and here")

// Between are words that stand between a number and what it counts.
var Between = speech.SetOf(`large medium small big little fat fresh whole ripe good nice lovely more extra equal even free range
	of those these the our my your organic beautiful plump fine cold single separate long thin thick short round`)

// Blockers end the search for a food behind an amount.
var Blockers = speech.SetOf(`into in on onto over to with and then for until till at from goes go is are it it's so but or because if when
	we you i i'm that's there's not then plus minus as per they he she what which who where how than after before`)

// Things are nouns that make a tool or a dish of the food before them.
var Things = speech.SetOf(`dish dishes knife bowl bag bags jar jug tin box boxes carton packet shop cup cups spoon wash brush mill
	grinder bin sack stain shaker farmer farmers timer timers beater slicer press peeler pan sieve hand hands finger fingers fist palm drawer cupboard shelf`)

// IsThing tells whether word i is such a noun; "brush it" is none.
func IsThing(t speech.Text, i int) bool {
	if !Things[t.At(i)] {
		return false
	}
	switch t.At(i) {
	case "brush", "wash", "press", "sieve", "mill", "spoon", "box", "bin", "sack":
		switch t.At(i + 1) {
		case "it", "them", "the", "that", "your", "over", "all", "on", "in", "this", "some":
			return false
		}
	}
	return true
}

// waters are words before water that make it no water of the tap.
var waters = speech.SetOf("flower blossom rose soda tonic coconut pasta barley")

// isDeed tells whether word i, a noun elsewhere, says what is done to the food before it:
// "two carrots, peel them".
func isDeed(t speech.Text, i int) bool {
	switch t.At(i) {
	case "peel", "juice", "zest", "crisp", "jam", "powder":
		return t.At(i+1) == "them" || t.At(i+1) == "it" || t.At(i+1) == "those" || t.At(i+1) == "these"
	}
	return false
}

// Describing are words before a noun that make no other food of it.
var Describing = speech.SetOf(`fresh dried large small medium ripe unsalted salted plain white fine coarse whole good cold warm hot
	soft softened melted raw natural mixed boneless skinless organic local lovely beautiful nice big little fat extra more
	cooked chopped sliced diced grated sifted toasted beaten ground golden that this your same real proper usual cheap dry
	strong best ordinary leftover remaining hard crisp young old first second last free-range range lukewarm boiling iced`)

// made are nouns that make another food of the one before them: "plum juice".
var made = speech.SetOf("white water juice zest peel syrup stock jam paste puree purée powder sauce vinegar oil extract essence jelly crisp soup bread")
