package io.github.bedjoint.job;

import io.github.bedjoint.cutting.LaminatePlan;
import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.labour.WorkPlace;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.survey.Access;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.waste.WasteAccount;
import io.github.bedjoint.waste.WastePart;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.jspecify.annotations.Nullable;

/**
 * Panels, rolls and waste of a job: what is worked out before hours, dates and price, and stays when only those change.
 *
 * <p>It costs the most time to find. Whoever asks the same job again with other paces or prices keeps it and asks for {@link #figures}.
 * Immutable.
 */
public final class JobPlan {
    private static final Range RATIO = Range.closed(1, 20);

    private final Job job;
    private final List<PanelLayout> layouts;
    private final JobAreas areas;
    private final @Nullable LayoutChoice choice;
    private final @Nullable RollPlan film;
    private final @Nullable WasteAccount waste;
    private final @Nullable LaminatePlan laminate;
    private final List<WorkPlace> places;
    private final Set<Access> accesses;
    private final List<String> reasons;
    private final double printedM2;
    private final double developedM2;
    private final double openedM;

    private JobPlan(Job job) {
        this.job = job;
        JobLayouts.Found together = JobLayouts.of(job);
        this.layouts = together.layouts();
        this.choice = together.choice();
        this.areas = JobAreas.of(job, layouts);
        List<String> found = new ArrayList<>();
        layouts.stream().filter(layout -> !layout.isPossible()).forEach(layout -> Obstacles.ofLayout(job, layout, found));

        RollPlan plan = together.film();
        this.film = plan;
        Obstacles.ofRolls("Film", plan, found);
        LaminatePlan runs = plan == null || !found.isEmpty() ? null : RollJob.laminate(job, plan).orElse(null);
        this.laminate = runs;
        Obstacles.ofRolls("Laminate", runs == null ? null : runs.plan(), found);

        WasteAccount account = plan == null || !plan.isFeasible() ? null : RollJob.waste(job, layouts, plan);
        this.waste = account;
        this.places = plan == null || account == null || !found.isEmpty()
                ? List.of()
                : LabourJob.places(job, layouts, areas, plan, account, Optional.ofNullable(runs));
        this.accesses = new JobReach(job).all();
        this.reasons = List.copyOf(found);
        this.printedM2 = layouts.stream().mapToDouble(layout -> layout.places().totalM2()).sum()
                + (account == null ? 0 : account.partsM2().getOrDefault(WastePart.SPARE, 0.0));
        this.developedM2 = areas.developedM2();
        this.openedM = plan == null ? 0 : opened(plan);
    }

    private JobPlan(JobPlan other, List<WorkPlace> places, double developedM2) {
        this.job = other.job;
        this.layouts = other.layouts;
        this.areas = other.areas;
        this.choice = other.choice;
        this.film = other.film;
        this.waste = other.waste;
        this.laminate = other.laminate;
        this.places = places;
        this.accesses = other.accesses;
        this.reasons = other.reasons;
        this.printedM2 = other.printedM2;
        this.developedM2 = developedM2;
        this.openedM = other.openedM;
    }

    /**
     * Plans panels and rolls of a job.
     *
     * @param job the job
     * @return the plan, or one that says why there is none
     */
    public static JobPlan of(Job job) {
        return new JobPlan(job);
    }

    private static double opened(RollPlan plan) {
        return plan.rolls().stream().mapToDouble(roll -> Steps.toM(plan.row(roll).lengthSteps())).sum();
    }

    /**
     * The same panels and rolls on a wall of another developed area ratio: only what is worked along the texture changes.
     *
     * @param wall  the name of a wall of the survey
     * @param ratio developed area over visible area, 1 to 20
     * @return a plan with other amounts of work
     * @throws io.github.bedjoint.units.RefusedException if there is no such wall or the ratio is out of range
     */
    public JobPlan withAreaRatio(String wall, double ratio) {
        Wall changed = job.survey().wall(wall);
        double factor = Door.number("area ratio of " + wall, ratio, RATIO) / changed.surface().areaRatio();
        double before = areas.walls().stream().filter(one -> one.wall().name().equals(wall)).mapToDouble(WallAreas::developedM2).sum();
        List<WorkPlace> other = new ArrayList<>();
        for (WorkPlace place : places) {
            other.add(place.name().equals(wall) ? place.withAmounts(along(place.amounts(), factor)) : place);
        }
        return new JobPlan(this, List.copyOf(other), developedM2 + before * (factor - 1));
    }

    private static Amounts along(Amounts amounts, double factor) {
        return amounts.withInner(Driver.DEVELOPED_AREA, amounts.inner(Driver.DEVELOPED_AREA) * factor)
                .withInner(Driver.HEATED_AREA, amounts.inner(Driver.HEATED_AREA) * factor);
    }

    /**
     * Hours, cost, price and hand-over of a job that has these panels and rolls.
     *
     * @param other the job this plan was made for, or one that differs from it in paces, rates, prices, dates and extras only
     * @return its figures, the same as {@link JobCost} gives
     * @throws IllegalStateException if there is no plan; see {@link #reasons()}
     */
    public JobFigures figures(Job other) {
        if (!isPossible()) {
            throw new IllegalStateException("There is no plan: " + String.join("; ", reasons));
        }
        return JobFigures.of(JobWork.of(other, this), openedM);
    }

    /**
     * The job it was made for.
     *
     * @return the job
     */
    public Job job() {
        return job;
    }

    /**
     * Whether panels and rolls were found.
     *
     * @return false where {@link #reasons()} say why not
     */
    public boolean isPossible() {
        return reasons.isEmpty();
    }

    /**
     * Why there is no plan.
     *
     * @return one sentence each; empty where there is one
     */
    public List<String> reasons() {
        return reasons;
    }

    List<PanelLayout> layouts() {
        return layouts;
    }

    @Nullable LayoutChoice choice() {
        return choice;
    }

    JobAreas areas() {
        return areas;
    }

    @Nullable RollPlan film() {
        return film;
    }

    @Nullable WasteAccount waste() {
        return waste;
    }

    @Nullable LaminatePlan laminate() {
        return laminate;
    }

    List<WorkPlace> places() {
        return places;
    }

    /** In which ways the walls are reached. */
    Set<Access> accesses() {
        return accesses;
    }

    /** What is thrown away, where the job says what that costs. */
    Optional<JobDisposal> disposal(Job other) {
        WasteAccount account = waste;
        return account == null ? Optional.empty() : other.disposal().map(terms -> new JobDisposal(terms, account, areas));
    }

    double developedM2() {
        return developedM2;
    }

    double printedM2() {
        return printedM2;
    }

    /**
     * Length of the film rolls opened.
     *
     * @return metres, 0 where there is no plan
     */
    public double filmOpenedM() {
        return openedM;
    }

    /** Panels and rolls in one line, or why there are none. */
    @Override
    public String toString() {
        return isPossible() && film != null
                ? layouts.stream().mapToInt(layout -> layout.panels().size()).sum() + " panels from " + film.rolls().size() + " rolls"
                : String.join("; ", reasons);
    }
}
