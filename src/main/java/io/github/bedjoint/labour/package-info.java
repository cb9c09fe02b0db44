/**
 * Floor 5: how long the work takes and how many people and days it needs.
 *
 * <p>A {@link io.github.bedjoint.labour.TaskTable} says how fast each {@link io.github.bedjoint.labour.Task} goes per unit of its
 * {@link io.github.bedjoint.labour.Driver}; {@link io.github.bedjoint.labour.Amounts} say how much of each driver a place has;
 * {@link io.github.bedjoint.labour.Labour} multiplies, adds allowances, divides by the crew and counts the days.
 */
@NullMarked
package io.github.bedjoint.labour;

import org.jspecify.annotations.NullMarked;
