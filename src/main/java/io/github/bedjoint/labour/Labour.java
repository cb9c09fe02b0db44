package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Verdict;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Works out the hours of a job: default tasks, one person in the shop and one on site, an allowance of 15 % on job time (assumed), a shift of
 * 8 hours, no travel.
 *
 * <p>Work on site goes one task after another, all of the crew on it. The set-up of each installing day and the travel within the shift shorten the day, and the days follow. Stateless and
 * immutable; the {@code with} methods give changed copies.
 */
public final class Labour {
    /** Where the default allowance comes from. */
    public static final Source ALLOWANCE_SOURCE = Source.assumed("15 % on job time, a starting value");

    private static final WorkPlace EACH_DAY = WorkPlace.of("each day", Amounts.none().withCount(Driver.DAY, 1));
    private static final Labour DEFAULTS = new Labour(
            TaskTable.defaults(), Allowance.onJobTime(0.15), Crew.of(1), Crew.of(1), WorkDay.of(Door.of(8, ShopUnits.HOUR)), List.of(), Premium.NONE);

    private final TaskTable table;
    private final Allowance allowance;
    private final Crew shopCrew;
    private final Crew siteCrew;
    private final WorkDay day;
    private final List<Trip> trips;
    private final Premium premium;

    private Labour(
            TaskTable table, Allowance allowance, Crew shopCrew, Crew siteCrew, WorkDay day, List<Trip> trips, Premium premium) {
        this.table = table;
        this.allowance = allowance;
        this.shopCrew = shopCrew;
        this.siteCrew = siteCrew;
        this.day = day;
        this.trips = trips;
        this.premium = premium;
    }

    /**
     * The calculator with its defaults.
     *
     * @return a calculator
     */
    public static Labour withDefaults() {
        return DEFAULTS;
    }

    /**
     * The same with another table of tasks.
     *
     * @param tasks the tasks
     * @return a new calculator
     */
    public Labour withTasks(TaskTable tasks) {
        return new Labour(tasks, allowance, shopCrew, siteCrew, day, trips, premium);
    }

    /**
     * The same with another allowance.
     *
     * @param added what is added to basic time, and on which base
     * @return a new calculator
     */
    public Labour withAllowance(Allowance added) {
        return new Labour(table, added, shopCrew, siteCrew, day, trips, premium);
    }

    /**
     * The same with another crew in the shop.
     *
     * @param crew the crew
     * @return a new calculator
     */
    public Labour withShopCrew(Crew crew) {
        return new Labour(table, allowance, crew, siteCrew, day, trips, premium);
    }

    /**
     * The same with another crew on site.
     *
     * @param crew the crew
     * @return a new calculator
     */
    public Labour withSiteCrew(Crew crew) {
        return new Labour(table, allowance, shopCrew, crew, day, trips, premium);
    }

    /**
     * The same with another working day.
     *
     * @param workDay shift and travel
     * @return a new calculator
     */
    public Labour withWorkDay(WorkDay workDay) {
        return new Labour(table, allowance, shopCrew, siteCrew, workDay, trips, premium);
    }

    /**
     * The same with trips of their own beside the installing days.
     *
     * @param visits the trips; a task may be done on one of them only
     * @return a new calculator
     * @throws RefusedException if two trips do the same task
     */
    public Labour withTrips(List<Trip> visits) {
        Set<String> done = new HashSet<>();
        for (String task : visits.stream().flatMap(trip -> trip.tasks().stream()).toList()) {
            if (!done.add(task)) {
                throw new RefusedException("trips", "two that do " + task, "must leave each task to one of them", "Maybe name it once.");
            }
        }
        return new Labour(table, allowance, shopCrew, siteCrew, day, List.copyOf(visits), premium);
    }

    /**
     * The same with a premium on the wages of site or shop, such as for night work.
     *
     * @param extra the premium
     * @return a new calculator
     */
    public Labour withPremium(Premium extra) {
        return new Labour(table, allowance, shopCrew, siteCrew, day, trips, extra);
    }

