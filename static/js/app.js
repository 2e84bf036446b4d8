// Conveniences only: every page works without this file.
