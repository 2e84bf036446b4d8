package safety

import (
	"regexp"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/recipe"
)

// Caution is one caution that goes with a recipe, for the creator's viewers.
type Caution struct {
	Text   string
	Source string // the document it rests on; "" for common practice
}

// Deferral is the last of every list of cautions.
const Deferral = "These are common cautions, not a guarantee: the advice of your local food authority goes first."

// Cautions lists the cautions that a recipe's words and foods call for, those
// about cooking first; none if nothing in it calls for one. It looks for known
// dangers and can miss one: the creator adds to it. The larder may be nil.
func Cautions(r recipe.Recipe, larder *food.Larder) []Caution {
	d := newDish(r, larder)
	var all []Caution
	for _, rule := range rules {
		if rule.calls(d) {
			all = append(all, rule.Caution)
		}
	}
	if len(all) > 0 {
		all = append(all, Caution{Text: Deferral})
	}
	return all
}

type rule struct {
	Caution
	calls func(dish) bool
}

// rules are in the order in which cautions are listed. Where a source says
// "from memory", no page was read for it.
var rules = []rule{
	{Caution{"Cook poultry until its thickest part reaches " + HomePoultry.Temperature() + ".", HomePoultry.Source}, hasPoultry},
	{Caution{"Cook minced meat and sausages until the middle reaches " + HomeMinced.Temperature() + "; minced poultry, " + HomePoultry.Temperature() + ".", HomeMinced.Source}, hasMince},
	{Caution{"Cook whole cuts of meat to at least " + HomeMeat.Temperature() + " in the middle, then rest them 3 minutes.", HomeMeat.Source}, hasQuickMeat},
	{Caution{"Cook fish until its thickest part reaches " + HomeFish.Temperature() + ".", HomeFish.Source}, hasCookedFish},
	// The Food Code, section 3-402.11, freezes fish against parasites (from memory).
	{Caution{"Raw and lightly cured fish can carry parasites and bacteria: use fish that was frozen for eating raw, keep it cold, and do not serve it to children, older people, or anyone pregnant or with weak immunity.", foodCode + "3-603.11"}, hasRawFish},
	{Caution{"Heat custard and other egg mixtures to " + Custard.Temperature() + ", stirring; a stirred one then coats the spoon.", Custard.Source}, hasCustard},
	{Caution{"Raw or lightly cooked egg can make people ill: use pasteurised egg, or do not serve it to children, older people, or anyone pregnant or with weak immunity.", foodCode + "3-401.11(D) and 3-603.11"}, hasRawEgg},
	{Caution{"Flour is a raw food: do not taste raw dough or batter.", "FDA and UK FSA advice on raw flour"}, hasRawFlour},
	// FDA, Bad Bug Book, phytohaemagglutinin (from memory).
	{Caution{"Soak dried kidney beans, throw the water away, and boil them hard in fresh water for at least 10 minutes: undercooked they are poisonous, and a slow cooker alone is not hot enough.", "FDA, Bad Bug Book"}, hasKidneyBeans},
	{Caution{"Cool cooked rice quickly, refrigerate it within 2 hours, and reheat it only once, to " + HomeLeftovers.Temperature() + ".", usdaHome}, hasRice},
	{Caution{"Cool cooked food in shallow dishes and refrigerate it within 2 hours, 1 hour where it is above 32 °C (90 °F); reheat leftovers to " + HomeLeftovers.Temperature() + ".", usdaCold}, isKeptCold},
	// USDA, Complete Guide to Home Canning (from memory).
	{Caution{"Keep it in the refrigerator: it is not shelf-stable. Store at room temperature only what was made by a tested home-canning process, with the vinegar and salt unchanged.", "USDA, Complete Guide to Home Canning"}, isPreserve},
	// Botulism; extension services' advice (from memory).
	{Caution{"Garlic or herbs under oil can grow botulism without a sign of it: keep the oil in the refrigerator and use it within 4 days, or freeze it.", "extension services' advice on infused oils"}, hasGarlicInOil},
	// Common practice, no source.
	{Caution{"Hot oil: fill the pan no more than a third, never leave it, keep children away, and smother a fire with a lid, never with water.", ""}, isDeepFried},
	{Caution{"Boiling sugar is far hotter than boiling water and sticks to skin: keep children away and a bowl of cold water at hand.", ""}, hasBoilingSugar},
	// Infant botulism; advice of health authorities in most countries (from memory).
	{Caution{"Honey is not for children under 12 months.", "advice of health authorities on infant botulism"}, hasHoney},
}

