package io.github.bedjoint.rolls;

/** Why a search for a roll plan ended. */
public enum Stop {
    /** The cost equals the lower bound, and the certificate shows that nothing is cheaper. */
    PROVEN,
    /** The counted work was used up; the plan is valid and the gap says what may still be gained. */
    WORK_LIMIT,
    /** No plan exists; the shortages say why. */
    INFEASIBLE,
    /** The counted work was used up before any plan was found, and none was shown to be impossible. */
    NO_PLAN_FOUND
}
