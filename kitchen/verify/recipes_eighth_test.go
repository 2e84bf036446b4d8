package verify_test

import "maps"

// Recipes for the longest of the short cuts.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"strudel": `Apple Strudel

Serves 8–10

Dough
250g strong flour
1 egg
30ml sunflower oil
110ml warm water
1 tsp vinegar

Filling
1.3kg sharp apples
90g caster sugar
1½ tsp cinnamon
70g raisins
3 tbsp rum
80g breadcrumbs
50g butter, for the crumbs
1 lemon

75g butter, melted, for brushing
icing sugar, to dust

1. Knead the flour, egg, oil, water and vinegar for 10 minutes. Oil the ball, cover and rest for 1 hour.
2. Soak the raisins in the rum for 30 minutes. Fry the crumbs in 50g butter for 5 minutes.
3. Peel and slice the apples 4mm thick and toss with the sugar, cinnamon, raisins and the juice of the lemon.
4. Heat the oven to 190C/170C fan/gas 5. On a floured cloth stretch the dough to 60cm by 80cm. Brush with half of the melted butter and scatter with the crumbs.
5. Lay the apples along one edge, roll up and brush with the rest of the butter.
6. Bake for 45–50 minutes. Cool for 20 minutes.
`,
		"ribs": `Sticky Oven Ribs

Feeds 4

2 racks baby back ribs, about 5 lb
¼ cup brown sugar
2 tbsp smoked paprika
1 tbsp kosher salt
2 tsp mustard powder
1 tsp cayenne
½ cup apple juice

Sauce
1 cup ketchup
⅓ cup molasses
¼ cup cider vinegar
2 tbsp Worcestershire sauce
4 cloves garlic

Pull the membrane off. Mix the sugar, paprika, salt, mustard powder and cayenne, rub it on and chill for 4 hours, or overnight.
Heat the oven to 300°F. Lay the ribs on foil, pour the apple juice over and seal. Bake for 2½ hours.
Simmer everything for the sauce for 15 minutes.
Open the foil, brush with sauce and bake at 425°F for 12 minutes, brushing every 4 minutes.
Rest for 10 minutes and cut.
`,
		"moussaka": `Moussaka

Serves 8

3 aubergines (about 1 kg)
90 ml olive oil
800 g minced lamb
2 onions, chopped
3 cloves garlic
1½ tsp ground cinnamon
1 tsp dried oregano
400 g tin chopped tomatoes
2 tbsp tomato puree
150 ml red wine
500 g potatoes

White sauce
70 g butter
70 g plain flour
800 ml milk
2 egg yolks
100 g kefalotyri, grated
¼ tsp nutmeg

1. Slice the aubergines 1 cm thick, brush with the oil and bake at 220 °C / 200 °C fan for 25 minutes.
2. Brown the lamb for 10 minutes. Add the onions and cook for 8 minutes, then the garlic, cinnamon and oregano for 1 minute.
3. Add the wine, tomatoes and puree and simmer for 35 minutes.
4. Boil the potatoes for 12 minutes and slice.
5. Melt the butter, cook the flour in it for 2 minutes, whisk in the milk and simmer for 5 minutes. Off the heat beat in the yolks, half the cheese and the nutmeg.
6. Layer potatoes, aubergines and lamb in a 25 x 35 cm dish, pour over the sauce and scatter with the other half of the cheese.
7. Bake at 180 °C / 160 °C fan for 45 minutes. Leave for 30 minutes before cutting.
`,
		"sourcherry": `Sour Cherry Clafoutis

Serves 6

450 g sour cherries
4 eggs
120 g sugar
90 g plain flour
300 ml milk
150 ml cream
1 tbsp kirsch
¼ tsp almond extract
15 g butter, for the dish

Heat the oven to 185 °C / 165 °C fan and butter a 24 cm dish.
Whisk the eggs and sugar for 2 minutes, then whisk in the flour, milk, cream, kirsch and almond extract. Rest for 30 minutes.
Scatter the cherries in the dish, pour the batter over and bake for 38–42 minutes, until puffed.
Cool for 15 minutes.
`,
	})
}
