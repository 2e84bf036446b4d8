package measure

import "strconv"

// FormatMinutes writes a time in minutes as a method's margin shows it:
// "45 s", "9–11 min", "1 h 15 min", "1 h 30 min–2 h", "2 days". Units are
// joined by no-break spaces; below a minute it is rounded to five seconds.
func FormatMinutes(minutes Range) string {
	if minutes.IsSingle() {
		return oneTime(minutes.From)
	}
	if minutes.To.Cmp(Whole(mostMinutes)) <= 0 && minutes.From.Cmp(Whole(1)) >= 0 {
		return FormatNumber(minutes.From) + "–" + FormatNumber(minutes.To) + noBreak + "min"
	}
	return oneTime(minutes.From) + "–" + oneTime(minutes.To)
}

// mostMinutes is up to where a range stays in minutes: "60–75 min" reads better
// than "1 h–1 h 15 min".
const mostMinutes = 90

func oneTime(minutes Number) string {
	switch {
	case minutes.Cmp(Whole(1)) < 0:
		return FormatNumber(minutes.Mul(Whole(60)).Round(Whole(5))) + noBreak + "s"
	case minutes.Cmp(Whole(60)) < 0:
		return FormatNumber(minutes) + noBreak + "min"
	case minutes.Cmp(Whole(48*60)) >= 0:
		return FormatNumber(minutes.Quo(Whole(24*60)).Round(Ratio(1, 2))) + noBreak + "days"
	}
	whole, _ := minutes.Round(Whole(1)).Int()
	text := strconv.FormatInt(whole/60, 10) + noBreak + "h"
	if whole%60 != 0 {
		text += " " + strconv.FormatInt(whole%60, 10) + noBreak + "min" // a narrow margin may part the two
	}
	return text
}
