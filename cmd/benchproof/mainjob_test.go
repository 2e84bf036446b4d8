package main

import (
	"encoding/json"
	"net/http"
	"net/url"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"github.com/chromedp/chromedp"

	"benchproof/cmd/check/browser"
)

// job is one recipe as a home cook writes it, and what must come of it.
type job struct {
	file, title string
	reads       []string // what the recipe sheet shows as written
	factor      string
	doubled     []string // what it shows at that scale
	buys        []string // what the shopping list asks for at that scale
	describes   []string // lines of the description
	viewers     []string // what the viewers' page shows in US measures
}

var jobs = []job{
	{
		file: "plum-tart", title: "Plum tart for the neighbours",
		reads:     []string{"200 g plain flour", "1–2 tbsp", "½ vanilla pod", "Vanilla cream", "190 °C / 170 °C fan", "1 h"},
		factor:    "2",
		doubled:   []string{"400 g plain flour", "2–4 tbsp", "serves 16"},
		buys:      []string{"400 g plain flour", "310 g unsalted butter", "12 egg"},
		describes: []string{"400 g", "plain flour", "Contains", "neighbour's handwritten card"},
		viewers:   []string{"cups plain flour", "apricot jam"},
	},
	{
		file: "barley-stew", title: "Barley stew",
		reads:     []string{"700–800 g stewing beef", "2–3 tbsp olive oil", "to taste", "45–50 min"},
		factor:    "1½",
		doubled:   []string{"1.05–1.2 kg", "3–4½ tbsp olive oil"},
		buys:      []string{"1.2 kg", "Fresh herbs", "225 g pearl barley"},
		describes: []string{"beef", "pearl barley", "TAKE CARE"},
		viewers:   []string{"pearl barley", "oz"},
	},
	{
		file: "skillet-cornbread", title: "Chili with a cornbread lid",
		reads:     []string{"1 lb", "1 stick unsalted butter", "kidney beans", "400°F", "22–25 min"},
		factor:    "2",
		doubled:   []string{"2 lb", "2 sticks unsalted butter", "4 large eggs"},
		buys:      []string{"4 × 15 oz", "kidney beans", "buttermilk"},
		describes: []string{"907 g", "buttermilk", "Cornbread"},
		viewers:   []string{"buttermilk", "cups"},
	},
}

// TestTheMainJob is the main job: from an empty data folder, three recipes as
// home cooks write them become episodes that are scaled, shopped for, printed,
// described and shared.
func TestTheMainJob(t *testing.T) {
	tab := browser.Start(t, browser.Desk)
	up := start(t, 2, "serve", "--data", t.TempDir(), "--addr", "127.0.0.1:0")
	owner := &cook{t: t, tab: tab, at: up.address}
	owner.setUp(up.code)
	for _, j := range jobs {
		t.Run(j.file, func(t *testing.T) {
			text, err := os.ReadFile(filepath.Join("testdata", "typed", j.file+".txt"))
			if err != nil {
				t.Fatal(err)
			}
			c := &cook{t: t, tab: tab, at: up.address}
			episode := c.makeEpisode(j.title, string(text))
			c.sees(episode+"/recipe", j.reads...)
			c.keepScale(j.factor)
			c.sees(episode+"/recipe", j.doubled...)
			c.sees(episode+"/shop", j.buys...)
			c.ticksTheFirstItem(episode)
			c.sees(episode+"/release", j.describes...)
			c.prints(episode, j.doubled[0])
			c.shares(episode, j.viewers)
		})
	}
}

// cook is a person at the browser.
type cook struct {
	t   *testing.T
	tab *browser.Tab
	at  string
}

func (c *cook) open(path string) {
	c.t.Helper()
	if status := c.tab.Open(c.at + path); status != 200 {
		c.t.Fatalf("%s answers %d", path, status)
	}
}

// types puts text into the field with this id, key by key.
func (c *cook) types(id, text string) {
	c.t.Helper()
	c.tab.Do(chromedp.SendKeys(chromedp.CSS("#"+id), text))
}

// clears empties the field with this id.
func (c *cook) clears(id string) {
	c.t.Helper()
	browser.Get(c.tab, chromedp.Evaluate[bool]("document.getElementById('"+id+"').value = '', true"))
}

// opens unfolds what stands under a summary with these words.
func (c *cook) opens(words string) {
	c.t.Helper()
	find := "[...document.querySelectorAll('summary')].find((s) => s.textContent.includes('" + words + "')).parentElement"
	browser.Get(c.tab, chromedp.Evaluate[bool](find+".open = true"))
}

// presses clicks and waits for the page that follows.
func (c *cook) presses(css string) {
	c.t.Helper()
	c.tab.Press(css)
}

func (c *cook) setUp(code string) {
	c.t.Helper()
	c.open("/")
	c.types("setup-code", code)
	c.types("setup-name", "Ottoline")
	c.types("setup-password", "a short sentence")
	c.types("setup-show", "Quay Kitchen")
	c.presses("form[action='/setup'] button")
	if got := c.tab.Address().Path; got != "/" {
		c.t.Fatalf("set-up leads to %s, want /", got)
	}
}

