package fault_test

import (
	"errors"
	"fmt"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
)

func TestWhatAMakerMakes(t *testing.T) {
	for _, c := range []struct {
		name string
		made *fault.Error
		want fault.Error
	}{
		{"about a field", fault.Invalidf("minutes", "%q is no number of minutes.", "ten"), fault.Error{Kind: fault.Invalid, Field: "minutes", Say: `"ten" is no number of minutes.`}},
		{"about the whole", fault.Invalidf("", "Two lines say the same."), fault.Error{Kind: fault.Invalid, Say: "Two lines say the same."}},
		{"not found", fault.NotFoundf("There is no episode %d.", 31), fault.Error{Kind: fault.NotFound, Say: "There is no episode 31."}},
		{"a conflict", fault.Conflictf("Somebody saved the %s in between.", "recipe"), fault.Error{Kind: fault.Conflict, Say: "Somebody saved the recipe in between."}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, *c.made); diff != "" {
				t.Errorf("made (-want +got):\n%s", diff)
			}
		})
	}
}

func TestWhatTheLogReads(t *testing.T) {
	cause := errors.New("disk full")
	for _, c := range []struct {
		name  string
		fault fault.Error
		want  string
	}{
		{"a sentence", fault.Error{Say: "Try again."}, "Try again."},
		{"a cause", fault.Error{Err: cause}, "disk full"},
		{"both", fault.Error{Say: "Try again.", Err: cause}, "Try again.: disk full"},
		{"neither", fault.Error{}, ""},
		{"a fault for its cause", fault.Error{Say: "Not saved.", Err: &fault.Error{Say: "Try again.", Err: cause}}, "Not saved.: Try again.: disk full"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := c.fault.Error(); got != c.want {
				t.Errorf("Error() = %q, want %q", got, c.want)
			}
			if got := errors.Is(&c.fault, cause); got != (c.fault.Err != nil) {
				t.Errorf("the cause is found: %v", got)
			}
		})
	}
}

// The first fault counts, from the outside in and from left to right.
func TestTheFirstFaultCounts(t *testing.T) {
	plain := errors.New("disk full")
	first, second := fault.Invalidf("title", "Give it a title."), fault.NotFoundf("There is no such episode.")
	for _, c := range []struct {
		name string
		err  error
		want fault.Error // the kind, field and sentence
		all  int
	}{
		{"no error", nil, fault.Error{}, 0},
		{"a plain one", plain, fault.Error{}, 0},
		{"a fault", first, fault.Error{Kind: fault.Invalid, Field: "title", Say: "Give it a title."}, 1},
		{"wrapped twice", fmt.Errorf("save: %w", fmt.Errorf("row 3: %w", second)), fault.Error{Kind: fault.NotFound, Say: "There is no such episode."}, 1},
		{"behind a plain one", errors.Join(plain, first), fault.Error{Kind: fault.Invalid, Field: "title", Say: "Give it a title."}, 1},
		{"two, joined", errors.Join(second, first), fault.Error{Kind: fault.NotFound, Say: "There is no such episode."}, 2},
		{"two in one format", fmt.Errorf("%w and %w", first, second), fault.Error{Kind: fault.Invalid, Field: "title", Say: "Give it a title."}, 2},
		{"one that was caused by another", &fault.Error{Kind: fault.Busy, Say: "Try again.", Err: first}, fault.Error{Kind: fault.Busy, Say: "Try again."}, 1},
		{"joined plain ones", errors.Join(plain, plain), fault.Error{}, 0},
	} {
		t.Run(c.name, func(t *testing.T) {
			got := fault.Error{Kind: fault.KindOf(c.err), Field: fault.Field(c.err), Say: fault.Say(c.err)}
			if diff := cmp.Diff(c.want, got); diff != "" {
				t.Errorf("the first fault (-want +got):\n%s", diff)
			}
			if got := fault.All(c.err); len(got) != c.all {
				t.Errorf("All gives %d faults, want %d", len(got), c.all)
			}
		})
	}
}

// drawTree draws an error of joined, wrapped and plain ones, and lists its
// faults in order.
func drawTree(t *rapid.T, depth int) (fields []string, err error) {
	switch kind := rapid.IntRange(0, 3).Draw(t, "kind"); {
	case kind == 0:
		return nil, errors.New("plain")
	case kind == 1 || depth == 0:
		field := rapid.StringMatching(`[a-z]{1,4}`).Draw(t, "field")
		return []string{field}, fault.Invalidf(field, "Change the %s.", field)
	case kind == 2:
		fields, err = drawTree(t, depth-1)
		return fields, fmt.Errorf("wrapped: %w", err)
	}
	var joined []error
	for range rapid.IntRange(1, 3).Draw(t, "joined") {
		more, inner := drawTree(t, depth-1)
		joined, fields = append(joined, inner), append(fields, more...)
	}
	return fields, errors.Join(joined...)
}

// However errors are joined and wrapped, All gives every fault once and in
// order, and the first of them is the one that counts.
func TestNoFaultIsLostInATree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		want, err := drawTree(t, 4)
		var got []string
		for _, f := range fault.All(err) {
			got = append(got, f.Field)
		}
		if diff := cmp.Diff(want, got); diff != "" {
			t.Fatalf("%v has the faults (-want +got):\n%s", err, diff)
		}
		if len(want) == 0 {
			if fault.KindOf(err) != fault.Internal || fault.Say(err) != "" {
				t.Fatalf("%v without a fault says %q", err, fault.Say(err))
			}
		} else if fault.Field(err) != want[0] {
			t.Fatalf("the field of %v is %q, want %q", err, fault.Field(err), want[0])
		}
	})
}

// What is wrong with a form stands beside its fields, all of it at once.
func ExampleAll() {
	err := errors.Join(
		fault.Invalidf("title", "Give the episode a title."),
		fault.Invalidf("target", "The target length is a whole number of minutes, for example 12."),
	)
	for _, f := range fault.All(err) {
		fmt.Printf("%s: %s\n", f.Field, f.Say)
	}
	// Output:
	// title: Give the episode a title.
	// target: The target length is a whole number of minutes, for example 12.
}

// The person reads the sentence; the log reads the cause as well.
func ExampleError() {
	err := fmt.Errorf("save recipe 12: %w", &fault.Error{Kind: fault.Busy, Say: "It could not be saved just now. Try again.", Err: errors.New("database is locked")})
	fmt.Println(fault.Say(err))
	fmt.Println(err)
	// Output:
	// It could not be saved just now. Try again.
	// save recipe 12: It could not be saved just now. Try again.: database is locked
}
