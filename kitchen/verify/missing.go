package verify

import (
	"fmt"
	"slices"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// loose are units that nobody measures; leaving them out on air is no slip.
var loose = map[measure.Unit]bool{measure.Pinch: true, measure.Dash: true, measure.Handful: true, measure.Splash: true,
	measure.Squeeze: true, measure.Drizzle: true, measure.Glug: true, measure.Knob: true, measure.Drop: true, measure.Smidgen: true, measure.Dollop: true}

// missing finds what is written and never said: amounts of ingredients, oven
// settings, and the times of steps that nobody stands beside.
func (j *judge) missing() {
	if len(j.text.Words) == 0 {
		return
	}
	for n, it := range j.book.items {
		l := it.line
		if !l.HasAmount || l.ToTaste || l.Optional || loose[l.Amount.Unit] || j.isSaid(n) {
			continue
		}
		j.miss(j.whereFood(n), Finding{Written: measureOf(l.Text), Line: l.Text, Number: l.Number})
	}
	var heats []fact
	for n, f := range j.book.facts {
		switch {
		case f.place < 0 || f.total || f.part || f.kind == speech.Count || f.kind == speech.Length || f.kind == speech.Time && f.hands || j.isFactSaid(n):
			continue
		case f.kind == speech.Heat:
			if slices.ContainsFunc(heats, func(h fact) bool { return h.text == f.text }) {
				continue
			}
			heats = append(heats, f)
		}
		j.miss(j.whereStep(f.place), Finding{Written: f.text, Line: f.line, Number: f.number})
	}
}

// isSaid tells whether an amount was said of line n, or that amount of the same
// food where it was taken for another line's.
func (j *judge) isSaid(n int) bool {
	it := j.book.items[n]
	for i, t := range j.ties {
		if t.aside && !t.agrees || t.item < 0 || j.said[i].Kind == speech.Share || loose[j.said[i].Amount.Unit] {
			continue
		}
		if t.item == n {
			return true
		}
		other := j.book.items[t.item].line
		if other.FoodID == it.line.FoodID && it.line.FoodID != "" && j.equalItem(j.said[i], n) && (!t.agrees || j.saidOften(t.item, i)) {
			return true
		}
	}
	return j.spokenParts(n)
}

// saidOften tells whether line n has an agreeing amount besides number i.
func (j *judge) saidOften(n, i int) bool {
	for p, t := range j.ties {
		if p != i && t.item == n && t.agrees && j.said[p].Kind != speech.Share {
			return true
		}
	}
	return false
}

// spokenParts tells whether an article already says it: "the juice of a lemon",
// "an egg".
func (j *judge) spokenParts(n int) bool {
	l := j.book.items[n].line
	if l.Amount.Unit.Kind() != measure.Count || !l.Amount.From.Equal(measure.Whole(1)) {
		return false
	}
	for _, m := range j.mentions {
		if !slices.Contains(m.items, n) {
			continue
		}
		for k := m.from - 1; k >= 0 && k >= m.from-4; k-- {
			switch w := j.text.Words[k].Text; {
			case w == "a" || w == "an" || w == "one" || w == "single":
				return true
			case !between[w] && !describing[w] && w != "of":
				k = -1
			}
		}
	}
	return false
}

func (j *judge) isFactSaid(n int) bool {
	f := j.book.facts[n]
	for i, t := range j.ties {
		if t.aside && t.fact != n || j.said[i].Kind != f.kind {
			continue
		}
		if t.fact == n || f.kind == speech.Heat && j.equalFact(j.said[i], f) {
			return true
		}
		if t.fact >= 0 && j.book.facts[t.fact].total && j.book.facts[t.fact].place == f.place {
			return true
		}
		if f.kind == speech.Time && t.fact >= 0 && j.equalFact(j.said[i], f) && j.factOften(t.fact, i) {
			return true
		}
	}
	return false
}

func (j *judge) factOften(n, i int) bool {
	for p, t := range j.ties {
		if p != i && t.fact == n && t.agrees {
			return true
		}
	}
	return false
}

// whereFood is the word where a food comes up first, in its own component if it
// does there; −1 if nowhere.
func (j *judge) whereFood(n int) int {
	first := -1
	for _, m := range j.mentions {
		if !slices.Contains(m.items, n) {
			continue
		}
		if j.book.states[j.places[m.from]].component == j.book.items[n].component {
			return m.to - 1
		}
		if first < 0 {
			first = m.to - 1
		}
	}
	return first
}

func (j *judge) whereStep(place int) int {
	return slices.Index(j.places, place)
}

// miss adds a NotSaid finding at a word, −1 for nowhere.
func (j *judge) miss(word int, f Finding) {
	f.Kind, f.Cue = NotSaid, -1
	if word >= 0 {
		f.Cue = j.text.Words[word].Cue
		f.At = j.text.Cues[f.Cue].Start
		f.Words = j.text.Quote(max(0, word-6), min(len(j.text.Words), word+7))
	}
	f.Suggest = fmt.Sprintf("The cut never says “%s”: say it, or put “%s” on the screen.", f.Written, f.Line)
	j.findings = append(j.findings, f)
}
