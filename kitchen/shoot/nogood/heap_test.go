package nogood_test

import (
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/shoot/nogood"
)

// heapOf makes a heap of so many variables, all alike.
func heapOf(n int) *nogood.Heap {
	var h nogood.Heap
	for v := range n {
		h.Add(v)
	}
	return &h
}

// drain takes out everything, the first first.
func drain(h *nogood.Heap) []int {
	var order []int
	for {
		v, ok := h.Top()
		if !ok {
			return order
		}
		order = append(order, v)
		h.Pop()
	}
}

func TestInWhichOrderVariablesAreDecided(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*nogood.Heap)
		want   []int
	}{
		{"all alike: as they were added", func(*nogood.Heap) {}, []int{0, 1, 2, 3, 4}},
		{"one took part in a contradiction", func(h *nogood.Heap) { h.Bump(3) }, []int{3, 0, 1, 2, 4}},
		{"one took part in two, one in one", func(h *nogood.Heap) { h.Bump(1); h.Bump(4); h.Bump(4) }, []int{4, 1, 0, 2, 3}},
		{"late ones count more: 1 against 1 / 0.95", func(h *nogood.Heap) { h.Bump(0); h.Decay(); h.Bump(2) }, []int{2, 0, 1, 3, 4}},
		{"twice before is more than once after: 2 against 1 / 0.95", func(h *nogood.Heap) { h.Bump(0); h.Bump(0); h.Decay(); h.Bump(2) }, []int{0, 2, 1, 3, 4}},
		{"fourteen contradictions later once is more than twice: 0.95¹⁴ is below ½", func(h *nogood.Heap) {
			h.Bump(0)
			h.Bump(0)
			for range 14 {
				h.Decay()
			}
			h.Bump(2)
		}, []int{2, 0, 1, 3, 4}},
		{"thirteen later it is not: 0.95¹³ is above ½", func(h *nogood.Heap) {
			h.Bump(0)
			h.Bump(0)
			for range 13 {
				h.Decay()
			}
			h.Bump(2)
		}, []int{0, 2, 1, 3, 4}},
		{"taken out and put back", func(h *nogood.Heap) { h.Bump(2); h.Pop(); h.Insert(2) }, []int{2, 0, 1, 3, 4}},
		{"put back while it is there", func(h *nogood.Heap) { h.Insert(3); h.Insert(3) }, []int{0, 1, 2, 3, 4}},
		{"more active while it is out", func(h *nogood.Heap) { h.Pop(); h.Pop(); h.Bump(1); h.Insert(0); h.Insert(1) }, []int{1, 0, 2, 3, 4}},
		{"set aside: it does not come back", func(h *nogood.Heap) { h.Bump(2); h.Pop(); h.SetAside(2); h.Insert(2) }, []int{0, 1, 3, 4}},
	} {
		t.Run(c.name, func(t *testing.T) {
			h := heapOf(5)
			c.change(h)
			if diff := cmp.Diff(c.want, drain(h)); diff != "" {
				t.Errorf("order (-want +got):\n%s", diff)
			}
		})
	}
}

// Whatever is done to it, the top is the most active of those in it; of equal
// ones the first.
func TestTheTopIsTheMostActive(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(1, 12).Draw(t, "variables")
		h := heapOf(n)
		isIn := make([]bool, n)
		for v := range isIn {
			isIn[v] = true
		}
		for range rapid.IntRange(1, 60).Draw(t, "steps") {
			v := rapid.IntRange(0, n-1).Draw(t, "variable")
			switch rapid.IntRange(0, 3).Draw(t, "what") {
			case 0:
				h.Raise(v, float64(rapid.IntRange(0, 9).Draw(t, "by")))
			case 1:
				h.Decay()
				h.Bump(v)
			case 2:
				h.Insert(v)
				isIn[v] = true
			case 3:
				if top, ok := h.Top(); ok {
					h.Pop()
					isIn[top] = false
				}
			}
			want := -1
			for v, is := range isIn {
				if is && (want < 0 || h.Activity(v) > h.Activity(want)) {
					want = v
				}
			}
			if top, ok := h.Top(); ok != (want >= 0) || ok && top != want {
				t.Fatalf("the top is %d, %v, want %d", top, ok, want)
			}
		}
	})
}

// Activities that grow beyond all bounds are made smaller together: who is more
// active than whom stays.
func TestActivitiesStayFinite(t *testing.T) {
	h := heapOf(3)
	h.Raise(0, 1e99)
	h.Raise(2, 3e99)
	h.Raise(1, 2e99)
	before := [3]float64{h.Activity(0), h.Activity(1), h.Activity(2)}
	h.Raise(2, 1e100)
	if got := h.Activity(2); got > 1e100 || got <= 0 {
		t.Errorf("an activity of %g", got)
	}
	for v := range 2 {
		if got, want := h.Activity(v), before[v]*1e-100; got != want {
			t.Errorf("variable %d: %g, want %g", v, got, want)
		}
	}
	h.Bump(0) // by a step that was made smaller too
	if diff := cmp.Diff([]int{2, 1, 0}, drain(h)); diff != "" {
		t.Error(diff)
	}
	for range 20_000 { // 0.95 to the 20,000th is far below the least float
		h.Decay()
		h.Bump(1)
	}
	if got := h.Activity(1); got <= 0 || got > 1e101 {
		t.Errorf("after many contradictions the activity is %g", got)
	}
}

// The sequence of M. Luby, A. Sinclair and D. Zuckerman (1993), as the On-Line
// Encyclopedia of Integer Sequences has it (A182105; from memory).
func TestWhenToStartOver(t *testing.T) {
	want := []int{1, 1, 2, 1, 1, 2, 4, 1, 1, 2, 1, 1, 2, 4, 8, 1, 1, 2, 1, 1, 2, 4, 1, 1, 2, 1, 1, 2, 4, 8, 16}
	var got []int
	for k := range want {
		got = append(got, nogood.Luby(k+1))
	}
	if !slices.Equal(got, want) {
		t.Errorf("%v, want %v", got, want)
	}
	for k := range 15 { // each power of two comes half as often as the one below it
		if got, want := nogood.Luby(1<<(k+1)-1), 1<<k; got != want {
			t.Errorf("number %d is %d, want %d", 1<<(k+1)-1, got, want)
		}
	}
}
