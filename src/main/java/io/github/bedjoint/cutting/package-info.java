/**
 * Floor 9: chooses the rolls to open and cuts the panels from them, and says how cheap that can be and why.
 *
 * <p>{@link io.github.bedjoint.cutting.RollPlanner} finds a plan; {@link io.github.bedjoint.checker.PlanChecker} goes through it again.
 */
@NullMarked
package io.github.bedjoint.cutting;

import org.jspecify.annotations.NullMarked;
