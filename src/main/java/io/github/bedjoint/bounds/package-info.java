/**
 * Floor 8: a job of rolls in the numbers of {@link io.github.bedjoint.patterns.Model}, and the choices of rolls that price lists
 * leave to it, so that no plan costs less than the cheapest of them. Not exported.
 */
@NullMarked
package io.github.bedjoint.bounds;

import org.jspecify.annotations.NullMarked;
