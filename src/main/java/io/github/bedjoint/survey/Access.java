package io.github.bedjoint.survey;

/** How the people reach the wall. */
public enum Access {
    /** Standing on the ground. */
    GROUND,
    /** From a work platform or trestle. */
    PLATFORM,
    /** From a scaffold. */
    SCAFFOLD,
    /** From a powered lift. */
    LIFT,
    /** From a ladder, which is no access for work with a heat source in one hand and a roller in the other. */
    LADDER;

    /**
     * Whether both hands are free for heat and roller.
     *
     * @return false for a ladder only
     */
    public boolean leavesBothHandsFree() {
        return this != LADDER;
    }
}
