package io.github.bedjoint.risk;

import io.github.bedjoint.job.Job;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import java.util.function.BiFunction;
import org.jspecify.annotations.Nullable;

/**
 * A handle on one number of a job that may be a range.
 *
 * <p>Inputs that change panels or rolls say so by {@link #replans()}; every distinct value of theirs is planned anew. Values are put in by a
 * fixed order that does not depend on the order in which they were named: sizes first, then roll prices, then all others. Two handles are
 * equal when their names are. Immutable.
 */
public final class Input {
    private final String name;
    private final boolean replans;
    private final Binding binding;

    Input(String name, boolean replans, Binding binding) {
        this.name = name;
        this.replans = replans;
        this.binding = binding;
    }

    /** Looks an input up in a job: refuses one that is not there, and says what a value changes. */
    interface Binding {
        Bound to(Job job);
    }

    /** Puts a value of the inner unit into a draft. */
    interface Change {
        void make(Draft draft, double value);
    }

    /** Makes a job to be planned anew. */
    interface Replan {
        Job make(Job job, double value);
    }

    /**
     * An input found in a job.
     *
     * @param measure what it is measured in
     * @param accepts which values it takes
     * @param grain   values are brought to multiples of it, 0 for any
     * @param change  what a value changes beside panels and rolls, or null
     * @param replan  how a value changes panels or rolls, or null
     */
    record Bound(Measure measure, Range accepts, double grain, @Nullable Change change, @Nullable Replan replan) {

        static Bound of(Measure measure, Range accepts, Change change) {
            return new Bound(measure, accepts, 0, change, null);
        }

        static Bound planned(Measure measure, Range accepts, double grain, Replan replan) {
            return new Bound(measure, accepts, grain, null, replan);
        }

        /** Whether every distinct value is planned anew. */
        boolean replans() {
            return replan != null;
        }

        double snap(double value) {
            return grain == 0 ? value : Math.rint(value / grain) * grain;
        }
    }

    /**
     * The pace of one task.
     *
     * @param task the task's id, such as {@code heat-roll}
     * @return a handle; its range is a time per area, per length or per piece, as the task's driver has it
     */
    public static Input pace(String task) {
        return new Input("pace of " + task, false, job -> WorkInputs.pace(job, task));
    }

    /**
     * One factor on the pace of everything done by hand, in the shop and on site: a slow crew is slow at all of it. Independent ranges of
     * paces alone level each other out and make P80 too low.
     *
     * @return a handle; its range is a factor, 0.1 to 10
     */
    public static Input crewPace() {
        return new Input("crew pace", false, job -> Bound.of(Measure.NUMBER, Range.closed(0.1, 10), Draft::crewPace));
    }

    /**
     * How well two or more work together on site.
     *
     * @return a handle; its range is a share, above 0 and at most 1
     */
    public static Input tandemEfficiency() {
        return new Input("tandem efficiency", false, job -> WorkInputs.tandem());
    }

    /**
     * Travel of the crew there and back each day.
     *
     * @return a handle; its range is a time
     */
    public static Input travel() {
        return new Input("travel", false, job -> WorkInputs.travel());
    }

    /**
     * By what height and access multiply the time on a wall.
     *
     * @param wall the wall's name
     * @return a handle; its range is a factor, 0.1 to 10
     */
    public static Input accessFactor(String wall) {
        return new Input("access factor of " + wall, false, job -> WorkInputs.access(job, wall));
    }

    /**
     * The developed area ratio of a wall. Panels and rolls stay, unless film is fed in: then the extra lengths grow with the extra area, and
     * panels and rolls are planned anew, in steps of a two-thousandth.
     *
     * @param wall the wall's name
     * @return a handle; its range is a ratio, 1 to 20
     */
    public static Input areaRatio(String wall) {
        return new Input("area ratio of " + wall, false, job -> WorkInputs.ratio(job, wall));
    }

    /**
     * The size of a wall with all that is on it, as a factor on its width and height, in steps of a two-thousandth. Panels and rolls are
     * planned anew.
     *
     * @param wall the wall's name
     * @return a handle; its range is a factor, 0.5 to 2
     */
    public static Input size(String wall) {
        return new Input("size of " + wall, true, job -> PlanInputs.size(job, wall));
    }

    /**
     * The size of all walls together, such as the error of one tape. Panels and rolls are planned anew.
     *
     * @return a handle; its range is a factor, 0.5 to 2
     */
    public static Input sizes() {
        return new Input("size of all walls", true, job -> PlanInputs.sizes());
    }

