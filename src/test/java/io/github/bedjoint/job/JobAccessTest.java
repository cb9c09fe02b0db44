package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.labour.LabourEstimate;
import io.github.bedjoint.labour.TaskTime;
import io.github.bedjoint.price.CostLine;
import io.github.bedjoint.survey.DeductionRule;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.survey.WallAreas;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Height, hire, premium and learning in a whole job. */
class JobAccessTest {
    private static final String JOB = read();
    private static final String HIRE = "\"hire\": [{\"access\": \"platform\", \"name\": \"Platform\", \"delivery\": \"EUR 40.00\", \"dayRate\": \"EUR 25.00\","
            + " \"leastDays\": 2, \"items\": 3%s}],";

    private static String read() {
        try {
            return Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JobCost with(String fields) {
        return JobCost.of(JobFile.parse(JOB.replace("\"deduction\":", fields + "\n  \"deduction\":")));
    }

    private static JobCost labour(String fields) {
        return JobCost.of(JobFile.parse(JOB.replace("\"siteCrew\": 2,", "\"siteCrew\": 2, " + fields + ",")));
    }

    private static double basic(JobCost cost, String task) {
        return cost.labour().task(task).map(TaskTime::basicS).orElseThrow();
    }

    /**
     * By hand: of 17.80 m2 the door (1.00 x 2.00), window (1.40 x 1.10 of it) and vent leave 7.20 x 2 - 2 - 1.54 - 0.02 = 10.84 below 2 m; the
     * mean factor is (10.84 x 1 + 6.96 x 1.15) / 17.80.
     */
    @Test
    void heights_brickFront_slowWhatIsAboveTwoMetres() {
        JobCost plain = with("");
        JobCost cost = with("\"heights\": {},");
        double factor = (10.84 + 6.96 * 1.15) / 17.80;
        assertThat(basic(cost, "wipe") / basic(plain, "wipe")).isCloseTo(factor, within(1e-9));
        assertThat(basic(cost, "ground")).isEqualTo(basic(plain, "ground"));
        WorkingCheck.check(cost.working());
    }

    /** By hand: 3 m up, all of the wall lies above 2 m, 1 m of it below 4 m: (1/3-odd parts by area) between 1.15 and 1.3. */
    @Test
    void heights_wallAboveTheGround_isReachedFromHigher() {
        String up = JOB.replace("\"access\": \"ground\"", "\"access\": \"ground\", \"bottom\": \"3 m\"");
        JobCost cost = JobCost.of(JobFile.parse(up.replace("\"deduction\":", "\"heights\": {},\n  \"deduction\":")));
        // 1 m of 7.20 less door 1.00, window 0.10 x 1.40 and vent: 6.04 by platform, the other 11.76 by scaffold.
        assertThat(basic(cost, "wipe") / basic(with(""), "wipe")).isCloseTo((6.04 * 1.15 + 11.76 * 1.3) / 17.80, within(1e-9));
        assertThat(cost.verdicts(UnitStyle.METRIC)).anySatisfy(v -> assertThat(v.reason()).contains("a scaffold is needed"));
    }

    /** A factor that the job states goes before the bands. */
    @Test
    void heights_statedFactor_goesFirst() {
        String stated = JOB.replace("\"access\": \"ground\"", "\"access\": \"ground\", \"accessFactor\": 1");
        JobCost cost = JobCost.of(JobFile.parse(stated.replace("\"deduction\":", "\"heights\": {},\n  \"deduction\":")));
        assertThat(basic(cost, "wipe")).isEqualTo(basic(with(""), "wipe"));
        assertThat(JobFile.parse(JobFile.write(cost.job())).statedFactor("Street front")).contains(1.0);
    }

    @Test
    void heights_ladderInABand_isWarnedOf() {
        JobCost cost = with("\"heights\": {\"bands\": [{\"upTo\": \"2 m\", \"access\": \"ground\"}], \"above\": \"ladder\", \"factors\": {\"ladder\": 3}},");
        assertThat(cost.verdicts(UnitStyle.METRIC)).anySatisfy(verdict -> {
            assertThat(verdict.level()).isEqualTo(Verdict.Level.WARNING);
            assertThat(verdict.reason()).contains("ladder");
        });
        assertThat(basic(cost, "wipe") / basic(with(""), "wipe")).isCloseTo((10.84 + 6.96 * 3) / 17.80, within(1e-9));
    }

    /** By hand: two stays (installing and washing) of the least 2 days, 3 platforms: 2 x 40 = 80 and 2 x 2 x 3 x 25 = 300. */
    @Test
    void hire_forInstallingAndWashing_comesTwice() {
        JobCost cost = with("\"heights\": {}, " + HIRE.formatted(""));
        assertThat(hires(cost)).containsExactly("Platform, delivery and return EUR 80.00", "Platform, days EUR 300.00");
        JobCost once = with("\"heights\": {}, " + HIRE.formatted(", \"alsoForWashing\": false"));
        assertThat(hires(once)).containsExactly("Platform, delivery and return EUR 40.00", "Platform, days EUR 150.00");
        WorkingCheck.check(cost.working());
        assertThat(cost.working("labour.hire-cost").orElseThrow().result().orElseThrow().doubleValue()).isEqualTo(190);
    }

    private static List<String> hires(JobCost cost) {
        return cost.price().lines().stream().filter(line -> line.title().startsWith("Platform")).map(line -> line.title() + " " + line.amount()).toList();
    }

    @Test
    void hire_thatNoWallNeeds_isNotChargedAndSaid() {
        JobCost cost = with(HIRE.formatted(""));
        assertThat(hires(cost)).isEmpty();
        assertThat(cost.verdicts(UnitStyle.METRIC)).anySatisfy(verdict -> assertThat(verdict.reason()).startsWith("Platform is not charged"));
    }

    /** By hand: a quarter on 13.598242 h of site wages at 44: 149.58; half on 2.334083 h at 36: 42.01; the hours stay. */
    @Test
    void premium_onBothWages_isALineOfItsOwn() {
        JobCost plain = with("");
        JobCost cost = labour("\"premium\": {\"name\": \"Night work\", \"site\": 0.25, \"shop\": 0.5}");
        assertThat(cost.price().lines()).filteredOn(line -> line.title().startsWith("Night")).extracting(CostLine::toString)
                .anySatisfy(line -> assertThat(line).startsWith("Night work, premium in the shop").endsWith("EUR 42.01"))
                .anySatisfy(line -> assertThat(line).startsWith("Night work, premium on site").endsWith("EUR 149.58"));
        assertThat(cost.labour().totalPaidS()).isEqualTo(plain.labour().totalPaidS());
        assertThat(cost.price().direct().minus(plain.price().direct())).hasToString("EUR 191.59");
        WorkingCheck.check(cost.working());
    }

    /** By the derived table of learning curves, four units at 80 % take 3.142104 times the first; the machines do not learn. */
    @Test
    void learning_fourWallsAlike_timesTheHandsAndNotTheMachines() {
        JobCost one = labour("\"learning\": {\"law\": \"unit\", \"rate\": 0.8}");
        Wall wall = one.job().survey().walls().get(0);
        JobBuilder four = one.job().toBuilder().survey(io.github.bedjoint.survey.Survey.of(wall, named(wall, "B"), named(wall, "C"), named(wall, "D")));
        four.materials(one.job().materials().withFilm(one.job().materials().film(), List.of(one.job().materials().filmRolls().get(0))));
        LabourEstimate hours = JobCost.of(four.build()).labour();
        assertThat(hours.task("heat-roll").orElseThrow().basicS() / basic(one, "heat-roll")).isCloseTo(3.142104, within(1e-6));
        assertThat(hours.task("inspect").orElseThrow().basicS() / basic(one, "inspect")).isCloseTo(3.142104, within(1e-6));
        assertThat(hours.task("prepare-print").orElseThrow().basicS()).isEqualTo(basic(one, "prepare-print"));
        WorkingCheck.check(hours.working());
    }

    private static Wall named(Wall wall, String name) {
        Wall copy = Wall.rectangle(name, wall.width(), wall.height()).withSurface(wall.surface()).withOpenings(wall.openings()).withAccess(wall.access());
        for (var edge : wall.edges().entrySet()) {
            copy = copy.withEdge(edge.getKey(), edge.getValue());
        }
        return copy;
    }

    /** By hand: a gable 4 m wide with eaves at 2 m and its ridge at 4 m: 8 m2 below 2 m, 11 m2 below 3 m (the strip is 4 to 2 m wide), 12 m2 in all. */
    @Test
    void visibleBelow_gable_isCutAtTheHeight() {
        List<Point> outline = List.of(Point.of(Read.length("0 m"), Read.length("0 m")), Point.of(Read.length("4 m"), Read.length("0 m")),
                Point.of(Read.length("4 m"), Read.length("2 m")), Point.of(Read.length("2 m"), Read.length("4 m")), Point.of(Read.length("0 m"), Read.length("2 m")));
        WallAreas gable = WallAreas.of(Wall.polygon("Gable", outline), DeductionRule.none());
        assertThat(gable.visibleBelowM2(0)).isEqualTo(0);
        assertThat(gable.visibleBelowM2(2)).isCloseTo(8, within(1e-12));
        assertThat(gable.visibleBelowM2(3)).isCloseTo(11, within(1e-12));
        assertThat(gable.visibleBelowM2(99)).isCloseTo(gable.visibleM2(), within(1e-12));
        Wall holed = gable.wall().withOpening(Opening.of(
                Opening.Kind.WINDOW, Read.length("1 m"), Read.length("1 m"), Read.length("2 m"), Read.length("1 m")));
        assertThat(WallAreas.of(holed, DeductionRule.none()).visibleBelowM2(1.5)).isCloseTo(6 - 1, within(1e-12));
    }

    @Test
    void parse_wrongAccess_isRefusedUnderItsPath() {
        assertThatThrownBy(() -> with("\"heights\": {\"bands\": []},")).isInstanceOf(RefusedException.class).hasMessageContaining("heights.above");
        assertThatThrownBy(() -> with("\"heights\": {\"above\": \"rope\"},")).hasMessageContaining("heights.above");
        assertThatThrownBy(() -> with("\"heights\": {\"factors\": {\"lift\": 11}},")).hasMessageContaining("heights.factors.lift");
        assertThatThrownBy(() -> with("\"heights\": {\"bands\": [{\"upTo\": \"0 m\", \"access\": \"lift\"}], \"above\": \"lift\"},")).hasMessageContaining("heights.bands[0].upTo");
        assertThatThrownBy(() -> with(HIRE.formatted("").replace("\"items\": 3", "\"items\": 0"))).hasMessageContaining("hire[0].items");
        assertThatThrownBy(() -> with(HIRE.formatted("").replace("\"platform\"", "\"ground\""))).hasMessageContaining("hire[0].access");
        assertThatThrownBy(() -> with(HIRE.formatted("").replace("EUR 25.00", "USD 25.00"))).hasMessageContaining("hire[0].dayRate");
        assertThatThrownBy(() -> labour("\"premium\": {\"name\": \"Night\", \"site\": 4}")).hasMessageContaining("labour.premium.site");
        assertThatThrownBy(() -> labour("\"learning\": {\"law\": \"unit\", \"rate\": 0.4}")).hasMessageContaining("labour.learning.rate");
        assertThatThrownBy(() -> with("").job().toBuilder().access(SiteAccess.plain().withBottom("Street front", Read.length("-1 m")))).hasMessageContaining("bottom");
    }
}
