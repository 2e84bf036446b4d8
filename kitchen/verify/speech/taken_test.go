package speech_test

import "testing"

// What the speaker takes back is struck; what is said instead stands.
func TestTakenBack(t *testing.T) {
	runPhrases(t, []phrase{
		{"that's one teaspoon, no hang on, where's my bit of paper, it's two teaspoons", []string{"one teaspoon = measure 1 tsp, struck", "two teaspoons = measure 2 tsp"}},
		{"a teaspoon, no, listen to me, that's not right, it's a tablespoon", []string{"a teaspoon = measure 1 tsp, struck", "a tablespoon = measure 1 tbsp"}},
		{"eighteen hours no what am I saying eight hours", []string{"eighteen hours = time 1080 h, struck", "eight hours = time 480 h"}},
		{"a pound of butter, just kidding, 150 grams", []string{"a pound = measure 1 lb, struck", "150 grams = measure 150 g"}},
		{"did I say three hundred grams? Two hundred grams.", []string{"three hundred grams = measure 300 g, struck", "Two hundred grams = measure 200 g"}},
		{"and I say five teaspoons of cayenne, and a cup of sugar", []string{"five teaspoons = measure 5 tsp", "a cup = measure 1 cup"}},
		{"eggs, eleven. No! Twelve eggs.", []string{"eleven = count 11, struck", "Twelve = count 12"}},
		{"one teaspoon, two teaspoons", []string{"one teaspoon = measure 1 tsp, struck", "two teaspoons = measure 2 tsp"}},
		{"two hundred... two hundred and twenty five", []string{"two hundred = count 200, struck", "two hundred and twenty five = count 225"}},
	})
}

// What is said of an amount besides its unit.
func TestWaysOfMeasuring(t *testing.T) {
	runPhrases(t, []phrase{
		{"flour one seven five", []string{"one seven five = count 175"}},
		{"one, two, three and lift", []string{"one = count 1, struck", "two = count 2, struck", "three = count 3"}},
		{"a fortnight", []string{"a fortnight = time 20160 fortnight"}},
		{"a twelve pounder", []string{"twelve pounder = measure 12 lb"}},
		{"eighty dekas", []string{"eighty dekas = measure 800 g"}},
		{"two deci", []string{"two deci = measure 200 ml"}},
		{"butter, the whole stick", []string{"whole stick = measure 1 stick"}},
		{"two ribs of celery", []string{"two ribs = measure 2 stalk"}},
		{"smoke the ribs, two racks", []string{"two = count 2"}},
		{"milk two fifty teaspoon of mustard", []string{"two fifty = count 250", "teaspoon = measure 1 tsp"}},
		{"oranges, two, squeeze", []string{"two = count 2"}},
		{"slake it in a cup", nil},
		{"stir in a cup of milk", []string{"a cup = measure 1 cup"}},
		{"seven euros a litre", nil},
		{"taller by half an inch", nil},
		{"a basin that holds two litres", []string{"two litres = room 2 l"}},
		{"a 1.2 litre pudding basin", []string{"1.2 litre = room 6/5 l"}},
		{"a nine by thirteen dish", []string{"nine = length 9", "thirteen = length 13"}},
		{"cut it six by six", []string{"six = count 6", "six = count 6"}},
		{"twenty minutes a pound", []string{"twenty minutes a pound = time 20 min"}},
	})
}
