package web_test

import (
	"strings"
	"testing"
	"time"
	"unicode/utf8"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/views"
	"benchproof/web"
)

func TestCount(t *testing.T) {
	for n, want := range map[int]string{0: "0 lines", 1: "1 line", 2: "2 lines", 1000: "1000 lines"} {
		if got := web.Count(n, "line", "lines"); got != want {
			t.Errorf("Count(%d) = %q, want %q", n, got, want)
		}
	}
}

func TestParagraphs(t *testing.T) {
	for _, c := range []struct {
		name, text string
		want       []string
	}{
		{"nothing", "", nil},
		{"only blanks", " \n\n \n", nil},
		{"one of two lines", "one\ntwo", []string{"one\ntwo"}},
		{"two", "one\n\ntwo", []string{"one", "two"}},
		{"many blank lines between", "\n\none\n\n\n\ntwo\n", []string{"one", "two"}},
	} {
		t.Run(c.name, func(t *testing.T) {
			if diff := cmp.Diff(c.want, web.Paragraphs(c.text)); diff != "" {
				t.Errorf("Paragraphs(%q) (-want +got):\n%s", c.text, diff)
			}
		})
	}
}

func TestShortened(t *testing.T) {
	for _, c := range []struct {
		name, text string
		limit      int
		want       string
	}{
		{"fits", "knead well", 10, "knead well"},
		{"at a word's end", "knead the dough well", 12, "knead the…"},
		{"no comma before the dots", "knead, rest, shape", 12, "knead, rest…"},
		{"one long word", "Donaudampfschiff", 5, "Donau…"},
		{"letters, not bytes", "äöüßéèê", 7, "äöüßéèê"},
		{"letters, not half of one", "äöüßéèêë", 4, "äöüß…"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := web.Shortened(c.text, c.limit); got != c.want {
				t.Errorf("Shortened(%q, %d) = %q, want %q", c.text, c.limit, got, c.want)
			}
		})
	}
}

func TestAShortenedTextIsNeverLongerAndNeverBroken(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text, limit := rapid.String().Draw(t, "text"), rapid.IntRange(1, 40).Draw(t, "limit")
		got := web.Shortened(text, limit)
		if utf8.RuneCountInString(got) > limit+1 {
			t.Errorf("Shortened(%q, %d) = %q has more than %d characters and the dots", text, limit, got, limit)
		}
		if !utf8.ValidString(got) {
			t.Errorf("Shortened(%q, %d) = %q is not UTF-8", text, limit, got)
		}
		if !strings.HasPrefix(text, strings.TrimSuffix(got, "…")) {
			t.Errorf("Shortened(%q, %d) = %q does not begin the text", text, limit, got)
		}
	})
}

func TestJoinedLeavesOutWhatIsEmpty(t *testing.T) {
	for _, c := range []struct {
		texts []string
		want  string
	}{{nil, ""}, {[]string{"", ""}, ""}, {[]string{"a", "", "b"}, "a · b"}, {[]string{"", "b"}, "b"}} {
		if got := web.Joined(" · ", c.texts...); got != c.want {
			t.Errorf("Joined(%q) = %q, want %q", c.texts, got, c.want)
		}
	}
}

func TestThousands(t *testing.T) {
	for n, want := range map[int]string{0: "0", 7: "7", 999: "999", 1000: "1,000", 5000: "5,000", 12345: "12,345", 999999: "999,999", 1000000: "1,000,000"} {
		if got := web.Thousands(n); got != want {
			t.Errorf("Thousands(%d) = %q, want %q", n, got, want)
		}
	}
}

func TestReadOn(t *testing.T) {
	for text, want := range map[string]string{"": "", "No cut yet": "no cut yet", "Äpfel": "äpfel", "3 lines": "3 lines", "a": "a"} {
		if got := web.ReadOn(text); got != want {
			t.Errorf("ReadOn(%q) = %q, want %q", text, got, want)
		}
	}
}

func TestNormalIgnoresLineEndsAndEdges(t *testing.T) {
	if got, want := web.Normal("  a\r\nb\r\n"), "a\nb"; got != want {
		t.Errorf("Normal = %q, want %q", got, want)
	}
	if web.Normal("a b") == web.Normal("a  b") {
		t.Error("a second blank inside counts for nothing")
	}
}

