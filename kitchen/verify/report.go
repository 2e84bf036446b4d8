package verify

import (
	"cmp"
	"slices"
	"strconv"
	"strings"

	"benchproof/kitchen/verify/speech"
)

// found adds a finding about number i.
func (j *judge) found(i int, f Finding) {
	s := j.Said[i]
	f.Cue = j.Text.Words[s.From].Cue
	f.At = j.Text.Cues[f.Cue].Start
	if f.Said == "" {
		f.Said = j.Text.Quote(s.From, s.To)
	}
	f.Words = j.Text.Quote(max(0, s.From-7), min(len(j.Text.Words), s.To+7))
	if !j.weigher.tells(f, j.traitsOf(i, f.Kind)) {
		j.doubted[i] = true
		return
	}
	if f.Kind == Differs {
		f.Slip = j.slipOf(i)
	}
	f.Suggest = j.suggest(i, f)
	if j.finding[i] < 0 {
		j.finding[i] = len(j.findings)
	}
	j.findings = append(j.findings, f)
}

// isBeside tells whether one of two numbers only says the other again in another unit.
func (j *judge) isBeside(p, i int) bool {
	a, b := j.Said[min(p, i)], j.Said[max(p, i)]
	return a.Kind == speech.Measure && b.Kind == speech.Measure && a.Unit != b.Unit && a.To <= b.From && b.From-a.To <= besideRight && (b.Size || j.SaysAgain(a.To, b.From) || j.Text.At(b.From-1) == "the")
}

// besideRight is how many words may stand between an amount and the same in another unit.
const besideRight = 12

// isSaidRight tells whether another number says rightly what number i says wrong.
func (j *judge) isSaidRight(i int) bool {
	t := j.Ties[i]
	for p, u := range j.Ties {
		if p != i && !u.Aside && (t.Item >= 0 && u.Item == t.Item && (j.IsFirm(p) || j.Said[p].Kind != speech.Count) && j.EqualItem(j.Said[p], t.Item) || t.Fact >= 0 && u.Fact == t.Fact && u.Agrees) && !j.isBeside(p, i) {
			return true
		}
	}
	return false
}

// report puts everything in order and gives every finding its key.
func (j *judge) report() Report {
	var r Report
	order := make([]int, len(j.findings))
	for i := range order {
		order[i] = i
	}
	slices.SortStableFunc(order, func(a, b int) int {
		x, y := j.findings[a], j.findings[b]
		return cmp.Or(cmp.Compare(boolInt(x.Cue < 0), boolInt(y.Cue < 0)), cmp.Compare(x.Cue, y.Cue), cmp.Compare(x.Number, y.Number))
	})
	moved := make([]int, len(order))
	count := map[string]int{}
	for to, from := range order {
		f := j.findings[from]
		f.Key = key(f)
		count[f.Key]++
		if n := count[f.Key]; n > 1 {
			f.Key += "|" + strconv.Itoa(n)
		}
		moved[from] = to
		r.Findings = append(r.Findings, f)
	}
	for i, s := range j.Said {
		t := j.Ties[i]
		if t.Aside && j.finding[i] < 0 || t.Item < 0 && t.Fact < 0 && j.finding[i] < 0 {
			continue
		}
		first, last := j.Text.Words[s.From], j.Text.Words[s.To-1]
		a := Amount{Cue: first.Cue, From: first.At, To: last.End, Said: j.Text.Quote(s.From, s.To), Finding: -1}
		if last.Cue != first.Cue {
			a.To = len(j.Text.Cues[first.Cue].Text)
		}
		switch {
		case t.Item >= 0:
			a.Line, a.Number = j.Book.Items[t.Item].Line.Text, j.Book.Items[t.Item].Line.Number
		case t.Fact >= 0:
			a.Line, a.Number = j.Book.Facts[t.Fact].Line, j.Book.Facts[t.Fact].Number
		}
		if j.finding[i] >= 0 {
			a.Finding = moved[j.finding[i]]
		}
		r.Amounts = append(r.Amounts, a)
	}
	return r
}

// key names a slip so that it can be known again in another reading of the cut:
// by what is written and what is said, not by where.
func key(f Finding) string {
	said := strings.Join(strings.Fields(strings.Map(func(c rune) rune {
		if strings.ContainsRune(".,;:!?()“”\"", c) {
			return -1
		}
		return c
	}, strings.ToLower(f.Said+" "+f.Food))), " ")
	if f.Kind == NotSaid {
		said = strings.ToLower(f.Written)
	}
	return string(f.Kind) + "|" + strings.Join(strings.Fields(f.Line), " ") + "|" + said
}

func boolInt(b bool) int {
	if b {
		return 1
	}
	return 0
}
