package method

import (
	"strings"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe/lexicon"
)

// span is one stretch of time in an instruction.
type span struct {
	minutes measure.Range
	at, end int
	counts  bool // it is time this instruction takes
}

// spansOf finds the stretches of time in text and tells which of them the
// instruction takes: not "every 30 minutes", "the last 5 minutes", "an hour
// before serving" or "keeps for up to 3 days".
func spansOf(text string) []span {
	lower := lexicon.Lower(text)
	if len(lower) != len(text) {
		lower = text
	}
	var spans []span
	for _, d := range measure.Durations(text) {
		s := span{minutes: d.Minutes, at: d.At, end: d.At + len(d.Text)}
		before, after := lower[:s.at], strings.TrimLeft(lower[s.end:], " ,")
		switch {
		case isSaidAgain(spans, lower, s):
			spans[len(spans)-1].minutes, spans[len(spans)-1].end = s.minutes, s.end
			continue
		case isOption(spans, lower, s):
			last := &spans[len(spans)-1]
			last.minutes = join(last.minutes, s.minutes)
			last.end = s.end
			continue
		default:
			s.counts = !isOtherTime(before, after, s.minutes)
		}
		if isPerSide(after) {
			s.minutes = s.minutes.Scale(measure.Whole(2))
		}
		spans = append(spans, s)
		if more, ok := bareMore(text, lower, s); ok {
			spans = append(spans, more)
		}
	}
	return spans
}

// bareMore reads "for 20 min, then 40–45 more" where the second time has no unit:
// it is the unit of the first.
func bareMore(text, lower string, before span) (span, bool) {
	sentence, _, _ := strings.Cut(lower[before.end:], ". ")
	end := strings.Index(sentence, " more")
	if end < 0 || !before.counts {
		return span{}, false
	}
	at := strings.LastIndex(sentence[:end], " ") + 1
	r, rest, ok := measure.ReadAmount(text[before.end+at : before.end+end])
	if !ok || rest != "" || r.Amount.Unit != measure.Each || !r.HasAmount() {
		return span{}, false
	}
	return span{minutes: r.Amount.Range, at: before.end + at, end: before.end + end, counts: true}, true
}

// isSaidAgain tells "overnight (8–16 hours)": s says the span before it more
// exactly.
func isSaidAgain(spans []span, lower string, s span) bool {
	if len(spans) == 0 {
		return false
	}
	between := strings.TrimSpace(lower[spans[len(spans)-1].end:s.at])
	return between == "(" || between == "(about" || between == "/"
}

// isOption tells "1 hour or overnight", "8 hours and up to 2 days": s widens the
// span before it.
func isOption(spans []span, lower string, s span) bool {
	if len(spans) == 0 {
		return false
	}
	between := strings.Trim(lower[spans[len(spans)-1].end:s.at], " ,(")
	if strings.HasPrefix(between, "or ") && strings.Count(between, " ") <= 3 {
		return spans[len(spans)-1].counts // "on low 6 hours or high 3 hours"
	}
	switch between {
	case "or", "or up to", "or even", "or better", "or ideally", "or preferably", "and up to", "up to", "to", "or as long as":
		return spans[len(spans)-1].counts
	}
	return false
}

func join(a, b measure.Range) measure.Range {
	r := a
	if b.From.Cmp(r.From) < 0 {
		r.From = b.From
	}
	if b.To.Cmp(r.To) > 0 {
		r.To = b.To
	}
	return r
}

// isOtherTime tells times that say when or how often, or how long food keeps.
func isOtherTime(before, after string, r measure.Range) bool {
	words := strings.Fields(before)
	n := len(words)
	for i := max(0, n-2); i < n; i++ {
		switch strings.Trim(words[i], ",(") {
		case "every", "last", "final", "first", "after", "within", "each", "next", "by":
			return words[i] != "next" || i == n-1
		}
	}
	sentence := before[strings.LastIndexAny(before, ".!?")+1:]
	if strings.HasPrefix(after, "before") && waitsNear(strings.Fields(sentence)) {
		return false // "let rest 10 minutes before cutting"
	}
	if isPerSide(after) {
		return false
	}
	for _, lead := range []string{"before", "ahead", "in advance", "earlier", "old", "beforehand", "later", "per ", "a day"} {
		if strings.HasPrefix(after, lead) {
			return true
		}
	}
	day := r.To.Cmp(measure.Whole(24*60)) >= 0
	if day && strings.HasSuffix(strings.TrimSpace(before), "up to") {
		return true
	}
	for _, keep := range []string{"keeps ", "will keep", "can be kept", "can be stored", "can be frozen", "stored ", "lasts ", "keep for", "good for"} {
		if strings.Contains(sentence, keep) {
			return true
		}
	}
	return false
}

// waitsNear tells that one of the words orders a wait.
func waitsNear(words []string) bool {
	for i := range words {
		switch v, plain, ok := lookup(strings.Trim(words[i], ",.")); {
		case ok && plain && (v.station == waits || v.station == fridge || v.station == freezer):
			return true
		}
	}
	return false
}

// isPerSide tells "on each side": the time is taken twice.
func isPerSide(after string) bool {
	for _, lead := range []string{"on each side", "per side", "each side", "a side", "on both sides", "on either side", "both sides", "either side"} {
		if strings.HasPrefix(after, lead) {
			return true
		}
	}
	return false
}

// total adds the spans that count.
func total(spans []span) (measure.Range, bool) {
	var sum measure.Range
	any := false
	for _, s := range spans {
		if s.counts {
			sum = sum.Add(s.minutes)
			any = true
		}
	}
	return sum, any
}
