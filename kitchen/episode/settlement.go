package episode

// Settlement is what was decided about something that the cut says otherwise
// than the recipe.
type Settlement string

// The ways to settle a finding.
const (
	ReRecord     Settlement = "re-record"      // it is to be spoken again
	OnScreenNote Settlement = "on-screen note" // the picture will say what is right
	PutRight     Settlement = "correction"     // the description and the recipe page say it
	MeantSo      Settlement = "meant that way" // nothing is wrong
)

// Settlements lists them.
var Settlements = []Settlement{ReRecord, OnScreenNote, PutRight, MeantSo}
