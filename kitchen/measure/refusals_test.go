package measure_test

import (
	"fmt"
	"strings"
	"testing"

	"benchproof/kitchen/fault"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/measure/internal/tables"
)

// What is refused, and in which words: a person reads these, so read them over
// when they change.
func TestRefusalsInTheirWords(t *testing.T) {
	var text strings.Builder
	text.WriteString("# What Convert and Heat.In refuse, and what they say.\n# Columns: asked for | field | said\n\n")
	say := func(asked string, err error) {
		if err == nil || fault.KindOf(err) != fault.Invalid {
			t.Errorf("%s: %v, want an Invalid fault", asked, err)
		}
		fmt.Fprintf(&text, "%s | %s | %s\n", asked, fault.Field(err), tables.Plain(fault.Say(err)))
	}
	for _, ask := range []struct {
		from string
		to   measure.Unit
		s    measure.System
	}{
		{"1 cup", measure.Gram, measure.US},
		{"200 g", measure.Cup, measure.US},
		{"3", measure.Gram, measure.US},
		{"200 g", measure.Each, measure.US},
		{"2 clove", measure.Gram, measure.US},
		{"2 clove", measure.Bunch, measure.US},
		{"2 tin", measure.Each, measure.US},
		{"1 cup", measure.Millilitre, ""},
		{"250 ml", measure.Cup, ""},
		{"1 pinch", measure.Teaspoon, ""},
		{"1 pint", measure.Litre, ""},
		{"2 h", measure.Centimetre, measure.US},
		{"180 °C", measure.Minute, measure.US},
		{"1 firkin", measure.Litre, measure.US},
		{"1 firkin", measure.Tin, measure.US},
	} {
		_, err := measure.Convert(amount(t, ask.from), ask.to, ask.s, ask.s)
		to := string(ask.to)
		if ask.to == measure.Each {
			to = "pieces"
		}
		say(fmt.Sprintf("%s in %s, system %s", ask.from, to, ask.s.Name()), err)
	}
	for _, ask := range []struct{ heat, scale string }{
		{"200 degrees", "gas"}, {"200 degrees", "F"}, {"300 °C", "gas"}, {"4 °C", "gas"}, {"280 °C fan", "gas"}, {"600 °F", "gas"}, {"gas 10", "C"},
	} {
		_, _, err := measure.Heats(ask.heat)[0].In(ask.scale, "")
		say(ask.heat+" in "+ask.scale, err)
	}
	golden(t, "refusals.golden", text.String())
}
