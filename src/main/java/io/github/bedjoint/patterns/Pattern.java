package io.github.bedjoint.patterns;

/** One roll of a type with the panels cut from it, as a count of each panel. */
public record Pattern(int type, int[] counts) {}
