// Package oven reads temperatures and oven settings in running text, knows the
// published table of settings, converts between °C, °F, gas and fan, and
// questions settings that are given together and do not agree. Package measure
// names what is here for everybody else.
package oven
