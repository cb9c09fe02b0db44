package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.checker.PlanChecker;
import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.job.Spares;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.waste.WastePart;
import io.github.bedjoint.working.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.Map;
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
        assertThat(rows[0]).isEqualTo("file,wall,panel,from left,from top,width,height,quarter turn,whole,copies");
        assertThat(rows).hasSize(1 + cost.layouts().get(0).panels().size());
        // The second drop begins a printable width less an overlap from the first: 1360 - 20 mm.
        assertThat(rows[2]).isEqualTo("Street front-02-of-06,Street front,2,1340.0 mm,0.0 mm,1360.0 mm,3050.0 mm,no,yes,1");
        assertThat(JobResult.of(cost).toString()).contains("\"file\" : \"Street front-02-of-06\"", "\"fromLeft\" : 1.34,");
        assertThat(Steps.toM(cost.prints().get(0).files().get(1).fromLeftSteps())).isEqualTo(1.34);
    }

    @Test
    void prints_ofAPictureOnPartOfTheWall_countFromItsCornerAndSayWhatStaysBlank() throws IOException {
        // The picture reaches from 1.34 to 5.34 m along and from -0.03 to 3.02 m up, as high as wall and edges. Drops of 1.36 m begin at
        // 0, 1.34, 2.68, 4.02 and so on: 2 and 3 lie within it, 4 ends at 5.38 m, 0.04 m beyond, 1 begins 1.34 m before it.
        String placed = demo("").replace("\"name\": \"Street front\",",
                "\"name\": \"Street front\", \"picture\": {\"left\": \"1.34 m\", \"bottom\": \"-30 mm\", \"width\": \"4 m\", \"height\": \"3.05 m\"},");
        JobCost cost = JobCost.of(JobFile.parse(placed));
        String[] rows = JobTables.prints(cost, UnitStyle.METRIC).split("\n");
        assertThat(rows[1]).isEqualTo("Street front-01-of-06,Street front,1,-1340.0 mm,0.0 mm,1360.0 mm,3050.0 mm,no,no,1");
        assertThat(rows[2]).isEqualTo("Street front-02-of-06,Street front,2,0.0 mm,0.0 mm,1360.0 mm,3050.0 mm,no,yes,1");
        assertThat(rows[4]).contains(",2680.0 mm,0.0 mm,").endsWith(",no,no,1");
        assertThat(cost.verdicts(UnitStyle.METRIC)).anySatisfy(verdict -> {
            assertThat(verdict.level()).isEqualTo(Verdict.Level.CAUTION);
            assertThat(verdict.toString()).contains("Street front: picture", "panels 1, 4, 5, 6 of 6");
        });
        assertThat(JobCost.of(JobFile.parse(demo(""))).verdicts(UnitStyle.METRIC)).noneMatch(verdict -> verdict.subject().endsWith(": picture"));
        assertThat(JobFile.parse(JobFile.write(cost.job())).statedPicture("Street front")).isEqualTo(cost.job().statedPicture("Street front"));
    }

    @ParameterizedTest
    @CsvSource({"left,-1001 m,-1000", "bottom,1001 m,1000", "width,0 m,more than 0 m", "height,10001 m,at most 10000 m"})
    void read_pictureOutOfRange_namesFieldAndLimit(String field, String value, String limit) throws IOException {
        Map<String, String> picture = new LinkedHashMap<>(Map.of("left", "0 m", "bottom", "0 m", "width", "1 m", "height", "1 m"));
        picture.put(field, value);
        String wrong = demo("").replace("\"name\": \"Street front\",", "\"name\": \"Street front\", \"picture\": " + JsonTree.write(picture) + ",");
        assertThatThrownBy(() -> JobFile.parse(wrong)).isInstanceOfSatisfying(RefusedException.class, e -> {
            assertThat(e.parameter()).isEqualTo("walls[0].picture." + field);
            assertThat(e.limit()).contains(limit);
        });
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
