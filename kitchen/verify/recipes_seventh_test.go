package verify_test

import "maps"

// The last recipes for short cuts.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"scotch": `Scotch Eggs

Makes 6

8 eggs
450g pork sausagemeat
150g black pudding
1 tbsp sage, chopped
½ tsp mace
60g plain flour
120g breadcrumbs
1.5 litres sunflower oil

1. Boil 6 of the eggs for 6 minutes, cool in iced water for 10 minutes and peel.
2. Mix the sausagemeat, black pudding, sage and mace and divide into 6.
3. Wrap each egg. Roll in the flour, the other 2 eggs, beaten, and the breadcrumbs. Chill for 25 minutes.
4. Heat the oil to 170C and fry three at a time for 9 minutes.
5. Drain and leave for 5 minutes.
`,
		"banana": `Banana Bread

Makes 1 loaf

3 very ripe bananas (about 350 g)
100 g butter, melted
150 g light brown sugar
2 eggs
1 tsp vanilla extract
220 g plain flour
1½ tsp baking powder
½ tsp bicarbonate of soda
1 tsp ground cinnamon
80 g walnuts
2 tbsp demerara sugar

Heat the oven to 180 °C (160 °C fan) and line a 900 g loaf tin.
Mash the bananas with the butter, brown sugar, eggs and vanilla.
Fold in the flour, baking powder, bicarbonate, cinnamon and walnuts.
Scrape into the tin, sprinkle with the demerara and bake for 55–60 minutes.
Cool in the tin for 15 minutes, then on a rack for 1 hour.
`,
		"enchiladas": `Green Chile Chicken Enchiladas

Serves 6

SAUCE
2 pounds tomatillos
4 jalapeños
1 white onion, quartered
3 cloves garlic
1 cup cilantro
1½ teaspoons kosher salt

FILLING
3 cups shredded chicken
8 ounces Monterey Jack cheese
½ cup sour cream
1 teaspoon cumin

12 corn tortillas
¼ cup vegetable oil
4 ounces cotija cheese

Broil the tomatillos, jalapeños, onion and garlic for 10 minutes, turning once. Blend with the cilantro and salt.
Mix the chicken, half of the Jack, the sour cream and the cumin.
Heat the oven to 400°F. Dip each tortilla in the hot oil for 5 seconds a side.
Fill, roll, and lay in a 9 x 13 inch dish. Pour over the sauce and top with the rest of the Jack.
Bake for 20 to 25 minutes. Rest for 10 minutes and top with the cotija.
`,
		"rillettes": `Pork Rillettes

Makes 4 jars

1.2 kg pork belly, in strips
25 g coarse salt
2 tsp peppercorns
4 sprigs thyme
6 cloves garlic
500 g duck fat
250 ml dry white wine
¼ tsp ground nutmeg

1. Rub the pork with the salt and chill for 12 hours.
2. Wipe it, put it in a pot with everything else and cook at 130 °C for 4 hours.
3. Lift out and shred. Stir in 150 ml of the fat.
4. Pack into jars, cover with 1 cm of fat and chill for 2 days before eating. Keeps for 3 weeks.
`,
		"kulfi": `Cardamom Kulfi

Makes 8

2 litres whole milk
180 g sugar
12 cardamom pods
60 g pistachios
½ tsp saffron
2 tbsp rice flour

Boil the milk with the cardamom and let it simmer for 1 hour 20 minutes, stirring often, until it is down to 900 ml.
Mix the rice flour with 4 tbsp cold milk, stir it in with the sugar and cook for 5 minutes.
Strain, stir in the saffron and chopped pistachios and cool for 2 hours.
Pour into moulds and freeze for 8 hours. Take out 5 minutes before serving.
`,
		"borscht": `Borscht

Serves 8

1 kg beef short ribs
3 litres water
3 beetroots (about 500 g)
2 carrots
1 large onion
300 g white cabbage
400 g potatoes
2 tbsp tomato paste
2 tbsp red wine vinegar
3 tbsp sunflower oil
2 bay leaves
4 cloves garlic
1 tbsp salt
200 g sour cream

1. Simmer the ribs in the water with the bay and salt for 2 hours, skimming.
2. Fry the onion and carrots in the oil for 8 minutes. Add the beetroot, vinegar and tomato paste and stew for 25 minutes.
3. Add the potatoes to the broth and boil for 10 minutes. Add the cabbage and the beetroot and cook for 15 minutes more.
4. Stir in the garlic, cover and leave for 30 minutes.
5. Serve with the sour cream. It is best after 24 hours.
`,
	})
}
