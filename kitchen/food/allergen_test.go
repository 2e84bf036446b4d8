package food_test

import (
	"slices"
	"strings"
	"testing"

	"benchproof/kitchen/food"

	"github.com/google/go-cmp/cmp"
)

// Sources: EU and UK, Regulation (EU) No 1169/2011, Annex II; US, FALCPA 2004
// and FASTER Act 2021 (naming of kinds, and that barley, molluscs, mustard,
// celery, lupin and sulphites are not listed: from memory); Australia and New
// Zealand, Standard 1.2.3 and Schedule 9 ("Contains" summary: NSW Food
// Authority, "Allergens that must be declared").
func TestAllergensByLaw(t *testing.T) {
	for _, tc := range []struct {
		name, codes, eu, us, anz string
	}{
		{"nothing", "", "", "", ""},
		{"wheat is gluten too in Australia", "wheat", "cereals containing gluten (wheat)", "wheat", "wheat; gluten"},
		{"spelt is wheat", "spelt", "cereals containing gluten (spelt)", "wheat", "wheat; gluten"},
		{"khorasan is wheat", "khorasan", "cereals containing gluten (khorasan)", "wheat", "wheat; gluten"},
		{"barley is gluten, not on the US list", "barley", "cereals containing gluten (barley)", "", "gluten"},
		{"rye", "rye", "cereals containing gluten (rye)", "", "gluten"},
		{"oats", "oats", "cereals containing gluten (oats)", "", "gluten"},
		{"two cereals are one entry", "wheat oats", "cereals containing gluten (oats, wheat)", "wheat", "wheat; gluten"},
		{"milk", "milk", "milk", "milk", "milk"},
		{"egg", "egg", "eggs", "eggs", "egg"},
		{"soya", "soya", "soybeans", "soybeans", "soy"},
		{"peanut", "peanut", "peanuts", "peanuts", "peanut"},
		{"sesame", "sesame", "sesame", "sesame", "sesame"},
		{"nuts by kind", "almond hazelnut", "nuts (almond, hazelnut)", "tree nuts (almond, hazelnut)", "almond; hazelnut"},
		{"Brazil nut", "brazil nut", "nuts (Brazil nut)", "tree nuts (Brazil nut)", "Brazil nut"},
		{"pine nut is no EU nut", "pine nut", "", "tree nuts (pine nut)", "pine nut"},
		{"fish by kind in the US", "cod anchovy", "fish", "fish (anchovy, cod)", "fish"},
		{"fish unnamed", "fish", "fish", "fish", "fish"},
		{"prawn is shrimp in the US", "prawn", "crustaceans", "crustacean shellfish (shrimp)", "crustacean"},
		{"molluscs are not on the US list", "mussel squid", "molluscs", "", "mollusc"},
		{"celery is EU only", "celery", "celery", "", ""},
		{"mustard is EU only", "mustard", "mustard", "", ""},
		{"lupin", "lupin", "lupin", "", "lupin"},
		{"sulphites", "sulphites", "sulphur dioxide and sulphites", "", "sulphites"},
		{"in the law's order", "sesame milk wheat", "cereals containing gluten (wheat); milk; sesame", "milk; wheat; sesame", "wheat; gluten; milk; sesame"},
		{"an unknown code is left out", "unicorn milk", "milk", "milk", "milk"},
	} {
		t.Run(tc.name, func(t *testing.T) {
			got := food.Allergens(strings.Fields(strings.NewReplacer("brazil nut", "brazil_nut", "pine nut", "pine_nut").Replace(tc.codes)))
			if strings.Contains(tc.codes, " nut") {
				got = food.Allergens([]string{tc.codes})
			}
			joined := [3]string{strings.Join(got.EU, "; "), strings.Join(got.US, "; "), strings.Join(got.ANZ, "; ")}
			if d := cmp.Diff([3]string{tc.eu, tc.us, tc.anz}, joined); d != "" {
				t.Errorf("(-want +got):\n%s", d)
			}
		})
	}
}

// Source: Standard 1.2.3: in the list of ingredients barley, oats and rye keep
// their names.
func TestANZIngredientsKeepCerealNames(t *testing.T) {
	got := food.ANZIngredients([]string{"rye", "wheat", "barley", "oats", "celery", "almond"})
	if d := cmp.Diff([]string{"wheat", "barley", "oats", "rye", "almond"}, got); d != "" {
		t.Errorf("(-want +got):\n%s", d)
	}
}

// The EU list has 14 entries, the US list 9: every one can come up.
func TestEveryEntryOfTheLawsCanComeUp(t *testing.T) {
	lists := food.Allergens(food.AllergenCodes())
	if len(lists.EU) != 14 {
		t.Errorf("EU: %d entries, want 14: %v", len(lists.EU), lists.EU)
	}
	if len(lists.US) != 9 {
		t.Errorf("US: %d entries, want 9: %v", len(lists.US), lists.US)
	}
	if len(lists.ANZ) != 21 {
		t.Errorf("AU/NZ: %d entries, want 21: %v", len(lists.ANZ), lists.ANZ)
	}
}

