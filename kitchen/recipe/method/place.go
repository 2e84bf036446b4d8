package method

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// token is one word of an instruction.
type token struct {
	word  string // lower case, without punctuation
	at    int    // byte in the text
	opens bool   // a clause begins here
}

type tokens struct {
	list  []token
	lower string
}

func tokenise(text string) tokens {
	t := tokens{lower: lexicon.Lower(text)}
	opens := true
	for i := 0; i < len(t.lower); {
		end := strings.IndexByte(t.lower[i:], ' ')
		if end < 0 {
			end = len(t.lower) - i
		}
		raw := t.lower[i : i+end]
		if word := strings.Trim(raw, ".,;:!?()[]\"“”‘*–—"); word != "" {
			t.list = append(t.list, token{word: word, at: i, opens: opens || strings.HasPrefix(raw, "(")})
			opens = strings.ContainsAny(raw[len(raw)-1:], ".,;:!?)")
		}
		i += end + 1
	}
	return t
}

// found is a verb in an instruction, with where it stands.
type found struct {
	verb
	word string
	at   int // index into the tokens
}

// verbAt tells whether the word at i is used as a verb that orders something.
func (t tokens) verbAt(i int) (found, bool) {
	word := t.list[i].word
	v, plain, ok := lookup(word)
	if !ok {
		return found{}, false
	}
	prev, next := "", ""
	if i > 0 {
		prev = t.list[i-1].word
	}
	if i+1 < len(t.list) {
		next = t.list[i+1].word
	}
	f := found{verb: v, word: word, at: i}
	if (word == "set" || word == "put" || word == "leave") && next == "aside" {
		f.verb = verb{station: waits}
		return f, true
	}
	if !plain {
		switch prev {
		case "keep", "continue", "start", "finish", "on", "begin", "stop":
			return f, strings.HasSuffix(word, "ing")
		}
		return f, false
	}
	switch {
	case i == 0:
		return f, true
	case t.list[i].opens, leads[prev], strings.HasSuffix(prev, "ly"):
		return f, !v.noun || determiners[next] || next == "" || leads[prev] || t.sentenceStart(i) || goesOn[next] || isFigure(next)
	case prev == "and" || prev == "&" || prev == "or":
		return f, !v.noun || determiners[next] || next == "" || goesOn[next] || isFigure(next)
	case v.station != bench && (compounds[prev] || t.letBefore(i)):
		return f, true
	}
	return f, false
}

// sentenceStart tells whether the word at i is the first of a sentence.
func (t tokens) sentenceStart(i int) bool {
	before := strings.TrimRight(t.lower[:t.list[i].at], " ")
	return before == "" || strings.ContainsAny(before[len(before)-1:], ".!?")
}

func isFigure(word string) bool { return word != "" && word[0] >= '0' && word[0] <= '9' }

// letBefore tells "let them cook", "leave the dough to rest", "let it simmer".
func (t tokens) letBefore(i int) bool {
	for k := i - 1; k >= max(0, i-4); k-- {
		if t.list[k].word == "let" || t.list[k].word == "leave" || t.list[k].word == "allow" {
			return true
		}
		if t.list[k].opens || t.list[k].word == "in" || t.list[k].word == "at" {
			return false
		}
	}
	return false
}

// goesOn are words after a verb that could be a food: "and rest for an hour".
var goesOn = lexicon.Of(`for in at overnight completely uncovered covered again gently briefly slightly until by over well on with`)

// leads are words before a verb that say it is one.
var leads = lexicon.Of(`then to now next again let please just also not you don't finally meanwhile meantime first`)

// compounds are first parts of verbs in two words: "bulk ferment", "deep fry".
var compounds = lexicon.Of(`bulk blind deep shallow slow pan dry second final cold`)

// place finds the verb that matters and tells where it happens and whether it
// needs hands. at is the byte to look back from, −1 for the first verb.
func (t tokens) place(at int, r Reading) (station string, handsOn bool) {
	f, ok := t.verbBefore(at)
	sentence := t.sentence(f, at)
	if !ok {
		if s := placeNamed(sentence); s != "" {
			return s, s == hob || s == mixer
		}
		if hasOvenHeat(r.Heats) {
			return oven, false
		}
		if r.HasMinutes && r.Minutes.To.Cmp(measure.Whole(30)) >= 0 {
			return waits, false
		}
		return bench, true
	}
	station = stationOf(f, sentence, hasOvenHeat(r.Heats))
	if station == bench && r.HasMinutes && r.Minutes.From.Cmp(measure.Whole(45)) >= 0 && !stirred(sentence) {
		station = waits // nobody chops for an hour
	}
	return station, handsNeeded(f, station, sentence, r)
}

// hasOvenHeat tells a heat that only an oven has.
func hasOvenHeat(heats []measure.Heat) bool {
	for _, h := range heats {
		if h.Scale == "gas" || h.Oven != "" || h.Scale != "F" && h.Degrees.To.Cmp(measure.Whole(120)) >= 0 || h.Degrees.To.Cmp(measure.Whole(250)) >= 0 {
			return true
		}
	}
	return false
}

// verbBefore finds the last verb before byte at in the same sentence, or in the
// text before, or the first verb of all.
func (t tokens) verbBefore(at int) (found, bool) {
	var first, last found
	have, before := false, false
	for i := range t.list {
		f, ok := t.verbAt(i)
		if !ok {
			continue
		}
		if !have {
			first, have = f, true
		}
		if at >= 0 && t.list[i].at < at && !weak[f.word] {
			last, before = f, true
		}
	}
	if before {
		return last, true
	}
	return first, have
}

// weak verbs only introduce what is done.
var weak = lexicon.Of(`use take start begin continue keep repeat make check`)

