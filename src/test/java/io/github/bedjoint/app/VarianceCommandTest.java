package io.github.bedjoint.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class VarianceCommandTest {
    private static final String JOB = "docs/jobs/brick-front.json";

    @TempDir
    Path folder;

    private Run compare(String table, String... options) throws IOException {
        Path actual = Files.writeString(folder.resolve("actual.csv"), table);
        String[] args = new String[3 + options.length];
        args[0] = "variance";
        args[1] = JOB;
        args[2] = actual.toString();
        System.arraycopy(options, 0, args, 3, options.length);
        return Run.of(args);
    }

    private static String estimate() {
        Run run = Run.of("variance", JOB);
        assertThat(run.code()).isEqualTo(Main.FINE);
        return run.out();
    }

    @Test
    void call_withoutActual_printsTheEstimateAsATable() {
        assertThat(estimate()).startsWith("kind,title,quantity,rate\n")
                .contains("film,\"Rough-wall film A (invented), roll A-10\",2,EUR 198.00/each\n", "hours,Person-hours,15.93", "overhead,Overhead,,EUR 238.82\n");
    }

    /** An estimate that came true differs only by the contingency of 91.41 that was not needed. */
    @Test
    void call_unchangedTable_leavesTheContingency() throws IOException {
        Run run = compare(estimate());
        assertThat(run.code()).isEqualTo(Main.FINE);
        assertThat(run.out()).contains("Actual less estimated cost: EUR -91.41\n", "Cost in the end: EUR 1828.28\n").doesNotContain("adverse");
    }

    /**
     * By hand: film (190 - 198) x 3 = -24 and (3 - 2) x 198 = 198; hours (46 - 44) x 16 = 32 and (16 - 13.598242) x 44 = 105.68; 35 % of 84.03 + 736.00 of
     * labour bear 287.01 of overhead: 12.99 less than the 300 spent and 48.19 more than the 238.82 estimated; a fine of 60 that nobody had estimated; the
     * contingency of 91.41 goes out. Together 341.45.
     */
    @Test
    void call_dearerJob_saysWhyToTheCent() throws IOException {
        String table = estimate().replace("roll A-10\",2,EUR 198.00/each", "roll A-10\",3,EUR 190.00/each")
                .replaceAll("site-labour,.*", "site-labour,Site labour,16 h,EUR 46/h")
                .replaceAll("hours,.*", "hours,Person-hours,18.5 h,\nlump,Fine,1,EUR 60.00/each")
                .replaceAll("overhead,.*", "overhead,Overhead,,EUR 300.00");
        Run run = compare(table);
        assertThat(run.out()).contains("Material price: EUR -24.00 favourable", "Material usage: EUR 198.00 adverse", "Labour rate: EUR 32.00 adverse",
                "Labour efficiency: EUR 105.68 adverse", "Overhead spending: EUR 12.99 adverse", "Overhead efficiency: EUR 48.19 adverse",
                "Other usage: EUR 60.00 adverse", "Contingency not spent as such: EUR -91.41 favourable", "Actual less estimated cost: EUR 341.45");
        assertThat(compare(table, "--show-working").out()).contains("price.overhead-spending");
    }

    /** A line that never came is saved: by hand the permit of 90, and the contingency. */
    @Test
    void call_lineLeftOut_isSaved() throws IOException {
        assertThat(compare(estimate().replaceAll("lump,.*\n", "")).out()).contains("Other usage: EUR -90.00 favourable", "estimated cost: EUR -181.41");
    }

    @Test
    void call_wrongTables_areRefusedWithRowAndColumn() throws IOException {
        refused(estimate().replaceAll("hours,.*\n", ""), "without a row hours");
        refused(estimate().replaceAll("overhead,.*\n", ""), "without a row overhead");
        refused(estimate() + "hours,Person-hours,1 h,\n", "kind", "must stand once");
        refused(estimate().replace("film,", "foil,"), "kind", "foil", "must be one of");
        refused(estimate().replace(",2,EUR 198.00", ",2 h,EUR 198.00"), "quantity", "plain number");
        refused(estimate().replace("EUR 198.00/each", "198"), "rate");
        refused(estimate().replace("EUR 198.00/each", "USD 198.00/each"), "USD");
        refused(estimate().replaceAll("site-labour,.*", "site-labour,Site labour,5 m2,EUR 46/m2"), "Site labour", "kind, measure");
        refused("kind,title\n", "quantity");
    }

    private void refused(String table, String... words) throws IOException {
        Run run = compare(table);
        assertThat(run.code()).isEqualTo(Main.BAD_INPUT);
        assertThat(run.out()).isEmpty();
        assertThat(run.err()).contains(words);
    }

    @Test
    void call_jobWithoutPriceOrFile_saysSo() throws IOException {
        String tooLong = Files.readString(Path.of(JOB)).replace("\"height\": \"3.00 m\"", "\"height\": \"40 m\"");
        Run run = Run.of("variance", Files.writeString(folder.resolve("long.json"), tooLong).toString());
        assertThat(run.code()).isEqualTo(Main.IMPOSSIBLE);
        assertThat(run.err()).contains("cannot be done");
        assertThat(Run.of("variance", "nothing.json").code()).isEqualTo(Main.BAD_INPUT);
    }

    @Test
    void call_record_printsVerdictsInPlaceOfTheTableAndAfterTheVariances() throws IOException {
        Run empty = Run.of("cost", JOB, "--format", "installed");
        assertThat(empty.out()).startsWith("wall,panel,lot,air,humidity,surface,at,people\nStreet front,1,,,,,,\n");
        String record = Files.writeString(folder.resolve("record.csv"), empty.out()).toString();
        Run alone = Run.of("variance", JOB, "--installed", record);
        assertThat(alone.code()).isEqualTo(Main.FINE);
        assertThat(alone.out()).startsWith("CAUTION Street front: record").doesNotContain("kind,title");
        assertThat(compare(estimate(), "--installed", record).out()).contains("Cost in the end: EUR 1828.28\nCAUTION Street front: record");
        Run wrong = Run.of("variance", JOB, "--installed", Files.writeString(folder.resolve("wrong.csv"), "wall,panel\nStreet front,9\n").toString());
        assertThat(wrong.code()).isEqualTo(Main.BAD_INPUT);
        assertThat(wrong.err()).startsWith("record, row 2, column panel is '9'");
    }
}
