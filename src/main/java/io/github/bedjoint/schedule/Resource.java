package io.github.bedjoint.schedule;

/** What there is only so much of, and what two activities can therefore not use at once. */
public enum Resource {
    /** People of the crew. */
    PEOPLE("person", "people"),
    /** Printers. */
    PRINTER("printer", "printers"),
    /** Laminators. */
    LAMINATOR("laminator", "laminators");

    private final String one;
    private final String many;

    Resource(String one, String many) {
        this.one = one;
        this.many = many;
    }

    /** The word for so many. */
    String words(int count) {
        return count == 1 ? one : many;
    }
}
