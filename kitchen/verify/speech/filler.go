package speech

var fillers = SetOf("um uh uhm umm er erm hmm hm mm mmm ah eh")

// dropFillers takes out what only fills a pause. A stop behind a filler stays.
func (t *Text) dropFillers() {
	kept := t.Words[:0]
	drop := func(stop Stop) {
		if n := len(kept); n > 0 && kept[n-1].Stop < stop && stop == Sentence {
			kept[n-1].Stop = stop
		}
	}
	for i := 0; i < len(t.Words); i++ {
		w := t.Words[i]
		if fillers[w.Text] && !(w.Text == "mm" && i > 0 && IsNumberWord(t.Words[i-1].Text)) {
			if n := len(kept); n > 0 && kept[n-1].Stop == Clause && w.Stop == Clause {
				kept[n-1].Stop = None // "two, um, cups"
			}
			drop(w.Stop)
			continue
		}
		if w.Text == "you" && w.Stop == None && i+1 < len(t.Words) && t.Words[i+1].Text == "know" && (t.Words[i+1].Stop != None || i > 0 && IsNumberWord(t.Words[i-1].Text)) {
			drop(t.Words[i+1].Stop)
			i++
			continue
		}
		kept = append(kept, w)
	}
	t.Words = kept
}
