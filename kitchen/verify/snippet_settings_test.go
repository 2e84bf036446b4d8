package verify_test

import "testing"

// Settings that are said in two ways, amounts that are said again in other units, and
// what is told of a setting once.
func TestSnippetsOfSettings(t *testing.T) {
	runSnippets(t, []snippet{
		{"sponge", "oven on at a hundred and eighty, or a hundred and seventy-five if yours has got a fan in it", []string{"pair: a hundred and eighty, or a hundred and seventy-five if yours has got a fan | 180 °C / 160 °C fan / gas 4"}},
		{"sponge", "the oven goes to a hundred and sixty, or a hundred and eighty if it's a fan oven", []string{"pair: a hundred and sixty, or a hundred and eighty if it's a fan oven | 180 °C / 160 °C fan / gas 4"}},
		{"sponge", "gas mark four, so on an electric oven you want a hundred and fifty", []string{"pair: gas mark four, so on an electric oven you want a hundred and fifty | 180 °C / 160 °C fan / gas 4"}},
		{"sponge", "oven at 180, and in Fahrenheit that's 350", nil},
		{"sponge", "the oven's at one eighty, one sixty with the fan, gas six", []string{"pair: one sixty with the fan, gas six | 180 °C / 160 °C fan / gas 4"}},
		{"roast", "the oven at 200 degrees, or 180 if it's a fan", nil},
	})
}

func TestSnippetsOfConversions(t *testing.T) {
	runSnippets(t, []snippet{
		{"sponge", "two hundred and fifty grams of flour, that's about nine ounces", nil},
		{"sponge", "two hundred and fifty grams of flour, that's about nineteen ounces", []string{"pair: two hundred and fifty grams of flour, that's about nineteen ounces | 250 g"}},
		{"chili", "a pound and a half of ground turkey, which is about 700 grams", nil},
		{"chili", "a pound and a half of ground turkey, which is about 300 grams", []string{"pair: a pound and a half of ground turkey, which is about 300 grams | 1½ pounds"}},
	})
}
