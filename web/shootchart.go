package web

import (
	"fmt"
	"slices"

	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// The chart's measures, in its own units: as wide as the sheet at its widest.
const (
	chartWidth = 720
	chartLeft  = 72 // the stations' names
	chartRight = 16
	chartTop   = 22 // the hours
	laneHeight = 16
	laneGap    = 3
	rowGap     = 8
)

// chartWaits is the row of what no station holds up.
const chartWaits = "waits"

// chartSpan is a stretch of work at one station.
type chartSpan struct {
	from, to int
	kind     views.BarKind
	words    string
}

// within is the part of the span that lies between two minutes, if any does.
func (c chartSpan) within(first, last int) (part chartSpan, ok bool) {
	c.from, c.to = max(c.from, first), min(c.to, last)
	return c, c.to > c.from
}

// newChart draws the plan with a row for each station.
func newChart(p *shootPlan) views.DayChart {
	first, last := p.hours()
	perMinute := float64(chartWidth-chartLeft-chartRight) / float64(last-first)
	x := func(minute int) float64 { return chartLeft + float64(minute-first)*perMinute }
	chart := views.DayChart{
		Title: fmt.Sprintf("The plan from %s to %s by station; the table before it says the same in words", p.at(p.plan.Begin), p.at(p.plan.Wrap)),
		Width: chartWidth, Left: chartLeft,
	}
	top := chartTop
	for _, name := range []string{shoot.Hands, shoot.Camera, shoot.Light, "mixer", "hob", "oven", chartWaits} {
		spans := p.spans(name)
		if len(spans) == 0 {
			continue
		}
		lane, lanes := inLanes(spans)
		row := views.ChartRow{Name: name, Y: top + laneHeight - 4, Line: top - rowGap/2}
		for i, s := range spans {
			row.Bars = append(row.Bars, views.ChartBar{
				X: tenth(x(s.from)), Y: top + lane[i]*(laneHeight+laneGap), Width: tenth(max(1.5, float64(s.to-s.from)*perMinute-1)), Height: laneHeight,
				Kind: s.kind, From: p.clock(s.from), To: p.clock(s.to), Words: s.words,
			})
		}
		top += lanes*(laneHeight+laneGap) + rowGap - laneGap
		chart.Rows = append(chart.Rows, row)
	}
	chart.Height = top
	step := 60 * tickHours((last-first)/60)
	for minute := first; minute <= last; minute += step {
		chart.Ticks = append(chart.Ticks, views.ChartTick{X: tenth(x(minute)), Text: p.clock(minute)})
	}
	return chart
}

// hours are the plan's ends, widened to whole hours of the clock.
func (p *shootPlan) hours() (first, last int) {
	first = p.plan.Begin - (p.zero+p.plan.Begin)%60
	last = p.plan.Wrap + (60-(p.zero+p.plan.Wrap)%60)%60
	return first, max(last, first+60)
}

// tickHours is how many hours lie between two ticks, so that they can be read.
func tickHours(hours int) int {
	for _, n := range []int{1, 2, 3, 6, 12} {
		if hours <= n*12 {
			return n
		}
	}
	return 24
}

func tenth(n float64) string { return fmt.Sprintf("%.1f", n) }

// spans are what is done at a station, in order of time.
func (p *shootPlan) spans(station string) []chartSpan {
	var all []chartSpan
	for _, e := range p.plan.Entries {
		uses := e.Uses
		if len(uses) == 0 {
			uses = []string{chartWaits}
		}
		if e.Moment == "" && e.To > e.From && slices.Contains(uses, station) {
			all = append(all, chartSpan{e.From, e.To, barKind(e), shortened(e.Step.Text, 80)})
		}
	}
	for _, s := range p.plan.Setups {
		if s.To > s.From && (station == shoot.Camera || station == shoot.Hands) {
			all = append(all, chartSpan{s.From, s.To, views.BarSetup, "put up " + s.Name})
		}
	}
	first, last := p.hours()
	for _, m := range p.moments {
		taken := chartSpan{m.At - p.zero, m.Until - p.zero, views.BarTaken, m.Name}
		if taken, isSeen := taken.within(first, last); isSeen && m.Takes == station {
			all = append(all, taken)
		}
	}
	slices.SortStableFunc(all, func(a, b chartSpan) int { return a.from - b.from })
	return all
}

func barKind(e shoot.Entry) views.BarKind {
	switch {
	case e.IsFilmed:
		return views.BarFilm
	case e.IsAhead:
		return views.BarAhead
	case e.Step.HandsOn:
		return views.BarHands
	}
	return views.BarWait
}

// inLanes puts spans that overlap beneath each other: the lane of each, from 0,
// and how many there are.
func inLanes(spans []chartSpan) (lane []int, lanes int) {
	var ends []int // of what stands last in each lane
	lane = make([]int, len(spans))
	for i, s := range spans {
		at := slices.IndexFunc(ends, func(end int) bool { return end <= s.from })
		if at < 0 {
			at, ends = len(ends), append(ends, 0)
		}
		lane[i], ends[at] = at, s.to
	}
	return lane, len(ends)
}
