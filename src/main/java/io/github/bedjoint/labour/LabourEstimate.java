package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.ToDoubleFunction;
import javax.measure.Quantity;
import javax.measure.quantity.Time;

/**
 * The hours of a job by task and by stage, and the days on site.
 *
 * <p>Paid time counts all people together; elapsed time is that of the clock. Totals do not depend on the order of tasks, to the last bit. Immutable.
 */
public final class LabourEstimate implements Explained {
    private static final Source SUM = Source.geometry("sum over tasks");

    static final Formula PRODUCTION_PAID = sum("production-paid", "Paid time in the shop", "P_p", "paid time");
    static final Formula PRODUCTION_ELAPSED = sum("production-elapsed", "Elapsed time in the shop, one task after another", "E_p", "elapsed time");
    static final Formula SITE_WORK_PAID = sum("site-work-paid", "Paid time of work on site", "P_w", "paid time");
    static final Formula SITE_ELAPSED = sum("site-elapsed", "Elapsed work on site", "E", "elapsed time");
    static final Formula SITE_PAID = Formula.of(
            "labour.site-paid",
            "Paid time on site and on the way",
            new Symbol("P_s", Measure.TIME, "paid time on site and on the way"),
            "P_w + P_u + P_v + P_t",
            SUM,
            new Symbol("P_w", Measure.TIME, "paid time of work"),
            new Symbol("P_u", Measure.TIME, "paid time of daily set-up"),
            new Symbol("P_v", Measure.TIME, "paid time of daily travel"),
            new Symbol("P_t", Measure.TIME, "paid time of trips of their own"));
    static final Formula TRIPS_PAID = Formula.of(
            "labour.trips-paid",
            "Paid time of trips of their own",
            new Symbol("P_t", Measure.TIME, "paid time of trips of their own"),
            "sum(P_i)",
            SUM,
            new Symbol("P_i", Measure.TIME, "paid time of each trip"));
    static final Formula SHOP_PREMIUM = premium("shop-premium", "in the shop", "X_p", "P_p");
    static final Formula SITE_PREMIUM = premium("site-premium", "on site and on the way", "X_s", "P_s");
    static final Formula PREMIUM = Formula.of(
            "labour.premium",
            "Premium, as paid time at the plain wage",
            new Symbol("P_x", Measure.TIME, "premium, as paid time at the plain wage"),
            "X_p + X_s",
            SUM,
            new Symbol("X_p", Measure.TIME, "premium in the shop"),
            new Symbol("X_s", Measure.TIME, "premium on site"));
    static final Formula TOTAL = Formula.of(
            "labour.total-paid",
            "Paid time in all",
            new Symbol("P", Measure.TIME, "paid time in all"),
            "P_p + P_s",
            SUM,
            new Symbol("P_p", Measure.TIME, "paid time in the shop"),
            new Symbol("P_s", Measure.TIME, "paid time on site and on the way"));

    private final List<TaskTime> tasks;
    private final List<TaskTime> inShop = new ArrayList<>();
    private final List<TaskTime> onSite = new ArrayList<>();
    /** Work that fills the installing days: not what is done at trips of their own. */
    private final List<TaskTime> installing = new ArrayList<>();
    private final SiteDays days;
    private final List<TripTime> trips;
    /** Trips that are a part of the installing days. */
    private final List<TripTime> arrivals;
    private final Premium premium;
    private final List<Verdict> verdicts;
    private final double productionPaidS;
    private final double productionElapsedS;
    private final double siteWorkPaidS;
    private final double siteElapsedS;
    private final double sitePaidS;
    private final double totalPaidS;
    private final double tripsPaidS;
    private final double shopPremiumS;
    private final double sitePremiumS;

    private LabourEstimate(
            List<TaskTime> tasks, List<TaskTime> daily, List<Trip> visits, WorkDay day, Crew crew, Premium premium, List<Verdict> verdicts) {
        this.tasks = tasks;
        this.verdicts = verdicts;
        this.premium = premium;
        this.trips = visits.stream().map(trip -> new TripTime(trip, doneOn(trip, visits, tasks), day)).toList();
        this.arrivals = trips.stream().filter(trip -> trip.trip().purpose() == Trip.Purpose.INSTALL).toList();
        sort(visits);
        this.productionPaidS = Totals.of(inShop, TaskTime::paidS);
        this.productionElapsedS = Totals.of(inShop, TaskTime::elapsedS);
        this.siteWorkPaidS = Totals.of(onSite, TaskTime::paidS);
        this.siteElapsedS = Totals.of(installingTerms(), term -> term);
        this.days = SiteDays.of(
                siteElapsedS, day, Totals.of(daily, TaskTime::elapsedS), Totals.of(daily, TaskTime::paidS), crew.people());
        this.tripsPaidS = Totals.of(trips, TripTime::paidS);
        this.sitePaidS = siteWorkPaidS + days.setUpPaidS() + days.travelPaidS() + tripsPaidS;
        this.totalPaidS = productionPaidS + sitePaidS;
        this.shopPremiumS = productionPaidS * premium.shop();
        this.sitePremiumS = sitePaidS * premium.site();
    }

