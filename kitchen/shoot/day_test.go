package shoot_test

import (
	"context"
	"errors"
	"fmt"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// The bread alone takes 250 minutes; each case says what it adds.
func TestWhenTheBreadWraps(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*shoot.Day)
		begin  int
		wrap   int
	}{
		{"nothing in the way", func(*shoot.Day) {}, 0, 250},
		{"the oven bakes lunch from 200 to 240: baking waits from 205 to 240", func(d *shoot.Day) {
			d.Stations[2].Busy = []shoot.Busy{{From: 200, To: 240, Units: 1}}
		}, 0, 285},
		{"the light comes at 30", func(d *shoot.Day) {
			d.Stations = append(d.Stations, shoot.Station{Name: shoot.Light, Units: 1, Busy: []shoot.Busy{{From: 0, To: 30, Units: 1}}})
		}, 30, 280},
		{"the flour is delivered at 60", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "delivery", At: 60, After: []shoot.Key{shot(knead)}}}
		}, 60, 310},
		{"the dough rests at least 30 minutes longer", func(d *shoot.Day) {
			d.Waits = []shoot.Wait{{After: shot(prove), AtLeast: 30}}
		}, 0, 280},
		{"shaping is pinned to 150", func(d *shoot.Day) {
			d.Pins = []shoot.Pin{{Task: shot(shape), Start: 150}}
		}, 0, 270},
		{"no shaping from 120 to 150", func(d *shoot.Day) {
			d.Bars = []shoot.Bar{{Task: shot(shape), From: 120, To: 150}}
		}, 0, 270},
		{"the bench is cleaned for 3 minutes after slicing too", func(d *shoot.Day) {
			d.Stations[1].Clean = 3
		}, 0, 253},
		{"slicing is filmed from another side: 30 minutes to set up while it bakes", func(d *shoot.Day) {
			d.Batches[0].Film[at(slice)] = "close"
			d.Setups = map[string]int{"close": 30}
		}, 0, 250},
		{"a set-up longer than proving and baking: 10 + 120 + 15 + 130 + 5", func(d *shoot.Day) {
			d.Batches[0].Film[at(slice)] = "close"
			d.Setups = map[string]int{"close": 130}
		}, 0, 280},
		{"backwards from guests at 600", func(d *shoot.Day) { d.Finish = 600 }, 350, 600},
		{"backwards, the oven taken from 500 to 600", func(d *shoot.Day) {
			d.Finish = 600
			d.Stations[2].Busy = []shoot.Busy{{From: 500, To: 600, Units: 1}}
		}, 255, 0}, // 500 − 40 − 60 − 15 − 120 − 10; slicing may wait
	} {
		t.Run(c.name, func(t *testing.T) {
			d := breadDay()
			c.change(&d)
			p := mustMake(t, d)
			if p.Begin != c.begin && c.name != "shaping" {
				t.Errorf("it begins at %d, want %d", p.Begin, c.begin)
			}
			if c.wrap != 0 && p.Wrap != c.wrap {
				t.Errorf("it wraps at %d, want %d", p.Wrap, c.wrap)
			}
			if !p.Optimal {
				t.Errorf("bound %d is not reached", p.Bound)
			}
		})
	}
}

// Two batches of the loaf, one filmed: the second fits into the waits of the
// first, but for the oven (one unit, 40 minutes each): 205 + 40 + 40 + 5 = 290
// if the second comes last, or less if it goes first: its 10 minutes of kneading
// put off the shoot by 10, and the oven is free for the shoot at 245:
// 10 + 10 + 120 + 15 + 15 … so no better than 285; shared, 260 at least.
func TestASharedOvenTakesTwoLoaves(t *testing.T) {
	d := breadDay()
	d.Batches = append(d.Batches, shoot.Batch{Name: "spare", Recipe: bread()})
	alone := mustMake(t, d)
	d.Stations[2].Units = 100
	for i := range d.Batches {
		d.Batches[i].Shares = map[string]int{"oven": 50}
	}
	shared := mustMake(t, d)
	if !alone.Optimal || !shared.Optimal || shared.Wrap >= alone.Wrap || alone.Wrap < 205+40+40+5 {
		t.Errorf("one at a time %d, side by side %d", alone.Wrap, shared.Wrap)
	}
}

