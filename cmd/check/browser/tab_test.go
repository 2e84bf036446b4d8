package browser_test

import (
	"bytes"
	"image/png"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/browser"
	"benchproof/cmd/check/tools"
)

func TestTabOnAPage(t *testing.T) {
	base := site(t, map[string]string{
		"/":      page(`<p class="screen">On screen only</p><p>Prove 90 min at 27 °C, ⅓ cup</p><a id="next" href="/next/">Next</a>`),
		"/next/": page(`<p>The next page</p>`),
	})
	tab := browser.Start(t, browser.Desk)

	if got := tab.Open(base + "/"); got != 200 {
		t.Fatalf("Open(/) = %d, want 200", got)
	}
	t.Run("dark", func(t *testing.T) {
		background := chromedp.Evaluate[string](`getComputedStyle(document.body).backgroundColor`)
		tab.Dark(true)
		if got := browser.Get(tab, background); got != "rgb(0, 0, 0)" {
			t.Errorf("background in the dark scheme = %s, want black", got)
		}
		tab.Dark(false)
		if got := browser.Get(tab, background); got != "rgb(255, 255, 255)" {
			t.Errorf("background in the light scheme = %s, want white", got)
		}
	})
	t.Run("on paper", func(t *testing.T) {
		shown := chromedp.Evaluate[bool](`document.querySelector('.screen').checkVisibility()`)
		tab.OnPaper(true)
		if browser.Get(tab, shown) {
			t.Error("what is for the screen shows on paper")
		}
		tab.OnPaper(false)
		if !browser.Get(tab, shown) {
			t.Error("what is for the screen does not show after OnPaper(false)")
		}
	})
	t.Run("print", func(t *testing.T) {
		text := pdfText(t, tab.PDF())
		if !strings.Contains(text, "90 min at 27 °C, ⅓ cup") || strings.Contains(text, "On screen only") {
			t.Errorf("the printed page reads %q", text)
		}
	})
	t.Run("screenshot", func(t *testing.T) {
		path := filepath.Join(t.TempDir(), "page.png")
		tab.Resize(browser.Phone)
		tab.Screenshot(path)
		data, err := os.ReadFile(path)
		if err != nil {
			t.Fatal(err)
		}
		picture, err := png.DecodeConfig(bytes.NewReader(data))
		if err != nil || picture.Width != 390 {
			t.Errorf("the picture is %d px wide (%v), want 390", picture.Width, err)
		}
	})
	t.Run("click", func(t *testing.T) {
		tab.Do(chromedp.Click(chromedp.CSS("#next")), chromedp.WaitReady(chromedp.CSS("p")))
		if got := browser.Get(tab, chromedp.Text(chromedp.CSS("p"))); got != "The next page" {
			t.Errorf("after the click the page says %q", got)
		}
		if got := tab.Address().Path; got != "/next/" {
			t.Errorf("Address().Path = %q, want /next/", got)
		}
	})
	if got := tab.Complaints(); len(got) != 0 {
		t.Errorf("Complaints() = %q on pages that are in order", got)
	}
	if got := tab.Open(base + "/gone"); got != 404 {
		t.Errorf("Open(/gone) = %d, want 404", got)
	}
}

func pdfText(t *testing.T, pdf []byte) string {
	t.Helper()
	reader, err := tools.PDFToText()
	if err != nil {
		t.Skip(err)
	}
	cmd := exec.Command(reader, "-", "-")
	cmd.Stdin = bytes.NewReader(pdf)
	out, err := cmd.Output()
	if err != nil {
		t.Fatal(err)
	}
	return string(out)
}

func TestComplaints(t *testing.T) {
	base := site(t, map[string]string{
		"/inline/":  page(`<script>document.title = 'changed'</script>`),
		"/missing/": page(`<img alt="a bun" src="/bun.png">`),
		"/outside/": page(`<img alt="a bun" src="http://pictures.example/bun.png">`),
	})
	tests := []struct{ name, path, want string }{
		{"an inline script", "/inline/", "Content Security Policy"},
		{"a file that is not there", "/missing/", "404"},
		{"a file from outside", "/outside/", "Content Security Policy"},
	}
	tab := browser.Start(t, browser.Desk)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			tab.Open(base + tt.path)
			got := strings.Join(tab.Complaints(), "\n")
			if !strings.Contains(got, tt.want) {
				t.Errorf("Complaints() = %q, want one with %q", got, tt.want)
			}
			if again := tab.Complaints(); len(again) != 0 {
				t.Errorf("Complaints() again = %q, want none", again)
			}
		})
	}
}

func TestScripts(t *testing.T) {
	base := site(t, map[string]string{"/": page(`<noscript><p id="without">Without scripts</p></noscript>`)})
	tab := browser.Start(t, browser.Desk)
	tab.Scripts(false)
	tab.Open(base + "/")
	if got := browser.Get(tab, chromedp.Evaluate[bool](`document.querySelector('#without') !== null`)); !got {
		t.Error("the part for pages without scripts is not there")
	}
}

func TestOverflow(t *testing.T) {
	base := site(t, map[string]string{
		"/fits/": page(`<div class="scrolls"><div class="wide" id="inside"></div></div>`),
		"/wide/": page(`<div class="wide" id="plank"></div>`),
		"/novp/": `<!doctype html><html lang="en"><title>No viewport</title><p>Words`,
	})
	tests := []struct {
		name, path string
		window     browser.Window
		want       string // in the joined result; "" for none
	}{
		{"wide on the phone", "/wide/", browser.Phone, "div#plank.wide reaches to 700 px"},
		{"the same at the desk", "/wide/", browser.Desk, ""},
		{"wide but scrolls by itself", "/fits/", browser.Phone, ""},
		{"no viewport declared", "/novp/", browser.Phone, "the document is 980 px wide in a window of 390"},
	}
	tab := browser.Start(t, browser.Desk)
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			tab.Resize(tt.window)
			tab.Open(base + tt.path)
			got := strings.Join(tab.Overflow(), "\n")
			if tt.want == "" && got != "" || !strings.Contains(got, tt.want) {
				t.Errorf("Overflow() = %q, want %q", got, tt.want)
			}
		})
	}
}

func TestAxe(t *testing.T) {
	base := site(t, map[string]string{
		"/good/": page(`<form><label>Grams <input name="grams"></label></form>`),
		"/bad/":  page(`<p class="pale">Hard to read</p><form><input name="grams"></form>`),
	})
	tab := browser.Start(t, browser.Desk)
	tab.Open(base + "/good/")
	if got := tab.Axe(); len(got) != 0 {
		t.Errorf("Axe() = %v on a page in order", got)
	}
	tab.Open(base + "/bad/")
	rules := map[string]bool{}
	for _, v := range tab.Axe() {
		rules[v.Rule] = true
		if len(v.Places) == 0 || v.Help == "" {
			t.Errorf("violation %q names no place or no help", v)
		}
	}
	for _, want := range []string{"color-contrast", "label"} {
		if !rules[want] {
			t.Errorf("Axe() found %v, want %s among them", rules, want)
		}
	}
}
