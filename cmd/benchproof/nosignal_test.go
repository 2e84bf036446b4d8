package main

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"github.com/chromedp/cdproto/cdp"
	"github.com/chromedp/cdproto/network"
	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/browser"
)

// filming sets a kitchen up from an empty data folder, with a shot list.
func filming(t *testing.T) (address string, p *phone, episode string) {
	t.Helper()
	up := start(t, 2, "serve", "--data", t.TempDir(), "--addr", "127.0.0.1:0")
	p = newPhone(t, up.address)
	p.setUp(up.code)
	text, err := os.ReadFile(filepath.Join("testdata", "typed", "plum-tart.txt"))
	if err != nil {
		t.Fatal(err)
	}
	episode = p.makeEpisode("Plum tart", string(text))
	p.open(episode + "/shots")
	p.presses("form[action$='/draft'] button")
	return up.address, p, episode
}

func (c *cook) signsIn() {
	c.t.Helper()
	c.open("/sign-in")
	c.types("sign-in-name", "Ottoline")
	c.types("sign-in-password", "a short sentence")
	c.presses("form[action='/sign-in'] button")
	if got := c.tab.Address().Path; got != "/" {
		c.t.Fatalf("signing in leads to %s, want /", got)
	}
}

// alters changes the tick of a shot that waits here: what happened to the phone
// since.
func (p *phone) alters(shot int, change string) {
	p.t.Helper()
	browser.Get(p.tab, chromedp.Evaluate[bool](`(() => {
		const key = Object.keys(localStorage).find((key) => key.startsWith("ticks "));
		const all = JSON.parse(localStorage.getItem(key));
		const tick = all["`+strconv.Itoa(shot)+`"];
		`+change+`;
		localStorage.setItem(key, JSON.stringify(all));
		return true;
	})()`))
}

// Two phones film, and the first has no signal. All its ticks are sent after those
// of the second; which of them holds is a question of when they were given.
func TestALateTickGivesWay(t *testing.T) {
	cases := []struct {
		name, since string // what happened to the first phone since its tick
		want        string
	}{
		{"it has slept for ten minutes, and the other one's is later", "tick.at -= 10 * 60e3", "retake"},
		{"nothing, and its own is later", "", "got"},
		{"its clock ran on by a month", "tick.at -= 30 * 864e5", "got"},
		{"its clock ran on by a month, and the page was loaded again", "tick.at -= 30 * 864e5; tick.page = 0", "retake"},
		{"its clock was set back by an hour", "tick.at += 3600e3", "got"},
		{"the tick is of an earlier program, which kept no time", "all[6] = tick.state", "retake"},
	}
	address, a, episode := filming(t)
	shots := episode + "/shots"
	b := newPhone(t, address)
	b.signsIn()
	a.open(shots)
	b.open(shots)
	for i := range cases {
		b.taps(fmt.Sprintf("#shot-%d button[value=retake]", i+1))
	}
	b.unsent(0)
	a.offline(true)
	for i, c := range cases {
		a.taps(fmt.Sprintf("#shot-%d button[value=got]", i+1))
		a.alters(i+1, c.since)
	}
	a.unsent(len(cases))
	a.offline(false)
	a.unsent(0)
	b.open(shots)
	for i, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			says := ""
			if c.want == "retake" {
				says = "A later tick stands: retake."
			}
			if got := [3]string{a.pressed(i + 1), a.says(i + 1), b.pressed(i + 1)}; got != [3]string{c.want, says, c.want} {
				t.Errorf("the first phone shows %q and says %q, the second shows %q; want %q", got[0], got[1], got[2], c.want)
			}
		})
	}
	a.taps("#shot-1 button[value=got]")
	a.unsent(0)
	b.open(shots)
	if got := [2]string{a.says(1), b.pressed(1)}; got != [2]string{"", "got"} {
		t.Errorf("ticked once more, the first phone says %q and the second shows %q", got[0], got[1])
	}
}

// says is what a shot says of a later tick.
func (c *cook) says(shot int) string {
	c.t.Helper()
	line := fmt.Sprintf(`document.querySelector("#shot-%d [data-stands]")`, shot)
	return browser.Get(c.tab, chromedp.Evaluate[string](line+`.hidden ? "" : `+line+`.textContent`))
}

