package shoot_test

import (
	"fmt"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
)

// spoilsByName is of egg and milk until they are baked with flour, of cream at
// any time, and of rice once it is cooked.
func spoilsByName(r recipe.Recipe, component, line int, state shoot.State) bool {
	text := r.Components[component].Lines[line].Text
	switch {
	case strings.Contains(text, "cream"):
		return true
	case strings.Contains(text, "rice"):
		return state != shoot.Raw
	}
	return (strings.Contains(text, "egg") || strings.Contains(text, "milk")) && state != shoot.Baked
}

// Recipes as they are written, read and planned with one pair of hands and one
// oven; minutes by hand.
func TestWhatStandsInRecipes(t *testing.T) {
	tests := []struct {
		name, text string
		want       []string // "part.step of parts: from–to, minutes" and "cooked"
	}{
		{"the oven is heated: nothing stands in it", `Cake

200 g flour
3 eggs

Heat the oven to 180 °C.
Beat everything for 10 minutes.
Bake at 180 °C for 40 minutes.
Leave to cool for 3 hours.
`, []string{"1.3 of [0]: 0–15, 15"}}, // beaten by 10; the oven is hot at 15
		{"milk that is warmed is not cooked", `Buns

500 g flour
250 ml milk

Warm the milk to 38 °C, 5 minutes.
Knead everything for 10 minutes.
Leave to prove for 2 hours.
Bake at 200 °C for 20 minutes.
`, []string{"1.4 of [0]: 0–135, 135"}},
		{"milk that is warmed to 100 °F", `Buns

500 g flour
250 ml milk

Warm the milk to 100 °F, 5 minutes.
Leave to rest for 2 hours.
`, []string{"1.2 of [0]: 0–125, 125"}},
		{"custard that is cooked and cools", `Custard

500 ml milk
4 egg yolks

Whisk the yolks and milk for 5 minutes.
Stir on the hob until it reaches 82 °C, 10 minutes.
Leave to cool for 3 hours.
`, []string{"1.2 of [0]: 0–5, 5", "1.3 of [0]: 15–195, 180 cooked"}},
		{"egg that comes in at the end", `Rolls

500 g flour
300 ml water
1 egg

Knead the flour and water for 10 minutes.
Leave to prove for 3 hours.
Brush with the egg, 5 minutes.
Bake at 220 °C for 20 minutes.
`, []string{"1.4 of [0]: 190–195, 5"}},
		{"egg that is named at the end and in everything", `Rolls

500 g flour
1 egg

Knead everything for 10 minutes.
Leave to prove for 3 hours.
Brush with the remaining egg, 5 minutes.
Bake at 220 °C for 20 minutes.
`, []string{"1.4 of [0]: 0–195, 195"}},
		{"rice stands once it is cooked", `Rice

200 g rice

Leave the rice to soak for 3 hours.
Boil the rice for 12 minutes.
Leave to cool for 2 hours.
`, []string{"1.3 of [0]: 192–312, 120 cooked"}},
		{"cream comes into what is baked", `Gateau

200 g flour
3 eggs
300 ml cream

Beat the flour and eggs for 10 minutes.
Bake at 180 °C for 30 minutes.
Leave to cool for 4 hours.
Whip the cream for 5 minutes.
Leave to stand for 1 hour.
`, []string{"1.2 of [0]: 0–10, 10", "1.5 of [0]: 280–345, 65"}},
		{"with the method apart", `Tart

Pastry:
200 g flour

Filling:
300 ml cream

Method:
Rub the flour for 10 minutes.
Leave to rest for 2 hours.
Whip the cream for 5 minutes.
Leave to stand for 1 hour.
`, []string{"3.4 of [1]: 10–190, 180"}}, // whipped after the rubbing, it waits for the pastry until 130
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			d := shoot.Day{
				Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}, {Name: "oven", Units: 1}},
				Batches:  []shoot.Batch{{Name: "shoot", Recipe: recipe.Reader{}.Read(tt.text)}},
			}
			var got []string
			for _, s := range d.Standings(mustMake(t, d), 1, spoilsByName) {
				row := fmt.Sprintf("%d.%d of %v: %d–%d, %d", s.Task.At.Component+1, s.Task.At.Step+1, s.Of, s.From, s.To, s.Minutes)
				if s.IsCooked {
					row += " cooked"
				}
				got = append(got, row)
			}
			if diff := cmp.Diff(tt.want, got); diff != "" {
				t.Errorf("standing (-want +got):\n%s", diff)
			}
		})
	}
}

// What a swap-out has made the day before is in the food all the same.
func TestWhatWasMadeTheDayBeforeStands(t *testing.T) {
	d := oneBatch(step("Mix", "bench", true, 10), step("Chill", "fridge", false, 60), step("Fill", "bench", true, 150))
	d.Batches[0].Recipe.Components[0].Lines = []recipe.Line{{Text: "3 eggs"}}
	d.Batches[0].Swaps = map[recipe.Position]string{at(1): "swap-out 1"}
	want := []shoot.Standing{{Task: shot(2), Of: []int{0}, From: 0, To: 150, Minutes: 150}}
	if diff := cmp.Diff(want, d.Standings(mustMake(t, d), 1, spoilsByName)); diff != "" {
		t.Errorf("standing (-want +got):\n%s", diff)
	}
}

// A swap-out made the same morning hands on how long its food has stood.
func TestWhatASwapOutHandsOn(t *testing.T) {
	d := oneBatch(step("Mix", "bench", true, 10), step("Rest", "waits", false, 60), step("Fill", "bench", true, 20))
	until := at(1)
	d.Batches[0].Swaps = map[recipe.Position]string{until: "swap-out 1"}
	d.Batches = append(d.Batches, shoot.Batch{Name: "swap-out 1", Recipe: d.Batches[0].Recipe, Ahead: true, Until: &until})
	got := d.Standings(mustMake(t, d), 1, allSpoils)
	k := slices.IndexFunc(got, func(s shoot.Standing) bool { return s.Task == shot(2) })
	if k < 0 || got[k].Minutes != 90 || got[k].From != 0 {
		t.Errorf("%+v, want the filling to have stood 10 + 60 + 20", got)
	}
}

// The oven and the hob end all standing; more of what spoils never means less
// that is found.
func TestStandingsByLaw(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		d := drawDay(t)
		p, ok := plannable(t, d)
		if !ok {
			return
		}
		none := func(recipe.Recipe, int, int, shoot.State) bool { return false }
		raw := func(_ recipe.Recipe, _, _ int, s shoot.State) bool { return s == shoot.Raw }
		all, some := d.Standings(p, 1, allSpoils), d.Standings(p, 1, raw)
		if got := d.Standings(p, 1, none); got != nil {
			t.Fatalf("nothing spoils, and %v stands", got)
		}
		if len(some) > len(all) {
			t.Fatalf("raw food stands %d times, all food %d times", len(some), len(all))
		}
		for _, s := range some {
			if s.IsCooked {
				t.Fatalf("only raw food spoils, and this is cooked: %+v", s)
			}
		}
		for _, least := range []int{10, 60, 120} {
			count := 0
			for _, s := range all {
				if s.Minutes >= least {
					count++
				}
			}
			if got := d.Standings(p, least, allSpoils); len(got) != count {
				t.Fatalf("%d stand for %d minutes, want %d", len(got), least, count)
			}
		}
	})
}
