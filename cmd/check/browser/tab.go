package browser

import (
	"context"
	"fmt"
	"net/url"
	"os"
	"sync"
	"time"

	"github.com/chromedp/cdproto/emulation"
	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/tools"
)

// patience bounds one call to the browser. It is long because under the race
// detector, with every core taken, a first page can take seconds.
const patience = time.Minute

// Window is the size of the window in CSS pixels. A Touch window is a phone:
// it obeys the page's viewport declaration, as a desktop window does not.
type Window struct {
	Name          string
	Width, Height int
	Touch         bool
}

// The two windows every page must be right in.
var (
	Desk  = Window{Name: "desk", Width: 1280, Height: 900}
	Phone = Window{Name: "phone", Width: 390, Height: 844, Touch: true}
)

// Tab is one page in a browser of its own, with no history, cookies or files
// of an earlier one. Its methods end the test when the browser fails them. A
// Tab is for one goroutine.
type Tab struct {
	tb     TB
	ctx    context.Context
	window Window
	dark   bool

	mu         sync.Mutex
	complaints []string
}

// Start starts Chromium with one window and shuts it down when the test ends.
// The browser reaches this machine only: a page that asks for anything outside
// is answered as if there were no network.
func Start(tb TB, w Window) *Tab {
	tb.Helper()
	path := need(tb, "Chromium", tools.Chromium)
	allocator, stopBrowser := chromedp.NewExecAllocator(context.Background(), options(path, w)...)
	tb.Cleanup(stopBrowser)
	ctx, closeTab := chromedp.NewContext(allocator)
	tb.Cleanup(closeTab)
	t := &Tab{tb: tb, ctx: ctx}
	// The first call starts the browser, and ends with it: no deadline here.
	if err := chromedp.Do(ctx); err != nil {
		tb.Fatalf("start %s: %v", path, err)
	}
	t.listen()
	t.Resize(w)
	return t
}

func options(path string, w Window) []chromedp.ExecAllocatorOption {
	opts := chromedp.DefaultExecAllocatorOptions[:]
	return append(opts[:len(opts):len(opts)],
		chromedp.ExecPath(path),
		chromedp.NoSandbox,
		chromedp.DisableGPU,
		chromedp.WindowSize(w.Width, w.Height),
		chromedp.Flag("disable-component-update", true),
		chromedp.Flag("disable-quic", true),
		chromedp.Flag("font-render-hinting", "none"),
		chromedp.Flag("host-resolver-rules", "MAP * ~NOTFOUND, EXCLUDE 127.0.0.1, EXCLUDE localhost"),
	)
}

// Context is chromedp's own, for what this package has no method for.
func (t *Tab) Context() context.Context { return t.ctx }

// Do runs chromedp actions one after the other, as a person would act.
func (t *Tab) Do(actions ...chromedp.Action[chromedp.Void]) {
	t.tb.Helper()
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	if err := chromedp.Do(ctx, actions...); err != nil {
		t.tb.Fatalf("at %s: %v", t.whereabouts(), err)
	}
}

// Get runs one chromedp action and gives its result: Get(tab, chromedp.Title()).
func Get[T any](t *Tab, action chromedp.Action[T]) T {
	t.tb.Helper()
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	v, err := chromedp.Run(ctx, action)
	if err != nil {
		t.tb.Fatalf("at %s: %v", t.whereabouts(), err)
	}
	return v
}

// whereabouts tells the address for a message, or why it cannot be told.
func (t *Tab) whereabouts() string {
	ctx, cancel := context.WithTimeout(t.ctx, 5*time.Second)
	defer cancel()
	at, err := chromedp.Run(ctx, chromedp.Location())
	if err != nil {
		return fmt.Sprintf("an unknown address (%v)", err)
	}
	return at
}