    /**
     * The price of one film roll on offer. Rolls are planned anew for every distinct price.
     *
     * @param offer the offer's id
     * @return a handle; its range is money in the job's currency
     */
    public static Input rollPrice(String offer) {
        return new Input("price of roll " + offer, true, job -> PlanInputs.rollPrice(job, offer));
    }

    /**
     * One factor on the prices of all film rolls; the rolls stay as planned at the prices of the job, since all move together.
     *
     * @return a handle; its range is a factor, 0 to 10
     */
    public static Input filmPrices() {
        return new Input("film prices", false, job -> PriceInputs.film());
    }

    /**
     * One factor on the prices of all laminate rolls; the rolls stay as planned.
     *
     * @return a handle; its range is a factor, 0 to 10
     */
    public static Input laminatePrices() {
        return new Input("laminate prices", false, job -> PriceInputs.laminate());
    }

    /**
     * The price of ink, for the unit in which the job gives it.
     *
     * @return a handle; its range is money in the job's currency
     */
    public static Input inkPrice() {
        return new Input("ink price", false, PriceInputs::ink);
    }

    /**
     * The price of a consumable, for the unit in which the job gives it.
     *
     * @param title what it is called
     * @return a handle; its range is money in the job's currency
     */
    public static Input consumablePrice(String title) {
        return new Input("price of " + title, false, job -> PriceInputs.consumable(job, title));
    }

    /**
     * What a person-hour in the shop costs, for the unit in which the job gives it.
     *
     * @return a handle; its range is money in the job's currency
     */
    public static Input productionRate() {
        return new Input("production rate", false, job -> PriceInputs.rate(job, false));
    }

    /**
     * What a person-hour on site costs, for the unit in which the job gives it.
     *
     * @return a handle; its range is money in the job's currency
     */
    public static Input siteRate() {
        return new Input("site rate", false, job -> PriceInputs.rate(job, true));
    }

    /**
     * The price of one piece, hour or metre of a line that is given, such as hire or freight.
     *
     * @param title the line's title
     * @return a handle; its range is money in the job's currency
     */
    public static Input extraPrice(String title) {
        return new Input("price of extra " + title, false, job -> PriceInputs.extra(job, title));
    }

    /**
     * How much of a line that is given is needed, such as days of hire.
     *
     * @param title the line's title
     * @return a handle; its range is of the kind the line's rate is per
     */
    public static Input extraQuantity(String title) {
        return new Input("quantity of extra " + title, false, job -> PriceInputs.quantity(job, title));
    }

    /**
     * How long applied film cures before hand-over.
     *
     * @return a handle; its range is a time
     */
    public static Input cure() {
        return new Input("cure", false, DateInputs::cure);
    }

    /**
     * How long a washed wall dries before film is applied.
     *
     * @return a handle; its range is a time
     */
    public static Input washWait() {
        return new Input("wait after washing", false, DateInputs::wash);
    }

    /**
     * How long prints rest before laminating.
     *
     * @return a handle; its range is a time
     */
    public static Input outgas() {
        return new Input("outgas", false, job -> DateInputs.outgas());
    }

    /**
     * How much later than the job's start it really begins.
     *
     * @return a handle; its range is a time, not negative
     */
    public static Input delay() {
        return new Input("delay of start", false, DateInputs::delay);
    }

    /**
     * The chance that it rains on a day. Days are drawn independently, beside those of rain that the job itself names; on a rainy day and until
     * the wall has dried nobody works at it outdoors, so that all dates move, and nothing is paid for the wait.
     *
     * @return a handle; its range is a chance, 0 to 0.9
     */
    public static Input rainChance() {
        return new Input("chance of rain", false, DateInputs::rain);
    }

    /**
     * Any other number of a job; every distinct value of it is planned and costed anew.
     *
     * @param name   what it is called
     * @param measure what it is measured in
     * @param change makes the job with a value in the inner unit
     * @return a handle
     * @throws io.github.bedjoint.units.RefusedException if the name is blank
     */
    public static Input of(String name, Measure measure, BiFunction<Job, Double, Job> change) {
        Bound bound = Bound.planned(measure, Range.closed(-1e9, 1e9), 0, change::apply);
        return new Input(Door.text("input", name), true, job -> bound);
    }

    /**
     * What it is called.
     *
     * @return the name, unique among the inputs of a simulation
     */
    public String name() {
        return name;
    }

    /**
     * Whether its values change panels or rolls of every job; an area ratio does so only where film is fed in.
     *
     * @return true if every distinct value is planned anew
     */
    public boolean replans() {
        return replans;
    }

    Bound to(Job job) {
        return binding.to(job);
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof Input that && name.equals(that.name);
    }

    @Override
    public int hashCode() {
        return name.hashCode();
    }

    /** The name. */
    @Override
    public String toString() {
        return name;
    }
}
