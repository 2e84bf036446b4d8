package food_test

import (
	"fmt"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// pantry is a larder of three foods, as its table writes them.
func pantry() *food.Larder {
	foods, err := food.ReadTable(strings.NewReader(`aisle: Flours and grains

plain flour
    id: plain-flour
    also: all-purpose flour
    source: USDA SR 20081
    weighs: cup 125
    holds: water 11.92, energy 364, protein 10.33, fat 0.98, carbohydrate 76.31, fibre 2.7
    allergens: wheat

aisle: Dairy and eggs

double cream
    id: double-cream
    also: cream
    source: estimate
    weighs: cup 235
    allergens: milk

single cream
    id: single-cream
    also: cream
    source: USDA SR 01050
    weighs: cup 240
    allergens: milk
`))
	if err != nil {
		panic(err)
	}
	return food.NewLarder(foods)
}

func ExampleLarder_Match() {
	l := pantry()
	m := l.Match("sifted all-purpose flour, plus extra for dusting")
	fmt.Println(m.Food.Name, "|", m.How, "|", m.Form, "|", m.Left)
	m = l.Match("thick cream")
	fmt.Println(m.How, len(m.Choices), m.Choices[0].Name)
	m = l.Match("coconut cream")
	fmt.Println(m.How)
	// Output:
	// plain flour | modifiers | sifted | plus extra for dusting
	// ask 2 double cream
	// ask
}

func ExampleLarder_Learn() {
	l := pantry().Learn(map[string]string{"cream": "double-cream"})
	m := l.Match("cream")
	fmt.Println(m.Food.Name, m.How)
	// Output: double cream learned
}

func ExampleFood_Grams() {
	f, _ := pantry().Food("plain-flour")
	w, err := f.Grams(measure.Of(measure.MustNumber("5/2"), measure.Cup), "", measure.US)
	if err != nil {
		panic(err)
	}
	fmt.Println(measure.FormatDecimal(w.Grams.From, 1)+" g,", w.Assumed+",", w.Source)
	_, err = f.Grams(measure.Of(measure.Whole(2), measure.Clove), "", measure.US)
	fmt.Println(err)
	// Output:
	// 312.5 g, cup = 236.588 mL (US customary), USDA SR 20081
	// The larder does not know what a clove of plain flour weighs. Give it in grams, or add that weight.
}

func ExampleAllergens() {
	lists := food.Allergens([]string{"spelt", "hazelnut", "celery", "cod"})
	fmt.Println("EU:", strings.Join(lists.EU, "; "))
	fmt.Println("US:", strings.Join(lists.US, "; "))
	fmt.Println("AU/NZ:", strings.Join(lists.ANZ, "; "))
	// Output:
	// EU: cereals containing gluten (spelt); fish; nuts (hazelnut); celery
	// US: fish (cod); tree nuts (hazelnut); wheat
	// AU/NZ: wheat; gluten; hazelnut; fish
}

func ExampleEUDeclaration() {
	f, _ := pantry().Food("plain-flour")
	for _, line := range food.EUDeclaration(food.Totals{}.Add(f, measure.Whole(100))) {
		fmt.Println(line.Name, line.Amount)
	}
	// Output:
	// Energy 1485 kJ / 350 kcal
	// Fat 1 g
	// Carbohydrate 74 g
	// Fibre 2.7 g
	// Protein 10 g
}
