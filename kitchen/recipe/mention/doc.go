// Package mention finds where a text speaks of things from a list by name: the
// ingredients in a step's words. "the flour" is found for "strong white flour",
// "the yolks" for "3 large egg yolks".
package mention
