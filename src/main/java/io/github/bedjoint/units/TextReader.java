package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.apache.commons.lang3.StringUtils;
import org.joda.money.BigMoney;
import org.joda.money.CurrencyUnit;
import org.joda.money.IllegalCurrencyException;
import org.jspecify.annotations.Nullable;

/** Reads one value from left to right and remembers where it stands, so that a refusal can say so. */
final class TextReader {
    private static final int LONGEST = 100;
    private static final int MOST_DIGITS = 18;

    private final String what;
    private final String given;
    private final String text;
    private int at;

    TextReader(String what, @Nullable String text) {
        if (text == null || plain(text).isBlank()) {
            throw new RefusedException(what, text == null ? "absent" : "blank", "must be written out", "Maybe it was forgotten.");
        }
        if (text.length() > LONGEST) {
            throw new RefusedException(
                    what,
                    "'" + StringUtils.abbreviate(printable(text), 30) + "'",
                    "must have at most " + LONGEST + " characters",
                    "Maybe two fields ran together.");
        }
        this.what = what;
        this.given = printable(text);
        this.text = plain(text);
        blanks();
    }

    /** Typographic primes and quotation marks mean feet and inches just the same; any space is a blank. One character for one. */
    static String plain(String text) {
        StringBuilder plain = new StringBuilder(StringUtils.replaceChars(text, "′’″”", "''\"\""));
        for (int i = 0; i < plain.length(); i++) {
            if (Character.isWhitespace(plain.charAt(i)) || Character.isSpaceChar(plain.charAt(i))) {
                plain.setCharAt(i, ' ');
            }
        }
        return plain.toString();
    }

    /** The text with a question mark for every control character. */
    static String printable(String text) {
        StringBuilder printable = new StringBuilder(text);
        for (int i = 0; i < printable.length(); i++) {
            if (Character.isISOControl(printable.charAt(i))) {
                printable.setCharAt(i, '?');
            }
        }
        return printable.toString();
    }

    static <Q extends Quantity<Q>> Quantity<Q> quantity(Measure measure, String what, @Nullable String text) {
        TextReader reader = new TextReader(what, text);
        boolean negative = reader.take('-');
        BigDecimal value = reader.decimal();
        Set<Measure> measures = EnumSet.of(measure);
        UnitTable.Entry entry = reader.unit(measures);
        if (entry.unit() == ShopUnits.FOOT && reader.at < reader.text.length()) {
            BigDecimal feet = value;
            int start = reader.at;
            if (feet.stripTrailingZeros().scale() > 0) {
                throw reader.refused("must end here, since inches follow whole feet only", "Maybe leave the second part away.");
            }
            value = reader.decimal();
            entry = reader.unit(measures);
            if (entry.unit() != ShopUnits.INCH || value.compareTo(BigDecimal.valueOf(12)) >= 0) {
                reader.at = start;
                throw reader.refused("must go on after the feet with less than 12 inches", "Maybe leave the second part away.");
            }
            value = value.add(feet.multiply(BigDecimal.valueOf(12)));
        }
        reader.end();
        @SuppressWarnings("unchecked") // the table holds units under the measure whose quantity type they have
        Unit<Q> unit = (Unit<Q>) entry.unit();
        return Door.of((negative ? value.negate() : value).doubleValue(), unit);
    }

    @SuppressWarnings("unchecked") // as above
    static <Q extends Quantity<Q>> PriceRate<Q> price(Measure per, @Nullable String text) {
        return (PriceRate<Q>) price(EnumSet.of(per), text);
    }

    /** A price per any of these. */
    static PriceRate<?> price(Set<Measure> per, @Nullable String text) {
        TextReader reader = new TextReader("price", text);
        CurrencyUnit currency = reader.currency();
        BigDecimal amount = reader.digits(true);
        if (!reader.take('/')) {
            throw reader.refused("must go on with '/' and a unit", oneOf(per));
        }
        UnitTable.Entry entry = reader.unit(per);
        reader.end();
        return PriceRate.of(BigMoney.of(currency, amount), entry.unit());
    }

