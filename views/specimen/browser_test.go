package specimen_test

import (
	"net/http"
	"net/http/httptest"
	"net/url"
	"strconv"
	"strings"
	"sync"
	"testing"
	"time"

	"github.com/chromedp/chromedp"
	"github.com/google/go-cmp/cmp"

	"benchproof/cmd/check/browser"
	"benchproof/static"
	"benchproof/views/specimen"
)

// TestPagesInABrowser: at a desk and on a phone, in light and dark, nothing
// breaks WCAG 2.2 AA as far as axe-core can tell, nothing is wider than the
// window, and the browser has nothing to complain of under the strict policy.
func TestPagesInABrowser(t *testing.T) {
	house := serve(t)
	for _, window := range []browser.Window{browser.Desk, browser.Phone} {
		tab := browser.Start(t, window)
		for _, s := range specimen.Pages() {
			for _, dark := range []bool{true, false} {
				if dark && window.Touch {
					continue // the same colours as at the desk
				}
				tab.Dark(dark)
				tab.Open(house.URL + "/" + s.Name)
				for _, v := range tab.Axe() {
					t.Errorf("%s, %s, dark %v: %s", s.Name, window.Name, dark, v)
				}
			}
			for _, wide := range tab.Overflow() {
				t.Errorf("%s, %s: %s", s.Name, window.Name, wide)
			}
			for _, c := range tab.Complaints() {
				t.Errorf("%s, %s: %s", s.Name, window.Name, c)
			}
		}
	}
}

// heightOf is where on the page a thing starts, in pixels from its upper edge.
func heightOf(tab *browser.Tab, css string) float64 {
	return browser.Get(tab, chromedp.Evaluate[float64](`document.querySelector(`+strconv.Quote(css)+`).getBoundingClientRect().top + scrollY`))
}

// TestTicksSurviveBadSignal: presses without a connection show at once, are
// there after a reload, and arrive when the connection is back: each once, the
// last state only.
func TestTicksSurviveBadSignal(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Phone)
	house.setDown(true)
	tab.Open(house.URL + "/shop")
	buttermilk, salt := pressButton("buttermilk"), pressButton("fine-salt")
	before := heightOf(tab, salt)
	tab.Do(chromedp.Click(chromedp.CSS(buttermilk)), chromedp.Click(chromedp.CSS(salt)), chromedp.Click(chromedp.CSS(salt)))
	wait(t, tab, `document.querySelector("[data-unsent]").textContent.includes("2 not sent") && !document.querySelector("[data-unsent]").hidden`)
	if after := heightOf(tab, salt); after != before {
		t.Errorf("salt has moved from %g to %g under the thumb", before, after)
	}
	if got := state(tab, buttermilk); got != "true" {
		t.Errorf("buttermilk is pressed: %s, want true", got)
	}
	if got := tabText(tab, "[data-left]"); got != "5 of 9 still to get" {
		t.Errorf("the list says %q", got)
	}

	tab.Open(house.URL + "/shop")
	if got := state(tab, buttermilk); got != "true" {
		t.Errorf("after a reload buttermilk is pressed: %s, want true", got)
	}
	house.setDown(false)
	browser.Get(tab, chromedp.Evaluate[bool](`dispatchEvent(new Event("online"))`))
	wait(t, tab, `document.querySelector("[data-unsent]").hidden && localStorage.length === 0`)
	want := []string{"item=buttermilk&ticked=yes", "item=fine-salt&ticked=no"}
	if diff := cmp.Diff(want, house.posts()); diff != "" {
		t.Errorf("what arrived (-want +got):\n%s", diff)
	}
}

// TestPressesSurviveBadSignal: of three presses of a shot the last is kept, shown
// and sent, whichever it is.
func TestPressesSurviveBadSignal(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Phone)
	house.setDown(true)
	tab.Open(house.URL + "/shots")
	press := func(shot, state string) string {
		return `form:has(input[name="shot"][value="` + shot + `"]) button[value="` + state + `"]`
	}
	tab.Do(
		chromedp.Click(chromedp.CSS(press("2", "got"))), chromedp.Click(chromedp.CSS(press("1", "retake"))),
		chromedp.Click(chromedp.CSS(press("4", "got"))), chromedp.Click(chromedp.CSS(press("4", "missing"))),
	)
	wait(t, tab, `document.querySelector("[data-unsent]").textContent.includes("3 not sent") && !document.querySelector("[data-unsent]").hidden`)
	check := func(when string) {
		t.Helper()
		for shot, want := range map[string]string{"1": "retake", "2": "got", "3": "retake", "4": "missing"} {
			for _, each := range []string{"got", "missing", "retake"} {
				if is := state(tab, press(shot, each)); (is == "true") != (each == want) {
					t.Errorf("%s: shot %s, %s is pressed: %s; it should be %s", when, shot, each, is, want)
				}
			}
		}
		for section, want := range map[string]string{".shots > .title": "1 of 4 got", ".setup:nth-of-type(1)": "1 of 2 got", ".setup:nth-of-type(2)": "0 of 1 got"} {
			if got := tabText(tab, section+" [data-left]"); got != want {
				t.Errorf("%s: %s says %q, want %q", when, section, got, want)
			}
		}
	}
	check("without a connection")
	tab.Open(house.URL + "/shots")
	check("after a reload")

	house.setDown(false)
	browser.Get(tab, chromedp.Evaluate[bool](`dispatchEvent(new Event("online"))`))
	wait(t, tab, `document.querySelector("[data-unsent]").hidden && `+nothingWaits)
	want := []string{"nth=2&shot=1&status=retake", "nth=1&shot=2&status=got", "nth=4&shot=4&status=missing"}
	if diff := cmp.Diff(want, house.posts()); diff != "" {
		t.Errorf("what arrived (-want +got):\n%s", diff)
	}
}