    static LabourEstimate of(
            List<TaskTime> tasks, List<TaskTime> daily, List<Trip> trips, WorkDay day, Crew crew, Premium premium, List<Verdict> verdicts) {
        return new LabourEstimate(List.copyOf(tasks), List.copyOf(daily), trips, day, crew, premium, List.copyOf(verdicts));
    }

    private static Formula sum(String name, String title, String letter, String what) {
        return Formula.of(
                "labour." + name, title, new Symbol(letter, Measure.TIME, title), "sum(t_i)", SUM, new Symbol("t_i", Measure.TIME, what + " of each task"));
    }

    /** Elapsed times of the tasks that a trip does, and its share of those that are done for each trip on which tasks are done. */
    private static List<Double> doneOn(Trip trip, List<Trip> visits, List<TaskTime> tasks) {
        double working = visits.stream().filter(visit -> !visit.tasks().isEmpty()).mapToInt(Trip::count).sum();
        List<Double> terms = new ArrayList<>();
        for (TaskTime time : tasks) {
            if (trip.tasks().contains(time.task().id())) {
                terms.add(time.elapsedS());
            } else if (time.task().driver() == Driver.TRIP
                    && time.task().stage() == Stage.SITE
                    && !trip.tasks().isEmpty()
                    && visits.stream().noneMatch(visit -> visit.tasks().contains(time.task().id()))) {
                terms.add(time.elapsedS() * trip.count() / working);
            }
        }
        return List.copyOf(terms);
    }

    private List<Double> installingTerms() {
        List<Double> terms = new ArrayList<>();
        installing.forEach(time -> terms.add(time.elapsedS()));
        arrivals.forEach(trip -> terms.add(trip.elapsedS()));
        return terms;
    }

    private static Formula premium(String name, String where, String letter, String base) {
        return Formula.of(
                "labour." + name,
                "Premium " + where + ", as paid time at the plain wage",
                new Symbol(letter, Measure.TIME, "premium " + where),
                base + " * k",
                Source.practice("a premium is a share of the wage"),
                new Symbol(base, Measure.TIME, "paid time " + where),
                Symbol.number("k", "premium as a share of the wage"));
    }

    private void sort(List<Trip> visits) {
        Set<String> elsewhere = new HashSet<>();
        visits.forEach(trip -> elsewhere.addAll(trip.tasks()));
        for (TaskTime time : tasks) {
            (time.task().stage() == Stage.SITE ? onSite : inShop).add(time);
            if (time.task().stage() == Stage.SITE && time.task().driver() != Driver.TRIP && !elsewhere.contains(time.task().id())) {
                installing.add(time);
            }
        }
    }

    /**
     * Whether the work fits into days at all.
     *
     * @return false where set-up and travel fill a shift
     */
    public boolean isPossible() {
        return reasons().isEmpty();
    }

