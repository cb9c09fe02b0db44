/**
 * Floor 12: a job as JSON, read and written, and its result as JSON. Needs Jackson's streaming core, which an embedder adds only when
 * this package is used.
 *
 * <p>A job file is read whole or refused: an unknown, missing or wrong field is a
 * {@link io.github.bedjoint.units.RefusedException} with the field's path, its value and line, and what was expected.
 */
@NullMarked
package io.github.bedjoint.jobfile;

import org.jspecify.annotations.NullMarked;
