package script

// begin adds up the ways on which a segment begins at the i-th spot, from those
// on which another ends there.
func (w *ways) begin(i int) {
	if i == 0 {
		for k := range w.segments {
			w.began[k][0] = w.edge(k)
			w.since[k][0] = w.began[k][0]
		}
		return
	}
	all, jump := 0.0, w.passing[0]
	for _, t := range w.total {
		all += t
	}
	for k := range w.segments {
		sum := jump * max(all-w.total[k], 0)
		for d := 1; d <= min(oneByOne, k); d++ {
			sum += (w.passing[d] - jump) * w.total[k-d]
		}
		w.began[k][i] = sum * w.enters[k][i]
		w.since[k][i] = w.began[k][i] + w.since[k][i-1]*w.held[k][i-1]
	}
}

// forth adds up the ways on which a segment ends at the i-th spot, and measures
// anew what is held before it.
func (w *ways) forth(i int) {
	all := 0.0
	for k := range w.segments {
		w.total[k] = w.endingAt(k, i)
		all += w.total[k]
	}
	all = max(all, negligible)
	for k := range w.segments {
		w.total[k] /= all
		w.held[k][i-1] /= all
	}
}

// endingAt adds up the ways on which the k-th segment ends at the i-th spot, by
// where it began.
func (w *ways) endingAt(k, i int) float64 {
	held, began, since, long := w.held[k], w.began[k], w.since[k], w.lasting[k]
	sum, onto := 0.0, 1.0
	for b := i - 1; b >= 0; b-- {
		if onto *= held[b]; onto*since[b] < negligible {
			break // and all before it are less
		}
		step := int((w.seconds[i] - w.seconds[b]) / w.step)
		if step >= len(long.odds) {
			return sum + onto*long.farther*since[b]
		}
		sum += onto * long.odds[step] * began[b]
	}
	return sum
}
