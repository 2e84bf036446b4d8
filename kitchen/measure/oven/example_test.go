package oven_test

import (
	"fmt"

	"benchproof/kitchen/measure/oven"
)

func ExampleHeats() {
	for _, h := range oven.Heats("Bake at 180°C/160°C fan/350°F/gas 4 until 96 °C inside.") {
		fmt.Printf("%d: %v\n", h.At, h)
	}
	// Output:
	// 8: 180 °C
	// 15: 160 °C fan
	// 26: 350 °F
	// 33: gas 4
	// 45: 96 °C
}

func ExampleCheck() {
	for _, q := range oven.Check(oven.Heats("180 °C (170 °C fan)")) {
		fmt.Println(q.Text)
		fmt.Println(q.Likely)
	}
	// Output:
	// 180 °C and 170 °C fan are 10 °C apart, where about 20 °C is usual. Was 160 °C fan or 190 °C conventional meant?
	// [160 °C fan 190 °C conventional]
}

func ExampleHeat_In() {
	h := oven.Heats("160 °C fan")[0]
	for _, scale := range []string{"C", "F", "gas"} {
		to, how, _ := h.In(scale, "")
		fmt.Printf("%v by %s\n", to, how)
	}
	// Output:
	// 180 °C by fan rule
	// 350 °F by published table
	// gas 4 by published table
}
