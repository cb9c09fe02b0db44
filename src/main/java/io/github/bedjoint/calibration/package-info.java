/**
 * Floor 6: paces fitted to the shop's own job log.
 *
 * <p>A {@link io.github.bedjoint.calibration.JobLog} goes through {@link io.github.bedjoint.calibration.Calibration}; the
 * {@link io.github.bedjoint.calibration.PaceFit} says the paces, how sure they are, whether the log can tell its drivers apart, and whether the new
 * paces foretell a job better than those in use. Needs ojAlgo and Apache Commons Statistics, which are optional dependencies of Bedjoint.
 */
@NullMarked
package io.github.bedjoint.calibration;

import org.jspecify.annotations.NullMarked;
