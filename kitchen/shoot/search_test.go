package shoot_test

import (
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/shoot"
	"benchproof/kitchen/shoot/solve"
)

func TestASearchFindsWhatMakeFinds(t *testing.T) {
	for name, finish := range map[string]int{"forwards": 0, "backwards": 600} {
		t.Run(name, func(t *testing.T) {
			d := breadDay()
			d.Finish = finish
			want, err := d.Make(t.Context(), solve.Options{})
			if err != nil {
				t.Fatal(err)
			}
			s := d.Seek(t.Context(), shoot.Plan{}, solve.Options{})
			got, _, err := s.Result()
			if err != nil {
				t.Fatal(err)
			}
			if diff := cmp.Diff(want, got); diff != "" {
				t.Errorf("another plan (-made +searched):\n%s", diff)
			}
			at, bound, ok := s.Best()
			edge := got.Wrap
			if finish > 0 {
				edge = got.Begin
			}
			if !ok || at != edge || bound != got.Bound {
				t.Errorf("at its end it tells %d, %d, %v; the plan is %d with the bound %d", at, bound, ok, edge, got.Bound)
			}
		})
	}
}

// A stopped search keeps its best plan: at least the one it began with.
func TestAStoppedSearchKeepsItsBest(t *testing.T) {
	d := manyLoaves(6)
	before, err := d.Make(t.Context(), solve.Options{Steps: 200})
	if err != nil {
		t.Fatal(err)
	}
	s := d.Seek(t.Context(), before, solve.Options{Steps: 1 << 30})
	s.Stop()
	<-s.Done()
	got, _, err := s.Result()
	if err != nil {
		t.Fatal(err)
	}
	if got.Wrap > before.Wrap {
		t.Errorf("it wraps at %d, later than the plan it began with at %d", got.Wrap, before.Wrap)
	}
}

func TestASearchOfAnImpossibleDay(t *testing.T) {
	d := breadDay()
	d.Pins = []shoot.Pin{{Task: shot(slice), Start: 5}}
	s := d.Seek(t.Context(), shoot.Plan{}, solve.Options{})
	if _, _, err := s.Result(); err == nil {
		t.Error("it found a plan for an impossible day")
	}
	if _, _, ok := s.Best(); ok {
		t.Error("it tells of a plan")
	}
}

// manyLoaves is a day of so many loaves, two of which are filmed.
func manyLoaves(n int) shoot.Day {
	d := breadDay()
	first := d.Batches[0]
	for i := 1; i < n; i++ {
		b := first
		b.Name = "spare " + string(rune('a'+i))
		if i > 1 {
			b.Film = nil
		}
		d.Batches = append(d.Batches, b)
	}
	return d
}
