package episode

import "fmt"

// SheetNames are an episode's sheets in the order of the week.
var SheetNames = []string{"brief", "recipe", "trials", "shop", "shoot day", "script", "shots", "cut", "release"}

// Facts is what StillOpen must know of one episode: plain counts and flags,
// gathered by whoever keeps the episode. The zero value of every field is the
// answer for an episode that has nothing yet.
type Facts struct {
	Stage Stage

	// The brief.
	HasDish        bool
	HasReleaseDate bool
	TargetMinutes  int // 0 if not set

	// The recipe version in use.
	HasRecipe   bool
	UnreadLines int // lines not read, and lines that found no place
	Questions   int // lines read, with something to ask the creator

	// Trials of the version in use, by verdict, and of other versions.
	Proved       int
	Nearly       int
	NotYet       int
	OtherTrials  int  // trials of this episode with another version
	TriedAtScale bool // one of this version's trials was at the episode's scale

	// What is made and bought.
	Batches      int
	ShootBatches int // those of kind ShootBatch
	ToBuy        int // shopping items not ticked off; 0 if not counted

	// The script.
	Segments         int
	WithoutNarration int // segments with neither narration nor a planned length
	PlannedSeconds   int // the running order's whole length

	// The shots.
	Shots    int
	Missing  int // shots not got yet
	ToRetake int

	// The cut.
	HasCut      bool
	HasCaptions bool
	Findings    int // what the cut says otherwise than the recipe, not settled

	// The release.
	HasTitle        bool
	HasOpening      bool
	TitleOver       int // characters over the platform's limit, 0 if inside it
	DescriptionOver int // the same, of the description
	UnsureAllergens int // foods whose allergens nobody knows
	HasVideoURL     bool
	ShareLinkLive   bool
}

// Open is one thing that still stands between an episode and its release.
type Open struct {
	Sheet string // one of SheetNames: where it is put right
	Text  string // what it is, without a full stop
	Wrong bool   // something false, not only something missing
}

// StillOpen lists what stands between the episode and its release, sheet by
// sheet in the order of the week; empty when nothing does. A released episode
// lists only what viewers can still meet as wrong.
func StillOpen(f Facts) []Open {
	if f.Stage == Released {
		return gather(recipeFaults, cutFaults, releaseFaults, afterRelease)(f)
	}
	return gather(briefOpen, recipeOpen, trialsOpen, shopOpen, scriptOpen, shotsOpen, cutOpen, releaseOpen)(f)
}

// lister lists what is open on one sheet, or about one thing.
type lister func(Facts) []Open

func gather(parts ...lister) lister {
	return func(f Facts) []Open {
		var open []Open
		for _, part := range parts {
			open = append(open, part(f)...)
		}
		return open
	}
}

func briefOpen(f Facts) []Open {
	var l list
	l.when(!f.HasDish, "brief", "The dish is not named")
	l.when(!f.HasReleaseDate, "brief", "No release date")
	l.when(f.TargetMinutes == 0, "brief", "No target length")
	return l
}

func recipeOpen(f Facts) []Open {
	if !f.HasRecipe {
		return list{{Sheet: "recipe", Text: "No recipe yet"}}
	}
	return recipeFaults(f)
}

// recipeFaults are wrong before and after the release: they stand on the
// viewers' page and on the card.
func recipeFaults(f Facts) []Open {
	var l list
	l.when(f.UnreadLines > 0, "recipe", count(f.UnreadLines, "line of the recipe not read", "lines of the recipe not read"))
	l.when(f.Questions > 0, "recipe", count(f.Questions, "question about the recipe to answer", "questions about the recipe to answer"))
	return l
}

func trialsOpen(f Facts) []Open {
	tried := f.Proved + f.Nearly + f.NotYet
	var l list
	switch {
	case !f.HasRecipe:
		return nil
	case tried == 0 && f.OtherTrials > 0:
		l.when(true, "trials", "This version never tried; earlier ones were")
	case tried == 0:
		l.when(true, "trials", "Never tried at the bench")
	default:
		l.when(f.Proved == 0, "trials", count(tried, "trial, none proved", "trials, none proved"))
		l.when(!f.TriedAtScale, "trials", "Never tried at this scale")
	}
	return l
}

