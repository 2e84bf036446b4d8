// Package script times narration at the host's pace, keeps the running order,
// and reads captions.
package script
