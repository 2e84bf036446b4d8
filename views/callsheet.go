package views

// CallSheet is what everybody on the shoot has in hand: one page to print.
type CallSheet struct {
	Page
	EpisodeFrame
	Date      string // "12 Mar", for the gutter; "" if no day is set
	Day       string // "Friday 12 March 2027"; "no day set yet"
	Times     []DayFact
	NoPlan    string // why there is no plan, and what to change
	PlanPath  string // the Shoot day sheet
	Here      []CallList
	Ahead     []DayFact // what must be made ahead
	DayBefore []DayFact // of it, the steps of the day before
	Plan      []DayRow
	Setups    []SetupBlock
	Missing   string // "9 of 14 got"
	Shopping  string // what is still to get; "" if nothing is
	ShopPath  string
	Cautions  []string
}

// CallList is who or what must be there.
type CallList struct {
	Name  string // "people"
	Lines []string
}

// stateMark is a shot's state where it is not just missing.
func (s ShotRow) stateMark() Mark {
	for _, each := range s.Presses {
		switch {
		case !each.Pressed:
		case s.Got:
			return Mark{Kind: MarkProved, Text: each.State}
		case each.State == "retake":
			return Mark{Kind: MarkWrong, Text: each.State}
		}
	}
	return Mark{}
}
