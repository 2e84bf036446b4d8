package arrows

import (
	"fmt"
	"slices"
	"strings"
)

// Package is one package of the module, as go list describes it.
type Package struct {
	Path        string   // import path: "benchproof/kitchen/food"
	Imports     []string // what its own files import
	TestImports []string // what its tests import, those from outside it too
}

// Check gives a sentence for every import that runs against the plan, in the
// order of the packages. Module is the module's path. A room that the plan does
// not know is told of too.
//
// Tests keep to the same plan, with the few freedoms that the plan gives them.
func Check(module string, packages []Package) []string {
	var problems []string
	for _, p := range packages {
		from, ours := inside(module, p.Path)
		if !ours {
			continue
		}
		if !known(from) {
			problems = append(problems, fmt.Sprintf("%s: the plan of the house has no such room: give it a place in cmd/check/arrows/plan.go", from))
			continue
		}
		for _, to := range p.Imports {
			problems = append(problems, judge(module, from, to, false)...)
		}
		for _, to := range p.TestImports {
			problems = append(problems, judge(module, from, to, true)...)
		}
	}
	return problems
}

// judge gives what is wrong with one import, nothing when it is right.
func judge(module, from, to string, test bool) []string {
	here := from
	if test {
		here = "a test of " + from
	}
	target, ours := inside(module, to)
	switch {
	case !ours && test && below(to, testsMayKnow[room(from)]):
		return nil
	case !ours && below(to, banned[room(from)]):
		return []string{fmt.Sprintf("%s imports %s, which %s must not know", here, to, room(from))}
	case !ours || target == from:
		return nil
	case test && below(target, testsMayToo[room(from)]):
		return nil
	case room(from) == "kitchen" && room(target) == "kitchen":
		return floorsBetween(here, from, target)
	case slices.Contains(may[room(from)], room(target)) || room(from) == room(target) && room(from) != "kitchen":
		return nil
	}
	return []string{fmt.Sprintf("%s imports %s: arrows run cmd → web → {views, store} → kitchen", here, target)}
}

func floorsBetween(here, from, target string) []string {
	a, b := floor(from), floor(target)
	switch {
	case kitchenRoom(from) == kitchenRoom(target):
		return nil // parts of one room
	case a > b:
		return nil
	case a == b:
		return []string{fmt.Sprintf("%s imports %s: the two stand side by side on one floor", here, target)}
	}
	return []string{fmt.Sprintf("%s imports %s, which is on a higher floor", here, target)}
}

// inside tells whether a path belongs to the module, and its path within.
func inside(module, path string) (string, bool) {
	if path == module {
		return ".", true
	}
	return strings.CutPrefix(path, module+"/")
}

// room is the first name of a path within the module.
func room(path string) string {
	first, _, _ := strings.Cut(path, "/")
	return first
}

// kitchenRoom gives "recipe" for "kitchen/recipe" and for what lies below it.
func kitchenRoom(path string) string { return room(strings.TrimPrefix(path, "kitchen/")) }

// floor counts from 0 at the ground; -1 is a kitchen room without a floor.
func floor(path string) int {
	name := kitchenRoom(path)
	return slices.IndexFunc(floors, func(rooms []string) bool { return slices.Contains(rooms, name) })
}

func known(path string) bool {
	if room(path) == "kitchen" {
		return floor(path) >= 0
	}
	_, ok := may[room(path)]
	return ok
}

// below tells whether a path is one of the roots or lies under one.
func below(path string, roots []string) bool {
	return slices.ContainsFunc(roots, func(root string) bool {
		return path == root || strings.HasPrefix(path, root+"/")
	})
}
