package views

import "strings"

// ReleaseSheet is what is published.
type ReleaseSheet struct {
	Page
	EpisodeFrame
	Form            Form     // title, opening, equipment, credits, disclosure, video address
	Description     string   // the block as it will be pasted
	Count           string   // "1,204 of 5,000 characters"
	Over            bool     // longer than the platform allows
	CutFirst        []string // what to cut if it is over
	Chapters        []Chapter
	ChapterProblems []string
	Corrections     []AirRow
	CorrectionForm  Form // add one, or change one
	Cautions        []Caution
	Allergens       Allergens
	Shares          []ShareRow
	ShareForm       Form   // makes a link
	NewShare        string // the address just made, shown this once; "" otherwise
	PageURL         string // the viewers' address that the description gives; "" for none
	Cards           []CardLink
}

// Chapter is one chapter of the video.
type Chapter struct {
	At    string // "0:00"
	Title string
}

// AirRow is something wrong on air, and what is right.
type AirRow struct {
	At           string // "4:12"
	Said         string
	Right        string
	EditPath     string
	DeleteAction string
}

// Caution is one caution with the source it stands on.
type Caution struct {
	Text   string
	Source string // "FDA Food Code 2022, 3-401.11"; "" if none is shown
}

// Allergens says what the recipe contains by each list it was checked against.
type Allergens struct {
	Lists  []AllergenList
	Unsure []string // foods the larder cannot answer for
}

// AllergenList is the answer under one law.
type AllergenList struct {
	Law   string // "EU 14", "US 9", "AU and NZ"
	Names string // "wheat (gluten), milk"; "none found"
}

// ShareRow is one link that viewers can have.
type ShareRow struct {
	Made         string // "2 Mar", in the gutter
	Label        string // "for the newsletter"
	Seen         string // "opened 41 times, last 4 Mar"; "" if not counted
	RevokeAction string
}

// CardLink is one size of the printed card.
type CardLink struct {
	Size    string // "A5", in the gutter
	Path    string // the print page
	PDFPath string
}

// descriptionGutter counts the description, red if it is too long.
func descriptionGutter(p ReleaseSheet) Gutter {
	if p.Over {
		return Gutter{Text: p.Count, Small: "too long", Mark: MarkWrong}
	}
	return Gutter{Text: p.Count}
}

// series puts things in a row as a sentence does: "a, b and c".
func series(all []string) string {
	if len(all) < 2 {
		return strings.Join(all, "")
	}
	return strings.Join(all[:len(all)-1], ", ") + " and " + all[len(all)-1]
}
