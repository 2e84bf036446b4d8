// Package demo is Ferry Stop Kitchen, a whole show to look at: a host who cooks
// the dishes of the stops along a ferry line. Host, line, stops and viewers are
// invented; the recipes are real and work when cooked. README.md beside this
// file says how each was checked.
//
// What is prose stands in text files: recipes as a cook would paste them,
// narration as blocks of a title and its words, briefs' notes in Markdown,
// captions in WebVTT. What is a table stands in Go, one file an episode.
package demo
