package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.Spares;
import io.github.bedjoint.rolls.PlanChecker;
import io.github.bedjoint.rolls.WastePart;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The print list and spare panels of a job file. */
class PrintsFileTest {

    private static String demo(String spares) throws IOException {
        return Files.readString(Path.of("docs", "jobs", "brick-front.json")).replace("\"cutting\":", spares + "\"cutting\":");
    }

    @Test
    void cost_oneSpare_isTheLongestPanelOnceMoreInRollsAndWaste() throws IOException {
        JobCost without = JobCost.of(JobFile.parse(demo("")));
        JobCost with = JobCost.of(JobFile.parse(demo("\"spares\": {\"each\": 1}, ")));
        // All panels are 3.05 m high: wall 3.00, soffit 0.02, ground 0.03; printable 1.372 less twice 0.006.
        assertThat(with.filmPlan().cuts()).hasSize(without.filmPlan().cuts().size() + 1);
        assertThat(with.waste().partsM2().get(WastePart.SPARE)).isCloseTo(3.05 * 1.36, within(1e-9));
        assertThat(with.waste().partsM2().values().stream().mapToDouble(a -> a).sum()).isCloseTo(with.waste().openedM2(), within(1e-9));
        assertThat(PlanChecker.check(with.filmPlan()).accepted()).isTrue();
        assertThat(with.prints().get(0).files().stream().mapToInt(file -> file.copies()).sum()).isEqualTo(without.layouts().get(0).panels().size() + 1);
    }

    @Test
    void cost_reprintRate_roundsUpOnEachWall() throws IOException {
        // 6 panels: 20 % of them are 1.2, rounded up to 2.
        JobCost cost = JobCost.of(JobFile.parse(demo("\"spares\": {\"reprintRate\": 0.2}, ")));
        assertThat(cost.prints().get(0).sparePanels()).hasSize(2);
        assertThat(JobFile.parse(JobFile.write(cost.job())).spares()).isEqualTo(Spares.byRate(0.2));
    }

    @Test
    void prints_ofTheDemo_areWorkedByHand() throws IOException {
        JobCost cost = JobCost.of(JobFile.parse(demo("")));
        String[] rows = JobTables.prints(cost, UnitStyle.METRIC).split("\n");
        assertThat(rows[0]).isEqualTo("file,wall,panel,from left,from top,width,height,quarter turn,copies");
        assertThat(rows).hasSize(1 + cost.layouts().get(0).panels().size());
        // The second drop begins a printable width less an overlap from the first: 1360 - 20 mm.
        assertThat(rows[2]).isEqualTo("Street front-02-of-06,Street front,2,1340.0 mm,0.0 mm,1360.0 mm,3050.0 mm,no,1");
        assertThat(JobResult.of(cost).toString()).contains("\"file\" : \"Street front-02-of-06\"", "\"fromLeft\" : 1.34,");
        assertThat(Steps.toM(cost.prints().get(0).files().get(1).fromLeftSteps())).isEqualTo(1.34);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"spares\": {\"each\": -1},          | spares.each",
        "\"spares\": {\"reprintRate\": 1.5},  | spares.reprintRate",
        "\"spares\": {},                      | spares"})
    void read_wrongSpares_areRefused(String spares, String path) throws IOException {
        String wrong = demo(spares + " ");
        assertThatThrownBy(() -> JobFile.parse(wrong)).isInstanceOfSatisfying(RefusedException.class, e ->
                assertThat(e.parameter()).startsWith(path));
    }
}