func (c *cook) makeEpisode(title, recipe string) (path string) {
	c.t.Helper()
	c.open("/")
	c.types("start-title", title)
	c.types("start-recipe", recipe)
	c.presses("form[action='/episodes'] button")
	path, ok := strings.CutSuffix(c.tab.Address().Path, "/recipe")
	if !ok {
		c.t.Fatalf("a new episode leads to %s, want its Recipe sheet", c.tab.Address())
	}
	return path
}

// text is what stands on the page, blanks folded.
func (c *cook) text() string {
	c.t.Helper()
	return folded(browser.Get(c.tab, chromedp.Evaluate[string]("document.body.innerText")))
}

func (c *cook) sees(path string, texts ...string) {
	c.t.Helper()
	c.open(path)
	page := c.text()
	for _, text := range texts {
		if !strings.Contains(strings.ToLower(page), strings.ToLower(text)) {
			c.t.Errorf("%s does not show %q:\n%s", path, text, page)
		}
	}
}

// keepScale tries a factor on the open Recipe sheet, then keeps it.
func (c *cook) keepScale(factor string) {
	c.t.Helper()
	c.clears("scale-factor")
	c.types("scale-factor", factor)
	c.presses(".scaler button[formaction]")
}

// ticksTheFirstItem ticks an item and finds it ticked after a reload.
func (c *cook) ticksTheFirstItem(episode string) {
	c.t.Helper()
	c.open(episode + "/shop")
	c.tab.Scripts(false) // the tick is a form like any other where no script runs
	c.open(episode + "/shop")
	c.presses("form[action$='/ticks'] button")
	c.tab.Scripts(true)
	c.open(episode + "/shop")
	if ticked := browser.Get(c.tab, chromedp.Evaluate[int]("document.querySelectorAll('button[aria-pressed=true]').length")); ticked != 1 {
		c.t.Errorf("%d items are ticked after a reload, want 1", ticked)
	}
}

// prints the card from the page and as a PDF; both hold the first line.
func (c *cook) prints(episode, line string) {
	c.t.Helper()
	c.open(episode + "/card?paper=a5")
	if page := c.text(); !strings.Contains(page, line) {
		c.t.Errorf("the card's page does not show %q:\n%s", line, page)
	}
	pdf := filepath.Join(c.t.TempDir(), "card.pdf")
	c.tab.Print(pdf)
	if words := pdfWords(c.t, pdf); !strings.Contains(words, line) {
		c.t.Errorf("the printed card does not hold %q:\n%s", line, words)
	}
	answer, err := c.tab.Client().Get(c.at + episode + "/card.pdf?paper=letter")
	if err != nil {
		c.t.Fatal(err)
	}
	defer answer.Body.Close()
	file, err := os.Create(pdf)
	if err != nil {
		c.t.Fatal(err)
	}
	if _, err := file.ReadFrom(answer.Body); err != nil {
		c.t.Fatal(err)
	}
	file.Close()
	if words := pdfWords(c.t, pdf); !strings.Contains(words, line) {
		c.t.Errorf("the PDF card does not hold %q:\n%s", line, words)
	}
}

// pdfWords reads a PDF back with poppler's pdftotext, a reader independent of
// what wrote it.
func pdfWords(t *testing.T, name string) string {
	t.Helper()
	out, err := exec.Command("pdftotext", "-layout", name, "-").Output()
	if err != nil {
		t.Fatalf("pdftotext: %v", err)
	}
	return folded(string(out))
}

// shares makes a link, opens it without signing in, and withdraws it.
func (c *cook) shares(episode string, viewers []string) {
	c.t.Helper()
	c.open(episode + "/release")
	c.presses("form[action$='/shares'] button")
	address := browser.Get(c.tab, chromedp.Evaluate[string]("document.getElementById('new-share').textContent.trim()"))
	shared, err := url.Parse(address)
	if err != nil || !strings.HasPrefix(shared.Path, "/s/") {
		c.t.Fatalf("the new link is %q", address)
	}
	stranger := &cook{t: c.t, tab: browser.Start(c.t, browser.Phone), at: c.at}
	stranger.sees(shared.Path, "Quay Kitchen")
	stranger.sees(shared.Path+"?measure=us", viewers...)
	data := browser.Get(stranger.tab, chromedp.Evaluate[string](`document.querySelector("script[type='application/ld+json']").textContent`))
	var recipe map[string]any
	if err := json.Unmarshal([]byte(data), &recipe); err != nil || recipe["@type"] != "Recipe" {
		c.t.Errorf("the structured data is no schema.org Recipe: %v\n%s", err, data)
	}
	c.presses("form[action$='/revoke'] button")
	gone, err := http.Get(address) // the stranger's browser may keep the page for a minute
	if err != nil {
		c.t.Fatal(err)
	}
	gone.Body.Close()
	if gone.StatusCode != http.StatusNotFound {
		c.t.Errorf("a withdrawn link answers %d, want 404", gone.StatusCode)
	}
}

func folded(text string) string {
	return strings.Join(strings.Fields(strings.ReplaceAll(text, "\u00a0", " ")), " ")
}