// TestPressesAreLargeEnough: WCAG 2.2, 2.5.8 asks for targets of 24 by 24 CSS
// pixels; these are pressed with wet hands.
func TestPressesAreLargeEnough(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Phone)
	tab.Open(house.URL + "/shots")
	small := browser.Get(tab, chromedp.Evaluate[int](`[...document.querySelectorAll(".presses button, .more summary")].filter((b) => {
		const box = b.getBoundingClientRect();
		return box.height < 24 || box.width < 24;
	}).length`))
	if small > 0 {
		t.Errorf("%d presses are smaller than 24 px", small)
	}
}

// TestTicksWaitForSigningIn: an answer that is the way in is no answer.
func TestTicksWaitForSigningIn(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Phone)
	house.setSignedOut(true)
	tab.Open(house.URL + "/shop")
	tab.Do(chromedp.Click(chromedp.CSS(pressButton("buttermilk"))))
	wait(t, tab, `!document.querySelector("[data-unsent]").hidden`)
	house.setSignedOut(false)
	browser.Get(tab, chromedp.Evaluate[bool](`dispatchEvent(new Event("online"))`))
	wait(t, tab, `localStorage.length === 0`)
	posts := house.posts()
	if got, want := posts[len(posts)-1], "item=buttermilk&ticked=yes"; got != want {
		t.Errorf("the last that arrived is %q, want %q", got, want)
	}
}

// TestPressesWaitForOurAnswer: neither the way in nor a page that a network puts
// in between is an answer, however well it is meant.
func TestPressesWaitForOurAnswer(t *testing.T) {
	for name, set := range map[string]func(h *house, yes bool){"signed out": (*house).setSignedOut, "a page in between": (*house).setBetween} {
		t.Run(name, func(t *testing.T) {
			house := serve(t)
			tab := browser.Start(t, browser.Phone)
			set(house, true)
			tab.Open(house.URL + "/shots")
			tab.Do(chromedp.Click(chromedp.CSS(`form:has(input[value="2"]) button[value=got]`)))
			<-house.arrived
			wait(t, tab, `!document.querySelector("[data-unsent]").hidden`)
			set(house, false)
			browser.Get(tab, chromedp.Evaluate[bool](`dispatchEvent(new Event("online"))`))
			wait(t, tab, nothingWaits)
			posts := house.posts()
			if got, want := posts[len(posts)-1], "nth=1&shot=2&status=got"; len(posts) < 2 || got != want {
				t.Errorf("of %d that arrived the last is %q, want another %q", len(posts), got, want)
			}
		})
	}
}

// nothingWaits claims that no press waits to be sent.
const nothingWaits = `!Object.keys(localStorage).some((key) => key.startsWith("ticks "))`

// TestTickWithoutScripts: a press is a form, and posts the state it wants.
func TestTickWithoutScripts(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Phone)
	tab.Scripts(false)
	tab.Open(house.URL + "/shop")
	tab.Do(chromedp.Click(chromedp.CSS(pressButton("unsalted-butter"))))
	select {
	case got := <-house.arrived:
		if want := "item=unsalted-butter&ticked=no"; got != want {
			t.Errorf("what arrived is %q, want %q", got, want)
		}
	case <-time.After(time.Minute):
		t.Error("nothing arrived")
	}
}

// TestReadingFollowsTyping: after a pause the right side shows what the server
// understood of the text, without a press.
func TestReadingFollowsTyping(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Desk)
	tab.Open(house.URL + "/recipe-new")
	tab.Do(chromedp.SendKeys(chromedp.CSS("#recipe-text"), "320 g strong white flour"))
	wait(t, tab, `document.getElementById("understood").textContent.includes("wholegrain rye flour")`)
	posts := house.posts()
	form, err := url.ParseQuery(posts[len(posts)-1])
	if err != nil {
		t.Fatal(err)
	}
	if got, want := form.Get("text"), "320 g strong white flour"; got != want {
		t.Errorf("the text sent is %q, want %q", got, want)
	}
	if got := browser.Get(tab, chromedp.Value(chromedp.CSS("#recipe-text"))); !strings.Contains(got, "320 g") {
		t.Errorf("what was typed became %q", got)
	}
}

