// Package exact holds the numbers that a kitchen computes with: rationals that
// are never rounded before the last step, ranges of two of them, and how both
// are written. Package measure names them for everybody else.
package exact
