package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Best-before dates of rolls against the dates of a job; docs/jobs/brick-front.md works the dates by hand. */
class ShelfLifeTest {
    private static String text(String roll, String day) throws IOException {
        String text = Files.readString(Path.of("docs", "jobs", "brick-front.json"));
        String offer = "{\"id\": \"" + roll + "\",";
        assertThat(text).contains(offer);
        return text.replace(offer, offer + " \"bestBefore\": \"" + day + "\",");
    }

    private static Job job(String roll, String day) throws IOException {
        return JobFile.parse(text(roll, day));
    }

    private static List<Verdict> found(Job job) {
        return JobCost.of(job).verdicts(UnitStyle.METRIC).stream().filter(verdict -> verdict.subject().endsWith("shelf life")).toList();
    }

    /** Two rolls A-10 are opened; 2027-04-19 is the last day of installing: still good on that day, not if it was best before the day before. */
    @ParameterizedTest
    @CsvSource({"2027-04-18, WARNING", "2027-04-19, FINE"})
    void film_bestBeforeLastDay_isWarnedOf(String day, Verdict.Level level) throws IOException {
        Job job = job("A-10", day);
        assertThat(found(job)).singleElement().satisfies(verdict -> {
            assertThat(verdict.level()).isEqualTo(level);
            assertThat(verdict.subject()).isEqualTo("film: shelf life");
            assertThat(verdict.reason()).isEqualTo("roll A-10 is best before " + day + " and applied until 2027-04-19");
        });
    }

    /** Laminate counts on the day of laminating, 2027-04-13, well before the film is applied. */
    @ParameterizedTest
    @CsvSource({"2027-04-12, WARNING", "2027-04-13, FINE"})
    void laminate_bestBeforeLaminating_isWarnedOf(String day, Verdict.Level level) throws IOException {
        assertThat(found(job("B-50", day))).singleElement().satisfies(verdict -> {
            assertThat(verdict.level()).isEqualTo(level);
            assertThat(verdict.reason()).isEqualTo("roll B-50 is best before " + day + " and laminated until 2027-04-13");
        });
    }

    @Test
    void film_withoutDates_couldNotBeCompared() throws IOException {
        String text = text("A-10", "2020-01-01").replaceAll("\"calendar\": \\{[^}]*\\},", "");
        assertThat(text).doesNotContain("calendar");
        assertThat(found(JobFile.parse(text))).singleElement().satisfies(verdict -> {
            assertThat(verdict.level()).isEqualTo(Verdict.Level.CAUTION);
            assertThat(verdict.reason()).contains("A-10", "2020-01-01", "could not be compared");
        });
    }

    /** No roll of 25 m is opened, so its date does not matter; and a date moves no plan and no price. */
    @Test
    void film_notOpenedOrDated_planStays() throws IOException {
        assertThat(found(job("A-25", "2020-01-01"))).isEmpty();
        JobCost plain = JobCost.of(JobFile.read(Path.of("docs", "jobs", "brick-front.json")));
        JobCost old = JobCost.of(job("A-10", "2020-01-01"));
        assertThat(old.total()).isEqualTo(plain.total());
        assertThat(old.filmPlan().rolls()).isEqualTo(plain.filmPlan().rolls());
        assertThat(old.job().materials().filmRolls().get(1).bestBefore()).contains(LocalDate.of(2020, 1, 1));
    }

    @ParameterizedTest
    @ValueSource(strings = {"2027-02-30", "12.05.2027", "soon", ""})
    void bestBefore_noDate_isRefused(String day) {
        assertThatThrownBy(() -> job("A-10", day))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("film.rolls[1].bestBefore")
                .hasMessageContaining("Maybe");
    }
}
