package web_test

import (
	"encoding/csv"
	"regexp"
	"strings"
	"testing"
	"time"

	ics "github.com/arran4/golang-ical"
	"github.com/emersion/go-ical"
	"github.com/google/go-cmp/cmp"
)

// oddLoaf has what calendars and tables must quote, and letters of two bytes
// where lines are folded.
const oddLoaf = `Loaf

500 g bread flour

Knead, fold; knead again for 10 minutes, "gently" — ééééééééééééééééééééééééééééééééééééééééééééééééééééé.
Bake the loaf at 220 °C for 15 minutes.
`

func startOdd(t *testing.T) (s *site, path string) {
	t.Helper()
	s = newSite(t)
	path = s.start("Loaf", oddLoaf)
	s.setMakes(1)
	show := must(s.store.Show(t.Context()))
	show.TimeZone = "Pacific/Auckland"
	if err := s.store.SaveShow(t.Context(), show); err != nil {
		t.Fatal(err)
	}
	s.film(1, "overhead, window left")
	s.film(2, "=table, low lamp")
	return s, path
}

func TestTheCalendarReadsBack(t *testing.T) {
	s, path := startOdd(t)
	s.setDay(path, "on", "2027-03-12")
	s.shows(path+"/shoot-day", "The calendar file is for 12 Mar, on the clock of Pacific/Auckland.")
	got := s.get(path + "/shoot-day.ics")
	if kind := got.header.Get("Content-Type"); kind != "text/calendar; charset=utf-8" {
		t.Errorf("Content-Type = %q", kind)
	}
	cal, err := ics.ParseCalendar(strings.NewReader(got.body))
	if err != nil {
		t.Fatal(err)
	}
	type event struct{ From, To, Summary string }
	var events []event
	ids := map[string]bool{}
	for _, e := range cal.Events() {
		from, to := must(e.GetStartAt()), must(e.GetEndAt())
		events = append(events, event{from.UTC().Format(time.RFC3339), to.UTC().Format(time.RFC3339), e.GetProperty(ics.ComponentPropertySummary).Value})
		ids[e.Id()] = true
	}
	// 09:00 in Auckland is 20:00 UTC of the day before: it is summer there.
	want := []event{
		{"2027-03-11T20:00:00Z", "2027-03-11T20:10:00Z", "Knead, fold; knead again for 10 minutes, \"gently\" — " + strings.Repeat("é", 53) + "."},
		{"2027-03-11T20:10:00Z", "2027-03-11T20:15:00Z", "Put up the camera: =table, low lamp"},
		{"2027-03-11T20:15:00Z", "2027-03-11T20:30:00Z", "Bake the loaf at 220 °C for 15 minutes."},
	}
	if diff := cmp.Diff(want, events); diff != "" {
		t.Errorf("events (-want +got):\n%s", diff)
	}
	if len(ids) != len(events) {
		t.Errorf("%d ids for %d events: %v", len(ids), len(events), ids)
	}
	if again := s.get(path + "/shoot-day.ics").body; again != got.body {
		t.Error("the same day gives another calendar: ids must stay, so that a calendar updates its events")
	}
}

// The calendar means the same to a reader that is not of the library that wrote
// it, with moments among the events.
func TestAnotherReaderReadsTheCalendar(t *testing.T) {
	s, path := startOdd(t)
	s.setDay(path, "on", "2027-03-12")
	s.addMoment(path, "name", "Guests; taste, at last", "at", "16:00", "until", "16:30")
	cal, err := ical.NewDecoder(strings.NewReader(s.get(path + "/shoot-day.ics").body)).Decode()
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, e := range cal.Events() {
		summary, from, to := must(e.Props.Text(ical.PropSummary)), must(e.DateTimeStart(time.UTC)), must(e.DateTimeEnd(time.UTC))
		uid := must(e.Props.Text(ical.PropUID))
		got = append(got, joined(from.Format("15:04"), to.Format("15:04"), summary, uid))
	}
	want := []string{
		"20:00 20:10 Knead, fold; knead again for 10 minutes, \"gently\" — " + strings.Repeat("é", 53) + ". shoot-1-shoot-1-1@kitchen.example",
		"20:10 20:15 Put up the camera: =table, low lamp shoot-1-setup-1@kitchen.example",
		"20:15 20:30 Bake the loaf at 220 °C for 15 minutes. shoot-1-shoot-1-2@kitchen.example",
		"03:00 03:30 Guests; taste, at last shoot-1-moment-1@kitchen.example",
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("events (-want +got):\n%s", diff)
	}
}

func joined(parts ...string) string { return strings.Join(parts, " ") }

