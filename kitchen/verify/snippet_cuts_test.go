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
