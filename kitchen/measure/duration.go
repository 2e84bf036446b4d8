package measure

// Duration is a stretch of time as written in a text.
type Duration struct {
	Minutes Range  // exact: 45 seconds are ¾
	Text    string // as written: "10 to 12 minutes"
	At      int    // where Text begins, in bytes
}

// Durations finds the stretches of time in text, in order.
func Durations(text string) []Duration {
	var all []Duration
	for at := 0; at < len(text); {
		c := cursor{text, at}
		w := c.word()
		if w == "" && !isDigit(c.byte(0)) && vulgar[c.rune()] == [2]int64{} {
			at++
			continue
		}
		if d, ok := c.duration(); ok {
			d.At, d.Text = at, text[at:c.at]
			all = append(all, d)
			at = c.at
			continue
		}
		at += max(1, len(w))
	}
	return all
}

func (c *cursor) duration() (d Duration, ok bool) {
	if c.acceptWord("overnight") {
		d.Minutes = Range{Whole(8 * 60), Whole(12 * 60)}
		return d, true
	}
	q, ok := c.quantity()
	if !ok {
		return d, false
	}
	r := Reading{Amount: Of(q.number(), Each)}
	c.ranged(&r, q, false)
	c.gap()
	w, ok := lookUpUnit(c.word())
	if !ok || w.unit.Kind() != Time {
		return d, false
	}
	c.at += len(c.word())
	d.Minutes = r.Amount.Range.Scale(minutes[w.unit])
	return d, true
}
