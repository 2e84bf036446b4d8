package measure

// Heat is one temperature or oven setting as given: "160 °C fan", "gas 4",
// "350–375 °F".
type Heat struct {
	Degrees Range
	Scale   string // "C", "F", or "gas"
	Oven    string // "fan", "conventional", or "" for not said
	Text    string // as written
}
