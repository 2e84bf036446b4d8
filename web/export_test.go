package web

import (
	"context"
	"net/url"
	"time"

	"benchproof/kitchen/episode"
	"benchproof/kitchen/food"
	"benchproof/kitchen/measure"
	"benchproof/kitchen/recipe"
	"benchproof/kitchen/script"
	"benchproof/kitchen/shop"
	"benchproof/store"
	"benchproof/views"
)

// What follows lets the tests, which stand outside the package, see its pure
// builders. Nothing of it is in the program.

// MaxForm is the most a form may carry.
const MaxForm = maxForm

// The functions without state.
var (
	Count, Paragraphs, Shortened, Joined      = count, paragraphs, shortened, joined
	Normal, URLText, Thousands, ReadOn        = normal, urlText, thousands, readOn
	Anchor, MoveActions, AppendNew            = anchor, moveActions, appendNew
	Filled, FieldError, FormError             = filled, fieldError, formError
	WholeText, NumberText, DateText           = wholeText, numberText, dateText
	CutAfter, LineRow, StepRow, StationText   = cutAfter, lineRow, stepRow, stationText
	MinutesText, HeatRuns, NewBody            = minutesText, heatRuns, newBody
	AddMasses, AddBakers, LossNote            = addMasses, addBakers, lossNote
	GramsText, Percent, Grams, WeightOf       = gramsText, percent, grams, weightOf
	Differing, NewCompare                     = differing, newCompare
	SeasonGroups, EpisodeRow, FirstSheet      = seasonGroups, episodeRow, firstSheet
	AgainstTarget, SegmentLength, OutlineText = againstTarget, segmentLength, outlineText
	GotText, StepName, ReadOnStep             = gotText, stepName, readOnStep
	BuyText, CostText, AddsWords              = buyText, costText, addsWords
	PriceText, MinorValue, UnitPrice          = priceText, minorValue, unitPrice
	AmountValue                               = amountValue
	MarkCues, FindingMark, CheckedMark        = markCues, findingMark, checkedMark
	CueTime, NewCutSheet, StartMark           = cueTime, newCutSheet, startMark
	FileName, PaperOf, AsShown                = fileName, paperOf, asShown
	IsLoopback, StatusOf, FormStatus          = isLoopback, statusOf, formStatus
	SheetOf, NumberWord                       = sheetOf, numberWord
	SpanWords, StepQuery, StepFrom            = spanWords, stepQuery, stepFrom
	MomentWords, FreeText                     = momentWords, freeText
	VerdictMark, TrialFigures, ProvedMarks    = verdictMark, trialFigures, provedMarks
	AmountText, RecipeName, NamesOrNone       = amountText, recipeName, namesOrNone
	Markdown, YieldPieces, StyleOf            = markdown, yieldPieces, styleOf
)

// Values are a form's fields by name.
type Values = values

// Get gives a field's value.
func (v values) Get(name string) string { return v.get(name) }

// Typed is a form as it was sent.
type Typed = typed

// NewTyped makes a form of its values.
func NewTyped(sent url.Values) *Typed { return &typed{values: sent} }

// Its readers.
func (t *typed) Err() error                               { return t.err() }
func (t *typed) Text(name string) string                  { return t.text(name) }
func (t *typed) Needed(name, say string) string           { return t.needed(name, say) }
func (t *typed) Whole(name string) int                    { return t.whole(name) }
func (t *typed) Number(name string) measure.Number        { return t.number(name) }
func (t *typed) Positive(name, say string) measure.Number { return t.positive(name, say) }
func (t *typed) Date(name string) time.Time               { return t.date(name) }
func (t *typed) Spans(name string) []episode.Span         { return t.spans(name) }
func (t *typed) Seconds(name string) int                  { return t.seconds(name) }
func (t *typed) Address(name string) string               { return t.address(name) }
func (t *typed) Price(name, code string) int64            { return t.price(name, code) }
func (t *typed) Amount(name, say string) measure.Amount   { return t.amount(name, say) }
func (t *typed) OneOf(name string, words []string) string { return t.oneOf(name, words) }

// Wanted is a wish for a scale.
type Wanted = wanted

// WantedScale reads one.
func WantedScale(sent url.Values, r recipe.Recipe, kept measure.Number, w recipe.Writer) Wanted {
	return wantedScale(sent, r, kept, w)
}

// AskedFor makes the wish for a factor; not asked is the factor that is kept.
func AskedFor(by measure.Number, asked bool) Wanted { return wanted{by: by, asked: asked} }

// What became of it.
func (w wanted) By() measure.Number   { return w.by }
func (w wanted) Asked() bool          { return w.asked }
func (w wanted) FactorError() string  { return w.factorError }
func (w wanted) PiecesError() string  { return w.piecesError }
func (w wanted) Err() error           { return w.err() }
func (w wanted) Scaler() views.Scaler { return newScaler("/at", recipe.Recipe{}, w, recipe.AsWritten) }

// The addresses that follow from it.
var ScaledPath, ScaleChoices, MeasureChoices, NewScaler = scaledPath, scaleChoices, measureChoices, newScaler

// Desk is what an episode's sheets are drawn from.
type Desk = desk

