/**
 * Floor 10: the whole job costed. One {@link io.github.bedjoint.job.Job} goes in, one {@link io.github.bedjoint.job.JobCost} comes out.
 */
@NullMarked
package io.github.bedjoint.job;

import org.jspecify.annotations.NullMarked;
