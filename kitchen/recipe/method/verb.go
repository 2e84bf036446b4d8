package method

import (
	"strings"

	"benchproof/kitchen/recipe/lexicon"
)

// verb is what an instruction's verb tells about place and hands.
type verb struct {
	station string
	handsOn bool
	noun    bool // also the name of a food or thing: "butter the tin", "butter"
}

// The stations, as recipe.Stations names them.
const (
	bench   = "bench"
	mixer   = "mixer"
	hob     = "hob"
	oven    = "oven"
	fridge  = "fridge"
	freezer = "freezer"
	fryer   = "fryer"
	grill   = "grill"
	waits   = "waits"
)

// verbs are the kitchen's instructions in their plain form. Which of them need
// hands is common practice; a text that says "stirring" overrides it.
var verbs = gather(
	group{verb{station: bench, handsOn: true}, `add adjust arrange assemble assess baste beat blend blitz brush check chop combine cover crack crimp
		crumble deseed debone decorate degas discard dissolve dip divide drain dredge dunk empty finish
		flatten flip form get give gather grate grease grind halve hull knead knock ladle
		layer lay lift line loosen make massage measure moisten mound open paint pick pipe place plait pleat
		pop portion pour prepare prick pulse punch pull purée puree push put release remove repeat reserve
		return rinse rub sandwich scatter scoop scrape scrunch score sculpt separate serve shake shape
		share shred sieve sift skewer skim slash slide slit smash smear snip spatchcock spoon spread
		sprinkle squash squeeze stack stamp start stir strain stretch strip stud sweeten swirl take taste
		taper tear tease tent tie tilt tip toss transfer trim tuck turn twist unfold unmould unmold unroll
		unwrap use wash weigh wet wipe wrap work begin continue ease encase enclose fasten invert lather
		mask nestle process rotate unwind wring`},
	group{verb{station: bench, handsOn: true, noun: true}, `butter cream dust dot dress flour glaze ice juice oil season spice sugar salt top whisk zest pepper
		crust bread stone skin scale sauce pinch mince slice dice cube split shell press crush fold roll
		peel drizzle smooth level mash thin whip cut core coat garnish mix fill pack stuff batter split
		quarter pat`},
	group{verb{station: hob, handsOn: true}, `bring caramelise caramelize char-grill cook deglaze flambé heat parboil par-boil reheat sauté saute
		scald scramble sear sizzle stir-fry sweat temper thicken dry-fry pan-fry shallow-fry wilt blister`},
	group{verb{station: hob, handsOn: true, noun: true}, `soften toast melt warm fry boil brown`},
	group{verb{station: hob}, `simmer poach blanch braise bubble reduce confit`},
	group{verb{station: hob, noun: true}, `stew steam`},
	group{verb{station: oven}, `bake preheat blind-bake par-bake rebake slow-roast`},
	group{verb{station: oven, noun: true}, `roast`},
	group{verb{station: fridge}, `chill refrigerate`},
	group{verb{station: freezer}, `freeze`},
	group{verb{station: fryer, handsOn: true}, `deep-fry`},
	group{verb{station: grill, handsOn: true}, `broil barbecue char griddle`},
	group{verb{station: grill, handsOn: true, noun: true}, `grill`},
	group{verb{station: waits}, `allow autolyse brine cure defrost ferment hang infuse leave let macerate marinate marinade prove
		proof sit steep thaw retard mature relax bloom hydrate`},
	group{verb{station: waits, noun: true}, `cool dry double set rest rise pickle stand soak`},
)

type group struct {
	verb
	words string
}

func gather(groups ...group) map[string]verb {
	all := make(map[string]verb, 300)
	for _, g := range groups {
		for _, w := range strings.Fields(g.words) {
			all[w] = g.verb
		}
	}
	return all
}

// lookup finds a verb in its plain form or as "-ing", "-ed", "-s". Plain tells
// that the word stood as an instruction is given.
func lookup(word string) (v verb, plain, ok bool) {
	if v, ok = verbs[word]; ok {
		return v, true, true
	}
	for _, end := range []string{"ing", "ed", "s"} {
		stem, cut := strings.CutSuffix(word, end)
		if !cut || len(stem) < 3 {
			continue
		}
		if v, ok = verbs[stem]; ok {
			return v, false, true
		}
		if v, ok = verbs[stem+"e"]; ok {
			return v, false, true
		}
		if n := len(stem); stem[n-1] == stem[n-2] {
			if v, ok = verbs[stem[:n-1]]; ok {
				return v, false, true
			}
		}
	}
	return verb{}, false, false
}

// openers begin an instruction without being its verb: "Meanwhile, whisk …".
var openers = lexicon.Of(`in into on onto over under using with without meanwhile once when while after before as if next
	then now first second third finally lastly to for from gently carefully slowly gradually immediately quickly
	lightly repeat during at until by it the your this these those don't do never always again have working
	and thoroughly generously evenly meantime be`)

// determiners after a word tell that it was a verb: "butter the tin".
var determiners = lexicon.Of(`the a an your both each all every it them one half two three four some any together in into
	until up well with lightly generously remaining everything over on to out this these`)

// Begins tells whether the text starts as an instruction does: with a kitchen
// verb ("Fold in the …"), or with an opener and a verb later ("In a bowl, whisk
// …"). A word that is also a food ("butter", "cream") counts only where it is
// used as a verb: before a determiner, or first in a sentence with a full stop.
func Begins(text string) bool {
	fields := strings.Fields(lexicon.Lower(text))
	if len(fields) == 0 {
		return false
	}
	sentence := len(fields) >= 4 && (strings.HasSuffix(text, ".") || ordersOn(fields))
	if len(fields) > 40 {
		fields = fields[:40]
	}
	for i := range fields {
		fields[i] = strings.Trim(fields[i], ".,;:!?()\"“”'’*")
	}
	first := fields[0]
	if strings.HasSuffix(first, "ly") && len(fields) > 1 {
		first, fields = fields[1], fields[1:]
	}
	if first == "oven" && len(fields) > 1 && (fields[1] == "to" || fields[1] == "at" || fields[1] == "on") {
		return true
	}
	if v, plain, ok := lookup(first); ok && plain && (!v.noun || sentence || len(fields) > 1 && determiners[fields[1]]) {
		return true
	}
	return openers[first] && len(fields) >= 4 && hasVerb(fields[1:])
}

// IsVerb tells whether a word is a kitchen verb in its plain form.
func IsVerb(word string) bool {
	_, plain, ok := lookup(lexicon.Lower(strings.Trim(word, ".,;:")))
	return ok && plain
}

// ordersOn tells that a later clause orders something too: "boil lentils w
// water, simmer 20 mins".
func ordersOn(fields []string) bool {
	for i := 1; i < len(fields); i++ {
		if before := fields[i-1]; !strings.HasSuffix(before, ",") && before != "then" {
			continue
		}
		if v, plain, ok := lookup(strings.Trim(fields[i], ".,;:")); ok && plain && !v.noun {
			return true
		}
	}
	return false
}

func hasVerb(fields []string) bool {
	for i, f := range fields {
		if v, plain, ok := lookup(f); ok && plain && (!v.noun || i+1 < len(fields) && determiners[fields[i+1]]) {
			return true
		}
	}
	return false
}