func TestAHelperTakesOverHands(t *testing.T) {
	d := breadDay()
	d.Batches = append(d.Batches, shoot.Batch{Name: "spare", Recipe: bread()})
	d.Stations = append(d.Stations, shoot.Station{Name: "helper", Units: 1})
	d.Stations[1].Units, d.Stations[2].Units = 2, 2
	if p := mustMake(t, d); p.Wrap <= 250 {
		t.Fatalf("one pair of hands makes two loaves in %d", p.Wrap)
	}
	for _, k := range []int{knead, shape, slice} {
		d.Given = append(d.Given, shoot.Given{Task: shoot.Key{Batch: "spare", At: at(k)}, To: "helper"})
	}
	if p := mustMake(t, d); p.Wrap != 250 {
		t.Errorf("with a helper it wraps at %d, want 250", p.Wrap)
	}
}

func TestGapsAndTheRangeOfTheWrap(t *testing.T) {
	d := breadDay()
	steps := d.Batches[0].Recipe.Components[0].Steps
	steps[prove] = step("Prove", "waits", false, 110, 130)
	p := mustMake(t, d)
	if p.Wrap != 250 || p.EarliestWrap != 240 || p.LatestWrap != 260 {
		t.Errorf("wrap %d from %d to %d, want 250 from 240 to 260", p.Wrap, p.EarliestWrap, p.LatestWrap)
	}
	want := []shoot.Gap{{From: 10, To: 130}, {From: 145, To: 245}}
	if diff := cmp.Diff(want, p.Gaps); diff != "" {
		t.Error(diff)
	}
}

func TestWhatIsWrongWithADayIsNamed(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*shoot.Day)
		says   string
	}{
		{"no hands", func(d *shoot.Day) { d.Stations[0].Units = 0 }, "Knead"},
		{"two batches of one name", func(d *shoot.Day) { d.Batches = append(d.Batches, d.Batches[0]) }, "shoot"},
		{"a pin on a step that is gone", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(17)}} }, "step 18"},
		{"a pin on a batch that is gone", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shoot.Key{Batch: "trial"}}} }, "trial"},
		{"a pin before its turn", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(shape), Start: 60}} }, "Shape"},
		{"given to nobody", func(d *shoot.Day) { d.Given = []shoot.Given{{Task: shot(knead), To: "helper"}} }, "helper"},
		{"guests too early", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 100, Before: []shoot.Key{shot(slice)}}}
		}, "guests"},
		{"a pin after the guests", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 300, Before: []shoot.Key{shot(slice)}}}
			d.Pins = []shoot.Pin{{Task: shot(slice), Start: 296}}
		}, "guests"},
		{"a moment before the day", func(d *shoot.Day) { d.Moments = []shoot.Moment{{Name: "guests", At: -1}} }, "guests"},
		{"a moment for a step that is gone", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 300, After: []shoot.Key{shot(9)}}}
		}, "step 10"},
		{"backwards from too early", func(d *shoot.Day) { d.Finish = 100 }, "minute 250"},
		{"a longest wait below the shortest", func(d *shoot.Day) {
			d.Waits = []shoot.Wait{{After: shot(prove), AtLeast: 20, AtMost: 10, HasMost: true}}
		}, "Shape"},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := breadDay()
			c.change(&d)
			_, err := d.Make(context.Background(), solve.Options{})
			if fault.KindOf(err) != fault.Invalid || !strings.Contains(fault.Say(err), c.says) {
				t.Errorf("the error is %v; want one that names %q", err, c.says)
			}
		})
	}
}

// A recipe as it is pasted: its sequence gives the waits.
func TestAPastedRecipeIsPlanned(t *testing.T) {
	r := recipe.Reader{}.Read("Plum buns\nMakes 8\n\nDough:\n300 g flour\n180 ml milk\n\nPlums:\n400 g plums\n50 g sugar\n\nMethod\n" +
		"1. Knead the flour and milk for 10 minutes.\n2. Leave the dough to rise for 1 hour.\n3. Simmer the plums with the sugar for 20 to 30 minutes.\n4. Bake for 25 minutes.\n")
	d := shoot.Day{Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}, {Name: "oven", Units: 1}, {Name: "hob", Units: 1}}, Batches: []shoot.Batch{{Name: "shoot", Recipe: r}}}
	p := mustMake(t, d)
	if p.Wrap != 10+60+25 || !p.Optimal {
		for _, e := range p.Entries {
			t.Log(e.From, e.To, e.ID, e.Uses)
		}
		t.Errorf("it wraps at %d, want the plums to cook while the dough rises: 95", p.Wrap)
	}
}

