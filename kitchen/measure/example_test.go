package measure_test

import (
	"fmt"
	"strings"

	"benchproof/kitchen/measure"
)

// plainly prints a text with plain spaces for its no-break ones.
func plainly(text string) { fmt.Println(strings.ReplaceAll(text, "\u00a0", " ")) }

func ExampleReadAmount() {
	r, rest, ok := measure.ReadAmount("2 heaped Australian tablespoons of cocoa")
	fmt.Println(r.Amount.Unit, r.Amount.From, r.System, r.Note, rest, ok)
	// Output: tbsp 2 australian heaped cocoa true
}

func ExampleReadNumber() {
	for _, text := range []string{"1½ cups", "one and a half cups", "1,000 g", "1,5 kg", "a dozen eggs"} {
		n, rest, _ := measure.ReadNumber(text)
		fmt.Println(n, rest)
	}
	// Output:
	// 3/2 cups
	// 3/2 cups
	// 1000 g
	// 3/2 kg
	// 12 eggs
}

func ExampleDurations() {
	for _, d := range measure.Durations("Bake 10 to 12 minutes, then rest for a good quarter of an hour.") {
		fmt.Println(d.At, d.Text, d.Minutes.From, d.Minutes.To)
	}
	// Output:
	// 5 10 to 12 minutes 10 12
	// 37 a good quarter of an hour 15 15
}

func ExampleConvert() {
	a, err := measure.Convert(measure.Of(measure.Ratio(3, 2), measure.Cup), measure.Millilitre, measure.US, "")
	fmt.Println(a.From, err)
	_, err = measure.Convert(a, measure.Gram, "", "")
	plainly(err.Error())
	// Output:
	// 1419529419/4000000 <nil>
	// “mL” is a volume and “g” a mass: only a food's own weight joins the two. Name the food, or a unit of the same kind.
}

func ExampleParseUnit() {
	for _, word := range []string{"Tbsp.", "T", "t", "fluid ounces", "sachets"} {
		u, ok := measure.ParseUnit(word)
		fmt.Println(u, ok)
	}
	// Output:
	// tbsp true
	// tbsp true
	// tsp true
	// fl oz true
	// packet true
}

func ExampleSystem_Describe() {
	fmt.Println(measure.US.Describe(measure.Cup))
	fmt.Println(measure.Metric.Describe(measure.Pint))
	// Output:
	// cup = 236.588 mL (US customary)
	// pint = 568.261 mL (imperial; metric has none of its own)
}

func ExampleHand_Write() {
	h := measure.Hand{System: measure.US}
	for _, a := range []measure.Amount{
		measure.Of(measure.Ratio(13, 16), measure.Cup),
		measure.Of(measure.Whole(16), measure.Tablespoon),
		measure.Of(measure.Whole(1500), measure.Gram),
		{Range: measure.Between(measure.Whole(2), measure.Whole(3)), Unit: measure.Tablespoon},
	} {
		plainly(h.Write(a).Text)
	}
	// Output:
	// ¾ cup + 1 tbsp
	// 1 cup
	// 1.5 kg
	// 2–3 tbsp
}

func ExampleHand_InVolume() {
	ml := measure.One(measure.Whole(200))
	for _, s := range []measure.System{measure.Metric, measure.US, measure.Imperial} {
		shown := measure.Hand{System: s}.InVolume(ml)
		plainly(shown.Text + ", " + measure.FormatDecimal(shown.ErrorPercent, 1) + " % off")
	}
	// Output:
	// 200 mL, 0 % off
	// ¾ cup + 1½ tbsp, 0.2 % off
	// 7 fl oz, 0.6 % off
}

func ExampleAmount_Add() {
	cup, spoons := measure.Of(measure.Whole(1), measure.Cup), measure.Of(measure.Whole(2), measure.Tablespoon)
	sum, ok := cup.Add(spoons, measure.US)
	fmt.Println(sum.From, sum.Unit, ok)
	_, ok = cup.Add(spoons, "")
	fmt.Println(ok)
	// Output:
	// 9/8 cup true
	// false
}
