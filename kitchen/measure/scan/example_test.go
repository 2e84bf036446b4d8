package scan_test

import (
	"fmt"

	"benchproof/kitchen/measure/scan"
)

func ExampleNumber() {
	n, rest, ok := scan.Number("one and a half cups")
	fmt.Println(n, rest, ok)
	n, rest, ok = scan.Number("cups")
	fmt.Println(n, rest, ok)
	// Output:
	// 3/2 cups true
	// 0 cups false
}

func ExampleCursor() {
	c := scan.Cursor{Text: "2–3 tbsp of oil"}
	from, _ := c.Quantity()
	before := c // a cursor is a value: this is the way back
	if _, ok := c.RangeSign(false); ok {
		to, _ := c.Quantity()
		c.Space()
		fmt.Println(from.Number(), to.Number(), c.Rest())
	}
	fmt.Println(before.Rest())
	// Output:
	// 2 3 tbsp of oil
	// –3 tbsp of oil
}

func ExampleCursor_AcceptPhrase() {
	c := scan.Cursor{Text: "Up-to 3 days"}
	fmt.Println(c.AcceptPhrase("up to"), c.Rest())
	// Output: true  3 days
}

func ExampleCursor_Quantity() {
	c := scan.Cursor{Text: "1,250 kg"} // a comma and three digits: thousands, or a decimal comma
	q, _ := c.Quantity()
	fmt.Println(q.Number(), q.Grouped)
	// Output: 1250 250
}
