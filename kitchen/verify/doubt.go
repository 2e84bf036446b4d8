package verify

import (
	"math"
	"slices"
	"strconv"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/verify/about"
	"benchproof/kitchen/verify/same"
	"benchproof/kitchen/verify/speech"
)

// What seems to disagree must be earned: the rules that tie numbers to lines err where
// nobody thought of a way of speaking. So a finding has traits, of the number, of what it
// is tied to and of the numbers around it, and how likely it is false was learnt.

// mostDoubt is how likely a finding may be false and still be told.
const mostDoubt = 0.55

// Where fewer of the words around a number are there, the rules alone tell.
const leastKnown = 0.5

// These traits decide then.
const (
	short  = "short"
	byRule = "by rule"
)

// traits collects what something is like.
type traits []string

func (t *traits) add(trait string) { *t = append(*t, trait) }

func (t *traits) addIf(is bool, trait string) {
	if is {
		t.add(trait)
	}
}

// addStep adds a trait for the size of x in steps.
func (t *traits) addStep(name string, x, step float64, most int) {
	t.add(name + " " + strconv.Itoa(min(int(math.Round(x/step)), most)))
}

// traitsOf gives the traits of a finding of a kind about number i.
func (j *judge) traitsOf(i int, kind Kind) []string {
	var t traits
	t.add(string(kind) + " " + string(j.Said[i].Kind) + " " + j.tiedTo(i))
	t.addIf(j.isByRule(i, kind), byRule)
	t.addIf(j.stray[i], "stray")
	t.addIf(j.Known(i) < leastKnown, short)
	j.tellTopic(&t, i)
	j.tellNumber(&t, i)
	j.tellTie(&t, i, kind)
	if n := j.Ties[i].Item; n >= 0 {
		j.tellItem(&t, i, n)
	}
	if n := j.Ties[i].Fact; n >= 0 {
		j.tellFact(&t, i, n)
	}
	j.tellOthers(&t, i)
	j.tellAround(&t, i)
	for _, trait := range slices.Clone(t[1:]) {
		t.add(t[0] + "|" + trait) // what speaks for one kind of finding may not for another
	}
	return t
}

// tiedTo names what number i is tied to.
func (j *judge) tiedTo(i int) string {
	switch t := j.Ties[i]; {
	case t.Item >= 0:
		return "item"
	case t.Fact >= 0:
		return "fact"
	case t.Foreign != "":
		return "foreign"
	case t.Portion != "":
		return "portion"
	}
	return "none"
}

// tellTopic tells how likely the talk is about something else, in steps that add up.
func (j *judge) tellTopic(t *traits, i int) {
	p := j.Elsewhere[i]
	logit := math.Log((p + tiny) / (1 - p + tiny))
	for least := -7; least <= 5; least++ {
		t.addIf(logit > float64(least), "elsewhere>"+strconv.Itoa(least))
	}
}

// tiny keeps a logarithm finite.
const tiny = 1e-6

// tellNumber tells how a number is said.
func (j *judge) tellNumber(t *traits, i int) {
	s := j.Said[i]
	t.addIf(s.Article, "article")
	t.addIf(s.Bare, "bare")
	t.addIf(s.More, "more")
	t.addIf(s.Each, "each")
	t.addIf(s.Again, "again")
	t.addIf(s.Size, "size")
	t.addIf(s.Side, "side")
	t.addIf(s.Unit == "", "no unit")
	t.addIf(!s.Amount.IsSingle(), "range")
	t.addIf(j.Text.At(s.To) == "of", "of behind")
	t.addIf(j.Text.Pronoun(s.To), "pronoun")
	t.addIf(s.Kind == speech.Heat && j.IsTarget(s), "target")
	t.addIf(j.GoesIn(s.To), "goes in")
	t.addIf(j.saysTotal(s) || j.Text.NearBehind(s.To, 4, "whole", "lot"), "total")
	t.addIf(j.IsAdded(s), "added")
	t.addIf(j.IsDoneTo(i), "done to")
	t.addIf(j.IsInstruction(i), "instruction")
	t.addIf(j.IsSqueezed(s), "squeezed")
	t.addIf(j.isPutIn(i), "put in")
	t.addIf(j.Text.Near(s.From, s.To, 6, "thermometer", "probe"), "probe")
	if s.Kind == speech.Time {
		t.addIf(j.IsWait(i), "wait")
		t.addIf(j.isWaitBehind(i), "wait behind")
		t.addIf(j.IsTold(s), "told")
		t.addIf(j.IsPast(s), "past")
		t.addStep("minutes", math.Log2(math.Max(1, s.Amount.To.Float())), 1, 10)
	}
	t.addIf(s.Kind == speech.Heat && j.IsWeather(s), "weather")
	t.addIf(s.Kind == speech.Heat && s.Oven != "", "named oven")
}

// tellTie tells how well it is tied, and how it may have been said wrong.
func (j *judge) tellTie(t *traits, i int, kind Kind) {
	t.addIf(j.IsFirm(i), "firm")
	t.addIf(j.Ties[i].Of, "part")
	t.addIf(j.isUnlisted(i), "unlisted")
	t.addIf(j.Ties[i].Aside, "aside")
	t.addIf(j.IsCertain(j.Said[i]), "certainly aside")
	if kind == Pair && i+1 < len(j.Said) {
		t.addIf(j.SaysAgain(j.Said[i].To, j.Said[i+1].From), "says again")
		t.addStep("apart", float64(j.Said[i+1].From-j.Said[i].To), 3, 6)
	}
	t.addIf(j.isSaidRight(i), "said right too")
	t.addIf(j.isPlainSlip(i), "plain slip")
	if slip := j.slipOf(i); slip != "" {
		t.add("slip " + string(slip))
	}
}

