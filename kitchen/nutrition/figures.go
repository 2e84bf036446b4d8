package nutrition

import (
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// Figures are totals as plain numbers, to two decimals, for JSON. Energy is
// the USDA's and carbohydrate includes fibre, as on a US label. Null is not
// known, which is not 0; what is known of a part only is a least value.
type Figures struct {
	EnergyKcal    *float64 `json:"energyKcal"`
	ProteinG      *float64 `json:"proteinG"`
	FatG          *float64 `json:"fatG"`
	SaturatedG    *float64 `json:"saturatedG"`
	CarbohydrateG *float64 `json:"carbohydrateG"`
	SugarsG       *float64 `json:"sugarsG"`
	FibreG        *float64 `json:"fibreG"`
	SodiumMg      *float64 `json:"sodiumMg"`
}

// FiguresOf gives totals as plain numbers.
func FiguresOf(t food.Totals) Figures {
	known := t.Nutrients()
	plain := func(n food.Nutrient) *float64 {
		sum := known.Get(n)
		if sum == nil {
			return nil
		}
		figure := sum.Round(cent).Float()
		return &figure
	}
	return Figures{
		EnergyKcal: plain(food.EnergyKcal), ProteinG: plain(food.Protein), FatG: plain(food.Fat), SaturatedG: plain(food.Saturated),
		CarbohydrateG: plain(food.Carbohydrate), SugarsG: plain(food.Sugars), FibreG: plain(food.Fibre), SodiumMg: plain(food.SodiumMilligrams),
	}
}

var cent = measure.Ratio(1, 100)

// CoveredShare is Covered as a plain number to three decimals, rounded down, so
// that 1 is the whole.
func (f Facts) CoveredShare() float64 {
	share := f.Covered.Round(thousandth)
	if share.Cmp(f.Covered) > 0 {
		share = share.Sub(thousandth)
	}
	return share.Float()
}

var thousandth = measure.Ratio(1, 1000)
