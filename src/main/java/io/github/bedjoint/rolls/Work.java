package io.github.bedjoint.rolls;

/** Counts work done against a limit, so that a search ends at the same point on every machine. */
final class Work {

    private final long limit;
    private long spent;

    Work(long limit) {
        this.limit = limit;
    }

    void spend(long steps) {
        spent += steps;
    }

    boolean isOver() {
        return spent >= limit;
    }

    long spent() {
        return spent;
    }

    long left() {
        return Math.max(0, limit - spent);
    }

    /** A part of what is left; its work must be given back with {@link #take}. */
    Work part(long most) {
        return new Work(Math.max(0, Math.min(most, limit - spent)));
    }

    void take(Work part) {
        spent += part.spent;
    }
}
