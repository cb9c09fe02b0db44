package io.github.bedjoint.schedule;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/**
 * The dates of one activity.
 *
 * @param activity      the activity
 * @param earlyStart    the earliest start
 * @param earlyEnd      the end if it starts at the earliest
 * @param lateStart     the latest start that does not delay the hand-over
 * @param lateEnd       the end if it starts at the latest
 * @param earlyClock    hours of its own clock from the begin to the earliest start
 * @param lateClock     hours of its own clock from the begin to the latest start
 */
public record Slot(
        Activity activity,
        ZonedDateTime earlyStart,
        ZonedDateTime earlyEnd,
        ZonedDateTime lateStart,
        ZonedDateTime lateEnd,
        Duration earlyClock,
        Duration lateClock)
        implements Explained {
    private static final DateTimeFormatter DATE = DateTimeFormatter.ofPattern("EEE yyyy-MM-dd HH:mm", Locale.ROOT);

    static final Formula FLOAT = Formula.of(
            "schedule.total-float",
            "Total float",
            new Symbol("F", Measure.TIME, "total float"),
            "l - e",
            Source.handbook("critical path method: total float is latest start less earliest start"),
            new Symbol("l", Measure.TIME, "latest start, in hours of the activity's own clock from the begin"),
            new Symbol("e", Measure.TIME, "earliest start, in hours of the activity's own clock from the begin"));

    /**
     * How much later it may start without a later hand-over: shift time for work, elapsed time for a wait.
     *
     * @return the total float, zero or more
     */
    public Duration totalFloat() {
        return lateClock.minus(earlyClock);
    }

    /**
     * Whether it has no float.
     *
     * @return true if any delay delays the hand-over
     */
    public boolean isCritical() {
        return totalFloat().isZero();
    }

    @Override
    public Working working() {
        return Working.of(FLOAT, totalFloat().toSeconds(), lateClock.toSeconds(), earlyClock.toSeconds()).whose(activity.title());
    }

    /** When it takes place and what it may slip. */
    @Override
    public String toString() {
        return activity.title() + ": " + DATE.format(earlyStart) + " to " + DATE.format(earlyEnd)
                + (isCritical() ? ", critical" : ", may start " + Measure.TIME.print(totalFloat().toSeconds(), UnitStyle.METRIC) + " later");
    }
}
