package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JsonTree;
import io.github.bedjoint.jobfile.RandomJobs;
import io.github.bedjoint.labour.Crew;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.Task;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.price.Rounding;
import io.github.bedjoint.schedule.Span;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.statistics.Statistics;
import org.joda.money.Money;

/** Laws of a whole job: what may not change a total, what adds up, and what never hands over later or earlier. */
class JobLawsProperties {
    private static Job job(String json) {
        return JobFile.parse(json);
    }

    private static String rich(long seed) {
        return JsonTree.write(RandomJobs.rich(seed));
    }

    /** The hand-over of a job that differs from the planned one in labour and dates only; null where there is none. */
    private static ZonedDateTime handOver(JobPlan plan, Job job) {
        JobFigures figures = plan.figures(job);
        Statistics.label("dated").collect(figures.handOver() != null);
        return figures.handOver();
    }

    private static JobPlan planned(long seed) {
        JobPlan plan = JobPlan.of(job(rich(seed)));
        assumeThat(plan.isPossible()).isTrue();
        return plan;
    }

    /** The order of tasks in the table is for people; hours and money are the same to the last bit. */
    @Property
    void figures_tasksPermuted_sameTotals(@ForAll long seed) {
        JobPlan plan = planned(seed);
        Labour labour = plan.job().labour();
        List<Task> tasks = new ArrayList<>(labour.tasks().tasks());
        Collections.shuffle(tasks, new Random(seed));
        JobFigures before = plan.figures(plan.job());
        JobFigures after = plan.figures(plan.job().toBuilder().labour(labour.withTasks(TaskTable.of(tasks))).build());
        assertThat(after.paidS()).isEqualTo(before.paidS());
        assertThat(after.siteDays()).isEqualTo(before.siteDays());
        assertThat(after.total()).isEqualTo(before.total());
        assertThat(after.cost()).isEqualTo(before.cost());
    }

    /** Trips, hires and extras may be given in any order. */
    @Property
    void figures_linesAndTripsPermuted_sameTotals(@ForAll long seed) {
        JobPlan plan = planned(seed);
        Job job = plan.job();
        List<CostLine> extras = new ArrayList<>(job.extras());
        Collections.reverse(extras);
        List<io.github.bedjoint.labour.Trip> trips = new ArrayList<>(job.labour().trips());
        Collections.reverse(trips);
        JobFigures before = plan.figures(job);
        JobFigures after = plan.figures(job.toBuilder().extras(extras).labour(job.labour().withTrips(trips)).build());
        assertThat(after.paidS()).isEqualTo(before.paidS());
        assertThat(after.total()).isEqualTo(before.total());
        assertThat(after.handOver()).isEqualTo(before.handOver());
    }

    /** Without decimals, with two, and with three, under every rounding: lines, cost, price and tax add up to the last coin. */
    @Property
    void price_everyCurrencyAndRounding_addsUp(@ForAll long seed, @ForAll @IntRange(max = 2) int which, @ForAll Rounding rounding) {
        String code = List.of("EUR", "JPY", "BHD").get(which);
        String json = rich(seed);
        json = (which == 1 ? json.replaceAll("\"EUR (\\d+)\\.(\\d\\d)\"", "\"EUR $1$2\"") : json).replace("EUR", code);
        Job job = job(json);
        JobCost cost = JobCost.of(job.toBuilder().rules(job.rules().withRounding(rounding)).build());
        assumeThat(cost.isPriced()).isTrue();
        PriceBuildUp price = cost.price();
        Money zero = Money.zero(price.total().getCurrencyUnit());
        assertThat(zero.getCurrencyUnit().getCode()).isEqualTo(code);
        assertThat(price.lines().stream().map(CostLine::amount).reduce(zero, Money::plus)).isEqualTo(price.direct());
        assertThat(price.direct().plus(price.overhead()).plus(price.contingency())).isEqualTo(price.cost());
        assertThat(price.net().plus(price.tax())).isEqualTo(price.total());
        List<CostLine> shuffled = new ArrayList<>(price.lines());
        Collections.shuffle(shuffled, new Random(seed));
        assertThat(PriceBuildUp.of(shuffled, cost.labour().totalPaid(), price.rules()).total()).isEqualTo(price.total());
    }

    /** More people in all never finish later, whatever the crews. */
    @Property
    void handOver_morePeople_isNotLater(@ForAll long seed, @ForAll @IntRange(min = 2, max = 8) int people) {
        JobPlan plan = planned(seed);
        ZonedDateTime fewer = handOver(plan, withDates(plan, dates -> dates.withPeople(people)));
        ZonedDateTime more = handOver(plan, withDates(plan, dates -> dates.withPeople(people + 1)));
        if (fewer != null) {
            assertThat(more).isNotNull().isBeforeOrEqualTo(fewer);
        }
    }

