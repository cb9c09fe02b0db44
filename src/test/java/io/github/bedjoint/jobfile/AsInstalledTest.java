package io.github.bedjoint.jobfile;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.job.JobCost;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Verdict.Level;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Records of brick-front with its six panels; the dew point of air at 20 °C and 50 % is 9.27 °C (PsychroLib 2.5.0), 9.26 °C by the formula used. */
class AsInstalledTest {
    private static final String HEADING = "wall,panel,lot,air degC,humidity,surface degC,at,people\n";
    private static JobCost cost;

    @BeforeAll
    static void read() throws IOException {
        cost = JobCost.of(JobFile.parse(Files.readString(Path.of("docs", "jobs", "brick-front.json")).replace("\"siteCrew\": 2,", "\"siteCrew\": 2, \"twoPeopleFrom\": \"1 m\",")));
    }

    private static String all(String rest) {
        StringBuilder table = new StringBuilder(HEADING);
        for (int panel = 1; panel <= 6; panel++) {
            table.append("Street front,").append(panel).append(rest).append('\n');
        }
        return table.toString();
    }

    private static Verdict about(String record, String subject) {
        List<Verdict> found = AsInstalled.check(cost, record).stream().filter(verdict -> verdict.subject().equals("Street front: " + subject)).toList();
        assertThat(found).as(subject).hasSize(1);
        return found.get(0);
    }

    @Test
    void table_ofAJob_hasARowForEachPanelAndReadsBack() {
        String table = AsInstalled.table(cost);
        assertThat(table.lines()).hasSize(7).startsWith("wall,panel,lot,air,humidity,surface,at,people", "Street front,1,,,,,,");
        assertThat(AsInstalled.check(cost, table)).singleElement().hasToString(about(table, "record").toString());
        assertThat(about(table, "record").reason()).isEqualTo("not recorded of 6 panels: 1, 2, 3, 4, 5, 6");
    }

    @Test
    void check_whatWasNotWrittenDown_isToldByPanel() {
        String record = all(",A7,20,50 %,16,2027-04-19T08:30,2").replace("front,2,A7,20,50 %,16,2027-04-19T08:30", "front,2,,,,16,");
        assertThat(about(record, "record").reason()).isEqualTo("no time was written down for panels 2");
        assertThat(about(record, "lots").reason()).isEqualTo("no lot was written down for panels 2");
        assertThat(about(record, "weather").reason()).isEqualTo("air, humidity or surface were not written down for panels 2");
        assertThat(about(record, "3 K rule").level()).isEqualTo(Level.FINE);
    }

    /** 20:30 in New York is 2:30 of the next day in Vienna. */
    @Test
    void check_timeWithAZone_isBroughtToThePlaceOfTheJob() {
        String record = all(",A7,20,0.5,16,2027-04-19T20:30-04:00,2").replace("humidity", "humidity %").replace(",0.5,", ",50,");
        assertThat(about(record, "record").reason()).isEqualTo("all 6 panels are recorded, from 2027-04-20T02:30 to 2027-04-20T02:30");
    }

    /** 16 - 9.26 = 6.74 K above the dew point, within 10 to 40 °C. */
    @Test
    void check_asPlanned_isFine() {
        String record = all(",A7,20,0.5,16,2027-04-19T08:30,2").replace("front,6,A7,20,0.5,16,2027-04-19T08:30", "front,6,A7,20,0.5,16,2027-04-20T09:15");
        assertThat(AsInstalled.check(cost, record)).extracting(Verdict::level).containsOnly(Level.FINE).hasSize(5);
        assertThat(about(record, "record").reason()).isEqualTo("all 6 panels are recorded, from 2027-04-19T08:30 to 2027-04-20T09:15");
        assertThat(about(record, "lots").reason()).isEqualTo("all panels come from the lot A7");
    }

    /** 12.2 °C is 2.94 K above the dew point: less than 3 K, more than 5 °F (2.78 K). The coldest panel counts, wherever it stands. */
    @Test
    void check_coldPanel_isNamedUnderItsRule() {
        String record = all(",A7,20,0.5,16,2027-04-19T08:30,2").replace("front,2,A7,20,0.5,16", "front,2,A7,20,0.5,12.2");
        assertThat(about(record, "3 K rule").level()).isEqualTo(Level.WARNING);
        assertThat(about(record, "3 K rule").reason()).startsWith("panel 2: the surface at 12.20 °C is 2.94 K above the dew point of 9.26 °C");
        assertThat(about(record, "5 deg F rule").level()).isEqualTo(Level.FINE);
        String colder = record.replace("front,5,A7,20,0.5,16", "front,5,A7,20,0.5,8");
        assertThat(about(colder, "3 K rule").level()).isEqualTo(Level.REFUSED);
        assertThat(about(colder, "surface temperature").reason()).startsWith("panel 5: 8 °C is outside the limits");
    }

    @Test
    void check_twoLotsAMissingPanelAndOnePersonAlone_areTold() {
        String record = all(",A7,20,0.5,16,2027-04-19T08:30,2").replace("front,3,A7", "front,3,A8").replaceAll("Street front,6.*\n", "")
                .replace("front,1,A7,20,0.5,16,2027-04-19T08:30,2", "front,1,A7,20,0.5,16,2027-04-19T08:30,1");
        assertThat(about(record, "lots").level()).isEqualTo(Level.WARNING);
        assertThat(about(record, "lots").reason()).contains("the lots A7, A8");
        assertThat(about(record, "record").reason()).isEqualTo("not recorded of 6 panels: 6");
        assertThat(about(record, "people").reason()).endsWith("to two: 1");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "Street front,1,A7,20,0.5,16,2027-04-19 08:30,2 | record, row 2, column at is '2027-04-19 08:30'",
        "Street front,7,A7,20,0.5,16,,2 | record, row 2, column panel is '7', but must be a panel of Street front, 1 to 6",
        "Back,1,A7,20,0.5,16,,2 | record, row 2, column wall is 'Back'",
        "Street front,1,A7,20,50,16,,2 | record, row 2, column humidity is '50'",
        "Street front,1,A7,20,0.5,16 m,,2 | record, row 2, column surface degC is '16 m'",
        "Street front,1,A7,20,,16,,2 | record, row 2, column humidity is '', but must be given, since air is",
        "Street front,1,A7,,0.5,16,,2 | record, row 2, column air degC is '', but must be given, since humidity is",
        "Street front,1,A7,20,abc,16,,2 | record, row 2, column humidity is 'abc'",
        "Street front,1,A7,20,0.5,16,,0 | record, row 2, column people is '0'",
    })
    void check_faultyRow_isRefusedByRowColumnAndValue(String row, String message) {
        assertThatThrownBy(() -> AsInstalled.check(cost, HEADING + row + "\n")).isInstanceOf(RefusedException.class).hasMessageStartingWith(message);
    }

    @Test
    void check_panelTwice_isRefused() {
        assertThatThrownBy(() -> AsInstalled.check(cost, HEADING + "Street front,1,A,,,,,\nStreet front,1,A,,,,,\n")).hasMessageContaining("must stand in one row only");
    }
}
