/**
 * Floor 6: from lines to a price.
 *
 * <p>A line is a quantity times a rate of the same kind, rounded once. A {@link io.github.bedjoint.price.PriceBuildUp} adds overhead,
 * contingency, margin or markup, minimum, discount and tax in that order; every sum is a sum of rounded amounts, so the page adds up.
 */
@NullMarked
package io.github.bedjoint.price;

import org.jspecify.annotations.NullMarked;
