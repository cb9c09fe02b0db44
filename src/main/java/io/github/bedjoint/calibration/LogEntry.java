package io.github.bedjoint.calibration;

import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import java.time.LocalDate;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * A job that was done: what there was to do and the hours it took.
 *
 * @param job     its name
 * @param amounts what there was to do
 * @param hoursS  paid hours in seconds, all people together, 0 to 1e9
 * @param weight  how much it counts, more than 0 and at most 1e9; 1 is normal
 * @param date    when it was done, if known
 */
public record LogEntry(String job, Amounts amounts, double hoursS, double weight, Optional<LocalDate> date) {
    private static final Range HOURS = Range.closed(0, 1e9);

    /**
     * Checks every part.
     *
     * @param job     its name
     * @param amounts what there was to do
     * @param hoursS  paid hours in seconds, all people together, 0 to 1e9
     * @param weight  how much it counts, more than 0 and at most 1e9; 1 is normal
     * @param date    when it was done, if known
     * @throws io.github.bedjoint.units.RefusedException if a part cannot be accepted
     */
    public LogEntry {
        job = Door.text("job", job);
        Door.in(Measure.TIME, hoursS, "hours of job " + job, HOURS);
        Door.number("weight of job " + job, weight, Range.above(0, 1e9));
    }

    /**
     * A job without date, of normal weight.
     *
     * @param job     its name
     * @param amounts what there was to do
     * @param hours   paid hours, all people together
     * @return the entry
     * @throws io.github.bedjoint.units.RefusedException if a part cannot be accepted
     */
    public static LogEntry of(String job, Amounts amounts, Quantity<Time> hours) {
        return new LogEntry(job, amounts, Door.timeS("hours of job " + job, hours, HOURS), 1, Optional.empty());
    }

    /**
     * The same with another weight.
     *
     * @param counts more than 0 and at most 1e9
     * @return a new entry
     */
    public LogEntry withWeight(double counts) {
        return new LogEntry(job, amounts, hoursS, counts, date);
    }
}
