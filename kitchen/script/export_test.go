package script

// Edition is the edition of alignments, for its test.
const Edition = edition
