package same

import (
	"benchproof/kitchen/measure"
	"benchproof/kitchen/verify/speech"
)

// How far a said value may lie from the written one and still be the same, as a
// share of it; see the package's comment.
var (
	exactly  = measure.Ratio(1, 200)
	sameKind = measure.Ratio(3, 100)
	bySystem = measure.Ratio(8, 100)
	byWeight = measure.Ratio(15, 100)
	byPiece  = measure.Ratio(35, 100)
	nearly   = measure.Ratio(12, 100)
)

// Ranges compares two ranges of one unit that are meant exactly.
func Ranges(said, written measure.Range) bool { return agrees(said, written, exactly) }

// Roughly compares two ranges of one unit of which one is converted by the way.
func Roughly(said, written measure.Range) bool { return agrees(said, written, byWeight) }

// agrees compares two ranges of one unit; slack is a share of the written value.
func agrees(said, written measure.Range, slack measure.Number) bool {
	low := written.From.Sub(written.From.Mul(slack))
	high := written.To.Add(written.To.Mul(slack))
	if said.From.Cmp(low) >= 0 && said.To.Cmp(high) <= 0 {
		return true
	}
	return written.IsSingle() && !said.IsSingle() && said.From.Cmp(high) <= 0 && said.To.Cmp(low) >= 0
}

func slackOf(about bool) measure.Number {
	if about {
		return exactly.Add(nearly)
	}
	return exactly
}

// Times compares a said stretch of time with a written one. "Overnight" is the
// same as any time that it can overlap, from six hours to a day: common practice,
// no source.
func Times(said, written speech.Said) bool {
	if said.Night || written.Night {
		return said.Night && written.Night || isNight(said) && isNight(written)
	}
	if said.Per.Unit != "" && written.Per.Unit != "" {
		return agrees(perGram(said), perGram(written), slackOf(said.About).Add(bySystem))
	}
	return agrees(said.Amount.Range, written.Amount.Range, slackOf(said.About))
}

// perGram is a time for each gram of what is cooked.
func perGram(s speech.Said) measure.Range {
	per, _ := measure.Grams(s.Per.Unit)
	return s.Amount.Range.Scale(measure.Whole(1).Quo(per.Mul(s.Per.From)))
}

var aDay = measure.Whole(24 * 60)

// Allows tells whether a said time is one that "at least" or "up to" a written one
// allows.
func Allows(said, written speech.Said) bool {
	return written.AtLeast && !said.AtLeast && said.Amount.From.Cmp(written.Amount.From) >= 0 ||
		written.AtMost && said.AtMost && said.Amount.To.Cmp(written.Amount.To) <= 0 && written.Amount.To.Cmp(aDay) < 0
}

func isNight(s speech.Said) bool {
	return s.Night || s.Amount.To.Cmp(measure.Whole(6*60)) >= 0 && s.Amount.From.Cmp(measure.Whole(24*60)) <= 0
}

// Lengths compares a said length with a written one.
func Lengths(said, written speech.Said) bool {
	slack := slackOf(said.About)
	if said.Amount.Unit == "" {
		said.Amount.Unit = written.Amount.Unit // "a twenty by thirty tin"
	}
	if said.Amount.Unit != written.Amount.Unit {
		slack = slack.Add(bySystem) // 2 cm are ¾ in, and nobody says 0.79
	}
	return agrees(Length(said), Length(written), slack)
}

// Pieces compares what single pieces weigh or hold.
func Pieces(said, written speech.Said) bool {
	to, err := measure.Convert(said.Amount, written.Amount.Unit, measure.US, measure.US)
	return err == nil && agrees(to.Range, written.Amount.Range, slackOf(said.About || written.About).Add(sameKind))
}

// Rooms compares what two vessels hold.
func Rooms(said, written speech.Said) bool {
	slack := slackOf(said.About)
	if said.Amount.Unit != written.Amount.Unit {
		slack = slack.Add(bySystem)
	}
	a, _ := measure.US.Millilitres(said.Amount.Unit)
	b, _ := measure.US.Millilitres(written.Amount.Unit)
	return agrees(said.Amount.Range.Scale(a), written.Amount.Range.Scale(b), slack)
}

// Length gives a length in millimetres.
func Length(s speech.Said) measure.Range {
	per, _ := measure.Millimetres(s.Amount.Unit)
	return s.Amount.Range.Scale(per)
}

// Counts compares numbers of things.
func Counts(said, written speech.Said) bool {
	return agrees(said.Amount.Range, written.Amount.Range, slackOf(said.About))
}
