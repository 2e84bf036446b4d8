package speech_test

import "testing"

// Whose setting it is, and on which scale, on either side of the number. The ways of
// saying it are common practice, no source.
func TestWhoseSetting(t *testing.T) {
	runPhrases(t, []phrase{
		{"oven at 220 or 215 if yours has got a fan", []string{"220 = heat 220", "215 if yours has got a fan = heat 215 fan"}},
		{"200, or 220 if it's a fan oven", []string{"200 = heat 200", "220 if it's a fan oven = heat 220 fan"}},
		{"165, and if it's a fan oven that would be 160", []string{"165 = heat 165", "fan oven that would be 160 = heat 160 fan"}},
		{"190 degrees, the fan people do 185", []string{"190 degrees = heat 190", "fan people do 185 = heat 185 fan"}},
		{"one eighty, if you've a fan assisted one a hundred and sixty", []string{"one eighty = heat 180", "fan assisted one a hundred and sixty = heat 160 fan"}},
		{"oven at 220, on a fan oven two hundred", []string{"220 = heat 220", "fan oven two hundred = heat 200 fan"}},
		{"160 fan, 200 if you've no fan", []string{"160 fan = heat 160 fan", "200 if you've no fan = heat 200 conventional"}},
		{"oven at 200 with the fan on or 220 without", []string{"200 with the fan = heat 200 fan", "220 without = heat 220 conventional"}},
		{"180 without fan, 160 with.", []string{"180 without fan = heat 180 conventional", "160 with = heat 160 fan"}},
		{"160 with the fan, otherwise 180", []string{"160 with the fan = heat 160 fan", "otherwise 180 = heat 180 conventional"}},
		{"gas four, so on an electric oven you want a hundred and eighty", []string{"gas four = heat 4 gas", "electric oven you want a hundred and eighty = heat 180 conventional"}},
		{"a fan oven", nil},
	})
}

func TestWhichScale(t *testing.T) {
	runPhrases(t, []phrase{
		{"oven at two fifty, and in celsius that's a hundred and twenty", []string{"two fifty = heat 250", "celsius that's a hundred and twenty = heat 120 C"}},
		{"400 Fahrenheit, 200 for the celsius crowd", []string{"400 Fahrenheit = heat 400 F", "200 for the celsius = heat 200 C"}},
		{"180 celsius, three fifty in fahrenheit", []string{"180 celsius = heat 180 C", "three fifty in fahrenheit = heat 350 F"}},
		{"oven 180, that's 350 for my american friends", []string{"180 = heat 180", "350 for my american = heat 350 F"}},
		{"gas six, which is 200 in new money", []string{"gas six = heat 6 gas", "200 in new money = heat 200 C"}},
		{"it's a hundred and ninety which is three seventy five fahrenheit", []string{"a hundred and ninety = heat 190", "three seventy five fahrenheit = heat 375 F"}},
		{"I sold 200 in america", []string{"200 = count 200"}},
	})
}

// Numbers that are heats without saying so.
func TestBareHeats(t *testing.T) {
	runPhrases(t, []phrase{
		{"thermometer in the thigh, and the number you want to see is seventy four", []string{"seventy four = heat 74"}},
		{"trust the probe, you're pulling it at 52 in the middle", []string{"52 = heat 52"}},
		{"wait for the middle of it to read two hundred and three", []string{"two hundred and three = heat 203"}},
		{"in the oven, four and a quarter", []string{"four and a quarter = heat 425"}},
		{"four and a quarter cups", []string{"four and a quarter cups = measure 17/4 cup"}},
		{"Freeze at −18 °C", []string{"−18 °C = heat 18 C, below"}},
		{"cool it to 32C", []string{"32C = heat 32 C"}},
	})
}
