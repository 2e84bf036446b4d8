package verify_test

import (
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/verify"
)

// short is a whole cut in little: all that is found is wanted, what it never says
// too.
type short struct {
	name, recipe, said string
	want               []string
}

// running cuts talk into captions of eight words, one right behind another; an
// empty line is a pause.
func running(said string) []verify.Cue {
	var cues []verify.Cue
	at := time.Second
	for _, part := range strings.Split(said, "\n\n") {
		words := strings.Fields(part)
		for len(words) > 0 {
			n := min(8, len(words))
			long := time.Duration(n) * 400 * time.Millisecond
			cues = append(cues, verify.Cue{Start: at, End: at + long, Text: strings.Join(words[:n], " ")})
			at += long + 40*time.Millisecond
			words = words[n:]
		}
		at += 2 * time.Second
	}
	return cues
}

func TestShortCuts(t *testing.T) {
	for _, s := range []short{
		{"a host who chats", "pie", `hiya so it's pie week the thing i get asked for more than anything i think because my mum made it on here three years ago and she got more comments than me i'm not bitter

so your chicken is thighs a kilo no bones and it goes in a pan with the stock four hundred and fifty mil of chicken stock and you just poach it gently twenty five minutes and don't let it boil like mad or it goes like a dishcloth then you take it out and pull it to bits with two forks

while that's on you do your leeks three leeks washed and i mean washed sliced up and in another pan sixty grams of butter and sweat them down for five minutes with a lid on till they're floppy then the flour fifty grams of plain flour and you cook that out for a couple of minutes

then your stock back in a bit at a time i use a ladle and let it simmer five minutes and it'll go thick and glossy then cream a hundred and fifty mil and mustard two tablespoons of wholegrain mustard and some tarragon a tablespoon chopped and the chicken and then you've got to let it go cold forty five minutes at least or it melts your pastry and you'll cry i have cried

pastry is dead easy three hundred grams of plain flour a hundred and fifty grams of butter cold from the fridge half a teaspoon of salt rub it all in and then water ice cold nine tablespoons and bring it together and wrap it up and chill it half an hour

oven two hundred or one eighty fan gas six right filling in the dish mine's a twenty six centimetre one pastry on the top crimp it brush it with beaten egg one egg and in it goes for forty to forty five minutes till it's golden brown

then leave it stood for ten minutes it serves six it says but there's four of us and there's never any left see you next week it's fish`,
			[]string{"differs: five minutes | 15 minutes", "differs: two tablespoons | 2 tsp (unit)", "differs: nine tablespoons | 5 tbsp"}},
		{"two people", "brownies", `- Good evening. - Good evening! - We have one hour before the babysitter leaves, so these are the fast brownies. - They are not fast. - They're fast for you. You eat them.

- Oven first. One seventy. - Ours is a fan. - Then one fifty. Gas three if you're my mother. And the tin is twenty three centimetres, square, with paper in it.

- Chocolate? - Two hundred grams, dark. And butter. - How much butter? - A hundred and eighty grams. Over a pan of water, and then leave it alone. - I'm leaving it alone.

- Now eggs, and there are four of them. - Four? Since when? - Since always. And sugar, light muscovado, two hundred and seventy-five grams. Whisk that for four minutes. - I timed you last week, and you did ninety seconds. - That was last week.

- Chocolate in. Fold it. Then a hundred and twenty grams of rye flour, thirty of cocoa, and a teaspoon of instant coffee. - You don't even drink coffee. - It isn't for drinking. Half a teaspoon of salt as well. - And the pecans? - And the pecans, two hundred grams, but chop them first, because last time there was a dentist involved.

- It bakes for twenty-four to twenty-six minutes. - And we watch it. - We watch it like a hawk. It wants a wobble. You can't put a wobble back.

- And now the hard part, an hour in the tin, and then the fridge for four hours. - We don't have four hours. - We'll have some tomorrow. Sixteen squares. - Fifteen. - What? - I said sixteen.`,
			[]string{"differs: four | 3", "differs: two hundred grams | 100g", "differs: four hours | 2 hours"}},
		{"an old hand", "chutney", `Morning. You find me in the shed, because my wife won't have vinegar boiled in the house since the incident of 2008. I've twenty two tomato plants and they've all been lazy, so this is a green tomato year.

One and a half kilos of green tomatoes. I chop them with a bread knife, on a board my grandfather made, and he's been gone forty years, and the board's outlasted three sheds. Onions, half a kilo of those. Put the salt over them, a tablespoon, and leave them overnight under a tea towel. It draws the water out.

Next day, drain them off. Now the rest: sultanas, a hundred and fifty grams. Light brown sugar, four hundred grams. Malt vinegar, six hundred millilitres, and I buy it by the five litres, for the price of a pint. Two teaspoons of mustard seeds. And I put a tablespoon of curry powder in, which isn't traditional, but neither am I.

Get it warm slowly so the sugar melts, fifteen minutes or so. Then it simmers for an hour and three quarters, and you stir it, and you think about your life. It's ready when you pull a spoon across the bottom and you can see the bottom for three seconds.

Into hot jars; it'll make five. And then leave it six months. It's horrid on the day, it's nice by Christmas, and by Easter you'll hide it from visitors.`,
			[]string{"differs: a hundred and fifty grams | 250g", "not written: a tablespoon", "differs: six months | 6 weeks", "not said:  | 50g"}},
		{"a student", "ramen", `okay so what's up it's me and i've got forty minutes before football so we're doing ramen properly because my flatmate said ramen is a packet and i said right

so pork belly four hundred grams and i got it reduced it was two pound eighty which is basically a crime and you rub it with two tablespoons of mirin and a tablespoon of soy and you leave it for two hours so actually i did that before don't come at me

then it's in the oven at one sixty one forty if it's a fan for two hours and forty five minutes and the whole corridor came out their rooms then you let it rest ten minutes and slice it

broth is a litre of chicken stock and ginger two centimetres of ginger sliced up simmer it for fifty minutes and then you whisk in the miso three tablespoons white miso and another tablespoon of soy sauce

eggs two eggs boil them six and a half minutes i set three alarms and then straight in iced water for five minutes or they keep cooking

noodles two hundred grams three minutes done right so bowls noodles broth pork egg spring onions four of them and sweetcorn a hundred grams

that's it that is literally it serves two or one on a monday okay like and subscribe we're at three hundred and six`,
			[]string{"differs: two hours and forty five minutes | 1 hour 45 minutes", "differs: fifty minutes | 15 minutes"}},
		{"a careful baker", "hotcross", `Hello, and welcome to the bakery. It's Lent, it's raining, and we'll make about nine hundred of these before Sunday, but you only need twelve.

Warm the milk, three hundred millilitres, with the butter, fifty grams, just until the butter has gone. You should be able to keep your finger in it.

In the bowl: five hundred grams of strong white flour. Seventy-five grams of caster sugar. Mixed spice, two teaspoons, and please smell it first, because if it's been open since last Easter it will taste of cupboard. Fast-action yeast, ten grams. One egg. Then the milk, and knead for ten minutes. We have a machine the size of a cow for that.

Let it prove for three and a half hours. Then the fruit goes in: sultanas, a hundred and fifty grams, and mixed peel, eighteen grams.

Divide it into twelve. Ours weigh a hundred grams each and the boss checks. Shape them, and prove them again, for an hour.

Heat the oven to two hundred and twenty degrees, two hundred if it's a fan. Then the crosses: seventy-five grams of plain flour and five tablespoons of water, into a bag, and pipe. I trained a lad who did them all as question marks.

Bake for twenty minutes. And while they're hot, the glaze.`,
			[]string{"differs: three and a half hours | 1½ hours", "differs: eighteen grams | 80 g", "not said:  | 2 tbsp"}},
		{"from the south", "gumbo", `Hey y'all, come on in out of the heat, it's ninety eight degrees on my porch and the dog's under the truck.

Now we're making gumbo and the first thing is the roux. That's three quarters of a cup of oil and a cup of flour in your heaviest pot, and you stir it thirty five minutes, medium heat, and you don't answer the phone. If it burns you start over. I burned one in 1988 and my mother-in-law is still telling it.

In go two onions, three stalks of celery and a green bell pepper, all chopped, and that'll cook eight minutes. Then six cloves of garlic, and a tablespoon of Cajun seasoning, and one more minute.

Then your stock. Eight cups. Whisk it so there's no lumps. Twelve bay leaves and two pounds of chicken thighs, and let that simmer for one hour. That's one hour. Not forty minutes, not till the game's over.

Meanwhile, brown your sausage, a pound and a half of andouille, about six minutes. Put it in and give it thirty minutes more.

Rice: two cups of long-grain. Four cups of water. Eighteen minutes, then take it off and let it steam for ten.

Feeds eight, or four of my nephews.`,
			[]string{"differs: six cloves | 5 cloves", "differs: Twelve | 2", "differs: a pound and a half | 1 pound"}},
		{"a butcher's son", "lamb", `Right then. I'm the fourth butcher in my family and the first one who can cook, and I've got two point two kilos of lamb here, leg, bone in, and if your butcher won't leave the bone in, get another butcher.

It's had two hours out of the fridge. Very important. Now with a small knife you make some slits, twenty four of them, I count because my dad counted, and in each one goes a bit of garlic, that's nine cloves, slivered, a bit of anchovy, four anchovies, and some rosemary, three sprigs. You won't taste fish. Everybody says that, and I've had two thousand customers not taste fish.

Oil, a tablespoon. Salt, a teaspoon and a half. Rub it in.

Now the oven. Two thirty to begin with, two ten if it's a fan, gas eight. Twenty minutes of that. That's your colour. Then you turn it down to one eighty, or one fifty fan, gas four, and the wine goes in the tin, three hundred mil, white, dry. And now it's fifteen minutes for every five hundred grams, so for this one about an hour and five. If yours is a three kilo leg it'll be half an hour longer. You want fifty eight degrees in the middle. That's pink. My nan would've said that's alive.

Then it rests. Three hours, under foil, and I'm not joking.

Beans now. Two shallots, thirty grams of butter, six minutes. Two tins of flageolets, four hundred gram tins, and a hundred and fifty mil of stock, and that bubbles for twelve minutes. Parsley, a tablespoon. And carve.`,
			[]string{"differs: nine cloves | 6 cloves", "pair: one eighty, or one fifty fan | 180 °C / 160 °C fan / gas 4", "differs: one fifty fan | 160 °C fan", "pair: one fifty fan, gas four | 180 °C / 160 °C fan / gas 4", "differs: Three hours | 30 minutes"}},
		{"bonfire night", "toffee", `okay so it's the second of november and you know what that means it means my kids have asked for toffee every day for a week and i've got three fillings booked for the twelfth

so you need a tin twenty centimetres square and oil it really oil it i lost a tin in 2015 it's still got toffee in it

so sugar dark brown sugar five hundred and forty grams goes in the pan with the water a hundred and twenty five mil and you melt that slowly low heat twelve minutes and once it's boiling don't stir it don't even look at it funny

then it's cream of tartar a quarter of a teaspoon and then treacle a hundred grams and golden syrup a hundred grams and what i do is i put the tins in hot water first so it runs and vinegar a teaspoon of malt vinegar which sounds mad but it stops it being too sweet

now you boil it and this is the scary bit you want your thermometer and you want a hundred and forty degrees and mine took twenty five minutes and please keep the little ones out i've got a scar from when i was eleven

pour it in and leave it ten minutes and then mark it in squares with a knife and then four hours to go cold and then you get to hit it with a hammer

and it keeps two months in a tin in theory`,
			[]string{"differs: five hundred and forty grams | 450 g", "differs: two months | 2 weeks"}},
		{"an Italian teacher", "ravioli", `Buongiorno. Today ravioli, like I teach in the school, twelve students every week, and every week one of them cries. It is not hard. It is only flour and eggs and time.

Flour, the double zero: three hundred grams. Three eggs. A teaspoon of oil, and my aunt in Modena will telephone me about this oil. You knead ten minutes. Ten! Not five and a coffee. And then the dough sleeps, half an hour, under a bowl.

The filling. Frozen peas, they are better than the fresh ones which are old: three hundred and fifty grams, and you boil them two minutes only. Then in the machine with two hundred grams of ricotta, sixteen grams of pecorino, fifteen grams of mint, and one yolk. This you put in the fridge for thirty minutes, so it is firm.

Now we roll. One millimetre. You should read the newspaper through it, if there is anything in the newspaper. Make four sheets. The filling, a teaspoon each, four centimetres one from the other. Cover, press, cut. You have thirty two ravioli, if you have not eaten.

Into boiling water with salt, and they need six minutes. And the butter, eighty grams, in a pan, with the zest of a lemon, two minutes, it must not go brown.

Eight for each person. And nobody cries.`,
			[]string{"differs: half an hour | 1 hour", "differs: sixteen grams | 60g", "differs: six minutes | 3 minutes"}},
		{"precise, in a lab coat", "gelato", `Welcome back to the cold room. We're at minus eighteen in there and about twenty one out here, so let's be quick.

Pistachios first, shelled, a hundred and fifty grams. Roast them at one sixty on the fan setting for eighteen minutes, and then they go through the grinder until they're a paste. That's roughly fifty percent fat, which is why it's so smooth.

Five hundred mil of milk. Two hundred mil of cream, double. And twenty five grams of milk powder, which is there for the solids. Bring that to sixty degrees.

Meanwhile four yolks, large, with a hundred and thirty grams of sugar and half a teaspoon of salt. Two minutes with the whisk. Then the hot milk goes on, back on the heat, and stir until you see ninety three degrees. It'll take about ten minutes. Above eighty five you've got scrambled eggs, and I've got the photographs.

Paste in, strain it, and now patience: eight hours in the fridge. The fat needs to crystallise. I did a test with two, four, six and eight hours, and eight won.

Thirty minutes in the machine, then four hours minimum in the freezer, and take it out a quarter of an hour before you serve it. That makes a litre.`,
			[]string{"differs: eighteen minutes | 8 minutes", "differs: half a teaspoon | ¼ tsp", "differs: ninety three degrees | 83 °C"}},
		{"out west", "cornbread", `howdy folks so there's two kinds of people in this world people who put sugar in cornbread and liars

get your oven up to four twenty five and put a skillet in there ten inch cast iron mine's a hundred and four years old it came over the pass in a wagon well a station wagon and let that heat fifteen minutes

so in your bowl one and a half cups of cornmeal yellow a cup of flour two tablespoons sugar a tablespoon of baking powder half teaspoon of baking soda and a tablespoon of salt kosher salt

then your wet stuff one and three quarter cups buttermilk and two eggs whisk it up pour it in stir it about ten strokes no more lumps are fine lumps are character let it stand ten minutes so the meal drinks

now jalapeños four of them chopped seeds in if you're brave six tablespoons of butter in the hot skillet let it foam pour it in the batter and the batter goes right back in that skillet hear that that's the sound

bake it thirty to thirty two minutes and let it sit for ten before you cut it and that feeds eight or my brother earl`,
			[]string{"differs: a tablespoon | 1 teaspoon (unit)", "differs: four | 2", "differs: thirty to thirty two minutes | 20 to 22 minutes"}},
		{"by the sea", "ceviche", `Hello from the harbour. It's six in the morning, and I've just paid eleven pounds for a bream that was swimming at four, so let's not ruin it.

You want four hundred grams of fillet, no skin, no bones. Sweet potato first, because it takes the longest: one sweet potato, boil it for twenty five minutes, let it go cold and slice it.

Red onion, one, as thin as you can, and into iced water for ten minutes; that takes the bite off. Now cut your fish into cubes. Two centimetres, no smaller, or it goes to mush. A teaspoon of salt on that and leave it three minutes.

Then lime juice: sixteen mil, which is about six limes, squeezed by hand, please. In goes the ginger, two centimetres of it, grated, and a red chilli. And it sits for eighty minutes. It'll go white from the outside in. When I worked in Lima we did two hundred covers a lunch, and the boss tasted every bowl.

Onion in, fold it. And eat it now, right now, out of the bowl, looking at the sea.`,
			[]string{"differs: sixteen mil | 160 ml (tenfold)", "differs: eighty minutes | 8 minutes (tenfold)", "not said:  | 20 g"}},
	} {
		t.Run(s.name, func(t *testing.T) {
			var got []string
			for _, f := range checker.Check(read(snippetRecipes[s.recipe]), running(s.said)).Findings {
				got = append(got, worded(f))
			}
			if diff := cmp.Diff(s.want, got); diff != "" {
				t.Errorf("(-want +got):\n%s", diff)
			}
		})
	}
}
