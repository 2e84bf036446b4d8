package verify_test

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify"
)

// turn is a longer stretch of talk. What it says, by the beginning of the line or
// a part of the step, must not be found unsaid.
type turn struct {
	recipe, said string
	says         []string
	want         []string
}

func runTurns(t *testing.T, all []turn) {
	t.Helper()
	var sum tally
	for _, s := range all {
		t.Run(s.recipe+"/"+s.said[:40], func(t *testing.T) {
			r := read(snippetRecipes[s.recipe])
			var got []string
			for _, f := range checker.Check(r, captions(s.said)).Findings {
				if f.Kind != verify.NotSaid {
					got = append(got, worded(f))
					continue
				}
				for _, line := range s.says {
					if strings.HasPrefix(f.Line, line) {
						t.Errorf("%s is said: %s", f.Written, f.Line)
					}
				}
			}
			if diff := cmp.Diff(s.want, got); diff != "" {
				t.Logf("%s\n(-want +got):\n%s", s.said, diff)
			}
			sum.add(compared(got, s.want))
		})
	}
	t.Logf("stretches: %v", sum)
	if !sum.meets(shortFound, shortFalse) {
		t.Errorf("stretches: %v", sum)
	}
}

func TestTurns(t *testing.T) {
	runTurns(t, []turn{
		{"pie", "Right, chicken thighs. A kilo of them, boneless, and they go into the stock, and the stock's four hundred and fifty mil. - Is that hot? - It will be. Twenty five minutes, and then you fish them out.",
			[]string{"1 kg chicken", "450ml", "Poach"}, nil},
		{"pie", "Right, chicken thighs. A kilo of them, boneless, and they go into the stock, and the stock's six hundred and fifty mil. - Is that hot? - It will be. Thirty five minutes, and then you fish them out.",
			[]string{"1 kg chicken", "450ml", "Poach"}, []string{"differs: six hundred and fifty mil | 450ml", "differs: Thirty five minutes | 25 minutes"}},
		{"pie", "so leeks three of them sliced up and don't do what i did when i was nineteen which is not wash them because you get a mouthful of norfolk and they go in the butter that's sixty grams and you sweat them down for fifteen minutes with the lid on",
			[]string{"3 leeks", "60g butter", "Sweat"}, nil},
		{"pie", "so leeks five of them sliced up and don't do what i did when i was nineteen which is not wash them because you get a mouthful of norfolk and they go in the butter that's sixty grams and you sweat them down for twenty five minutes with the lid on",
			[]string{"3 leeks", "60g butter", "Sweat"}, []string{"differs: five | 3", "differs: twenty five minutes | 15 minutes"}},
		{"pie", "Then the flour. Fifty grams. Stir it round for a couple of minutes or it'll taste of glue. Now the cream, a hundred and fifty mil, and the mustard, two teaspoons of the grainy one, and tarragon. How much tarragon? A tablespoon, chopped.",
			[]string{"50g plain", "150ml", "2 tsp whole", "1 tbsp chopped"}, nil},
		{"pie", "Then the flour. Ninety grams. Stir it round for a couple of minutes or it'll taste of glue. Now the cream, a hundred and fifty mil, and the mustard, two tablespoons of the grainy one.",
			[]string{"50g plain", "150ml", "2 tsp whole"}, []string{"differs: Ninety grams | 50g", "differs: two tablespoons | 2 tsp (unit)"}},
		{"pie", "pastry then and it's twice as much flour as butter so three hundred of flour and a hundred and fifty of butter cold and a half teaspoon of salt and then it's five tablespoons of water and i mean ice cold and then into the fridge with you half an hour",
			[]string{"300g plain", "150g cold", "½ tsp", "5 tbsp", "Rub"}, nil},
		{"pie", "pastry then so three hundred of flour and two hundred and fifty of butter cold and a half teaspoon of salt and then it's five tablespoons of water and i mean ice cold and then into the fridge with you an hour and a half",
			[]string{"300g plain", "150g cold", "½ tsp", "5 tbsp", "Rub"}, []string{"differs: two hundred and fifty | 150g", "differs: an hour and a half | 30 minutes"}},
		{"pie", "The pie dish is my grandmother's. It's twenty six centimetres, it's got a chip in it, and it's been to three funerals. On with the lid, brush it with the egg, and into the oven. Two hundred, one eighty fan, gas six. It'll take forty to forty five minutes.",
			[]string{"Heat the oven", "Fill a"}, nil},
		{"pie", "On with the lid, brush it with the egg, and into the oven. Two twenty, one eighty fan, gas six. It'll take fifty to fifty five minutes.",
			[]string{"Heat the oven", "Fill a"}, []string{"pair: Two twenty, one eighty fan | 200C/180C fan/gas 6", "differs: fifty to fifty five minutes | 40–45 minutes"}},
		{"pie", "it stands for ten minutes and i know you won't but i'm telling you it stands for ten minutes and it serves six or it serves my brother and a dog",
			[]string{"Stand"}, nil},
		{"pie", "i had a pie in 1999 in a pub with no roof for four pounds fifty and i've been trying to make it ever since so this is attempt two hundred",
			nil, nil},
		{"brownies", "Chocolate, 200 grams, the darkest you can stand. Butter, 180. They sit over the pan and melt while you do the eggs, and there are three of those.",
			[]string{"200g dark", "180g butter", "3 eggs"}, nil},
		{"brownies", "Chocolate, 300 grams, the darkest you can stand. Butter, 180. They sit over the pan and melt while you do the eggs, and there are five of those.",
			[]string{"200g dark", "180g butter", "3 eggs"}, []string{"differs: 300 grams | 200g", "differs: five | 3"}},
		{"brownies", "sugar now light muscovado and you'll look at it and think that is obscene it's two hundred and seventy five grams and it goes in with the eggs and you whisk it for four minutes",
			[]string{"275g", "Whisk"}, nil},
		{"brownies", "sugar now light muscovado and you'll look at it and think that is obscene it's three hundred and seventy five grams and it goes in with the eggs and you whisk it for fourteen minutes",
			[]string{"275g", "Whisk"}, []string{"differs: three hundred and seventy five grams | 275g", "differs: fourteen minutes | 4 minutes"}},
		{"brownies", "Rye flour. Why rye? Because I bought twenty five kilos of it by mistake. A hundred and twenty grams of that, thirty grams of cocoa, and a teaspoon of coffee, the instant stuff.",
			[]string{"120g rye", "30g cocoa", "1 tsp instant"}, nil},
		{"brownies", "Rye flour. Why rye? Because I bought twenty five kilos of it by mistake. A hundred and twenty grams of that, three hundred grams of cocoa, and a tablespoon of coffee, the instant stuff.",
			[]string{"120g rye", "30g cocoa", "1 tsp instant"}, []string{"differs: three hundred grams | 30g (tenfold)", "differs: a tablespoon | 1 tsp (unit)"}},
		{"brownies", "it's a twenty three centimetre tin square lined and your oven's at one seventy or one fifty if it blows and they get twenty four to twenty six minutes and no more i beg you",
			[]string{"Heat the oven", "Bake"}, nil},
		{"brownies", "it's a thirty three centimetre tin square lined and your oven's at one seventy or one sixty if it blows and they get thirty four to thirty six minutes and no more i beg you",
			[]string{"Heat the oven", "Bake"}, []string{"differs: thirty three centimetre | 23cm", "differs: one sixty | 170C/150C fan/gas 3", "differs: thirty four to thirty six minutes | 24–26 minutes"}},
		{"brownies", "Leave them an hour in the tin, then two hours in the fridge. I've a friend who eats them hot with a spoon; she's on her second set of teeth. Sixteen squares, or eight rectangles, or one brownie.",
			[]string{"Cool"}, nil},
		{"brownies", "Leave them an hour in the tin, then twelve hours in the fridge. I've a friend who eats them hot with a spoon; she's on her second set of teeth. Cut it into twenty squares.",
			[]string{"Cool"}, []string{"differs: twelve hours | 2 hours", "differs: twenty | 16 squares"}},
		{"brownies", "pecans a hundred grams and half a teaspoon of salt and then i put in a handful of dried cherries because it's my kitchen",
			[]string{"100g pecans", "½ tsp"}, nil},
		{"brownies", "And then, and this isn't on the card, two tablespoons of bourbon.",
			nil, []string{"not written: two tablespoons"}},
		{"gumbo", "Y'all ready? First you make a roux. Three quarters of a cup of oil, one cup of flour, and thirty five minutes of your life.",
			[]string{"¾ cup", "1 cup all", "Cook the oil"}, nil},
		{"gumbo", "Y'all ready? First you make a roux. Three quarters of a cup of oil, two cups of flour, and you stir it over a medium heat for fifteen minutes, till it's dark brown.",
			[]string{"¾ cup", "1 cup all", "Cook the oil"}, []string{"differs: two cups | 1 cup", "differs: fifteen minutes | 35 minutes"}},
		{"gumbo", "okay the trinity two onions three stalks of celery one bell pepper my grandmaw said if you can't count to three you can't cook and that cooks down about eight minutes and then the garlic five cloves and a tablespoon of cajun seasoning",
			[]string{"2 onions", "3 celery", "1 green", "5 cloves", "1 tablespoon Cajun", "Add the onions"}, nil},
		{"gumbo", "okay the trinity four onions three stalks of celery one bell pepper my grandmaw said if you can't count to three you can't cook and that cooks down about twenty eight minutes and then the garlic five cloves and a teaspoon of cajun seasoning",
			[]string{"2 onions", "3 celery", "1 green", "5 cloves", "1 tablespoon Cajun", "Add the onions"}, []string{"differs: four | 2", "differs: a teaspoon | 1 tablespoon (unit)", "differs: twenty eight minutes | 8 minutes"}},
		{"gumbo", "Now your stock, that's eight cups, two quarts if your measuring cup's as big as mine. Two bay leaves, two pounds of chicken, and let her bubble for an hour.",
			[]string{"8 cups", "2 bay", "2 pounds", "Whisk"}, nil},
		{"gumbo", "Now your stock, that's eight cups. Two bay leaves, three pounds of chicken, and let her simmer for two hours.",
			[]string{"8 cups", "2 bay", "2 pounds", "Whisk"}, []string{"differs: three pounds | 2 pounds", "differs: two hours | 1 hour"}},
		{"gumbo", "brown off your sausage a pound of andouille about six minutes in she goes and thirty minutes more on the simmer i put a show on it's about thirty minutes",
			[]string{"1 pound", "Brown"}, nil},
		{"gumbo", "Rice is two cups of rice, four of water, eighteen minutes, and ten with the lid on. Don't lift that lid. My daddy lifted the lid in 1973 and we still talk about it.",
			[]string{"2 cups long", "Cook the rice"}, nil},
		{"gumbo", "Rice is three cups of rice, four of water, eighteen minutes, and twenty with the lid on. Don't lift that lid.",
			[]string{"2 cups long", "Cook the rice"}, []string{"differs: three cups | 2 cups", "differs: twenty | 10 minutes"}},
		{"marmalade", "One kilo of Sevilles, and they're only here for about three weeks in January so I buy ten kilos and freeze them. One lemon. Two point two litres of water.",
			[]string{"1 kg Seville", "1 lemon", "2.2 litres"}, nil},
		{"marmalade", "Two kilos of Sevilles, and they're only here for about three weeks in January so I buy ten kilos and freeze them. One lemon. One point two litres of water.",
			[]string{"1 kg Seville", "1 lemon", "2.2 litres"}, []string{"differs: Two kilos | 1 kg", "differs: One point two litres | 2.2 litres"}},
		{"marmalade", "and that simmers for two hours which is one film or three washing machines and meanwhile the sugar two kilos of it in a roasting tin in the oven at a hundred and twenty for ten minutes just to take the chill off",
			[]string{"Simmer", "2 kg"}, nil},
		{"marmalade", "and that simmers for four hours which is two films or six washing machines and meanwhile the sugar three kilos of it in a roasting tin in the oven at a hundred and twenty for ten minutes just to take the chill off",
			[]string{"Simmer", "2 kg"}, []string{"differs: three kilos | 2 kg", "differs: four hours | 2 hours"}},
		{"marmalade", "Now a rolling boil. Twenty to twenty five minutes, and you're looking for a hundred and four and a half on the thermometer. My grandmother used a saucer. She also used lead paint.",
			[]string{"Boil hard"}, nil},
		{"marmalade", "Now a rolling boil. Forty to forty five minutes, and you're looking for a hundred and fourteen degrees on the thermometer.",
			[]string{"Boil hard"}, []string{"differs: Forty to forty five minutes | 20–25 minutes", "differs: a hundred and fourteen degrees | 104.5C"}},
		{"marmalade", "turn it off and leave it for twenty minutes before you go near a jar and it fills seven jars give or take the one you drop",
			[]string{"Leave"}, nil},
		{"gnocchi", "Ricotta, four hundred grams, and it's got to drain. An hour, in a sieve, over a bowl. Go and do something. I did eleven minutes of yoga and then I had a lie down.",
			[]string{"400g", "Drain"}, nil},
		{"gnocchi", "Ricotta, two hundred grams, and it's got to drain. Three hours, in a sieve, over a bowl. Go and do something. I did eleven minutes of yoga and then I had a lie down.",
			[]string{"400g", "Drain"}, []string{"differs: two hundred grams | 400g", "differs: Three hours | 1 hour"}},
		{"gnocchi", "so it's two yolks and eighty grams of parmesan and a hundred and ten of flour and a quarter teaspoon of nutmeg which is about ten scrapes",
			[]string{"2 egg", "80g", "110g", "¼ tsp"}, nil},
		{"gnocchi", "so it's four yolks and eighty grams of parmesan and two hundred and ten of flour and a quarter teaspoon of nutmeg which is about ten scrapes",
			[]string{"2 egg", "80g", "110g", "¼ tsp"}, []string{"differs: four | 2", "differs: two hundred and ten | 110g"}},
		{"gnocchi", "Ropes two centimetres thick, and cut them in two and a half centimetre bits. Boil them till they float, that's two to three minutes.",
			[]string{"Boil for"}, nil},
		{"gnocchi", "ninety grams of butter in the pan and the sage about a dozen leaves and you let it go brown five minutes it'll smell of hazelnuts then half a lemon",
			[]string{"90g", "12 sage", "Brown"}, nil},
		{"gnocchi", "nine hundred grams of butter in the pan and the sage about a dozen leaves and you let it go brown fifteen minutes it'll smell of hazelnuts then half a lemon",
			[]string{"90g", "12 sage", "Brown"}, []string{"differs: nine hundred grams | 90g (tenfold)", "differs: fifteen minutes | 5 minutes"}},
		{"gnocchi", "I did forty portions of these a night for two years at a place I won't name, at eleven euros a plate, and the chef shouted in three languages.",
			nil, nil},
	})
}
