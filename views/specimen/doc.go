// Package specimen draws every page and every part from fixed data, without a
// store or a request. Screenshots, accessibility checks and golden files all
// use it, so that what is looked at is what is tested.
//
// The show is an invention: Ferry Stop Kitchen cooks the dishes of the stops
// along the Lantern Line, a ferry that runs nowhere.
package specimen
