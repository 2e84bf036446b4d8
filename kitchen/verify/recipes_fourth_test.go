package verify_test

import "maps"

// Still more recipes for longer turns of talk.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"biryani": `Chicken Biryani

Serves 6–8

MARINADE
900g chicken thighs
250g thick yoghurt
2 tbsp ginger garlic paste
1½ tsp chilli powder
1 tsp turmeric
2 tsp garam masala

RICE
500g basmati rice
4 green cardamom pods
2 bay leaves
2 tbsp salt

TO LAYER
5 onions, sliced
200ml vegetable oil
60ml milk
½ tsp saffron
3 tbsp ghee
30g mint leaves

1. Mix the chicken with the rest of the marinade and leave in the fridge for 6 hours or overnight.
2. Fry the onions in the oil for 20 minutes, until brown and crisp.
3. Soak the rice for 30 minutes. Boil with the spices and salt for 6 minutes, until three quarters done, and drain.
4. Warm the milk and soak the saffron in it for 15 minutes.
5. Cook the chicken with half the onions for 12 minutes. Layer with the rice, the saffron milk, ghee, mint and the other onions.
6. Seal the lid and cook over a low heat for 25 minutes. Leave for 10 minutes before opening.
`,
		"shortbread": `Shortbread

Makes 18 fingers

250g slightly salted butter
125g caster sugar
300g plain flour
75g semolina
1 tbsp demerara sugar

1. Heat the oven to 160C/140C fan/gas 3.
2. Beat the butter and caster sugar until pale, about 2 minutes. Work in the flour and semolina.
3. Press into a 20cm x 30cm tin, prick all over and chill for 30 minutes.
4. Bake for 45–50 minutes, until pale gold. Sprinkle with the demerara.
5. Cut into 18 fingers while warm and cool for 40 minutes.
`,
		"focaccia": `Overnight Focaccia

Makes 1 tray

500g strong white flour
400g water (80%)
10g sea salt
4g instant yeast
60ml olive oil
2 sprigs rosemary
1 tsp flaky salt

1. Mix the flour, water, salt and yeast. Rest for 20 minutes, then fold. Repeat 3 times.
2. Chill for 18 hours.
3. Pour 3 tbsp of the oil into a 23 x 33cm tray, tip in the dough and prove for 2½ hours.
4. Heat the oven to 230C/210C fan/gas 8. Dimple, dress with the rest of the oil, the rosemary and the flaky salt.
5. Bake for 22 minutes. Cool for 15 minutes.
`,
		"prawns": `Salt and Pepper Prawns

Serves 2

350g raw king prawns
40g potato starch
1 tsp Sichuan pepper
1 tsp white pepper
2 tsp flaky salt
500ml groundnut oil
3 spring onions
2 red chillies
4 cloves garlic

1. Toast the peppercorns for 2 minutes and grind with the salt.
2. Toss the prawns with half the spice and the starch and leave for 5 minutes.
3. Heat the oil to 190C and fry the prawns for 90 seconds.
4. Fry the garlic, chillies and spring onions for 30 seconds, toss in the prawns and the rest of the spice.
`,
		"crumpets": `Sourdough Crumpets

Makes 8

270g sourdough discard
1 tsp caster sugar
½ tsp fine salt
½ tsp bicarbonate of soda
20g butter, for the rings

1. Stir the sugar and salt into the discard and leave for 10 minutes. Stir in the bicarbonate.
2. Heat a pan over a medium-low heat and butter four 9cm rings.
3. Fill the rings to 1.5cm and cook for 7 minutes, until set. Turn and cook for 2 minutes more.
`,
		"chutney": `Green Tomato Chutney

Makes 5 jars

1.5kg green tomatoes
500g onions
250g sultanas
400g light brown sugar
600ml malt vinegar
2 tsp mustard seeds
1 tbsp salt
50g ginger

1. Chop the tomatoes and onions, sprinkle with the salt and leave overnight.
2. Drain, put everything in a wide pan and dissolve the sugar over a low heat for 15 minutes.
3. Simmer for 1¾ hours, until a spoon leaves a trail for 3 seconds.
4. Pot while hot. Keep for 6 weeks before opening.
`,
	})
}
