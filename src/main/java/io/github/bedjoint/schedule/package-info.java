/**
 * Floor 6: when the work can be done and the wall handed over.
 *
 * <p>A {@link io.github.bedjoint.schedule.Network} of {@linkplain io.github.bedjoint.schedule.Activity activities} and
 * {@linkplain io.github.bedjoint.schedule.Link links} on a {@link io.github.bedjoint.schedule.WorkCalendar} gives a
 * {@link io.github.bedjoint.schedule.Timetable}. Time is counted in whole seconds; a duration with a fraction is rounded up.
 */
@NullMarked
package io.github.bedjoint.schedule;

import org.jspecify.annotations.NullMarked;
