// Package measure holds amounts as a kitchen uses them: exact rationals,
// units with their kinds, the measuring systems that give a cup its size,
// oven settings, and the reading and writing of all of these.
//
// Nothing here is rounded before the last step, the writing for hands.
package measure
