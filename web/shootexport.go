package web

import (
	"bytes"
	"encoding/csv"
	"fmt"
	"net/http"
	"net/url"
	"slices"
	"strconv"
	"strings"
	"time"

	ics "github.com/arran4/golang-ical"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/fault"
	"benchproof/kitchen/shoot"
	"benchproof/views"
)

// addExports links the plan's files and says which day they are for.
func (s *Server) addExports(sheet *views.ShootDaySheet, d *desk, p *shootPlan) {
	path := d.path(views.SheetShootDay)
	sheet.Exports = []views.Link{{Text: "Call sheet", Path: d.path(views.SheetCallSheet)}, {Text: "Calendar file", Path: path + ".ics"}, {Text: "CSV", Path: path + ".csv"}}
	day, zone := s.shootOn(d, p)
	sheet.Dated = fmt.Sprintf("The calendar file is for %s, on the clock of %s.", s.day(day), zone)
	if p.settings.On.IsZero() {
		sheet.Dated = fmt.Sprintf("No day is set: the calendar file is for today, %s, on the clock of %s.", s.day(day), zone)
	}
}

// shootOn is midnight of the day of the shoot, today if none is set, in the
// show's time zone.
func (s *Server) shootOn(d *desk, p *shootPlan) (day time.Time, zone *time.Location) {
	zone, err := time.LoadLocation(d.show.TimeZone)
	if err != nil {
		zone = time.UTC
	}
	on := p.settings.On
	if on.IsZero() {
		on = s.config.Now().In(zone)
	}
	return time.Date(on.Year(), on.Month(), on.Day(), 0, 0, 0, 0, zone), zone
}

// planned is the episode of the address with its plan; the error of a day that
// has none says what to change.
func (s *Server) planned(r *http.Request) (*desk, *shootPlan, error) {
	d, err := s.openDesk(r)
	if err != nil {
		return nil, nil, err
	}
	p, noPlan, err := s.planDay(r.Context(), d)
	if err != nil {
		return nil, nil, err
	}
	if say := p.empty(); say != "" {
		return nil, nil, fault.Invalidf("", "%s", say)
	}
	if noPlan != nil {
		return nil, nil, noPlan
	}
	return d, p, nil
}

// sendShootCSV sends the plan as a table (RFC 4180), a line for each thing done.
// Its day is that on which the thing begins, counted from 1.
func (s *Server) sendShootCSV(w http.ResponseWriter, r *http.Request) error {
	d, p, err := s.planned(r)
	if err != nil {
		return err
	}
	table, err := p.table()
	if err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", "text/csv; charset=utf-8")
	h.Set("Content-Disposition", `attachment; filename="`+fileName(d.episode.Title)+`-shoot-day.csv"`)
	return sendBytes(w, r, table)
}

func (p *shootPlan) table() ([]byte, error) {
	var b bytes.Buffer
	out := csv.NewWriter(&b)
	out.UseCRLF = true
	lines := [][]string{{"day", "begin", "end", "minutes", "batch", "part", "what", "stations", "setup", "made ahead"}}
	for _, t := range p.timed() {
		ahead := ""
		if t.isAhead {
			ahead = "yes"
		}
		lines = append(lines, []string{
			strconv.Itoa(1 + (p.zero+t.from)/episode.DayMinutes), p.clock(t.from), p.clock(t.to), strconv.Itoa(t.to - t.from), t.batch, asText(t.part), asText(t.what), strings.Join(t.uses, ", "), asText(t.setup), ahead,
		})
	}
	err := out.WriteAll(lines)
	return b.Bytes(), err
}

// asText keeps a spreadsheet from taking words of a pasted recipe for a
// formula.
func asText(words string) string {
	if words != "" && strings.ContainsRune("=+-@\t\r", rune(words[0])) {
		return "'" + words
	}
	return words
}

// timedWork is one thing done on the day, for its files.
type timedWork struct {
	id                string // the same as long as the day has the same work
	from, to          int
	batch, part, what string
	uses              []string
	setup             string
	isAhead           bool
}

