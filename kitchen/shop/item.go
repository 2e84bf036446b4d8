package shop

import (
	"slices"
	"strings"

	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
)

// item words what is taken of one food.
func (g *group) item(house measure.System) Item {
	total := g.total(g.portions, house)
	item := Item{
		Key: g.key, Name: g.name,
		Measure: total.measure, Small: total.small, Exact: total.exact, Estimate: total.estimate,
		Uses: g.uses(house), Optional: true,
	}
	var sizes []string
	for _, p := range g.portions {
		item.ToTaste = item.ToTaste || p.toTaste
		item.Optional = item.Optional && p.optional
		if item.Question == "" {
			item.Question = p.question
		}
		if p.size != "" && !p.amount.IsZero() {
			sizes = appendNew(sizes, p.size)
		}
	}
	if g.food != nil {
		item.FoodID, item.Name = g.food.ID, g.food.Name
		if severalPieces(g.food, item.Exact) {
			item.Name = plural(g.food)
		}
	}
	for _, p := range g.portions {
		if !strings.EqualFold(p.name, item.Name) && g.food != nil && !strings.EqualFold(p.name, g.food.Name) {
			item.AsWritten = appendNew(item.AsWritten, p.name)
		}
	}
	item.Small = join(", ", strings.Join(sizes, " and "), item.Small)
	if item.ToTaste && item.Measure != "" {
		item.Small = join(", ", item.Small, "and more to taste")
	}
	return item
}

// severalPieces tells whether a food is bought as pieces, more than one: by
// number, or by weight where a piece is known to weigh less.
func severalPieces(f *food.Food, exact []measure.Amount) bool {
	if len(exact) != 1 {
		return false
	}
	n := exact[0].To
	if exact[0].Unit == measure.Gram && isProduce(f) {
		pieces, ok := f.Pieces(measure.One(n), "")
		return ok && pieces.To.Cmp(measure.Whole(1)) > 0
	}
	return exact[0].Unit == measure.Each && n.Cmp(measure.Whole(1)) > 0
}

// plural is the food's name for several, by the larder or the common rules of
// English. A name that ends in s, or not in a letter, stays.
func plural(f *food.Food) string {
	name := f.Name
	ends := func(with ...string) bool {
		return slices.ContainsFunc(with, func(end string) bool { return strings.HasSuffix(name, end) })
	}
	last := rune(0)
	if name != "" {
		last = rune(name[len(name)-1])
	}
	switch {
	case f.Plural != "":
		return f.Plural
	case last < 'a' || last > 'z' || last == 's':
		return name
	case ends("ch", "sh", "x", "z", "tato", "mato", "mango"):
		return name + "es"
	case last == 'y' && !ends("ay", "ey", "oy", "uy"):
		return strings.TrimSuffix(name, "y") + "ies"
	case ends("loaf", "leaf", "half"):
		return strings.TrimSuffix(name, "f") + "ves"
	}
	return name + "s"
}

// total is what some of the portions come to.
type total struct {
	written
	exact    []measure.Amount
	estimate bool
}

func (g *group) total(portions []portion, house measure.System) total {
	if g.key == eggID {
		e := countEggs(portions)
		return total{e.write(house), e.exact(), e.estimate}
	}
	s := addUp(portions)
	if len(s.exact()) == 0 {
		return total{}
	}
	w := s.write(g.food, house)
	return total{w, s.exact(), s.estimate || w.guess}
}

// uses gives what each batch of each recipe takes, in the order of the needs.
func (g *group) uses(house measure.System) []Use {
	var all []Use
	byUse := map[[2]string][]portion{}
	for _, p := range g.portions {
		key := [2]string{p.batch, p.recipe}
		if _, known := byUse[key]; !known {
			all = append(all, Use{Batch: p.batch, Recipe: p.recipe})
		}
		byUse[key] = append(byUse[key], p)
	}
	for i := range all {
		all[i].Measure = g.total(byUse[[2]string{all[i].Batch, all[i].Recipe}], house).measure
	}
	return all
}

// join joins the parts that are not empty.
func join(sep string, parts ...string) string {
	var kept []string
	for _, part := range parts {
		if part != "" {
			kept = append(kept, part)
		}
	}
	return strings.Join(kept, sep)
}

func appendNew(list []string, s string) []string {
	for _, known := range list {
		if known == s {
			return list
		}
	}
	return append(list, s)
}