func TestMoveActionsStopAtTheEnds(t *testing.T) {
	for _, c := range []struct {
		name        string
		first, last bool
		up, down    string
	}{
		{"alone", true, true, "", ""},
		{"first", true, false, "", "/p/move?way=down"},
		{"between", false, false, "/p/move?way=up", "/p/move?way=down"},
		{"last", false, true, "/p/move?way=up", ""},
	} {
		t.Run(c.name, func(t *testing.T) {
			if up, down := web.MoveActions("/p", c.first, c.last); up != c.up || down != c.down {
				t.Errorf("up %q, down %q, want %q, %q", up, down, c.up, c.down)
			}
		})
	}
}

func TestDates(t *testing.T) {
	day := func(text string) time.Time {
		d, err := time.Parse(time.DateOnly, text)
		if err != nil {
			t.Fatal(err)
		}
		return d
	}
	for _, c := range []struct {
		name string
		t    time.Time
		want string
	}{
		{"this year", day("2027-03-14"), "14 Mar"},
		{"the last day of this year", day("2027-12-31"), "31 Dec"},
		{"the year before", day("2026-12-31"), "31 Dec 2026"},
		{"the year after", day("2028-01-01"), "1 Jan 2028"},
		{"none", time.Time{}, "not dated"},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := web.DateWord(today, c.t); got != c.want {
				t.Errorf("DateWord = %q, want %q", got, c.want)
			}
		})
	}
	if got := web.DateText(day("2027-03-04")); got != "2027-03-04" {
		t.Errorf("DateText = %q", got)
	}
	if got := web.DateText(time.Time{}); got != "" {
		t.Errorf("DateText of no date = %q", got)
	}
}

func TestNumberWord(t *testing.T) {
	if got := web.NumberWord(31); got != "Ep 31" {
		t.Errorf("NumberWord(31) = %q", got)
	}
	if got := web.NumberWord(0); got != "" {
		t.Errorf("NumberWord(0) = %q, want none", got)
	}
}

func TestSheetOfKnowsEverySheetByItsName(t *testing.T) {
	for name, want := range map[string]views.Sheet{
		"brief": views.SheetBrief, "recipe": views.SheetRecipe, "trials": views.SheetTrials, "shop": views.SheetShop,
		"shoot day": views.SheetShootDay, "script": views.SheetScript, "shots": views.SheetShots, "cut": views.SheetCut,
		"release": views.SheetRelease, "attic": views.SheetBrief,
	} {
		if got := web.SheetOf(name); got != want {
			t.Errorf("SheetOf(%q) = %q, want %q", name, got, want)
		}
	}
}

func TestFileNameIsPlain(t *testing.T) {
	for title, want := range map[string]string{
		"Rye knots":                "rye-knots",
		"":                         "card",
		"Crème brûlée":             "cr-me-br-l-e",
		"../../etc/passwd":         "etc-passwd",
		"a\"; filename=\"evil.exe": "a-filename-evil-exe",
		"line\r\nSet-Cookie: x=1":  "line-set-cookie-x-1",
		"=HYPERLINK(\"http://x\")": "hyperlink-http-x",
		"馒头":                       "card",
		"--- 3 ---":                "3",
	} {
		if got := web.FileName(title); got != want {
			t.Errorf("FileName(%q) = %q, want %q", title, got, want)
		}
	}
}

func TestMarkdownKeepsWordsAndDropsWhatRuns(t *testing.T) {
	for _, c := range []struct{ name, text, holds, lacks string }{
		{"emphasis", "**cold** butter", "<strong>cold</strong>", ""},
		{"a list", "- one\n- two", "<li>two</li>", ""},
		{"a script", "a <script>alert(1)</script> b", "a", "<script"},
		{"an address that runs", "[x](javascript:alert(1))", "x", "javascript:"},
		{"an attribute that runs", `<img src="x" onerror="alert(1)">`, "", "onerror"},
		{"a style", `<p style="position:fixed">x</p>`, "", "style="},
	} {
		t.Run(c.name, func(t *testing.T) {
			got, err := web.Markdown(c.text)
			if err != nil {
				t.Fatal(err)
			}
			if !strings.Contains(got, c.holds) || (c.lacks != "" && strings.Contains(got, c.lacks)) {
				t.Errorf("Markdown(%q) = %q, want it to hold %q and not %q", c.text, got, c.holds, c.lacks)
			}
		})
	}
	if got, err := web.Markdown(""); got != "" || err != nil {
		t.Errorf("Markdown of nothing = %q, %v", got, err)
	}
}