// timed lists all that is done, in order of time.
func (p *shootPlan) timed() []timedWork {
	var all []timedWork
	for k, setup := range p.plan.Setups {
		all = append(all, timedWork{
			id: fmt.Sprintf("setup-%d", k+1), from: setup.From, to: setup.To, what: "Put up the camera: " + setup.Name,
			uses: []string{shoot.Hands}, setup: setup.Name,
		})
	}
	for _, e := range p.plan.Entries {
		if e.Moment != "" {
			all = append(all, p.timedMoment(e, len(all)))
			continue
		}
		if e.IsRest {
			continue
		}
		row := p.entryRow(e)
		work := timedWork{
			id:   fmt.Sprintf("%s-%d-%d", strings.ReplaceAll(e.Key.Batch, " ", "-"), e.Key.At.Component+1, e.Key.At.Step+1),
			from: e.From, to: p.endOf(e), batch: e.Key.Batch, part: p.part(e), what: row.Text, uses: e.Uses, setup: e.Setup, isAhead: e.IsAhead,
		}
		if e.IsClean {
			work.id += "-clean"
		}
		all = append(all, work)
	}
	slices.SortStableFunc(all, func(a, b timedWork) int { return a.from - b.from })
	return all
}

// timedMoment is something at a fixed time; n tells several apart.
func (p *shootPlan) timedMoment(e shoot.Entry, n int) timedWork {
	work := timedWork{id: fmt.Sprintf("moment-%d", n), from: e.From, to: e.To, what: e.Moment}
	for _, m := range p.moments {
		if m.Name == e.Moment && m.At == p.zero+e.From {
			work.id = fmt.Sprintf("moment-%d", m.ID)
			work.to = max(e.To, m.Until-p.zero)
		}
	}
	return work
}

// sendShootCalendar sends the plan as a calendar (RFC 5545), an event for each
// thing done. Times are sent in UTC, so that every calendar puts them right.
func (s *Server) sendShootCalendar(w http.ResponseWriter, r *http.Request) error {
	d, p, err := s.planned(r)
	if err != nil {
		return err
	}
	h := w.Header()
	h.Set("Content-Type", "text/calendar; charset=utf-8")
	h.Set("Content-Disposition", `attachment; filename="`+fileName(d.episode.Title)+`-shoot-day.ics"`)
	return sendBytes(w, r, []byte(s.shootCalendar(d, p).Serialize(ics.WithNewLineWindows)))
}

func (s *Server) shootCalendar(d *desk, p *shootPlan) *ics.Calendar {
	cal := ics.NewCalendarFor("Benchproof")
	cal.SetXWRCalName("Shoot: " + d.episode.Title)
	midnight, zone := s.shootOn(d, p)
	cal.SetXWRTimezone(zone.String())
	zero := time.Date(midnight.Year(), midnight.Month(), midnight.Day(), 0, p.zero, 0, 0, zone)
	for _, t := range p.timed() {
		event := cal.AddEvent(fmt.Sprintf("shoot-%d-%s@%s", d.episode.ID, t.id, s.calendarHost()))
		event.SetDtStampTime(s.config.Now())
		event.SetStartAt(zero.Add(time.Duration(t.from) * time.Minute))
		event.SetEndAt(zero.Add(time.Duration(t.to) * time.Minute))
		event.SetSummary(shortened(t.what, 120))
		about := joined("\n", joined(" · ", t.batch, t.part, strings.Join(t.uses, ", ")), t.what)
		if t.setup != "" {
			about += "\nFilmed: " + t.setup
		}
		event.SetDescription(about)
	}
	return cal
}

// calendarHost makes the events' ids this site's own.
func (s *Server) calendarHost() string {
	if u, err := url.Parse(s.config.PublicURL); err == nil && u.Hostname() != "" {
		return u.Hostname()
	}
	return "benchproof"
}
