package io.github.bedjoint.film;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A roll that can be had: bought at a price, or taken from stock at the value the shop gives it.
 *
 * <p>Without more it can be had any number of times, is as wide as its film or laminate and of no known lot. Width and length are rounded down to whole steps. Immutable.
 */
public final class RollOffer {
    /** What {@link #available()} says where there is no limit. */
    public static final int UNLIMITED = -1;

    /** Far above any roll, so that the roll plan can add up cents in whole numbers. */
    private static final BigDecimal DEAREST = new BigDecimal("1000000000");

    private static final int MOST = 1_000_000;

    private final String id;
    private final long widthSteps;
    private final long lengthSteps;
    private final Money price;
    private final int available;
    private final String lot;
    private final int leastOrder;
    private final int inCarton;
    private final @Nullable LocalDate bestBefore;

    private RollOffer(
            String id, long widthSteps, long lengthSteps, Money price, int available, String lot, int leastOrder, int inCarton, @Nullable LocalDate bestBefore) {
        this.id = id;
        this.widthSteps = widthSteps;
        this.lengthSteps = lengthSteps;
        this.price = price;
        this.available = available;
        this.lot = lot;
        this.leastOrder = leastOrder;
        this.inCarton = inCarton;
        this.bestBefore = bestBefore;
    }

    /**
     * A roll that can be had any number of times.
     *
     * @param id     how the offer is told from others
     * @param length the length of the roll, above 0, at most 10 km
     * @param price  the price of one roll, 0 or more
     * @return the offer
     * @throws RefusedException if the id is blank, the length out of range or the price negative
     */
    public static RollOffer of(String id, Quantity<Length> length, Money price) {
        long steps = Steps.down(Door.lengthM("roll length", length, Range.POSITIVE));
        return new RollOffer(Door.text("roll id", id), 0, steps, checked(price), UNLIMITED, "", 0, 1, null);
    }

    private static Money checked(Money price) {
        if (price.isNegative()) {
            throw new RefusedException("roll price", price.toString(), "must not be negative", "Maybe a reduction was meant: make it a line.");
        }
        if (price.getAmount().compareTo(DEAREST) > 0) {
            throw new RefusedException(
                    "roll price", price.toString(), "must be at most " + DEAREST.toPlainString(), "Maybe a digit slipped.");
        }
        return price;
    }

    /**
     * The same of a width of its own, where a film or laminate comes in several; without one it is as wide as its film or laminate.
     *
     * @param width width of the roll, above 0, at most 20 m, brought down to a whole step
     * @return the offer
     * @throws RefusedException if the width is out of range
     */
    public RollOffer withWidth(Quantity<Length> width) {
        long steps = Steps.down(Door.in(FilmFigure.ROLL_WIDTH.measure(), "roll width", width, FilmFigure.ROLL_WIDTH.range()));
        return new RollOffer(id, steps, lengthSteps, price, available, lot, leastOrder, inCarton, bestBefore);
    }

    /**
     * The same with a limited number of rolls.
     *
     * @param rolls how many can be had, 0 to a million
     * @return the offer
     * @throws RefusedException if the number is out of range
     */
    public RollOffer withAvailable(int rolls) {
        return new RollOffer(id, widthSteps, lengthSteps, price, Door.count("rolls available", rolls, 0, MOST), lot, leastOrder, inCarton, bestBefore);
    }

    /**
     * The same from a known production lot; rolls of different lots may differ in colour and tack.
     *
     * @param name the lot's name
     * @return the offer
     * @throws RefusedException if the name is blank
     */
    public RollOffer withLot(String name) {
        return new RollOffer(id, widthSteps, lengthSteps, price, available, Door.text("lot", name), leastOrder, inCarton, bestBefore);
    }

    /**
     * The same at another price.
     *
     * @param other the price of one roll, 0 or more
     * @return the offer
     * @throws RefusedException if the price is negative or too high
     */
    public RollOffer withPrice(Money other) {
        return new RollOffer(id, widthSteps, lengthSteps, checked(other), available, lot, leastOrder, inCarton, bestBefore);
    }

    /**
     * The same sold in whole cartons, and at least so many rolls at once. The roll plan does not know of it: what is ordered and not opened goes on the
     * shelf and is paid for.
     *
     * @param least  the least that is sold, 0 to a million
     * @param carton rolls in a carton, 1 to 1000
     * @return the offer
     * @throws RefusedException if a number is out of range
     */
    public RollOffer orderedBy(int least, int carton) {
        return new RollOffer(
                id, widthSteps, lengthSteps, price, available, lot,
                Door.count("minimum order", least, 0, MOST), Door.count("rolls in a carton", carton, 1, 1000), bestBefore);
    }

    /**
     * The same with the last day of its shelf life. It changes no plan; a job warns where the roll would be used later.
     *
     * @param day the last day on which the roll is still good
     * @return the offer
     */
    public RollOffer withBestBefore(LocalDate day) {
        return new RollOffer(id, widthSteps, lengthSteps, price, available, lot, leastOrder, inCarton, day);
    }

    /**
     * The last day of its shelf life.
     *
     * @return the day, or empty where it is not known
     */
    public Optional<LocalDate> bestBefore() {
        return Optional.ofNullable(bestBefore);
    }

    /**
     * The least that is sold at once.
     *
     * @return rolls, 0 where there is no minimum
     */
    public int leastOrder() {
        return leastOrder;
    }

    /**
     * How many rolls are in a carton; only whole ones are sold.
     *
     * @return rolls, 1 where they are sold one by one
     */
    public int inCarton() {
        return inCarton;
    }

    /**
     * How the offer is told from others.
     *
     * @return the id
     */
    public String id() {
        return id;
    }

    /**
     * Width of the roll.
     *
     * @return whole steps, rounded down; 0 where it is as wide as its film or laminate
     */
    public long widthSteps() {
        return widthSteps;
    }

    /**
     * Length of the roll.
     *
     * @return whole steps, rounded down
     */
    public long lengthSteps() {
        return lengthSteps;
    }

    /**
     * Length of the roll as a quantity.
     *
     * @return the length in metres
     */
    public Quantity<Length> length() {
        return Steps.toLength(lengthSteps);
    }

    /**
     * Price of one roll.
     *
     * @return the price, 0 or more
     */
    public Money price() {
        return price;
    }

    /**
     * How many rolls can be had.
     *
     * @return 0 or more, or {@link #UNLIMITED}
     */
    public int available() {
        return available;
    }

    /**
     * The production lot.
     *
     * @return its name, or an empty text where it is not known
     */
    public String lot() {
        return lot;
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof RollOffer that
                && id.equals(that.id)
                && widthSteps == that.widthSteps
                && lengthSteps == that.lengthSteps
                && price.equals(that.price)
                && available == that.available
                && lot.equals(that.lot)
                && leastOrder == that.leastOrder
                && inCarton == that.inCarton
                && Objects.equals(bestBefore, that.bestBefore);
    }

    @Override
    public int hashCode() {
        return Objects.hash(id, widthSteps, lengthSteps, price, available, lot, leastOrder, inCarton, bestBefore);
    }

    /** Id, width where it has one of its own, length and price: {@code long, 45.72 m, USD 512.00}. */
    @Override
    public String toString() {
        String wide = widthSteps == 0 ? "" : Measure.STEPS.print(widthSteps, UnitStyle.METRIC) + " wide, ";
        return id + ", " + wide + Measure.STEPS.print(lengthSteps, UnitStyle.METRIC) + ", " + price;
    }
}
