package views

// ShootDaySheet is what each batch asks of the day.
type ShootDaySheet struct {
	Page
	EpisodeFrame
	Batches    []DayBatch
	HandsOn    string // all batches: "1 h 50–2 h 10"
	Unattended string
	Unsaid     string // "2 steps do not say how long they take"; "" if all do
	Empty      string // what to do when there are no batches
}

// DayBatch is one batch's steps in order.
type DayBatch struct {
	Title      string // "Swap-out, 2 makes"
	HandsOn    string
	Unattended string
	Steps      []DayStep
}

// DayStep is one step on the day.
type DayStep struct {
	StepRow
	Component string // drawn where it changes
	HandsOn   bool
}
