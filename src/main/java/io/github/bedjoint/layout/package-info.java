/**
 * Floor 4: how the film is divided into panels on a wall: how many, where the seams run, what is cut, and where each part of a
 * panel ends up.
 *
 * <p>Vertical drops and horizontal bands are one computation, done in a {@code Frame} that turns and mirrors the wall. Lengths are
 * whole {@linkplain io.github.bedjoint.units.Steps steps}, so that counts are exact.
 */
@NullMarked
package io.github.bedjoint.layout;

import org.jspecify.annotations.NullMarked;
