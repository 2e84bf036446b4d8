// Package tin knows the moulds and tins that recipes name: "23 cm round", "9 x
// 5 x 3 in loaf", and what they hold by geometry. Real tins slope and are
// rounded and hold a little less; the ratio of two is what recipes need.
package tin
