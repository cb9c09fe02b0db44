package io.github.bedjoint.schedule;

/**
 * A wait that holds up the hand-over: a link's least time, or an activity that runs on the clock without work.
 *
 * @param what  the activity, or the two that the link joins
 * @param title what is waited for, for a reader
 * @param span  how long
 */
public record Wait(String what, String title, Span span) {}
