package io.github.bedjoint.schedule;

/** What there is only so much of, and what two activities can therefore not use at once. */
public enum Resource {
    /** People of the crew. */
    PEOPLE,
    /** Printers. */
    PRINTER,
    /** Laminators. */
    LAMINATOR
}
