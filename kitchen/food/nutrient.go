package food

import "benchproof/kitchen/measure"

// Nutrients are per 100 g. A nil field is not known, which is not zero.
type Nutrients struct {
	Water, EnergyKcal, Protein, Fat, Saturated    *measure.Number // g, kcal
	Carbohydrate, Sugars, Fibre, SodiumMilligrams *measure.Number // g (carbohydrate includes fibre), mg
	Alcohol                                       *measure.Number // g; nil in foods without
	CholesterolMilligrams, CalciumMilligrams      *measure.Number // mg
}

// Nutrient is one of the figures of Nutrients.
type Nutrient int

// The nutrients, in the order of Nutrients' fields.
const (
	Water Nutrient = iota
	EnergyKcal
	Protein
	Fat
	Saturated
	Carbohydrate // includes fibre, as on a US label
	Sugars
	Fibre
	SodiumMilligrams
	Alcohol
	CholesterolMilligrams
	CalciumMilligrams
	nutrientCount
)

// AllNutrients are the nutrients in order.
func AllNutrients() []Nutrient {
	all := make([]Nutrient, nutrientCount)
	for i := range all {
		all[i] = Nutrient(i)
	}
	return all
}

// nutrientNames are the words of the larder's tables, with their unit.
var nutrientNames = [nutrientCount]struct{ word, unit string }{
	{"water", "g"}, {"energy", "kcal"}, {"protein", "g"}, {"fat", "g"}, {"saturated", "g"}, {"carbohydrate", "g"},
	{"sugars", "g"}, {"fibre", "g"}, {"sodium", "mg"}, {"alcohol", "g"}, {"cholesterol", "mg"}, {"calcium", "mg"},
}

// String gives the nutrient's word: "saturated".
func (n Nutrient) String() string {
	if n < 0 || n >= nutrientCount {
		return "nutrient"
	}
	return nutrientNames[n].word
}

// Unit gives the unit its figures are in: "g", "mg" or "kcal".
func (n Nutrient) Unit() string {
	if n < 0 || n >= nutrientCount {
		return ""
	}
	return nutrientNames[n].unit
}

// field gives the place of one nutrient in ns.
func (ns *Nutrients) field(n Nutrient) **measure.Number {
	return [nutrientCount]**measure.Number{
		&ns.Water, &ns.EnergyKcal, &ns.Protein, &ns.Fat, &ns.Saturated, &ns.Carbohydrate,
		&ns.Sugars, &ns.Fibre, &ns.SodiumMilligrams, &ns.Alcohol, &ns.CholesterolMilligrams, &ns.CalciumMilligrams,
	}[n]
}

// Get gives one nutrient's figure; nil if it is not known.
func (ns Nutrients) Get(n Nutrient) *measure.Number { return *ns.field(n) }

// Set gives a copy with one figure changed; nil makes it unknown.
func (ns Nutrients) Set(n Nutrient, figure *measure.Number) Nutrients {
	*ns.field(n) = figure
	return ns
}

// Nutrients gives what this many grams of f hold, in g, kcal and mg. What is
// not known of f stays nil.
func (f *Food) Nutrients(grams measure.Number) Nutrients {
	var ns Nutrients
	share := grams.Quo(hundred)
	for _, n := range AllNutrients() {
		if per := f.Per100.Get(n); per != nil {
			amount := per.Mul(share)
			ns = ns.Set(n, &amount)
		}
	}
	return ns
}

var hundred = measure.Whole(100)
