package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobResult;
import io.github.bedjoint.jobfile.JsonTree;
import io.github.bedjoint.jobfile.RandomJobs;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.labour.TripTime;
import io.github.bedjoint.layout.Panel;
import io.github.bedjoint.layout.PanelLayout;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.price.PriceBuildUp;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.statistics.Statistics;
import org.joda.money.Money;

/** What holds of every job: drawn job files are costed, and costed again as they should not matter. */
class JobProperties {
    static JobCost cost(Map<String, Object> tree) {
        return JobCost.of(JobFile.parse(JsonTree.write(tree)));
    }

    /** What is exact in a result: money, cut sizes, rolls, days, dates, levels. */
    private static List<Object> exact(JobCost cost) {
        List<Object> all = new ArrayList<>();
        all.add(cost.isPossible());
        all.add(cost.reasons().size());
        for (PanelLayout layout : cost.layouts()) {
            for (Panel panel : layout.panels()) {
                all.add(panel.number() + ": " + panel.cutWidthSteps() + " x " + panel.cutLengthSteps());
            }
        }
        if (cost.isPriced()) {
            cost.price().lines().forEach(line -> all.add(line.title() + " " + line.amount()));
            all.add(cost.total());
            all.add(cost.filmPlan().rolls());
            all.add(cost.labour().siteDays().days());
            cost.timetable().filter(Timetable::isPossible).ifPresent(dates -> all.add(dates.handOver()));
        }
        cost.verdicts(UnitStyle.METRIC).forEach(verdict -> all.add(verdict.subject() + " " + verdict.level()));
        return all;
    }

    /** Ratios such as 1/3 do not end, so a figure may differ in the last place of a double; a cent may not. */
    @Property
    void cost_sameJobInFeet_isTheSameToTheCent(@ForAll long seed) {
        JobCost metric = cost(RandomJobs.tree(seed, UnitStyle.METRIC));
        JobCost imperial = cost(RandomJobs.tree(seed, UnitStyle.IMPERIAL));
        assertThat(exact(imperial)).isEqualTo(exact(metric));
    }

    /** At 100 % humidity the dew point is the air's temperature: a surface as warm as the air is at it, in Celsius and in Fahrenheit. */
    @net.jqwik.api.Example
    void cost_surfaceAtTheDewPointInFahrenheit_isTheSame() {
        cost_sameJobInFeet_isTheSameToTheCent(69);
    }

    @Property
    void cost_mirroredWalls_isTheSame(@ForAll long seed) {
        JobCost job = cost(RandomJobs.tree(seed));
        JobCost mirrored = cost(RandomJobs.mirrored(seed));
        assertThat(mirrored.isPriced()).isEqualTo(job.isPriced());
        assertThat(mirrored.areas().visible().getValue().doubleValue()).isCloseTo(visible(job), within(1e-9 * visible(job)));
        if (job.isPriced()) {
            // Panels of one size may be numbered and packed in another order, so the rolls are compared by what they cost.
            assertThat(mirrored.filmPlan().cost()).isEqualTo(job.filmPlan().cost());
            assertThat(mirrored.total()).isEqualTo(job.total());
        }
    }

    private static double visible(JobCost cost) {
        return cost.areas().visible().getValue().doubleValue();
    }

    /** Cut where the right neighbour of a drop begins, the two parts of a wall show as much wall as the whole. */
    @Property
    void areas_wallSplitAtASeam_areTheSame(@ForAll long seed) {
        Map<String, Object> tree = RandomJobs.simple(seed);
        JsonTree.put(tree, "layout.direction", "drops");
        JobCost whole = cost(tree);
        List<Panel> panels = whole.layouts().get(0).panels();
        long width = whole.job().survey().walls().get(0).widthSteps();
        long seam = panels.stream().mapToLong(panel -> panel.lowerLeft().xSteps()).filter(x -> x > 0 && x < width).findFirst().orElse(width / 2);
        Map<String, Object> wall = JsonTree.object(JsonTree.at(tree, "walls[0]"));
        Map<String, Object> left = new java.util.LinkedHashMap<>(wall);
        left.put("name", "Left");
        left.put("width", steps(seam));
        wall.put("width", steps(width - seam));
        JsonTree.array(tree.get("walls")).add(0, left);
        JobAreas parts = cost(tree).areas();
        assertThat(parts.visibleM2()).isCloseTo(whole.areas().visibleM2(), within(1e-9 * whole.areas().visibleM2()));
        assertThat(parts.developedM2()).isCloseTo(whole.areas().developedM2(), within(1e-9 * whole.areas().developedM2()));
        assertThat(parts.measuredM2()).isCloseTo(whole.areas().measuredM2(), within(1e-9 * whole.areas().measuredM2()));
    }

    private static String steps(long steps) {
        return java.math.BigDecimal.valueOf(steps).multiply(new java.math.BigDecimal("0.0125")).toPlainString() + " mm";
    }

    /** A wider or higher wall costs no less than the narrower one did, but for what the plans of the rolls leave open. */
    @Property
    void cost_moreWall_isNotLess(@ForAll long seed) {
        Map<String, Object> tree = RandomJobs.simple(seed);
        Random random = new Random(seed);
        String side = random.nextBoolean() ? "walls[0].width" : "walls[0].height";
        // What runs through the laminator, and its price, follow from the rolls that happen to be opened, not from the wall alone.
        tree.remove("laminate");
        tree.remove("cutting");
        JsonTree.put(tree, "layout.direction", random.nextBoolean() ? "drops" : "bands");
        JobCost less = cost(tree);
        long steps = less.job().survey().walls().get(0).widthSteps();
        if (side.endsWith("height")) {
            steps = less.job().survey().walls().get(0).heightSteps();
        }
        JsonTree.put(tree, side, steps(steps + 1 + random.nextInt(80_000)));
        JobCost more = cost(tree);
        if (less.isPriced() && more.isPriced()) {
            long gap = less.filmPlan().cost() - less.filmPlan().lowerBound();
            Money direct = more.price().direct().plus(Money.ofMinor(more.total().getCurrencyUnit(), gap));
            Statistics.label("gap").collect(gap > 0);
            assertThat(direct).isGreaterThanOrEqualTo(less.price().direct());
            if (gap == 0) {
                assertThat(more.total()).isGreaterThanOrEqualTo(less.total());
            }
        }
    }