    /** A larger crew on site never finishes later, also where two together do less than one alone. */
    @Property
    void handOver_largerSiteCrew_isNotLater(
            @ForAll long seed, @ForAll @IntRange(min = 1, max = 6) int crew, @ForAll @DoubleRange(min = 0.05, max = 1) double efficiency) {
        JobPlan plan = planned(seed);
        Job open = withDates(plan, dates -> dates.withPeople(0));
        ZonedDateTime fewer = handOver(plan, withCrew(open, new Crew(crew, efficiency)));
        ZonedDateTime more = handOver(plan, withCrew(open, new Crew(crew + 1, efficiency)));
        if (fewer != null) {
            assertThat(more).isNotNull().isBeforeOrEqualTo(fewer);
        }
    }

    private static Job withCrew(Job job, Crew crew) {
        return job.toBuilder().labour(job.labour().withSiteCrew(crew)).build();
    }

    private static Job withDates(JobPlan plan, java.util.function.UnaryOperator<JobDates> change) {
        assumeThat(plan.job().dates()).isPresent();
        return plan.job().toBuilder().dates(change.apply(plan.job().dates().orElseThrow())).build();
    }

    /** After washing, wiping, applying, rain or printing: whoever waits longer never hands over earlier. */
    @Property
    void handOver_longerWait_isNotEarlier(@ForAll long seed, @ForAll @IntRange(max = 5) int which, @ForAll @IntRange(min = 1, max = 200) int quarters) {
        JobPlan plan = planned(seed);
        ZonedDateTime before = handOver(plan, plan.job());
        long more = quarters * 900L;
        Job longer = switch (which) {
            case 0 -> withDates(plan, d -> d.withWaits(w -> w.withWashBefore(longer(w.washBefore(), more))));
            case 1 -> withDates(plan, d -> d.withWaits(w -> w.withCure(longer(w.cure(), more))));
            case 2 -> withDates(plan, d -> d.withWaits(w -> w.withWipe(longer(w.wipeAtLeast(), more / 20), w.wipeAtMost())));
            case 3 -> withDates(plan, d -> d.withRain(d.rain().dryingFor(longer(d.rain().drying(), more))));
            case 4 -> plan.job().toBuilder().labour(plan.job().labour().withTrips(plan.job().labour().trips().stream()
                    .map(trip -> trip.withWait(Door.time(trip.waitS() + more))).toList())).build();
            default -> outgassing(plan.job(), more);
        };
        ZonedDateTime after = handOver(plan, longer);
        if (before != null && after != null) {
            assertThat(after).isAfterOrEqualTo(before);
        }
        if (before == null) {
            assertThat(after).isNull();
        }
    }

    private static Span longer(Span span, long more) {
        return new Span(span.seconds() + more, span.base());
    }

    private static Job outgassing(Job job, long more) {
        return job.materials().ink()
                .map(ink -> job.toBuilder().materials(job.materials().withFilm(
                        job.materials().film().withOutgas(Door.time(job.materials().film().outgasS(ink.family()) + more)), job.materials().filmRolls())).build())
                .orElse(job);
    }

    /** Whatever the table of actual costs says, its variances add up to the difference, and no change is no variance. */
    @Property
    void variance_ofAnyJob_addsUp(@ForAll long seed) {
        JobCost cost = JobCost.of(job(rich(seed)));
        assumeThat(cost.isPriced()).isTrue();
        String table = io.github.bedjoint.jobfile.ActualCosts.table(cost);
        var same = io.github.bedjoint.jobfile.ActualCosts.variance(cost, table);
        assertThat(same.total()).isEqualTo(cost.price().contingency().negated());
        assertThat(same.lines()).allMatch(line -> line.total().isZero() && line.price().isZero() && line.usage().isZero());
        String other = table.replaceFirst("hours,Person-hours,.*", "hours,Person-hours,7.7 h,").replaceAll("EUR 1", "EUR 2");
        var changed = io.github.bedjoint.jobfile.ActualCosts.variance(cost, other);
        Money sum = Money.zero(cost.total().getCurrencyUnit());
        for (var kind : io.github.bedjoint.price.VarianceKind.values()) {
            sum = sum.plus(changed.of(kind));
        }
        assertThat(sum).isEqualTo(changed.total()).isEqualTo(changed.actualCost().minus(cost.price().cost()));
        assertThat(Read.money(cost.price().overhead().toString())).isEqualTo(cost.price().overhead());
    }
}
