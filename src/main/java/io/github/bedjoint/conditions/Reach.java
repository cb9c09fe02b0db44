package io.github.bedjoint.conditions;

/** How the crew reaches the highest place of the work. */
public enum Reach {
    /** From the ground. */
    GROUND,
    /** From a platform or low working stage. */
    PLATFORM,
    /** From a scaffold. */
    SCAFFOLD,
    /** From a lift. */
    LIFT,
    /** From a ladder. */
    LADDER;

    /**
     * Whether someone may fall.
     *
     * @return true for everything but the ground
     */
    public boolean isHigh() {
        return this != GROUND;
    }
}
