package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.units.CsvTable;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;

class JobTablesTest {
    private static String demo(String name) throws IOException {
        return Files.readString(Path.of("docs", "jobs", name + ".json"));
    }

    /** The figures are those worked by hand in docs/jobs/brick-front.md. */
    @Test
    void prices_ofDemoJob_areTheLinesWorkedByHand() throws IOException {
        CsvTable table = CsvTable.parse("prices", JobTables.prices(JobCost.of(JobFile.parse(demo("brick-front"))), UnitStyle.METRIC));
        assertThat(table.rows().get(0).text("title")).isEqualTo("Rough-wall film A (invented), roll A-10");
        assertThat(table.rows().stream().map(row -> row.text("amount")).toList())
                .isEqualTo(List.of("396.00", "310.00", "19.75", "21.36", "84.03", "598.32", "70.00", "90.00", "1589.46", "238.82", "91.41", "2742.41", "548.48", "3290.89"));
        assertThat(table.rows()).allMatch(row -> row.text("currency").equals("EUR"));
    }

    @Test
    void cuts_inFeetAndInches_readBack() throws IOException {
        CsvTable table = CsvTable.parse("cuts", JobTables.cuts(JobCost.of(JobFile.parse(demo("block-gable"))), UnitStyle.IMPERIAL));
        assertThat(table.rows()).hasSize(8);
        // The fourth panel stands under the ridge: 26 ft and 3 in of bleed and tuck, worked by hand in docs/jobs/block-gable.md.
        assertThat(table.rows().get(3).text("cut length")).isEqualTo("26' 3\"");
        assertThat(Read.length(table.rows().get(3).text("cut length")).getValue().doubleValue()).isEqualTo(315);
        assertThat(table.rows().get(0).text("from below")).isEqualTo("-1\"");
    }

    @Test
    void tables_ofNamesLikeFormulas_areDefused() throws IOException {
        JobCost cost = JobCost.of(JobFile.parse(
                demo("brick-front").replace("\"Street front\"", "\"=cmd|' /C calc'!A0\"").replace("\"Pavement permit\"", "\"@SUM(1,1)\"")));
        assertThat(JobTables.cuts(cost, UnitStyle.METRIC)).contains("\n'=cmd|' /C calc'!A0,1,").doesNotContain("\n=");
        assertThat(JobTables.prices(cost, UnitStyle.METRIC)).contains("lump,\"'@SUM(1,1)\",");
    }
}
