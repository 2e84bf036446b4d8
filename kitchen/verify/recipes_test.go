package verify_test

// The recipes that the snippets are checked against: our own inventions, each in
// another house's measures.
var snippetRecipes = map[string]string{
	"sponge": `Honey Sponge

Serves 10

Sponge
225 g soft butter
200 g caster sugar
4 large eggs
250 g self-raising flour
2 tsp baking powder
3 tbsp milk

Filling
150 ml double cream
6 tbsp raspberry jam

Method
1. Heat the oven to 180 °C / 160 °C fan / gas 4 and line two 20 cm tins.
2. Beat the butter and sugar for 5 minutes, until pale. Beat in the eggs one at a time.
3. Fold in the flour and baking powder, then loosen with the milk.
4. Divide between the tins and bake for 25 minutes, until a skewer comes out clean.
5. Cool in the tins for 10 minutes, then on a rack for 1 hour.
6. Whip the cream, spread it over with the jam, and sandwich.
`,
	"chili": `Weeknight Turkey Chili

Serves 6

2 tablespoons olive oil
1 large yellow onion, diced
3 cloves garlic, minced
1½ pounds ground turkey
2 tablespoons chili powder
2 teaspoons ground cumin
1 teaspoon kosher salt
1 (28-ounce) can crushed tomatoes
2 (15-ounce) cans black beans, drained
2 cups chicken broth
½ cup sour cream

1. Heat the oil in a Dutch oven over medium heat. Cook the onion for 6 to 8 minutes, until soft. Add the garlic and cook for 30 seconds.
2. Add the turkey and cook for 10 minutes, until browned.
3. Stir in the chili powder, cumin and salt and toast for 1 minute.
4. Add the tomatoes, beans and broth. Simmer for 45 minutes.
5. Let stand for 15 minutes, then serve with the sour cream.
`,
	"cookies": `Dark Chip Cookies

Makes 24 cookies

2¼ cups all-purpose flour
1 teaspoon baking soda
½ teaspoon salt
1 cup unsalted butter
¾ cup granulated sugar
1 cup packed brown sugar
2 teaspoons vanilla extract
2 large eggs
1½ cups chocolate chips

1. Beat the butter and both sugars for 3 minutes, until fluffy. Beat in the eggs and vanilla.
2. Stir in the flour, baking soda and salt, then the chocolate chips.
3. Chill the dough for 2 hours.
4. Preheat the oven to 375°F. Scoop the dough into balls, 2 inches apart.
5. Bake for 9 to 11 minutes, until the edges are golden.
6. Cool on the sheet for 5 minutes.
`,
	"sourdough": `Pot Loaf

Makes 1 loaf

450 g strong white flour
50 g rye flour
350 g water
100 g active starter
10 g fine salt

Method
1. Mix the flours and the water and leave for 45 minutes.
2. Add the starter and salt. Stretch and fold 4 times, 30 minutes apart.
3. Leave to prove for 5 hours, until half as big again.
4. Shape, and chill in the fridge for 12–16 hours.
5. Heat the oven to 250 °C with the pot in it.
6. Bake with the lid on for 20 minutes. Turn the oven down to 220 °C, take off the lid and bake for 25 minutes more, until the middle reads 97 °C.
7. Cool for 2 hours before slicing.
`,
	"roast": `Sunday Chicken

Serves 4

1 chicken, 1.8 kg
40 g butter, soft
1 lemon
4 cloves garlic
800 g potatoes, quartered
2 tbsp olive oil
2 tsp flaky salt
300 ml chicken stock

1. Take the chicken out of the fridge 1 hour before.
2. Heat the oven to 200 °C (180 °C fan). Rub the chicken with the butter and the salt and put the lemon and garlic inside.
3. Toss the potatoes with the oil, put them round the chicken and roast for 1 hour 20 minutes, until the thigh reads 75 °C.
4. Rest the chicken for 20 minutes.
5. Pour the stock into the tin and boil for 4 minutes to make a gravy.
`,
	"fudge": `Sea Salt Fudge

Makes 36 squares

450 g granulated sugar
100 g butter
170 ml evaporated milk
150 ml whole milk
1 tsp sea salt
1 tsp vanilla paste

1. Line a 18 cm square tin.
2. Melt the sugar, butter and both milks over a low heat for 10 minutes.
3. Boil until it reaches 116 °C, about 15 minutes.
4. Leave for 5 minutes, then beat in the salt and vanilla for 8 minutes, until thick.
5. Pour into the tin and leave to set for 3 hours. Cut into 36 squares.
`,
	"dal": `Coconut Dal

Serves 4

250 g red lentils
1 litre water
1 tsp turmeric
400 ml tin coconut milk
3 tbsp ghee
2 tsp cumin seeds
1 tsp mustard seeds
12 curry leaves
2 green chillies
1½ tsp salt

1. Rinse the lentils, soak for 20 minutes and drain.
2. Simmer them in the water with the turmeric for 25 minutes. Skim off the foam.
3. Stir in the coconut milk and salt and simmer for 10 minutes more.
4. Heat the ghee and fry the cumin and mustard seeds for 30 seconds, add the curry leaves and chillies and pour over the dal.
`,
	"tacos": `Beer Battered Fish Tacos

Serves 4

Fish
600 g cod fillet, in strips
150 g plain flour
50 g cornflour
1 tsp baking powder
220 ml cold lager
1 litre sunflower oil, for frying

Slaw
½ white cabbage, shredded
2 limes
100 g mayonnaise
3 tbsp chipotle paste
8 small tortillas

1. Whisk the flour, cornflour, baking powder and lager to a batter and rest for 15 minutes.
2. Mix the cabbage with the juice of 1 lime and leave for 10 minutes. Stir the mayonnaise into the chipotle paste.
3. Heat the oil to 180 °C. Dip the fish in the batter and fry in batches for 4 minutes.
4. Warm the tortillas for 20 seconds a side, and fill them.
`,
	"jam": `Plum Jam

Makes 6 jars

1.5 kg plums, halved
1 kg jam sugar
2 lemons, juiced
250 ml water
1 cinnamon stick

1. Simmer the plums with the water and the cinnamon for 20 minutes, until soft.
2. Add the sugar and lemon juice and stir over a low heat for 10 minutes, until it has dissolved.
3. Boil hard for 12 minutes, until it reaches 105 °C.
4. Leave for 15 minutes, then pour into hot jars.
`,
	"lasagne": `Sunday Lasagne

Serves 8

Ragu
30 g butter
500 g minced beef
250 g minced pork
2 carrots, finely chopped
2 sticks celery, finely chopped
200 ml red wine
2 × 400 g tins chopped tomatoes

White sauce
60 g butter
60 g plain flour
900 ml whole milk
75 g parmesan, grated

To assemble
300 g lasagne sheets
250 g mozzarella, torn

1. Fry the carrots and celery in the butter for 10 minutes. Add the beef and pork and brown for 12 minutes.
2. Add the wine and boil for 3 minutes, then add the tomatoes and simmer for 1½ hours.
3. For the sauce, melt the butter, stir in the flour and cook for 2 minutes. Whisk in the milk and simmer for 8 minutes, then stir in the parmesan.
4. Layer the ragu, the sheets and the sauce in a 30 cm dish and top with the mozzarella.
5. Bake at 190 °C / 170 °C fan for 40 minutes, until it bubbles. Leave for 15 minutes before cutting.
`,
	"pavlova": `Passionfruit Pavlova

Serves 8

4 egg whites
220 g caster sugar
2 tsp cornflour
1 tsp white vinegar
300 ml thickened cream
2 tablespoons icing sugar
6 passionfruit

1. Preheat the oven to 150 °C (130 °C fan).
2. Whisk the whites for 4 minutes, then whisk in the caster sugar, a spoonful at a time, for 8 minutes more. Fold in the cornflour and vinegar.
3. Shape into a 22 cm circle and bake for 1¼ hours.
4. Turn off the oven and leave it inside for 3 hours.
5. Whip the cream with the icing sugar and top with the passionfruit.
`,
	"brisket": `Smoked Brisket

Serves 12

1 brisket, about 10 lb
¼ cup coarse black pepper
¼ cup kosher salt
2 tbsp garlic powder
1 cup beef broth
½ cup apple cider vinegar

1. Trim the fat to ¼ inch. Rub with the pepper, salt and garlic powder and chill overnight.
2. Heat the smoker to 250 °F.
3. Smoke for 6 hours, until it reads 165 °F in the middle, and spritz with the vinegar every 45 minutes.
4. Wrap it with the broth and smoke for 4 to 5 hours more, until it reads 203 °F.
5. Rest for 2 hours, then slice.
`,
}
