package naming

import "strings"

// wordClass sorts the words that stand beside a food's name.
type wordClass int

const (
	unknownWord wordClass = iota
	freeWord              // says how, not what: "fresh", "finely", "cold"
	partWord              // the piece it comes in: "leaf", "sprig", "floret"
	stateWord             // makes another food of it: "dried", "smoked"
	formWord              // names a form that has its own weight: "chopped"
	sizeWord              // names a size: "large"
	foodWord              // only ever part of a food's name: "milk", "peanut"
)

// modifiers is the vocabulary of words beside a name, by stem. A word in two
// lists belongs to the later one.
var modifiers = buildModifiers([]modifierList{
	{freeWord, `a an the and of in with some few more good quality best your favourite favorite any about approx
		fresh freshly finely coarsely roughly thinly thickly lightly loosely firmly tightly well very extra
		just ripe overripe firm soft young new old organic natural plain regular ordinary standard common
		cold chilled cool warm lukewarm hot boiling boiled hard tepid iced room temperature softened frozen thawed defrosted
		raw uncooked ready rinsed washed dry clean trimmed peeled unpeeled seeded deseeded stoned stemmed
		cored hulled shelled shucked scrubbed topped tailed torn picked stripped bruised
		toasted roasted blanched skinless boneless bone skin skinned on off free range cage caged pasture raised
		beaten separated unbeaten strained heaped heaping level rounded scant generous
		white red green yellow brown black purple orange pink golden dark pale blond blonde light
		strong mild mature full low reduced fat lean grass fed wild farmed line caught
		unsalted salted unsweetened sweetened flavored seedless pitted stoneless unwaxed waxed unbleached bleached
		thick thin long short round flat curly wide narrow baby tiny big heavy
		cut optional needed taste serve serving garnish dusting greasing
		home made homemade shop bought store premade prepared readymade
		italian french spanish greek turkish indian thai chinese japanese korean mexican american english british irish
		scottish danish german swiss dutch portuguese moroccan asian european persian australian canadian
		sustainable smooth fine coarse superior heritage heirloom stoneground unrefined refined pure
		leftover day stale seasonal mixed assorted spare additional`},
	{partWord, `leaf sprig clove stalk stick rib head bulb floret strand thread wedge piece chunk cube slice strip
		fillet bunch handful heart spear pod knob pat block bar loaf frond tip top half quarter matchstick ring
		round segment section disc dash packet sachet envelope tin can jar bottle bag box tub tube ball
		rasher cutlet medallion portion`},
	{stateWord, `dried dehydrated smoked pickled candied crystallised glace tinned canned fermented cured condensed evaporated
		clarified fried instant pasteurised concentrated preserved corned imitation vegan vegetarian
		gluten dairy substitute caramelised marinated stuffed breaded coated diet`},
	{formWord, `chopped diced cubed sliced grated shredded crushed mashed pureed sifted unsifted packed unpacked melted
		whipped ground flaked halved quartered whole minced julienned crumbled slivered drained puffed
		powdered cooked stirred unpopped popped bronze silver gold platinum`},
	{sizeWord, `small medium large jumbo mini peewee`},
})

type modifierList struct {
	class wordClass
	words string
}

func buildModifiers(lists []modifierList) map[string]wordClass {
	all := map[string]wordClass{}
	for _, list := range lists {
		for _, w := range strings.Fields(list.words) {
			all[stem(w)] = list.class
		}
	}
	return all
}

// formNames gives the form a word stands for where they differ.
var formNames = map[string]string{"halved": "halves", "cubed": "diced", "powdered": "ground", "julienned": "sliced", "mince": "minced"}

// formOf gives the weight form of a form or size word, by its folded word.
func formOf(t token) string {
	if name, ok := formNames[t.plain]; ok {
		return name
	}
	return t.plain
}
