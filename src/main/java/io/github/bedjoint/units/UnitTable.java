package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.MathContext;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.apache.commons.lang3.StringUtils;
import org.jspecify.annotations.Nullable;

/**
 * The units people write, with their exact factors to the inner units.
 *
 * <p>Indriya's own conversion costs about a microsecond a call; a look-up by identity costs a few nanoseconds. A factor is kept as a
 * fraction of two whole numbers, so that 3 ft and 0.9144 m give the same double. Factors: UCUM 2.2, NIST SP 811 appendix B.
 */
final class UnitTable {
    private static final int MOST_NAMES = 8;

    private static final Map<Unit<?>, Entry> SAME = new IdentityHashMap<>();
    private static final Map<Unit<?>, Entry> EQUAL = new HashMap<>();
    private static final Map<String, Entry> NAMED = new HashMap<>();
    /** By label, in the order in which a hint lists them. */
    private static final Map<String, Entry> LABELLED = new LinkedHashMap<>();

    static {
        add(Measure.LENGTH, ShopUnits.METRE, "1", "m", "metre", "metres", "meter", "meters");
        add(Measure.LENGTH, ShopUnits.CENTIMETRE, "0.01", "cm");
        add(Measure.LENGTH, ShopUnits.MILLIMETRE, "0.001", "mm");
        add(Measure.LENGTH, ShopUnits.MICROMETRE, "0.000001", "um", "µm", "μm");
        add(Measure.LENGTH, ShopUnits.INCH, "0.0254", "in", "inch", "inches", "\"");
        add(Measure.LENGTH, ShopUnits.FOOT, "0.3048", "ft", "foot", "feet", "'");
        add(Measure.LENGTH, ShopUnits.YARD, "0.9144", "yd", "yard", "yards");
        add(Measure.LENGTH, ShopUnits.MIL, "0.0000254", "mil", "mils");
        add(Measure.AREA, ShopUnits.SQUARE_METRE, "1", "m2", "m²", "m^2", "sq m");
        add(Measure.AREA, ShopUnits.SQUARE_MILLIMETRE, "0.000001", "mm2", "mm²", "mm^2");
        add(Measure.AREA, ShopUnits.SQUARE_INCH, "0.00064516", "in2", "in²", "in^2", "sq in");
        add(Measure.AREA, ShopUnits.SQUARE_FOOT, "0.09290304", "ft2", "ft²", "ft^2", "sq ft", "sqft");
        add(Measure.AREA, ShopUnits.SQUARE_YARD, "0.83612736", "yd2", "yd²", "yd^2", "sq yd");
        add(Measure.TIME, ShopUnits.SECOND, "1", "s", "sec", "second", "seconds");
        add(Measure.TIME, ShopUnits.MINUTE, "60", "min", "minute", "minutes");
        add(Measure.TIME, ShopUnits.HOUR, "3600", "h", "hr", "hour", "hours");
        add(Measure.TIME, ShopUnits.DAY, "86400", "d", "day", "days");
        add(Measure.MASS, ShopUnits.KILOGRAM, "1", "kg");
        add(Measure.MASS, ShopUnits.GRAM, "0.001", "g");
        add(Measure.MASS, ShopUnits.POUND, "0.45359237", "lb", "lbs");
        add(Measure.MASS, ShopUnits.OUNCE, "0.028349523125", "oz");
        add(Measure.VOLUME, ShopUnits.CUBIC_METRE, "1", "m3", "m³", "m^3");
        add(Measure.VOLUME, ShopUnits.LITRE, "0.001", "L", "l");
        add(Measure.VOLUME, ShopUnits.MILLILITRE, "0.000001", "mL", "ml");
        add(Measure.VOLUME, ShopUnits.US_GALLON, "0.003785411784", "gal");
        add(Measure.VOLUME, ShopUnits.US_FLUID_OUNCE, "0.0000295735295625", "fl oz");
        add(Measure.TEMPERATURE, ShopUnits.KELVIN, "1", "K");
        put(new Entry(Measure.TEMPERATURE, ShopUnits.CELSIUS, "degC", BigInteger.ONE, BigInteger.ONE, 273.15), "°C", "C");
        put(new Entry(Measure.TEMPERATURE, ShopUnits.FAHRENHEIT, "degF", BigInteger.valueOf(5), BigInteger.valueOf(9), 459.67), "°F", "F");
        add(Measure.SPEED, ShopUnits.METRE_PER_SECOND, "1", "m/s");
        rate(Measure.SPEED, ShopUnits.METRE_PER_MINUTE, ShopUnits.METRE, ShopUnits.MINUTE);
        rate(Measure.SPEED, ShopUnits.FOOT_PER_MINUTE, ShopUnits.FOOT, ShopUnits.MINUTE);
        add(Measure.NUMBER, ShopUnits.ONE, "1", "each", "piece", "pieces", "pc");
        // Those with a constant first, so that they head a hint.
        rate(Measure.TIME_PER_AREA, ShopUnits.MINUTE_PER_SQUARE_METRE, ShopUnits.MINUTE, ShopUnits.SQUARE_METRE);
        rate(Measure.TIME_PER_AREA, ShopUnits.MINUTE_PER_SQUARE_FOOT, ShopUnits.MINUTE, ShopUnits.SQUARE_FOOT);
        rate(Measure.TIME_PER_LENGTH, ShopUnits.MINUTE_PER_METRE, ShopUnits.MINUTE, ShopUnits.METRE);
        rate(Measure.TIME_PER_LENGTH, ShopUnits.MINUTE_PER_FOOT, ShopUnits.MINUTE, ShopUnits.FOOT);
        rate(Measure.VOLUME_PER_AREA, ShopUnits.MILLILITRE_PER_SQUARE_METRE, ShopUnits.MILLILITRE, ShopUnits.SQUARE_METRE);
        rate(Measure.MASS_PER_AREA, ShopUnits.GRAM_PER_SQUARE_METRE, ShopUnits.GRAM, ShopUnits.SQUARE_METRE);
        rates(Measure.TIME_PER_AREA, Measure.TIME, Measure.AREA, TimePerArea.class);
        rates(Measure.TIME_PER_LENGTH, Measure.TIME, Measure.LENGTH, TimePerLength.class);
        rates(Measure.VOLUME_PER_AREA, Measure.VOLUME, Measure.AREA, VolumePerArea.class);
        rates(Measure.MASS_PER_AREA, Measure.MASS, Measure.AREA, MassPerArea.class);
    }

