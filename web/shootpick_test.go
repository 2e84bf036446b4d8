package web_test

import (
	"net/http"
	"net/url"
	"strings"
	"testing"
)

// The loaf with a dough that is proved ahead: kneaded from 07:00, proved until
// 09:10, it is shaped when the day begins or as soon as it is proved.
func TestASwapOutIsPicked(t *testing.T) {
	s, path := startLoaf(t, 1)
	trade := s.shows(path+"/shoot-day?swapouts=1", "0 extra makes: wraps 12:10", "▪ as planned",
		"1 extra make: wraps 10:10", "adds to the shopping: 500 g", "Plan it so")
	if !strings.Contains(trade, `name="stage" value="2 "`) {
		t.Fatalf("the option does not send its stage:\n%s", words(trade))
	}
	if got := s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}}); got.status != http.StatusSeeOther {
		t.Fatalf("picking = %d\n%s", got.status, words(got.body))
	}
	s.shows(path+"/shoot-day", "10:10 wraps ✓", "swap-out to step 2", "made ahead")
	s.shows(path+"/shop", "1 × swap-out up to step 2", "1 kg", "bread flour")
	s.shows(path+"/shoot-day?swapouts=1", "1 extra make: wraps 10:10 ▪ as planned")

	if got := s.send(path+"/shoot-day/swap-outs", url.Values{}); got.status != http.StatusSeeOther {
		t.Fatalf("picking none = %d", got.status)
	}
	s.shows(path+"/shoot-day", "12:10 wraps ✓")
	if page := words(s.get(path + "/shop").body); strings.Contains(page, "swap-out up to") {
		t.Errorf("the shop still buys for the swap-out:\n%s", page)
	}
}

// Only what is needed up to the stage is bought again: no icing sugar.
func TestASwapOutBuysOnlyWhatItNeeds(t *testing.T) {
	s := newSite(t)
	path := s.start("Set cream", `Set cream

Serves 4

300 ml double cream
100 g caster sugar
20 g icing sugar

Heat the double cream with the caster sugar for 5 minutes.
Chill for 3 hours.
Dust with the icing sugar and serve for 5 minutes.
`)
	s.setMakes(1)
	s.shows(path+"/shoot-day?swapouts=1", "the evening before")
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	s.shows(path+"/shop", "swap-out up to step 2, the day before", "600 mL", "200 g caster sugar", "20 g icing sugar")
}

// Guests at 11:00 leave no time to prove; a dough that is proved ahead, by 09:10,
// is baked by 10:05. A day that has no plan says so, side by side, and is planned
// with the swap-out that is picked.
func TestOnlyASwapOutSavesTheDay(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.addMoment(path, "name", "Guests", "at", "11:00", "holds", "done by then", "step", "4 ")
	s.shows(path+"/shoot-day", "no plan", "too late for Guests at 11:00", "What would a swap-out save?")
	trade := s.shows(path+"/shoot-day?swapouts=1", "0 extra makes: no plan.", "1 extra make: wraps 10:10", "adds to the shopping: 500 g", "Plan it so")
	if strings.Contains(words(trade), "as planned") {
		t.Errorf("a day without a plan is said to be planned so:\n%s", words(trade))
	}
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	s.shows(path+"/shoot-day", "10:10 wraps ✓")
	again := words(s.shows(path+"/shoot-day?swapouts=1", "0 extra makes: no plan.", "1 extra make: wraps 10:10 ▪ as planned"))
	if !strings.Contains(again, "too late for Guests at 11:00") {
		t.Errorf("it does not say why there is none:\n%s", again)
	}
}

func TestASwapOutThatCannotBe(t *testing.T) {
	s, path := startLoaf(t, 1)
	for _, stage := range []string{"9 ", "x", "3 ", "2 Crust"} {
		if got := s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {stage}}); got.status != http.StatusUnprocessableEntity {
			t.Errorf("stage %q = %d, want 422", stage, got.status)
		}
	}
	s.shows(path+"/shoot-day", "12:10 wraps ✓")
}

// A recipe that loses the step of a swap-out says so, and plans without it.
func TestASwapOutWhoseStepIsGone(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	batches, err := s.store.Batches(t.Context(), 1)
	if err != nil {
		t.Fatal(err)
	}
	gone := batches[len(batches)-1]
	gone.Step = 7
	if err := s.store.SaveBatch(t.Context(), gone); err != nil {
		t.Fatal(err)
	}
	s.shows(path+"/shoot-day", "12:10 wraps ✓", "No longer in the plan, so not kept to: the swap-out up to step 7")
}

// A shoot batch has no stage: changing its kind takes it away.
func TestABatchChangedFromASwapOutIsWhole(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	s.post(path+"/batches/3", "kind", "spare", "makes", "1", "note", "", "revision", "1")
	if page := words(s.shows(path+"/shop", "spare")); strings.Contains(page, "up to step") {
		t.Errorf("the spare is made up to a step:\n%s", page)
	}
}

// What is made overnight is listed for the day before, step by step.
func TestTheDayBefore(t *testing.T) {
	s := newSite(t)
	path := s.start("Set cream", "Set cream\n\nServes 4\n\n300 ml double cream\n100 g caster sugar\n\nHeat the double cream with the caster sugar for 5 minutes.\nChill for 3 hours.\nServe for 5 minutes.\n")
	s.setMakes(1)
	if page := words(s.get(path + "/shoot-day").body); strings.Contains(page, "The day before") {
		t.Errorf("something is to be done the day before, though nothing is made overnight:\n%s", page)
	}
	s.send(path+"/shoot-day/swap-outs", url.Values{"stage": {"2 "}})
	s.shows(path+"/shoot-day", "The day before, at the latest 21:55 Heat the double cream with the caster sugar for 5 minutes. 5 min · hob 22:00 Chill for 3 hours. 3 h · fridge", "09:05 wraps ✓")
}

// The chart's table says who does what when, station by station, with what is
// taken away.
func TestTheChartIsATableToo(t *testing.T) {
	s, path := startLoaf(t, 1)
	s.addMoment(path, "name", "Lunch", "at", "09:30", "until", "10:30", "takes", "oven")
	s.shows(path+"/shoot-day", "Station From To What How hands 09:00 09:10 Knead the flour and water for 10 minutes. hands-on",
		"oven 09:30 10:30 Lunch not there oven 11:25 12:05 Bake the loaf at 220 °C for 40 minutes. unattended")
}
