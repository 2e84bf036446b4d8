package shop

import (
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// sums are exact totals of one food, by how it is measured. A kind that nothing
// was added to is zero.
type sums struct {
	grams       measure.Number
	millilitres measure.Number
	counts      []measure.Amount // one a unit, in the order they came
	packs       []pack           // one a size, when every amount was in packs
	spoons      bool             // every volume was in spoons
	estimate    bool             // a weight in grams is an estimate

	// What all that is not in grams weighs, each portion by its own form.
	weight      measure.Number
	noWeight    bool // the larder lacks one of them
	weightGuess bool // one of them is an estimate
}

// add takes one portion as it is measured.
func (s *sums) add(p portion) {
	switch p.amount.Unit.Kind() {
	case measure.Mass:
		per, _ := p.system.Grams(p.amount.Unit)
		s.grams = s.grams.Add(p.amount.To.Mul(per))
	case measure.Volume:
		per, ok := p.system.Millilitres(p.amount.Unit)
		if !ok {
			s.count(p.amount)
			return
		}
		s.millilitres = s.millilitres.Add(p.amount.To.Mul(per))
		s.spoons = s.spoons && isSpoon(p.amount.Unit)
		s.weighBeside(p)
	default:
		s.count(p.amount)
		s.weighBeside(p)
	}
}

func (s *sums) count(a measure.Amount) {
	for i := range s.counts {
		if s.counts[i].Unit == a.Unit {
			s.counts[i] = measure.Of(s.counts[i].To.Add(a.To), a.Unit)
			return
		}
	}
	s.counts = append(s.counts, a)
}

// weigh takes one portion by its weight; false if the larder has none for it.
func (s *sums) weigh(p portion) bool {
	if p.food == nil {
		return false
	}
	weighed, err := p.food.Grams(p.amount, p.form, p.system)
	if err != nil {
		return false
	}
	s.grams = s.grams.Add(weighed.Grams.To)
	s.estimate = s.estimate || weighed.Estimate
	return true
}

// weighBeside notes what a portion weighs, to be shown beside its own measure.
func (s *sums) weighBeside(p portion) {
	if p.food == nil {
		s.noWeight = true
		return
	}
	w, err := p.food.Grams(p.amount, p.form, p.system)
	s.noWeight = s.noWeight || err != nil
	s.weight = s.weight.Add(w.Grams.To)
	s.weightGuess = s.weightGuess || w.Estimate
}

// addUp sums portions of one food. Where some are weighed and others measured
// or counted, all that the larder can weigh are summed in grams. Several
// counted units alone stay apart: "1 bunch + 2 sprigs".
func addUp(portions []portion) sums {
	s := sums{spoons: true}
	kinds := map[measure.Kind]bool{}
	for _, p := range portions {
		if !p.amount.IsZero() {
			kinds[p.amount.Unit.Kind()] = true
		}
	}
	for _, p := range portions {
		switch {
		case p.amount.IsZero():
		case p.amount.Unit == measure.Stick && s.weigh(p): // sold by weight nearly everywhere
		case len(kinds) > 1 && p.amount.Unit.Kind() != measure.Mass && s.weigh(p):
		default:
			s.add(p)
		}
	}
	s.packs = packsOf(portions)
	return s
}

// packsOf gives the packs of each size; nil if some amount is not in packs.
func packsOf(portions []portion) []pack {
	var all []pack
	for _, p := range portions {
		switch {
		case p.amount.IsZero():
			continue
		case p.pack.count.IsZero():
			return nil
		}
		all = addPack(all, p.pack)
	}
	return all
}

func addPack(all []pack, more pack) []pack {
	for i, known := range all {
		if known.unit == more.unit && known.size.Unit == more.size.Unit && known.size.To.Equal(more.size.To) {
			all[i].count = known.count.Add(more.count)
			return all
		}
	}
	return append(all, more)
}

// exact lists the sums as amounts: grams, millilitres, then counts.
func (s sums) exact() []measure.Amount {
	var all []measure.Amount
	if !s.grams.IsZero() {
		all = append(all, measure.Of(s.grams, measure.Gram))
	}
	if !s.millilitres.IsZero() {
		all = append(all, measure.Of(s.millilitres, measure.Millilitre))
	}
	return append(all, s.counts...)
}

// soldByVolume tells whether the food's usual pack is a volume: milk, oil.
func soldByVolume(f *food.Food) bool {
	return f != nil && len(f.Packs) > 0 && f.Packs[0].Amount.Unit.Kind() == measure.Volume
}

func isSpoon(u measure.Unit) bool {
	switch u {
	case measure.Teaspoon, measure.Tablespoon, measure.Dessertspn, measure.Pinch, measure.Dash, measure.Smidgen, measure.Drop:
		return true
	}
	return false
}
