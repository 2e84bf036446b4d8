package shop

import (
	"container/heap"
	"slices"
)

// size is a pack in whole units, and its price.
type size struct{ units, price int64 }

const (
	mostUnits = 1 << 60 // what is not below it is not counted, so that no sum overflows
	mostSums  = 200_000 // how many sums of packs are looked at, at most
)

// cover gives how many of each size together hold at least need units: at the
// least cost, then with the least over, then of the fewest packs. ok is false
// where a count is mostUnits or more, or where there are more than mostSums sums
// below need.
//
// This is the unbounded knapsack problem turned to covering, by dynamic
// programming over the sums that the sizes can make, smallest first. Every
// size holds something, so a sum's best way is known before it is built on.
func cover(need int64, sizes []size) (counts []int, ok bool) {
	if need <= 0 {
		return make([]int, len(sizes)), true
	}
	if need >= mostUnits || slices.ContainsFunc(sizes, func(s size) bool { return s.units >= mostUnits }) {
		return nil, false
	}
	c := covering{need: need, sizes: sizes, below: map[int64]way{0: {}}, open: reached{0}}
	for len(c.open) > 0 {
		c.buildOn(heap.Pop(&c.open).(int64))
		if len(c.below) > mostSums {
			return nil, false
		}
	}
	return c.counts(), true
}

// covering is a search under way.
type covering struct {
	need  int64
	sizes []size
	below map[int64]way // sums that are not enough
	open  reached       // those of them that nothing was added to yet
	end   int64         // the best sum that is enough; 0 while there is none
	best  way           // to end
}

// way is the best way to a sum: the least cost, then the fewest packs.
type way struct {
	cost  int64
	packs int
	last  int // which size came last
}

func (w way) betterThan(v way) bool {
	return w.cost < v.cost || w.cost == v.cost && w.packs < v.packs
}

// buildOn adds one pack of each size to a sum whose best way is known.
func (c *covering) buildOn(sum int64) {
	from := c.below[sum]
	for i, s := range c.sizes {
		to, w := sum+s.units, way{from.cost + s.price, from.packs + 1, i}
		switch {
		case c.end > 0 && w.cost > c.best.cost:
		case to >= c.need:
			if c.end == 0 || w.cost < c.best.cost || to < c.end || to == c.end && w.betterThan(c.best) {
				c.end, c.best = to, w
			}
		default:
			known, isKnown := c.below[to]
			if !isKnown {
				heap.Push(&c.open, to)
			}
			if !isKnown || w.betterThan(known) {
				c.below[to] = w
			}
		}
	}
}

// counts goes the best way back from its end.
func (c *covering) counts() []int {
	counts := make([]int, len(c.sizes))
	w, sum := c.best, c.end
	for sum > 0 {
		counts[w.last]++
		sum -= c.sizes[w.last].units
		w = c.below[sum]
	}
	return counts
}

// reached is a heap of sums, the smallest on top.
type reached []int64

func (q reached) Len() int           { return len(q) }
func (q reached) Less(i, j int) bool { return q[i] < q[j] }
func (q reached) Swap(i, j int)      { q[i], q[j] = q[j], q[i] }

// Push and Pop are heap.Interface's.
func (q *reached) Push(sum any) { *q = append(*q, sum.(int64)) }
func (q *reached) Pop() any {
	last := len(*q) - 1
	sum := (*q)[last]
	*q = (*q)[:last]
	return sum
}
