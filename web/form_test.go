package web_test

import (
	"errors"
	"net/http"
	"net/url"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/views"
	"benchproof/web"
)

func TestFilledKeepsWhatWasTypedBesideItsFault(t *testing.T) {
	fields := []views.Field{{Name: "dish", Label: "Dish"}, {Name: "times"}, {Name: "password", Kind: views.FieldPassword}}
	value := web.Values{"dish": "Flan", "times": "often", "password": "secret"}.Get
	got := web.Filled(fields, value, errors.Join(
		fault.Invalidf("times", "Not a number."), fault.Invalidf("times", "Nor a date."), fault.Invalidf("password", "Too short."),
	))
	want := []views.Field{
		{Name: "dish", Label: "Dish", Value: "Flan"},
		{Name: "times", Value: "often", Error: "Not a number. Nor a date."},
		{Name: "password", Kind: views.FieldPassword, Error: "Too short."},
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("Filled (-want +got):\n%s", diff)
	}
	if fields[0].Value != "" || fields[1].Error != "" {
		t.Error("the fields given were changed: the next form would show this one's text")
	}
}

func TestFieldError(t *testing.T) {
	err := errors.Join(fault.Invalidf("a", "First."), fault.Invalidf("b", "Other."), fault.Invalidf("a", "Second."), fault.Invalidf("a", ""))
	for name, want := range map[string]string{"a": "First. Second.", "b": "Other.", "c": "", "": ""} {
		if got := web.FieldError(err, name); got != want {
			t.Errorf("FieldError(%q) = %q, want %q", name, got, want)
		}
	}
	if got := web.FieldError(nil, "a"); got != "" {
		t.Errorf("FieldError of no error = %q", got)
	}
}

func TestFormErrorSaysWhatNoFieldSays(t *testing.T) {
	fields := []views.Field{{Name: "a"}, {Name: "b"}}
	for _, c := range []struct {
		name string
		err  error
		want string
	}{
		{"nothing", nil, ""},
		{"only of fields", fault.Invalidf("a", "A is wrong."), ""},
		{"of the whole form", fault.Invalidf("", "There is no recipe."), "There is no recipe."},
		{"of a field that is not drawn", fault.Invalidf("secret", "It is missing."), "It is missing."},
		{"several", errors.Join(fault.Invalidf("", "One."), fault.Invalidf("b", "B."), fault.Invalidf("", "Two.")), "One. Two."},
	} {
		t.Run(c.name, func(t *testing.T) {
			if got := strings.TrimSpace(web.FormError(c.err, fields)); got != c.want {
				t.Errorf("FormError = %q, want %q", got, c.want)
			}
		})
	}
}

func TestTextsOfNothingAreEmpty(t *testing.T) {
	if got := web.WholeText(0) + web.NumberText(measure.Number{}); got != "" {
		t.Errorf("nothing is written as %q", got)
	}
	if got := web.NumberText(measure.Ratio(3, 2)); got != "1½" {
		t.Errorf("NumberText(3/2) = %q", got)
	}
}

// RFC 9110 § 15.5 for 400, 403, 404, 409, 413 and 422, § 15.6 for 500 and 503;
// RFC 6585 § 4 for 429.
func TestStatusOfEveryKind(t *testing.T) {
	for kind, want := range map[fault.Kind]int{
		fault.Internal: 500, fault.Invalid: 422, fault.Malformed: 400, fault.NotFound: 404, fault.Conflict: 409,
		fault.Forbidden: 403, fault.TooLarge: 413, fault.TooMany: 429, fault.Busy: 503, fault.Kind(99): 500,
	} {
		if got := web.StatusOf(kind); got != want {
			t.Errorf("StatusOf(%v) = %d, want %d", kind, got, want)
		}
	}
	if got := web.FormStatus(nil); got != http.StatusOK {
		t.Errorf("a form not sent yet = %d", got)
	}
	if got := web.FormStatus(errors.New("x")); got != http.StatusUnprocessableEntity {
		t.Errorf("a refused form = %d", got)
	}
}

func TestAsShownWordsAChoiceByItsLabel(t *testing.T) {
	field := views.Field{Options: []views.Option{{Value: "", Label: "the whole episode"}, {Value: "3 Dough", Label: "Dough, step 3"}}}
	for value, want := range map[string]string{"3 Dough": "Dough, step 3", "": "the whole episode", "gone": "gone"} {
		if got := web.AsShown(field, value); got != want {
			t.Errorf("AsShown(%q) = %q, want %q", value, got, want)
		}
	}
	if got := web.AsShown(views.Field{}, "typed"); got != "typed" {
		t.Errorf("AsShown of a plain field = %q", got)
	}
}

