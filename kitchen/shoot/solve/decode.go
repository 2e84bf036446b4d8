package solve

import "slices"

// decoder turns orders of tasks into plans. It keeps its memory from one to
// the next and belongs to one goroutine.
type decoder struct {
	in       *instance
	line     timeline
	starts   []int
	lo, hi   []int // window of each start while a plan grows, with longest waits
	cause    []int // the placed task that last lowered hi, −1 for none
	pushed   []int // starts that an earlier try found to be too early
	isPlaced []bool
	film     []int
	queue    []int
}

func newDecoder(in *instance) *decoder {
	return &decoder{
		in: in, starts: make([]int, in.n), lo: make([]int, in.n), hi: make([]int, in.n),
		cause: make([]int, in.n), pushed: make([]int, in.n), isPlaced: make([]bool, in.n),
	}
}

// serial places the tasks in the given order, each at its earliest time, which
// is serial schedule generation. A task that comes too late for a longest wait
// pushes the task it waits for, and all is placed anew. order holds every task
// after those before it. The starts belong to d until the next call. ok is
// false if no plan came of it.
func (d *decoder) serial(order []int) (starts []int, ok bool) {
	copy(d.pushed, d.in.first)
	for range 20 + 2*d.in.n {
		late, by := d.place(order)
		if late < 0 {
			return d.starts, true
		}
		culprit := d.cause[late]
		if by >= never || culprit < 0 {
			return nil, false
		}
		d.pushed[culprit] = d.starts[culprit] + max(1, by)
		if d.pushed[culprit] > d.in.last[culprit] {
			return nil, false
		}
	}
	return nil, false
}

// place makes one try. It gives the task that comes too late, and by how many
// minutes; −1 if all is placed.
func (d *decoder) place(order []int) (late, by int) {
	in := d.in
	d.line.copyFrom(&in.base)
	d.film = append(d.film[:0], in.film...)
	copy(d.lo, d.pushed)
	copy(d.hi, in.last)
	for i := range in.n {
		d.cause[i], d.isPlaced[i] = -1, false
	}
	for i, isFixed := range in.fixed {
		if isFixed {
			d.set(i, in.first[i])
		}
	}
	for _, i := range order {
		if in.fixed[i] {
			if d.lo[i] > in.first[i] {
				return i, never
			}
			continue
		}
		start := d.earliest(i, d.lo[i])
		if start > d.hi[i] {
			return i, min(never, start-d.hi[i])
		}
		d.line.occupy(start, in.minutes[i], in.uses[i])
		d.set(i, start)
	}
	return -1, 0
}

// set notes a start and narrows the windows of the other tasks.
func (d *decoder) set(i, start int) {
	d.starts[i], d.isPlaced[i] = start, true
	d.lo[i] = start
	if !d.in.bounded {
		for _, a := range d.in.out[i] {
			d.lo[a.task] = max(d.lo[a.task], start+a.lag)
		}
		return
	}
	d.hi[i] = start
	d.queue = append(d.queue[:0], i)
	for len(d.queue) > 0 {
		j := d.queue[len(d.queue)-1]
		d.queue = d.queue[:len(d.queue)-1]
		for _, a := range d.in.out[j] {
			if lo := d.lo[j] + a.lag; !d.isPlaced[a.task] && lo > d.lo[a.task] {
				d.lo[a.task] = lo
				d.queue = append(d.queue, a.task)
			}
		}
		for _, a := range d.in.in[j] {
			if hi := d.hi[j] - a.lag; !d.isPlaced[a.task] && hi < d.hi[a.task] {
				d.hi[a.task], d.cause[a.task] = hi, i
				d.queue = append(d.queue, a.task)
			}
		}
	}
}

// earliest finds the first start of a task from a minute on, for film tasks
// with the set-ups before and after, which it occupies.
func (d *decoder) earliest(i, from int) int {
	in := d.in
	start := d.line.earliest(from, in.minutes[i], in.uses[i])
	if !in.filmed(i) {
		return start
	}
	for start < never {
		k, _ := slices.BinarySearchFunc(d.film, start, func(f, minute int) int {
			return d.starts[f] - minute
		})
		next := start
		firstAt, firstGap, nextAt, nextGap := 0, 0, 0, 0
		if k > 0 {
			before := d.film[k-1]
			end := d.starts[before] + in.minutes[before]
			firstGap = in.gap(before, i)
			firstAt = d.line.earliest(end, firstGap, in.setupUse)
			next = max(next, firstAt+firstGap)
		}
		if k < len(d.film) {
			end := start + in.minutes[i]
			nextGap = in.gap(i, d.film[k])
			nextAt = d.line.earliest(end, nextGap, in.setupUse)
			if nextAt+nextGap > d.starts[d.film[k]] {
				next = max(next, d.starts[d.film[k]]+in.minutes[d.film[k]])
			}
		}
		if next == start {
			d.line.occupy(firstAt, firstGap, in.setupUse)
			d.line.occupy(nextAt, nextGap, in.setupUse)
			d.film = slices.Insert(d.film, k, i)
			return start
		}
		start = d.line.earliest(min(next, never), in.minutes[i], in.uses[i])
	}
	return never
}

// parallel places, at each moment, what fits, by rank; a lower rank goes
// first. It needs a project without longest waits, latest ends and set-ups;
// else it gives no plan.
func (d *decoder) parallel(rank []int) (starts []int, ok bool) {
	in := d.in
	if in.bounded || in.gaps {
		return nil, false
	}
	d.line.copyFrom(&in.base)
	copy(d.lo, in.first)
	waits, ready := in.waiting()
	for now := 0; len(ready) > 0; {
		slices.SortFunc(ready, func(a, b int) int { return rank[a] - rank[b] })
		k, next := d.fits(ready, now)
		switch {
		case k >= 0:
			i := ready[k]
			d.line.occupy(now, in.minutes[i], in.uses[i])
			d.starts[i] = now
			for _, a := range in.out[i] {
				d.lo[a.task] = max(d.lo[a.task], now+a.lag)
			}
			ready = in.release(i, slices.Delete(ready, k, k+1), waits)
		case next >= never:
			return nil, false
		default:
			now = next
		}
	}
	return d.starts, true
}

// fits gives the first of the tasks that can start now, −1 if none can: then
// next is when the earliest of them can.
func (d *decoder) fits(ready []int, now int) (k, next int) {
	next = never
	for k, i := range ready {
		start := d.line.earliest(max(now, d.lo[i]), d.in.minutes[i], d.in.uses[i])
		if start == now {
			return k, now
		}
		next = min(next, start)
	}
	return -1, next
}

// waiting counts, for each task, those it waits for, and lists the tasks that
// wait for none.
func (in *instance) waiting() (waits, ready []int) {
	waits = make([]int, in.n)
	for i := range in.n {
		if waits[i] = len(in.before[i]); waits[i] == 0 {
			ready = append(ready, i)
		}
	}
	return waits, ready
}

// release adds to the ready tasks those that waited for task i last.
func (in *instance) release(i int, ready, waits []int) []int {
	for _, j := range in.after[i] {
		if waits[j]--; waits[j] == 0 {
			ready = append(ready, j)
		}
	}
	return ready
}
