package shoot_test

import (
	"context"
	"fmt"

	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

// A plan's file, and what comes of it: the tart's pastry is chilled while the
// loaf is kneaded and proved, and the one oven takes the tart first.
func ExampleReadPlan() {
	p, err := shoot.ReadPlan([]byte(`{
		"stations": {"hands": 1, "oven": 1},
		"tasks": [
			{"id": "rub in", "minutes": 10, "uses": {"hands": 1}},
			{"id": "chill", "minutes": 20, "after": ["rub in"]},
			{"id": "bake the tart", "minutes": 30, "after": [{"id": "chill", "atMost": 60}], "uses": {"oven": 1}},
			{"id": "knead", "minutes": 15, "uses": {"hands": 1}},
			{"id": "prove", "minutes": 40, "after": ["knead"]},
			{"id": "bake the loaf", "minutes": 35, "after": ["prove"], "uses": {"oven": 1}, "latestEnd": 120}
		]}`))
	if err != nil {
		fmt.Println(err)
		return
	}
	r, err := solve.Plan(context.Background(), p, solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	// The hands are busy until 25, so the loaf is proved by 65 if it is kneaded
	// last; the tart is baked from 30 to 60.
	fmt.Println("ends at", r.Makespan, "and not before", r.Bound)
	// Output: ends at 100 and not before 100
}

// What cannot be planned says why, and about which step.
func ExampleDay_Make_refused() {
	d := breadDay()
	d.Pins = []shoot.Pin{{Task: shot(slice), Start: 200}}
	d.Clock = func(minute int) string { return fmt.Sprintf("%02d:%02d", 9+minute/60, minute%60) }
	_, err := d.Make(context.Background(), solve.Options{})
	fmt.Println(err)
	// Output: "shoot 6: Slice" is pinned to 12:20 and cannot begin before 13:05. Pin it later, or begin earlier.
}

// Kneading took 25 minutes instead of 10: all that is left moves by as much.
func ExampleDay_Replan() {
	before, err := breadDay().Make(context.Background(), solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	after, moved, err := breadDay().Replan(context.Background(), before, 25, []shoot.Done{{Task: shot(knead), From: 0, To: 25}}, solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, m := range moved {
		fmt.Println(m.ID, "from", m.Was, "to", m.Is)
	}
	fmt.Println("wraps at", after.Wrap, "instead of", before.Wrap)
	// Output:
	// shoot 2: Prove from 10 to 25
	// shoot 3: Shape from 130 to 145
	// shoot 4: Prove again from 145 to 160
	// shoot 5: Bake from 205 to 220
	// shoot 6: Slice from 245 to 260
	// wraps at 265 instead of 250
}

// A custard is whisked, waits on the bench while the oven bakes lunch, and is
// baked: it has stood for 10 minutes and then for 110.
func ExampleDay_Standings() {
	d := oneBatch(step("Whisk", "bench", true, 10), step("Bake", "oven", false, 40))
	d.Stations[1].Busy = []shoot.Busy{{From: 0, To: 120, Units: 1}}
	p, err := d.Make(context.Background(), solve.Options{})
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, s := range d.Standings(p, 60, allSpoils) {
		fmt.Println("from", s.From, "to", s.To, "it stands", s.Minutes, "minutes; cooked:", s.IsCooked)
	}
	// Output: from 0 to 120 it stands 120 minutes; cooked: false
}

// A search goes on in the background and can be stopped; what it has by then is
// its plan.
func ExampleDay_Seek() {
	s := breadDay().Seek(context.Background(), shoot.Plan{}, solve.Options{})
	<-s.Done()
	at, bound, ok := s.Best()
	fmt.Println(at, bound, ok)
	p, _, err := s.Result()
	fmt.Println(p.Wrap, p.Optimal, err)
	// Output:
	// 250 250 true
	// 250 true <nil>
}
