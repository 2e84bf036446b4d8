package views

// PartsPage draws every part once, in each of its states. Nobody is led to
// it: it is looked at, and tested.
type PartsPage struct {
	Page
	Marks   []Mark
	Choices []Choice
	Figures []Figure
	Links   []Link
	Lines   []LineRow
	Steps   []StepRow
	Copy    string
	Form    Form // every kind of field, with hint, unit, count and error
	Folded  Form
	Open    []OpenLink
}
