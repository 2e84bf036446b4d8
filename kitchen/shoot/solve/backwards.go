package solve

import (
	"context"

	"benchproof/kitchen/shoot/project"
)

// Backwards plans p so that all of it has ended by the minute finish, 0 or more,
// and it begins as late as can be. The starts are those of p; Makespan and Bound
// are the minutes from the begin to finish: no plan takes fewer than Bound.
//
// Errors are those of Turned and of Plan, which then tell no minutes.
func Backwards(ctx context.Context, p project.Project, finish int, o Options) (Result, error) {
	turned, err := Turned(p, finish)
	if err != nil {
		return Result{}, err
	}
	r, err := Plan(ctx, turned, o)
	if err != nil {
		return Result{}, err
	}
	r.Starts = p.MirrorStarts(r.Starts, finish)
	return r, nil
}

// Turned is the project whose plans, read from finish backwards, are those of a
// checked p that end by then. The error is a *project.Refusal: p cannot.
func Turned(p project.Project, finish int) (project.Project, error) {
	if least := Bound(p); least > finish {
		return project.Project{}, project.Refuse("finish", nil, "The day takes until %v at least, so it cannot finish by %v. Finish later or make some of it ahead.",
			project.Minute(least), project.Minute(finish))
	}
	return p.Mirror(finish), nil
}