var (
	poultry     = regexp.MustCompile(`\b(chicken|turkey|duck|goose|poultry|quail|pheasant|guinea fowl|poussin|partridge)\b`)
	notMeat     = regexp.MustCompile(`\b(stock|broth|bouillon|seasoning|fat|gravy|soup|eggs?|salt|cubes?)\b`)
	mince       = regexp.MustCompile(`\b(mince|minced (meat|beef|lamb|pork|veal|chicken|turkey)|ground (meat|beef|lamb|pork|veal|chicken|turkey)|sausages?|sausagemeat|burgers?|meatballs?)\b`)
	cookedMince = regexp.MustCompile(`\b(cooked|dried|smoked|chorizo|salami|vegetarian|vegan|mincemeat)\b`)
	meat        = regexp.MustCompile(`\b(beef|lamb|pork|veal|mutton|venison|goat|steaks?|brisket|oxtail)\b`)
	slowCooking = regexp.MustCompile(`\b(simmer|boil|brais|stew|slow[- ]cook|pressure[- ]cook)`)
	fish        = regexp.MustCompile(`\b(fish|cod|haddock|hake|salmon|trout|tuna|mackerel|sardines?|herring|sole|plaice|halibut|monkfish|bass|bream|pollock|snapper|prawns?|shrimps?|scallops?|mussels?|clams?|oysters?|squid|octopus|crab|lobster)\b`)
	notFish     = regexp.MustCompile(`\b(sauce|stock|paste|sticks?|smoked|dried|cake|seasoning|flakes)\b`)
	egg         = regexp.MustCompile(`\b(eggs?|egg yolks?|egg whites?|yolks?)\b`)
	notEgg      = regexp.MustCompile(`\b(noodles?|pasta|chocolate|replacer|pasteurised|pasteurized|hard-boiled)\b`)
	custard     = regexp.MustCompile(`custard|pastry cream|crème pâtissière|creme patissiere|anglaise|\bcurd\b|ice cream|sabayon|zabaglione|crème brûlée|creme brulee|crème caramel|creme caramel|\bflan\b|\bquiche`)
	rawEgg      = regexp.MustCompile(`mayonnaise|\baioli\b|\baïoli\b|\bmousse\b|tiramis|meringue|royal icing|egg ?nog|hollandaise|béarnaise|bearnaise|carbonara|tartare|soft[- ]boiled|soft boil|runny|poached egg|poach the egg|\braw (egg|yolk|white)`)
	flour       = regexp.MustCompile(`\b(flour|semolina)\b`)
	notFlour    = regexp.MustCompile(`\b(tortillas?|toasted|heat-treated|cornflour)\b`)
	dough       = regexp.MustCompile(`\b(dough|batter|pastry|knead|crumble|cake mixture|biscuit|cookie)`)
	kidneyBeans = regexp.MustCompile(`\b(kidney|cannellini|borlotti) beans?\b`)
	rice        = regexp.MustCompile(`\b(rice|risotto|basmati|arborio)\b`)
	notRice     = regexp.MustCompile(`\brice (vinegar|noodles?|papers?|flour|wine|bran|milk|syrup|krisp)|\b(wild garlic)\b`)
	keptCold    = regexp.MustCompile(`\bchill\b|\bfridge\b|refrigerat|leftover|what is left|overnight`)
	pickleNames = regexp.MustCompile(`pickl|chutney|\brelish|preserve|kimchi|sauerkraut|\bjam\b|marmalade|piccalilli`)
	jarred      = regexp.MustCompile(`\bjars?\b`)
	acid        = regexp.MustCompile(`vinegar|\bbrine\b`)
	garlicHerbs = regexp.MustCompile(`\b(garlic|basil|rosemary|thyme|chill?i(es)?)\b`)
	infusedOil  = regexp.MustCompile(`confit|garlic oil|chill?i oil|herb oil|infus\w* (the )?\w* ?oil|oil[^.]{0,40}\binfus|cover(ed)? (it |them )?(with|in) (the )?(\w+ )?oil|under (the )?oil`)
	deepFrying  = regexp.MustCompile(`deep[- ]?fr(y|ied|ying)|fill [^.]{0,60}\boil\b|\boil to (1[5-9]\d|200)\b|oil [^.]{0,60}\b(1[5-9]\d|200) ?°c`)
	hotSugar    = regexp.MustCompile(`\bcaramel\b|toffee|brittle|honeycomb|praline|\bsugar\b.*\bboil|\bboil\b.*\bsugar\b`)
	thinsSugar  = regexp.MustCompile(`vinegar|milk|cream|stock|juice|brine|wine|fruit`)
	honey       = regexp.MustCompile(`\bhoney\b`)
	notHoney    = regexp.MustCompile(`\bhoney(comb|dew)\b`)
)

