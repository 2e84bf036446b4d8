// Package larder checks the larder's tables against the USDA National Nutrient
// Database for Standard Reference, Release 26, row by row, and can fill their
// figures in from it.
//
// A food whose source is "USDA SR 20081" must hold per 100 g what that row of
// the database says, and each of its weights from there must be the database's
// grams divided by its amount. A food "estimate, as USDA SR 20081" is held to
// the same figures: what is estimated is only that they are its own too.
package larder
