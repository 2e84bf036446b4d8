package about

import (
	"cmp"
	"slices"
	"strings"

	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// A number that disagrees is only a slip if it is about this recipe as it is
// made now. Hosts talk of other times, other people, other recipes, of what one
// could do instead and of what things cost; four signs tell so: whose doing it is
// (the nearest subject before the number), words that set the scene, a condition,
// a denial. All of it is common practice, no source.

// scenes are words that set another scene, anywhere in the sentence.
var scenes = phrasesOf(
	// another time
	"last time", "first time i", "first time we", "every time i", "used to", "ago", "back then", "back in the day", "back in my", "those days", "when i was", "when we were", "yesterday", "tomorrow",
	"next day", "last week", "last month", "last year", "last summer", "last winter", "last christmas", "last night", "i once", "we once", "once i", "once we", "remember when",
	"once made", "once used", "once had", "the biggest", "there were", "there was", "does it in", "do it in", "the record", "ever made", "ever did", "by mistake", "by accident", "next time", "the night before", "a video", "my videos", "views", "subscribers", "followers", "people argue", "at work", "all day", "my freezer", "our freezer", "i've had", "i drank", "i ate", "we ate", "per hundred grams", "of protein", "of carbs", "of fibre", "of fiber", "calories", "took me", "took us", "takes me", "takes us",
	// another recipe, another cook
	"the original", "traditionally", "version one", "first attempt", "second attempt", "first batch", "first try", "i tried", "we tried", "tried it", "tested", "testing", "trials", "in the trial",
	"the book says", "book says", "online", "the internet", "restaurant", "bakery", "factory", "canteen", "competition", "recipes", "old recipe", "every recipe", "the recipe for", "recipe says", "recipe said", "recipe called", "traditional",
	"the comments", "viewer", "viewers", "wrote to", "wrote in", "emailed", "asked for", "at school", "at college",
	// another size of batch, another way
	"double batch", "double the recipe", "if you double", "if you triple", "if you halve", "want to double", "for a crowd", "for a bigger", "for a party", "for a wedding", "wedding", "guests", "bigger batch", "half batch", "half the recipe",
	"instead", "rather than", "as opposed to", "compared", "hydration", "pressure cooker", "air fryer", "microwave", "slow cooker",
	// trade
	"i bought", "we bought", "bought a", "bought it", "bought them", "bought some", "you can buy", "costs", "cost", "paid", "pay", "price", "sells", "sell", "sold", "comes in", "come in", "per kilo", "per pound", "a kilo for", "a pound for", "supermarket", "the shop", "at the market", "packet says", "packet it says", "packet of", "label says", "weighs", "weigh about",
	"gone up to", "gone down to",
	// more than any dish
	"got through", "get through", "side batch", "to the gallon", "to the quart", "you either", "go through", "a day", "a week", "a month", "a year", "every day", "every week", "imagine", "equivalent", "would be too", "is too much", "too many", "too few", "too little", "too much", "too long", "is too", "was too",
)

// keeping are words of what comes after the cooking. A recipe that writes of it
// too makes it no other scene.
var keeping = phrasesOf("leftovers", "leftover", "reheat", "keeps for", "keeps in", "keeps well", "keeps about", "keeps up to", "it keeps", "keep for", "it'll keep", "they'll keep", "it lasts", "freeze it for", "freezes")

// kin and crowds are whose doing something can be, besides the host's.
var (
	kin    = speech.SetOf("grandmother grandma granny gran nan nana nonna mother mum mom mummy mama dad father papa grandfather grandad grandpa aunt auntie uncle cousin law sister brother son daughter kids husband wife partner neighbour neighbor friend mate boss teacher chef mother-in-law father-in-law landlady flatmate colleague lady man woman guy fella bloke boy girl dog cat hen nephew niece toddler baby buddy pal roommate fiancé fiancée missus butcher baker farmer")
	crowds = speech.SetOf("people folks somebody someone everybody everyone anybody anyone nobody others scientists chemists doctors cooks chefs bakers italians americans")
	many   = speech.SetOf("most some many other all lots few")
	verbs  = speech.SetOf("forgot forgets leave leaves left kept burned burnt dropped ruined swap swaps lasts waits use uses used using put puts add adds added do does did make makes made say says said have has had need needs want wants simmer simmers cook cooks cooked bake bakes baked boil boils boiled swear swears tell told gave give called call rub rubs likes like prefer went goes call calls take takes took lay laid eat eats ate")
)

// agents are verbs of which only people are the subject: what is cooked does not
// use or say anything, though it bakes.
var agents = speech.SetOf("use uses used put puts add adds added make makes made say says said tell told do does did call called swear gave eat eats ate sold")

// ours are subjects that make it the host's own doing, or the viewer's.
var ours = speech.SetOf("i we you i'm we're you're i've we've you've i'll we'll you'll let's you'd")

// denied are words right before a number that deny it.
var denied = phrasesOf("not", "not for", "don't use", "don't add", "don't put", "never", "never use", "never add", "isn't", "wasn't", "not at", "without", "no more than", "more than", "less than",
	"don't need", "don't have", "haven't got", "never more than", "don't go over", "don't go above", "never go above", "not even", "instead of the", "nearer", "more like", "up from", "down from")

// conditions begin what is only so in another case.
var conditions = phrasesOf("if you've got", "if you don't have", "if you haven't", "if you've no", "if you can't find", "double it", "halve it", "triple it", "if you're doubling", "if you're feeding", "if you're halving", "if you're tripling", "if you're making", "if you make", "if you only", "if you've only", "if you like", "if you want", "if you prefer", "if you use", "if you're using", "if you are", "if yours is", "if it's", "if the",
	"if it is", "if they're", "for every", "you could", "could use", "might use", "would", "would've", "it'd", "they'd", "she'd", "he'd", "wouldn't", "in summer", "in winter", "on a hot day", "on a cold day", "in an emergency", "unless")

func phrasesOf(list ...string) map[string][][]string {
	m := map[string][][]string{}
	for _, phrase := range list {
		words := strings.Fields(phrase)
		m[words[0]] = append(m[words[0]], words)
	}
	return m
}

const (
	sceneReach = 9 // words before a number in which a scene is set
	sceneAhead = 7 // and behind it
)

// turns are words by which talk comes to something else; subjects begin another
// clause, with or without a comma.
var (
	subjects = speech.SetOf("i we you i'm we're you're i've we've you've i'll we'll you'll let's you'd he she they it it's that's there's this once when until which")
)

// certain are those that leave no doubt, whatever the talk around them is like.
var certain = phrasesOf("per hundred grams", "of protein", "of carbs", "of fibre", "of fiber", "calories", "packet says", "packet it says", "label says", "her book", "his book", "own video", "they say", "air fry", "water boils")

// isPutOff tells whether the host speaks of what comes another time: "next week I'm
// doing a cobbler, and that one takes a cup of butter".
func (r *Reading) isPutOff(s speech.Said) bool {
	for k := s.From - 1; k > 0 && k >= s.From-announceReach; k-- {
		switch r.Text.At(k) {
		case "week", "time", "month", "video", "episode", "sunday", "monday", "tuesday", "wednesday", "thursday", "friday", "saturday":
			if r.Text.At(k-1) == "next" {
				return true
			}
		}
	}
	return false
}

// announceReach is how many words behind an announcement still belong to it.
const announceReach = 25

// isOnTheWay tells a time of a journey: "six hours on the bus".
func (r *Reading) isOnTheWay(s speech.Said) bool {
	if s.Kind != speech.Time {
		return false
	}
	for k := max(0, s.From-journeyReach); k < min(len(r.Text.Words), s.To+journeyReach); k++ {
		if journeys[r.Text.Words[k].Text] {
			return true
		}
	}
	return false
}

const journeyReach = 6 // words on either side of a time

var journeys = speech.SetOf("bus plane train ferry flight drive driving road motorway highway airport")

// certainReach is how many words before a number one of them may stand.
const certainReach = 14

// IsCertain tells whether one of them stands beside a number.
func (r *Reading) IsCertain(s speech.Said) bool {
	from, to := s.From, min(len(r.Text.Words), s.To+sceneAhead)
	for from > 0 && s.From-from < certainReach && r.Text.Words[from-1].Stop != speech.Sentence {
		from--
	}
	return r.anyPhrase(certain, from, to)
}

// isAside tells whether a number is about something other than this recipe as
// it is made now.
// What it is an amount of, from word food on, begins anew: "where my uncle used to
// stand, then beef stock, 700 mil".
func (r *Reading) isAside(s speech.Said, food int) bool {
	from, to := s.From, s.To
	for from > food && s.From-from < sceneReach && !r.Text.Parts(from-1) && !r.turns(from-1) {
		from--
	}
	for to < len(r.Text.Words) && to-s.To < sceneAhead && !r.Text.Parts(to-1) && !r.turns(to) && !subjects[r.Text.Words[to].Text] {
		to++
	}
	return r.anyPhrase(scenes, from, s.From) || r.anyPhrase(scenes, s.To, to) || r.isDated(from, s.From) || r.isKeeping(from, to) || r.isDenied(s) || r.isConditional(s, from) || r.isTheirs(s)
}

// isDated tells whether a year is named between two words: "in 1998 I burnt eight
// kilos".
func (r *Reading) isDated(from, to int) bool {
	for k := from; k+1 < to; k++ {
		switch r.Text.At(k) {
		case "in", "since", "of", "back":
			if r.Text.IsYear(k + 1) {
				return true
			}
		}
	}
	return false
}

// foodBefore is the first word of the food that number i is about, where that stands
// right before it, 0 if it does not.
func (r *Reading) foodBefore(i int) int {
	t := r.Ties[i]
	if t.Item < 0 || !t.before {
		return 0
	}
	for _, m := range r.mentionsAt(r.Said[i].From-foodReach, r.Said[i].From) {
		if names(m, t.Item) && m.To == r.Said[i].From && r.Text.At(m.From-1) != "of" {
			return m.From
		}
	}
	return 0
}

// foodReach is how many words before its amount a food begins anew.
const foodReach = 6

// goesOnAside tells whether number i only goes on with one about something else: "it
// took us an hour and ten, and twenty pounds of ice".
func (r *Reading) goesOnAside(i int) bool {
	return i > 0 && r.Ties[i-1].Aside && !r.Said[i-1].Struck && r.Said[i].From == r.Said[i-1].To+1 && r.Text.At(r.Said[i].From-1) == "and" && !r.isDenied(r.Said[i-1])
}

// turns tells whether the talk comes to something else at word k; the "and" of "a
// hundred and sixty" is no turn.
func (r *Reading) turns(k int) bool {
	w := r.Text.At(k)
	return written.Turns[w] && !(w == "and" && speech.IsNumber(r.Text.At(k-1)))
}

// isKeeping tells of keeping the dish, unless the recipe does too.
func (r *Reading) isKeeping(from, to int) bool {
	return r.anyPhrase(keeping, from, to) && !r.Book.Writes("keep") && !r.Book.Writes("freeze") && !r.Book.Writes("reheat")
}

// anyPhrase tells whether one of the phrases begins between two words.
func (r *Reading) anyPhrase(phrases map[string][][]string, from, to int) bool {
	for i := from; i < to; i++ {
		for _, phrase := range phrases[r.Text.Words[i].Text] {
			if startsAt(r.Text.Words, i, phrase) && !r.Book.Says(phrase) {
				return true
			}
		}
	}
	return false
}

// isDenied tells "not two hundred grams", "don't add 50 ml".
func (r *Reading) isDenied(s speech.Said) bool {
	words := r.Text.Words
	for back := 1; back <= 3 && s.From-back >= 0; back++ {
		for _, phrase := range denied[words[s.From-back].Text] {
			if len(phrase) == back && startsAt(words, s.From-back, phrase) {
				return true
			}
		}
	}
	return false
}

// isConditional tells what would be in another case: "if you like it thin, 50 ml
// more", "a two kilo bird would need longer".
func (r *Reading) isConditional(s speech.Said, from int) bool {
	if r.anyPhrase(conditions, from, s.From) && !r.isLikeness(from, s.From) && !(s.Kind == speech.Heat && r.isBesideDial(s)) && s.Oven == "" && s.Scale == "" && !r.Text.Near(s.From, s.To, 8, "fan", "gas", "convection") {
		return true
	}
	for k := s.To; k < len(r.Text.Words) && k < s.To+4 && !r.Text.Parts(k-1); k++ {
		switch w := r.Text.Words[k].Text; {
		case ours[w], written.Turns[w] && w != "and":
			return false
		case w == "would" || w == "wouldn't":
			return s.Kind != speech.Heat // "one eighty, which would be gas four"
		}
	}
	return false
}

// claims are verbs by which somebody else's word is given.
var claims = speech.SetOf("says said thinks reckons reckon swears insists tells claims")

// isLikeness tells whether the condition between two words is only "like a hamster
// would".
func (r *Reading) isLikeness(from, to int) bool {
	for k := from; k+3 < to; k++ {
		if w := r.Text.At(k); (w == "like" || w == "as" || w == "than") && (r.Text.At(k+3) == "would" || r.Text.At(k+2) == "would") {
			return true
		}
	}
	return false
}

// isTheirs tells whether somebody else's doing is told: the nearest subject
// before the number in its sentence is neither the host nor the viewer.
func (r *Reading) isTheirs(s speech.Said) bool {
	words := r.Text.Words
	for k := s.From - 1; k >= 0 && k >= s.From-10 && !r.Text.Parts(k); k-- {
		w := words[k].Text
		if kin[words[k].Stem] {
			w = words[k].Stem
		}
		switch {
		case ours[w] && claims[r.Text.At(k-1)] && !ours[r.Text.At(k-2)]:
			return true // "my flatmate says you need four litres"
		case ours[w]:
			return false
		case (w == "so" || w == "now") && (r.Text.At(k+1) == "that's" || r.Text.At(k+1) == "it's"):
			return false // "my mother did, so that's 75 grams"
		case (w == "she" || w == "he") && !isMachine(r.Text, k+1) && !(r.Text.Dialogue && strings.HasSuffix(r.Text.At(k+1), "s")):
			return true // of two hosts, he is the other one
		case (w == "she's" || w == "he's") && !r.isObject(s.From-1) && (r.Text.At(k+1) == "got" || r.Text.At(k+1) == "had" || r.Text.At(k+1) == "eaten" || r.isOfKin(k)):
			return true
		case w == "they" && (agents[r.Text.At(k+1)] || verbs[r.Text.At(k+1)] && (r.Text.At(k+2) == "it" || r.Text.At(k+2) == "them")):
			return true
		case w == "it" && should[r.Text.At(k+1)]:
			return false // "my niece gave me mine, and it should get to 82 degrees"
		case kin[w] && r.isOnlyLike(k):
			return false // "it's what my nan did"
		case (kin[w] || crowds[w]) && r.isObject(s.From-1):
			return false // "nobody can say it, two teaspoons of that"
		case kin[w] && r.Text.At(k+1) == "of" && verbs[r.Text.At(k+3)]:
			return true // "a mate of mine forgot his"
		case w == "people" && written.IsClass(r.Text.At(k+1)), (kin[w] || crowds[w]) && (verbs[r.Text.At(k+1)] || strings.HasSuffix(r.Text.At(k+1), "ed") || verbs[r.Text.At(k+2)] && r.Text.At(k+2) != "do"):
			return true
		case many[w] && k+2 < len(words) && (verbs[words[k+2].Text] && words[k+1].Text != "of"):
			return true
		}
	}
	return false
}

// isOnlyLike tells whether the one named at word k only stands for a way of doing it:
// "like my mother did", "what my nan did".
func (r *Reading) isOnlyLike(k int) bool {
	return ways[r.Text.At(k-1)] || ways[r.Text.At(k-2)]
}

// should are words behind "it" that say what is to be done.
var should = speech.SetOf("should wants needs must ought")

var ways = speech.SetOf("what how like as way")

// isOfKin tells whether somebody is named before word k in its sentence.
func (r *Reading) isOfKin(k int) bool {
	for n := k - 1; n >= 0 && n >= k-8 && !r.Text.Parts(n); n-- {
		if kin[r.Text.At(n)] {
			return true
		}
	}
	return false
}

// isObject tells whether word k is what somebody does something to, so that a number
// behind it begins another clause; "she gives it two hours" has two of them.
func (r *Reading) isObject(k int) bool {
	w := r.Text.At(k)
	return (w == "it" || w == "them" || w == "that") && !gives[r.Text.At(k-1)]
}

// isMachine tells "she goes in the oven": a dish can be he or she.
func isMachine(t speech.Text, i int) bool {
	switch t.At(i) {
	case "goes", "needs", "wants", "comes", "sits", "rests", "gets":
		return true
	}
	return false
}

// isOfThePast tells whether a verb of the past stands right before a number.
func (r *Reading) isOfThePast(s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-3 && !r.Text.Parts(k); k-- {
		if w := r.Text.At(k); w == "went" || w == "used" {
			return true
		}
	}
	return false
}

// told are words of somebody telling of something else than what to do now.
var told = speech.SetOf(`was were had once would been could did went took stayed stay lasted spent waited grew sat stood usually ago`)

// IsTold tells whether a time that does not agree belongs to a story: "it would
// stay hot for six hours". A verb of the kitchen shortly before it says
// otherwise: "then you bake it for six hours".
func (r *Reading) IsTold(s speech.Said) bool {
	words := r.Text.Words
	story, mine := false, false
	for k := s.From - 1; k >= 0 && k >= s.From-8 && !r.Text.Parts(k) && words[k].Text != "so"; k-- {
		w := words[k].Text
		if (written.IsClass(w) || w == "allow" || w == "give") && s.From-k <= 5 {
			return false
		}
		story = story || told[w]
		mine = mine || w == "i" && r.Text.At(k+1) != "tell" && r.Text.At(k+1) != "mean" && (k > s.From-5 || strings.HasSuffix(r.Text.At(k+1), "ed") || strings.HasSuffix(r.Text.At(k+2), "ed"))
	}
	return mine || story && r.elsewhere(s) > surelyOurs
}

// IsPast tells whether one of the words of a story stands right before a time, whatever the rest
// of the talk is like: "she stayed for forty minutes".
func (r *Reading) IsPast(s speech.Said) bool {
	for k := s.From - 1; k >= 0 && k >= s.From-4 && !r.Text.Parts(k); k-- {
		if w := r.Text.At(k); told[w] || strings.HasSuffix(w, "ed") && !written.IsClass(w) {
			return true
		}
	}
	return false
}

// elsewhere is how likely a number is about something else.
func (r *Reading) elsewhere(s speech.Said) float64 {
	i, found := slices.BinarySearchFunc(r.Said, s.From, func(x speech.Said, from int) int { return cmp.Compare(x.From, from) })
	if !found {
		return 1
	}
	return r.Elsewhere[i]
}

func startsAt(words []speech.Word, i int, phrase []string) bool {
	if i+len(phrase) > len(words) {
		return false
	}
	for k, w := range phrase {
		if words[i+k].Text != w {
			return false
		}
	}
	return true
}
