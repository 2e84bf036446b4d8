package web_test

import (
	"net/url"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"
	"pgregory.net/rapid"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/web"
)

// sent is a form in which the field "x" holds text.
func sent(text string) *web.Typed { return web.NewTyped(url.Values{"x": {text}}) }

// checkFault fails unless the form has, for a wrong row, one fault on "x" that
// quotes what was typed, and else none.
func checkFault(t *testing.T, form *web.Typed, wrong bool, quotes string) {
	t.Helper()
	err := form.Err()
	if !wrong {
		if err != nil {
			t.Errorf("fault %v, want none", err)
		}
		return
	}
	if fault.KindOf(err) != fault.Invalid || err == nil {
		t.Fatalf("fault %v, want one of kind Invalid", err)
	}
	if all := fault.All(err); len(all) != 1 || all[0].Field != "x" || !strings.Contains(all[0].Say, quotes) {
		t.Errorf("faults %v, want one on x that says %q", all, quotes)
	}
}

func TestTypedText(t *testing.T) {
	for text, want := range map[string]string{"": "", "  a b \r\n": "a b", "a\r\nb": "a\nb", "a\rb": "a\rb"} {
		if got := sent(text).Text("x"); got != want {
			t.Errorf("text of %q = %q, want %q", text, got, want)
		}
	}
	form := sent(" \r\n ")
	form.Needed("x", "Write something.")
	checkFault(t, form, true, "Write something.")
}

func TestTypedWholeNumbers(t *testing.T) {
	for _, c := range []struct {
		text  string
		want  int
		wrong bool
	}{
		{"", 0, false}, {"0", 0, false}, {"12", 12, false}, {" 12 ", 12, false}, {"2147483647", 2147483647, false},
		{"2147483648", 0, true}, {"99999999999999999999", 0, true}, {"-1", 0, true}, {"1.5", 0, true}, {"1½", 0, true},
		{"twelve", 0, true}, {"1,000", 0, true}, {"0x10", 0, true}, {"1e3", 0, true}, {"12 g", 0, true},
	} {
		t.Run(c.text, func(t *testing.T) {
			form := sent(c.text)
			if got := form.Whole("x"); got != c.want {
				t.Errorf("whole %q = %d, want %d", c.text, got, c.want)
			}
			checkFault(t, form, c.wrong, "“"+c.text+"”")
		})
	}
}

// Common practice, no source: the ways in which cooks write numbers.
func TestTypedNumbersAsCooksWriteThem(t *testing.T) {
	for _, c := range []struct {
		text, want string
		wrong      bool
	}{
		{"", "0", false}, {"2", "2", false}, {"1½", "3/2", false}, {"1 ½", "3/2", false}, {"½", "1/2", false}, {"⅓", "1/3", false},
		{"1 1/2", "3/2", false}, {"3/2", "3/2", false}, {"1.5", "3/2", false}, {"0.75", "3/4", false}, {" 2 ", "2", false},
		{"two eggs", "0", true}, {"2 g", "0", true}, {"-2", "0", true}, {"1/0", "0", true}, {"½½", "0", true}, {"x", "0", true},
		{"1e400", "0", true}, {"NaN", "0", true},
	} {
		t.Run(c.text, func(t *testing.T) {
			form := sent(c.text)
			if got := form.Number("x"); !got.Equal(measure.MustNumber(c.want)) {
				t.Errorf("number %q = %v, want %s", c.text, got, c.want)
			}
			checkFault(t, form, c.wrong, "“"+c.text+"”")
		})
	}
}

func TestAPositiveNumberHasOneFaultAtMost(t *testing.T) {
	for _, c := range []struct{ text, says string }{{"2", ""}, {"1½", ""}, {"", "Say how many."}, {"0", "Say how many."}, {"some", "“some” is not a number"}} {
		t.Run(c.text, func(t *testing.T) {
			form := sent(c.text)
			form.Positive("x", "Say how many.")
			checkFault(t, form, c.says != "", c.says)
		})
	}
}

func TestTypedDates(t *testing.T) {
	for _, c := range []struct {
		text  string
		want  time.Time
		wrong bool
	}{
		{"", time.Time{}, false},
		{"2027-03-14", time.Date(2027, 3, 14, 0, 0, 0, 0, time.UTC), false},
		{"2028-02-29", time.Date(2028, 2, 29, 0, 0, 0, 0, time.UTC), false},
		{"2027-02-29", time.Time{}, true},
		{"2027-13-01", time.Time{}, true},
		{"14/03/2027", time.Time{}, true},
		{"14 March", time.Time{}, true},
		{"2027-3-4", time.Time{}, true},
		{"2027-03-14T10:00:00Z", time.Time{}, true},
	} {
		t.Run(c.text, func(t *testing.T) {
			form := sent(c.text)
			if got := form.Date("x"); !got.Equal(c.want) {
				t.Errorf("date %q = %v, want %v", c.text, got, c.want)
			}
			checkFault(t, form, c.wrong, "“"+c.text+"”")
		})
	}
}

