package measure_test

import (
	"fmt"

	"benchproof/kitchen/measure"
)

func ExampleAmount_Scale() {
	spoons := measure.Amount{Range: measure.Between(measure.Whole(2), measure.Whole(3)), Unit: measure.Tablespoon}
	scaled := spoons.Scale(measure.Ratio(3, 2))
	fmt.Println(scaled.From, scaled.To, scaled.Unit)
	// Output: 3 9/2 tbsp
}

func ExampleAmount_String() {
	plainly(measure.Of(measure.Ratio(3, 2), measure.Cup).String())
	plainly(measure.Of(measure.Ratio(5, 2), measure.Kilogram).String())
	plainly(measure.Of(measure.Ratio(1, 3), measure.Each).String())
	// Output:
	// 1½ cups
	// 2.5 kg
	// ⅓
}

func ExampleBetween() {
	r := measure.Between(measure.Whole(12), measure.Whole(10)) // in either order
	fmt.Println(r.From, r.To, r.IsSingle())
	// Output: 10 12 false
}

func ExampleCheckOvens() {
	step := "Heat the oven to 180 °C (170 °C fan) and grease a 20 cm tin."
	for _, q := range measure.CheckOvens(measure.Heats(step)) {
		plainly(q.Text)
	}
	// Output: 180 °C and 170 °C fan are 10 °C apart, where about 20 °C is usual. Was 160 °C fan or 190 °C conventional meant?
}

func ExampleFormatDecimal() {
	for _, n := range []string{"5/2", "1/3", "1/70", "2"} {
		fmt.Println(measure.FormatDecimal(measure.MustNumber(n), 2))
	}
	// Output:
	// 2.5
	// 0.33
	// 0.014
	// 2
}

func ExampleFormatMinutes() {
	plainly(measure.FormatMinutes(measure.One(measure.Ratio(3, 4))))
	plainly(measure.FormatMinutes(measure.Between(measure.Whole(9), measure.Whole(11))))
	plainly(measure.FormatMinutes(measure.Between(measure.Whole(90), measure.Whole(120))))
	plainly(measure.FormatMinutes(measure.One(measure.Whole(2 * 24 * 60))))
	// Output:
	// 45 s
	// 9–11 min
	// 1 h 30 min–2 h
	// 2 days
}

func ExampleFormatNumber() {
	for _, n := range []string{"3/2", "1/3", "6/5", "47/20"} {
		plainly(measure.FormatNumber(measure.MustNumber(n)))
	}
	// Output:
	// 1½
	// ⅓
	// 1 1⁄5
	// 2.35
}

func ExampleGrams() {
	pound, _ := measure.Grams(measure.Pound)
	_, known := measure.Grams(measure.Clove)
	fmt.Println(measure.FormatDecimal(pound, 5), known)
	// Output: 453.59237 false
}

func ExampleHand_InMass() {
	grams := measure.One(measure.Whole(340))
	for _, s := range []measure.System{measure.Metric, measure.US} {
		plainly(measure.Hand{System: s}.InMass(grams).Text)
	}
	// Output:
	// 340 g
	// 12 oz
}

func ExampleHand_Write_ownScale() {
	// A scale that shows 5 g at a time, 1 g below 10 g.
	h := measure.Hand{System: measure.Metric, GramStep: measure.Whole(5), GramsFine: measure.Whole(1)}
	shown := h.Write(measure.Of(measure.Whole(237), measure.Gram))
	plainly(shown.Text)
	fmt.Println(measure.FormatDecimal(shown.ErrorPercent, 2))
	// Output:
	// 235 g
	// 0.84
}

func ExampleHeats() {
	for _, h := range measure.Heats("Bake at 180 °C (160 °C fan/gas 4) until 96 °C inside.") {
		plainly(h.String())
	}
	// Output:
	// 180 °C
	// 160 °C fan
	// gas 4
	// 96 °C
}

func ExampleHeat_In() {
	h := measure.Heats("350 °F")[0]
	fan, how, _ := h.In("C", "fan")
	plainly(fan.String() + ", " + how)
	// Output: 160 °C fan, published table
}

func ExampleOvenSettings() {
	for _, s := range measure.OvenSettings()[3:6] {
		fmt.Printf("gas %s: %s °C, %s °C fan, %s °F, %s\n", s.Gas, s.Celsius[0], s.Fan, s.Fahrenheit, s.Word)
	}
	// Output:
	// gas 2: 150 °C, 130 °C fan, 300 °F, slow
	// gas 3: 160 °C, 140 °C fan, 325 °F, moderate
	// gas 4: 180 °C, 160 °C fan, 350 °F, moderate
}

func ExampleParseNumber() {
	n, err := measure.ParseNumber("1.25")
	fmt.Println(n, err)
	_, err = measure.ParseNumber("1½") // what people write is ReadNumber's
	fmt.Println(err)
	// Output:
	// 5/4 <nil>
	// "1½" is not a number
}

func ExampleParseSystem() {
	for _, word := range []string{"Aussie", "U.K.", "NZ", "troy"} {
		s, ok := measure.ParseSystem(word)
		fmt.Printf("%s: %s, %v\n", word, s.Name(), ok)
	}
	// Output:
	// Aussie: Australian, true
	// U.K.: imperial, true
	// NZ: metric, true
	// troy: not said, false
}

func ExampleReading_HasAmount() {
	few, _, _ := measure.ReadAmount("a few sprigs of thyme")
	fmt.Println(few.HasAmount(), few.Amount.Unit, few.Note)
	// Output: false sprig a few
}

func ExampleShown_IsOff() {
	h := measure.Hand{System: measure.US}
	for _, by := range []string{"1/2", "1/3"} {
		shown := h.Write(measure.Of(measure.Whole(1), measure.Teaspoon).Scale(measure.MustNumber(by)))
		plainly(shown.Text)
		fmt.Println(shown.IsOff(), measure.FormatDecimal(shown.ErrorPercent, 2))
	}
	// Output:
	// ½ tsp
	// false 0
	// ¼ tsp + 1 pinch
	// true 6.25
}

func ExampleSystem_Or() {
	var line, recipe measure.System // neither says
	show := measure.Australian
	size, _ := line.Or(recipe).Or(show).Millilitres(measure.Tablespoon)
	fmt.Println(size, "mL")
	// Output: 20 mL
}

func ExampleUnit_Name() {
	fmt.Println(measure.Leaf.Name(false), measure.Leaf.Name(true), measure.Tablespoon.Name(true))
	// Output: leaf leaves tbsp
}
