// Package project is the plain scheduling problem beneath the shoot day: tasks
// that run without a break, shortest and longest waits between them, stations
// of limited capacity that may change over the day, fixed moments, forbidden
// times, and the set-up between film tasks. It knows no recipes and no clock:
// times are whole minutes from zero.
//
// In the literature this is the resource-constrained project scheduling problem
// with minimal and maximal time lags (PS | temp | Cmax) and calendars; see
// R. Kolisch and A. Sprecher, "PSPLIB – A project scheduling problem library",
// EJOR 96 (1996), and K. Neumann, C. Schwindt and J. Zimmermann, "Project
// Scheduling with Time Windows and Scarce Resources" (2003; from memory).
//
// Check finds what is wrong with a project before anybody solves it. Mirror
// turns time around, so that planning backwards from a finish is planning
// forwards.
package project
