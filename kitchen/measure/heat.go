package measure

// Heat is one temperature or oven setting as given: "160 °C fan", "gas 4",
// "350–375 °F".
type Heat struct {
	Degrees Range
	Scale   string // "C", "F", or "gas"; "" for not said ("350 degrees")
	Oven    string // "fan", "conventional", or "" for not said
	Text    string // as written
	At      int    // where Text begins, in bytes
}

// Heats finds the temperatures and oven settings in text, in order.
func Heats(text string) []Heat {
	return nil
}
