// Package method reads one instruction of a recipe's method: how long it
// takes, whether hands are needed, where it happens, how hot, and the sign that
// it is done. It knows the kitchen's verbs and nothing of ingredients.
package method
