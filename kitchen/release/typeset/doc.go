// Package typeset breaks runs of text into lines for the printed card, and
// finds for every character a font that has it.
//
// It knows no PDF: widths come from whoever draws.
package typeset
