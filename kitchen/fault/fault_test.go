package fault_test

import (
	"errors"
	"fmt"
	"testing"

	"benchproof/kitchen/fault"
)

func TestFaultsAreFoundThroughWraps(t *testing.T) {
	cause := errors.New("disk")
	err := fmt.Errorf("save line 7: %w", &fault.Error{Kind: fault.Busy, Field: "amount", Say: "Try again.", Err: cause})
	if got := fault.KindOf(err); got != fault.Busy {
		t.Errorf("KindOf = %v, want Busy", got)
	}
	if got := fault.Say(err); got != "Try again." {
		t.Errorf("Say = %q", got)
	}
	if got := fault.Field(err); got != "amount" {
		t.Errorf("Field = %q", got)
	}
	if !errors.Is(err, cause) {
		t.Error("the cause is lost")
	}
}

func TestAllGathersJoinedFaultsInOrder(t *testing.T) {
	err := errors.Join(fault.Invalidf("title", "Give it a title."), fmt.Errorf("row: %w", fault.Invalidf("minutes", "Minutes are a number.")))
	var fields []string
	for _, f := range fault.All(err) {
		fields = append(fields, f.Field)
	}
	if got := fmt.Sprint(fields); got != "[title minutes]" {
		t.Errorf("fields = %s", got)
	}
}

func TestPlainErrorsAreInternal(t *testing.T) {
	if got := fault.KindOf(errors.New("x")); got != fault.Internal {
		t.Errorf("KindOf = %v, want Internal", got)
	}
	if fault.Say(errors.New("x")) != "" {
		t.Error("a plain error must say nothing to a person")
	}
}
