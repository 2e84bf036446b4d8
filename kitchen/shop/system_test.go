package shop_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shop"
)

// exactOf is the exact sum of the only item that one line buys.
func exactOf(t *testing.T, kitchen *food.Larder, house, stated, own measure.System, l recipe.Line) []measure.Amount {
	t.Helper()
	l.System = own
	r := one("Buns", l)
	r.System = stated
	n := shop.Need{Batch: "shoot", Makes: measure.Whole(1), Recipe: r, System: house}
	return only(t, shop.List([]shop.Need{n}, kitchen)).Exact
}

// TestSystemsInForce: the line's own measures go before the recipe's, those
// before the house's. Cups: US 236.5882365 mL (NIST Handbook 44, App. C),
// metric 250 mL, Japan 200 mL; tablespoons: US 14.78676478125 mL, metric 15 mL,
// Australia 20 mL (Standards Association of Australia sets).
func TestSystemsInForce(t *testing.T) {
	tests := []struct {
		name                string
		house, recipe, line measure.System
		unit                measure.Unit
		millilitres         string
	}{
		{"nobody says: US", "", "", "", measure.Cup, "236.5882365"},
		{"the house", measure.Metric, "", "", measure.Cup, "250"},
		{"the recipe before the house", measure.Metric, measure.US, "", measure.Cup, "236.5882365"},
		{"the line before the recipe", measure.Metric, measure.US, measure.Japanese, measure.Cup, "200"},
		{"an Australian tablespoon", measure.Australian, "", "", measure.Tablespoon, "20"},
		{"a metric tablespoon in an Australian house", measure.Australian, measure.Metric, "", measure.Tablespoon, "15"},
		{"a US tablespoon", measure.US, "", "", measure.Tablespoon, "14.78676478125"},
		{"an imperial pint", measure.Imperial, "", "", measure.Pint, "568.26125"},
		{"a US pint", measure.US, "", "", measure.Pint, "473.176473"},
		{"litres are litres", measure.US, "", "", measure.Litre, "1000"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := exactOf(t, larder(), test.house, test.recipe, test.line, line("", "stock", "1", test.unit))
			want := []measure.Amount{measure.Of(measure.MustNumber(test.millilitres), measure.Millilitre)}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("exact sum (-want +got):\n%s", diff)
			}
		})
	}
}

// TestMassesAreExact: the pound is 453.59237 g, the ounce a sixteenth (Weights
// and Measures Act 1985, Sch. 1; NIST SP 811).
func TestMassesAreExact(t *testing.T) {
	tests := []struct {
		name  string
		n     string
		unit  measure.Unit
		grams string
	}{
		{"pounds", "2", measure.Pound, "907.18474"},
		{"ounces", "3/2", measure.Ounce, "42.5242846875"},
		{"kilograms", "1/3", measure.Kilogram, "1000/3"},
		{"milligrams", "500", measure.Milligram, "1/2"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := exactOf(t, larder(), measure.Metric, "", "", line("plain-flour", "flour", test.n, test.unit))
			want := []measure.Amount{measure.Of(measure.MustNumber(test.grams), measure.Gram)}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("exact sum (-want +got):\n%s", diff)
			}
		})
	}
}

// TestWrittenUpwards tries the steps of the list's own rounding at their edges.
func TestWrittenUpwards(t *testing.T) {
	tests := []struct {
		grams, want string
	}{
		{"1/100", "1 g"},
		{"1", "1 g"},
		{"1.01", "2 g"},
		{"19.2", "20 g"},
		{"20", "20 g"},
		{"20.1", "25 g"},
		{"498", "500 g"},
		{"500", "500 g"},
		{"500.5", "510 g"},
		{"991", "1 kg"},
		{"1991", "2 kg"},
		{"2000", "2 kg"},
		{"2001", "2.05 kg"},
		{"12345", "12.35 kg"},
	}
	for _, test := range tests {
		t.Run(test.grams, func(t *testing.T) {
			got := shown(shop.List([]shop.Need{need("shoot", "1", one("Buns", line("", "sand", test.grams, measure.Gram)))}, nil))
			if diff := cmp.Diff([]string{"Other: " + test.want + " | sand"}, got); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}

// TestPacksOfSeveralSizes keeps each size apart, in any unit.
func TestPacksOfSeveralSizes(t *testing.T) {
	packed := func(count, size string, unit, pack measure.Unit) recipe.Line {
		n, each := measure.MustNumber(count), measure.MustNumber(size)
		return recipe.Line{
			Text: "tomatoes", Read: true, Food: "tomatoes", FoodID: "tomatoes",
			Amount: measure.Of(n.Mul(each), unit), HasAmount: true,
			Packs: recipe.Packs{Count: measure.One(n), Size: measure.Of(each, unit), Unit: pack},
		}
	}
	tests := []struct {
		name  string
		lines []recipe.Line
		want  string
	}{
		{"one", []recipe.Line{packed("1", "400", measure.Gram, measure.Tin)}, "1 × 400 g tin | tinned tomatoes | 400 g"},
		{"half a tin is a whole one", []recipe.Line{packed("1/2", "400", measure.Gram, measure.Tin)}, "1 × 400 g tin | tinned tomatoes | 200 g"},
		{"the same size adds up", []recipe.Line{packed("1", "400", measure.Gram, measure.Tin), packed("3/2", "400", measure.Gram, measure.Tin)},
			"3 × 400 g tins | tinned tomatoes | 1 kg"},
		{"two sizes", []recipe.Line{packed("2", "400", measure.Gram, measure.Tin), packed("1", "200", measure.Gram, measure.Tin)},
			"2 × 400 g tins + 1 × 200 g tin | tinned tomatoes | 1 kg"},
		{"a tin and a jar", []recipe.Line{packed("1", "400", measure.Gram, measure.Tin), packed("1", "400", measure.Gram, measure.Jar)},
			"1 × 400 g tin + 1 × 400 g jar | tinned tomatoes | 800 g"},
		{"ounces", []recipe.Line{packed("2", "14", measure.Ounce, measure.Tin)}, "2 × 14 oz tins | tinned tomatoes | 800 g"},
		{"millilitres", []recipe.Line{packed("2", "330", measure.Millilitre, measure.Bottle)}, "2 × 330 mL bottles | tinned tomatoes | 660 mL"},
	}
	for _, test := range tests {
		t.Run(test.name, func(t *testing.T) {
			got := shown(shop.List([]shop.Need{need("shoot", "1", one("Stew", test.lines...))}, larder()))
			if diff := cmp.Diff([]string{"Tins and jars: " + test.want}, got); diff != "" {
				t.Errorf("List (-want +got):\n%s", diff)
			}
		})
	}
}
