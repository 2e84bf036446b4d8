package about

// Claim tells what speaks for a number being about a fact, each above 0.
type Claim struct {
	Shared float64 // the words near both
	Verb   float64 // their verbs; below 0 where the number's is another step's
	Place  float64 // how near the talk is to the fact's step
	Score  float64 // all of it together
}

// Claim weighs number i's being about fact n.
func (r *Reading) Claim(i, n int) Claim {
	c := r.claimOf(i, r.Said[i], n, r.around(i))
	return Claim{Shared: c.shared, Verb: c.verb, Place: c.place, Score: c.score()}
}
