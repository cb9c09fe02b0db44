/**
 * Floor 6: where the film that a roll plan opens goes: what is seen on the wall, what is lost and where, and how much a roll covers.
 *
 * <p>The parts of a {@link io.github.bedjoint.waste.WasteAccount} add up to the film opened.
 */
@NullMarked
package io.github.bedjoint.waste;

import org.jspecify.annotations.NullMarked;