// Source: derived from the lists, and common practice: what trips a mapping.
func TestFoodsThatTripAnAllergenMapping(t *testing.T) {
	for _, tc := range []struct{ food, holds string }{
		{"fish-sauce", "anchovy"}, {"tahini", "sesame"}, {"marzipan", "almond"}, {"semolina", "wheat"},
		{"spelt-flour", "spelt"}, {"couscous", "wheat"}, {"pearl-barley", "barley"}, {"rolled-oats", "oats"},
		{"soy-sauce", "soya"}, {"soy-sauce", "wheat"}, {"worcestershire-sauce", "fish"}, {"ghee", "milk"},
		{"mayonnaise", "egg"}, {"mayonnaise", "egg"}, {"celeriac", "celery"}, {"dijon-mustard", "mustard"},
		{"groundnut-oil", "peanut"}, {"sesame-oil", "sesame"}, {"beer", "barley"}, {"red-wine", "sulphites"},
		{"dried-apricots", "sulphites"}, {"oyster-sauce", "oyster"}, {"prawns", "prawn"}, {"pine-nuts", "pine nut"},
		{"pesto", "milk"}, {"hummus", "sesame"}, {"miso", "soya"}, {"bonito-flakes", "bonito"}, {"malt-vinegar", "barley"},
	} {
		t.Run(tc.food+" holds "+tc.holds, func(t *testing.T) {
			if f := item(t, tc.food); !slices.Contains(f.Allergens, tc.holds) {
				t.Errorf("%s holds %v, want %s among them", f.Name, f.Allergens, tc.holds)
			}
		})
	}
	for _, id := range []string{"coconut-milk", "chestnuts", "nutmeg", "rice-noodles", "water-chestnuts", "butternut-squash"} {
		if holds := item(t, id).Allergens; len(holds) != 0 {
			t.Errorf("%s holds %v, want none", id, holds)
		}
	}
}

// Foods of a family must say so: a name with the word holds the allergen.
func TestFoodsNamedAfterAnAllergenHoldIt(t *testing.T) {
	without := map[string]bool{ // named so, yet not so
		"coconut-milk": true, "light-coconut-milk": true, "oat-milk": true, "almond-milk": true, "rice-milk": true, "soya-milk": true,
		"plant-milk": true, "cashew-milk": true, "hazelnut-milk": true, "vegan-butter": true, "cocoa-butter": true, "apple-butter": true,
		"almond-butter": true, "cashew-butter": true, "peanut-butter": true, "peanut-butter-chips": true, "bread-and-butter-pickles": true,
		"tinned-butter-beans": true, "dried-butter-beans": true, "butternut-squash": true, "butterhead-lettuce": true, "creamed-coconut": true,
		"coconut-cream": true, "sweetened-cream-of-coconut": true, "marshmallow-cream": true, "cream-of-tartar": true, "creamed-corn": true,
		"salad-cream": true, "egg-replacer": true, "fresh-thyme": true, "ice-cream-cones": true,
	}
	for word, code := range map[string]string{"milk": "milk", "butter": "milk", "cream": "milk", "cheese": "milk", "yogurt": "milk",
		"egg": "egg", "almond": "almond", "hazelnut": "hazelnut", "walnut": "walnut", "peanut": "peanut", "sesame": "sesame", "mustard": "mustard",
		"celery": "celery", "anchovy": "anchovy", "salmon": "salmon", "tuna": "tuna", "soy": "soya", "barley": "barley", "rye": "rye"} {
		for _, f := range larder(t).Foods() {
			if !slices.Contains(strings.Fields(strings.ReplaceAll(f.Name, "'s", "")), word) || without[f.ID] {
				continue
			}
			if code == "mustard" && f.ID == "mustard-greens" || code == "walnut" && f.ID == "walnut-oil" {
				continue
			}
			if !slices.Contains(f.Allergens, code) {
				t.Errorf("%s holds %v, want %s among them", f.Name, f.Allergens, code)
			}
		}
	}
}

func TestAllergensOfSeveralFoods(t *testing.T) {
	a := &food.Food{Allergens: []string{"milk", "wheat"}, MayHold: []string{"soya"}}
	b := &food.Food{Allergens: []string{"milk"}, MayHold: []string{"wheat", "egg"}}
	holds, may := food.AllergensOf(a, nil, b)
	if d := cmp.Diff([]string{"milk", "wheat"}, holds); d != "" {
		t.Errorf("holds (-want +got):\n%s", d)
	}
	if d := cmp.Diff([]string{"egg", "soya"}, may); d != "" {
		t.Errorf("may hold (-want +got):\n%s", d)
	}
}
