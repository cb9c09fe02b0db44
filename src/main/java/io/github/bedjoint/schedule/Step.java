package io.github.bedjoint.schedule;

/** One activity on the open hours: where it may start and when it ends. All moments are seconds of the epoch. */
final class Step {
    final Activity activity;
    private final OpenHours hours;
    private final long length;
    private final boolean shift;
    private final boolean unbroken;

    Step(Activity activity, OpenHours hours) {
        this.activity = activity;
        this.hours = hours;
        this.length = activity.duration().seconds();
        this.shift = activity.duration().base() == TimeBase.SHIFT && length > 0;
        this.unbroken = shift && activity.isUnbroken();
    }

    /** The first moment, not before another, at which it may start. */
    long start(long from) {
        if (from >= OpenHours.NEVER) {
            return OpenHours.NEVER;
        }
        return unbroken ? hours.fits(from, length) : shift ? hours.nextOpen(from) : from;
    }

    /** When it ends that starts at a moment. */
    long end(long start) {
        if (start >= OpenHours.NEVER) {
            return OpenHours.NEVER;
        }
        return shift ? hours.add(start, length) : start + length;
    }

    /** The first start whose end is not before a moment. */
    long startToEndAt(long least) {
        if (!shift) {
            return least - length;
        }
        return unbroken ? hours.fits(least - length, length) : start(hours.firstReaching(least, length));
    }

    /** The last start that is not after a moment and whose end is not after another. */
    long lastStart(long startBy, long endBy) {
        if (!shift) {
            return Math.min(startBy, endBy - length);
        }
        return unbroken
                ? hours.lastFits(startBy, endBy, length)
                : hours.lastOpen(Math.min(startBy, hours.lastWithin(endBy, length)));
    }

    /** A moment on the clock of this activity. */
    long clock(long moment) {
        return shift ? hours.worked(moment) : moment;
    }

    /** When a span is over that begins at a moment. */
    static long after(OpenHours hours, long moment, Span span) {
        return span.base() == TimeBase.SHIFT ? hours.add(moment, span.seconds()) : moment + span.seconds();
    }

    /** The first moment from which a span reaches another. */
    static long firstReaching(OpenHours hours, long moment, Span span) {
        return span.base() == TimeBase.SHIFT ? hours.firstReaching(moment, span.seconds()) : moment - span.seconds();
    }

    /** The last moment from which a span does not pass another. */
    static long lastWithin(OpenHours hours, long moment, Span span) {
        return span.base() == TimeBase.SHIFT ? hours.lastWithin(moment, span.seconds()) : moment - span.seconds();
    }
}
