/**
 * Floor 3: may the film be applied here, today, and what the crew must mind: verdicts with reasons and sources, and the usual cautions.
 *
 * <p>Nothing here replaces the film's data sheet, local codes or a licensed person; each rule says to whom it defers.
 */
@NullMarked
package io.github.bedjoint.conditions;

import org.jspecify.annotations.NullMarked;
