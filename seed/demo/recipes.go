package demo

// recipes lists every recipe with its versions, oldest first.
func (m *maker) recipes() []Recipe {
	return []Recipe{
		{Key: "knots", Name: "Candle Point Knots", Versions: []Version{
			{Text: m.text("recipes/knots-v1.txt"), MadeOn: m.saturday(-2).AddDate(0, 0, -42)},
			{
				Text:   m.text("recipes/knots-v2.txt"),
				MadeOn: m.saturday(-2).AddDate(0, 0, -35),
				Note: "Fan was written as 150 °C beside 190 °C: forty degrees apart, and the knots came out pale. Now 170 °C fan. " +
					"Milk from 250 to 300 g, because the dough was tight. Butter goes in after five minutes, not at the start. " +
					"Caraway moved from the dough to the honey butter: you could not smell it.",
			},
			{
				Text:   m.text("recipes/knots-v3.txt"),
				MadeOn: m.saturday(-2).AddDate(0, 0, -28),
				Note: "300 g of milk was too much: knots sat down on the tray. Back to 270 g, which is 64 % milk and egg to flour. " +
					"Ten minutes' rest as balls, or the ropes spring back. A core temperature, because 'golden' fooled me twice.",
			},
		}},
		{Key: "pickles", Name: "Old Quern Fridge Pickles", Versions: []Version{
			{Text: m.text("recipes/pickles-v1.txt"), MadeOn: m.saturday(-1).AddDate(0, 0, -30)},
		}},
		{Key: "tart", Name: "Saint Ebble Plum Tart", Versions: []Version{
			{Text: m.text("recipes/tart-v1.txt"), MadeOn: m.saturday(0).AddDate(0, 0, -37)},
			{
				Text:   m.text("recipes/tart-v2.txt"),
				MadeOn: m.saturday(0).AddDate(0, 0, -27),
				Note: "Plums are roasted and drained: raw ones wept into the cream and the slice slid. " +
					"Cornflour from 30 to 40 g for 500 ml of milk, so that the cut stands. Plum juice goes into the glaze instead of down the sink.",
			},
		}},
		{Key: "custards", Name: "Thornholm Burnt-Sugar Custards", Versions: []Version{
			{Text: m.text("recipes/custard-v1.txt"), MadeOn: m.saturday(1).AddDate(0, 0, -46)},
			{
				Text:   m.text("recipes/custard-v2.txt"),
				MadeOn: m.saturday(1).AddDate(0, 0, -38),
				Note:   "Two yolks more: three eggs alone tore on turning out and tasted thin. Five minutes less in the oven.",
			},
			{
				Text:   m.text("recipes/custard-v3.txt"),
				MadeOn: m.saturday(1).AddDate(0, 0, -30),
				Note: "Oven twenty degrees lower and ten minutes longer: at 150 °C fan the water boiled and the custard had holes. " +
					"100 ml of the milk is now double cream. A core temperature of 80 °C, so that trembling is not the only sign.",
			},
		}},
		{Key: "stew", Name: "Wether Landing Lamb and Barley Stew", Versions: []Version{
			{Text: m.text("recipes/stew-v1.txt"), MadeOn: m.saturday(2).AddDate(0, 0, -32)},
		}},
		{Key: "fish", Name: "Lower Gannick Fish in Ale Batter", Versions: []Version{
			{Text: m.text("recipes/fish-v1.txt"), MadeOn: m.saturday(3).AddDate(0, 0, -33)},
		}},
		{Key: "soup", Name: "Tidewick Cold Cucumber Soup", Versions: []Version{
			{Text: m.text("recipes/soup-v1.txt"), MadeOn: m.saturday(0).AddDate(0, 0, -9)},
		}},
		{Key: "beans", Name: "Brindle Quay Bean Pot with a Corn Lid", Versions: []Version{
			{Text: m.text("recipes/beans-v1.txt"), MadeOn: m.saturday(0).AddDate(0, 0, -8)},
		}},
	}
}
