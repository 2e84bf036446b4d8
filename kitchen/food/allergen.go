package food

import (
	"slices"
	"strings"
)

// allergen is one code of the larder and what each law calls it. An empty
// name means that the law does not list it.
type allergen struct {
	code   string
	eu     string // the entry of the list
	euKind string // the kind to name with it, "" if the entry says all
	us     string
	usKind string
	anz    string // in the list of ingredients
	anzSum string // in the "Contains" summary, where it differs
}

// The laws' own entries, in the law's order.
//
// EU and UK: Regulation (EU) No 1169/2011, Annex II, 14 entries. US: FALCPA
// 2004 and FASTER Act 2021, 9 entries. Australia and New Zealand: Standard
// 1.2.3 and Schedule 9, required from 25 February 2024.
var (
	euOrder = []string{"cereals containing gluten", "crustaceans", "eggs", "fish", "peanuts", "soybeans", "milk", "nuts",
		"celery", "mustard", "sesame", "sulphur dioxide and sulphites", "lupin", "molluscs"}
	usOrder = []string{"milk", "eggs", "fish", "crustacean shellfish", "tree nuts", "peanuts", "wheat", "soybeans", "sesame"}
	anzSum  = []string{"wheat", "gluten", "almond", "Brazil nut", "cashew", "hazelnut", "macadamia", "pecan", "pine nut",
		"pistachio", "walnut", "crustacean", "egg", "fish", "lupin", "milk", "mollusc", "peanut", "sesame", "soy", "sulphites"}
	anzIngredients = append([]string{"wheat", "barley", "oats", "rye", "gluten"}, anzSum[2:]...)
)

// allergens lists every code. Pine nut is a nut in Australia and for the FDA,
// not in the EU. Coconut and chestnut are on no list now (the FDA named them
// until January 2025) and so have no code.
var allergens = buildAllergens()

func buildAllergens() map[string]allergen {
	all := map[string]allergen{}
	add := func(a allergen) { all[a.code] = a }
	const cereals, shellfish = "cereals containing gluten", "crustacean shellfish"
	for _, wheat := range []string{"wheat", "spelt", "khorasan"} {
		add(allergen{code: wheat, eu: cereals, euKind: wheat, us: "wheat", anz: "wheat", anzSum: "wheat gluten"})
	}
	for _, cereal := range []string{"barley", "oats", "rye"} {
		add(allergen{code: cereal, eu: cereals, euKind: cereal, anz: cereal, anzSum: "gluten"})
	}
	add(allergen{code: "gluten", eu: cereals, anz: "gluten"})
	add(allergen{code: "egg", eu: "eggs", us: "eggs", anz: "egg"})
	add(allergen{code: "peanut", eu: "peanuts", us: "peanuts", anz: "peanut"})
	add(allergen{code: "soya", eu: "soybeans", us: "soybeans", anz: "soy"})
	add(allergen{code: "milk", eu: "milk", us: "milk", anz: "milk"})
	add(allergen{code: "celery", eu: "celery"})
	add(allergen{code: "mustard", eu: "mustard"})
	add(allergen{code: "sesame", eu: "sesame", us: "sesame", anz: "sesame"})
	add(allergen{code: "sulphites", eu: "sulphur dioxide and sulphites", anz: "sulphites"})
	add(allergen{code: "lupin", eu: "lupin", anz: "lupin"})
	for _, nut := range []string{"almond", "Brazil nut", "cashew", "hazelnut", "macadamia", "pecan", "pistachio", "walnut"} {
		add(allergen{code: strings.ToLower(nut), eu: "nuts", euKind: nut, us: "tree nuts", usKind: nut, anz: nut})
	}
	add(allergen{code: "pine nut", us: "tree nuts", usKind: "pine nut", anz: "pine nut"})
	for _, kind := range []string{"", "crab", "crayfish", "langoustine", "lobster", "prawn"} {
		us := kind
		if us == "prawn" {
			us = "shrimp"
		}
		add(allergen{code: either(kind, "crustacean"), eu: "crustaceans", us: shellfish, usKind: us, anz: "crustacean"})
	}
	for _, kind := range fishKinds {
		add(allergen{code: either(kind, "fish"), eu: "fish", us: "fish", usKind: kind, anz: "fish"})
	}
	for _, kind := range []string{"", "clam", "cuttlefish", "mussel", "octopus", "oyster", "scallop", "snail", "squid"} {
		add(allergen{code: either(kind, "mollusc"), eu: "molluscs", anz: "mollusc"})
	}
	return all
}

