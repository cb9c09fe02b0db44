/**
 * Floor 1: formulas, where they come from, and the working that shows how a figure came about.
 *
 * <p>A {@link io.github.bedjoint.working.Formula} stands next to the one method that computes it. A result keeps its inputs and
 * figures; {@link io.github.bedjoint.working.Explained#working()} lays them out only when asked, reading the stored figures, so the
 * values shown are the values used.
 */
@NullMarked
package io.github.bedjoint.working;

import org.jspecify.annotations.NullMarked;
