package project

import "slices"

// Mirror turns the project around a finish: a plan of the mirrored project that
// starts at zero, read backwards, is a plan of p that ends at finish. Each
// start s of a task becomes finish − s − minutes, and no task may end beyond
// finish, where the unmirrored day begins. finish is 0 or more.
func (p Project) Mirror(finish int) Project {
	m := Project{Tasks: slices.Clone(p.Tasks), Setups: p.Setups}
	m.Setups.OfFirst = !p.Setups.OfFirst
	for _, s := range p.Stations {
		m.Stations = append(m.Stations, s.mirror(finish))
	}
	for i, t := range p.Tasks {
		task := &m.Tasks[i]
		task.NotBefore, task.LatestEnd, task.Forbidden = 0, None, nil
		if t.LatestEnd != None {
			task.NotBefore = max(0, finish-t.LatestEnd)
		}
		if task.LatestEnd = finish - t.NotBefore; task.LatestEnd == None {
			task.LatestEnd-- // a minute too late is a limit, not none
		}
		for _, span := range t.Forbidden {
			if from, to := max(0, finish-span.To), finish-span.From; from < to {
				task.Forbidden = append(task.Forbidden, Span{from, to})
			}
		}
	}
	for _, w := range p.Waits {
		w.Before, w.After = w.After, w.Before
		m.Waits = append(m.Waits, w)
	}
	return m
}

func (s Station) mirror(finish int) Station {
	m := Station{Name: s.Name, Capacity: s.CapacityAt(max(0, finish-1))}
	for k := len(s.Changes) - 1; k >= 0; k-- {
		from := finish - s.Changes[k].From
		if from <= 0 {
			continue
		}
		before := s.Capacity
		if k > 0 {
			before = s.Changes[k-1].Capacity
		}
		m.Changes = append(m.Changes, Level{from, before})
	}
	return m
}

// MirrorStarts reads a plan of Mirror(finish) as a plan of p, and the other
// way round.
func (p Project) MirrorStarts(starts []int, finish int) []int {
	turned := make([]int, len(starts))
	for i, s := range starts {
		turned[i] = finish - s - p.Tasks[i].Minutes
	}
	return turned
}
