/**
 * Floor 0: lengths, areas, times, prices and how they are read, checked, converted and printed.
 *
 * <p>Inside Bedjoint a number is a {@code double} in an inner unit (metre, square metre, second, kilogram, kelvin) with the
 * unit in its name, a {@code long} count of {@linkplain io.github.bedjoint.units.Steps steps}, or decimal money. At the
 * door it is a JSR-385 {@code Quantity}; {@link io.github.bedjoint.units.Door} converts once and refuses what cannot be.
 */
@NullMarked
package io.github.bedjoint.units;

import org.jspecify.annotations.NullMarked;
