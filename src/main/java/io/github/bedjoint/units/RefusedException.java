package io.github.bedjoint.units;

/**
 * A value that was refused at the door: which parameter, the value as given, the limit it broke, and a hint.
 *
 * <p>Thrown for input that is wrong whatever the rest of the job is. A job that is well formed but cannot be done is a
 * result with reasons, never this exception.
 */
public final class RefusedException extends IllegalArgumentException {
    private static final long serialVersionUID = 1L;

    /** The name of the parameter. */
    private final String parameter;
    /** The value, printed with its unit. */
    private final String value;
    /** What was expected. */
    private final String limit;
    /** What to do about it, or empty. */
    private final String hint;

    /**
     * Makes the refusal; its message reads "parameter is value, but limit. hint".
     *
     * @param parameter the name of the parameter as the caller knows it
     * @param value     the value as given, with its unit
     * @param limit     what was expected, as the end of a sentence: "must be more than 0 m"
     * @param hint      advice that begins "Maybe", or an empty text
     */
    public RefusedException(String parameter, String value, String limit, String hint) {
        super(parameter + " is " + value + ", but " + limit + "." + (hint.isEmpty() ? "" : " " + hint));
        this.parameter = parameter;
        this.value = value;
        this.limit = limit;
        this.hint = hint;
    }

    /**
     * The same refusal seen from further out: the parameter's name gets a prefix, as in {@code walls[0].width}.
     *
     * @param prefix what to put before the parameter's name
     * @return the refusal with the longer name
     */
    public RefusedException within(String prefix) {
        RefusedException outer = new RefusedException(prefix + parameter, value, limit, hint);
        outer.setStackTrace(getStackTrace());
        return outer;
    }

    /**
     * The parameter that was refused.
     *
     * @return its name
     */
    public String parameter() {
        return parameter;
    }

    /**
     * The value as it was given.
     *
     * @return the value with its unit
     */
    public String value() {
        return value;
    }

    /**
     * The limit that the value broke.
     *
     * @return the end of a sentence, such as "must be more than 0 m"
     */
    public String limit() {
        return limit;
    }

    /**
     * What may help.
     *
     * @return advice that begins "Maybe", or an empty text
     */
    public String hint() {
        return hint;
    }
}
