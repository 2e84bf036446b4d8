// Package views draws every page. Each page has one plain struct that holds
// exactly what is drawn, already worded and formatted; the templ files only
// loop and branch. The package knows neither the store nor the request.
//
// A page's struct is named after it (SeasonPage, BriefSheet) and the component
// that draws it carries the bare noun (Season, Brief). "Sheet" is a page of an
// episode, drawn inside the episode's frame; "Page" stands on its own. Parts
// of a page are "Row" (one line against the rule), "Block" (a headed group of
// rows) and "List".
//
// Strings named …Action are addresses that a form posts to; …Path are
// addresses a link goes to. An empty one leaves its button or link out. Every
// form field is drawn by Form and Field unless the struct names its fields in
// its comment.
package views
