package io.github.bedjoint.labour;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.Source;
import java.util.ArrayList;
import java.util.List;

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

    private static final Labour DEFAULTS = new Labour(
            TaskTable.defaults(), Allowance.onJobTime(0.15), Crew.of(1), Crew.of(1), WorkDay.of(Door.of(8, ShopUnits.HOUR)));

    private final TaskTable table;
    private final Allowance allowance;
    private final Crew shopCrew;
    private final Crew siteCrew;
    private final WorkDay day;

    private Labour(TaskTable table, Allowance allowance, Crew shopCrew, Crew siteCrew, WorkDay day) {
        this.table = table;
        this.allowance = allowance;
        this.shopCrew = shopCrew;
        this.siteCrew = siteCrew;
        this.day = day;
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
        return new Labour(tasks, allowance, shopCrew, siteCrew, day);
    }

    /**
     * The same with another allowance.
     *
     * @param added what is added to basic time, and on which base
     * @return a new calculator
     */
    public Labour withAllowance(Allowance added) {
        return new Labour(table, added, shopCrew, siteCrew, day);
    }

    /**
     * The same with another crew in the shop.
     *
     * @param crew the crew
     * @return a new calculator
     */
    public Labour withShopCrew(Crew crew) {
        return new Labour(table, allowance, crew, siteCrew, day);
    }

    /**
     * The same with another crew on site.
     *
     * @param crew the crew
     * @return a new calculator
     */
    public Labour withSiteCrew(Crew crew) {
        return new Labour(table, allowance, shopCrew, crew, day);
    }

    /**
     * The same with another working day.
     *
     * @param workDay shift and travel
     * @return a new calculator
     */
    public Labour withWorkDay(WorkDay workDay) {
        return new Labour(table, allowance, shopCrew, siteCrew, workDay);
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
            Crew crew = task.stage() == Stage.SITE ? siteCrew : shopCrew;
            if (task.driver() == Driver.DAY) {
                daily.add(TaskTime.of(task, List.of(PlaceTime.of(task, "each day", 1, 1)), allowance, crew));
            } else {
                List<PlaceTime> there = places.stream()
                        .filter(place -> place.amounts().inner(task.driver()) > 0)
                        .map(place -> PlaceTime.of(task, place))
                        .toList();
                if (!there.isEmpty()) {
                    times.add(TaskTime.of(task, there, allowance, crew));
                }
            }
        }
        return LabourEstimate.of(times, daily, day, siteCrew);
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
