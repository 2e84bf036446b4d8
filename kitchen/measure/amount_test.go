package measure_test

import (
	"encoding/json"
	"testing"

	"github.com/google/go-cmp/cmp"

	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

func TestNumbersTravelAsText(t *testing.T) {
	a := measure.Amount{Range: measure.Between(measure.Ratio(3, 2), measure.Whole(2)), Unit: measure.Cup}
	data, err := json.Marshal(a)
	if err != nil || string(data) != `{"from":"3/2","to":"2","unit":"cup"}` {
		t.Fatalf("JSON = %s, %v", data, err)
	}
	var back measure.Amount
	if err := json.Unmarshal(data, &back); err != nil || !back.From.Equal(a.From) || !back.To.Equal(a.To) || back.Unit != a.Unit {
		t.Errorf("read back %v, %v", back, err)
	}
	if err := json.Unmarshal([]byte(`{"from":"two"}`), &back); err == nil {
		t.Error("a word is no number")
	}
}

func TestAmountsAdd(t *testing.T) {
	for _, test := range []struct {
		name string
		a, b string
		s    measure.System
		want string // "" if they must not add
	}{
		{"same unit", "2 tbsp", "1 tbsp", "", "3 tbsp"},
		{"ladder", "1 cup", "2 tbsp", measure.US, "9/8 cup"},
		{"Australian ladder", "1 cup", "2 tbsp", measure.Australian, "29/25 cup"},
		{"ranges", "2..3 tbsp", "1..2 tbsp", "", "3..5 tbsp"},
		{"grams and pounds", "1 g", "1 lb", "", "454.59237 g"},
		{"none and some", "0", "2 cup", "", "2 cup"},
		{"some and none", "2 cup", "0", "", "2 cup"},
		{"counts", "2", "3", "", "5"},
		{"system not said", "1 cup", "2 tbsp", "", ""},
		{"two kinds", "1 cup", "2 g", measure.US, ""},
		{"two counts", "1 clove", "1 head", measure.US, ""},
		{"temperatures", "100 °C", "1 °F", "", ""},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, ok := amount(t, test.a).Add(amount(t, test.b), test.s)
			if ok != (test.want != "") {
				t.Fatalf("Add ok = %v, got %v", ok, got)
			}
			if ok && !cmp.Equal(got, amount(t, test.want)) {
				t.Errorf("%s + %s = %v, want %s", test.a, test.b, got, test.want)
			}
		})
	}
}

func TestAmountString(t *testing.T) {
	for from, want := range map[string]string{
		"3/2 cup": "1½ cups", "3/4 cup": "¾ cup", "1 cup": "1 cup", "2..3 tbsp": "2–3 tbsp", "1/2..1 tsp": "½–1 tsp",
		"5/2 kg": "2.5 kg", "3": "3", "0": "", "1/3": "⅓", "2 tin": "2 tins", "1 leaf": "1 leaf", "3 leaf": "3 leaves",
		"250 ml": "250 mL", "1..2 bunch": "1–2 bunches", "11/10 cup": "1.1 cups", "0 g": "0 g", "-5 °C": "−5 °C",
	} {
		if got := tables.Plain(amount(t, from).String()); got != want {
			t.Errorf("%s is written %q, want %q", from, got, want)
		}
	}
	if got := amount(t, "3/2 cup").String(); got != "1½\u00a0cups" {
		t.Errorf("String = %q: number and unit must not part", got)
	}
}

func TestRangesStayInOrder(t *testing.T) {
	r := measure.Between(measure.Whole(3), measure.Whole(2))
	if tables.Range(r) != "2..3" {
		t.Errorf("Between(3, 2) = %s", tables.Range(r))
	}
	if got := tables.Range(r.Scale(measure.Whole(-1))); got != "-3..-2" {
		t.Errorf("scaled by −1 = %s", got)
	}
}
