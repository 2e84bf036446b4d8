package ingredient_test

import (
	"fmt"
	"testing"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/ingredient"
)

func amountText(a measure.Amount) string {
	text := a.From.String()
	if !a.IsSingle() {
		text += "–" + a.To.String()
	}
	if a.Unit != "" {
		text += " " + string(a.Unit)
	}
	return text
}

// Packs of one size, in every way they are written. The whole is count × size.
func TestPacks(t *testing.T) {
	for _, tt := range []struct{ name, line, want string }{
		{"count x size pack", "2 x 400 g tins beans", "2 × 400 g tin = 800 g of beans"},
		{"with the sign", "2 × 400 g tins beans", "2 × 400 g tin = 800 g of beans"},
		{"capital", "2 X 400G TINS BEANS", "2 × 400 g tin = 800 g of BEANS"},
		{"closed up", "2x400g tins beans", "2 × 400 g tin = 800 g of beans"},
		{"no sign", "2 400 g tins beans", "2 × 400 g tin = 800 g of beans"},
		{"in words", "two 400 g tins of beans", "2 × 400 g tin = 800 g of beans"},
		{"size in brackets", "2 (15 oz) cans beans", "2 × 15 oz tin = 30 oz of beans"},
		{"size with a hyphen", "1 (14-ounce) can beans", "1 × 14 oz tin = 14 oz of beans"},
		{"size behind the pack", "2 cans (15 oz) beans", "2 × 15 oz tin = 30 oz of beans"},
		{"size behind the food", "2 tins beans (400 g each)", "2 × 400 g tin = 800 g of beans"},
		{"one, size behind the food", "1 jar passata (700 g)", "1 × 700 g jar = 700 g of passata"},
		{"size alone", "400 g tin beans", "1 × 400 g tin = 400 g of beans"},
		{"with an article", "a 400 g tin of beans", "1 × 400 g tin = 400 g of beans"},
		{"a half", "half a 400 g tin of beans", "1/2 × 400 g tin = 200 g of beans"},
		{"a range of packs", "2–3 x 400 g tins beans", "2–3 × 400 g tin = 800–1200 g of beans"},
		{"no pack's word", "4 x 150 g salmon fillets", "4 × 150 g = 600 g of salmon fillets"},
		{"a volume", "1 x 330 ml bottle stout", "1 × 330 ml bottle = 330 ml of stout"},
		{"a sheet", "1 x 320 g sheet puff pastry", "1 × 320 g sheet = 320 g of puff pastry"},
		{"a punnet", "1 punnet (250 g) strawberries", "1 × 250 g box = 250 g of strawberries"},
		{"a pouch", "2 x 250 g pouches cooked rice", "2 × 250 g packet = 500 g of cooked rice"},
		{"a large tin", "1 large tin (800 g) tomatoes", "1 × 800 g tin = 800 g of tomatoes"},
		{"two sizes", "2 (400 g / 14 oz) tins beans", "2 × 400 g tin = 800 g of beans, equals 28 oz"},
		{"two sizes behind x", "2 x 400 g/14 oz tins beans", "2 × 400 g tin = 800 g of beans, equals 28 oz"},
		{"two sizes, one in brackets", "2 x 400 g (14 oz) tins beans", "2 × 400 g tin = 800 g of beans, equals 28 oz"},
		{"no size", "2 tins beans", "2 tin of beans"},
		{"no size, other pack", "1 pot ricotta", "1 tub of ricotta"},
		{"a total is no pack", "2 cucumbers (600 g)", "2 of cucumbers, equals 600 g"},
		{"a length is no pack", "5 cm piece ginger", "5 cm of ginger"},
		{"pieces of a length", "3 x 5 cm pieces cinnamon", "3 × 5 cm = 15 cm of cinnamon"},
	} {
		t.Run(tt.name, func(t *testing.T) {
			r := ingredient.Read(tt.line, nil)
			got := amountText(r.Amount) + " of " + r.Food
			if !r.Count.IsZero() {
				pack := amountText(r.Pack)
				if r.In != "" {
					pack += " " + string(r.In)
				}
				got = fmt.Sprintf("%s × %s = %s", amountText(measure.Amount{Range: r.Count}), pack, got)
			}
			for _, e := range r.Equals {
				got += ", equals " + amountText(e)
			}
			if !r.Read || got != tt.want {
				t.Errorf("%q reads as %q (%s), want %q", tt.line, got, r.Reason, tt.want)
			}
		})
	}
}
