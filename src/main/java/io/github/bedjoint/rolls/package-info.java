/**
 * Floor 5: panels to cut, rolls in stock, how a shop cuts, and the plan that comes of it with the certificate of its lower bound.
 *
 * <p>{@link io.github.bedjoint.cutting.RollPlanner} finds a plan; {@link io.github.bedjoint.checker.PlanChecker} accepts or refuses
 * any plan. All lengths are whole steps of 12.5 micrometres and all money is whole minor units, so that nothing here depends on rounding.
 */
@NullMarked
package io.github.bedjoint.rolls;

import org.jspecify.annotations.NullMarked;