// NewDesk makes one; a reading that has no components stands for no recipe.
func NewDesk(show episode.Show, e episode.Episode, name string, reading recipe.Recipe) *Desk {
	d := &desk{show: show, episode: e}
	if len(reading.Components) > 0 {
		d.version = version{Version: store.Version{ID: 1, Number: 1, Reading: reading}, Name: name}
	}
	return d
}

// Needs, MakesTotal, StepOptions and TieOptions word parts of sheets.
var Needs, MakesTotal, StepOptions, TieOptions = needs, makesTotal, stepOptions, tieOptions

// bare is a server without a store, for what words things by the clock.
func bare(now time.Time) *Server {
	return &Server{config: Config{Now: func() time.Time { return now }}}
}

// Day and DateWord write a date as it is shown on the day now.
func Day(now, t time.Time) string      { return bare(now).day(t) }
func DateWord(now, t time.Time) string { return bare(now).dateWord(t) }

// ShopList and ShopItem word a shopping list on the day now.
func ShopList(now time.Time, bought shop.Sheet, ticked map[string]bool, action, recipe string) views.ShopList {
	return bare(now).shopList(bought, ticked, action, recipe)
}
func ShopItem(now time.Time, item shop.Item, ticked bool) views.ShopItem {
	return bare(now).shopItem(item, ticked)
}

// Today is the show's date at an instant.
func Today(now time.Time, zone string) time.Time { return bare(now).today(zone) }

// StockRow words a food that is in stock on the day now.
func StockRow(now time.Time, f *food.Food, stock []shop.Stock) views.FoodRow {
	s := bare(now)
	return s.stockRow(f, stock, s.today("UTC"))
}

// NewScriptSheet words a running order.
func NewScriptSheet(d *Desk, segments []episode.Segment) views.ScriptSheet {
	return newScriptSheet(bare(time.Time{}).segments(), d, segments)
}

// NewShotsSheet words a shot list in the order of the list.
func NewShotsSheet(d *Desk, shots []episode.Shot, described ...episode.Setup) views.ShotsSheet {
	return newShotsSheet(bare(time.Time{}).shots(), d, newShotList(d.version.Reading, shots, described, nil), nil)
}

// PlannedShots words a shot list in the order of a plan that begins steps at
// these minutes from midnight.
func PlannedShots(d *Desk, shots []episode.Shot, begins map[recipe.Position]int) views.ShotsSheet {
	return PlannedUntil(d, shots, begins, begins)
}

// PlannedUntil is PlannedShots with when steps end.
func PlannedUntil(d *Desk, shots []episode.Shot, begins, ends map[recipe.Position]int) views.ShotsSheet {
	list := newShotList(d.version.Reading, shots, nil, nil)
	list.plan, list.begins, list.ends = &shootPlan{}, begins, ends
	return newShotsSheet(bare(time.Time{}).shots(), d, list, nil)
}

// LinesOf parts a text into its lines.
var LinesOf = linesOf

// AddShotPath is where a shot stands filled in, to be added.
var AddShotPath = addShotPath

// CompleteShotForm is the last thing done to a form of a shot.
var CompleteShotForm = completeShotForm

// Frame is what stands around a sheet on the day now.
func Frame(now time.Time, d *Desk, facts episode.Facts, sheet views.Sheet) views.EpisodeFrame {
	d.facts = facts
	return bare(now).frame(d, sheet)
}

// Readers of the forms.
var (
	ReadBrief, ReadSegment, ReadShot, ReadBatch = readBrief, readSegment, readShot, readBatch
	ReadTrial, ReadCut, ReadShow, ReadPitch     = readTrial, readCut, readShow, readPitch
	ReadAir, ReadRelease                        = readCorrection, readRelease
	BriefValues, SegmentValues, ShotValues      = briefValues, segmentValues, shotValues
	BatchValues, TrialValues, CutValues         = batchValues, trialValues, cutValues
	ShowValues, PitchValues, AirValues          = showValues, pitchValues, correctionValues
	ReleaseValues                               = releaseValues
)

// Outgoing is what an episode is released with.
type Outgoing = outgoing

// PublishedChapters are the chapters that a running order publishes, and those
// it has.
func PublishedChapters(pace int, segments []episode.Segment) (published int, all []script.Chapter, sheet views.ReleaseSheet) {
	var o outgoing
	o.Show.WordsPerMinute, o.Show.DescriptionLimit = pace, 5000
	chapters, problems := script.Chapters(script.Outline(segments, pace))
	o.addChapters(chapters, problems, len(problems) == 0)
	return len(o.Chapters), o.chapters, newReleaseSheet(o)
}

// BackPath is where Undo leads.
var BackPath = (*Server)(nil).backPath

// RecoverPanic is what stands around every handler.
var RecoverPanic = recoverPanic

// SetEpisode makes the desk that of another episode.
func (d *desk) SetEpisode(id int64) { d.episode.ID = id }

// CallSheetOf words the call sheet of a day without a plan, or with none yet.
func CallSheetOf(d *Desk, day episode.ShootDay, batches []episode.Batch, shots []episode.Shot, noPlan error) views.CallSheet {
	plan := newShootPlan(dayParts{settings: day, recipe: d.version.Reading, batches: batches, shots: shots})
	return newCallSheet(context.Background(), bare(time.Time{}).shots(), d, plan, noPlan, nil)
}
