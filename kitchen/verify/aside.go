package verify

import (
	"slices"
	"strings"

	"benchproof/kitchen/verify/speech"
)

// asides are what people say when a number is about another time, another
// recipe or a shop. Common practice, no source.
var asides = phrasesOf(
	"last time", "first time i", "first time we", "the original", "used to", "instead of", "rather than", "as opposed to",
	"most recipes", "some recipes", "other recipes", "many recipes", "a lot of recipes", "lots of recipes", "old recipe", "every recipe", "the recipe for",
	"some people", "most people", "people say", "some cooks", "the book says", "book says", "online", "the internet",
	"my grandmother", "my grandma", "my mother", "my nan", "my gran", "my aunt", "my auntie", "my uncle", "my grandfather", "my father",
	"my mum", "my mom", "my dad", "my neighbour", "my neighbor", "my sister", "my brother", "a friend", "my friend",
	"i bought", "we bought", "bought a", "costs", "cost me", "paid", "sells", "sell", "sold", "comes in", "come in", "per kilo", "a kilo for",
	"if you're making", "if you make", "if you only have", "if you've only got", "if you double", "if you want to double", "double batch",
	"double the recipe", "if you triple", "for a crowd", "for a bigger", "for a party", "wedding", "guests", "canteen",
	"i tried", "we tried", "tried it with", "tried it at", "tested", "testing", "version one", "my first", "first attempt", "second attempt",
	"in the trial", "trials", "traditionally", "years ago", "back then", "in those days", "restaurant", "bakery i worked", "factory",
	"supermarket", "the shop", "viewer", "viewers", "comments", "somebody asked", "someone asked", "wrote to", "wrote in", "emailed",
	"last week", "last year", "yesterday", "last month", "last summer", "last winter", "remember when", "imagine", "on the packet",
	"the packet says", "packet it says", "the label says", "weighs", "weigh about", "equivalent", "they say", "would have been", "would be too",
	"is too much", "competition", "when i was", "at school", "tomorrow", "next day", "leftovers", "reheat", "got through", "get through", "go through",
	"a day", "a week", "a month", "a year", "every day", "every week",
	"she used", "he used", "they used", "she uses", "he uses", "they use", "she had", "he had", "they had", "she put", "he put", "they put",
)

// journeys are what makes a time, a heat or a length one of daily life.
var journeys = phrasesOf(
	"ago", "took me", "it took", "takes me", "takes us", "walk", "walked", "drive", "drove", "driving", "queue", "queued", "train", "the bus", "bus ride", "ferry",
	"flight", "this video", "the video", "this episode", "the edit", "editing", "filming", "slept", "phone call", "radio",
	"i was born", "old oven", "their oven", "outside", "weather", "forecast", "in the shade", "birthday", "marathon", "swim", "football",
	"subscribers", "in my flat", "on holiday", "on the radio", "hotel", "army", "squats", "solar", "the sea", "fever", "it rained", "raining", "snow",
)

// denied are words right before a number that deny it.
var denied = phrasesOf("not", "not for", "don't use", "don't add", "don't put", "never", "never use", "never add", "isn't", "wasn't", "not at", "without")

func phrasesOf(list ...string) map[string][][]string {
	m := map[string][][]string{}
	for _, phrase := range list {
		words := strings.Fields(phrase)
		m[words[0]] = append(m[words[0]], words)
	}
	return m
}

// isAside tells whether a number is about something other than this recipe as
// it is made now.
func (j *judge) isAside(s speech.Said, food bool) bool {
	words := j.text.Words
	from, to := s.From, s.To
	for from > 0 && s.From-from < 9 && !j.text.Parts(from-1) {
		from--
	}
	ahead := 7
	for to < len(words) && to-s.To < ahead && !j.text.Parts(to-1) {
		to++
	}
	for i := from; i < to; i++ {
		if i >= s.From && i < s.To {
			continue
		}
		lists := [][][]string{asides[words[i].Text]}
		if !food {
			lists = append(lists, journeys[words[i].Text])
		}
		for _, phrase := range slices.Concat(lists...) {
			if startsAt(words, i, phrase) {
				return true
			}
		}
	}
	for back := 1; back <= 3 && s.From-back >= 0; back++ {
		for _, phrase := range denied[words[s.From-back].Text] {
			if len(phrase) == back && startsAt(words, s.From-back, phrase) {
				return true
			}
		}
	}
	return false
}

// told are words of somebody telling of something else than what to do now.
var told = setOf(`was were had once would been could did went took stayed stay lasted spent waited grew sat stood usually ago`)

// isTold tells whether a time that does not agree belongs to a story: "it would
// stay hot for six hours". A verb of the kitchen shortly before it says
// otherwise: "then you bake it for six hours".
func (j *judge) isTold(s speech.Said) bool {
	words := j.text.Words
	story := false
	for k := s.From - 1; k >= 0 && k >= s.From-8 && !j.text.Parts(k); k-- {
		w := words[k].Text
		if classes[w] != "" && s.From-k <= 5 {
			return false
		}
		story = story || told[w] || w == "i" && k > s.From-5
	}
	return story
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