// TestConveniences: the copy button appears and says that it copied, the count
// follows typing, a refused form has its list in focus.
func TestConveniences(t *testing.T) {
	house := serve(t)
	tab := browser.Start(t, browser.Desk)
	tab.Open(house.URL + "/release")
	tab.Do(chromedp.Click(chromedp.CSS(`[data-copy="description"]`)))
	wait(t, tab, `document.querySelector('[data-copy="description"]').textContent !== "Copy description"`)
	tab.Do(chromedp.SendKeys(chromedp.CSS("#release-title"), " ½"))
	wait(t, tab, `document.querySelector('[data-count="release-title"]').textContent === "51 of 100 characters"`)

	tab = browser.Start(t, browser.Desk) // the guard would not let the first one go
	tab.Open(house.URL + "/brief-refused")
	wait(t, tab, `document.activeElement.id === "brief-refused"`)
	if got := tab.Complaints(); len(got) > 0 {
		t.Errorf("the browser complains: %v", got)
	}
}

// pressButton selects the button of one item.
func pressButton(item string) string {
	return `form:has(input[value="` + item + `"]) button`
}

func state(tab *browser.Tab, selector string) string {
	return browser.Get(tab, chromedp.AttributeValue(chromedp.CSS(selector), "aria-pressed")).Value
}

func tabText(tab *browser.Tab, selector string) string {
	return browser.Get(tab, chromedp.Text(chromedp.CSS(selector)))
}

// wait lets the page go on until a claim about it is true.
func wait(t *testing.T, tab *browser.Tab, claim string) {
	t.Helper()
	browser.Get(tab, chromedp.Poll[bool](claim))
}

// house serves the specimens and keeps what is posted.
type house struct {
	*httptest.Server
	mu              sync.Mutex
	down, signedOut bool
	between         bool // something else answers, with a page of its own
	posted          []string
	arrived         chan string // each post as well, for a test that must wait for it
}

const policy = "default-src 'none'; style-src 'self'; script-src 'self'; font-src 'self'; img-src 'self'; connect-src 'self'; form-action 'self'; base-uri 'none'"

func serve(t *testing.T) *house {
	t.Helper()
	h := &house{arrived: make(chan string, 100)}
	h.Server = httptest.NewServer(h)
	t.Cleanup(h.Close)
	return h
}

func (h *house) setDown(yes bool)      { h.mu.Lock(); defer h.mu.Unlock(); h.down = yes }
func (h *house) setSignedOut(yes bool) { h.mu.Lock(); defer h.mu.Unlock(); h.signedOut = yes }

func (h *house) setBetween(yes bool) { h.mu.Lock(); defer h.mu.Unlock(); h.between = yes }

func (h *house) posts() []string {
	h.mu.Lock()
	defer h.mu.Unlock()
	return h.posted
}

func (h *house) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	path := r.URL.Path
	if path == static.WorkerPath {
		path = static.URL("worker.js")
	}
	if a, ok := static.Open(path); ok {
		w.Header().Set("Content-Type", a.Type)
		_, _ = w.Write(a.Body)
		return
	}
	if r.Method == http.MethodPost {
		h.post(w, r)
		return
	}
	for _, s := range specimen.Pages() {
		if r.URL.Path == "/"+s.Name {
			w.Header().Set("Content-Type", "text/html; charset=utf-8")
			w.Header().Set("Content-Security-Policy", policy)
			_ = s.Component.Render(r.Context(), w)
			return
		}
	}
	http.NotFound(w, r)
}

// post answers as the program does: ticks lead back to the list, or are answered
// with what holds, a reading is the page drawn again.
func (h *house) post(w http.ResponseWriter, r *http.Request) {
	h.mu.Lock()
	defer h.mu.Unlock()
	if h.down {
		panic(http.ErrAbortHandler) // the connection breaks without an answer
	}
	if err := r.ParseForm(); err != nil {
		http.Error(w, "no form", http.StatusBadRequest)
		return
	}
	isKept := strings.HasSuffix(r.URL.Path, "/kept")
	if age, err := strconv.Atoi(r.PostForm.Get("age")); isKept && err == nil && age >= 0 && r.PostForm.Get("by") != "" {
		r.PostForm.Del("age") // another each time
		r.PostForm.Del("by")
	}
	h.posted = append(h.posted, r.PostForm.Encode())
	h.arrived <- r.PostForm.Encode()
	to := "/shop"
	switch {
	case h.between:
		_, _ = w.Write([]byte("<!doctype html><title>Welcome to the network of the market hall</title>"))
		return
	case isKept && !h.signedOut:
		_, _ = w.Write([]byte(`{"holds":"` + r.PostForm.Get("status") + `"}`))
		return
	case h.signedOut:
		to = "/sign-in"
	case strings.HasSuffix(r.URL.Path, "/read"):
		to = "/recipe-edit"
	}
	http.Redirect(w, r, to, http.StatusSeeOther)
}