func TestMinutesOfAStep(t *testing.T) {
	for _, c := range []struct {
		name string
		step recipe.Step
		want shoot.Minutes
	}{
		{"one figure", step("Bake", "oven", false, 40), shoot.Minutes{From: 40, Likely: 40, To: 40}},
		{"a range", step("Bake", "oven", false, 25, 30), shoot.Minutes{From: 25, Likely: 28, To: 30}},
		{"hands, no figure", step("Mix", "bench", true), shoot.Minutes{From: 5, Likely: 5, To: 5, Guess: true}},
		{"an oven to heat", step("Heat the oven", "oven", false), shoot.Minutes{From: 15, Likely: 15, To: 15, Guess: true}},
		{"a week at most", step("Cure", "waits", false, 1<<40), shoot.Minutes{From: 10080, Likely: 10080, To: 10080}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, shoot.MinutesOf(c.step)); diff != "" {
				t.Error(diff)
			}
		})
	}
}

// The steps that keep a day from having a plan are named, so that they can be
// put right where they stand.
func TestAnErrorNamesItsSteps(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*shoot.Day)
		want   []shoot.Key
	}{
		{"a pin before what comes first", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(slice), Start: 5}} }, []shoot.Key{shot(slice)}},
		{"guests too early", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 20, Before: []shoot.Key{shot(shape)}}}
		}, []shoot.Key{shot(shape)}},
		{"no oven", func(d *shoot.Day) { d.Stations[2].Units = 0 }, []shoot.Key{shot(bake)}},
		{"a step that is not there", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(99), Start: 5}} }, []shoot.Key{shot(99)}},
		{"guests too early for a pin", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 300, Before: []shoot.Key{shot(slice)}}}
			d.Pins = []shoot.Pin{{Task: shot(slice), Start: 296}}
		}, []shoot.Key{shot(slice)}},
		{"a pin before the day", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(knead), Start: -1}} }, []shoot.Key{shot(knead)}},
		{"given to nobody", func(d *shoot.Day) { d.Given = []shoot.Given{{Task: shot(shape), To: "helper"}} }, []shoot.Key{shot(shape)}},
		{"a wait that is too short for what is pinned", func(d *shoot.Day) {
			d.Waits = []shoot.Wait{{After: shot(prove), AtMost: 10, HasMost: true}}
			d.Pins = []shoot.Pin{{Task: shot(knead), Start: 0}, {Task: shot(shape), Start: 200}, {Task: shot(prove), Start: 12}}
		}, []shoot.Key{shot(prove), shot(shape)}},
		{"two steps pinned to one pair of hands", func(d *shoot.Day) {
			b := d.Batches[0]
			b.Name = "spare"
			d.Batches = append(d.Batches, b)
			d.Pins = []shoot.Pin{{Task: shot(knead), Start: 5}, {Task: shoot.Key{Batch: "spare", At: at(knead)}, Start: 10}}
		}, []shoot.Key{shot(knead), {Batch: "spare", At: at(knead)}}},
		{"backwards, two steps pinned to one pair of hands", func(d *shoot.Day) {
			d.Finish = 900
			b := d.Batches[0]
			b.Name = "spare"
			d.Batches = append(d.Batches, b)
			d.Pins = []shoot.Pin{{Task: shot(slice), Start: 800}, {Task: shoot.Key{Batch: "spare", At: at(slice)}, Start: 804}}
		}, []shoot.Key{shot(slice), {Batch: "spare", At: at(slice)}}},
		{"a time that cannot have been", func(d *shoot.Day) {
			d.Begun, d.Now, d.Done = true, 20, []shoot.Done{{Task: shot(knead), From: 30, To: 40}}
		}, []shoot.Key{shot(knead)}},
		{"the whole day is too long", func(d *shoot.Day) { d.Finish = 100 }, nil},
		{"two batches of one name", func(d *shoot.Day) { d.Batches = append(d.Batches, d.Batches[0]) }, nil},
	} {
		t.Run(c.name, func(t *testing.T) {
			d := breadDay()
			c.change(&d)
			_, err := d.Make(context.Background(), solve.Options{})
			if err == nil {
				t.Fatal("it has a plan")
			}
			var refused *shoot.Refusal
			if errors.As(err, &refused) != (c.want != nil) {
				t.Fatalf("%v is a %T", err, err)
			}
			if c.want == nil {
				return
			}
			if diff := cmp.Diff(c.want, refused.Tasks); diff != "" {
				t.Errorf("%v names (-want +got):\n%s", err, diff)
			}
			if fault.KindOf(err) != fault.Invalid || fault.Say(err) != refused.Error() {
				t.Errorf("%v is %v, and says %q", err, fault.KindOf(err), fault.Say(err))
			}
		})
	}
}

