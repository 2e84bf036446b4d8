package project

// Arc says that task To starts at least Lag minutes after task From starts; Lag
// may be below 0, which bounds From from above. Origin stands for minute zero.
type Arc struct{ From, To, Lag int }

// Origin is minute zero as the end of an Arc.
const Origin = -1

// Arcs gives all that waits and limits ask of the starts, stations left out:
// shortest waits forwards, longest waits and latest ends backwards.
func (p Project) Arcs() []Arc {
	arcs := make([]Arc, 0, len(p.Tasks)+2*len(p.Waits))
	for i, t := range p.Tasks {
		arcs = append(arcs, Arc{Origin, i, t.NotBefore})
		if t.LatestEnd != None {
			arcs = append(arcs, Arc{i, Origin, t.Minutes - t.LatestEnd})
		}
	}
	for _, w := range p.Waits {
		minutes := p.Tasks[w.Before].Minutes
		arcs = append(arcs, Arc{w.Before, w.After, minutes + w.AtLeast})
		if w.AtMost != None {
			arcs = append(arcs, Arc{w.After, w.Before, -minutes - w.AtMost})
		}
	}
	return arcs
}

// Earliest gives the earliest start of each task by waits and limits alone. If
// they contradict each other it gives the tasks of one contradiction instead,
// in order; Origin stands among them where a limit takes part.
func (p Project) Earliest() (starts, contradiction []int) {
	n := len(p.Tasks)
	at := func(i int) int { return i + 1 } // the origin has place 0
	arcs := p.Arcs()
	starts, parent := make([]int, n+1), make([]int, n+1)
	for i := range parent {
		starts[i], parent[i] = -1, -1
	}
	starts[0] = 0
	for round := 0; ; round++ {
		changed := -1
		for k, a := range arcs {
			from, to := at(a.From), at(a.To)
			if starts[from] >= 0 && starts[from]+a.Lag > starts[to] {
				starts[to], parent[to], changed = starts[from]+a.Lag, k, to
			}
		}
		if changed < 0 {
			return starts[1:], nil
		}
		if round > n {
			return nil, ring(arcs, parent, changed)
		}
	}
}

// ring walks back along the arcs that last raised each start until a place
// comes up again: the places between are a cycle of positive length.
func ring(arcs []Arc, parent []int, place int) []int {
	seen := map[int]bool{}
	for parent[place] >= 0 && !seen[place] {
		seen[place] = true
		place = arcs[parent[place]].From + 1
	}
	first := place
	var back []int
	for {
		back = append(back, place-1)
		if parent[place] < 0 {
			break
		}
		if place = arcs[parent[place]].From + 1; place == first {
			break
		}
	}
	for i, j := 0, len(back)-1; i < j; i, j = i+1, j-1 {
		back[i], back[j] = back[j], back[i]
	}
	return back
}
