package verify_test

import "maps"

// Recipes for the second half of the short cuts: joints, sweets, pasta, ices.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"lamb": `Roast Leg of Lamb with Flageolets

Serves 8

Lamb
2.2 kg leg of lamb
6 cloves garlic, slivered
4 anchovies
3 sprigs rosemary
1 tbsp olive oil
1½ tsp salt
300 ml dry white wine

Beans
2 × 400 g tins flageolet beans
2 shallots
30 g butter
150 ml chicken stock
1 tbsp parsley, chopped

Method
1. Take the lamb out of the fridge 2 hours ahead. Make 24 slits, stuff with the garlic, anchovies and rosemary, and rub with the oil and salt.
2. Heat the oven to 230 °C / 210 °C fan / gas 8 and roast for 20 minutes.
3. Turn down to 180 °C / 160 °C fan / gas 4, pour in the wine and roast for 15 minutes per 500 g, about 1 hour 5 minutes, until the middle reads 58 °C.
4. Rest for 30 minutes under foil.
5. Fry the shallots in the butter for 6 minutes, add the beans and stock and simmer for 12 minutes. Stir in the parsley.
`,
		"toffee": `Treacle Toffee

Makes about 600 g

450 g dark brown sugar
125 ml water
¼ tsp cream of tartar
100 g black treacle
100 g golden syrup
1 tsp malt vinegar

1. Oil a 20 cm square tin.
2. Dissolve the sugar in the water over a low heat for 12 minutes. Do not stir once it boils.
3. Add the cream of tartar, treacle, syrup and vinegar and boil to 140 °C, which takes about 25 minutes.
4. Pour into the tin. After 10 minutes mark it into squares. Cool for 4 hours and break.
5. Keeps for 2 weeks in an airtight tin.
`,
		"ravioli": `Pea and Mint Ravioli

Serves 4

PASTA
300g 00 flour
3 eggs
1 tsp olive oil

FILLING
350g frozen peas
200g ricotta
60g pecorino, grated
15g mint leaves
1 egg yolk

SAUCE
80g butter
1 lemon, zest only

1. Work the flour, eggs and oil to a dough and knead for 10 minutes. Rest for 1 hour.
2. Boil the peas for 2 minutes, drain and blend with the ricotta, pecorino, mint and yolk. Chill for 30 minutes.
3. Roll the dough to 1mm, in four sheets. Set teaspoons of filling 4cm apart, cover and cut into 32 ravioli.
4. Boil for 3 minutes in salted water.
5. Melt the butter with the zest for 2 minutes and toss.
`,
		"gelato": `Pistachio Gelato

Makes 1 litre

150 g shelled pistachios
500 ml whole milk
200 ml double cream
130 g caster sugar
25 g milk powder
4 large egg yolks
¼ tsp salt

1. Roast the pistachios at 160 °C fan for 8 minutes and grind to a paste.
2. Warm the milk, cream and milk powder to 60 °C.
3. Whisk the yolks, sugar and salt for 2 minutes. Pour on the milk and cook, stirring, to 83 °C, about 10 minutes.
4. Stir in the paste, strain and chill for 8 hours.
5. Churn for 30 minutes and freeze for at least 4 hours. Take out 15 minutes before serving.
`,
		"cornbread": `Skillet Cornbread

Serves 8

1½ cups yellow cornmeal
1 cup all-purpose flour
2 tablespoons sugar
1 tablespoon baking powder
½ teaspoon baking soda
1 teaspoon kosher salt
1¾ cups buttermilk
2 eggs
6 tablespoons butter
2 jalapeños, chopped

1. Heat the oven to 425°F with a 10-inch skillet in it for 15 minutes.
2. Whisk the dry things. Whisk the buttermilk and eggs and stir them in. Let stand for 10 minutes. Fold in the jalapeños.
3. Melt the butter in the skillet, pour most of it into the batter and scrape the batter back into the skillet.
4. Bake for 20 to 22 minutes, until golden. Cool for 10 minutes.
`,
		"ceviche": `Bream Ceviche

Serves 4

400 g sea bream fillet
160 ml lime juice
1 red onion
1 red chilli
2 cm ginger
20 g coriander
1 sweet potato
1 tsp salt

1. Boil the sweet potato for 25 minutes, cool and slice.
2. Soak the onion in iced water for 10 minutes.
3. Cut the fish into 2 cm cubes and salt for 3 minutes.
4. Pour on the lime juice with the ginger and chilli and leave for 8 minutes.
5. Fold in the onion and coriander and serve at once.
`,
	})
}
