package verify_test

import (
	"slices"
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

var shortCuts = []short{
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
		[]string{"differs: a hundred and fifty grams | 250g", "not written: a tablespoon", "differs: six months | 6 weeks (unit)", "not said:  | 50g"}},
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
		[]string{"differs: nine cloves | 6 cloves", "pair: one eighty, or one fifty fan | 180 °C / 160 °C fan / gas 4", "differs: Three hours | 30 minutes"}},
	{"bonfire night", "toffee", `okay so it's the second of november and you know what that means it means my kids have asked for toffee every day for a week and i've got three fillings booked for the twelfth

so you need a tin twenty centimetres square and oil it really oil it i lost a tin in 2015 it's still got toffee in it

so sugar dark brown sugar five hundred and forty grams goes in the pan with the water a hundred and twenty five mil and you melt that slowly low heat twelve minutes and once it's boiling don't stir it don't even look at it funny

then it's cream of tartar a quarter of a teaspoon and then treacle a hundred grams and golden syrup a hundred grams and what i do is i put the tins in hot water first so it runs and vinegar a teaspoon of malt vinegar which sounds mad but it stops it being too sweet

now you boil it and this is the scary bit you want your thermometer and you want a hundred and forty degrees and mine took twenty five minutes and please keep the little ones out i've got a scar from when i was eleven

pour it in and leave it ten minutes and then mark it in squares with a knife and then four hours to go cold and then you get to hit it with a hammer

and it keeps two months in a tin in theory`,
		[]string{"differs: five hundred and forty grams | 450 g", "differs: two months | 2 weeks (unit)"}},
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
	{"with the children in", "fishpie", `Right, hello, it's Sunday, it's chucking it down, and I've got three under ten in here so if something falls over just ignore it.

It's fish pie. It's what my mum made every Friday of my life and I hated it till I was about twenty two. So potatoes. Floury ones, a kilo and a bit, one point one if you're the sort of person who weighs potatoes. Peel them, boil them, twenty minutes or till they fall off the knife. No, Freddie, that's hot.

While they're on, the fish. Five hundred grams of smoked haddock, the pale one not the yellow one, and cod, two hundred and fifty. And that goes in a big pan with the milk. How much milk have we got, Edie? That's right, six hundred mil. And a couple of bay leaves. And it just trembles for eighteen minutes and then you lift it out and flake it, and don't chuck the milk, whatever you do don't chuck the milk.

Mash. Drain your spuds, a hundred mil of milk in there and a hundred and sixty grams of butter because it's Sunday. Edie's mashing. She's got her grandad's arms.

Sauce now. Fifty grams of butter, fifty of flour, two minutes on the heat, and then the fishy milk bit by bit, and four minutes at a simmer. Then your fish goes back in and the peas, a hundred and fifty grams, frozen's fine, and three eggs, boiled, cut in quarters, and a tablespoon of dill. I put a teaspoon of English mustard in as well.

Two litre dish, that one, with the chip. Mash on the top, fork it. Two hundred, one eighty fan, gas six, thirty five minutes. It feeds five or it feeds four and the dog. Five minutes to calm down, and that's it, who's hungry?`,
		[]string{"differs: eighteen minutes | 8 minutes", "differs: a hundred and sixty grams | 60g", "not written: a teaspoon"}},
	{"a flannel shirt", "pancakes", `what's up everybody it's Saturday morning coffee number two and if you've got a sourdough starter you've got pancakes you just didn't know it

so last night before bed i mixed up the sponge and that's one cup of starter and it doesn't have to be fed this is like the one time the starter doesn't care one and a quarter cups of flour all purpose and one cup of buttermilk and a tablespoon of sugar stir it up it's lumpy that's fine and i left it out on the counter ten to twelve hours i got up at seven and it looked like the moon

okay griddle mine's my dad's it's from like 1961 it weighs thirty pounds and i'm gonna get that up to four twenty five and i've got a little laser thing for that

now two eggs four tablespoons of melted butter beat that in and then the fun part three quarters of a teaspoon of baking soda and half a teaspoon of salt and watch it watch it it just blows up and let that go for five minutes

quarter cup at a time on the griddle and some blueberries i've got a cup here but the dog got some so it's more like three quarters and then three minutes until the edges look dry and flip them and that's a minute and a half on that side

and i keep them in the oven at two hundred till everybody's up and this makes fourteen of them which for my house is round one`,
		[]string{"differs: four twenty five | 375°F", "differs: four tablespoons | 3 tablespoons"}},
	{"from Dresden", "stollen", `So, hello, and welcome to Advent. My name is Jutta, I am in this country thirty one years and still I cannot find a good Stollen, so, we make it.

You begin the day before. Three hundred grams of raisins, a hundred grams of the candied orange, and sixteen millilitres of rum, dark rum, over it. And this stays twelve hours. My husband says it smells like his uncle.

Next day the yeast. Fresh yeast, forty two grams, this is one cube, in Germany it is always one cube. Into the lukewarm milk, a hundred and twenty millilitres, with a teaspoon of the sugar, and after fifteen minutes it must have a hat.

Then the flour, five hundred grams. The sugar, ninety. Butter, and now don't be afraid, two hundred grams, soft. One egg. Half a teaspoon of cardamom, half a teaspoon of salt. And you knead, ten minutes, and then it rises for two hours in a warm place. I put it beside my mother. She is ninety four, she is always warm.

Then in with the fruit and the almonds, a hundred and twenty grams, chopped. You divide it, there are two Stollen. For each a roll of marzipan, two hundred grams is for both together. Fold, like a blanket over the child. Thirty minutes more it must rise.

The oven is a hundred and seventy five degrees, forty five minutes. And when it comes out, hot, hot, hot, the melted butter, all of it, two hundred grams, and then icing sugar till you see nothing, a hundred and fifty grams.

Now the hard thing. Wrap it, and wait two weeks. I know. In my family we have hidden it in the piano.`,
		[]string{"differs: sixteen millilitres | 60 ml", "differs: two hours | 1 hour", "differs: two hundred grams | 100 g"}},
	{"with an interpreter", "tiramisu", `- So this is my grandmother, she's called Pina, she's eighty eight, and she doesn't speak English, so I'm going to say what she says. - Ciao. - That was ciao.

- Okay. Five yolks. She says five, because four is for tourists. And sugar, a hundred and twenty grams, and you put it over a pan of water and whisk it for six minutes. There's a thermometer because I made her buy one, and it's got to get to seventeen degrees, and she's never once looked at it.

- She wants it to cool now, ten minutes. She's asking if I've eaten. I've eaten, Nonna.

- Mascarpone. Half a kilo. Not from the fridge. Beat it in, gently. And the whites, five of them, whisked for three minutes till you can hold the bowl over your head. She's doing it. She's eighty eight, somebody stop her.

- Coffee: three hundred and fifty mil, real coffee. And Marsala, three tablespoons. She says my grandfather put six and that's why there's seven children.

- Savoiardi, thirty of them. Two seconds each, in and out. If you count to three it's soup. Half of them in the dish, it's a twenty by thirty, then half the cream, then do it all again.

- And then it's in the fridge for two hours. She says you can't hurry it. And two tablespoons of cocoa, right at the end, through the little sieve that's older than me. - Buono. - She says it's good.`,
		[]string{"differs: seventeen degrees | 70 °C", "differs: five | 3", "differs: two hours | 8 hours"}},
	{"an uncle at the drum", "jerk", `Yes, yes, welcome to the yard. Uncle Desmond here, and if you're looking for the quick version you've come to the wrong yard, this takes a day and a half and one crate of beer.

Chicken legs, two kilos. Bone in, skin on. Now the seasoning. Allspice, pimento we call it, the berries, two teaspoons, and black peppercorns, a teaspoon. You grind them. You don't buy it ground, ground is dust.

Then Scotch bonnets, and I use four, and my wife uses two, and my son he uses ketchup. Spring onion, six. Garlic, five cloves. Ginger, thirty grams. Brown sugar, two tablespoons. Soy sauce, sixty mil, and lime juice, eighty mil, that's about three limes if they're good ones. Oil, two tablespoons. Fresh thyme, a tablespoon of the leaves. Salt, two teaspoons. In the blender, two minutes, and don't put your face over it.

You rub that in. Under the skin. In the joints. And then cover it up and it goes in the fridge for four hours. And you wash your hands, twice, before you touch anything you love.

Fire. I light it and I leave it forty minutes to settle, and I want it sitting at about a hundred and sixty. Chicken on, lid down, fifty minutes, and I turn it every ten minutes, no more. And what you want at the bone is fifty five degrees. Then ten minutes on the board, and then the cleaver.

I've been doing this since I was nine years old, on an oil drum, by the side of the road, a hundred pieces a night. Bless up.`,
		[]string{"differs: two teaspoons | 2 tbsp (unit)", "differs: four hours | 24 hours", "differs: fifty five degrees | 75 °C"}},
	{"two sisters", "samosas", `- Hi, I'm Reema. - And I'm the good one. - We're doing our mum's samosas, and for the record she's never measured anything in her life, so we had to stand there with scales, for about two years.

- Pastry. Three hundred grams of flour, a teaspoon of salt, and ajwain, half a teaspoon. - Or cumin if you can't get it. - No. Ajwain. Eighty mil of oil, and you rub that in till it holds together like sand. And then a hundred and ten mil of water, a splash at a time. It should be stiff. - It should fight back. - And then it rests, three hours. Don't skip it.

- Potatoes, six hundred grams, boil them eighteen minutes, and crush them, don't mash them. - You mash them. - I have never mashed them.

- In a pan, tablespoon of oil, teaspoon of cumin seeds, thirty seconds. Then ground coriander, two teaspoons. Garam masala, one tablespoon. Amchoor, a teaspoon, that's the dried mango, it's the sour bit. - And chillies. - Two green chillies. A hundred and fifty grams of peas, the potatoes, and five minutes to let it all get to know each other. Then a good handful of fresh coriander.

- Ten balls of dough, roll them to fifteen centimetres, cut them in half. So that's twenty. - She can do maths now. - Cone, fill, pinch.

- Then the oil. A litre. And it's low to start with, a hundred and fifty, that's the secret. Fry them for eighteen minutes. They should hardly bubble. Then turn it up to one eighty for two minutes, and they go gold. - And then you eat four standing up. - You ate six.`,
		[]string{"differs: three hours | 30 minutes", "differs: one tablespoon | 1 tsp (unit)", "not said:  | 20 g", "differs: eighteen minutes | 8 minutes"}},
	{"off the boats", "chowder", `mornin so i been lobsterin out of this harbor forty one years and i been makin chowder for about forty of em and the first year we don't discuss

bacon first four ounces diced up in your pot seven minutes nice and crisp then you fish it out and you leave the fat in there that's the whole point of the fat

butter two tablespoons one large onion and celery that's two ribs chopped and eighteen minutes don't brown it then a quarter cup of flour stir it two minutes and your clam juice three cups whisk it in slow

potatoes yukon golds pound and a half i cut em about like dice and thyme two tablespoons of fresh thyme and a bay leaf and that goes fifteen minutes at a simmer till a fork goes in

now the clams three cups chopped my wife's brother digs em i pay him in chowder and heavy cream one and a half cups and this is where folks mess up you heat it gentle five minutes you don't boil it a hundred and sixty five degrees and no more or the clams go to rubber bands

then you let it set half an hour off the heat i know you're hungry everybody's hungry half a teaspoon of white pepper and the bacon on top

feeds six it fed eleven once in the blizzard of seventy eight but we were thinner`,
		[]string{"differs: eighteen minutes | 8 minutes", "differs: two tablespoons | 2 teaspoons (unit)"}},
	{"on a Thursday night", "challah", `So it's Thursday night, the kids are finally in bed, all four of them, and this is my hour. This is challah. I make two every week, I've made, what, fifty two times nineteen, I'll let you work it out.

Strong flour: five hundred and fifty grams. Yeast, the instant, eighteen grams. Salt, nine grams, and keep it off the yeast. Two eggs. Then honey, and you oil the cup first so it slides out, eighty grams of honey. Sunflower oil, sixty mil. And warm water, a hundred and ninety mil, and warm means warm like a bath for a baby, not warm like tea.

Twelve minutes of kneading. I do it by hand, because it's the only quiet I get. And then it proves, an hour and forty five minutes. You could watch half a film. I fold laundry.

When it's doubled you cut it into four. I know, I know, everybody does three. Roll them into ropes, about thirty five centimetres, and there's a video of the plait under this one, because I can't talk and plait.

Then it proves again, fifty minutes. Oven on: one eighty, or one sixty if it's a fan, gas four. One yolk with a teaspoon of water, paint it, get in the cracks. And sesame seeds, a tablespoon.

It bakes for forty two to forty five minutes. If you've a thermometer it's ninety degrees in the middle; if you haven't, knock on the bottom and see who answers. Then let it cool for an hour. You won't. Nobody has ever waited the hour.`,
		[]string{"differs: eighteen grams | 8g", "differs: four | 6 ropes", "differs: forty two to forty five minutes | 32–35 minutes"}},
	{"a publican", "scotch", `Evening all. Behind the bar tonight it's scotch eggs, and I don't mean the ones in the garage with the sell-by date on. We've had the pub eleven years, we've sold, I worked it out, about nineteen thousand of these, and my wife's never eaten one, she's a vegetarian, God help me.

So it's eight eggs. Six for the middles and two for the outside. The six go into boiling water for six minutes. Six. Set a timer. Then straight in the ice, ten minutes, or they'll go on cooking and then what's the point.

Sausagemeat, four hundred and fifty grams. Black pudding, two hundred and fifty. If you don't like black pudding you can leave it out and go home. Sage, a tablespoon, chopped, and mace, half a teaspoon, nobody uses mace, use mace. Squidge it all up and make six balls.

Flat on your hand, egg in the middle, close it up like you're keeping a secret. Then it's flour, sixty grams on a plate, then the beaten egg, then the crumbs, a hundred and twenty grams of those. And then in the fridge for an hour and twenty five minutes, or the coats come off in the fat.

Oil's a litre and a half, in a deep pan, and you get that to one seventy. Not one eighty, not two hundred, one seventy. You fry them three at a time. Nineteen minutes and they'll be like a conker. Then let them sit for five, and cut one, and if that yolk runs down your wrist, you've done it.

Four pound fifty at the bar. Cheers.`,
		[]string{"differs: two hundred and fifty | 150g", "differs: an hour and twenty five minutes | 25 minutes", "differs: Nineteen minutes | 9 minutes"}},
	{"half asleep", "banana", `hi it's three in the morning the baby's finally gone down and i've got bananas going black on the side so we're doing this really really quietly

so it's three bananas and they want to be really ripe like you'd be embarrassed and it's about three fifty grams if you're weighing them mash them up with a fork not the mixer the mixer's loud

butter a hundred grams melted i did it in the microwave in thirty second bursts and then brown sugar the light one two hundred and fifty grams and two eggs and a teaspoon of vanilla and stir that

oven should've said that first one eighty or one sixty if it's fan and a loaf tin the two pound one the nine hundred gram one same thing lined

now the dry stuff two hundred and twenty grams of plain flour one and a half teaspoons baking powder half a teaspoon of bicarb and a tablespoon of cinnamon and fold it don't beat it she's four months by the way she's lovely she's just very awake

walnuts eighty grams i'm crushing them in my hand because the knife's loud in the tin and then demerara over the top two tablespoons that's the crunchy bit

fifty five to sixty minutes and i'm going to sit on the floor by the oven because it's warm

fifteen minutes in the tin and then out on the rack for an hour if she lets me okay that's her that's her bye`,
		[]string{"differs: two hundred and fifty grams | 150 g", "differs: a tablespoon | 1 tsp (unit)"}},
	{"on the radio", "enchiladas", `Good afternoon, you're listening to Kitchen Table, I'm with Lupe Arroyo at her stove in Las Cruces, and Lupe, something smells incredible. - That's the tomatillos. Two pounds of them, husks off, washed, because they're sticky.

- And what else is on that tray? - Jalapeños, I've got four. One white onion in quarters. Three cloves of garlic in the skin. And they're under the broiler about ten minutes, and you turn them over one time. You want them black in spots. My mother did it right on the flame. We had one smoke alarm and she took out the battery in 1982.

- Then it all goes in the blender. - Everything, with a cup of cilantro, and a tablespoon and a half of kosher salt. Careful with the lid.

- What's the filling today? - Chicken, that I cooked yesterday. Three cups, shredded. Half of this cheese, it's Monterey Jack, eight ounces. Sour cream, a cup and a half. And a teaspoon of cumin. Some people say no cumin. Those people can have their own show.

- Twelve tortillas? - Twelve, corn. And oil, a quarter cup, hot. They go in five seconds a side, just to make them soft. If you skip that they crack.

- And the oven? - Four hundred. I fill them, I roll them, I put them in the dish, it's a nine by thirteen. Sauce on top, the other half of the Jack. And it's twenty to twenty five minutes.

- I'm told you can't eat it right away. - You can, but you'll be sorry. Ten minutes. And then the cotija, fourteen ounces, crumbled. - Lupe Arroyo, thank you. We'll be right back after the two o'clock news.`,
		[]string{"differs: a tablespoon and a half | 1½ teaspoons (unit)", "differs: a cup and a half | ½ cup", "differs: fourteen ounces | 4 ounces"}},
	{"a man of few words", "rillettes", `Rillettes.

Pork belly. One point two kilos. Strips, thick as your thumb.

Salt. Coarse. Fifty two grams. Rub it in. Twelve hours in the cold.

Wipe it. Don't wash it. Never wash it.

A pot with a lid. Duck fat, half a kilo. White wine, two fifty. Peppercorns, two teaspoons. Thyme, four sprigs. Garlic, six cloves. Nutmeg, a quarter teaspoon.

A hundred and thirty degrees. Fourteen hours. You'll know.

Out. Two forks. Shred it while it's hot. Fat back in, a hundred and fifty mil.

Jars. Four of them. A centimetre of fat on top. Two days in the fridge, before you touch it.

Three weeks, it keeps. It has never kept three weeks.`,
		[]string{"differs: Fifty two grams | 25 g", "differs: Fourteen hours | 4 hours"}},
	{"a grandmother on the phone", "kulfi", `hello beta can you see me is this the camera okay so kulfi your mother says you want to know kulfi so i will tell you once and you write it down

two litres of milk and it must be the full milk not the blue one not the red one in a heavy pot and cardamom twelve pods you just crack them and you boil it and then you let it simmer two hours and twenty minutes and you stand there you stir you don't look at your phone it comes down and down until there's nine hundred mil

in my house we had a buffalo i'm telling you we had one buffalo and nine people

then rice flour two tablespoons you mix it in a little cold milk four tablespoons of cold milk so there's no lumps and it goes in and the sugar a hundred and eighty grams and you cook it five minutes more

then you strain it and saffron half a teaspoon of saffron and pistachios six grams chopped and you let it cool two hours

and then in the moulds it makes eight and in the freezer eight hours minimum your grandfather used to eat it from the pot he couldn't wait eight minutes

and take it out five minutes before or you'll break a tooth i broke one in seventy one okay bye beta eat something`,
		[]string{"differs: two hours and twenty minutes | 1 hour 20 minutes", "differs: six grams | 60 g (tenfold)"}},
	{"in a cold flat", "borscht", `Hi. My heating's broken, so I'm cooking something that takes all day. This is borscht, the way my babusya makes it, and there are forty million people who'll tell me it's wrong, and that's fine.

First, broth. A kilo of beef short ribs, into three litres of cold water, with two bay leaves and a tablespoon of salt, and that simmers for two hours. You skim it. She skims it like she's angry with it.

While that's on: one large onion, and two carrots, and you fry them in sunflower oil, three tablespoons, for eight minutes. Then beetroot. Three of them, that's about half a kilo, cut like matchsticks. And the vinegar, red wine vinegar, two teaspoons, that keeps it red. And tomato paste, two tablespoons. Lid on, and let it stew for fifty minutes.

Potatoes next. Four hundred grams, in cubes, and they go in the broth and boil for ten minutes. Then cabbage, and I've got, what, thirteen hundred grams of cabbage, a whole one's about twice that, shred it fine. In it goes with the beetroot, and it's another fifteen minutes.

Now turn it off. Garlic, four cloves, crushed. Lid on. Thirty minutes, and don't touch it. That's when it turns into borscht.

Sour cream on top, I've got a two hundred gram pot here and it'll all go. It serves eight. And tomorrow, after twenty four hours, it's a different soup. It's nineteen degrees in here now. We're winning.`,
		[]string{"differs: two teaspoons | 2 tbsp (unit)", "differs: fifty minutes | 25 minutes", "differs: thirteen hundred grams | 300 g"}},
	{"out of order", "strudel", `Servus, servus. So today it's snowing, and the trams aren't running, and I have a cloth and a table, so it's strudel. My name is Resi, I had a little café in Graz for twenty six years, number fourteen Schmiedgasse, it's a phone shop now, don't ask me.

I should say first, the butter. You melt seventy five grams of butter, and you leave it by the stove, because you will need it later and later you'll have dough up to here. I always say it first because I always forget it.

The dough. Two hundred and fifty grams of flour, and strong flour, what you use for bread. One egg. Sunflower oil, thirty mil. Warm water, a hundred and eighty mil. And a teaspoon of vinegar, and now all the ladies write to me, Resi, why vinegar. It makes it so it stretches. That's why. You knead that ten minutes. Not with a machine. Well. With a machine, but then don't tell me. You put oil on it, like on a baby, you cover it, and it rests one hour.

In this hour. The raisins are in rum already, I did it this morning. Seventy grams of raisins and three tablespoons of rum, half an hour is enough. Apples. They have to be sharp, if you can eat them and smile they're wrong. One point three kilos, and you peel them, and you cut them thin, four millimetres, I had a girl who could do forty apples in an hour with a little knife, she's a dentist now. Ninety grams of sugar on there. Cinnamon, one and a half tablespoons. The raisins. And the juice of one lemon.

The crumbs! Eighty grams of breadcrumbs, you fry them in butter, this is other butter, fifty grams, five minutes till they smell like a cinema.

So now the oven, before I put my hands in flour. A hundred and ninety, a hundred and seventy with the fan, gas five.

And now you need a cloth and courage. You put your hands under it, like so, the backs of your hands, no rings, and you walk around the table. It should be sixty by eighty centimetres at the end, and thin, thin, you should read a love letter through it. Half of the butter on it, the melted one. The crumbs. The apples along here. And then you take the cloth and it rolls itself. Look. The rest of the butter on top.

Twenty five to thirty minutes it bakes. Then you wait twenty minutes. And then sugar on it like this outside. It's for eight people, or ten, if they're polite. My brother ate a whole one in 1974, for a bet, for a hundred schillings.`,
		[]string{"differs: a hundred and eighty mil | 110ml", "differs: one and a half tablespoons | 1½ tsp (unit)", "differs: Twenty five to thirty minutes | 45–50 minutes"}},
	{"game day", "ribs", `what is going on everybody it's game day we're up by zero because it hasn't started and i'm doing ribs and i don't have a smoker i live on the ninth floor okay i had a smoker for like two weeks and the building sent me a letter so these are oven ribs and i'll put em up against anybody's

alright so two racks of baby backs about five pounds all together and first thing flip it over and there's this skin on the back you gotta get a knife under it grab it with a paper towel and yank if you get it in one pull you make a wish that's the rule

rub quarter cup brown sugar two tablespoons smoked paprika a tablespoon of kosher salt two tablespoons of mustard powder and a teaspoon of cayenne and my cousin does two of cayenne and he's got ulcers and you just rub it all over both sides everywhere and then they go in the fridge four hours is good overnight is better i did mine at like eleven last night

okay so oven three hundred low and slow and you lay out your foil a big piece heavy duty ribs on there and half a cup of apple juice just pour it around and seal it up like it owes you money and that's gonna go three and a half hours

so that's the whole first half and halftime in there and while that's going you make the sauce one cup of ketchup a third of a cup of molasses and a quarter cup of cider vinegar worcestershire that's two tablespoons and garlic i got four cloves here smashed and then i do a shot of bourbon like two ounces of bourbon and that simmers fifteen minutes and your neighbors are gonna knock

alright two minute warning ribs are out look at that look at that wiggle so open up the foil crank it up to four twenty five brush on the sauce and it's gonna get twelve minutes and i brush em every four so three times total

and then they rest i know i know ten minutes you can do it

feeds four or me and one guy who's not that hungry alright let's go`,
		[]string{"differs: two tablespoons | 2 tsp (unit)", "differs: three and a half hours | 2½ hours", "not written: two ounces"}},
	{"at the monastery", "moussaka", `Welcome. I am Brother Ilias, and there are nineteen of us here, and on Sundays we cook for whoever comes up the hill, and last Sunday it was sixty one. So what I show you, I make it times eight. But the paper is for eight people, and I'll keep to the paper.

Three aubergines. All together it's a kilo, more or less. You cut them in rounds, one centimetre, and you brush them with olive oil, ninety millilitres, and they go in the oven, they don't go in the pan; in the pan they drink like sailors. Two hundred and twenty, two hundred in a fan oven. Twenty five minutes.

Now the lamb. Eight hundred grams, minced, not too lean. You brown it for ten minutes and you leave it alone, it isn't lonely. Then two onions, and eight minutes. Three cloves of garlic, cinnamon, a teaspoon and a half, oregano, a teaspoon, one minute only. Then wine, and we make this wine, so I can say it's not good: a hundred and fifty mil. One tin of tomatoes. Tomato puree, four tablespoons. And it simmers for thirty five minutes, and you say your prayers, or you listen to the football.

The potatoes, half a kilo, boil them for twelve minutes and slice them.

Then the white sauce. Seventy grams of butter. The same of flour. Two minutes, stir. And milk, eight hundred mil, slowly, slowly, as Father Markos goes up the stairs. Five minutes till it's thick. Take it away from the fire, and two yolks, and half the cheese. The cheese is a hundred grams in all, kefalotyri, and if you don't find it use something hard and old, there's no shortage. And nutmeg, a quarter of a teaspoon.

And now you build. The dish is twenty five by thirty five. Potatoes, aubergines, lamb, sauce, and the other half of the cheese.

A hundred and eighty for this, or a hundred and fifty in the fan, and it stays forty five minutes. And then comes the part that's a test for the soul. Three hours it must stand before you put the knife. If you cut it hot, it falls, like pride.`,
		[]string{"differs: four tablespoons | 2 tbsp", "pair: A hundred and eighty for this, or a hundred and fifty in the fan | 180 °C / 160 °C fan", "differs: Three hours | 30 minutes"}},
	{"between calls", "sourcherry", `hi so i've got twenty minutes before my next meeting and i've promised somebody a clafoutis so let's see it's the laziest pudding in france which is saying something

sour cherries i've got four hundred and fifty grams they're frozen i stone them or i don't depending on who's coming my mother-in-law gets the stones

oven on one eighty five it's a funny number i know it's one sixty five if it's a fan and butter your dish it's a twenty four centimetre one fifteen grams does it

so in a bowl you want eggs six eggs and sugar a hundred and twenty grams whisk that two minutes until it's a bit frothy then flour ninety grams and get the lumps out now and then milk three hundred mil and cream half of that so a hundred and fifty and then kirsch a tablespoon

sorry that's my phone it's only a number i don't know right

and let that sit it needs thirty minutes and that's my meeting sorted

okay i'm back did you miss me that was fifty minutes in the end karl had slides so cherries in batter over and it goes in for thirty eight to forty two minutes and it comes up like a hat and then it goes down again and that's normal that's france

fifteen minutes to cool and it's enough for six`,
		[]string{"differs: six | 4", "not said:  | ¼ tsp"}},
	{"nothing wrong: a sponge", "sponge", `Hello my loves. It's Mavis, it's Wednesday, and the vicar's coming at four so we haven't got all day.

Oven first, because I always forget and then I'm stood here like a lemon. A hundred and eighty, or if you've got one with a fan, a hundred and sixty, and that's gas four for my sister in Rhyl. And you want two tins, eight inches, well, twenty centimetres they call it now, and put some paper in the bottom.

Butter next. Two hundred and twenty five grams and it must be soft, I leave mine on the boiler. Caster sugar, two hundred grams. And you beat that and you beat it and you beat it, five minutes by that clock, and that clock's been right since the coronation. Then the eggs. There's four of those. One goes in, and you beat, and then another goes in.

Now flour, self raising, two hundred and fifty grams, and I know the old recipe said two twenty five, but the eggs have got bigger. Two teaspoons of baking powder. Fold it, don't stir it, this isn't cement. And if it's stiff, milk, three tablespoons.

Half in this one and half in that one. In they go, and don't open that door for twenty five minutes. Poke it with something thin. If it comes out clean it's cooked, if it doesn't, it isn't.

They sit in the tins for ten minutes and then they come out on the rack and they want a good hour or your cream will run off down the drive. Cream, a hundred and fifty mil, whip it. Raspberry jam, six tablespoons, and that's one jar if you've got grandchildren. Stick the two together.

Ten slices. There's only me and the vicar.`, nil},
	{"nothing wrong: a chili", "chili", `alright welcome back to the garage where the magic happens it is nineteen degrees out there and that's not celsius so we are making chili

i've got my dutch oven on medium two tablespoons of olive oil get that shimmering and in goes one yellow onion a big one diced up and you cook that down six to eight minutes and i talk to mine i tell it it's doing great and when it's soft it's garlic time three cloves minced and that only gets thirty seconds because burnt garlic is how you lose friends

okay turkey pound and a half of ground turkey and i know i know my dad won't speak to me it's fine break it up ten minutes till there's no pink

spices chili powder two tablespoons cumin two teaspoons kosher salt one teaspoon and toast it a minute you'll smell it the neighbors will smell it

then one big can of crushed tomatoes that's the twenty eight ouncer and black beans two cans fifteen ounces each drain em rinse em and two cups of chicken broth and then you walk away forty five minutes on a simmer i'm going to go reorganize my sockets

hey we're back so it's been forty five turn it off and now it needs to stand there for fifteen minutes and think about what it's done and then sour cream about half a cup for the table

that's six bowls or three of my brother in law`, nil},
	{"nothing wrong: cookies", "cookies", `So the thing about this cookie, and I've made, conservatively, four thousand of these, is that people under-cream the butter. So. Cup of butter, unsalted, soft. Three quarters of a cup of granulated, a full cup of brown, and I pack it down with my thumb. And then three minutes. Three. I set a timer, I don't trust myself. It should look like frosting.

Two eggs, vanilla, two teaspoons of that. Scrape the bowl. Everybody skips the scraping.

Dry stuff: two and a quarter cups of flour, a teaspoon of baking soda, half a teaspoon of salt. Low speed, or you'll be wearing it. And the chips, a cup and a half, I use dark, my kids use whatever's on sale.

And then it goes in the fridge for two hours, and I know you don't want to, nobody's ever wanted to. But I ran it side by side, zero, one, two and twenty four, and two's where it gets good and twenty four isn't twelve times better.

Three seventy five in the oven. Scoop them out, two inches apart, because they're going to move. Nine to eleven minutes; I pull mine at ten, when the edges are gold and the middle's still sort of lying to you. Five minutes on the sheet before you touch them. That's twenty four cookies, or twenty three if you're honest about the dough.`, nil},
	{"nothing wrong: a pot loaf", "sourdough", `hello from the boat we've been tied up in this town nine days because the lock's broken and there's nowhere to buy bread so

flour i've got four hundred and fifty grams of strong white and fifty of rye and to that three hundred and fifty grams of water and i weigh water i don't measure it because the boat's never level and you mix that up with your hand and leave it sat there for three quarters of an hour

that's a thing called the autolyse it's french for having a cup of tea

then it's a hundred grams of starter which has to float and the salt ten grams in a bit of a squidge and now you're going to stretch it and fold it four goes of that with half an hour in between and it goes from swamp to something

then it's five hours give or take on top of the engine casing when it's half as big again you shape it and it's in the fridge for the night twelve to sixteen hours and the fridge on here's about the size of a shoebox so the milk comes out

oven as hot as you've got two fifty with the pot in it and then in she goes lid on for twenty minutes then you whip the lid off and take it down to two twenty and it has twenty five minutes more and i've a probe from the chandler's and it wants to say ninety seven in the middle

and then leave it alone for two hours i've got a padlock on mine`, nil},
	{"nothing wrong: a chicken", "roast", `Good evening. There's one chicken in this house and four of us, and that's a kind of mathematics.

It's been out of the fridge for an hour. That matters more than anything else I'm going to say. Oven to two hundred, one eighty if it blows hot air about. Now butter: forty grams, soft, and I put it under the skin, here, with two fingers, like I'm looking for change. Two teaspoons of flaky salt all over. Inside, one lemon, I prick it, and four cloves of garlic, and I don't peel them, I'm sixty three, I haven't time.

Potatoes. Eight hundred grams, in quarters. Toss them in olive oil, two tablespoons, put them all round it, like an audience. And that's it, it goes in for an hour and twenty minutes. I don't baste. I used to baste. I used to do a lot of things.

What you're after is seventy five degrees, in the thigh, not touching the bone. And then the hard bit: it rests. Twenty minutes. My father carved straight away, all his life, and we ate our dinner off a wet board.

The tin goes on the heat. Stock, three hundred mil, and you boil it hard for four minutes and scrape. That's gravy. Everything else is just wallpaper paste.`, nil},
	{"nothing wrong: fudge", "fudge", `right fudge and i'm gonna say this now because my solicitor says i have to sugar at this temperature will take your skin off so no kids no cats no phones

line a tin square one eighteen centimetres across

big pan bigger than you think so you want four hundred and fifty grams of granulated and a hundred grams of butter and then there's two milks in this there's evaporated milk that's a hundred and seventy mil and ordinary milk full fat a hundred and fifty low heat and you just stir it round and round for ten minutes till you can't hear any crunch

and then you bring it up and you're boiling it and you want a hundred and sixteen on your thermometer and it takes about fifteen minutes and it'll sit at a hundred and twelve for what feels like a fortnight don't panic it's thinking

off the heat five minutes just leave it and then vanilla paste a teaspoon sea salt a teaspoon and now the beating eight minutes by hand with a wooden spoon i did this once with a hand whisk and it came out like gravel and when it goes from shiny to matt you've about ten seconds to get it in the tin

three hours to set and then six cuts this way and six that way that's thirty six squares and my postman's already been twice`, nil},
	{"nothing wrong: dal", "dal", `Welcome home, everybody. It's raining in Leicester, so it's dal.

Two hundred and fifty grams of red lentils. Rinse them till the water's clear, it's about five goes, I count in Gujarati. Then soak them, twenty minutes, while you find your other shoe. Drain.

In the pan with a litre of water and a teaspoon of turmeric, and it comes up, and there's a foam, and you take the foam off, my mum says that's where the gas is. Twenty five minutes. Soft, you want to be able to squash one with your thumb.

Coconut milk, one tin, four hundred mil. Salt, one and a half teaspoons. Ten more minutes, just blipping.

And then the tadka, which is the whole point of being alive. Three tablespoons of ghee. Get it hot. Cumin seeds, two teaspoons, mustard seeds, just the one, and stand back. Thirty seconds and they're popping like bubble wrap. Curry leaves, a dozen, they spit. Chillies, two green ones, slit. And over it goes, and listen to it.

It feeds four, with rice. My brother eats it out of the pan with a ladle, and he's forty one.`, nil},
	{"nothing wrong: jam", "jam", `We had that many plums this year the tree fell over. I'm not joking, it's lying there, I'll show you after. So it's jam.

A kilo and a half of plums, cut in half, stones out, or leave them in and count them, I don't mind. Two hundred and fifty mil of water, and a cinnamon stick, and you let that tick over till they've given up, it'll be twenty minutes.

In goes the sugar. It's a kilo, and it's the one that says jam on it. And the juice of two lemons. Now, low, dead low, and stir till you can't feel any grit on the bottom. I allow ten minutes. If you boil it before it's dissolved you'll have a jar of glass.

Then whack it up. Proper boil. Twelve minutes on mine, and if you've got one of them thermometers it's a hundred and five. If you haven't, cold plate, push it with your finger, if it wrinkles like my neck it's done.

Take it off, leave it be for a quarter of an hour so the fruit don't all float to the top, and then into your jars, hot ones. Six. I got six and a bit, and the bit's gone.`, nil},
	{"nothing wrong: lasagne", "lasagne", `ciao a tutti it's sunday it's eleven o'clock and if you start now you eat at two so andiamo

for the ragù thirty grams of butter in the big pan carrots two and celery two sticks and you chop them small small like for a canary and they go very slow for ten minutes then the meat beef half a kilo and pork half of that two hundred and fifty and now you let it get brown you leave it twelve minutes don't poke

wine red a glass a good glass that's two hundred mil and it boils away three minutes and then tomatoes two tins chopped and you go and call your mother because it needs an hour and a half

now the white sauce sixty grams of butter and the same of flour and you cook it two minutes like a paste and then milk nine hundred mil a little then a little then a little and it simmers eight minutes and in the end parmigiano seventy five grams and you taste and you taste again

three hundred grams of the sheets i don't boil them i soak them my cousin boils them we don't discuss it layers in a dish of thirty centimetres and on top mozzarella two hundred and fifty grams you tear it with the hands

oven one ninety one seventy if it's ventilated forty minutes and when it's making bubbles at the sides like a volcano it's ready and then nobody touches it for fifteen minutes and it's for eight but we are five`, nil},
	{"nothing wrong: a brisket", "brisket", `All right, folks, y'all have been asking for this since about 2016, so here it is, and it's going to take us all night.

I've got a brisket here, about ten pounds. Trim that fat cap down to a quarter inch, I use my finger as a ruler, my finger's been a quarter inch since high school. Rub's simple. Quarter cup of coarse black pepper, quarter cup of kosher salt, garlic powder, two tablespoons. That's Texas. Anything else is Kansas City. Pat it on and stick it in the fridge overnight.

Get your smoker to two fifty and hold it there. Then on she goes, fat side up, and you've got six hours ahead of you. Every forty five minutes I hit it with the vinegar, apple cider, half a cup in a spray bottle. About hour five it'll stall on you, and it'll just sit at one fifty something and you'll want to cry. Don't you touch that dial.

When it hits one sixty five in the middle, we wrap. Butcher paper or foil, I don't judge, with a cup of beef broth. And then it's back on for four to five hours more, and you pull it at two oh three. Not two hundred. Not two ten. Two oh three.

And rest it. Two hours in a cooler, with towels. I've driven one ninety miles in a cooler and it burned my hands when I got there. Slice it against the grain, and that'll feed twelve, or six Aggies.`, nil},
	{"nothing wrong: pizza", "pizza", `This is the pizza video, finally, and yes I'm going to talk about hydration, it's sixty five percent, moving on.

Six hundred grams of double zero. Three hundred and ninety of water, cold, like from the fridge cold. Fifteen grams of salt. And yeast, instant, one gram. You'll think I've misspoken. I haven't. One. It's got two days, it'll get there.

Knead that for eight minutes, cover it, let it have half an hour. Then it's four balls, two fifty each, into boxes, and they go in the fridge for forty eight hours. You can do twenty four, you can do seventy two, I've done ninety six and it tasted like beer.

On the day: out of the fridge three hours before you want to eat. And your stone wants an hour in there, an hour, at two fifty, or whatever your oven calls eleven.

Tomatoes, one tin, four hundred grams, squash them by hand, with a teaspoon of the oil. I've got two tablespoons here, the rest goes over the top at the end. Push it out to twenty eight centimetres or so, leave the edge alone. Two hundred and fifty grams of mozzarella between the four. Seven minutes, turn it once, halfway, because every oven has a hot corner. Four leaves of basil on each, so sixteen, if anyone's counting, and somebody in the comments always is.`, nil},
	{"nothing wrong: kimchi", "kimchi", `hi everyone my halmoni said i could only show this if i said it's the quick one the real one takes forty people and a garden

okay so one chinese cabbage about a kilo cut it up into four centimetre pieces ish and fifty grams of coarse salt get it right in there rub it and you leave that two hours and turn it over every half hour so the bottom gets a go

rinse it three times and taste it it should be like the sea on a good day and then drain it fifteen minutes in a colander squeeze it it's fine it likes it

paste so spring onions five ginger thirty grams grated garlic six cloves and i do it on a microplane and i've lost two fingerprints gochugaru four tablespoons fish sauce two and a teaspoon of sugar mix it up and wear gloves i didn't in 2019 and i touched my eye and that's a whole other video

rub it in every leaf and pack it in jars this makes two push it down and leave it out on the side for two days and you'll hear it it talks and then five days in the fridge and then that's it that's lunch forever`, nil},
	{"nothing wrong: tacos", "tacos", `Aloha from the car park behind the surf shop. I've got one burner, one cool box and about forty minutes till the tide's right, so it's fish tacos.

Slaw first, because it wants to sit. Half a white cabbage, as thin as you can be bothered. There's two limes in this, and one of them goes in here, all the juice, scrunch it, and leave it ten minutes. It'll go soft and a bit see-through. Mayo, a hundred grams, and chipotle, the paste, three tablespoons of that, and if you've kids do one, mine are feral, I do three.

Batter. Plain flour, a hundred and fifty. Cornflour, fifty. Baking powder, a teaspoon. And beer, it's got to be cold, two hundred and twenty mil, so that's two thirds of a can and I'll deal with the rest. Whisk it. Leave it be for a quarter of an hour.

Cod's about six hundred grams, strips, thick as your thumb. Oil's a litre, sunflower, and I'm after a hundred and eighty, and I've a thermometer off my dad, it's from a ship. In batches, don't crowd it, four minutes each go, and they should sound like rain.

Tortillas on the dry pan. There's eight of them. Twenty seconds one side, twenty seconds the other. And build. It does four people, two each, or me after a good morning.`, nil},
	{"nothing wrong: pavlova", "pavlova", `g'day so my nan's was famous she had her picture in the paper for it in 1961 and she'd kill me for putting this on the internet

oven on one fifty or one thirty if it's fan forced and get a bit of paper and draw a circle on it twenty two centimetres i use a dinner plate

four egg whites and not a speck of yolk i mean it not a speck whisk em up till they're stiff that's about four minutes then caster sugar two hundred and twenty grams and you go a spoonful at a time like you're feeding a baby and that's another eight minutes and it should be so thick you could stick it to a wall

fold in the cornflour two teaspoons and white vinegar one teaspoon and dollop it out on your circle

an hour and a quarter and you're not allowed to open that door then turn the oven off and leave it in there three hours and go to the beach or whatever you do

cream thickened cream three hundred mil and two tablespoons of icing sugar whip it and then passionfruit half a dozen cut em open scoop em over

feeds eight of us or nana and the dog there was one time nineteen people turned up and we cut it with a shovel`, nil},
	{"nothing wrong: bagels", "bagels", `Okay. So I worked nights in a bagel place, ninth street, two till ten, for six years, and my hands still do this when I sleep.

Flour. Strong. Five hundred grams. Seven of instant yeast, ten of salt. And this is malt, it's like tar, twenty grams, you can't leave it out, it's the whole flavor. Water's warm, two hundred and ninety mil. That's a stiff dough, it's supposed to be a fight. Twelve minutes by hand. If you're not sweating, you're doing it wrong.

It goes an hour and a half, somewhere out of the draft, till it's twice as big. Then you cut it in eight. They should be a hundred grams each, and I weigh them, because a small one's a rock. Poke a hole, swing it round your fingers. And then they take twenty minutes off.

Big pot. Two litres of water, and a tablespoon of bicarb in that, it'll foam. Oven's two twenty. Two hundred, fan. Gas seven.

They swim for a minute, you flip 'em, another minute. Get them on the tray. One egg white, brush it. And seeds, I've got forty grams of seeds here, everything kind, just dunk the face in it.

Twenty two to twenty five minutes and you want them dark, darker than you think. And don't cut one for half an hour. We had a guy who cut one hot every night, every night, six years.`, nil},
	{"nothing wrong: shortcakes", "shortcakes", `well hey there it's peach season y'all and i've got a bushel on the porch and it's ninety four degrees so we're not standing over anything

so slice up your peaches four big ones leave the skins on who's got time and a tablespoon of lemon juice and three tablespoons of brown sugar and just toss that around and let it sit thirty minutes and it makes its own syrup

oven on four twenty five now in a bowl two cups of flour quarter cup of sugar a tablespoon of baking powder and half a teaspoon of salt and then butter six tablespoons cold cold cold and you cut it in till it looks like gravel my grandmother used two knives i use my hands she'd have a fit

then two thirds of a cup of buttermilk just pour it in and stir it like six times that's it pat it out on the counter an inch thick and you want a three inch cutter and don't twist it and you should get six of em

fourteen to sixteen minutes till they're good and golden then give em fifteen minutes to cool down

cup of heavy cream whip it up split your shortcakes pile it on and that's six people happy and one of them's my ex husband`, nil},
	{"nothing wrong: stroganoff", "stroganoff", `Hello you. It's a Monday, it's dark at four, and nobody wants to talk to anybody, so here's something brown.

One large onion, sliced, finely. Fifty grams of butter, and you only want half of it now. Get that going gently, twelve minutes, and I mean gently, it's not a race. Put the radio on.

Mushrooms. Six hundred grams. It's a daft amount. Chestnut ones. The other half of the butter goes in, turn it up, and the mushrooms, and don't stir for the first bit. Ten minutes, till they've stopped crying and started browning.

Garlic, two cloves. Paprika, and it's the smoked one, the sweet one, a tablespoon. That gets a minute. Then white wine, a hundred and fifty mil, let it bubble for two minutes.

Stock, two hundred and fifty mil, vegetable. Mustard, Dijon, a tablespoon, heaped if you've had a day. And that ticks along for eight minutes.

Pasta water's on. Tagliatelle, three hundred and fifty grams between four of us, nine minutes, it says eleven on the bag and the bag's wrong.

Off the heat. Soured cream, two hundred grams, a pot. Stir it in. There. I've been making that since I was twenty two, in eleven different kitchens, and it's never once looked nice in a photograph.`, nil},
	{"nothing wrong: an ice", "icecream", `so ice cream and it's got bread in it and before you switch off the victorians loved it and they weren't wrong about everything

breadcrumbs wholemeal a hundred grams toss it with seventy five grams of brown sugar the light one on a tray one ninety one seventy in the fan fifteen minutes and you've got to give it a shuffle every five or the edges catch and it comes out like a sort of toffee gravel

right custard milk two hundred and fifty mil double cream three hundred and get it up to seventy degrees just steaming

in a bowl it's five yolks and ninety grams of caster and whisk that for three minutes till it's pale then your hot milk goes on slowly slowly and back in the pan low as you can and you're stirring and you want eighty two on the thermometer if it goes to eighty five you've made breakfast

into the fridge at least four hours and then it's in the machine twenty five minutes mine sounds like a tractor

last thing a tablespoon of rum dark rum and all the crumbs stir that through and then it's in the freezer for six hours i know

it does six scoops of it or one sad person`, nil},
	{"nothing wrong: biscuits", "anzac", `Morning, and thanks for having me back at the hall. There's a hundred and four names on that wall outside, and two of them are my great-uncles, so I make these every April.

A cup of rolled oats. A cup of plain flour. A cup of coconut, desiccated. Three quarters of a cup of brown sugar. It's all cups, because that's what they had, they had a cup.

In the little pan, a hundred and twenty five grams of butter, and golden syrup, two tablespoons, and I run the spoon under the hot tap first. Let that melt.

Now this is the fun bit, kids, come and stand here. A teaspoon of bicarb, and two tablespoons of boiling water, and watch. It fizzes. And that goes in the butter, and it goes up like a volcano, and then the whole lot goes in with the dry.

Roll it into balls, a tablespoon each, a level one, and put them on the tray with five centimetres in between, because they do spread, and I've had a tray come out as one biscuit. You'll get thirty or so.

A hundred and sixty, or a hundred and forty with the fan going. Eighteen minutes for chewy. My uncle Ern liked twenty five. He had no teeth left at forty. And five minutes on the tray before you lift them.`, nil},
	{"nothing wrong: rendang", "rendang", `assalamualaikum hello hello so it's rendang and it's sunday because you need a day you need a whole day and a fan

coconut first sixty grams the dried one in a pan with nothing no oil and you stir for six minutes and it'll go from white to gold to burnt in about four seconds so don't go anywhere and then you pound it till it's oily i've got my grandmother's stone it weighs eleven kilos it came on the plane on my lap

paste chillies dried ones six of them soaked shallots eight garlic five cloves galangal five centimetres you need a good knife for that blend it and fry it eight minutes till the oil comes out the side

then beef shin a kilo in big chunks because it shrinks and coconut milk two tins four hundred mil tins lemongrass three stalks you hit them and lime leaves four

now no lid and it goes for two and a half hours and you come past and give it a stir and you go away again and in the end it's nearly dry

then the toasted coconut and tamarind two tablespoons palm sugar one tablespoon and thirty minutes more and now you can't go away now you stand there because it's frying it's not boiling any more it's frying and that's rendang

six people or my cousin faizal`, nil},
}

