package io.github.bedjoint.labour;

/** What does the work of a task. A machine's time does not shrink with the crew, and only a share of it is attended. */
public enum Machine {
    /** Hands: people, with whatever tools they hold. */
    NONE,
    /** The printer. */
    PRINTER,
    /** The laminator. */
    LAMINATOR
}
