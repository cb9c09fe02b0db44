/**
 * Floor 2: films, laminates, inks and the rolls on offer, with the limits the data sheets give and the source of every default.
 *
 * <p>Nothing here knows a wall. Lengths that layout and rolls count in are whole {@linkplain io.github.bedjoint.units.Steps
 * steps}.
 */
@NullMarked
package io.github.bedjoint.film;

import org.jspecify.annotations.NullMarked;
