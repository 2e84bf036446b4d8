package coverage

import (
	"cmp"
	"slices"
)

// due is a shot that waits to be filmed.
type due struct {
	item
	job int // −1 for one at any time
	at  int // when it is due, in the order asked about
}

// now counts the changes of one order.
func (f *film) now(plan *Plan) int {
	left, open := f.due(plan), map[int]int{}
	for _, d := range left {
		open[d.job]++
	}
	done, stands, runs := newSet(len(f.jobs)), -1, 0
	used := map[int]bool{}
	for len(left) > 0 {
		i := f.pick(left, done, stands)
		d := left[i]
		left = slices.Delete(left, i, i+1)
		if open[d.job]--; open[d.job] == 0 && d.job >= 0 {
			done.add(d.job)
		}
		if d.setup != stands {
			stands, used[d.setup] = d.setup, true
			runs++
		}
	}
	for _, each := range f.free {
		if !used[each.setup] {
			used[each.setup] = true
			runs++
		}
	}
	return max(0, runs-1)
}

// due lists the shots of the order in which they are due: by the minute, or by
// the list.
func (f *film) due(plan *Plan) []due {
	var all []due
	for i, j := range f.jobs {
		for _, shot := range j.shots {
			d := due{item{shot, j.setup}, i, shot}
			if plan != nil {
				d.at = -1
				if begins, ok := plan.Begins[j.at]; ok {
					d.at = begins
				}
			}
			all = append(all, d)
		}
	}
	if plan == nil {
		for _, each := range f.free {
			all = append(all, due{each, -1, each.shot})
		}
	}
	slices.SortStableFunc(all, func(a, b due) int { return cmp.Or(a.at-b.at, a.shot-b.shot) })
	return all
}

// pick is the first that cooking allows; of those due at once, one of the setup
// that stands.
func (f *film) pick(left []due, done set, stands int) int {
	first := -1
	for i, d := range left {
		if first >= 0 && d.at > left[first].at {
			break
		}
		if d.job >= 0 && !done.holds(f.jobs[d.job].before) {
			continue
		}
		if d.setup == stands {
			return i
		}
		if first < 0 {
			first = i
		}
	}
	return first
}