// tellItem tells how number i stands to the line that it is tied to.
func (j *judge) tellItem(t *traits, i, n int) {
	s, item := j.Said[i], j.Book.Items[n]
	t.tellRatio(j, s, j.closest(s, item.Line), item.Line, "ratio")
	if i > 0 && j.Ties[i-1].Item == n && j.SaysAgain(j.Said[i-1].To, s.From) {
		t.add("restates what " + j.standing(i-1))
	}
	t.addStep("gap", math.Sqrt(float64(j.GapTo(i, n))), 1, 6)
	t.add("numbers of it " + strconv.Itoa(min(j.countTied(i, func(u about.Tie) bool { return u.Item == n }), 3)))
	here := j.Book.States[j.PlaceOf(i)]
	t.addIf(here.Component == item.Component, "component")
	t.addIf(slices.Contains(here.Uses, n), "used here")
	t.addIf(s.Unit == item.Line.Amount.Unit, "same unit")
	t.addIf(s.Unit.Kind() == item.Line.Amount.Unit.Kind(), "same kind of unit")
}

// closest is the amount of a line, of those that it states, that is of a number's kind.
func (j *judge) closest(s speech.Said, l recipe.Line) measure.Amount {
	for _, w := range same.Statements(l) {
		if w.Unit.Kind() == s.Unit.Kind() {
			return w
		}
	}
	return l.Amount
}

// tellFact tells how number i stands to what a step states.
func (j *judge) tellFact(t *traits, i, n int) {
	s, f := j.Said[i], j.Book.Facts[n]
	if f.Place >= 0 {
		t.add("steps away " + strconv.Itoa(min(4, j.Book.Distance(f.Place, j.PlaceOf(i)))))
	}
	claim := j.Claim(i, n)
	t.addStep("shared", claim.Shared, 0.5, 6)
	t.addStep("verb", claim.Verb, 0.5, 3)
	t.addStep("place", claim.Place, 0.5, 5)
	t.addStep("claim", claim.Score, 0.7, 8)
	t.add("numbers of it " + strconv.Itoa(min(j.countTied(i, func(u about.Tie) bool { return u.Fact == n }), 3)))
	t.addIf(f.IsOven, "oven")
	t.addIf(f.Hands, "hands on")
	t.addIf(s.Unit == f.Unit, "same unit")
	if s.Kind == speech.Time || s.Kind == speech.Heat || s.Kind == speech.Count {
		t.tellRatio(j, s, f.Amount, recipe.Line{}, string(s.Kind)+" ratio")
	}
}

// tellRatio tells how many times the written amount is said, in half doublings.
func (t *traits) tellRatio(j *judge, s speech.Said, w measure.Amount, l recipe.Line, name string) {
	ratio, ok := j.Scale.Ratio(s, w, l)
	if !ok || ratio.Sign() <= 0 {
		t.add("no " + name)
		return
	}
	t.addStep(name, math.Abs(math.Log2(ratio.Float())), 0.5, 12)
	t.addIf(ratio.Cmp(measure.Whole(1)) > 0, "larger")
}

// countTied counts the numbers besides i that are tied so.
func (j *judge) countTied(i int, is func(about.Tie) bool) int {
	n := 0
	for p, u := range j.Ties {
		if p != i && is(u) {
			n++
		}
	}
	return n
}

// tellOthers tells whether the recipe has the value elsewhere, and whether nobody says it
// there.
func (j *judge) tellOthers(t *traits, i int) {
	s, tie := j.Said[i], j.Ties[i]
	line, step, free := false, false, false
	for n := range j.Book.Items {
		if n != tie.Item && j.EqualItem(s, n) {
			line, free = true, free || !j.isSaid(n)
		}
	}
	for n, f := range j.Book.Facts {
		if n != tie.Fact && about.EqualFact(s, f) {
			step, free = true, free || f.Place >= 0 && !j.isFactSaid(n)
		}
	}
	t.addIf(line, "equals a line")
	t.addIf(step, "equals a step")
	t.addIf(free, "equals what nobody says")
}

// tellAround tells of the two numbers on each side how far they are, and how they stand to
// the recipe.
func (j *judge) tellAround(t *traits, i int) {
	for away := 1; away <= 2; away++ {
		for _, p := range []int{i - away, i + away} {
			if p < 0 || p >= len(j.Said) {
				continue
			}
			side := "last "
			if p > i {
				side = "next "
			}
			gap := max(j.Said[i].From-j.Said[p].To, j.Said[p].From-j.Said[i].To)
			t.addStep(side+strconv.Itoa(away)+" "+j.standing(p), math.Sqrt(float64(gap)), 1.5, 5)
		}
	}
}

// standing names how number i stands to the recipe.
func (j *judge) standing(i int) string {
	switch t := j.Ties[i]; {
	case j.Said[i].Struck:
		return "struck"
	case j.doubted[i]:
		return "doubted"
	case t.Aside:
		return "aside"
	case t.Item >= 0 && (j.agreed[i] || j.EqualItem(j.Said[i], t.Item)), t.Fact >= 0 && t.Agrees:
		return "agrees"
	case t.Item >= 0, t.Fact >= 0:
		return "differs"
	}
	return "open"
}
