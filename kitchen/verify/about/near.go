package about

import (
	"benchproof/kitchen/verify/speech"
	"benchproof/kitchen/verify/written"
)

// near is how much a word near a number counts.
type near struct {
	word   string
	weight float64
}

// around gives the words that tell what a number is about: those of its
// sentence, and fewer where nobody wrote down where sentences end. What lies
// behind a turn of the talk ("and then", "but") counts half.
func (r *Reading) around(i int) []near {
	s, words := r.Said[i], r.Text.Words
	s.From = r.startOf(i)
	var all []near
	seen := map[string]bool{}
	take := func(k, distance int, share float64) {
		if word := written.Meaning(words[k]); word != "" && !seen[word] && r.Book.Weights[word] > 0 {
			seen[word] = true
			all = append(all, near{word, share * (1 - float64(distance)/22)})
		}
	}
	past, share := 0, 1.0 // sentences gone back
	for k := s.From - 1; k >= 0 && k >= s.From-14; k-- {
		if words[k].Stop == speech.Sentence {
			past++
			if past > 1 || s.From-1-k > 4 {
				break
			}
		}
		take(k, s.From-k+8*past, share)
		if turning[words[k].Text] {
			share /= 2
		}
	}
	share = 1
	for k := s.To; k < len(words) && k < s.To+10 && words[k-1].Stop != speech.Sentence; k++ {
		if turning[words[k].Text] {
			share /= 2
		}
		take(k, k-s.To+2, share)
	}
	return all
}

// turning are words by which a host comes to the next thing.
var turning = speech.SetOf("then but so now")
