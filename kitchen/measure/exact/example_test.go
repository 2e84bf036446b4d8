package exact_test

import (
	"fmt"

	"benchproof/kitchen/measure/exact"
)

func ExampleNumber() {
	third := exact.Ratio(1, 3)
	fmt.Println(third.Add(third).Add(third), third.Mul(exact.Whole(250)), third.Cmp(exact.Ratio(1, 4)))
	// Output: 1 250/3 1
}

func ExampleNumber_Round() {
	n := exact.MustNumber("237")
	fmt.Println(n.Round(exact.Whole(5)), exact.Ratio(5, 8).Round(exact.Ratio(1, 4)), n.Round(exact.Whole(0)))
	// Output: 235 3/4 237
}

func ExampleNumber_Ceil() {
	packs := exact.Whole(650).Quo(exact.Whole(250)) // 650 g out of packs of 250 g
	fmt.Println(packs, packs.Ceil())
	// Output: 13/5 3
}

func ExampleNumber_Int() {
	n, ok := exact.Ratio(7, 2).Int()
	fmt.Println(n, ok)
	// Output: 3 true
}

func ExampleRange_Scale() {
	r := exact.Between(exact.Whole(2), exact.Whole(3)).Scale(exact.Ratio(1, 2))
	fmt.Println(r.From, r.To)
	// Output: 1 3/2
}

func ExampleRange_Map() {
	r := exact.Between(exact.Ratio(9, 4), exact.Ratio(15, 4)).Map(exact.Number.Ceil)
	fmt.Println(r.From, r.To)
	// Output: 3 4
}

func ExampleRange_IsMultiple() {
	fmt.Println(exact.Between(exact.Whole(100), exact.Whole(150)).IsMultiple(exact.Whole(50)))
	fmt.Println(exact.Between(exact.Whole(100), exact.Whole(160)).IsMultiple(exact.Whole(50)))
	// Output:
	// true
	// false
}

func ExampleFormatNumber() {
	for _, n := range []exact.Number{exact.Ratio(11, 4), exact.Ratio(1, 16), exact.Ratio(-1, 2), exact.Ratio(22, 7)} {
		fmt.Println(exact.FormatNumber(n))
	}
	// Output:
	// 2¾
	// 1⁄16
	// −½
	// 3.14
}