func hasPoultry(d dish) bool { return d.hasUntinned(poultry, notMeat) }

func hasMince(d dish) bool { return d.hasUntinned(mince, cookedMince) }

// hasQuickMeat leaves out what cooks for long: it passes the limit by far.
func hasQuickMeat(d dish) bool {
	return d.isHot() && !slowCooking.MatchString(d.method) && !hasMince(d) && d.hasUntinned(meat, notMeat)
}

func hasCookedFish(d dish) bool { return d.isHot() && d.hasUntinned(fish, notFish) }

func hasRawFish(d dish) bool { return !d.isHot() && d.hasUntinned(fish, notFish) }

// hasUntinned is has without what came cooked in a tin.
func (d dish) hasUntinned(want, not *regexp.Regexp) bool {
	fresh := d
	fresh.ingredients = nil
	for _, i := range d.ingredients {
		if !i.tinned {
			fresh.ingredients = append(fresh.ingredients, i)
		}
	}
	return fresh.has(want, not)
}

func hasCustard(d dish) bool {
	return d.has(egg, notEgg) && d.isHot() && custard.MatchString(d.names+"\n"+d.method)
}

func hasRawEgg(d dish) bool {
	return d.has(egg, notEgg) && (!d.isHot() || rawEgg.MatchString(d.names+"\n"+d.method))
}

func hasRawFlour(d dish) bool {
	return d.has(flour, notFlour) && dough.MatchString(d.names+"\n"+d.method)
}

func hasKidneyBeans(d dish) bool { return d.hasUntinned(kidneyBeans, nil) }

func hasRice(d dish) bool { return d.isHot() && d.has(rice, notRice) }

// isKeptCold asks for foods that spoil, cooked and then kept.
// isKeptCold is of what is chilled after cooking, and of meat in a slow pot,
// which stays warm for hours and is rarely eaten up.
func isKeptCold(d dish) bool {
	return !hasRice(d) && !isPreserve(d) && (d.afterHeat(keptCold) || isSlowPot(d))
}

func isSlowPot(d dish) bool {
	return d.isHot() && slowCooking.MatchString(d.method) && d.has(meat, notMeat)
}

func isPreserve(d dish) bool {
	return pickleNames.MatchString(d.names) || jarred.MatchString(d.method) && acid.MatchString(d.method)
}

func hasGarlicInOil(d dish) bool {
	return d.has(garlicHerbs, nil) && infusedOil.MatchString(d.names+"\n"+d.method)
}

func isDeepFried(d dish) bool {
	return d.fryer || deepFrying.MatchString(d.method+"\n"+d.names) || d.has(deepFrying, nil)
}

// hasBoilingSugar looks sentence by sentence: sugar boiled in a brine or a sauce
// is no hotter than that.
func hasBoilingSugar(d dish) bool {
	for sentence := range strings.FieldsFuncSeq(d.names+"\n"+d.method, func(r rune) bool { return r == '.' || r == '\n' }) {
		if hotSugar.MatchString(sentence) && !thinsSugar.MatchString(sentence) {
			return true
		}
	}
	return false
}

func hasHoney(d dish) bool { return d.has(honey, notHoney) }
