package solve

import (
	"math/rand/v2"
	"slices"
)

// crowd is how many plans are kept to breed from.
const crowd = 40

// population breeds orders of tasks. Everything it does follows from the seed.
type population struct {
	in      *instance
	decoder *decoder
	random  *rand.Rand
	members []member
	rules   [][]int // the priority rules
	started bool
	steps   int // decodings so far
}

// member is a plan with the order that gives it.
type member struct {
	order    []int
	starts   []int
	makespan int
}

func newPopulation(in *instance, seed uint64) *population {
	return &population{in: in, rules: in.rules(), decoder: newDecoder(in), random: rand.New(rand.NewPCG(seed, 0x5eed))}
}

// best gives the shortest plan found, ok false if none was.
func (p *population) best() (m member, ok bool) {
	if len(p.members) == 0 {
		return member{}, false
	}
	return p.members[0], true
}

// seedRules tries the priority rules of the literature, by serial and by
// parallel generation.
func (p *population) seedRules() {
	for _, rank := range p.rules {
		p.try(p.in.inOrderOfRank(rank))
		if starts, ok := p.decoder.parallel(rank); ok {
			p.steps++
			p.improve(slices.Clone(starts))
		}
	}
}

// run makes about so many decodings more, or until stop says so, or a plan of
// the target's length is found.
func (p *population) run(steps, target int, stop func() bool) {
	if !p.started {
		p.started = true
		p.seedRules()
	}
	for until := p.steps + steps; p.steps < until && !stop(); {
		if m, ok := p.best(); ok && m.makespan <= target {
			return
		}
		if len(p.members) < crowd/2 || p.random.IntN(20) == 0 {
			p.try(p.in.inOrderOfRank(p.noisyRank()))
			continue
		}
		p.try(p.child(p.pick(), p.pick()))
	}
}

// add takes in a plan that was found elsewhere. If it is not exact it leaves
// out what set-ups need: its order stays, its times may not.
func (p *population) add(starts []int, isExact bool) {
	if !isExact || p.in.gaps {
		p.try(p.in.orderOf(starts))
	}
	if isExact {
		p.improve(slices.Clone(starts))
	}
}

func (p *population) try(order []int) {
	p.steps++
	if starts, ok := p.decoder.serial(order); ok {
		p.improve(slices.Clone(starts))
	}
}

// improve justifies a plan and keeps it if it is worth it.
func (p *population) improve(starts []int) {
	for {
		before := p.in.project.Makespan(starts)
		if starts = p.decoder.justify(starts); p.in.project.Makespan(starts) >= before {
			break
		}
		p.steps++
	}
	p.keep(member{p.in.orderOf(starts), starts, p.in.project.Makespan(starts)})
}

// keep puts a member in its place, the shortest first, unless the same plan is
// there; the longest drops out of a full crowd.
func (p *population) keep(m member) {
	k, _ := slices.BinarySearchFunc(p.members, m.makespan, func(o member, makespan int) int { return o.makespan - makespan })
	for j := k; j < len(p.members) && p.members[j].makespan == m.makespan; j++ {
		if slices.Equal(p.members[j].starts, m.starts) {
			return
		}
	}
	p.members = slices.Insert(p.members, k, m)
	if len(p.members) > crowd {
		p.members = p.members[:crowd]
	}
}

// pick draws a parent: the better of two.
func (p *population) pick() member {
	return p.members[min(p.random.IntN(len(p.members)), p.random.IntN(len(p.members)))]
}

// child takes a stretch of the mother's order and fills in the rest as the
// father has it (two-point crossover), then swaps a few neighbours.
func (p *population) child(mother, father member) []int {
	n := p.in.n
	a, b := p.random.IntN(n+1), p.random.IntN(n+1)
	a, b = min(a, b), max(a, b)
	taken := make([]bool, n)
	order := make([]int, 0, n)
	for _, part := range []struct {
		from  []int
		until int
	}{{mother.order, a}, {father.order, b}, {mother.order, n}} {
		for _, i := range part.from {
			if len(order) >= part.until {
				break
			}
			if !taken[i] {
				taken[i] = true
				order = append(order, i)
			}
		}
	}
	for k := 1; k < n; k++ {
		if p.random.IntN(20) == 0 && !slices.Contains(p.in.before[order[k]], order[k-1]) {
			order[k-1], order[k] = order[k], order[k-1]
		}
	}
	return order
}

// noisyRank is a rule with a little chance in it.
func (p *population) noisyRank() []int {
	rules := p.rules
	rank := slices.Clone(rules[p.random.IntN(len(rules))])
	spread := 0
	for _, r := range rank {
		spread = max(spread, r)
	}
	for i := range rank {
		rank[i] += p.random.IntN(spread/4 + 2)
	}
	return rank
}

// rules rank the tasks, the lowest first: latest start, longest tail, slack,
// most work behind, earliest start, longest task. No rank is below 0.
func (in *instance) rules() [][]int {
	bound := in.bound()
	rules := make([][]int, 6)
	follow := in.followers()
	for i := range in.n {
		latest := min(in.last[i], bound-in.tail[i])
		rules[0] = append(rules[0], latest+in.minutes[i])
		rules[1] = append(rules[1], bound-in.tail[i])
		rules[2] = append(rules[2], latest-in.first[i])
		rules[3] = append(rules[3], in.n-follow[i])
		rules[4] = append(rules[4], in.first[i])
		rules[5] = append(rules[5], in.horizon-in.minutes[i])
	}
	for _, rule := range rules {
		lowest := 0
		for _, r := range rule {
			lowest = min(lowest, r)
		}
		for i := range rule {
			rule[i] -= lowest
		}
	}
	return rules
}

// followers counts, for each task, the tasks that must come after it.
func (in *instance) followers() []int {
	counts := make([]int, in.n)
	for i := range in.n {
		seen := make([]bool, in.n)
		stack := []int{i}
		for len(stack) > 0 {
			j := stack[len(stack)-1]
			stack = stack[:len(stack)-1]
			for _, k := range in.after[j] {
				if !seen[k] {
					seen[k] = true
					counts[i]++
					stack = append(stack, k)
				}
			}
		}
	}
	return counts
}

// inOrderOfRank lists the tasks by rank, each after those before it: of those
// whose forerunners are listed, the one of lowest rank is next.
func (in *instance) inOrderOfRank(rank []int) []int {
	waits, ready := in.waiting()
	order := make([]int, 0, in.n)
	for len(ready) > 0 {
		best := 0
		for k, i := range ready {
			if rank[i] < rank[ready[best]] || rank[i] == rank[ready[best]] && i < ready[best] {
				best = k
			}
		}
		i := ready[best]
		order = append(order, i)
		ready = in.release(i, slices.Delete(ready, best, best+1), waits)
	}
	return order
}
