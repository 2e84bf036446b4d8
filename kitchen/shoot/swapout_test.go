package shoot_test

import (
	"context"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// The kitchen opens at minute 0, the shoot begins at 150; one pair of hands.
//
//	no extra make   150 + 10 + 120 + 15 + 60 + 40 + 5 = 400
//	1, proved       made 0–10, proved by 130; it is shaped first, and kneading is
//	                filmed while it proves again: 150 + 15 + 60 + 40 + 5 = 270
//	                (proved twice, or baked: shaping ends at 150 + 10 + 120 + 15
//	                = 295)
//	2, proved and   the second comes through its second prove at 10 + 120 + 15 +
//	proved twice    60 = 205 and goes on: 205 + 40 + 5 = 250; the other waits
//	                until 140 at the latest and is shaped from 150 on
//	3               the baked one is baked at 245 at the earliest: 245 + 5 = 250
func TestSwapOutsOfTheBread(t *testing.T) {
	d := breadDay()
	d.From = 150
	options, err := d.SwapOuts(context.Background(), 3, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	type row struct {
		Makes, Wrap int
		Optimal     bool
		Cuts        int
	}
	var got []row
	for _, o := range options {
		got = append(got, row{o.Makes, o.Wrap, o.Optimal, len(o.Cuts)})
	}
	want := []row{{0, 400, true, 0}, {1, 270, true, 1}, {2, 250, true, 2}, {3, 250, true, 2}}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Fatal(diff)
	}
	cut := shoot.Cut{Stage: shot(prove), Minutes: 120, Batch: "swap-out 1", Begins: options[1].Cuts[0].Begins, Lasts: 130}
	if diff := cmp.Diff([]shoot.Cut{cut}, options[1].Cuts); diff != "" {
		t.Error(diff)
	}
	if begins := options[1].Cuts[0].Begins; begins < 0 || begins > 20 {
		t.Errorf("the extra make begins at %d; it must be proved by 150, after 130 minutes", begins)
	}
	if options[0].Begins != 150 {
		t.Errorf("without extra makes the day begins at %d, want 150", options[0].Begins)
	}
}

// Made the evening before, the loaf costs the day nothing:
//
//	15 + 60 + 40 + 5 = 120 instead of 250, kneading being filmed meanwhile; with
//	a second, proved twice, the baking begins at once: 40 + 5 = 45, and there is
//	time to knead and shape while it bakes
func TestSwapOutsMadeTheEveningBefore(t *testing.T) {
	d := breadDay()
	d.Batches[0].Stages = []shoot.Stage{{At: at(prove), Overnight: true}, {At: at(proveAgain), Overnight: true}}
	options, err := d.SwapOuts(context.Background(), 3, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	var wraps []int
	for _, o := range options {
		wraps = append(wraps, o.Wrap)
	}
	if diff := cmp.Diff([]int{250, 120, 45}, wraps); diff != "" {
		t.Fatal(diff)
	}
	want := []shoot.Cut{{Stage: shot(prove), Minutes: 120, Batch: "swap-out 1", Overnight: true, Begins: -1, Lasts: 130}}
	if diff := cmp.Diff(want, options[1].Cuts); diff != "" {
		t.Error(diff)
	}
}

// A longest wait after proving holds for the extra make as well: what is proved
// by 130 at the earliest cannot wait longer than until 150, when the shoot begins.
func TestASwapOutKeepsTheLongestWait(t *testing.T) {
	d := breadDay()
	d.From = 150
	d.Waits = []shoot.Wait{{After: shot(prove), AtMost: 20, HasMost: true}}
	options, err := d.SwapOuts(context.Background(), 1, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	o := options[1]
	if o.Wrap != 270 || !o.Optimal {
		t.Fatalf("wrap %d, bound %d, want 270", o.Wrap, o.Bound)
	}
	proved := -1
	for _, e := range o.Plan.Entries {
		if e.Key == (shoot.Key{Batch: "swap-out 1", At: at(prove)}) {
			proved = e.To
		}
	}
	if waits := startOf(o.Plan, shape) - proved; waits < 0 || waits > 20 {
		t.Errorf("the extra make waits %d minutes, at most 20 are allowed", waits)
	}
}

// Guests at 300 come too soon for a loaf that is begun at 150; proved ahead it is
// sliced by 270.
func TestADayThatOnlyASwapOutSaves(t *testing.T) {
	d := breadDay()
	d.From = 150
	d.Moments = []shoot.Moment{{Name: "guests", At: 300, Before: []shoot.Key{shot(slice)}}}
	_, refused := d.Make(context.Background(), solve.Options{})
	options, err := d.SwapOuts(context.Background(), 3, solve.Options{})
	if err != nil || len(options) != 4 || refused == nil {
		t.Fatalf("%d options, %v; without a swap-out: %v", len(options), err, refused)
	}
	if options[0].Refused == nil || options[0].Refused.Error() != refused.Error() || options[0].Plan.Entries != nil {
		t.Errorf("without a swap-out it is refused for %v, want %v", options[0].Refused, refused)
	}
	for k, o := range options[1:] {
		if want := []int{270, 250, 250}[k]; o.Refused != nil || o.Wrap != want || !o.Optimal {
			t.Errorf("%d makes: wrap %d, bound %d, %v; want %d", o.Makes, o.Wrap, o.Bound, o.Refused, want)
		}
	}
	d.Moments[0].At = 30
	if _, err := d.SwapOuts(context.Background(), 3, solve.Options{}); fault.KindOf(err) != fault.Invalid {
		t.Errorf("guests at 30: the error is %v", err)
	}
}

func TestWithoutStagesThereAreNoSwapOuts(t *testing.T) {
	d := breadDay()
	d.Batches[0].Stages = []shoot.Stage{{At: at(knead)}} // it is filmed
	options, err := d.SwapOuts(context.Background(), 3, solve.Options{})
	if err != nil || len(options) != 1 || options[0].Wrap != 250 {
		t.Errorf("options %v, error %v; want the plain day only", options, err)
	}
}

func TestAStoppedComparisonKeepsAHonestBound(t *testing.T) {
	d := breadDay()
	d.From = 150
	ctx, stop := context.WithCancel(context.Background())
	stop()
	options, err := d.SwapOuts(ctx, 2, solve.Options{})
	if err != nil {
		t.Fatal(err)
	}
	for _, o := range options {
		if o.Bound > []int{400, 270, 250}[o.Makes] || o.Wrap < []int{400, 270, 250}[o.Makes] {
			t.Errorf("%d makes: wrap %d, bound %d", o.Makes, o.Wrap, o.Bound)
		}
	}
}

// Many stages: the choices of three are too many to plan each, and the bound
// must hold all the same.
func TestManyStagesAreAddedOneByOne(t *testing.T) {
	r := recipe.Recipe{Components: []recipe.Component{{Lines: []recipe.Line{{Text: "500 g flour"}}}}}
	d := shoot.Day{Stations: []shoot.Station{{Name: shoot.Hands, Units: 1}}}
	b := shoot.Batch{Name: "shoot", Film: map[recipe.Position]string{}}
	for k := range 10 {
		r.Components[0].Steps = append(r.Components[0].Steps, step("Fold", "bench", true, 5), step("Rest", "waits", false, 30+int64(k)))
		b.Film[at(2*k)] = "overhead"
		b.Stages = append(b.Stages, shoot.Stage{At: at(2*k + 1), Overnight: true})
	}
	r.Components[0].Steps = append(r.Components[0].Steps, step("Show", "bench", true, 5))
	b.Film[at(20)], b.Recipe = "overhead", r
	d.Batches = []shoot.Batch{b}
	options, err := d.SwapOuts(context.Background(), 3, solve.Options{Steps: 20_000})
	if err != nil {
		t.Fatal(err)
	}
	for k := 1; k < len(options); k++ {
		if o := options[k]; o.Wrap > options[k-1].Wrap || o.Bound > o.Wrap || o.Optimal != (o.Bound == o.Wrap) {
			t.Errorf("%d makes: wrap %d after %d, bound %d, optimal %v", o.Makes, o.Wrap, options[k-1].Wrap, o.Bound, o.Optimal)
		}
	}
	// 11 × 5 + 30 + … + 39 = 400 minutes; a cut splits the day in two that run
	// side by side.
	if options[0].Wrap != 400 || options[1].Wrap > 230 {
		t.Errorf("wraps %d and %d", options[0].Wrap, options[1].Wrap)
	}
}

func TestADayThatCannotBePlannedHasNoOptions(t *testing.T) {
	d := breadDay()
	d.Stations[0].Units = 0
	if _, err := d.SwapOuts(context.Background(), 1, solve.Options{}); fault.KindOf(err) != fault.Invalid {
		t.Errorf("the error is %v", err)
	}
}
