/**
 * Floor 3: the walls as surveyed. What a wall is (outline, openings, edges, access, surface), how large it is, and whether a film
 * follows its surface.
 *
 * <p>Geometry is counted in whole {@linkplain io.github.bedjoint.units.Steps steps}, so that questions of inside and outside have
 * exact answers; areas are square metres.
 */
@NullMarked
package io.github.bedjoint.survey;

import org.jspecify.annotations.NullMarked;