// RFC 5545, 3.1: lines end with CRLF and are at most 75 octets long, folded with
// a blank; 3.3.11: commas, semicolons and line ends in TEXT are escaped; 3.6.1:
// UID and DTSTAMP are required. Read by hand, without the library.
func TestTheCalendarIsWrittenToTheStandard(t *testing.T) {
	s, path := startOdd(t)
	body := s.get(path + "/shoot-day.ics").body
	if strings.Count(body, "\n") != strings.Count(body, "\r\n") || !strings.HasSuffix(body, "\r\n") {
		t.Error("a line does not end with CRLF")
	}
	folded := 0
	for _, line := range strings.Split(strings.TrimSuffix(body, "\r\n"), "\r\n") {
		if len(line) > 75 {
			t.Errorf("a line of %d octets: %q", len(line), line)
		}
		if strings.HasPrefix(line, " ") {
			folded++
		}
	}
	if folded == 0 {
		t.Error("no line is folded, though one is longer than 75 octets")
	}
	unfolded := strings.ReplaceAll(body, "\r\n ", "")
	for _, want := range []string{
		"BEGIN:VCALENDAR\r\n", "VERSION:2.0\r\n", "PRODID:", "DTSTAMP:20270302T090000Z\r\n",
		`SUMMARY:Knead\, fold\; knead again for 10 minutes\, "gently" — é`, `\nFilmed: overhead\, window left`,
		"UID:shoot-1-shoot-1-1@kitchen.example\r\n", "END:VCALENDAR\r\n",
	} {
		if !strings.Contains(unfolded, want) {
			t.Errorf("the calendar has no %q:\n%s", want, unfolded)
		}
	}
	begins, stamps := strings.Count(body, "BEGIN:VEVENT"), len(regexp.MustCompile(`(?m)^DTSTAMP:`).FindAllString(body, -1))
	if begins != 3 || stamps != begins {
		t.Errorf("%d events with %d DTSTAMPs, want 3 with one each", begins, stamps)
	}
}

// Without a day the file is for today where the show is: at 09:00 UTC on 2 March
// it is 22:00 of that day in Auckland.
func TestACalendarWithoutADayIsForToday(t *testing.T) {
	s, path := startOdd(t)
	s.shows(path+"/shoot-day", "No day is set: the calendar file is for today, 2 Mar, on the clock of Pacific/Auckland.")
	if body := s.get(path + "/shoot-day.ics").body; !strings.Contains(body, "DTSTART:20270301T200000Z\r\n") {
		t.Errorf("the day does not begin at 09:00 of 2 March in Auckland:\n%s", body)
	}
}

func TestTheTableReadsBack(t *testing.T) {
	s, path := startOdd(t)
	got := s.get(path + "/shoot-day.csv")
	lines, err := csv.NewReader(strings.NewReader(got.body)).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	want := [][]string{
		{"day", "begin", "end", "minutes", "batch", "part", "what", "stations", "setup", "made ahead"},
		{"1", "09:00", "09:10", "10", "shoot", "", "Knead, fold; knead again for 10 minutes, \"gently\" — " + strings.Repeat("é", 53) + ".", "hands, camera", "overhead, window left", ""},
		{"1", "09:10", "09:15", "5", "", "", "Put up the camera: =table, low lamp", "hands", "'=table, low lamp", ""},
		{"1", "09:15", "09:30", "15", "shoot", "", "Bake the loaf at 220 °C for 15 minutes.", "oven, hands, camera", "'=table, low lamp", ""},
	}
	if diff := cmp.Diff(want, lines); diff != "" {
		t.Errorf("table (-want +got):\n%s", diff)
	}
	if kind := got.header.Get("Content-Type"); kind != "text/csv; charset=utf-8" {
		t.Errorf("Content-Type = %q", kind)
	}
}

func TestTheTableCountsTheDays(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.setDay(path, "begin", "23:55")
	body := s.get(path + "/shoot-day.csv").body
	for _, want := range []string{"\r\n1,23:55,00:05,10,shoot,", "\r\n2,00:05,02:05,120,shoot,", "\r\n2,03:00,03:05,5,shoot,"} {
		if !strings.Contains(body, want) {
			t.Errorf("the table has no line %q:\n%s", want, body)
		}
	}
}

func TestFilesOfAnEmptyDaySayWhatIsMissing(t *testing.T) {
	s := newSite(t)
	path := s.start("Only an idea", "")
	for _, file := range []string{".csv", ".ics"} {
		if got := s.get(path + "/shoot-day" + file); got.status != 422 || !strings.Contains(words(got.body), "The recipe has no steps to plan yet") {
			t.Errorf("%s = %d\n%s", file, got.status, words(got.body))
		}
	}
	if got := s.get("/episodes/99/shoot-day.ics"); got.status != 404 {
		t.Errorf("a missing episode's calendar = %d, want 404", got.status)
	}
}
