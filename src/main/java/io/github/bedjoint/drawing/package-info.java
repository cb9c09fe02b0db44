/**
 * Floor 12: drawings of a job in SVG, in true scale, and the job as one page of HTML that needs no script and no network.
 *
 * <p>Drawings read in black and white: kinds are told apart by hatching and words, colour only helps.
 */
@NullMarked
package io.github.bedjoint.drawing;

import org.jspecify.annotations.NullMarked;
