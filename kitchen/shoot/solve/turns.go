package solve

import (
	"math/rand/v2"
	"slices"
)

// turns shortens a plan in which every station serves one task at a time: it
// swaps neighbours on the longest chain, and keeps from swapping them back for a
// while (tabu search; E. Nowicki and C. Smutnicki, "A fast taboo search
// algorithm for the job shop problem", Management Science 42 (1996), and
// É. Taillard's estimate of a swap, ORSA Journal on Computing 6 (1994); from
// memory).
type turns struct {
	in       *instance
	random   *rand.Rand
	behind   [][]bool
	queues   [][]int // stations by which two tasks can clash, by task
	line     [][]int // by station: its tasks in order
	place    [][]int // by station, by task: its place in line, −1 for not there
	head     []int   // earliest start
	tail     []int   // minutes from the start to the end of the plan
	order    []int   // tasks, each after those before it
	degree   []int
	barred   map[[2]int]int // an order of two that may not come back before a move
	moves    int
	best     []int
	makespan int
}

// newTurns gives nil if the instance is not of that kind: stations that change
// or serve several at once, longest waits, latest ends, or set-ups by hand.
func newTurns(in *instance, seed uint64) *turns {
	t := &turns{in: in, random: rand.New(rand.NewPCG(seed, 0x7ab0)), barred: map[[2]int]int{}}
	if in.bounded || in.gaps && len(in.setupUse) > 0 {
		return nil
	}
	t.queues = make([][]int, in.n)
	for r, s := range in.stations {
		users, isQueue, isFree := in.servesOne(r)
		switch {
		case isFree && len(s.Changes) == 0:
			continue
		case !isQueue || len(s.Changes) > 0:
			return nil
		}
		place := make([]int, in.n)
		for i := range place {
			place[i] = -1
		}
		for _, i := range users {
			t.queues[i] = append(t.queues[i], len(t.line))
		}
		t.line, t.place = append(t.line, users), append(t.place, place)
	}
	if len(t.line) == 0 {
		return nil
	}
	t.behind = in.behind()
	t.head, t.tail, t.degree = make([]int, in.n), make([]int, in.n), make([]int, in.n)
	return t
}

// servesOne lists the tasks at a station, and tells whether no two of them can
// run at once, or all.
func (in *instance) servesOne(station int) (users []int, isQueue, isFree bool) {
	peak := in.stations[station].Peak()
	sum, lowest, second := 0, peak+1, peak+1
	for i := range in.n {
		for _, u := range in.uses[i] {
			if u.station != station || in.minutes[i] == 0 {
				continue
			}
			users = append(users, i)
			sum += u.amount
			if u.amount < lowest {
				lowest, second = u.amount, lowest
			} else {
				second = min(second, u.amount)
			}
		}
	}
	return users, lowest+second > peak, sum <= peak
}

// start begins from a plan.
func (t *turns) start(starts []int) {
	order := t.in.orderOf(starts)
	rank := make([]int, t.in.n)
	for k, i := range order {
		rank[i] = k
	}
	for r := range t.line {
		slices.SortFunc(t.line[r], func(a, b int) int { return rank[a] - rank[b] })
		for k, i := range t.line[r] {
			t.place[r][i] = k
		}
	}
}

// run makes so many moves from a plan, and gives the shortest plan it met.
func (t *turns) run(starts []int, moves, target int, stop func() bool) []int {
	t.start(starts)
	t.measure()
	t.best, t.makespan = slices.Clone(starts), t.in.project.Makespan(starts)
	for since, k := 0, 0; k < moves && t.makespan > target; k++ {
		if k%100 == 0 && stop() {
			break
		}
		t.moves++
		if !t.move() {
			break
		}
		if length := t.measure(); length < 0 {
			break
		} else if length < t.makespan {
			t.best, t.makespan, since = append(t.best[:0], t.head...), length, 0
		} else if since++; since > 3000 {
			t.shake()
			since = 0
		}
	}
	return t.best
}

// shake goes back to the best plan and makes some moves by chance.
func (t *turns) shake() {
	t.start(t.best)
	clear(t.barred)
	for range 5 + t.random.IntN(15) {
		t.measure()
		if swaps := t.swaps(); len(swaps) > 0 {
			s := swaps[t.random.IntN(len(swaps))]
			t.swap(s[0], s[1])
		}
	}
	t.measure()
}

// measure computes heads and tails, and gives the length of the plan; −1 if
// the tasks wait for each other in a ring.
func (t *turns) measure() int {
	t.begin()
	in, length := t.in, 0
	for k := 0; k < len(t.order); k++ {
		i := t.order[k]
		length = max(length, t.head[i]+in.minutes[i])
		for _, a := range in.out[i] {
			t.head[a.task] = max(t.head[a.task], t.head[i]+a.lag)
			t.done(a.task)
		}
		for _, r := range t.queues[i] {
			if j, ok := t.next(r, i); ok {
				t.head[j] = max(t.head[j], t.head[i]+t.lag(i, j))
				t.done(j)
			}
		}
	}
	if len(t.order) < in.n {
		return -1
	}
	for _, i := range slices.Backward(t.order) {
		t.tail[i] = t.tailWithout(i, -1)
	}
	return length
}

// begin counts what each task waits for, and lists those that wait for nothing.
func (t *turns) begin() {
	t.order = t.order[:0]
	for i := range t.in.n {
		t.degree[i] = len(t.in.before[i])
		for _, r := range t.queues[i] {
			if t.place[r][i] > 0 {
				t.degree[i]++
			}
		}
		t.head[i] = t.in.project.Tasks[i].NotBefore
		if t.degree[i] == 0 {
			t.order = append(t.order, i)
		}
	}
}

