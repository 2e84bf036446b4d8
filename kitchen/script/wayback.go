package script

// finish ends the cut with any of the segments.
func (w *ways) finish() {
	n, all := len(w.spots), 0.0
	for k := range w.segments {
		w.leaves[k][n] = w.edge(len(w.segments) - 1 - k)
		all += w.total[k] * w.leaves[k][n]
	}
	for k := range w.segments {
		w.leaves[k][n] /= max(all, negligible)
		w.later[k][n] = w.leaves[k][n]
	}
}

// back turns the ways up to the i-th spot, for each segment that begins there,
// into the likelihood that it does, and adds up the ways from there on.
func (w *ways) back(i int) {
	all, jump := 0.0, w.passing[0]
	for k := range w.segments {
		onward := w.endingAfter(k, i)
		w.began[k][i] *= onward
		w.total[k] = onward * w.enters[k][i]
		all += w.total[k]
	}
	for k := range w.segments {
		sum := jump * max(all-w.total[k], 0)
		for d := 1; d <= oneByOne && k+d < len(w.segments); d++ {
			sum += (w.passing[d] - jump) * w.total[k+d]
		}
		w.leaves[k][i] = sum
		w.later[k][i] = sum + w.held[k][i]*w.later[k][i+1]
	}
}

// endingAfter adds up the ways from the i-th spot on, where the k-th segment
// begins, by where it ends.
func (w *ways) endingAfter(k, i int) float64 {
	held, leaves, later, long := w.held[k], w.leaves[k], w.later[k], w.lasting[k]
	began := w.began[k][i]
	sum, onto := 0.0, 1.0
	for e := i + 1; e <= len(w.spots); e++ {
		if onto *= held[e-1]; began*onto*later[e] < negligible {
			break // and all behind it are less
		}
		step := int((w.seconds[e] - w.seconds[i]) / w.step)
		if step >= len(long.odds) {
			return sum + onto*long.farther*later[e]
		}
		sum += onto * long.odds[step] * leaves[e]
	}
	return sum
}
