package io.github.bedjoint.calibration;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.labour.Amounts;
import io.github.bedjoint.labour.Driver;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class JobLogTest {
    @Test
    void parse_unitsInTheHeading_areConverted() {
        JobLog metric = JobLog.parse("job,heated_area,seam,hours\nBack wall,9.290304,3.048,2.5\n");
        JobLog imperial = JobLog.parse("job,seam [ft],heated_area [ft2],hours [min]\nBack wall,10,100,150\n");
        LogEntry one = metric.entries().get(0);
        LogEntry two = imperial.entries().get(0);
        assertThat(two.amounts().inner(Driver.SEAM)).isCloseTo(one.amounts().inner(Driver.SEAM), within(1e-12));
        assertThat(two.amounts().inner(Driver.HEATED_AREA)).isCloseTo(one.amounts().inner(Driver.HEATED_AREA), within(1e-12));
        assertThat(two.hoursS()).isEqualTo(one.hoursS()).isEqualTo(9000);
        assertThat(imperial.drivers()).containsExactly(Driver.SEAM, Driver.HEATED_AREA);
    }

    @Test
    void parse_dateAndWeight_areKept() {
        JobLog log = JobLog.parse("job,date,weight,panel,hours\na,2026-03-31,2,5,1\nb,,,6,2\nc,2026-04-01,1,7,3\n");
        assertThat(log.entries().get(0).date()).contains(LocalDate.of(2026, 3, 31));
        assertThat(log.entries().get(0).weight()).isEqualTo(2);
        assertThat(log.entries().get(1).date()).isEmpty();
        assertThat(log.entries().get(1).weight()).isEqualTo(1);
        assertThat(log.since(LocalDate.of(2026, 4, 1)).entries()).extracting(LogEntry::job).containsExactly("c");
        assertThat(log.toString()).isEqualTo("3 jobs by [PANEL]");
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "job,panel,hours | a,five,1 | row 2, column panel",
        "job,panel,hours | a,-5,1 | row 2, column job: panels",
        "job,panel,hours | a,5,-1 | hours of job a",
        "job,panel,hours | a,5,NaN | row 2, column hours",
        "job,panel,hours | ,5,1 | job",
        "job,panel,weight,hours | a,5,0,1 | weight of job a",
        "job,panel,date,hours | a,5,31.3.2026,1 | row 2, column date",
        "job,pannel,hours | a,5,1 | 'pannel'",
        "job,panel | a,5 | 'hours'",
        "panel,hours | 5,1 | 'job'",
        "job,heated_area [ft],hours | a,5,1 | ft",
        "job,hours | a,1 | drivers of the log"
    })
    void parse_wrong_namesPlaceAndValue(String heading, String row, String words) {
        assertThatThrownBy(() -> JobLog.parse(heading + "\n" + row + "\n")).isInstanceOf(RefusedException.class).hasMessageContaining(words);
    }

    @Test
    void of_driverTwice_refused() {
        assertThatThrownBy(() -> JobLog.of(List.of(Driver.SEAM, Driver.SEAM), List.of())).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> LogEntry.of("a", Amounts.none(), Read.time("1 h")).withWeight(0)).isInstanceOf(RefusedException.class);
    }
}
