/**
 * Floor 6: accepts or refuses roll plans and their lower bounds, also plans made by hand.
 *
 * <p>Knows what a job and a plan are, and nothing of how a plan is found: what it says does not rest on the search.
 */
@NullMarked
package io.github.bedjoint.checker;

import org.jspecify.annotations.NullMarked;
