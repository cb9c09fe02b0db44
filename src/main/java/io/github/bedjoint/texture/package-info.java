/**
 * Floor 2: how much surface a wall has once joints and texture are counted, and how far a film must stretch to follow it.
 *
 * <p>The developed area ratio r is the area along the texture divided by the area seen from the front: 1 + Sdr, with Sdr as ISO 25178-2
 * defines it. Every surface knows how its ratio came about.
 */
@NullMarked
package io.github.bedjoint.texture;

import org.jspecify.annotations.NullMarked;