// The sheets that are used while filming are there without a signal, and what is
// ticked on them then is sent like all else.
func TestASheetIsThereWithoutASignal(t *testing.T) {
	_, p, episode := filming(t)
	shots, day := episode+"/shots", episode+"/shoot-day"
	p.isKept(shots) // the first time too, when no worker was there yet
	p.open(day)
	p.isKept(day)
	p.open(shots)
	p.fresh()
	p.taps("#shot-1 button[value=got]")
	p.unsent(0)
	p.open(shots + "?change=shot-2") // not kept, and no reason to forget the tick

	p.forgets()
	p.offline(true)
	p.open(shots)
	p.tab.Do(chromedp.Reload())
	p.waits(`document.querySelector(".kept").textContent.startsWith("No signal: this is the page as of ") && document.querySelectorAll(".shot").length > 3`)
	p.has(map[int]string{1: "got", 2: "missing"}) // although the copy is from before
	p.waits(`document.styleSheets.length === 1 && document.styleSheets[0].cssRules.length > 100 && document.fonts.check("1em Inter")`)
	p.taps("#shot-2 button[value=retake]")
	p.unsent(1)
	p.sees(day, "No signal: this is the page as of", "Shoot day")
	p.sees(shots+"?change=shot-1", "No signal: this is the page as of")
	p.unsent(1)
	p.has(map[int]string{1: "got", 2: "retake"})
	p.taps("#shot-3 button[value=got]")
	p.unsent(2)

	p.offline(false)
	p.unsent(0)
	p.open(shots)
	p.fresh()
	p.has(map[int]string{1: "got", 2: "retake", 3: "got"})

	p.open(episode + "/brief")
	p.offline(true)
	p.keepsNothing(episode + "/brief")
	p.keepsNothing("/")
}

// forgets empties the browser's own store of files, which may go at any time.
func (p *phone) forgets() {
	p.t.Helper()
	if _, err := chromedp.Call(p.tab.Context(), network.ClearBrowserCache, cdp.Empty{}); err != nil {
		p.t.Fatal(err)
	}
}

// fresh fails if the page says that it is a copy.
func (c *cook) fresh() {
	c.t.Helper()
	if browser.Get(c.tab, chromedp.Evaluate[bool](`!document.querySelector(".kept").hidden`)) {
		c.t.Errorf("with a signal the page is said to be a copy: %s", c.text())
	}
}

// copies are the pages that the browser has copies of.
func (p *phone) copies() []string {
	p.t.Helper()
	all := browser.Get(p.tab, chromedp.Evaluate[[]string](`(async () => {
		if (!await caches.has("sheets")) return [];
		return (await (await caches.open("sheets")).keys()).map(({ url }) => new URL(url).pathname);
	})()`, chromedp.EvalAwaitPromise))
	return slices.DeleteFunc(all, func(path string) bool { return strings.HasPrefix(path, "/assets/") })
}

const noCopies = `caches.keys().then((all) => all.length === 0)`

// A copy is for whoever is signed in: it goes with them, whichever way they go.
func TestNoCopyStaysAtTheDoor(t *testing.T) {
	for _, c := range []struct {
		name string
		goes func(p *phone, shots string)
	}{
		{"signing out", func(p *phone, _ string) {
			p.presses("form[action='/sign-out'] button")
			p.waits(noCopies)
		}},
		{"signing in as another", func(p *phone, _ string) {
			p.open("/sign-in")
			p.waits(noCopies)
		}},
		{"signed out elsewhere", func(p *phone, shots string) {
			if _, err := chromedp.Call(p.tab.Context(), network.ClearBrowserCookies, cdp.Empty{}); err != nil {
				p.t.Fatal(err)
			}
			p.tab.Scripts(false) // the worker sees it by itself
			p.open(shots)
			p.tab.Scripts(true)
			if at := p.tab.Address().Path; at != "/sign-in" {
				p.t.Fatalf("without a cookie %s leads to %s", shots, at)
			}
			p.waits(noCopies)
		}},
	} {
		t.Run(c.name, func(t *testing.T) {
			_, p, episode := filming(t)
			shots := episode + "/shots"
			p.isKept(shots)
			if got := p.copies(); len(got) != 1 || got[0] != shots {
				t.Fatalf("copies of %q, want one of %s", got, shots)
			}
			c.goes(p, shots)
			p.offline(true)
			p.keepsNothing(shots)
		})
	}
}

// The oldest copies make room.
func TestCopiesAreFew(t *testing.T) {
	_, p, first := filming(t)
	p.isKept(first + "/shots")
	for i := range 4 {
		episode := p.makeEpisode("Eggs "+strconv.Itoa(i), "Eggs\n\n2 eggs\n\nBoil the eggs for 5 minutes.")
		for _, sheet := range []string{"/shots", "/shoot-day"} {
			p.open(episode + sheet)
			p.isKept(episode + sheet)
		}
	}
	p.waits(`caches.match("` + first + `/shots").then((copy) => !copy)`)
	if got := p.copies(); len(got) != 8 || slices.Contains(got, first+"/shots") {
		t.Errorf("copies of %q, want the last eight", got)
	}
}
