package verify_test

import "testing"

// Uses in parts, recaps and totals.
func TestSnippetsOfParts(t *testing.T) {
	runSnippets(t, []snippet{
		{"sponge", "half the sugar now, and the rest in a minute", nil},
		{"sponge", "A third of the flour, fold. Another third, fold. And the last third.", nil},
		{"sponge", "a hundred grams of the sugar first, then the other hundred grams", nil},
		{"sponge", "a hundred grams of the sugar first, then the other hundred and fifty grams of sugar", []string{"differs: hundred and fifty grams | 200 g"}},
		{"sponge", "start with a tablespoon of milk, then another two tablespoons", nil},
		{"sponge", "put a tablespoon of the milk in and see, you may not need all three tablespoons", nil},
		{"sponge", "three tablespoons of jam on this half and another three tablespoons on that half", nil},
		{"sponge", "So to recap, 225 butter, 200 sugar, four eggs, 250 flour.", nil},
		{"sponge", "so to recap that was two twenty five of butter two hundred of sugar five eggs and two fifty of flour", []string{"differs: five | 4"}},
		{"chili", "a cup of broth to start and the second cup later", nil},
		{"chili", "one tablespoon of chili powder now and one tablespoon at the end", nil},
		{"cookies", "half a cup of chips in the dough and a cup of chips on top", nil},
		{"cookies", "one stick of butter, then the second stick", nil},
		{"cookies", "flour in three goes so it doesn't fly everywhere", nil},
		{"sourdough", "hold back fifty grams of the water, and give it three hundred to start with", nil},
		{"sourdough", "three hundred of the water now and the last fifty with the salt", nil},
		{"roast", "half the butter under the skin, half over the top", nil},
		{"roast", "a teaspoon of salt on the bird, a teaspoon on the potatoes", nil},
		{"fudge", "keep back a pinch of salt for the top", nil},
		{"lasagne", "that's ninety grams of butter all together, thirty here and sixty in the sauce", nil},
		{"lasagne", "a quarter of the milk in, whisk, another quarter, whisk", nil},
		{"lasagne", "three hundred mil of milk in, whisk, then another three hundred, and the last three hundred", nil},
		{"lasagne", "fifty grams of the parmesan goes in and twenty five grams goes on top", nil},
		{"lasagne", "fifty grams of the parmesan goes in and fifty grams goes on top", []string{"differs: fifty grams | 75 g"}},
		{"pavlova", "add the sugar a tablespoon at a time", nil},
		{"pavlova", "a hundred and ten grams of the sugar, whisk, and then a hundred and ten more", nil},
		{"brisket", "half a cup of broth now and half a cup when it goes back on", nil},
		{"dal", "half a litre of water first and half a litre once it thickens", nil},
		{"jam", "half the sugar goes in, that's five hundred grams, and then the other half", nil},
		{"tacos", "keep two tablespoons of the flour back for dusting the fish", nil},
	})
}