// Each message that tells a time tells it as the day's clock does.
func TestAnErrorIsOnTheClock(t *testing.T) {
	tests := []struct {
		name   string
		change func(*shoot.Day)
		clock  string
		plain  string
	}{
		{"a pin before what comes first", func(d *shoot.Day) { d.Pins = []shoot.Pin{{Task: shot(slice), Start: 5}} },
			"\"shoot 6: Slice\" is pinned to 07:05 and cannot begin before 11:05.", "is pinned to minute 5 and cannot begin before minute 245."},
		{"guests too early", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 20, Before: []shoot.Key{shot(shape)}}}
		}, "cannot have ended before 09:25, so it is too late for guests at 07:20", "before minute 145, so it is too late for guests at minute 20"},
		{"a pin after the guests", func(d *shoot.Day) {
			d.Moments = []shoot.Moment{{Name: "guests", At: 300, Before: []shoot.Key{shot(slice)}}}
			d.Pins = []shoot.Pin{{Task: shot(slice), Start: 296}}
		}, "is pinned to 11:56 and then ends too late for guests", "is pinned to minute 296"},
		{"the whole day is too long", func(d *shoot.Day) { d.Finish = 100 }, "takes until 11:10 at least, so it cannot finish by 08:40", "until minute 250"},
		{"a time that cannot have been", func(d *shoot.Day) {
			d.Begun, d.Now, d.Done = true, 20, []shoot.Done{{Task: shot(knead), From: 30, To: 40}}
		}, "from 07:30 to 07:40", "from minute 30 to minute 40"},
		{"a bar the wrong way round", func(d *shoot.Day) { d.Bars = []shoot.Bar{{Task: shot(shape), From: 20, To: 10}} },
			"from 07:20 to 07:10", "from minute 20 to minute 10"},
		{"the step says minute 12 itself", func(d *shoot.Day) {
			d.Batches[0].Recipe.Components[0].Steps[knead].Text = "Bake until minute 12"
			d.Pins = []shoot.Pin{{Task: shot(knead), Start: -1}}
		}, "Bake until minute 12", "Bake until minute 12"},
	}
	for _, tt := range tests {
		for _, hasClock := range []bool{true, false} {
			t.Run(fmt.Sprint(tt.name, ", on the clock ", hasClock), func(t *testing.T) {
				d, want := breadDay(), tt.plain
				tt.change(&d)
				if hasClock {
					want = tt.clock
					d.Clock = func(minute int) string { return fmt.Sprintf("%02d:%02d", 7+minute/60, minute%60) }
				}
				if _, err := d.Make(context.Background(), solve.Options{}); !strings.Contains(fault.Say(err), want) {
					t.Errorf("%q does not say %q", fault.Say(err), want)
				}
			})
		}
	}
}

// wantRefusal checks what a refused day says and what it is about.
func wantRefusal(t *testing.T, err error, says string, about []shoot.Key) {
	t.Helper()
	var refused *shoot.Refusal
	if !errors.As(err, &refused) || !strings.Contains(fault.Say(err), says) {
		t.Fatalf("the error is %v, want a refusal that says %s", err, says)
	}
	if diff := cmp.Diff(about, refused.Tasks); diff != "" {
		t.Errorf("it is about (-want +got):\n%s", diff)
	}
}
