package project_test

import (
	"errors"
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot/project"
)

func TestARefusalIsSaidOnAClock(t *testing.T) {
	r := project.Refuse("glaze", []int{2, project.Origin, 1, 2}, "%q takes %d minutes and cannot start at %v, nor end by %v.", "glaze", 75, project.Minute(75), project.Minute(0))
	clock := func(minute int) string { return fmt.Sprintf("%d:%02d", 9+minute/60, minute%60) }
	if got, want := r.On(clock).Say, `"glaze" takes 75 minutes and cannot start at 10:15, nor end by 9:00.`; got != want {
		t.Errorf("on the clock it says %s, want %s", got, want)
	}
	plain := `"glaze" takes 75 minutes and cannot start at minute 75, nor end by minute 0.`
	if got := r.On(nil); got.Say != plain || got.Field != "glaze" || got.Kind != fault.Invalid {
		t.Errorf("without a clock it is %+v, want %s", got, plain)
	}
	var one *fault.Error
	if !errors.As(error(r), &one) || one.Say != plain || r.Error() != plain {
		t.Errorf("as a fault it is %+v", one)
	}
	if diff := cmp.Diff([]int{2, 1}, r.Tasks); diff != "" {
		t.Errorf("it is about (-want +got):\n%s", diff)
	}
}

// Whatever Check refuses about tasks, it says which, and they are there.
func TestCheckNamesTheTasksItIsAbout(t *testing.T) {
	seen := 0
	rapid.Check(t, func(t *rapid.T) {
		p := drawAll(t)
		for i := range p.Tasks {
			if rapid.IntRange(0, 3).Draw(t, "ends early") == 0 {
				p.Tasks[i].LatestEnd = rapid.IntRange(0, 6).Draw(t, "end")
			}
		}
		var r *project.Refusal
		if err := p.Check(); !errors.As(err, &r) {
			if err != nil {
				t.Fatalf("refused by a %T", err)
			}
			return
		}
		for _, i := range r.Tasks {
			seen++
			if i < 0 || i >= len(p.Tasks) || fault.Field(r) == "" {
				t.Fatalf("it is about task %d of %d, and the field %q", i, len(p.Tasks), fault.Field(r))
			}
		}
	})
	if seen == 0 {
		t.Error("nothing was refused")
	}
}
