package solve

import (
	"slices"

	"benchproof/kitchen/shoot/nogood"
)

// Above these sizes the prover would take more memory and time than it gives
// back: pairs of tasks that cannot run at once, and tasks.
const (
	maxPairs       = 20_000
	maxProverTasks = 600
)

// prover is an instance as a model of nogoods. Where it is not exact, what the
// set-ups need is left out, so that its bounds hold, and its plans are decoded
// anew to have it.
type prover struct {
	in       *instance
	model    *nogood.Model
	starts   []nogood.Var
	end      nogood.Var // the makespan
	pairs    []pair
	behind   [][]bool
	hasPairs bool // no pair was left out for their number
	isExact  bool
	firstOf  map[[2]int]nogood.Lit
	blocksOf []setupBlock
	betweens []between
}

// pair is two tasks that cannot run at once: isFirst is 1 if first comes first.
type pair struct {
	isFirst       nogood.Var
	first, second int
}

func newProver(in *instance) *prover {
	p := &prover{in: in, model: &nogood.Model{}, behind: in.behind()}
	for i := range in.n {
		p.starts = append(p.starts, p.model.Var(in.first[i], in.last[i]))
	}
	p.end = p.model.Var(0, in.horizon)
	p.model.SetAside(p.end)
	for i := range in.n {
		p.model.After(p.starts[i], p.end, in.minutes[i])
		for _, a := range in.out[i] {
			p.model.After(p.starts[i], p.starts[a.task], a.lag)
		}
	}
	p.addPairs()
	p.isExact = p.addSetups()
	for r := range in.stations {
		p.addLoad(r)
	}
	return p
}

// addPairs gives two tasks that cannot run at once an order.
func (p *prover) addPairs() {
	pairs := p.clashingPairs()
	if p.hasPairs = len(pairs) <= maxPairs; !p.hasPairs {
		return
	}
	for _, c := range pairs {
		c.isFirst = p.model.Var(0, 1)
		p.pairs = append(p.pairs, c)
		in, i, j := p.in, c.first, c.second
		p.model.AfterIf(c.isFirst.AtLeast(1), p.starts[i], p.starts[j], in.minutes[i]+in.gapIfFilmed(i, j))
		p.model.AfterIf(c.isFirst.AtMost(0), p.starts[j], p.starts[i], in.minutes[j]+in.gapIfFilmed(j, i))
	}
}

func (in *instance) gapIfFilmed(first, second int) int {
	if !in.filmed(first) || !in.filmed(second) {
		return 0
	}
	return in.gap(first, second)
}

// clashingPairs lists the pairs whose order is open. Of film tasks whose order
// is not, it asks for the set-up between them.
func (p *prover) clashingPairs() []pair {
	in := p.in
	peak := make([]int, len(in.stations))
	for r, s := range in.stations {
		peak[r] = s.Peak()
	}
	behind := p.behind
	var pairs []pair
	for i := range in.n {
		for j := i + 1; j < in.n; j++ {
			switch {
			case in.minutes[i] == 0 || in.minutes[j] == 0:
			case behind[i][j] && in.gapIfFilmed(i, j) > 0:
				p.model.After(p.starts[i], p.starts[j], in.minutes[i]+in.gapIfFilmed(i, j))
			case behind[j][i] && in.gapIfFilmed(j, i) > 0:
				p.model.After(p.starts[j], p.starts[i], in.minutes[j]+in.gapIfFilmed(j, i))
			case behind[i][j] || behind[j][i]:
			case in.clash(i, j, peak):
				pairs = append(pairs, pair{first: i, second: j})
			}
		}
	}
	return pairs
}

// clash tells whether two tasks together need more than a station ever has.
func (in *instance) clash(i, j int, peak []int) bool {
	for _, a := range in.uses[i] {
		for _, b := range in.uses[j] {
			if a.station == b.station && a.amount+b.amount > peak[a.station] {
				return true
			}
		}
	}
	return false
}

// behind tells, for each task, which must come after it.
func (in *instance) behind() [][]bool {
	all := make([][]bool, in.n)
	order := in.inOrder(in.ids())
	for _, i := range slices.Backward(order) {
		all[i] = make([]bool, in.n)
		for _, j := range in.after[i] {
			all[i][j] = true
			for k, is := range all[j] {
				all[i][k] = all[i][k] || is
			}
		}
	}
	return all
}

func (in *instance) ids() []int {
	all := make([]int, in.n)
	for i := range all {
		all[i] = i
	}
	return all
}

// addLoad adds a station. What it lacks at times is a piece of work that stands
// still. A station on which no two tasks can run at once, and that is always
// the same, needs no more than the pairs.
func (p *prover) addLoad(r int) {
	in := p.in
	peak := in.stations[r].Peak()
	users, isQueue, isFree := in.servesOne(r)
	blocks, pieces := p.blocks(r, peak), p.setupPieces(r)
	isFree = isFree && len(pieces) == 0
	isQueue = isQueue && (len(pieces) == 0 || p.meetsInTurn())
	if len(blocks) == 0 && isFree {
		return
	}
	for _, i := range users {
		for _, u := range in.uses[i] {
			if u.station == r {
				pieces = append(pieces, nogood.Piece{Start: p.starts[i], Minutes: in.minutes[i], Amount: u.amount})
			}
		}
	}
	if len(blocks) == 0 && len(p.pairs) > 0 && isQueue {
		p.model.Queue(pieces...)
		return
	}
	p.model.Load(peak, append(pieces, blocks...)...)
}

// blocks are the stretches in which a station has less than its peak.
func (p *prover) blocks(r, peak int) []nogood.Piece {
	var blocks []nogood.Piece
	add := func(from, to, capacity int) {
		if capacity < peak && from < to {
			blocks = append(blocks, nogood.Piece{Start: p.model.Var(from, from), Minutes: to - from, Amount: peak - capacity})
		}
	}
	s := p.in.stations[r]
	from, capacity := 0, s.Capacity
	for _, level := range s.Changes {
		add(from, level.From, capacity)
		from, capacity = level.From, level.Capacity
	}
	add(from, max(from, p.in.horizon)+1, capacity)
	return blocks
}

// hint makes the search try a plan's starts first.
func (p *prover) hint(starts []int) {
	for i, s := range starts {
		p.model.Hint(p.starts[i], s)
	}
	for _, c := range p.pairs {
		isFirst := 0
		if starts[c.first] < starts[c.second] {
			isFirst = 1
		}
		p.model.Hint(c.isFirst, isFirst)
	}
	p.hintSetups(starts)
}

// search looks for a plan that ends by a minute. It gives the plan's starts if
// one was found.
func (p *prover) search(by, contradictions int, stop func() bool) (outcome nogood.Outcome, starts []int, met int) {
	outcome, met = p.model.Search([]nogood.Lit{p.end.AtMost(by)}, contradictions, stop)
	if outcome == nogood.Found {
		starts = p.values()
	}
	return outcome, starts, met
}

// values gives the starts found last.
func (p *prover) values() []int {
	starts := make([]int, len(p.starts))
	for i, v := range p.starts {
		starts[i] = p.model.Value(v)
	}
	return starts
}
