package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.layout.PrintFile;
import io.github.bedjoint.layout.PrintList;
import io.github.bedjoint.rolls.CutKind;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Which cuts a shop can do, and in which units it values remnants, in a job file. */
class CuttingFileTest {
    private static String job(String cutting) {
        return """
                {"bedjoint": 1, "name": "Strips", "currency": "EUR",
                 "walls": [{"name": "a", "width": "0.4 m", "height": "6 m"}, {"name": "b", "width": "0.5 m", "height": "6 m"}],
                 "film": {"name": "film", "rollWidth": "1 m", "rolls": [{"id": "R", "length": "10 m", "price": "EUR 100.00"}]},
                 "cutting": {CUTTING}}
                """.replace("CUTTING", cutting);
    }

    /** Two strips of 6 m lie side by side on one roll of 10 m, 0.4 + 0.5 m of 1 m; one behind the other they need 12 m, two rolls. */
    @Test
    void cost_crossCutsOnly_layNothingSideBySide() {
        assertThat(JobCost.of(JobFile.parse(job("\"cuts\": \"free\""))).filmPlan().rolls()).hasSize(1);
        assertThat(JobCost.of(JobFile.parse(job("\"cuts\": \"guillotine\""))).filmPlan().rolls()).hasSize(1);
        assertThat(JobCost.of(JobFile.parse(job("\"cuts\": \"cross\""))).filmPlan().rolls()).hasSize(2);
        assertThat(JobFile.parse(JobFile.write(JobFile.parse(job("\"cuts\": \"cross\"")))).cutting().cuts()).isEqualTo(CutKind.CROSS);
        assertThat(JobFile.parse(job("")).cutting().cuts()).isEqualTo(CutKind.FREE);
    }

    /** Side by side 4 m are left: in whole units of 3 m they count 3 m, at half of EUR 10.00/m EUR 15.00; in metres EUR 20.00. */
    @Test
    void cost_remnantUnit_countsWholeUnits() {
        String half = "\"remnantValuePercent\": 50";
        assertThat(JobCost.of(JobFile.parse(job(half))).filmPlan().cost()).isEqualTo(8_000);
        String threes = half + ", \"remnantUnit\": \"3 m\"";
        assertThat(JobCost.of(JobFile.parse(job(threes))).filmPlan().cost()).isEqualTo(8_500);
        assertThat(JobFile.parse(JobFile.write(JobFile.parse(job(threes)))).cutting()).isEqualTo(JobFile.parse(job(threes)).cutting());
    }

    /**
     * On a roll of 1 x 2 m, "high" takes 1.2 m of all its width. "wide", 0.8 x 1 m, needs another metre upright and a second roll; lying
     * across, its metre fills the width for 0.8 m, 1.2 + 0.8 = 2 m.
     */
    @Test
    void cost_panelsThatFitOneRollOnlyTurned_areTurnedWhereThatIsAllowed() {
        String job = """
                {"bedjoint": 1, "name": "Two", "currency": "EUR",
                 "walls": [{"name": "high", "width": "1 m", "height": "1.2 m"}, {"name": "wide", "width": "0.8 m", "height": "1 m"}],
                 "film": {"name": "film", "rollWidth": "1 m", "rolls": [{"id": "R", "length": "2 m", "price": "EUR 100.00"}]},
                 "cutting": {CUTTING}}
                """;
        JobCost upright = JobCost.of(JobFile.parse(job.replace("CUTTING", "")));
        assertThat(upright.filmPlan().rolls()).hasSize(2);
        assertThat(upright.verdicts(UnitStyle.METRIC)).noneMatch(verdict -> verdict.subject().contains("across the roll"));
        JobCost turned = JobCost.of(JobFile.parse(job.replace("CUTTING", "\"turn\": true")));
        assertThat(turned.filmPlan().rolls()).hasSize(1);
        assertThat(turned.prints()).flatExtracting(PrintList::files).extracting(PrintFile::quarterTurn).containsExactly(false, true);
        assertThat(turned.verdicts(UnitStyle.METRIC))
                .filteredOn(verdict -> verdict.subject().equals("wide: panels across the roll"))
                .singleElement()
                .satisfies(verdict -> assertThat(verdict.reason()).startsWith("panel 1 of 1 lies turned by a quarter on the roll"));
        assertThat(JobFile.parse(JobFile.write(turned.job())).turnsPanels()).isTrue();
        assertThat(JobFile.parse(JobFile.write(upright.job())).turnsPanels()).isFalse();
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "\"cuts\": \"curved\"         | cutting.cuts        | must be one of cross, guillotine, free",
        "\"turn\": \"yes\"           | cutting.turn        | must be true or false",
        "\"remnantUnit\": \"0 m\"     | cutting.remnantUnit | more than 0 m"})
    void read_wrongField_isRefusedByItsPathAndLimit(String cutting, String path, String limit) {
        assertThatThrownBy(() -> JobFile.parse(job(cutting))).isInstanceOfSatisfying(RefusedException.class, e -> {
            assertThat(e.parameter()).isEqualTo(path);
            assertThat(e.limit()).contains(limit);
        });
    }
}