func TestBackPathLeadsOnlyToOurPages(t *testing.T) {
	for _, c := range []struct{ name, referer, want string }{
		{"none", "", "/"},
		{"a page of ours", "http://kitchen.example/episodes/1/script", "/episodes/1/script"},
		{"its query is dropped", "http://kitchen.example/episodes/1/script?change=segment-1#segment", "/episodes/1/script"},
		{"another host", "http://evil.example/episodes/1", "/"},
		{"our name inside another", "http://kitchen.example.evil.example/x", "/"},
		{"our name as a user", "http://kitchen.example@evil.example/x", "/"},
		{"another port", "http://kitchen.example:81/x", "/"},
		{"two slashes", "http://kitchen.example//evil.example", "/"},
		{"two slashes, one escaped", "http://kitchen.example/%2Fevil.example", "/"},
		{"a backslash that browsers read as a slash", "http://kitchen.example/%5Cevil.example", "/%5Cevil.example"},
		{"no path", "http://kitchen.example", "/"},
		{"no address", "::not one", "/"},
	} {
		t.Run(c.name, func(t *testing.T) {
			r, err := http.NewRequest(http.MethodPost, "http://kitchen.example/deleted/shot/1/restore", nil)
			if err != nil {
				t.Fatal(err)
			}
			r.Header.Set("Referer", c.referer)
			if got := web.BackPath(r); got != c.want {
				t.Errorf("from %q back to %q, want %q", c.referer, got, c.want)
			}
		})
	}
}

// RFC 1122 § 3.2.1.3 keeps all of 127/8 for this machine, RFC 4291 § 2.5.3 ::1.
func TestIsLoopback(t *testing.T) {
	for host, want := range map[string]bool{
		"localhost": true, "localhost:8080": true, "127.0.0.1": true, "127.0.0.1:8080": true, "127.9.9.9": true, "[::1]": true, "[::1]:8080": true, "::1": true,
		"kitchen.example": false, "localhost.evil.example": false, "127.0.0.1.evil.example:80": false, "10.0.0.1": false, "0.0.0.0": false, "": false, "[::2]:80": false,
	} {
		if got := web.IsLoopback(host); got != want {
			t.Errorf("IsLoopback(%q) = %v, want %v", host, got, want)
		}
	}
}

func TestPaperOf(t *testing.T) {
	for query, want := range map[string]string{"": "a4", "paper=": "a4", "paper=letter": "letter", "paper=4x6": "4x6", "paper=A4": "", "paper=a0": "", "paper=../a4": ""} {
		r, err := http.NewRequest(http.MethodGet, "/card?"+query, nil)
		if err != nil {
			t.Fatal(err)
		}
		got, err := web.PaperOf(r)
		if string(got) != want || (want == "") != (fault.KindOf(err) == fault.NotFound && err != nil) {
			t.Errorf("PaperOf(%q) = %q, %v, want %q", query, got, err, want)
		}
	}
}

func TestShowReadsWhatThePersonMayChoose(t *testing.T) {
	good := map[string]string{"name": "Quay Kitchen", "system": "metric", "oven": "fan", "zone": "Pacific/Auckland", "currency": "NZD", "pace": "150", "limit": "5000"}
	for _, c := range []struct{ name, field, typed, wrong string }{
		{"all good", "name", "Quay Kitchen", ""},
		{"UTC", "zone", "UTC", ""},
		{"no name", "name", " ", "name"},
		{"no zone", "zone", "", "zone"},
		{"a zone that is none", "zone", "Pacific/Atlantis", "zone"},
		{"this machine's zone is nobody's", "zone", "Local", "zone"},
		{"a zone out of the folder", "zone", "../../etc/passwd", "zone"},
		{"a currency in words", "currency", "dollars", "currency"},
		{"a currency in small letters", "currency", "nzd", "currency"},
		{"a currency that is none", "currency", "XYZ", "currency"},
		{"too slow", "pace", "59", "pace"},
		{"slow", "pace", "60", ""},
		{"fast", "pace", "300", ""},
		{"too fast", "pace", "301", "pace"},
		{"no pace", "pace", "", "pace"},
		{"a limit too small", "limit", "99", "limit"},
		{"an oven that is none", "oven", "microwave", "oven"},
		{"measures that are none", "system", "martian", "system"},
		{"a mixer in words", "mixer", "large", "mixer"},
	} {
		t.Run(c.name, func(t *testing.T) {
			values := url.Values{}
			for name, text := range good {
				values.Set(name, text)
			}
			values.Set(c.field, c.typed)
			form := web.NewTyped(values)
			var show = newShow()
			web.ReadShow(form, &show)
			faults := fault.All(form.Err())
			switch {
			case c.wrong == "" && len(faults) > 0:
				t.Errorf("faults %v, want none", form.Err())
			case c.wrong != "" && (len(faults) == 0 || faults[0].Field != c.wrong):
				t.Errorf("faults %v, want one on %s", form.Err(), c.wrong)
			}
		})
	}
}