    @Property
    void parts_ofEveryJob_addUp(@ForAll long seed) {
        JobCost cost = cost(RandomJobs.tree(seed));
        double developed = cost.areas().walls().stream().mapToDouble(WallAreas::developedM2).sum();
        assertThat(cost.areas().developedM2()).isCloseTo(developed, within(1e-9 * developed));
        assertThat(cost.areas().developedM2()).isGreaterThanOrEqualTo(cost.areas().visibleM2() * (1 - 1e-12));
        if (!cost.isPriced()) {
            assertThat(cost.reasons()).isNotEmpty();
            return;
        }
        double opened = cost.waste().openedM2();
        assertThat(cost.waste().partsM2().values().stream().mapToDouble(part -> part).sum()).isCloseTo(opened, within(1e-9 * opened));
        assertThat(cost.waste().partsM2().values()).allMatch(part -> part >= -1e-9);
        assertThat(cost.waste().filmYield().share()).isGreaterThan(0).isLessThanOrEqualTo(1);
        assertThat(cost.waste().filmYield().netShare()).isGreaterThan(0).isLessThanOrEqualTo(1 + 1e-12);
        PriceBuildUp price = cost.price();
        Money zero = Money.zero(price.total().getCurrencyUnit());
        assertThat(price.lines().stream().map(CostLine::amount).reduce(zero, Money::plus)).isEqualTo(price.direct());
        assertThat(price.direct().plus(price.overhead()).plus(price.contingency())).isEqualTo(price.cost());
        assertThat(price.net().plus(price.tax())).isEqualTo(price.total());
        double paid = cost.labour().tasks().stream().mapToDouble(TaskTime::paidS).sum()
                + cost.labour().siteDays().setUpPaidS() + cost.labour().siteDays().travelPaidS()
                + cost.labour().trips().stream().mapToDouble(TripTime::paidS).sum();
        assertThat(cost.labour().totalPaidS()).isCloseTo(paid, within(1e-9 * paid));
        assertThat(cost.labour().productionPaidS() + cost.labour().sitePaidS()).isCloseTo(paid, within(1e-9 * paid));
        int pieces = cost.filmPlan().rolls().stream().mapToInt(roll -> roll.pieces().size()).sum();
        assertThat(pieces).isEqualTo(cost.layouts().stream().mapToInt(layout -> layout.panels().size()).sum());
        assertThat(cost.isPossible()).isEqualTo(cost.verdicts(UnitStyle.METRIC).stream().noneMatch(v -> v.level() == Verdict.Level.REFUSED)
                && cost.timetable().map(Timetable::isPossible).orElse(true) && cost.labour().isPossible());
    }

    /** The order of walls, extras and tasks is for people; it changes no sum. */
    @Property
    void cost_permutedJob_isTheSame(@ForAll long seed) {
        Map<String, Object> tree = RandomJobs.tree(seed);
        JobCost before = cost(tree);
        Collections.reverse(JsonTree.array(tree.get("walls")));
        if (tree.containsKey("extras")) {
            Collections.reverse(JsonTree.array(tree.get("extras")));
        }
        if (tree.containsKey("consumables")) {
            tree.put("consumables", new ArrayList<>(JsonTree.array(tree.get("consumables"))));
        }
        JobCost after = cost(tree);
        assertThat(after.isPriced()).isEqualTo(before.isPriced());
        assertThat(after.reasons()).containsExactlyInAnyOrderElementsOf(before.reasons());
        if (before.isPriced() && before.filmPlan().isProven() && after.filmPlan().isProven()) {
            assertThat(after.filmPlan().cost()).isEqualTo(before.filmPlan().cost());
        }
        if (before.isPriced() && after.filmPlan().cost() == before.filmPlan().cost()) {
            assertThat(after.total()).isEqualTo(before.total());
        }
    }

    @Property
    void cost_twice_givesTheSameText(@ForAll long seed) {
        Job job = JobFile.parse(JsonTree.write(RandomJobs.tree(seed)));
        assertThat(JobResult.of(JobCost.of(job)).toString()).isEqualTo(JobResult.of(JobCost.of(job)).toString());
    }

    private static String text(JobCost cost) {
        return JobResult.of(cost).withWorking(cost.working()).toString();
    }

    /** One job, eight threads, one text: nothing a job holds changes while it is costed. */
    @Property(tries = 50)
    void cost_fromEightThreads_givesTheSameBytes(@ForAll long seed) throws Exception {
        String json = JsonTree.write(RandomJobs.tree(seed));
        String alone = text(JobCost.of(JobFile.parse(json)));
        Job shared = JobFile.parse(json);
        ExecutorService threads = Executors.newFixedThreadPool(8);
        try {
            for (Future<String> text : threads.invokeAll(Collections.nCopies(8, (Callable<String>) () -> text(JobCost.of(shared))))) {
                assertThat(text.get()).isEqualTo(alone);
            }
        } finally {
            threads.shutdown();
        }
    }
}
