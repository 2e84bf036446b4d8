// Package speech finds numbers in what somebody says, as speech recognisers and
// captioners write it: "two hundred grams", "200g", "a cup and a half", "ten to
// twelve minutes", "one eighty fan", with or without punctuation, over the ends
// of captions, with the fillers of speech in between.
//
// Text cuts captions into words, Find gives the amounts, times, heats, lengths,
// counts and shares among them. What a number is about is for others to say.
package speech
