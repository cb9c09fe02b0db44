package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.Laminate;
import io.github.bedjoint.film.RollOffer;
import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JsonTree;
import io.github.bedjoint.jobfile.RandomJobs;
import io.github.bedjoint.layout.Direction;
import io.github.bedjoint.layout.Fit;
import io.github.bedjoint.layout.LayoutPlanner;
import io.github.bedjoint.layout.SeamRules;
import io.github.bedjoint.price.LineKind;
import io.github.bedjoint.rolls.OpenedRoll;
import io.github.bedjoint.rolls.RollPlan;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Steps;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.joda.money.CurrencyUnit;
import org.joda.money.Money;

/**
 * Drawn jobs with film and laminate in two widths, whose hours are not charged: what is chosen by is the lines of film, laminate and ink to the
 * rounding of the ink, less the credits of remnants, and no single way costs less than the bound that the choice states.
 */
class JobLayoutsProperties {
    private static final Set<LineKind> MATERIAL = Set.of(LineKind.FILM, LineKind.LAMINATE, LineKind.INK);
    private static final BigDecimal ROUNDING = new BigDecimal("0.02");

    private static Job job(long seed) {
        Map<String, Object> tree = RandomJobs.tree(seed);
        JsonTree.remove(tree, "labour.production");
        JsonTree.remove(tree, "labour.site");
        Job drawn = JobFile.parse(JsonTree.write(tree));
        Random random = new Random(seed);
        Film film = drawn.materials().film();
        double widerM = Steps.toM(film.rollWidthSteps()) * (1.1 + random.nextDouble() / 2);
        List<RollOffer> rolls = new ArrayList<>(drawn.materials().filmRolls());
        rolls.add(roll("wider", random).withWidth(Door.length(widerM)));
        List<RollOffer> covers = List.of(
                roll("cover", random).orderedBy(random.nextInt(3), 1 + random.nextInt(2)), roll("wide cover", random).withWidth(Door.length(widerM)));
        Materials both = drawn.materials().withFilm(film, rolls)
                .withLaminate(Laminate.of("laminate", film.rollWidth()), covers, Door.length(random.nextDouble()));
        return drawn.toBuilder().materials(both).build();
    }

    private static RollOffer roll(String id, Random random) {
        return RollOffer.of(id, Door.length(10 + random.nextInt(50)), Money.of(CurrencyUnit.EUR, 20 + random.nextInt(400)));
    }

    /** What the customer pays for material, less what remnants are worth. */
    private static BigDecimal paid(JobCost cost) {
        BigDecimal lines = cost.price().lines().stream()
                .filter(line -> MATERIAL.contains(line.kind()))
                .map(line -> line.amount().getAmount())
                .reduce(BigDecimal.ZERO, BigDecimal::add);
        return lines.subtract(BigDecimal.valueOf(cost.filmPlan().rolls().stream().mapToLong(OpenedRoll::credit).sum(), 2));
    }

    private static List<JobCost> singleWays(Job job) {
        List<JobCost> all = new ArrayList<>();
        for (Film width : job.materials().films()) {
            List<RollOffer> rolls = job.materials().filmRolls().stream().filter(roll -> widthOf(roll, job) == width.rollWidthSteps()).toList();
            Materials alone = job.materials().withFilm(job.materials().film(), rolls);
            for (Direction way : List.of(Direction.DROPS, Direction.BANDS)) {
                if (job.layout().direction() == way || job.layout().direction() == Direction.CHEAPEST) {
                    all.add(JobCost.of(job.toBuilder().materials(alone).layout(job.layout().withDirection(way)).build()));
                }
            }
        }
        return all;
    }

    private static long widthOf(RollOffer roll, Job job) {
        return roll.widthSteps() == 0 ? job.materials().film().rollWidthSteps() : roll.widthSteps();
    }

    @Property(tries = 100)
    void choice_ofEveryJob_isWhatIsPaidAndNoSingleWayIsBelowItsBound(@ForAll long seed) {
        JobCost cost = JobCost.of(job(seed));
        Statistics.label("priced").collect(cost.isPriced());
        if (!cost.isPriced()) {
            return;
        }
        LayoutChoice choice = cost.choice().orElseThrow();
        Statistics.label("proven").collect(choice.isProven());
        assertThat(choice.cost().getAmount().subtract(paid(cost)).abs()).isLessThanOrEqualTo(ROUNDING);
        for (JobCost single : singleWays(cost.job())) {
            if (single.isPriced()) {
                assertThat(choice.lowerBound().getAmount()).isLessThanOrEqualTo(paid(single).add(ROUNDING));
            }
        }
    }

    /** The same job, hours charged, with seams kept farther from jambs and corners and a start that is set: one of the ways that the bound is for. */
    @Property(tries = 30)
    void bound_ofCheapestSeams_isNeverAboveAJobThatMayDoLess(@ForAll long seed) {
        Random random = new Random(seed);
        Job drawn = JobFile.parse(JsonTree.write(RandomJobs.tree(seed)));
        Job free = drawn.toBuilder().layout(drawn.layout().withFit(Fit.CHEAPEST).withSeamRules(SeamRules.withDefaults())).build();
        SeamRules rules = SeamRules.withDefaults().withJambClearance(Door.length(random.nextDouble() / 10)).withCornerClearance(Door.length(random.nextDouble() / 5));
        LayoutPlanner bound = free.layout().withSeamRules(rules);
        Job less = free.toBuilder().layout(random.nextBoolean() ? bound.withStart(Side.RIGHT).withStart(Side.TOP) : bound).build();
        Optional<LayoutChoice> choice = JobCost.of(free).choice();
        Optional<LayoutChoice> other = JobCost.of(less).choice();
        Statistics.label("both").collect(choice.isPresent() && other.isPresent());
        if (choice.isPresent() && other.isPresent()) {
            Statistics.label("proven").collect(choice.get().isProven());
            Statistics.label("gap").collect(share(choice.get()));
            assertThat(choice.get().lowerBound()).isLessThanOrEqualTo(other.get().cost());
        }
    }

    private static String share(LayoutChoice choice) {
        double gap = choice.gap().getAmount().doubleValue() / Math.max(0.01, choice.cost().getAmount().doubleValue());
        return gap == 0 ? "none" : gap < 0.02 ? "below 2 %" : gap < 0.1 ? "below 10 %" : "more";
    }

    /** However the film is cut, the laminate of it costs no less than the bound: each film roll on offer alone is another way to cut it. */
    @Property(tries = 100)
    void leastLaminate_ofOtherFilmPlans_isNeverAboveTheirLaminate(@ForAll long seed) {
        Job job = job(seed);
        JobPlan plan = JobPlan.of(job);
        RollPlan film = plan.film();
        if (film == null || !film.isFeasible()) {
            return;
        }
        OrderedRolls covers = new OrderedRolls(job.materials().laminateRolls());
        long least = covers.atLeast(RollJob.leastLaminate(job, film, RollJob.WORK));
        for (RollOffer offer : new FilmWidths(job.materials()).covered()) {
            Job alone = job.toBuilder().materials(job.materials().withFilm(job.materials().film(), List.of(offer))).build();
            RollPlan other = RollJob.film(alone, plan.layouts(), RollJob.WORK);
            if (other.isFeasible()) {
                RollJob.laminate(job, other, RollJob.WORK).filter(one -> one.plan().isFeasible())
                        .ifPresent(one -> {
                            Statistics.label("bound met").collect(covers.cost(one.plan()) == least);
                            assertThat(least).isLessThanOrEqualTo(covers.cost(one.plan()));
                        });
            }
        }
    }
}