// Open goes to an absolute address, waits for the page to load, and gives the
// status it was answered with.
func (t *Tab) Open(address string) int {
	t.tb.Helper()
	response := Get(t, chromedp.NavigateResponse(address))
	if response == nil {
		t.tb.Fatalf("open %s: no answer", address)
	}
	return int(response.Status)
}

// Press clicks what a CSS selector finds first, waits for the page that
// follows to load, and gives the status it was answered with.
func (t *Tab) Press(css string) int {
	t.tb.Helper()
	ctx, cancel := context.WithTimeout(t.ctx, patience)
	defer cancel()
	response, err := chromedp.RunResponse(ctx, chromedp.Click(chromedp.CSS(css)))
	if err != nil {
		t.tb.Fatalf("press %s at %s: %v", css, t.whereabouts(), err)
	}
	if response == nil {
		return 0
	}
	return int(response.Status)
}

// Address tells where the tab is.
func (t *Tab) Address() *url.URL {
	t.tb.Helper()
	at := Get(t, chromedp.Location())
	u, err := url.Parse(at)
	if err != nil {
		t.tb.Fatalf("address %q: %v", at, err)
	}
	return u
}

// Resize gives the tab another window.
func (t *Tab) Resize(w Window) {
	t.tb.Helper()
	t.window = w
	var opts []chromedp.EmulateViewportOption
	if w.Touch {
		opts = append(opts, chromedp.EmulateMobile, chromedp.EmulateTouch)
	}
	t.Do(chromedp.EmulateViewport(int64(w.Width), int64(w.Height), opts...))
}

// Dark sets whether the system asks for the dark scheme. Motion is always
// reduced, so that a picture does not catch a page half-way.
func (t *Tab) Dark(on bool) {
	t.tb.Helper()
	t.dark = on
	scheme := "light"
	if on {
		scheme = "dark"
	}
	t.media(emulation.SetEmulatedMediaParams{Features: []*emulation.MediaFeature{
		{Name: "prefers-color-scheme", Value: scheme},
		{Name: "prefers-reduced-motion", Value: "reduce"},
	}})
}

// OnPaper sets whether the page is drawn with its print style, for a look at
// it in the window; PDF needs no such thing.
func (t *Tab) OnPaper(on bool) {
	t.tb.Helper()
	if !on {
		t.Dark(t.dark)
		return
	}
	t.media(emulation.SetEmulatedMediaParams{Media: "print"})
}

func (t *Tab) media(p emulation.SetEmulatedMediaParams) {
	t.tb.Helper()
	if _, err := chromedp.Call(t.ctx, emulation.SetEmulatedMedia, p); err != nil {
		t.tb.Fatalf("emulate media: %v", err)
	}
}

// Scripts sets whether the page may run scripts from the next Open on. What
// this package asks of the page works all the same.
func (t *Tab) Scripts(on bool) {
	t.tb.Helper()
	p := emulation.SetScriptExecutionDisabledParams{Value: !on}
	if _, err := chromedp.Call(t.ctx, emulation.SetScriptExecutionDisabled, p); err != nil {
		t.tb.Fatalf("switch scripts: %v", err)
	}
}

// Screenshot writes a PNG of the whole page, not only of the window.
func (t *Tab) Screenshot(path string) {
	t.tb.Helper()
	t.write(path, Get(t, chromedp.FullScreenshot(100)))
}

// PDF gives the page as it prints, on the paper its style sheet asks for.
func (t *Tab) PDF() []byte {
	t.tb.Helper()
	return Get(t, chromedp.PrintToPDF(chromedp.PDFPreferCSSPageSize(), chromedp.PDFPrintBackground()))
}

// Print writes the PDF to a file.
func (t *Tab) Print(path string) {
	t.tb.Helper()
	t.write(path, t.PDF())
}

func (t *Tab) write(path string, data []byte) {
	t.tb.Helper()
	if err := os.WriteFile(path, data, 0o644); err != nil {
		t.tb.Fatalf("%v", err)
	}
}