func shopOpen(f Facts) []Open {
	var l list
	switch {
	case f.Batches == 0:
		l.when(true, "shop", "No batches planned")
	case f.ShootBatches == 0:
		l.when(true, "shop", "No batch planned for the shoot")
	}
	l.when(f.ToBuy > 0, "shop", count(f.ToBuy, "thing to buy", "things to buy"))
	return l
}

func scriptOpen(f Facts) []Open {
	if f.Segments == 0 {
		return list{{Sheet: "script", Text: "No segments in the running order"}}
	}
	var l list
	l.when(f.WithoutNarration > 0, "script", count(f.WithoutNarration, "segment without narration", "segments without narration"))
	if text, off := offTarget(f); off {
		l.when(true, "script", text)
	}
	return l
}

// offTarget compares the running order with the target. A tenth of the target
// either way passes: a script is not cut to the second (common practice, no
// source). Segments without any length yet make a short script no news.
func offTarget(f Facts) (text string, off bool) {
	target := f.TargetMinutes * 60
	over := f.PlannedSeconds - target
	switch {
	case target == 0:
		return "", false
	case over*10 > target:
		return fmt.Sprintf("Script runs %s over the target of %d min", Timecode(over), f.TargetMinutes), true
	case over*10 < -target && f.WithoutNarration == 0:
		return fmt.Sprintf("Script runs %s under the target of %d min", Timecode(-over), f.TargetMinutes), true
	}
	return "", false
}

func shotsOpen(f Facts) []Open {
	if f.Shots == 0 {
		return list{{Sheet: "shots", Text: "No shot list"}}
	}
	var l list
	l.when(f.Missing > 0, "shots", count(f.Missing, "shot missing", "shots missing"))
	l.when(f.ToRetake > 0, "shots", count(f.ToRetake, "shot to retake", "shots to retake"))
	return l
}

func cutOpen(f Facts) []Open {
	var l list
	switch {
	case !f.HasCut:
		l.when(true, "cut", "No cut yet")
	case !f.HasCaptions:
		l.when(true, "cut", "The cut has no captions")
	}
	return append(l, cutFaults(f)...)
}

// cutFaults are wrong before and after the release: viewers hear them.
func cutFaults(f Facts) []Open {
	var l list
	if f.Findings > 0 {
		l = append(l, Open{"cut", count(f.Findings, "thing said otherwise than written", "things said otherwise than written"), true})
	}
	return l
}

func releaseOpen(f Facts) []Open {
	var l list
	l.when(!f.HasTitle, "release", "No release title")
	l.when(!f.HasOpening, "release", "The description has no opening line")
	l = append(l, releaseFaults(f)...)
	l.when(!f.ShareLinkLive, "release", "No share link for viewers")
	return l
}

// releaseFaults are wrong before and after the release.
func releaseFaults(f Facts) []Open {
	var l list
	l.when(f.TitleOver > 0, "release", count(f.TitleOver, "character over the title limit", "characters over the title limit"))
	l.when(f.DescriptionOver > 0, "release", count(f.DescriptionOver, "character over the description limit", "characters over the description limit"))
	l.when(f.UnsureAllergens > 0, "release", "Allergens not known for "+count(f.UnsureAllergens, "food", "foods"))
	return l
}

// afterRelease is what only a released episode can lack.
func afterRelease(f Facts) []Open {
	var l list
	l.when(!f.HasVideoURL, "release", "The video's address is missing")
	l.when(!f.ShareLinkLive, "release", "No live share link: viewers cannot open the recipe page")
	return l
}

// list is the open things of one sheet as they are gathered.
type list []Open

func (l *list) when(is bool, sheet, text string) {
	if is {
		*l = append(*l, Open{Sheet: sheet, Text: text})
	}
}

func count(n int, one, many string) string {
	if n == 1 {
		return "1 " + one
	}
	return fmt.Sprintf("%d %s", n, many)
}
