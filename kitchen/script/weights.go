package script

// A cut is parted among its segments by weighing every way to do so: the
// exponential of the sum of what speaks for it is how likely it is among all
// others. What a piece of evidence weighs was learned from the first 36 cuts in
// kitchen/verify/testdata/cuts and from what can be made of them: without
// narration; without pauses, with short ones, with long ones where nothing
// begins; without punctuation; with words misheard, talk put in, segments
// shortened, left out or put in another order. Weights are such that the true
// parting is as likely as can be: a conditional random field (J. Lafferty,
// A. McCallum, F. Pereira, ICML 2001) over segments instead of words (S. Sarawagi,
// W. Cohen, NIPS 17, 2004). The figures are rounded. Such weights, learned from
// three quarters of the cuts, put 287 of 292 segments within three seconds in the
// other quarters; those here, learned from all, as many. With what was learnt since of
// how segments begin (opening.go) none of them, made greater or less, finds more than
// three of 3,309 segments more.

// calm is how much of its weight evidence keeps. Words that are near each other
// say the same thing twice, so that their sum claims to be surer than it is.
const calm = 0.8

// What the words of a cut say of the segment under way.
const (
	perHeld  = 0.52 // of a word's weight, where the narration holds it
	perTitle = 0.58 // of the weight of a title's word, where there is no narration
	perStep  = 0.69 // and of a word of the steps it likely shows
	perPair  = 0.45 // two words that follow each other as in the narration
	perThree = 1.8  // three, of all words, shared among the times they are said
)

// What the words behind a spot say of a segment that begins there.
const (
	perAnnounced = 1.3  // of the weight of a title's word, less for later ones
	perSoon      = 0.34 // of a narration's word, much less for later ones
	perSoonStep  = 1.85 // of a word of the steps, likewise
	announcing   = 20   // words that announce a title
	announced    = 16.0 // after so many they announce it by a third
	soon         = 8    // words that show that a narration has begun
	soonest      = 4.0  // after so many they show it by a third
)

// What the order and the lengths say.
const (
	perAstray  = 0.235 // the square of how far off its expected beginning, in deviations
	perLength  = 1.0   // the square of how far off its expected length, in deviations
	mostOff    = 8.0   // such squares at most: the order may be another, the talk longer
	deviation  = 0.5   // of a segment's length, as a share of it
	costSkip   = 0.66  // a segment passed over
	costJump   = 5.25  // going to any other, as when the cut has another order
	dearJump   = 7.5   // the same where a segment is likely taken up twice
	oftenTwice = 0.5   // so likely
	oneByOne   = 3     // so many ahead at most are passed over, not jumped
)
