package io.github.bedjoint.job;

import io.github.bedjoint.conditions.Caution;
import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.cutting.RollReasons;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.TimePerArea;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javax.measure.Quantity;
import org.joda.money.Money;
import org.jspecify.annotations.Nullable;

/**
 * A job costed: areas, panels, rolls, hours, dates, price, verdicts and cautions, each with its working.
 *
 * <p>When the job cannot be done as given, {@link #isPossible()} is false and {@link #reasons()} say why; what comes after the first
 * obstacle is missing then, and asking for it is refused. A refusing verdict makes a job impossible too, but everything is worked out, so
 * that one sees what it would cost once the reason is removed. Immutable.
 */
public final class JobCost implements Explained {
    private static final Source DEFINITION = Source.geometry("definition");

    static final Formula TIME_PER_AREA = Formula.of(
            "job.time-per-area", "Time per square metre", new Symbol("t", Measure.TIME_PER_AREA, "paid time for each visible area"), "P / A_v",
            DEFINITION, new Symbol("P", Measure.TIME, "paid time in all"), new Symbol("A_v", Measure.AREA, "visible area"));
    static final Formula PRICE_PER_AREA = Formula.of(
            "job.price-per-area", "Price for each visible area", new Symbol("p", Measure.MONEY_PER_AREA, "net price for each visible area"),
            "N / A_v", DEFINITION, new Symbol("N", Measure.MONEY, "net price"), new Symbol("A_v", Measure.AREA, "visible area"));

    private final Job job;
    private final JobPlan plan;
    private final @Nullable JobWork work;
    private final JobVerdicts checks;
    private final List<String> reasons;

    private JobCost(Job job, JobPlan plan) {
        this.job = job;
        this.plan = plan;
        this.work = plan.isPossible() ? JobWork.of(job, plan) : null;
        this.checks = new JobVerdicts(job);
        List<String> found = new ArrayList<>(plan.reasons());
        if (work != null) {
            found.addAll(work.reasons());
        }
        for (Verdict verdict : verdicts(UnitStyle.METRIC)) {
            if (verdict.level() == Verdict.Level.REFUSED) {
                found.add(verdict.subject() + ": " + verdict.reason());
            }
        }
        this.reasons = List.copyOf(found);
    }

    /**
     * Costs a job.
     *
     * @param job the job
     * @return what it needs and costs, or why it cannot be done as given
     */
    public static JobCost of(Job job) {
        return new JobCost(job, JobPlan.of(job));
    }

    /**
     * The job.
     *
     * @return what was costed
     */
    public Job job() {
        return job;
    }

    /**
     * Whether the job can be done as given.
     *
     * @return false where {@link #reasons()} say why not
     */
    public boolean isPossible() {
        return reasons.isEmpty();
    }

    /**
     * Why the job cannot be done as given.
     *
     * @return one sentence each; empty where it can
     */
    public List<String> reasons() {
        return reasons;
    }

    /**
     * The areas of all walls.
     *
     * @return visible, measured, developed and heated area
     */
    public JobAreas areas() {
        return plan.areas();
    }

    /**
     * How each wall is divided into panels.
     *
     * @return in the order of the survey
     */
    public List<PanelLayout> layouts() {
        return plan.layouts();
    }

    /**
     * The film rolls opened and the panels cut from each.
     *
     * @return the roll plan
     * @throws IllegalStateException if there is none; see {@link #reasons()}
     */
    public RollPlan filmPlan() {
        return there(plan.film(), "roll plan");
    }

    /**
     * Why the film plan opens the rolls it opens, from its certificate.
     *
     * @param style the reader's units
     * @return the reasons, in the job's currency
     * @throws IllegalStateException if there is no roll plan; see {@link #reasons()}
     */
    public RollReasons rollReasons(UnitStyle style) {
        return RollReasons.of(filmPlan(), style, this::amount);
    }

    /** An amount of minor units in the job's currency. */
    String amount(long minor) {
        return Money.ofMinor(job.rules().currency(), minor).toString();
    }

    /**
     * What the print room needs: a file for each panel with its place in the picture, which fills each wall and its bleeds unless the
     * job says where it lies, and spares.
     *
     * @return a list for each wall that could be laid out
     */
    public List<PrintList> prints() {
        RollPlan film = plan.film();
        return layouts().stream()
                .filter(PanelLayout::isPossible)
                .map(layout -> film == null ? job.prints(layout) : RollJob.prints(job, layout, film))
                .toList();
    }

    /**
     * How sure it is that no other layouts with their rolls make the job cheaper.
     *
     * @return the choice, or empty where there is no roll plan
     */
    public Optional<LayoutChoice> choice() {
        return Optional.ofNullable(plan.choice());
    }

    /**
     * Where the film opened ends.
     *
     * @return the waste account
     * @throws IllegalStateException if there is none; see {@link #reasons()}
     */
    public WasteAccount waste() {
        return there(plan.waste(), "waste account");
    }

    /**
     * The laminate.
     *
     * @return the laminate plan, or empty where the job has no laminate or could not be planned that far
     */
    public Optional<LaminatePlan> laminate() {
        return Optional.ofNullable(plan.laminate());
    }

