package io.github.bedjoint.working;

/** A result that can show how it came about. */
public interface Explained {
    /**
     * The working of this result, built from the figures it stores; nothing is computed again.
     *
     * @return the formula, the values put in and the working of those values in turn
     */
    Working working();
}