// sentence gives the sentence round the verb, or round byte at.
func (t tokens) sentence(f found, at int) string {
	if f.word != "" {
		at = t.list[f.at].at
	}
	if at < 0 || at > len(t.lower) {
		at = 0
	}
	from := 0
	for _, end := range []string{". ", "! ", "? "} {
		if i := strings.LastIndex(t.lower[:at], end); i >= 0 {
			from = max(from, i+len(end))
		}
	}
	to := len(t.lower)
	for _, end := range []string{". ", "! ", "? "} {
		if i := strings.Index(t.lower[at:], end); i >= 0 {
			to = min(to, at+i)
		}
	}
	return t.lower[from:to]
}

// stationOf takes the verb's usual station, unless the sentence names another.
func stationOf(f found, sentence string, heated bool) string {
	named := placeNamed(sentence)
	switch f.station {
	case waits, fridge, freezer:
		if named == fridge || named == freezer || named == oven && strings.Contains(sentence, "in the oven") {
			return named
		}
	case hob:
		switch {
		case strings.Contains(sentence, "oven") && (f.word == "heat" || f.word == "warm" || f.word == "bring" || heated || strings.Contains(sentence, "the oven")),
			f.word == "cook" && heated && !strings.Contains(sentence, "pan") && !beforeNumber(sentence, " to "),
			f.word == "toast" && heated && beforeNumber(sentence, " at "):
			return oven
		case f.word == "fry" && (strings.Contains(sentence, "deep") || strings.Contains(sentence, "fryer") || heated):
			return fryer
		case named == grill:
			return named
		}
	case bench:
		switch {
		case named == oven && (strings.Contains(sentence, "in the oven") || strings.Contains(sentence, "to the oven") || strings.Contains(sentence, "into the oven")),
			named == mixer, named == hob, named == grill,
			(named == fridge || named == freezer) && moves[f.word]:
			return named
		}
	}
	return f.station
}

// beforeNumber tells whether a word stands right before figures: "cook the honey to 121 °C",
// which no oven does, and "toast the almonds at 160 °C".
func beforeNumber(sentence, word string) bool {
	for {
		_, behind, ok := strings.Cut(sentence, word)
		if !ok {
			return false
		}
		if behind != "" && behind[0] >= '0' && behind[0] <= '9' {
			return true
		}
		sentence = behind
	}
}

// moves put food somewhere: where it then is matters.
var moves = lexicon.Of(`put place return transfer move slide cover wrap keep pop lay drain strain stack`)

// placeNamed tells which station a sentence names, "" if none.
func placeNamed(sentence string) string {
	for _, p := range places {
		if strings.Contains(sentence, p.words) {
			return p.station
		}
	}
	return ""
}

var places = []struct{ words, station string }{
	{"fridge", fridge}, {"refrigerator", fridge}, {"freezer", freezer},
	{"under the grill", grill}, {"under a hot grill", grill}, {"under the broiler", grill}, {"barbecue", grill}, {"griddle", grill},
	{"dough hook", mixer}, {"mixer", mixer}, {"paddle attachment", mixer}, {"electric whisk", mixer}, {"electric beater", mixer},
	{"in the oven", oven}, {"to the oven", oven}, {"into the oven", oven}, {"oven to ", oven}, {"preheat", oven}, {"oven on", oven},
	{"over a low heat", hob}, {"over low heat", hob}, {"over a medium", hob}, {"over medium", hob}, {"over a high heat", hob},
	{"over high heat", hob}, {"over a gentle heat", hob}, {"over the heat", hob}, {"on the hob", hob}, {"on the stove", hob},
	{"over simmering water", hob}, {"bain-marie", hob}, {"in a pan over", hob}, {"in the pan", hob}, {"in the saucepan", hob},
	{"dry pan", hob}, {"hot pan", hob}, {"to the pan", hob}, {"frying pan", hob}, {"skillet", hob},
	{"on low heat", hob}, {"on a low heat", hob}, {"on medium heat", hob}, {"on a medium heat", hob}, {"on high heat", hob}, {"on a high heat", hob},
	// what is kneaded or mixed "on medium-low" is in a machine
	{"on low", mixer}, {"on medium", mixer}, {"on high", mixer}, {"low speed", mixer}, {"medium speed", mixer}, {"high speed", mixer},
}

// handsNeeded tells whether somebody must stand by.
func handsNeeded(f found, station, sentence string, r Reading) bool {
	if station == oven || station == fridge || station == freezer || station == waits {
		return false
	}
	long := r.HasMinutes && r.Minutes.From.Cmp(measure.Whole(15)) >= 0
	if (f.word == "drain" || f.word == "strain" || f.word == "salt" || f.word == "cover" || f.word == "wrap") && long {
		return false
	}
	if stirred(sentence) {
		return true
	}
	if station == hob && long && (f.station == hob || f.station == bench) {
		return false
	}
	if f.word == "cook" && (strings.Contains(sentence, "cover") || strings.Contains(sentence, "lid")) {
		return false
	}
	return f.handsOn
}

// stirred tells that the sentence asks for hands all the time: "stirring
// constantly", but not "stirring now and then".
func stirred(sentence string) bool {
	for _, word := range []string{"stirring", "whisking", "basting", "shaking", "swirling", "tossing", "turning", "skimming", "mashing", "scraping"} {
		at := strings.Index(sentence, word)
		if at < 0 {
			continue
		}
		after := sentence[at+len(word):]
		for _, seldom := range []string{"occasionally", "now and then", "now and again", "from time to time", "once", "twice", "halfway",
			"half-way", "half way", "every", "a few times", "sometimes", "if "} {
			if i := strings.Index(after, seldom); i >= 0 && i < 30 {
				return false
			}
		}
		return true
	}
	return false
}
