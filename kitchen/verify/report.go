package verify

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// found adds a finding about number i.
func (j *judge) found(i int, f Finding) {
	s := j.said[i]
	f.Cue = j.text.Words[s.From].Cue
	f.At = j.text.Cues[f.Cue].Start
	if f.Said == "" {
		f.Said = j.text.Quote(s.From, s.To)
	}
	f.Words = j.text.Quote(max(0, s.From-7), min(len(j.text.Words), s.To+7))
	if f.Kind == Differs {
		f.Slip = j.slipOf(i)
	}
	f.Suggest = j.suggest(i, f)
	if j.ties[i].finding < 0 {
		j.ties[i].finding = len(j.findings)
	}
	j.findings = append(j.findings, f)
}

// slipOf names the likely cause of a difference.
func (j *judge) slipOf(i int) Slip {
	s, t := j.said[i], j.ties[i]
	var written []measure.Amount
	switch {
	case t.item >= 0:
		written = statements(j.book.items[t.item].line)
	case t.fact >= 0:
		f := j.book.facts[t.fact]
		if f.kind == speech.Heat {
			return heatSlip(s, f)
		}
		written = []measure.Amount{f.amount}
	}
	for _, w := range written {
		if s.Kind == speech.Time {
			if isTimeSlip(s, w) {
				return UnitSlip
			}
		} else if s.Amount.Unit != w.Unit && agrees(s.Amount.Range, w.Range, exactly) && s.Amount.Unit != measure.Each {
			return UnitSlip
		}
		if (s.Kind == speech.Time || s.Amount.Unit == w.Unit || s.Amount.Unit == measure.Each) && isTenfold(s.Amount.Range, w.Range) {
			return Tenfold
		}
	}
	return ""
}

func isTenfold(a, b measure.Range) bool {
	for _, by := range []int64{10, 100, 1000} {
		k := measure.Whole(by)
		if agrees(a.Scale(k), b, exactly) || agrees(a, b.Scale(k), exactly) {
			return true
		}
	}
	return false
}

// isTimeSlip tells hours said for minutes, seconds for minutes and the like.
func isTimeSlip(s speech.Said, w measure.Amount) bool {
	for _, by := range []int64{60, 24} {
		k := measure.Whole(by)
		if s.Unit != measure.Minute && agrees(s.Amount.Range, w.Range.Scale(k), exactly) || agrees(s.Amount.Range.Scale(k), w.Range, exactly) {
			return true
		}
	}
	return false
}

func heatSlip(s speech.Said, f fact) Slip {
	for _, h := range f.heats {
		if s.Scale != "" && h.Scale != "" && s.Scale != h.Scale && agrees(s.Amount.Range, h.Amount.Range, exactly) {
			return UnitSlip
		}
		if s.Oven != h.Oven && agrees(s.Amount.Range, h.Amount.Range, exactly) {
			return UnitSlip // the other oven's setting
		}
		if isTenfold(s.Amount.Range, h.Amount.Range) {
			return Tenfold
		}
	}
	return ""
}

// suggest words the correction.
func (j *judge) suggest(i int, f Finding) string {
	at := episode.Timecode(int(f.At.Seconds()))
	switch f.Kind {
	case NotWritten:
		return fmt.Sprintf("At %s the cut says “%s %s”, and the recipe has none: write it in, or take it out of the cut.", at, f.Said, j.ties[i].foreign)
	case Pair:
		return fmt.Sprintf("At %s: %s", at, f.Suggest)
	}
	of := ""
	if n := j.ties[i].item; n >= 0 {
		of = " " + j.book.items[n].line.Food
	}
	why := ""
	switch f.Slip {
	case UnitSlip:
		why = " The number is right; the unit is not."
	case Tenfold:
		why = " That is tenfold, or a tenth."
	}
	return fmt.Sprintf("Correction at %s: I say “%s”; the right measure is %s%s.%s", at, f.Said, f.Written, of, why)
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
	for i, s := range j.said {
		t := j.ties[i]
		if t.aside && t.finding < 0 || t.item < 0 && t.fact < 0 && t.finding < 0 {
			continue
		}
		first, last := j.text.Words[s.From], j.text.Words[s.To-1]
		a := Amount{Cue: first.Cue, From: first.At, To: last.End, Said: j.text.Quote(s.From, s.To), Finding: -1}
		if last.Cue != first.Cue {
			a.To = len(j.text.Cues[first.Cue].Text)
		}
		switch {
		case t.item >= 0:
			a.Line, a.Number = j.book.items[t.item].line.Text, j.book.items[t.item].line.Number
		case t.fact >= 0:
			a.Line, a.Number = j.book.facts[t.fact].line, j.book.facts[t.fact].number
		}
		if t.finding >= 0 {
			a.Finding = moved[t.finding]
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

// measureOf is the measure of a line as written: "2½ cups" of "2½ cups bread
// flour".
func measureOf(line string) string {
	r, _, ok := measure.ReadAmount(line)
	if !ok || r.Text == "" {
		return line
	}
	return r.Text
}