    private UnitTable() {}

    private static void add(Measure measure, Unit<?> unit, String factor, String label, String... names) {
        BigDecimal exact = new BigDecimal(factor);
        put(new Entry(measure, unit, label, exact.unscaledValue(), BigInteger.TEN.pow(exact.scale()), 0), names);
    }

    private static void put(Entry entry, String... names) {
        // A volume per area is a length to JSR-385: m3/m2 is the metre itself, and must not take its place.
        SAME.putIfAbsent(entry.unit(), entry);
        EQUAL.putIfAbsent(entry.unit(), entry);
        LABELLED.put(entry.label(), entry);
        NAMED.put(entry.label(), entry);
        for (String name : names) {
            NAMED.put(name, entry);
        }
    }

    private static void rate(Measure rate, Unit<?> unit, Unit<?> over, Unit<?> under) {
        Entry top = SAME.get(over);
        Entry bottom = SAME.get(under);
        put(new Entry(
                rate,
                unit,
                top.label() + "/" + bottom.label(),
                top.over().multiply(bottom.under()),
                top.under().multiply(bottom.over()),
                0));
    }

    private static <Q extends Quantity<Q>> void rates(Measure rate, Measure over, Measure under, Class<Q> type) {
        List<Entry> simple = List.copyOf(LABELLED.values());
        for (Entry top : simple) {
            for (Entry bottom : simple) {
                if (top.measure() == over && bottom.measure() == under && !NAMED.containsKey(top.label() + "/" + bottom.label())) {
                    rate(rate, top.unit().divide(bottom.unit()).asType(type), top.unit(), bottom.unit());
                }
            }
        }
    }

    static @Nullable Entry find(Unit<?> unit) {
        Entry same = SAME.get(unit);
        return same != null ? same : EQUAL.get(unit);
    }

    /** The unit of a name; either side of a slash may be any name of its unit. */
    static @Nullable Entry named(String name) {
        Entry entry = NAMED.get(name);
        if (entry != null || !name.contains("/")) {
            return entry;
        }
        Entry top = NAMED.get(StringUtils.substringBefore(name, "/"));
        Entry bottom = NAMED.get(StringUtils.substringAfter(name, "/"));
        return top == null || bottom == null ? null : NAMED.get(top.label() + "/" + bottom.label());
    }

    /** How a unit is written, so that it can be read back. */
    static String label(Unit<?> unit) {
        Entry entry = find(unit);
        return entry != null ? entry.label() : unit.toString();
    }

    /** The units of a measure, for a hint. */
    static String names(Measure measure) {
        return String.join(
                ", ",
                LABELLED.values().stream()
                        .filter(entry -> entry.measure() == measure)
                        .map(Entry::label)
                        .limit(MOST_NAMES)
                        .toList());
    }

    /**
     * A unit, what it measures, how it is written, and inner = (value + shift) x over / under; exact is that factor to 34 digits, fits how often it goes
     * into the inner unit where that is a whole number.
     */
    record Entry(
            Measure measure, Unit<?> unit, String label, BigInteger over, BigInteger under, double shift, double times, double by,
            BigDecimal exact, @Nullable BigDecimal fits) {
        Entry(Measure measure, Unit<?> unit, String label, BigInteger over, BigInteger under, double shift) {
            this(
                    measure, unit, label, over, under, shift, reduced(over, under), reduced(under, over),
                    new BigDecimal(over).divide(new BigDecimal(under), MathContext.DECIMAL128),
                    under.mod(over).signum() == 0 ? new BigDecimal(under.divide(over)) : null);
        }

        private static double reduced(BigInteger one, BigInteger other) {
            return one.divide(one.gcd(other)).doubleValue();
        }

        /** A temperature or any other value in the inner unit. */
        double inner(double value) {
            return (value + shift) * times / by;
        }

        /** A difference of two values in the inner unit. */
        double interval(double difference) {
            return difference * times / by;
        }
    }
}
