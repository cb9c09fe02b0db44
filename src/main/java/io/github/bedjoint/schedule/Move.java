package io.github.bedjoint.schedule;

import java.time.ZonedDateTime;

/**
 * An activity that starts, or only ends, at another moment than it did.
 *
 * @param activity its id
 * @param before   when it started
 * @param after    when it starts now
 */
public record Move(String activity, ZonedDateTime before, ZonedDateTime after) {}
