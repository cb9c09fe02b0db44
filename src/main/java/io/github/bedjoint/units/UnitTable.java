package io.github.bedjoint.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.Map;
import javax.measure.Quantity;
import javax.measure.Unit;
import org.jspecify.annotations.Nullable;

/**
 * The units people write, with their exact factors to the inner units.
 *
 * <p>Indriya's own conversion costs about a microsecond a call; a look-up by identity costs a few nanoseconds and gives the double
 * nearest to the exact product's factor. Factors: UCUM 2.2, NIST SP 811 appendix B.
 */
final class UnitTable {
    private static final Map<Unit<?>, Entry> SAME = new IdentityHashMap<>();
    private static final Map<Unit<?>, Entry> EQUAL = new HashMap<>();
    private static final Map<String, Entry> NAMED = new HashMap<>();
    private static final Map<Unit<?>, String> LABELS = new HashMap<>();

    static {
        add(Measure.LENGTH, ShopUnits.METRE, "1", "m", "metre", "metres", "meter", "meters");
        add(Measure.LENGTH, ShopUnits.CENTIMETRE, "0.01", "cm");
        add(Measure.LENGTH, ShopUnits.MILLIMETRE, "0.001", "mm");
        add(Measure.LENGTH, ShopUnits.MICROMETRE, "0.000001", "um", "µm", "μm");
        add(Measure.LENGTH, ShopUnits.INCH, "0.0254", "in", "inch", "inches", "\"");
        add(Measure.LENGTH, ShopUnits.FOOT, "0.3048", "ft", "foot", "feet", "'");
        add(Measure.LENGTH, ShopUnits.YARD, "0.9144", "yd", "yard", "yards");
        add(Measure.LENGTH, ShopUnits.MIL, "0.0000254", "mil", "mils");
        add(Measure.AREA, ShopUnits.SQUARE_METRE, "1", "m2", "m²", "m^2");
        add(Measure.AREA, ShopUnits.SQUARE_MILLIMETRE, "0.000001", "mm2", "mm²", "mm^2");
        add(Measure.AREA, ShopUnits.SQUARE_INCH, "0.00064516", "in2", "in²", "in^2", "sq in");
        add(Measure.AREA, ShopUnits.SQUARE_FOOT, "0.09290304", "ft2", "ft²", "ft^2", "sq ft", "sqft");
        add(Measure.AREA, ShopUnits.SQUARE_YARD, "0.83612736", "yd2", "yd²", "yd^2", "sq yd");
        add(Measure.TIME, ShopUnits.SECOND, "1", "s", "sec");
        add(Measure.TIME, ShopUnits.MINUTE, "60", "min");
        add(Measure.TIME, ShopUnits.HOUR, "3600", "h", "hr", "hour", "hours");
        add(Measure.TIME, ShopUnits.DAY, "86400", "d", "day", "days");
        add(Measure.MASS, ShopUnits.KILOGRAM, "1", "kg");
        add(Measure.MASS, ShopUnits.GRAM, "0.001", "g");
        add(Measure.MASS, ShopUnits.POUND, "0.45359237", "lb");
        add(Measure.MASS, ShopUnits.OUNCE, "0.028349523125", "oz");
        add(Measure.VOLUME, ShopUnits.CUBIC_METRE, "1", "m3", "m³", "m^3");
        add(Measure.VOLUME, ShopUnits.LITRE, "0.001", "L", "l");
        add(Measure.VOLUME, ShopUnits.MILLILITRE, "0.000001", "mL", "ml");
        add(Measure.VOLUME, ShopUnits.US_GALLON, "0.003785411784", "gal");
        add(Measure.VOLUME, ShopUnits.US_FLUID_OUNCE, "0.0000295735295625", "fl oz");
        add(Measure.TEMPERATURE, ShopUnits.KELVIN, "1", "K");
        put(new Entry(Measure.TEMPERATURE, ShopUnits.CELSIUS, BigDecimal.ONE, 273.15), "degC", "°C", "C");
        put(new Entry(Measure.TEMPERATURE, ShopUnits.FAHRENHEIT, fraction("5", "9"), 459.67 * 5 / 9), "degF", "°F", "F");
        add(Measure.SPEED, ShopUnits.METRE_PER_SECOND, "1", "m/s");
        put(new Entry(Measure.SPEED, ShopUnits.METRE_PER_MINUTE, fraction("1", "60"), 0), "m/min");
        put(new Entry(Measure.SPEED, ShopUnits.FOOT_PER_MINUTE, fraction("0.3048", "60"), 0), "ft/min");
        add(Measure.NUMBER, ShopUnits.ONE, "1", "each", "piece", "pieces", "pc");
        rates(Measure.TIME_PER_AREA, Measure.TIME, Measure.AREA, TimePerArea.class);
        rates(Measure.TIME_PER_LENGTH, Measure.TIME, Measure.LENGTH, TimePerLength.class);
        rates(Measure.VOLUME_PER_AREA, Measure.VOLUME, Measure.AREA, VolumePerArea.class);
        rates(Measure.MASS_PER_AREA, Measure.MASS, Measure.AREA, MassPerArea.class);
        put(new Entry(Measure.TIME_PER_AREA, ShopUnits.MINUTE_PER_SQUARE_METRE, fraction("60", "1"), 0));
        put(new Entry(Measure.TIME_PER_AREA, ShopUnits.MINUTE_PER_SQUARE_FOOT, fraction("60", "0.09290304"), 0));
        put(new Entry(Measure.TIME_PER_LENGTH, ShopUnits.MINUTE_PER_METRE, fraction("60", "1"), 0));
        put(new Entry(Measure.TIME_PER_LENGTH, ShopUnits.MINUTE_PER_FOOT, fraction("60", "0.3048"), 0));
        put(new Entry(Measure.VOLUME_PER_AREA, ShopUnits.MILLILITRE_PER_SQUARE_METRE, fraction("0.000001", "1"), 0));
        put(new Entry(Measure.MASS_PER_AREA, ShopUnits.GRAM_PER_SQUARE_METRE, fraction("0.001", "1"), 0));
    }

