// Package recipe reads recipes as people write them, and computes with what it
// read: scaling, what changed between versions, writing lines for hands.
//
// No line is ever dropped and no amount invented: what cannot be read is kept
// as written and marked not read, with the reason.
package recipe
