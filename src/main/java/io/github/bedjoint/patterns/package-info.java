/**
 * Floor 6: the cheapest way to cut panels from rolls, one across, with prices that show how cheap it can be: whole numbers in a
 * {@link io.github.bedjoint.patterns.Model}, and nothing of ours but that. Not exported.
 */
@NullMarked
package io.github.bedjoint.patterns;

import org.jspecify.annotations.NullMarked;
