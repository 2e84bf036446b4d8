package about

import (
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// scoreVerb compares the verb that governs a number with the fact's.
func (r *Reading) scoreVerb(i int, s speech.Said, f written.Fact) float64 {
	if s.Kind != speech.Time {
		return 0
	}
	verb := written.Verb(r.Text, s)
	if heat := r.heatBefore(i); verb == "" && heat >= 0 {
		if h := r.Book.Facts[heat]; h.Place == f.Place || h.IsOven && (f.Verb == "bake" || f.Verb == "roast") {
			return scoreImplied
		}
	}
	switch {
	case verb == "" || f.Verb == "" || verb == waiting && verb != f.Verb && !f.Hands:
		return 0 // one leaves alone what proves, chills or cools
	case verb == f.Verb && verb == waiting:
		return scoreVerb / 2
	case verb == f.Verb:
		return scoreVerb
	case !f.Clause[verb] && r.Book.Weights[verb] > 0:
		return -scoreOther
	}
	return 0
}

// waiting is the verb for leaving something alone, whatever it does meanwhile.
const waiting = "rests"

// heatBefore gives the fact of the heat that number i stands right behind, "180,
// 160 fan, twenty five minutes", −1 for none.
func (r *Reading) heatBefore(i int) int {
	if i == 0 || r.Said[i].From-r.Said[i-1].To > 6 || r.Said[i-1].Kind != speech.Heat {
		return -1
	}
	return r.Ties[i-1].Fact
}

// handled weighs the words by which a host gives something its time without
// naming what is done: "they go in for", "give it", "it wants".
func (r *Reading) handled(s speech.Said) float64 {
	if s.Kind != speech.Time || s.Article {
		return 0
	}
	if r.opens(s) {
		return scoreHandled // "Then thirty minutes, and you fish them out."
	}
	for k := s.From - 1; k >= 0 && k >= s.From-5 && !r.Text.Parts(k); k-- {
		switch w := r.Text.Words[k].Text; {
		case w == "allow" && k == s.From-1:
			return scoreHandled
		case (w == "it's" || w == "that's") && k == s.From-1 && !farOff[r.Text.At(s.To)]:
			return scoreHandled // "on the other side it's two minutes"
		case (subjects[w] && wills[r.Text.At(k+1)] || w == "it'll") && (wants[r.leadOf(s)] || lasts[r.leadOf(s)]):
			return scoreHandled // "that's gonna go three hours"
		case into[w] && (r.leadOf(s) == "for" || k == s.From-1 && r.Text.At(k-1) != "minutes"):
			return scoreHandled
		case gives[w] && things[r.Text.At(k+1)], (things[w] || contracted[w]) && (wants[r.Text.At(k+1)] || light[r.Text.At(k+1)] && wants[r.Text.At(k+2)]):
			return scoreHandled
		}
	}
	return 0
}

// farOff are words behind a time that make it a way.
var farOff = speech.SetOf("by behind ahead from away drive walk of old ago since before")

// opens tells whether nothing but light words stand before a number in its
// sentence.
func (r *Reading) opens(s speech.Said) bool {
	if s.From > 0 && r.Text.Words[s.From-1].Stop != speech.None && r.Text.Words[s.To-1].Stop != speech.None {
		return true // "more fire, twenty minutes, so the edges"
	}
	k := s.From - 1
	for k >= 0 && !r.Text.Parts(k) && opening[r.Text.At(k)] && s.From-k < 5 {
		k--
	}
	return k < 0 || k > 0 && r.Text.Parts(k)
}

var opening = speech.SetOf("then and so now another about around a good just maybe that's it's")

// isOfThing tells whether the subject of what is said before word k is what is
// cooked, or the viewer, or nobody, as in an order: "it stays like this for",
// "don't open that door for".
func (r *Reading) isOfThing(k int) bool {
	for n := k - 1; n >= 0 && n >= k-8 && !r.Text.Parts(n); n-- {
		switch w := r.Text.Words[n].Text; {
		case things[w] || w == "it's" || w == "they're" || w == "you" || w == "we" || w == "don't":
			return true
		case w == "i" || w == "he" || w == "she" || kin[w] || crowds[w]:
			return false
		}
	}
	return false
}

var (
	contracted = speech.SetOf("it's they've that's you've it'll they'll that'll you'll")
	light      = speech.SetOf("only just really all still")
	lasts      = speech.SetOf("be take")
	wills      = speech.SetOf("gonna going will")
	gives      = speech.SetOf("get give gives giving leave leaving let")
	things     = speech.SetOf("it them they that these those this")
	wants      = speech.SetOf("wants want needs need has have had gets get got go goes")
	into       = speech.SetOf("in back on leave left let")
)

// isNext tells whether fact n is the next time in the method behind the one that
// was spoken of last.
func (r *Reading) isNext(i, n int) bool {
	last := -1
	for p := i - 1; p >= 0 && last < 0; p-- {
		if f := r.Ties[p].Fact; f >= 0 && r.Book.Facts[f].Kind == speech.Time && r.Book.Facts[f].Place >= 0 {
			last = f
		}
	}
	return r.isFirstTime(last+1, n)
}

// isFirstTime tells whether fact n is the first time from a fact on.
func (r *Reading) isFirstTime(from, n int) bool {
	for next := from; next <= n; next++ {
		if f := r.Book.Facts[next]; f.Kind == speech.Time && !f.Total && !f.Part && f.Place >= 0 {
			return next == n
		}
	}
	return false
}
