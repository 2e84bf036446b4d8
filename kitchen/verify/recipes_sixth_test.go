package verify_test

import "maps"

// Recipes for more short cuts, as people write them: with and without numbers,
// headings, degrees and spaces.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"fishpie": `Smoked Fish Pie

Serves 5

For the mash
1.1kg floury potatoes
60g butter
100ml milk

For the filling
500g smoked haddock
250g cod
600ml milk
2 bay leaves
50g butter
50g plain flour
150g frozen peas
3 eggs, hard boiled
1 tbsp chopped dill

Peel the potatoes and boil for 20 minutes. Mash with the butter and milk.

Poach the fish in the milk with the bay leaves for 8 minutes. Lift it out and flake it; keep the milk.

Melt the butter, stir in the flour and cook for 2 minutes. Whisk in the fishy milk and simmer for 4 minutes. Stir in the fish, peas, quartered eggs and dill.

Put into a 2 litre dish, top with the mash and bake at 200C/180C fan/gas 6 for 35 minutes.

Stand for 5 minutes.
`,
		"pancakes": `Overnight Sourdough Pancakes

Makes 14

SPONGE
1 cup sourdough starter
1¼ cups all-purpose flour
1 cup buttermilk
1 tablespoon sugar

BATTER
2 eggs
3 tablespoons melted butter
¾ teaspoon baking soda
½ teaspoon salt
1 cup blueberries

1. Mix the sponge, cover and leave on the counter for 10 to 12 hours.
2. Heat a griddle to 375°F.
3. Beat the eggs and butter into the sponge, then the baking soda and salt. Let it bubble for 5 minutes.
4. Pour on ¼ cup at a time, scatter with blueberries and cook for 3 minutes, until the edges are dry. Flip and cook for 90 seconds.
5. Keep warm in the oven at 200°F.
`,
		"stollen": `Christmas Stollen

Makes 2

Fruit
300 g raisins
100 g candied orange peel
60 ml dark rum

Dough
500 g plain flour
42 g fresh yeast
120 ml lukewarm milk
90 g sugar
200 g soft butter
1 egg
½ tsp cardamom
½ tsp salt
120 g chopped almonds
200 g marzipan

To finish
100 g butter, melted
150 g icing sugar

1. Soak the raisins and peel in the rum for 12 hours.
2. Crumble the yeast into the milk with 1 tsp of the sugar and leave for 15 minutes.
3. Knead in the flour, sugar, butter, egg, cardamom and salt for 10 minutes and let it rise for 1 hour.
4. Knead in the fruit and almonds. Roll out, lay a roll of marzipan in each and fold over. Let rise for 30 minutes.
5. Bake at 175 °C for 45 minutes. Brush with the melted butter while hot and dust with the icing sugar.
6. Wrap and keep for 2 weeks before cutting.
`,
		"tiramisu": `Tiramisu

Serves 8

5 egg yolks
120 g caster sugar
500 g mascarpone
3 egg whites
350 ml strong coffee
3 tbsp Marsala
30 savoiardi
2 tbsp cocoa powder

Whisk the yolks and sugar over simmering water for 6 minutes, until they reach 70 °C. Cool for 10 minutes.
Beat in the mascarpone. Whisk the whites for 3 minutes and fold them in.
Mix the coffee with the Marsala. Dip each biscuit for 2 seconds and line a 20 x 30 cm dish with half.
Spread with half the cream, repeat, and chill for 8 hours. Dust with the cocoa.
`,
		"jerk": `Jerk Chicken

Serves 6

2 kg chicken legs
2 tbsp allspice berries
1 tsp black peppercorns
4 Scotch bonnet chillies
6 spring onions
5 cloves garlic
30 g ginger
2 tbsp brown sugar
60 ml soy sauce
80 ml lime juice
2 tbsp vegetable oil
1 tbsp thyme leaves
2 tsp salt

Grind the allspice and peppercorns. Blend with everything but the chicken for 2 minutes.
Rub into the chicken and chill for 24 hours.
Light the barbecue and let it settle at 160 °C, about 40 minutes. Cook the chicken with the lid on for 50 minutes, turning every 10 minutes, until it reads 75 °C at the bone.
Rest for 10 minutes and chop.
`,
		"samosas": `Pea and Potato Samosas

Makes 20

Pastry
300 g plain flour
1 tsp salt
½ tsp ajwain seeds
80 ml oil
110 ml water

Filling
600 g potatoes
150 g peas
1 tbsp oil
1 tsp cumin seeds
2 tsp ground coriander
1 tsp garam masala
1 tsp amchoor
2 green chillies
20 g coriander leaves

1 litre oil, for frying

1. Rub the oil into the flour, salt and ajwain, bind with the water and rest for 30 minutes.
2. Boil the potatoes for 18 minutes and crush them. Fry the cumin in the oil for 30 seconds, add the spices, peas, chillies and potatoes and cook for 5 minutes. Stir in the coriander.
3. Divide the dough into 10, roll each to 15 cm and cut in half. Make cones, fill and seal.
4. Heat the oil to 150 °C and fry for 8 minutes, then raise it to 180 °C and fry for 2 minutes more.
`,
		"chowder": `Harbor Clam Chowder

Serves 6

4 ounces bacon, diced
2 tablespoons butter
1 large onion
2 ribs celery
¼ cup all-purpose flour
3 cups clam juice
1½ pounds Yukon Gold potatoes
2 teaspoons fresh thyme
1 bay leaf
3 cups chopped clams
1½ cups heavy cream
½ teaspoon white pepper

Cook the bacon for 7 minutes, until crisp. Take it out, add the butter, onion and celery and cook for 8 minutes.
Stir in the flour for 2 minutes. Whisk in the clam juice, add the potatoes, thyme and bay and simmer for 15 minutes.
Add the clams and cream and heat gently for 5 minutes, to 165°F. Do not boil.
Let stand for 30 minutes. Season with the pepper and scatter with the bacon.
`,
		"challah": `Honey Challah

Makes 1 large loaf

550g strong flour
8g instant yeast
9g salt
2 eggs
80g honey
60ml sunflower oil
190ml warm water
1 egg yolk
1 tbsp sesame seeds

METHOD
1. Mix everything but the yolk and seeds and knead for 12 minutes.
2. Prove for 1 hour 45 minutes.
3. Divide into 6 ropes of about 35cm and plait.
4. Prove for 50 minutes. Heat the oven to 180C/160C fan/gas 4.
5. Beat the yolk with 1 tsp water, brush, and scatter with the seeds.
6. Bake for 32–35 minutes, until it reads 90C inside. Cool for 1 hour.
`,
	})
}
