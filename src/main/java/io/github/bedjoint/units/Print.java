package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Prints numbers and lengths, the same under every locale. */
public final class Print {
    private static final long STEPS_PER_SIXTEENTH = 127;
    private static final int MOST_DECIMALS = 12;

    private Print() {}

    /**
     * A number with up to four decimals, or six significant digits when it is below one; no exponent, no grouping, no trailing
     * zeros.
     *
     * @param value any number
     * @return its text, such as {@code 12.5}; {@code NaN} and {@code Infinity} as Java prints them
     */
    public static String number(double value) {
        if (!Double.isFinite(value)) {
            return Double.toString(value);
        }
        BigDecimal decimal = BigDecimal.valueOf(value);
        decimal = Math.abs(value) < 1
                ? decimal.round(new MathContext(6, RoundingMode.HALF_UP))
                : decimal.setScale(4, RoundingMode.HALF_UP);
        return decimal.signum() == 0 ? "0" : decimal.stripTrailingZeros().toPlainString();
    }

    /**
     * A number with a fixed count of decimals, rounded half up.
     *
     * @param value    a finite number
     * @param decimals how many decimals, 0 to 12
     * @return its text, such as {@code 12.50}; zero never has a sign
     * @throws RefusedException if the number is not finite or the count of decimals is out of range
     */
    public static String fixed(double value, int decimals) {
        if (!Double.isFinite(value)) {
            throw new RefusedException("number", Double.toString(value), "must be finite", "Maybe a division by zero came before.");
        }
        Door.count("decimals", decimals, 0, MOST_DECIMALS);
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(decimals, RoundingMode.HALF_UP);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /**
     * A count and what is counted.
     *
     * @param count a whole number
     * @param one   the word for one, whose plural takes an s
     * @return the text, such as {@code 1 roll} or {@code 2 rolls}
     */
    public static String count(long count, String one) {
        return count(count, one, one + "s");
    }

    /**
     * A count and what is counted.
     *
     * @param count a whole number
     * @param one   the word for one
     * @param many  the word for any other number
     * @return the text, such as {@code 1 person} or {@code 2 people}
     */
    public static String count(long count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /**
     * A length for a cut list: millimetres with one decimal, halves away from zero, or feet and inches to the nearest 1/16 in.
     *
     * @param steps a length in steps
     * @param style the reader's units
     * @return the text, such as {@code 1371.6 mm} or {@code 4' 6"}
     */
    public static String cut(long steps, UnitStyle style) {
        return style == UnitStyle.METRIC
                ? BigDecimal.valueOf(steps * 125, 4).setScale(1, RoundingMode.HALF_UP).toPlainString() + " mm"
                : feetInches(steps);
    }

    /**
     * Feet and inches to the nearest 1/16 in, which is never half-way since it is an odd number of steps: {@code 12' 6 1/2"},
     * {@code 5/8"}, {@code 0"}.
     *
     * @param steps a length in steps
     * @return the text, which {@link Read#length} reads back
     */
    public static String feetInches(long steps) {
        long sixteenths = (Math.abs(steps) + STEPS_PER_SIXTEENTH / 2) / STEPS_PER_SIXTEENTH;
        long feet = sixteenths / (12 * 16);
        long inches = sixteenths / 16 % 12;
        long part = sixteenths % 16;
        StringBuilder text = new StringBuilder();
        if (steps < 0 && sixteenths > 0) {
            text.append('-');
        }
        if (feet > 0) {
            text.append(feet).append("' ");
        }
        if (inches > 0 || part == 0) {
            text.append(inches);
        }
        if (part > 0) {
            int halvings = Long.numberOfTrailingZeros(part);
            text.append(inches > 0 ? " " : "").append(part >> halvings).append('/').append(16 >> halvings);
        }
        return text.append('"').toString();
    }
}
