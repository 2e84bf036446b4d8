package verify_test

import (
	"slices"

	"benchproof/kitchen/logistic/fit"
	"benchproof/kitchen/verify"
	"benchproof/kitchen/verify/learnt"
)

// worse are the ways of reading from which false findings are learnt.
var worse = []verify.Way{{}, {Blind: true}, {Alone: true}}

// doubts gives of what seems to be wrong whether it is false.
func (c cut) doubts(models learnt.Models) []fit.Example {
	return c.weighed(models, func(f verify.Finding) bool { return f.Kind != verify.NotSaid }, false)
}

// silences gives of what nobody seems to say whether it is really not said; models tell
// what else is wrong.
func (c cut) silences(models learnt.Models) []fit.Example {
	all := c.weighed(models, func(f verify.Finding) bool { return f.Kind == verify.NotSaid }, true)
	return append(all, c.leftOut(models)...)
}

// weighed gives what is to be learnt from some candidates of a cut; is tells whether those
// that were planted are what is learnt, or the others.
func (c cut) weighed(models learnt.Models, some func(verify.Finding) bool, is bool) []fit.Example {
	with := checker
	with.Models = models
	seen := map[string]bool{}
	var all []fit.Example
	for _, way := range worse {
		for _, candidate := range with.Candidates(c.recipe, c.cues, way) {
			f := candidate.Finding
			planted := slices.ContainsFunc(c.marks, func(m mark) bool { return m.isPlanted() && m.is(f) })
			id := string(f.Kind) + f.At.String() + f.Said + f.Line
			if !some(f) || planted && seen[id] {
				continue // a worse reading only adds what is false
			}
			seen[id] = true
			all = append(all, fit.Example{Group: c.name, Traits: candidate.Traits, Is: planted == is})
		}
	}
	return all
}

// leftOut gives more of what nobody seems to say: of every third number that alone says
// what a line has, what it is like if nobody could tie it, if nobody could read it, and if
// it is cut out of the captions.
func (c cut) leftOut(models learnt.Models) []fit.Example {
	with := checker
	with.Models = models
	var all []fit.Example
	take := func(candidates []verify.Candidate, number int, is bool) {
		for _, candidate := range candidates {
			if candidate.Finding.Kind == verify.NotSaid && candidate.Finding.Number == number {
				all = append(all, fit.Example{Group: c.name, Traits: candidate.Traits, Is: is})
			}
		}
	}
	for k, only := range with.Onlies(c.recipe, c.cues) {
		if k%3 != 0 {
			continue
		}
		take(with.Candidates(c.recipe, c.cues, verify.Way{Untied: true, N: only.N}), only.Number, false)
		take(with.Candidates(c.recipe, c.cues, verify.Way{Unread: true, N: only.N}), only.Number, false)
		cues := slices.Clone(c.cues)
		text := cues[only.Cue].Text
		cues[only.Cue].Text = text[:only.From] + "some" + text[only.To:]
		take(with.Candidates(c.recipe, cues, verify.Way{}), only.Number, true)
	}
	return all
}
