package io.github.bedjoint.rolls;

/** One roll of a type with the panels cut from it, as a count of each panel. */
record Pattern(int type, int[] counts) {}
