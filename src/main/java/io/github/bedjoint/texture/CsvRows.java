package io.github.bedjoint.texture;

import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/**
 * Rows of numbers parted by commas, read byte by byte: a grid of millions of heights takes a fraction of a second.
 *
 * <p>A number is written with a point; an empty cell or {@code NaN} is missing. Lines that are empty or begin with # are passed over.
 */
final class CsvRows implements HeightRows {
    private static final int END = -1;
    /** Below this a count of digits divided by a power of ten is the nearest double, both being exact. */
    private static final long EXACT = 1L << 53;
    private static final int EXACT_POWER = 22;
    /** Fifteen digits and a point are always exact. */
    private static final int MOST_SHORT = 16;
    private static final double[] POWERS = new double[EXACT_POWER + 1];

    static {
        POWERS[0] = 1;
        for (int i = 1; i <= EXACT_POWER; i++) {
            POWERS[i] = POWERS[i - 1] * 10;
        }
    }

    private final InputStream in;
    private final double factor;
    private final byte[] buffer = new byte[1 << 16];
    private int at;
    private int limit;
    private int line = 1;
    private double[] first;
    private boolean firstGiven;
    private final byte[] cell = new byte[64];

    /** Reads the first row, which says how many columns there are. */
    CsvRows(InputStream in, double factor) throws IOException {
        this.in = in;
        this.factor = factor;
        skipMark();
        first = new double[16];
        int columns = read(true, first);
        first = Arrays.copyOf(first, columns);
    }

    @Override
    public int columns() {
        return first.length;
    }

    @Override
    public boolean next(double[] row) throws IOException {
        if (!firstGiven) {
            firstGiven = true;
            System.arraycopy(first, 0, row, 0, first.length);
            return first.length > 0;
        }
        int read = read(false, row);
        if (read == 0) {
            return false;
        }
        if (read < row.length) {
            throw refused(read + " cells", "must have " + row.length + " as the first row has");
        }
        return true;
    }

    /** Passes over the three bytes that some programs put before UTF-8. */
    private void skipMark() throws IOException {
        if (peek() == 0xEF) {
            for (int i = 0; i < 3; i++) {
                get();
            }
        }
    }

    /** One row into an array, which is {@link #first} and grows for the first row; returns the number of cells, 0 at the end. */
    private int read(boolean grow, double[] into) throws IOException {
        if (!skipToData()) {
            return 0;
        }
        double[] row = into;
        int count = 0;
        boolean more = true;
        while (more) {
            if (count == row.length) {
                if (!grow) {
                    throw refused("more cells", "must have " + row.length + " as the first row has");
                }
                row = Arrays.copyOf(row, 2 * row.length);
                first = row;
            }
            row[count++] = number();
            int next = get();
            more = next == ',';
            if (!more && next == '\r') {
                next = get();
            }
            if (!more && next != '\n' && next != END) {
                throw refused("'" + (char) next + "' in cell " + count, "must be a number with a point, parted by commas");
            }
        }
        line++;
        return count;
    }

    /** Passes over empty lines and remarks; false at the end of the file. */
    private boolean skipToData() throws IOException {
        while (true) {
            int next = peek();
            if (next == END) {
                return false;
            }
            if (next != '#' && next != '\n' && next != '\r') {
                return true;
            }
            do {
                next = get();
            } while (next != '\n' && next != END);
            line++;
        }
    }

    /** The number of a cell in metres, NaN for an empty one; leaves the byte after it. */
    private double number() throws IOException {
        double quick = limit - at > cell.length ? shortNumber() : Double.NaN;
        return Double.isNaN(quick) ? anyNumber() : quick;
    }

    /** A few digits with or without a point and a minus, as nearly all cells are, all within the buffer; NaN and nothing read for any other. */
    private double shortNumber() {
        boolean negative = buffer[at] == '-';
        int i = negative ? at + 1 : at;
        int last = i + MOST_SHORT;
        int point = 0;
        int count = 0;
        long digits = 0;
        while (i < last) {
            int digit = buffer[i] - '0';
            if (digit >= 0 && digit <= 9) {
                digits = digits * 10 + digit;
                count++;
            } else if (digit == '.' - '0' && point == 0) {
                point = i;
            } else {
                break;
            }
            i++;
        }
        byte end = buffer[i];
        if (count == 0 || end != ',' && end != '\n' && end != '\r') {
            return Double.NaN;
        }
        double value = point == 0 ? digits : digits / POWERS[i - 1 - point];
        at = i;
        return (negative ? -value : value) * factor;
    }

    private double anyNumber() throws IOException {
        int length = 0;
        long digits = 0;
        int decimals = -1;
        int significant = 0;
        boolean plain = true;
        boolean negative = false;
        int next = peek();
        while (next != ',' && next != '\n' && next != '\r' && next != END) {
            at++;
            if (next >= '0' && next <= '9') {
                digits = digits * 10 + (next - '0');
                significant += digits == 0 ? 0 : 1;
                decimals += decimals < 0 ? 0 : 1;
            } else if (next == '.' && decimals < 0) {
                decimals = 0;
            } else if (next == '-' && length == 0) {
                negative = true;
            } else {
                plain = false;
            }
            if (length == cell.length) {
                throw refused("a cell of more than " + cell.length + " characters", "must be a number");
            }
            cell[length++] = (byte) next;
            next = peek();
        }
        if (length == 0) {
            return Double.NaN;
        }
        int scale = Math.max(decimals, 0);
        boolean anyDigit = length > (negative ? 1 : 0) + (decimals >= 0 ? 1 : 0);
        if (plain && anyDigit && significant < 18 && digits < EXACT && scale <= EXACT_POWER) {
            double value = digits / POWERS[scale];
            return (negative ? -value : value) * factor;
        }
        return parsed(new String(cell, 0, length, StandardCharsets.ISO_8859_1).strip());
    }

    /** Blanks around a number, exponents and very long numbers take the slow way. */
    private double parsed(String text) {
        if (text.isEmpty() || text.equalsIgnoreCase("nan")) {
            return Double.NaN;
        }
        if (!text.matches("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d+)?")) {
            throw refused("'" + text + "'", "must be a number with a point, or empty where missing");
        }
        double value = Double.parseDouble(text) * factor;
        if (Double.isInfinite(value)) {
            throw refused("'" + text + "'", "must be finite");
        }
        return value;
    }

    private int peek() throws IOException {
        if (at == limit) {
            limit = in.read(buffer);
            at = 0;
            if (limit <= 0) {
                limit = 0;
                return END;
            }
        }
        // A byte of ones is not the end of the file.
        return buffer[at] & 0xFF;
    }

    private int get() throws IOException {
        int next = peek();
        if (next != END) {
            at++;
        }
        return next;
    }

    private RefusedException refused(String value, String limitWords) {
        return new RefusedException("height grid, line " + line, value, limitWords, "Maybe the file has another separator.");
    }

    @Override
    public void close() throws IOException {
        in.close();
    }
}
