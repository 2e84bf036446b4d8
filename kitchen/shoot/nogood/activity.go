package nogood

// activityHeap gives the variable that took part in most contradictions of
// late. Ties go to the variable added first.
type activityHeap struct {
	activity []float64
	heap     []int
	place    []int // in the heap, −1 for out
	isAside  []bool
	step     float64
}

func (h *activityHeap) add(v int) {
	if h.step == 0 {
		h.step = 1
	}
	h.activity, h.place = append(h.activity, 0), append(h.place, -1)
	h.isAside = append(h.isAside, false)
	h.insert(v)
}

func (h *activityHeap) before(a, b int) bool {
	if h.activity[a] != h.activity[b] {
		return h.activity[a] > h.activity[b]
	}
	return a < b
}

func (h *activityHeap) insert(v int) {
	if h.place[v] >= 0 || h.isAside[v] {
		return
	}
	h.heap = append(h.heap, v)
	h.place[v] = len(h.heap) - 1
	h.up(h.place[v])
}

// top gives the first variable, ok false if the heap is empty.
func (h *activityHeap) top() (v int, ok bool) {
	if len(h.heap) == 0 {
		return 0, false
	}
	return h.heap[0], true
}

func (h *activityHeap) pop() {
	last := len(h.heap) - 1
	h.place[h.heap[0]] = -1
	if last > 0 {
		h.heap[0] = h.heap[last]
		h.place[h.heap[0]] = 0
	}
	h.heap = h.heap[:last]
	if last > 1 {
		h.down(0)
	}
}

func (h *activityHeap) bump(v int) { h.raise(v, h.step) }

func (h *activityHeap) raise(v int, by float64) {
	if h.activity[v] += by; h.activity[v] > 1e100 {
		for k := range h.activity {
			h.activity[k] *= 1e-100
		}
		h.step *= 1e-100
	}
	if h.place[v] >= 0 {
		h.up(h.place[v])
	}
}

func (h *activityHeap) decay() { h.step /= 0.95 }

func (h *activityHeap) up(k int) {
	for k > 0 {
		parent := (k - 1) / 2
		if !h.before(h.heap[k], h.heap[parent]) {
			return
		}
		h.swap(k, parent)
		k = parent
	}
}

func (h *activityHeap) down(k int) {
	for {
		child := 2*k + 1
		if child >= len(h.heap) {
			return
		}
		if child+1 < len(h.heap) && h.before(h.heap[child+1], h.heap[child]) {
			child++
		}
		if !h.before(h.heap[child], h.heap[k]) {
			return
		}
		h.swap(k, child)
		k = child
	}
}

func (h *activityHeap) swap(a, b int) {
	h.heap[a], h.heap[b] = h.heap[b], h.heap[a]
	h.place[h.heap[a]], h.place[h.heap[b]] = a, b
}