    private UnitTable() {}

    private static void add(Measure measure, Unit<?> unit, String factor, String... names) {
        put(new Entry(measure, unit, new BigDecimal(factor), 0), names);
    }

    private static void put(Entry entry, String... names) {
        SAME.put(entry.unit(), entry);
        EQUAL.put(entry.unit(), entry);
        for (String name : names) {
            NAMED.put(name, entry);
        }
        if (names.length > 0) {
            LABELS.putIfAbsent(entry.unit(), names[0]);
        }
    }

    private static BigDecimal fraction(String over, String under) {
        return new BigDecimal(over).divide(new BigDecimal(under), MathContext.DECIMAL128);
    }

    /** All rates of one kind: a name of the numerator, a slash, a name of the denominator. */
    private static <Q extends Quantity<Q>> void rates(Measure rate, Measure over, Measure under, Class<Q> type) {
        Map<String, Entry> simple = Map.copyOf(NAMED);
        simple.forEach((overName, overEntry) -> {
            if (overEntry.measure() == over) {
                simple.forEach((underName, underEntry) -> {
                    if (underEntry.measure() == under) {
                        put(
                                new Entry(
                                        rate,
                                        overEntry.unit().divide(underEntry.unit()).asType(type),
                                        overEntry.exact().divide(underEntry.exact(), MathContext.DECIMAL128),
                                        0),
                                overName + "/" + underName);
                    }
                });
            }
        });
    }

    static @Nullable Entry find(Unit<?> unit) {
        Entry same = SAME.get(unit);
        return same != null ? same : EQUAL.get(unit);
    }

    static @Nullable Entry named(String name) {
        return NAMED.get(name);
    }

    /** How a unit is written, so that it can be read back. */
    static String label(Unit<?> unit) {
        String label = LABELS.get(unit);
        return label != null ? label : unit.toString();
    }

    /** The first names, for a hint: those of one measure, sorted. */
    static String names(Measure measure) {
        return String.join(
                ", ",
                NAMED.entrySet().stream()
                        .filter(e -> e.getValue().measure() == measure && e.getKey().chars().allMatch(c -> c < 128))
                        .map(Map.Entry::getKey)
                        .filter(name -> !name.contains("^"))
                        .sorted()
                        .limit(12)
                        .toList());
    }

    /** A unit, what it measures, and inner = value x factor + offset. */
    record Entry(Measure measure, Unit<?> unit, BigDecimal exact, double factor, double offset) {
        Entry(Measure measure, Unit<?> unit, BigDecimal exact, double offset) {
            this(measure, unit, exact, exact.doubleValue(), offset);
        }
    }
}