func (t *turns) done(i int) {
	if t.degree[i]--; t.degree[i] == 0 {
		t.order = append(t.order, i)
	}
}

// lag is how long after i its next at a station can start.
func (t *turns) lag(i, j int) int { return t.in.minutes[i] + t.in.gapIfFilmed(i, j) }

func (t *turns) next(r, i int) (j int, ok bool) {
	k := t.place[r][i] + 1
	if k >= len(t.line[r]) {
		return 0, false
	}
	return t.line[r][k], true
}

func (t *turns) previous(r, i int) (j int, ok bool) {
	k := t.place[r][i] - 1
	if k < 0 {
		return 0, false
	}
	return t.line[r][k], true
}

// swaps lists the neighbours at a station, on one longest chain, whose order
// can change and matters: those at the ends of a stretch at one station.
func (t *turns) swaps() [][2]int {
	chain, by := t.chain()
	var swaps [][2]int
	for k := 0; k+1 < len(chain); k++ {
		i, j := chain[k], chain[k+1]
		if by[k] < 0 || t.behind[i][j] || !t.areNeighbours(i, j) {
			continue
		}
		isFirst := k == 0 || by[k-1] != by[k]
		isLast := k+2 == len(chain) || by[k+1] != by[k]
		if isFirst && k > 0 || isLast && k+2 < len(chain) {
			swaps = append(swaps, [2]int{i, j})
		}
	}
	return swaps
}

// chain is a longest chain of tasks, and for each but the last the station that
// makes the next one wait for it, −1 if it is not a station.
func (t *turns) chain() (chain, by []int) {
	in := t.in
	at, length := -1, 0
	for i := range in.n {
		length = max(length, t.head[i]+t.tail[i])
	}
	for _, i := range t.order {
		if t.head[i]+t.tail[i] == length && t.head[i] == in.project.Tasks[i].NotBefore {
			at = i
			break
		}
	}
	for at >= 0 {
		chain = append(chain, at)
		next, station := -1, -1
		for _, a := range in.out[at] {
			if t.tail[at] == a.lag+t.tail[a.task] && t.head[a.task] == t.head[at]+a.lag {
				next = a.task
			}
		}
		for _, r := range t.queues[at] {
			if j, ok := t.next(r, at); ok && t.tail[at] == t.lag(at, j)+t.tail[j] && t.head[j] == t.head[at]+t.lag(at, j) {
				if next < 0 || t.random.IntN(2) == 0 {
					next, station = j, r
				}
			}
		}
		if next >= 0 {
			by = append(by, station)
		}
		at = next
	}
	return chain, by
}

// areNeighbours tells whether j follows i at once at every station both need.
func (t *turns) areNeighbours(i, j int) bool {
	for _, r := range t.queues[i] {
		if t.place[r][j] >= 0 && t.place[r][j] != t.place[r][i]+1 {
			return false
		}
	}
	return true
}

// move makes the best swap that is not barred, or one by chance if all are;
// false if there is none.
func (t *turns) move() bool {
	swaps := t.swaps()
	if len(swaps) == 0 {
		return false
	}
	best, least := -1, never
	for k, s := range swaps {
		length := t.estimate(s[0], s[1])
		if t.barred[[2]int{s[1], s[0]}] > t.moves && length >= t.makespan {
			continue
		}
		if length < least {
			best, least = k, length
		}
	}
	if best < 0 {
		best = t.random.IntN(len(swaps))
	}
	i, j := swaps[best][0], swaps[best][1]
	t.swap(i, j)
	t.barred[[2]int{i, j}] = t.moves + 8 + t.random.IntN(8)
	return true
}

func (t *turns) swap(i, j int) {
	for _, r := range t.queues[i] {
		if k := t.place[r][i]; t.place[r][j] == k+1 {
			t.line[r][k], t.line[r][k+1] = j, i
			t.place[r][j], t.place[r][i] = k, k+1
		}
	}
}

// estimate is about how long the longest chain through i or j is once j comes
// right before i.
func (t *turns) estimate(i, j int) int {
	headJ, headI := t.headWithout(j, i), t.headWithout(i, -1)
	tailI, tailJ := t.tailWithout(i, j), t.tailWithout(j, -1)
	for _, r := range t.queues[i] {
		if t.place[r][j] < 0 {
			continue
		}
		if before, ok := t.previous(r, i); ok {
			headJ = max(headJ, t.head[before]+t.lag(before, j))
		}
		if after, ok := t.next(r, j); ok {
			tailI = max(tailI, t.lag(i, after)+t.tail[after])
		}
	}
	headI = max(headI, headJ+t.lag(j, i))
	tailJ = max(tailJ, t.lag(j, i)+tailI)
	return max(headJ+tailJ, headI+tailI)
}

// headWithout is the head of a task without its neighbour other at a station.
func (t *turns) headWithout(i, other int) int {
	head := t.in.project.Tasks[i].NotBefore
	for _, a := range t.in.in[i] {
		head = max(head, t.head[a.task]+a.lag)
	}
	for _, r := range t.queues[i] {
		if before, ok := t.previous(r, i); ok && before != other {
			head = max(head, t.head[before]+t.lag(before, i))
		}
	}
	return head
}

// tailWithout is the tail of a task without its neighbour other at a station.
func (t *turns) tailWithout(i, other int) int {
	tail := t.in.minutes[i]
	for _, a := range t.in.out[i] {
		tail = max(tail, a.lag+t.tail[a.task])
	}
	for _, r := range t.queues[i] {
		if after, ok := t.next(r, i); ok && after != other {
			tail = max(tail, t.lag(i, after)+t.tail[after])
		}
	}
	return tail
}