    /**
     * Why the work cannot be done.
     *
     * @return reasons, none where it can
     */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>(days.reason().stream().toList());
        trips.forEach(trip -> trip.reason().ifPresent(reasons::add));
        return List.copyOf(reasons);
    }

    /**
     * What stands against the way in which places are reached.
     *
     * @return a warning for each place that is reached from a ladder
     */
    public List<Verdict> verdicts() {
        return verdicts;
    }

    /**
     * The times of all tasks that have something to do.
     *
     * @return the times in order of work
     */
    public List<TaskTime> tasks() {
        return tasks;
    }

    /**
     * The time of one task.
     *
     * @param id the task's id
     * @return its time, or empty where it has nothing to do
     */
    public Optional<TaskTime> task(String id) {
        return tasks.stream().filter(time -> time.task().id().equals(id)).findFirst();
    }

    /**
     * The days on site.
     *
     * @return days, set-up and travel
     */
    public SiteDays siteDays() {
        return days;
    }

    /**
     * Paid time in the shop.
     *
     * @return person-seconds
     */
    public double productionPaidS() {
        return productionPaidS;
    }

    /**
     * Elapsed time in the shop if nothing runs side by side.
     *
     * @return seconds
     */
    public double productionElapsedS() {
        return productionElapsedS;
    }

    /**
     * Paid time on site, daily set-up and travel included.
     *
     * @return person-seconds
     */
    public double sitePaidS() {
        return sitePaidS;
    }

    /**
     * Elapsed work of the installing days: tasks, and the way there where a trip for installing was given; without daily set-up and travel,
     * without tasks driven by trips and those done on trips of their own.
     *
     * @return seconds
     */
    public double siteElapsedS() {
        return siteElapsedS;
    }

    /**
     * Trips of their own.
     *
     * @return their hours, in the order given
     */
    public List<TripTime> trips() {
        return trips;
    }

    /**
     * The premium as paid time at the plain wage; it is no part of the hours.
     *
     * @return person-seconds to be paid on top of {@link #totalPaidS()}
     */
    public double premiumS() {
        return shopPremiumS + sitePremiumS;
    }

    /**
     * The part of {@link #premiumS()} for work in the shop.
     *
     * @return person-seconds at the plain wage
     */
    public double shopPremiumS() {
        return shopPremiumS;
    }

    /**
     * The part of {@link #premiumS()} for work on site and the way there.
     *
     * @return person-seconds at the plain wage
     */
    public double sitePremiumS() {
        return sitePremiumS;
    }

    /**
     * What the premium is for.
     *
     * @return the premium as given
     */
    public Premium premium() {
        return premium;
    }

    /**
     * Paid time in all.
     *
     * @return person-seconds
     */
    public double totalPaidS() {
        return totalPaidS;
    }

    /**
     * {@link #totalPaidS()} as a quantity.
     *
     * @return person-hours
     */
    public Quantity<Time> totalPaid() {
        return Door.time(totalPaidS);
    }

    @Override
    public Working working() {
        Working shop = summed(PRODUCTION_PAID, productionPaidS, inShop, TaskTime::paidS, false);
        Working work = summed(SITE_WORK_PAID, siteWorkPaidS, onSite, TaskTime::paidS, false);
        Working site = Working.of(SITE_PAID, sitePaidS, siteWorkPaidS, days.setUpPaidS(), days.travelPaidS(), tripsPaidS)
                .because(work, days.setUpWorking(), days.travelWorking(), tripsWorking());
        List<Working> terms = new ArrayList<>(installing.stream().map(TaskTime::elapsedWorking).toList());
        arrivals.forEach(trip -> terms.add(trip.elapsedWorking()));
        Working elapsed = Working.sum(SITE_ELAPSED, siteElapsedS, installingTerms()).because(terms.toArray(Working[]::new));
        List<Working> figures = new ArrayList<>(List.of(
                Working.of(TOTAL, totalPaidS, productionPaidS, sitePaidS).because(shop, site),
                summed(PRODUCTION_ELAPSED, productionElapsedS, inShop, TaskTime::elapsedS, true),
                days.working().because(elapsed)));
        trips.forEach(trip -> figures.add(trip.working()));
        if (premiumS() > 0) {
            figures.add(Working.of(PREMIUM, premiumS(), shopPremiumS, sitePremiumS)
                    .whose(premium.name())
                    .because(
                            Working.of(SHOP_PREMIUM, shopPremiumS, productionPaidS, premium.shop()),
                            Working.of(SITE_PREMIUM, sitePremiumS, sitePaidS, premium.site())));
        }
        return Working.group("Hours", figures);
    }

    private Working tripsWorking() {
        return Working.sum(TRIPS_PAID, tripsPaidS, trips.stream().map(TripTime::paidS).toList())
                .because(trips.stream().map(TripTime::paidWorking).toArray(Working[]::new));
    }

    private static Working summed(Formula formula, double total, List<TaskTime> times, ToDoubleFunction<TaskTime> figure, boolean elapsed) {
        return Working.sum(formula, total, times.stream().mapToDouble(figure).boxed().toList())
                .because(times.stream().map(time -> elapsed ? time.elapsedWorking() : time.paidWorking()).toArray(Working[]::new));
    }

    /** Paid hours and days in one line. */
    @Override
    public String toString() {
        return Print.fixed(totalPaidS / 3600, 2) + " h paid: " + Print.fixed(productionPaidS / 3600, 2) + " h in the shop, "
                + Print.fixed(sitePaidS / 3600, 2) + " h on site in " + Print.count(days.days(), "day");
    }
}