func TestTypedLengths(t *testing.T) {
	for _, c := range []struct {
		text  string
		want  int
		wrong bool
	}{
		{"", 0, false}, {"0", 0, false}, {"95", 95, false}, {"1:35", 95, false}, {"01:05", 65, false}, {"90:00", 5400, false},
		{"1:02:09", 3729, false}, {"1:60", 0, true}, {"1:2:60", 0, true}, {"1:75:00", 0, true}, {"1:2:3:4", 0, true}, {"-5", 0, true},
		{"1:-5", 0, true}, {"1:", 0, true}, {":30", 0, true}, {"1m30", 0, true}, {"1.5", 0, true}, {"99999999999", 0, true},
	} {
		t.Run(c.text, func(t *testing.T) {
			form := sent(c.text)
			if got := form.Seconds("x"); got != c.want {
				t.Errorf("length %q = %d s, want %d", c.text, got, c.want)
			}
			checkFault(t, form, c.wrong, "“"+c.text+"”")
		})
	}
}

func TestTypedAddresses(t *testing.T) {
	for _, c := range []struct {
		text  string
		wrong bool
	}{
		{"", false}, {"https://video.example/watch?v=1", false}, {"http://video.example", false}, {"HTTPS://video.example", false},
		{"video.example", true}, {"/watch", true}, {"//video.example", true}, {"https://", true}, {"https:video.example", true},
		{"javascript:alert(1)", true}, {"javascript://x/%0aalert(1)", true}, {"data:text/html,x", true}, {"ftp://video.example", true}, {"https://a b", true},
	} {
		t.Run(c.text, func(t *testing.T) {
			form := sent(c.text)
			form.Address("x")
			checkFault(t, form, c.wrong, "“"+c.text+"”")
		})
	}
}

func TestTypedChoices(t *testing.T) {
	for text, wrong := range map[string]bool{"fan": false, " fan ": false, "conventional": false, "": true, "Fan": true, "microwave": true} {
		form := sent(text)
		form.OneOf("x", []string{"conventional", "fan"})
		checkFault(t, form, wrong, "conventional, fan")
	}
}

func TestEveryFaultOfAFormIsTold(t *testing.T) {
	form := web.NewTyped(url.Values{"a": {"many"}, "b": {"soon"}, "c": {"1:75"}, "d": {"nowhere"}})
	form.Whole("a")
	form.Date("b")
	form.Seconds("c")
	form.Address("d")
	form.Needed("e", "Write it.")
	var fields []string
	for _, f := range fault.All(form.Err()) {
		fields = append(fields, f.Field)
	}
	if diff := cmp.Diff([]string{"a", "b", "c", "d", "e"}, fields); diff != "" {
		t.Errorf("fields with faults (-want +got):\n%s", diff)
	}
}

func TestNoReaderPanicsAndAFaultIsAlwaysOnItsField(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		form := sent(rapid.OneOf(rapid.String(), rapid.StringMatching(`[-0-9:/.½ e]{0,12}`)).Draw(t, "typed"))
		form.Whole("x")
		form.Number("x")
		form.Date("x")
		form.Address("x")
		if n := form.Seconds("x"); n < 0 {
			t.Errorf("a length of %d seconds", n)
		}
		for _, f := range fault.All(form.Err()) {
			if f.Field != "x" || f.Say == "" {
				t.Errorf("fault %+v, want it on x with a sentence", f)
			}
		}
	})
}

func TestWhatIsWrittenIntoAFieldIsReadBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		whole := rapid.IntRange(0, 1<<31-1).Draw(t, "whole")
		if got := sent(web.WholeText(whole)).Whole("x"); got != whole {
			t.Errorf("%d comes back as %d", whole, got)
		}
		number := measure.Ratio(rapid.Int64Range(0, 100000).Draw(t, "over"), rapid.SampledFrom([]int64{1, 2, 3, 4, 8, 10, 100}).Draw(t, "under"))
		if got := sent(web.NumberText(number)).Number("x"); !got.Equal(number) {
			t.Errorf("%v comes back as %v by way of %q", number, got, web.NumberText(number))
		}
		day := time.Date(2000, 1, 1+rapid.IntRange(0, 20000).Draw(t, "day"), 0, 0, 0, 0, time.UTC)
		if got := sent(web.DateText(day)).Date("x"); !got.Equal(day) {
			t.Errorf("%v comes back as %v", day, got)
		}
	})
}