    /**
     * What is ordered for the rolls that are opened.
     *
     * @return film first, one for each kind of roll that is opened; none where nothing could be planned
     */
    public List<RollOrder> orders() {
        return JobLines.orders(job.materials(), plan);
    }

    /**
     * The hours.
     *
     * @return hours by task and the days on site
     * @throws IllegalStateException if there are none; see {@link #reasons()}
     */
    public LabourEstimate labour() {
        return there(work == null ? null : work.labour(), "hours");
    }

    /**
     * The dates.
     *
     * @return the timetable, or empty where the job gives no calendar or could not be planned that far
     */
    public Optional<Timetable> timetable() {
        return Optional.ofNullable(work == null ? null : work.timetable());
    }

    /**
     * What moves if it rains on a day on which the job works outdoors.
     *
     * @return the first ten such days, each with the dates it would bring; none where there are no dates or no work is outdoors
     */
    public List<RainEffect> ifItRains() {
        return timetable().filter(Timetable::isPossible).map(RainyDays::of).orElse(List.of());
    }

    /**
     * The price with all its lines.
     *
     * @return the price
     * @throws IllegalStateException if there is none; see {@link #reasons()}
     */
    public PriceBuildUp price() {
        return there(work == null ? null : work.price(), "price");
    }

    /**
     * Whether the job was worked out to the price, also where a verdict refuses it.
     *
     * @return true if {@link #price()} answers
     */
    public boolean isPriced() {
        return work != null && work.price() != null;
    }

    /**
     * What the customer pays.
     *
     * @return the total
     * @throws IllegalStateException if there is no price; see {@link #reasons()}
     */
    public Money total() {
        return price().total();
    }

    /**
     * Paid time in all for each visible area.
     *
     * @return the pace of the whole job
     * @throws IllegalStateException if there are no hours; see {@link #reasons()}
     */
    public Quantity<TimePerArea> timePerArea() {
        return Door.of(labour().totalPaidS() / areas().visibleM2() / 60, ShopUnits.MINUTE_PER_SQUARE_METRE);
    }

    /**
     * What was checked and found: does the film follow, may it be applied.
     *
     * @param style the reader's units
     * @return the verdicts, harmless ones included
     */
    public List<Verdict> verdicts(UnitStyle style) {
        List<Verdict> verdicts = new ArrayList<>(checks.verdicts(style));
        verdicts.addAll(ShelfLife.verdicts(orders(), timetable().filter(Timetable::isPossible)));
        prints().forEach(list -> {
            list.blank().ifPresent(verdicts::add);
            list.acrossTheRoll().ifPresent(verdicts::add);
        });
        return verdicts;
    }

    /**
     * The usual cautions of the work, each with what it defers to.
     *
     * @return the cautions
     */
    public List<Caution> cautions() {
        return checks.cautions();
    }

    private <T> T there(@Nullable T part, String what) {
        if (part == null) {
            throw new IllegalStateException("The job cannot be done as given, so there is no " + what + ": " + String.join("; ", reasons));
        }
        return part;
    }

    /** The working of every figure, in the order of the sheet. */
    @Override
    public Working working() {
        List<Working> parts = new ArrayList<>();
        double visibleM2 = areas().visibleM2();
        parts.add(areas().working());
        parts.add(Working.group("Panels", layouts().stream().filter(PanelLayout::isPossible).map(PanelLayout::working).toList()));
        if (plan.waste() != null) {
            parts.add(plan.waste().working());
        }
        laminate().ifPresent(runs -> parts.add(runs.working()));
        orders().stream().filter(order -> order.quantity().left() > 0).forEach(order -> parts.add(order.quantity().working().whose(order.offer().id())));
        plan.disposal(job).ifPresent(waste -> parts.add(waste.working()));
        job.materials().ink().ifPresent(ink -> parts.add(ink.working(plan.printedM2())));
        job.materials().coatings().forEach(used -> parts.add(used.coating().working(areas().developedM2())));
        if (work != null) {
            LabourEstimate labour = work.labour();
            parts.add(labour.working());
            work.hires().forEach(hire -> hire.stays().forEach(stay -> parts.add(stay.working())));
            parts.add(Working.of(TIME_PER_AREA, labour.totalPaidS() / visibleM2, labour.totalPaidS(), visibleM2));
        }
        timetable().filter(Timetable::isPossible).ifPresent(dates -> parts.add(dates.working()));
        if (isPriced()) {
            BigDecimal net = price().net().getAmount();
            parts.add(price().working());
            parts.add(Working.of(PRICE_PER_AREA, net.doubleValue() / visibleM2, net, visibleM2));
        }
        parts.add(checks.working());
        return Working.group(job.name(), parts).in(job.rules().currency());
    }

    /**
     * The working of one figure.
     *
     * @param formulaId the id of its formula, such as {@code rolls.yield}
     * @return the working, or empty if this job has no such figure
     */
    public Optional<Working> working(String formulaId) {
        return working().find(formulaId);
    }

    /** Name and total, or why there is none. */
    @Override
    public String toString() {
        return job.name() + ": " + (isPriced() ? total().toString() : String.join("; ", reasons));
    }
}