    /**
     * The premium on wages.
     *
     * @return the premium, {@link Premium#NONE} unless set
     */
    public Premium premium() {
        return premium;
    }

    /**
     * Trips of their own.
     *
     * @return the trips
     */
    public List<Trip> trips() {
        return trips;
    }

    /**
     * The tasks in use.
     *
     * @return the table
     */
    public TaskTable tasks() {
        return table;
    }

    /**
     * What is added to basic time.
     *
     * @return the allowance
     */
    public Allowance allowance() {
        return allowance;
    }

    /**
     * The crew on site.
     *
     * @return the crew
     */
    public Crew siteCrew() {
        return siteCrew;
    }

    /**
     * The crew in the shop.
     *
     * @return the crew
     */
    public Crew shopCrew() {
        return shopCrew;
    }

    /**
     * The working day on site.
     *
     * @return shift and travel
     */
    public WorkDay workDay() {
        return day;
    }

    /**
     * The hours of work at one or more places.
     *
     * @param places where work is done, in any order; what belongs to the job as a whole is a place of its own
     * @return hours by task and stage, and the days on site
     * @throws RefusedException if a place says how many installing days there are, since that follows from the hours
     */
    public LabourEstimate estimate(List<WorkPlace> places) {
        List<TaskTime> times = new ArrayList<>();
        List<TaskTime> daily = new ArrayList<>();
        for (WorkPlace place : places) {
            if (place.amounts().inner(Driver.DAY) != 0) {
                throw new RefusedException(
                        "installing days of " + place.name(),
                        Double.toString(place.amounts().inner(Driver.DAY)),
                        "must not be given, since they follow from the hours",
                        "Maybe trips are meant.");
            }
        }
        for (Task task : table.tasks()) {
            Crew crew = crewOf(task);
            if (task.driver() == Driver.DAY) {
                daily.add(TaskTime.of(task, List.of(PlaceTime.of(task, EACH_DAY)), allowance, crew));
            } else {
                List<PlaceTime> there = new ArrayList<>(places.size());
                for (WorkPlace place : places) {
                    if (place.amounts().inner(task.driver()) > 0) {
                        there.add(PlaceTime.of(task, place));
                    }
                }
                if (!there.isEmpty()) {
                    times.add(TaskTime.of(task, there, allowance, crew));
                }
            }
        }
        for (Trip trip : trips) {
            trip.tasks().forEach(this::checkOnTrip);
        }
        List<Verdict> verdicts = new ArrayList<>();
        for (WorkPlace place : places) {
            for (Verdict verdict : place.reach().verdicts()) {
                verdicts.add(new Verdict(verdict.level(), place.name() + ", " + verdict.subject(), verdict.reason(), verdict.source()));
            }
        }
        return LabourEstimate.of(times, daily, trips, day, siteCrew, premium, verdicts);
    }

    /**
     * A task that a trip may do.
     *
     * @param id the task's id
     * @return the task of the table
     * @throws RefusedException if there is none, or it is not done on site, or on each installing day
     */
    public Task checkOnTrip(String id) {
        Task task = table.task(id);
        if (task.stage() != Stage.SITE || task.driver() == Driver.DAY) {
            throw new RefusedException("task of a trip", id, "must be a task on site that is not done each day", "Maybe another task was meant.");
        }
        return task;
    }

    /** Who does a task: those who travel where a trip does it. */
    private Crew crewOf(Task task) {
        Crew usual = task.stage() == Stage.SITE ? siteCrew : shopCrew;
        for (Trip trip : trips) {
            if (trip.tasks().contains(task.id())) {
                return new Crew(trip.people(), usual.efficiency());
            }
        }
        return usual;
    }

    /**
     * The hours of work at one place.
     *
     * @param amounts what there is to do
     * @return hours by task and stage, and the days on site
     */
    public LabourEstimate estimate(Amounts amounts) {
        return estimate(List.of(WorkPlace.of("job", amounts)));
    }
}