    private static String oneOf(Set<Measure> measures) {
        return measures.stream().map(UnitTable::names).collect(Collectors.joining(", ", "Maybe one of: ", "."));
    }

    /** A number with a point, a fraction, or a whole number and a fraction. */
    BigDecimal decimal() {
        BigDecimal first = digits(true);
        if (first.scale() <= 0 && take('/')) {
            return over(first);
        }
        int mark = at;
        if (first.scale() <= 0 && at < text.length() && Character.isDigit(text.charAt(at)) && text.charAt(at - 1) == ' ') {
            BigDecimal second = digits(false);
            if (take('/')) {
                return first.add(over(second));
            }
            at = mark;
        }
        return first;
    }

    private BigDecimal over(BigDecimal numerator) {
        int mark = at;
        BigDecimal denominator = digits(false);
        if (denominator.signum() == 0) {
            at = mark;
            throw refused("cannot be divided by zero", "");
        }
        return numerator.divide(denominator, MathContext.DECIMAL128);
    }

    /** Digits with at most one point; 18 of them before it. */
    BigDecimal digits(boolean pointAllowed) {
        int start = at;
        boolean point = false;
        int count = 0;
        int whole = 0;
        while (at < text.length()) {
            char c = text.charAt(at);
            if (c >= '0' && c <= '9') {
                count++;
                whole += point ? 0 : 1;
            } else if (c == '.' && pointAllowed && !point) {
                point = true;
            } else if (c == ',') {
                throw refused("must not hold a comma", "Maybe a decimal point was meant; thousands are not grouped.");
            } else {
                break;
            }
            at++;
        }
        if (count > 0 && text.charAt(at - 1) == '.') {
            throw refused("must have a digit after the point", "");
        }
        if (count == 0) {
            at = start;
            throw refused("must have a number", "");
        }
        if (whole > MOST_DIGITS) {
            at = start;
            throw refused("must have at most " + MOST_DIGITS + " digits before the point", "");
        }
        BigDecimal number = new BigDecimal(text.substring(start, at));
        blanks();
        return number;
    }

    UnitTable.Entry unit(Set<Measure> measures) {
        int end = at;
        while (end < text.length() && !isNumber(text.charAt(end), end)) {
            end++;
        }
        String name = text.substring(at, end).strip().replaceAll(" +", " ").replaceAll(" ?/ ?", "/");
        UnitTable.Entry entry = UnitTable.named(name);
        if (entry == null || !measures.contains(entry.measure())) {
            throw refused(name.isEmpty() ? "must go on with a unit" : "must have another unit than '" + name + "'", oneOf(measures));
        }
        at = end;
        return entry;
    }

    /** A digit starts the next number, unless it belongs to a unit: the 2 of m2, the 3 of m^3. */
    private boolean isNumber(char c, int index) {
        return c >= '0' && c <= '9' && index > 0 && (text.charAt(index - 1) == ' ' || text.charAt(index - 1) == '\'');
    }

    CurrencyUnit currency() {
        int end = Math.min(at + 3, text.length());
        String code = text.substring(at, end);
        try {
            if (code.length() == 3 && code.chars().allMatch(c -> c >= 'A' && c <= 'Z') && (end == text.length() || !Character.isLetter(text.charAt(end)))) {
                CurrencyUnit currency = CurrencyUnit.of(code);
                at = end;
                blanks();
                return currency;
            }
        } catch (IllegalCurrencyException e) {
            throw refused("must begin with a known currency code", "Maybe EUR, USD or GBP.");
        }
        throw refused("must begin with a currency code of three capital letters", "Maybe EUR 12.50.");
    }

    boolean take(char c) {
        if (at < text.length() && text.charAt(at) == c) {
            at++;
            blanks();
            return true;
        }
        return false;
    }

    void end() {
        if (at < text.length()) {
            throw refused("must end here", "");
        }
    }

    RefusedException refused(String limit, String hint) {
        String place = at >= text.length() ? " at its end" : " at character " + (at + 1) + " ('" + given.substring(at) + "')";
        return new RefusedException(what, "'" + given + "'", limit + place, hint);
    }

    private void blanks() {
        while (at < text.length() && text.charAt(at) == ' ') {
            at++;
        }
    }
}
