package verify_test

import "maps"

// Recipes for longer turns of talk.
func init() {
	maps.Copy(snippetRecipes, map[string]string{
		"pie": `Chicken and Leek Pie

Serves 6

FILLING
1 kg chicken thighs, boneless
3 leeks, sliced
60g butter
50g plain flour
450ml chicken stock
150ml double cream
2 tsp wholegrain mustard
1 tbsp chopped tarragon

PASTRY
300g plain flour
150g cold butter
½ tsp salt
5 tbsp ice-cold water
1 egg, beaten

METHOD
1. Poach the chicken in the stock for 25 minutes, then lift out and shred.
2. Sweat the leeks in the butter for 15 minutes. Stir in the flour and cook for 2 minutes.
3. Pour in the stock a ladle at a time, simmer for 5 minutes, then stir in the cream, mustard, tarragon and chicken. Leave to cool for 45 minutes.
4. Rub the butter into the flour and salt, bring together with the water and chill for 30 minutes.
5. Heat the oven to 200C/180C fan/gas 6.
6. Fill a 26cm pie dish, cover with the pastry, brush with the egg and bake for 40–45 minutes, until golden.
7. Stand for 10 minutes.
`,
		"brownies": `Rye Brownies

Makes 16 squares

200g dark chocolate
180g butter
275g light muscovado sugar
3 eggs
120g rye flour
30g cocoa powder
1 tsp instant coffee
½ tsp fine salt
100g pecans

1. Heat the oven to 170C/150C fan/gas 3 and line a 23cm square tin.
2. Melt the chocolate and butter over simmering water.
3. Whisk the eggs and sugar for 4 minutes, until thick.
4. Fold in the chocolate, then the rye flour, cocoa, coffee and salt, and last the pecans.
5. Bake for 24–26 minutes, until there is a wobble in the middle.
6. Cool for 1 hour in the tin, chill for 2 hours and cut into 16 squares.
`,
		"gumbo": `Chicken and Sausage Gumbo

Serves 8

¾ cup vegetable oil
1 cup all-purpose flour
2 onions, chopped
3 celery stalks, chopped
1 green bell pepper, chopped
5 cloves garlic
1 tablespoon Cajun seasoning
8 cups chicken stock
2 bay leaves
1 pound andouille sausage
2 pounds chicken thighs
2 cups long-grain rice

1. Cook the oil and flour over medium heat for 35 minutes, stirring, until the roux is dark brown.
2. Add the onions, celery and pepper and cook for 8 minutes. Add the garlic and seasoning for 1 minute.
3. Whisk in the stock, add the bay leaves and chicken and simmer for 1 hour.
4. Brown the sausage for 6 minutes and add it. Simmer for 30 minutes more.
5. Cook the rice in 4 cups water for 18 minutes, then let it steam for 10 minutes.
`,
		"marmalade": `Seville Marmalade

Makes 7 jars

1 kg Seville oranges
1 lemon
2.2 litres water
2 kg granulated sugar

1. Halve the oranges and lemon, juice them and shred the peel.
2. Simmer the peel in the water for 2 hours with the pips in a muslin.
3. Warm the sugar in the oven at 120C for 10 minutes, stir it in and let it dissolve for 15 minutes.
4. Boil hard for 20–25 minutes, until it reaches 104.5C.
5. Leave for 20 minutes before potting, so that the peel does not rise.
`,
		"gnocchi": `Ricotta Gnocchi with Brown Butter

Serves 4 as a starter

400g ricotta
2 egg yolks
80g parmesan, grated
110g 00 flour
¼ tsp nutmeg
90g butter
12 sage leaves
1 lemon

1. Drain the ricotta in a sieve for 1 hour.
2. Mix with the yolks, parmesan, flour and nutmeg and chill for 20 minutes.
3. Roll into ropes 2cm thick and cut into 2.5cm pieces.
4. Boil for 2–3 minutes, until they float.
5. Brown the butter for 5 minutes with the sage, squeeze in half the lemon and toss.
`,
	})
}
