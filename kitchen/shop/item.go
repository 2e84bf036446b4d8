package shop

import (
	"strings"

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
		if g.food.Plural != "" && severalPieces(item.Exact) {
			item.Name = g.food.Plural
		}
	}
	item.Small = join(", ", strings.Join(sizes, " and "), item.Small)
	if item.ToTaste && item.Measure != "" {
		item.Small = join(", ", item.Small, "and more to taste")
	}
	return item
}

// severalPieces tells whether a food is bought as pieces, more than one.
func severalPieces(exact []measure.Amount) bool {
	return len(exact) == 1 && exact[0].Unit == measure.Each && exact[0].To.Cmp(measure.Whole(1)) > 0
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
