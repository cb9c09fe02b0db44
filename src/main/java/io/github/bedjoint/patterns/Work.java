package io.github.bedjoint.patterns;

/** Counts work done against a limit, so that a search ends at the same point on every machine. */
public final class Work {

    private final long limit;
    private long spent;

    public Work(long limit) {
        this.limit = limit;
    }

    public void spend(long steps) {
        spent += steps;
    }

    public boolean isOver() {
        return spent >= limit;
    }

    public long spent() {
        return spent;
    }

    public long left() {
        return Math.max(0, limit - spent);
    }

    /** A part of what is left; its work must be given back with {@link #take}. */
    public Work part(long most) {
        return new Work(Math.max(0, Math.min(most, limit - spent)));
    }

    public void take(Work part) {
        spent += part.spent;
    }
}
