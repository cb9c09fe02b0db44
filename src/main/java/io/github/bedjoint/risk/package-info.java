/**
 * Floor 11: how sure a job's figures are. Inputs get ranges, the job is costed many times, and percentiles and shares come out.
 *
 * <p>Needs the optional commons-statistics-distribution and commons-rng-simple.
 */
@NullMarked
package io.github.bedjoint.risk;

import org.jspecify.annotations.NullMarked;
