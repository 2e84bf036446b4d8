// Package food is the larder's knowledge: what foods are called, what a
// measure of each weighs, its water, nutrients, allergens, aisle and packs.
// The facts themselves stand in seed/; this room reads and answers.
package food
