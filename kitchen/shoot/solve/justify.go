package solve

import "slices"

// justify pushes every task of a plan as far right as the plan's end allows,
// the last one first, and then back to the left, the first one first. The new
// plan is never longer. It needs a project without longest waits and set-ups;
// else it gives the plan itself. starts is not changed.
func (d *decoder) justify(starts []int) []int {
	in := d.in
	if in.maxWaits || in.gaps {
		return starts
	}
	order := make([]int, in.n)
	end := 0
	for i, s := range starts {
		order[i] = i
		end = max(end, s+in.minutes[i])
	}
	slices.SortStableFunc(order, func(a, b int) int { return starts[b] + in.minutes[b] - starts[a] - in.minutes[a] })
	order = in.lastFirst(order)
	right := slices.Clone(starts)
	d.line.copyFrom(&in.base)
	for _, i := range order {
		if in.fixed[i] {
			continue
		}
		upTo := min(in.last[i], end-in.minutes[i])
		for _, a := range in.out[i] {
			upTo = min(upTo, right[a.task]-a.lag)
		}
		right[i] = d.line.latest(upTo, in.minutes[i], in.uses[i])
		if right[i] < in.first[i] {
			return starts
		}
		d.line.occupy(right[i], in.minutes[i], in.uses[i])
	}
	left, ok := d.serial(in.orderOf(right))
	if !ok {
		return starts
	}
	return slices.Clone(left)
}

// lastFirst mends an order so that no task comes before one that follows it:
// moments of no length can end together with what they wait for.
func (in *instance) lastFirst(order []int) []int {
	slices.Reverse(order)
	order = in.inOrder(order)
	slices.Reverse(order)
	return order
}

// orderOf lists the tasks by start, those that must come first first.
func (in *instance) orderOf(starts []int) []int {
	order := make([]int, in.n)
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int { return starts[a] - starts[b] })
	return in.inOrder(order)
}

// inOrder moves a task in front of those that wait for it, and else keeps the
// order.
func (in *instance) inOrder(order []int) []int {
	done := make([]bool, in.n)
	sorted := make([]int, 0, in.n)
	var add func(i int)
	add = func(i int) {
		if done[i] {
			return
		}
		done[i] = true
		for _, j := range in.before[i] {
			add(j)
		}
		sorted = append(sorted, i)
	}
	for _, i := range order {
		add(i)
	}
	return sorted
}
