// Package safety holds published limits for holding, cooling and cooking food,
// and the cautions that go with a recipe. Every caution defers to the local
// authority; none is a guarantee.
package safety
