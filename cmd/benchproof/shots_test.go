package main

import (
	"os"
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/browser"
)

// phone is a cook whose signal comes and goes.
type phone struct {
	*cook
	signal *airwave
}

// newPhone is another phone at the program's address.
func newPhone(t *testing.T, address string) *phone {
	t.Helper()
	signal := newAirwave(t, address)
	return &phone{&cook{t: t, tab: browser.Start(t, browser.Phone), at: signal.address}, signal}
}

// offline takes the signal away, or gives it back. Nothing gets through then,
// from the page and from its worker, and the browser knows it.
func (p *phone) offline(yes bool) {
	p.t.Helper()
	p.signal.gone(yes)
	state := network.OverrideNetworkStateParams{Offline: yes, DownloadThroughput: -1, UploadThroughput: -1}
	if _, err := chromedp.Call(p.tab.Context(), network.OverrideNetworkState, state); err != nil {
		p.t.Fatalf("emulate the network: %v", err)
	}
}

// keepsNothing opens an address without a signal, finds that the browser has no
// copy, and leaves its error page: left standing, that would load the sheet by
// itself once there is a signal, and cut short the way there.
func (p *phone) keepsNothing(path string) {
	p.t.Helper()
	if response, err := chromedp.RunResponse(p.tab.Context(), chromedp.Navigate(p.at+path)); err == nil {
		p.t.Errorf("with the signal gone %s loads: %v", path, response)
	}
	p.tab.Do(chromedp.Navigate("about:blank"))
}

// isKept waits until the browser has a copy of a page.
func (p *phone) isKept(path string) {
	p.t.Helper()
	p.waits(`caches.match("` + path + `").then(Boolean)`)
}

// unsent waits until so many ticks wait for a signal.
func (p *phone) unsent(n int) {
	p.t.Helper()
	if n == 0 {
		p.waits(`document.querySelector("[data-unsent]").hidden && !Object.keys(localStorage).some((key) => key.startsWith("ticks "))`)
		return
	}
	p.waits(`document.querySelector("[data-unsent]").textContent.includes("` + strconv.Itoa(n) + ` not sent")`)
}

// waits lets the page go on until a claim about it is true.
func (c *cook) waits(claim string) {
	c.t.Helper()
	browser.Get(c.tab, chromedp.Poll[bool](claim))
}

// taps presses a button that leads nowhere.
func (c *cook) taps(css string) {
	c.t.Helper()
	c.tab.Do(chromedp.Click(chromedp.CSS(css)))
}

// pressed is the state of the shot number i, from 1, that the page shows.
func (c *cook) pressed(i int) string {
	c.t.Helper()
	return browser.Get(c.tab, chromedp.Text(chromedp.CSS("#shot-"+strconv.Itoa(i)+" [aria-pressed=true]")))
}

// TestTheShots is the shot list on a phone, from an empty data folder: it is
// drafted, a setup is described, shots are ticked with the network gone, and the
// ticks arrive when it is back.
func TestTheShots(t *testing.T) {
	up := start(t, 2, "serve", "--data", t.TempDir(), "--addr", "127.0.0.1:0")
	c := newPhone(t, up.address)
	c.setUp(up.code)
	text, err := os.ReadFile(filepath.Join("testdata", "typed", "plum-tart.txt"))
	if err != nil {
		t.Fatal(err)
	}
	episode := c.makeEpisode("Plum tart", string(text))
	shots := episode + "/shots"
	c.sees(shots, "No shots yet", "Draft a shot list")
	c.presses("form[action$='/draft'] button")
	c.sees(shots, "By the clock of the day’s plan", "The ingredients laid out", "The finished dish", "Every step has a shot")
	all := browser.Get(c.tab, chromedp.Evaluate[int](`document.querySelectorAll(".shot").length`))

	c.describesASetup(shots)
	c.ticksWithoutScripts(shots)

	c.open(shots)
	c.offline(true)
	c.taps("#shot-2 button[value=got]")
	c.taps("#shot-3 button[value=retake]")
	c.taps("#shot-4 button[value=got]")
	c.taps("#shot-4 button[value=missing]")
	c.unsent(3)
	c.waits(`document.querySelector(".shots .title [data-left]").textContent === "2 of ` + strconv.Itoa(all) + ` got"`)
	c.keepsNothing(episode + "/call-sheet")
	c.offline(false)
	c.open(shots)
	c.unsent(0)
	c.open(shots)
	c.has(map[int]string{1: "got", 2: "got", 3: "retake", 4: "missing"})
	c.sees(shots, "2 of "+strconv.Itoa(all)+" got")
	c.callsTheDay(episode)
}

// has finds shots, by number from 1, in the states that the page should show.
func (c *cook) has(states map[int]string) {
	c.t.Helper()
	for shot, want := range states {
		if got := c.pressed(shot); got != want {
			c.t.Errorf("shot %d is %q, want %q", shot, got, want)
		}
	}
}

// describesASetup says what the first setup is made of.
func (c *cook) describesASetup(shots string) {
	c.t.Helper()
	c.open(shots)
	c.presses(".setup .title a")
	c.types("setup-lens", "35 mm")
	c.types("setup-light", "window left")
	c.presses("#setup .buttons button")
	c.sees(shots, "35 mm · window left")
}

// ticksWithoutScripts presses a form.
func (c *cook) ticksWithoutScripts(shots string) {
	c.t.Helper()
	c.tab.Scripts(false)
	c.open(shots)
	c.presses("#shot-1 button[value=got]")
	if at := c.tab.Address(); at.Path != shots || at.Fragment != "shot-1" {
		c.t.Errorf("a press leads to %s", at)
	}
	c.tab.Scripts(true)
	c.open(shots)
	if got := c.pressed(1); got != "got" {
		c.t.Errorf("the shot is %q", got)
	}
}

// callsTheDay prints the call sheet and finds the day in it.
func (c *cook) callsTheDay(episode string) {
	c.t.Helper()
	c.sees(episode+"/call-sheet", "Call sheet", "begin", "wrap", "Setups and shots", "35 mm · window left")
	pdf := filepath.Join(c.t.TempDir(), "call-sheet.pdf")
	c.tab.Print(pdf)
	printed := pdfWords(c.t, pdf)
	for _, want := range []string{"Call sheet", "09:00", "Setups and shots", "overhead 35 mm · window left", "Take care"} {
		if !strings.Contains(printed, want) {
			c.t.Errorf("the printed sheet does not hold %q:\n%s", want, printed)
		}
	}
	for _, pressed := range []string{"Season", "Print", "Before release"} {
		if strings.Contains(printed, pressed) {
			c.t.Errorf("the printed sheet holds %q", pressed)
		}
	}
}
