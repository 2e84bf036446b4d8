// Package same tells whether what is said is what is written, within rounding
// and across units.
//
// Two values are the same if they are equal exactly in one unit, within 3 %
// between units of mass or between units of volume whose size does not depend on
// a system, 8 % where it does, 15 % between mass and volume, 35 % between pieces
// and weights, and 12 % more where either side says "about". A said value is the
// same as a written range that holds it; a said range as a written range that
// holds it, and as a single written value that it holds. Two ranges that only
// overlap are not the same, but for "overnight". An oven's setting is any of the
// settings written together, or what the published table makes of one.
package same
