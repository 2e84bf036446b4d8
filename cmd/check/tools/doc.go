// Package tools finds what the tests need from outside the module, and
// installs what is missing where it may: Chromium and fonts, poppler's
// pdftotext, a Java runtime, gcc for the race detector, and two npm packages,
// axe-core and the Nu HTML checker, pinned in package-lock.json beside this
// file.
//
// Nothing of it is part of the program that is shipped.
package tools
