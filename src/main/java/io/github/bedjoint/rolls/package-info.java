/**
 * Chooses the rolls to open and cuts the panels from them, and proves how cheap that can be.
 *
 * <p>{@link io.github.bedjoint.rolls.RollPlanner} finds a plan; {@link io.github.bedjoint.rolls.PlanChecker} accepts or
 * refuses any plan, also one made by hand, and shares no code with the planner. All lengths are whole steps of 12.5
 * micrometres and all money is whole minor units, so that nothing in here depends on rounding.
 */
@NullMarked
package io.github.bedjoint.rolls;

import org.jspecify.annotations.NullMarked;