// fishKinds are the fish that US labels call by name; "" is fish unnamed.
var fishKinds = []string{"", "anchovy", "bass", "bonito", "catfish", "cod", "eel", "haddock", "hake", "halibut", "herring",
	"mackerel", "monkfish", "mullet", "perch", "pike", "plaice", "pollock", "salmon", "sardine", "snapper", "sole", "swordfish", "tilapia",
	"trout", "tuna", "turbot", "whitebait"}

func either(a, b string) string {
	if a != "" {
		return a
	}
	return b
}

// AllergenCodes are the codes that Food.Allergens can hold, sorted.
func AllergenCodes() []string {
	codes := make([]string, 0, len(allergens))
	for code := range allergens {
		codes = append(codes, code)
	}
	slices.Sort(codes)
	return codes
}

// AllergenLists are the allergens of something in the words of three laws,
// each in its law's order.
type AllergenLists struct {
	EU  []string // EU and UK, of 14: "nuts (almond, hazelnut)"
	US  []string // of 9: "fish (cod)"; Contains statement
	ANZ []string // Australia and New Zealand, the "Contains" summary: "wheat", "gluten"
}

// Allergens words codes by the three laws. Codes it does not know are left
// out: ReadTable refuses them.
func Allergens(codes []string) AllergenLists {
	return AllergenLists{
		EU:  listed(codes, euOrder, func(a allergen) (string, string) { return a.eu, a.euKind }),
		US:  listed(codes, usOrder, func(a allergen) (string, string) { return a.us, a.usKind }),
		ANZ: plainList(codes, anzSum, func(a allergen) string { return either(a.anzSum, a.anz) }),
	}
}

// ANZIngredients gives the names for the list of ingredients by Australian and
// New Zealand law, where barley, oats and rye keep their names.
func ANZIngredients(codes []string) []string {
	return plainList(codes, anzIngredients, func(a allergen) string { return a.anz })
}

// listed gives the entries that codes fall under, with their kinds.
func listed(codes, order []string, name func(allergen) (entry, kind string)) []string {
	kinds := map[string][]string{}
	for _, code := range codes {
		entry, kind := name(allergens[code])
		if entry == "" {
			continue
		}
		if _, ok := kinds[entry]; !ok {
			kinds[entry] = nil
		}
		if kind != "" && !slices.Contains(kinds[entry], kind) {
			kinds[entry] = append(kinds[entry], kind)
		}
	}
	var list []string
	for _, entry := range order {
		switch of, ok := kinds[entry]; {
		case !ok:
		case len(of) == 0:
			list = append(list, entry)
		default:
			slices.Sort(of)
			list = append(list, entry+" ("+strings.Join(of, ", ")+")")
		}
	}
	return list
}

func plainList(codes, order []string, name func(allergen) string) []string {
	has := map[string]bool{}
	for _, code := range codes {
		words := name(allergens[code])
		if words == "wheat gluten" {
			has["wheat"], has["gluten"] = true, true
			continue
		}
		has[words] = true
	}
	var list []string
	for _, entry := range order {
		if has[entry] {
			list = append(list, entry)
		}
	}
	return list
}

// AllergensOf gathers the codes of several foods: those they hold, and those
// that only some makers' versions hold (never one that is held anyway). Both
// are sorted. A nil food is passed over: the caller says that it is unknown.
func AllergensOf(foods ...*Food) (holds, mayHold []string) {
	for _, f := range foods {
		if f != nil {
			holds = append(holds, f.Allergens...)
			mayHold = append(mayHold, f.MayHold...)
		}
	}
	slices.Sort(holds)
	holds = slices.Compact(holds)
	slices.Sort(mayHold)
	mayHold = slices.DeleteFunc(slices.Compact(mayHold), func(code string) bool { return slices.Contains(holds, code) })
	return holds, mayHold
}
