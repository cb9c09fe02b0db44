package io.github.bedjoint.working;

import io.github.bedjoint.units.UnitStyle;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.joda.money.CurrencyUnit;
import org.jspecify.annotations.Nullable;

/**
 * How a figure came about: a formula with the values that were put in, and the working of those values; or a heading over several.
 *
 * <p>An immutable tree. Values are in inner units, exactly as the result stored them; money is decimal. A part explains the letter
 * that its own formula gives, or belongs to the heading. Printed are the formula with its values first, then the parts.
 */
public final class Working {
    private final String title;
    private final @Nullable Formula formula;
    private final @Nullable Number result;
    private final List<Number> values;
    private final List<Working> parts;
    private final @Nullable CurrencyUnit currency;
    private final String note;

    private Working(
            String title,
            @Nullable Formula formula,
            @Nullable Number result,
            List<Number> values,
            List<Working> parts,
            @Nullable CurrencyUnit currency,
            String note) {
        this.title = title;
        this.formula = formula;
        this.result = result;
        this.values = values;
        this.parts = parts;
        this.currency = currency;
        this.note = note;
    }

    /**
     * A figure and the values put in.
     *
     * @param formula the formula that gave it
     * @param result  the figure as stored, in the inner unit
     * @param values  one value for each symbol of the formula, in its order, in inner units
     * @return the working
     * @throws IllegalArgumentException if there are more or fewer values than symbols
     */
    public static Working of(Formula formula, Number result, Number... values) {
        if (values.length != formula.symbols().size()) {
            throw new IllegalArgumentException(formula.id() + " has " + formula.symbols().size() + " symbols, not " + values.length);
        }
        return new Working(formula.title(), formula, result, List.of(values), List.of(), null, "");
    }

    /**
     * A sum and its terms.
     *
     * @param formula a formula whose text is {@code sum(x_i)} and whose only symbol is {@code x_i}
     * @param total   the sum as stored, in the inner unit
     * @param terms   the terms, in inner units; may be empty
     * @return the working
     * @throws IllegalArgumentException if the formula is not the sum of its one symbol
     */
    public static Working sum(Formula formula, Number total, List<? extends Number> terms) {
        if (!isSum(formula)) {
            throw new IllegalArgumentException(formula.id() + " is not a plain sum");
        }
        return new Working(formula.title(), formula, total, List.copyOf(terms), List.of(), null, "");
    }

    /**
     * A heading over several workings.
     *
     * @param title the heading
     * @param parts the workings below it
     * @return the working
     */
    public static Working group(String title, List<Working> parts) {
        return new Working(title, null, null, List.of(), List.copyOf(parts), null, "");
    }

    /**
     * The same with the working of its values added after those it has.
     *
     * @param more the workings of values that were put in
     * @return a new working
     */
    public Working because(Working... more) {
        List<Working> all = new ArrayList<>(parts);
        all.addAll(Arrays.asList(more));
        return new Working(title, formula, result, values, List.copyOf(all), currency, note);
    }

    /**
     * The same under a heading that tells it from others of its formula, such as the wall's name.
     *
     * @param name what to put behind the formula's title
     * @return a new working
     */
    public Working whose(String name) {
        return new Working(title + ": " + name, formula, result, values, parts, currency, note);
    }

    /**
     * The same with a remark for the reader, such as a rounding that took place before, in place of any it had.
     *
     * @param words one sentence
     * @return a new working
     */
    public Working noting(String words) {
        return new Working(title, formula, result, values, parts, currency, words);
    }

    /**
     * The same with the currency in which money in it and below it is printed; a part that names its own keeps it.
     *
     * @param money the currency
     * @return a new working
     */
    public Working in(CurrencyUnit money) {
        return new Working(title, formula, result, values, parts, money, note);
    }

    /**
     * The first working of a formula in this tree, from the top.
     *
     * @param id the formula's id, such as {@code rolls.yield}
     * @return the working with this tree's currency, or empty
     */
    public Optional<Working> find(String id) {
        if (formula != null && formula.id().equals(id)) {
            return Optional.of(this);
        }
        return parts.stream()
                .map(part -> currency != null && part.currency == null ? part.in(currency) : part)
                .flatMap(part -> part.find(id).stream())
                .findFirst();
    }

    /**
     * The same without the figures of certain formulas and what explains them, such as those that show money.
     *
     * @param hidden which formulas are left out
     * @return a new working, or empty where this is itself such a figure or a heading over nothing else
     */
    public Optional<Working> without(Predicate<Formula> hidden) {
        if (formula != null && hidden.test(formula)) {
            return Optional.empty();
        }
        List<Working> kept = parts.stream().flatMap(part -> part.without(hidden).stream()).toList();
        return formula == null && kept.isEmpty() && !parts.isEmpty()
                ? Optional.empty()
                : Optional.of(new Working(title, formula, result, values, kept, currency, note));
    }

    /**
     * The heading.
     *
     * @return the formula's title and whose it is
     */
    public String title() {
        return title;
    }

    /**
     * The formula.
     *
     * @return the formula, or empty for a heading over several
     */
    public Optional<Formula> formula() {
        return Optional.ofNullable(formula);
    }

    /**
     * The figure as the result stores it.
     *
     * @return the figure in the inner unit, or empty for a heading
     */
    public Optional<Number> result() {
        return Optional.ofNullable(result);
    }

    /**
     * The values put in.
     *
     * @return one for each symbol of the formula, or all terms of a sum
     */
    public List<Number> values() {
        return values;
    }

    /**
     * The working of values that were put in.
     *
     * @return the parts
     */
    public List<Working> parts() {
        return parts;
    }

    /**
     * The currency of money in this tree.
     *
     * @return the currency, or empty where a tree above says it or there is no money
     */
    public Optional<CurrencyUnit> currency() {
        return Optional.ofNullable(currency);
    }

    /**
     * A remark for the reader.
     *
     * @return one sentence, or an empty text
     */
    public String note() {
        return note;
    }

    /** Whether the values are the terms of one sum. */
    boolean isSum() {
        return formula != null && isSum(formula);
    }

    private static boolean isSum(Formula formula) {
        return formula.symbols().size() == 1 && formula.text().equals("sum(" + formula.symbols().get(0).name() + ")");
    }

    /**
     * The working as plain text.
     *
     * @param style the reader's units
     * @return lines, each ended by a line feed
     */
    public String text(UnitStyle style) {
        return new TextPrinter(style).print(this);
    }

    /**
     * The working as a fragment of HTML: nested {@code details}, escaped, without script or style.
     *
     * @param style the reader's units
     * @return the fragment
     */
    public String html(UnitStyle style) {
        Markup out = new Markup();
        new HtmlPrinter(style, out, null).print(this);
        return out.toString();
    }

    /**
     * Writes the working into a page as nested {@code details}; each source is listed once and referred to by number.
     *
     * @param out     the page
     * @param style   the reader's units
     * @param sources collects the sources; a text refers to the n-th, from 1, as {@code #source-n}
     */
    public void write(Markup out, UnitStyle style, List<Source> sources) {
        new HtmlPrinter(style, out, sources).print(this);
    }

    /** The working as plain text in metric units. */
    @Override
    public String toString() {
        return text(UnitStyle.METRIC);
    }
}
