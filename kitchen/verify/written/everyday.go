package written

import (
	"slices"

	"benchproof/kitchen/verify/speech"
)

// everyday are words of speech for foods that recipes write otherwise, with the
// words of a line that they can mean, as stems: pet names, and the kind for the
// thing. Common practice, no source.
var everyday = map[string][]string{
	"spud": {"potato"}, "tatty": {"potato"}, "tater": {"potato"}, "tatie": {"potato"}, "toms": {"tomato"}, "tom": {"tomato"},
	"neep": {"swede"}, "rutabaga": {"swede"}, "mushy": {"mushroom"}, "shroom": {"mushroom"}, "avo": {"avocado"}, "cuke": {"cucumber"},
	"choc": {"chocolate"}, "marg": {"margarine"}, "banger": {"sausage"}, "snag": {"sausage"}, "chook": {"chicken"},
	"bicarb": {"soda"}, "yog": {"yoghurt", "yogurt"}, "crumb": {"breadcrumb"}, "breadcrumb": {"crumb"},
	"mash":  {"mashed"},
	"broth": {"stock"}, "stock": {"broth"}, "brolly": {"broccoli"}, "veg": {"vegetable"}, "pud": {"pudding"},
	"bird":   {"chicken", "turkey", "duck", "goose", "guineafowl", "poussin", "pheasant"},
	"berry":  {"strawberry", "raspberry", "blueberry", "blackberry", "cranberry", "gooseberry", "blackcurrant", "redcurrant"},
	"nut":    {"walnut", "pecan", "hazelnut", "almond", "cashew", "pistachio", "peanut", "macadamia"},
	"meat":   {"beef", "lamb", "pork", "veal", "mutton", "goat", "venison", "mince", "brisket", "chuck", "shin", "steak"},
	"fish":   {"cod", "haddock", "pollock", "pollack", "salmon", "hake", "trout", "mackerel", "monkfish", "snapper", "halibut", "tuna", "coley", "whiting"},
	"cheese": {"cheddar", "parmesan", "gruyère", "gruyere", "feta", "mozzarella", "gouda", "halloumi", "pecorino", "stilton", "emmental", "paneer", "ricotta", "mascarpone"},
	"pasta":  {"spaghetti", "tagliatelle", "penne", "macaroni", "linguine", "lasagne", "rigatoni", "orzo", "fusilli", "fettuccine", "pappardelle", "conchiglie"},
	"booze":  {"rum", "brandy", "whisky", "whiskey", "bourbon", "sherry", "vodka", "gin", "kirsch", "wine"},
	"herb":   {"parsley", "thyme", "basil", "coriander", "cilantro", "dill", "mint", "rosemary", "sage", "chive", "tarragon", "oregano"},
	"bean":   {"cannellini", "borlotti", "haricot", "butterbean", "chickpea"},
	"fat":    {"lard", "dripping", "suet", "ghee", "shortening"},
}

// addEveryday adds the everyday words for an item, where no line's food is called so.
func (n *Names) addEveryday(own []string, item int) {
	for spoken, of := range everyday {
		if isOf(own, of) && !n.isOwn(spoken) {
			n.byHead[spoken] = append(n.byHead[spoken], phrase{words: []string{spoken}, item: item})
		}
	}
}

// isOf tells whether a food, as stems, is one of several: chicken thighs are a bird,
// chicken stock is none.
func isOf(own, of []string) bool {
	last := len(own) - 1
	if last < 0 {
		return false
	}
	return slices.Contains(of, own[last]) || last > 0 && cutsOf[own[last]] && slices.Contains(of, own[last-1])
}

// cutsOf are nouns behind a food that leave it what it is.
var cutsOf = speech.SetOf("thigh breast leg wing drumstick fillet loin shoulder belly chop mince steak neck shin rib soda potato")

// isOwn tells whether a line's food ends in a noun as the recipe calls it.
func (n *Names) isOwn(noun string) bool {
	return slices.ContainsFunc(n.byHead[noun], func(p phrase) bool { return p.own })
}
