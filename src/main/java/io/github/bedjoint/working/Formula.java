package io.github.bedjoint.working;

import java.util.List;

/**
 * A formula of Bedjoint: what it gives, its right-hand side as text, its letters, and where it comes from.
 *
 * <p>The text is for people and for the tests, which evaluate it with the stored values and walk it with units; the library itself
 * never evaluates it. It is written with {@code + - * / ^ ( )}, the functions {@code abs acos asin atan ceil cos exp floor ln max min sin sqrt sum
 * tan}, {@code round_half_up(x, decimals)} and its like for each rounding mode, {@code sig12} (twelve significant digits) and {@code pi}. Immutable.
 */
public final class Formula {
    private final String id;
    private final String title;
    private final Symbol result;
    private final String text;
    private final Source source;
    private final List<Symbol> symbols;

    private Formula(String id, String title, Symbol result, String text, Source source, List<Symbol> symbols) {
        this.id = id;
        this.title = title;
        this.result = result;
        this.text = text;
        this.source = source;
        this.symbols = symbols;
    }

    /**
     * A formula; make it a constant next to the method that computes it.
     *
     * @param id      package and name, such as {@code rolls.yield}; unique
     * @param title   what it gives, as a heading
     * @param result  the letter on the left-hand side
     * @param text    the right-hand side
     * @param source  where it comes from
     * @param symbols the letters on the right-hand side, in the order in which their values are given
     * @return the formula
     */
    public static Formula of(String id, String title, Symbol result, String text, Source source, Symbol... symbols) {
        return new Formula(id, title, result, text, source, List.of(symbols));
    }

    /**
     * The name by which the formula is found.
     *
     * @return package and name
     */
    public String id() {
        return id;
    }

    /**
     * What it gives, as a heading.
     *
     * @return the title
     */
    public String title() {
        return title;
    }

    /**
     * The letter on the left-hand side.
     *
     * @return the result's symbol
     */
    public Symbol result() {
        return result;
    }

    /**
     * The right-hand side.
     *
     * @return the text, as printed and as tested
     */
    public String text() {
        return text;
    }

    /**
     * Where the formula comes from.
     *
     * @return the source
     */
    public Source source() {
        return source;
    }

    /**
     * The letters on the right-hand side.
     *
     * @return the symbols, in the order in which their values are given
     */
    public List<Symbol> symbols() {
        return symbols;
    }

    /** The whole formula: {@code y = A / A_opened}. */
    @Override
    public String toString() {
        return result.name() + " = " + text;
    }
}