func (s short) findings(change func([]verify.Cue) []verify.Cue) []string {
	var got []string
	for _, f := range checker.Check(read(snippetRecipes[s.recipe]), change(running(s.said))).Findings {
		got = append(got, worded(f))
	}
	return got
}

// How much of what is wrong in short cuts is found, and how much that is found is not wrong,
// in hundredths: what is doubted was learnt, and no cut of it is this short.
const (
	shortFound = 95
	shortFalse = 4
)

// judgeShort compares what is found in every short cut with what is wrong in it.
func judgeShort(t *testing.T, found func(short) (got, want []string)) {
	t.Helper()
	var sum tally
	for _, s := range shortCuts {
		got, want := found(s)
		if diff := cmp.Diff(want, got); diff != "" {
			t.Logf("%s (-want +got):\n%s", s.name, diff)
		}
		sum.add(compared(got, want))
	}
	t.Logf("short cuts: %v", sum)
	if !sum.meets(shortFound, shortFalse) {
		t.Errorf("short cuts: %v", sum)
	}
}

// compared counts what is found of what is wrong.
func compared(got, want []string) tally {
	sum := tally{planted: len(want), findings: len(got)}
	for _, w := range want {
		if slices.Contains(got, w) {
			sum.found++
		}
	}
	for _, g := range got {
		if !slices.Contains(want, g) {
			sum.wrong++
		}
	}
	return sum
}

func TestShortCuts(t *testing.T) {
	judgeShort(t, func(s short) (got, want []string) {
		return s.findings(func(c []verify.Cue) []verify.Cue { return c }), s.want
	})
}

// unpunctuated leaves the stops out of a finding.
func unpunctuated(all []string) []string {
	var out []string
	for _, f := range all {
		said, written, _ := strings.Cut(f, " | ")
		kind, said, _ := strings.Cut(said, ":")
		out = append(out, kind+": "+folded(said)+" | "+written)
	}
	slices.Sort(out)
	return out
}

func TestShortCutsWithoutStops(t *testing.T) {
	judgeShort(t, func(s short) (got, want []string) {
		return unpunctuated(s.findings(bare)), unpunctuated(s.want)
	})
}
