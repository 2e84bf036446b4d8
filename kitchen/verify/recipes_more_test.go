package verify_test

import "maps"

// More recipes for the snippets: oven and hob, sweet and salt, metric, American
// and Australian.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"bagels": `Seeded Bagels

Makes 8

500 g strong white flour
7 g instant yeast
10 g salt
20 g malt extract
290 ml warm water
1 egg white
40 g mixed seeds

Poaching
2 litres water
1 tbsp bicarbonate of soda

1. Mix the flour, yeast, salt, malt and 290 ml warm water and knead for 12 minutes.
2. Prove for 1½ hours, until doubled.
3. Divide into 8 pieces of 100 g each, shape into rings and rest for 20 minutes.
4. Heat the oven to 220 °C / 200 °C fan / gas 7. Bring the 2 litres of water to the boil with the bicarbonate.
5. Poach the bagels for 1 minute on each side.
6. Brush with the egg white, scatter over the seeds and bake for 22–25 minutes.
7. Cool on a rack for 30 minutes.
`,
		"ramen": `Miso Pork Ramen

Serves 2

Broth
1 litre chicken stock
3 tbsp white miso
1 tbsp soy sauce
2 cm ginger, sliced

Pork
400 g pork belly
2 tbsp mirin
1 tbsp soy sauce

Bowls
200 g ramen noodles
2 eggs
4 spring onions
100 g sweetcorn

1. Rub the pork with the mirin and soy and marinate for 2 hours.
2. Roast the pork at 160 °C / 140 °C fan for 1 hour 45 minutes. Rest it for 10 minutes and slice.
3. Simmer the stock with the ginger for 15 minutes, then whisk in the miso and soy.
4. Boil the eggs for 6½ minutes and cool in iced water for 5 minutes.
5. Cook the noodles for 3 minutes.
6. Fill two bowls and top with the spring onions and sweetcorn.
`,
		"shortcakes": `Peach Shortcakes

Makes 6

2 cups all-purpose flour
¼ cup sugar
1 tablespoon baking powder
½ teaspoon kosher salt
6 tablespoons cold butter
⅔ cup buttermilk
4 peaches, sliced
1 tablespoon lemon juice
3 tablespoons brown sugar
1 cup heavy cream

1. Heat the oven to 425°F.
2. Whisk the flour, sugar, baking powder and salt, cut in the butter and stir in the buttermilk.
3. Pat the dough out 1 inch thick and cut into 6 rounds with a 3-inch cutter.
4. Bake for 14 to 16 minutes, until golden. Cool for 15 minutes.
5. Toss the peaches with the lemon juice and brown sugar and let sit for 30 minutes.
6. Whip the cream, split the shortcakes and fill.
`,
		"stroganoff": `Mushroom Stroganoff

Serves 4

50 g butter
1 large onion, finely sliced
600 g chestnut mushrooms, sliced
2 cloves garlic
1 tbsp sweet smoked paprika
150 ml white wine
250 ml vegetable stock
1 tbsp Dijon mustard
200 g soured cream
350 g tagliatelle

1. Melt half the butter and fry the onion for 12 minutes.
2. Add the rest of the butter and the mushrooms and fry for 10 minutes, until browned.
3. Add the garlic and paprika for 1 minute, then the wine, and boil for 2 minutes.
4. Add the stock and mustard and simmer for 8 minutes.
5. Cook the tagliatelle for 9 minutes.
6. Off the heat stir in the soured cream.
`,
		"icecream": `Brown Bread Ice Cream

Serves 6

100 g wholemeal breadcrumbs
75 g light brown sugar
300 ml double cream
250 ml whole milk
5 egg yolks
90 g caster sugar
1 tbsp dark rum

1. Heat the oven to 190 °C / 170 °C fan. Toss the breadcrumbs with the brown sugar and bake for 15 minutes, stirring every 5 minutes.
2. Heat the milk and cream to 70 °C.
3. Whisk the yolks with the caster sugar for 3 minutes, pour on the milk and cook gently to 82 °C.
4. Chill for at least 4 hours.
5. Churn for 25 minutes, add the rum and the crumbs and freeze for 6 hours.
`,
		"anzac": `Oat Biscuits

Makes about 30

1 cup rolled oats
1 cup plain flour
1 cup desiccated coconut
¾ cup brown sugar
125 g butter
2 tablespoons golden syrup
1 teaspoon bicarbonate of soda
2 tablespoons boiling water

1. Preheat the oven to 160 °C (140 °C fan-forced).
2. Mix the oats, flour, coconut and sugar.
3. Melt the butter and golden syrup over a low heat. Mix the bicarbonate with the boiling water, add it and stir in the dry things.
4. Roll level tablespoons into balls and set 5 cm apart.
5. Bake for 18 minutes. Cool on trays for 5 minutes, then on racks.
`,
		"rendang": `Beef Rendang

Serves 6

1 kg beef shin, in chunks
2 × 400 ml tins coconut milk
3 stalks lemongrass
5 cm galangal
6 dried red chillies
8 shallots
5 cloves garlic
60 g desiccated coconut
2 tbsp tamarind paste
1 tbsp palm sugar
4 lime leaves

1. Toast the coconut in a dry pan for 6 minutes, until golden, and grind it.
2. Blend the chillies, shallots, garlic and galangal and fry for 8 minutes.
3. Add the beef, coconut milk, lemongrass and lime leaves and simmer uncovered for 2½ hours.
4. Stir in the toasted coconut, tamarind and palm sugar and cook for 30 minutes more, stirring often.
`,
		"pizza": `Long Dough Pizza

Makes 4

Dough
600 g 00 flour
390 g cold water
15 g salt
1 g instant yeast

Topping
400 g tin plum tomatoes
250 g mozzarella
2 tbsp olive oil
16 basil leaves

1. Mix the dough and knead for 8 minutes. Rest for 30 minutes.
2. Divide into 4 balls of 250 g and chill for 48 hours.
3. Take out 3 hours before baking.
4. Heat the oven with a stone to 250 °C for 1 hour.
5. Crush the tomatoes with 1 tsp of the oil. Stretch each ball to 28 cm.
6. Bake for 7 minutes, turning once.
`,
		"kimchi": `Quick Kimchi

Makes 2 jars

1 Chinese cabbage, about 1 kg
50 g coarse salt
5 spring onions
30 g ginger, grated
6 cloves garlic
4 tbsp gochugaru
2 tbsp fish sauce
1 tsp sugar

1. Cut the cabbage into 4 cm pieces, rub with the salt and leave for 2 hours, turning every 30 minutes.
2. Rinse three times and drain for 15 minutes.
3. Mix the spring onions, ginger, garlic, gochugaru, fish sauce and sugar and rub into the cabbage.
4. Pack into jars and leave at room temperature for 2 days, then chill for 5 days.
`,
		"hotcross": `Spiced Fruit Buns

Makes 12

Dough
500 g strong white flour
75 g caster sugar
2 tsp mixed spice
10 g fast-action yeast
300 ml whole milk
50 g butter
1 egg
150 g sultanas
80 g mixed peel

Crosses
75 g plain flour
5 tbsp water

Glaze
2 tbsp apricot jam

1. Warm the milk and butter. Mix with the flour, sugar, spice, yeast and egg and knead for 10 minutes.
2. Prove for 1½ hours, then work in the sultanas and peel.
3. Divide into 12, shape, and prove for 1 hour.
4. Heat the oven to 220 °C / 200 °C fan. Mix the flour and water for the crosses and pipe them on.
5. Bake for 20 minutes.
6. Brush with the warm jam while hot.
`,
	})
}
