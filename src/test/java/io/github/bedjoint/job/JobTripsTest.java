package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.labour.Labour;
import io.github.bedjoint.labour.TaskTable;
import io.github.bedjoint.schedule.Slot;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Trips with a purpose in a whole job: their hours, and their place among the dates. */
class JobTripsTest {
    private static final String JOB = demo("brick-front");
    private static final String SURVEY = "{\"purpose\": \"survey\", \"people\": 1, \"travel\": \"1 h\", \"onSite\": \"90 min\", \"wait\": \"24 h\"}";
    private static final String PATCH = "{\"purpose\": \"test-patch\", \"people\": 1, \"onSite\": \"1 h\", \"wait\": \"48 h\"}";
    private static final String LOOK = "{\"purpose\": \"inspection\", \"people\": 1, \"onSite\": \"30 min\", \"wait\": \"96 h\"}";

    private static String demo(String name) {
        try {
            return Files.readString(Path.of("docs", "jobs", name + ".json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JobCost with(String trips) {
        return JobCost.of(JobFile.parse(JOB.replace("\"siteCrew\": 2,", "\"siteCrew\": 2, \"trips\": [" + trips + "],")));
    }

    private static Timetable dates(JobCost cost) {
        return cost.timetable().orElseThrow();
    }

    private static List<String> activities(JobCost cost) {
        return dates(cost).slots().stream().map(slot -> slot.activity().id()).toList();
    }

    @Test
    void of_jobWithoutTrips_washesOnAUsualOne() {
        JobCost cost = JobCost.of(JobFile.parse(JOB));
        assertThat(cost.labour().trips()).singleElement().satisfies(trip -> assertThat(trip.trip().tasks()).containsExactly("wash"));
        assertThat(activities(cost)).containsExactly("prepare", "print", "laminate", "finish", "wash", "wipe", "install", "cure");
    }

    @Test
    void of_tableWithoutWashing_hasNoTrip() {
        Job job = JobFile.parse(JOB);
        Labour dry = job.labour().withTasks(TaskTable.defaults().without("wash"));
        JobCost cost = JobCost.of(job.toBuilder().labour(dry).build());
        assertThat(cost.labour().trips()).isEmpty();
        assertThat(activities(cost)).doesNotContain("wash");
    }

    /** By hand: survey 1 x (60 + 90) and look 1 x (30 + 30) min at 44 an hour: 3.5 h more on site; the day stays one. */
    @Test
    void of_surveyAndInspection_arePaidBesideTheInstallingDay() {
        JobCost plain = with("");
        JobCost cost = with(SURVEY + ", " + LOOK);
        assertThat(cost.labour().sitePaidS() - plain.labour().sitePaidS()).isCloseTo(3.5 * 3600, within(1e-6));
        assertThat(cost.labour().siteDays().days()).isEqualTo(plain.labour().siteDays().days());
    }

    /** By hand: Monday 8:00, travel 1 h and stay 1.5 h to 10:30; the print waits 24 h, the washing does not; the patch 30 min + 1 h, then 48 h. */
    @Test
    void of_surveyAndPatch_comeBeforeWhatNeedsTheirResult() {
        Timetable dates = dates(with(SURVEY + ", " + PATCH));
        assertThat(time(dates.slot("survey").earlyEnd())).isEqualTo("2027-04-12T10:30");
        assertThat(time(dates.slot("wash").earlyStart())).isEqualTo("2027-04-12T10:30");
        assertThat(time(dates.slot("test-patch").earlyEnd())).isEqualTo("2027-04-12T12:00");
        assertThat(time(dates.slot("prepare").earlyStart())).isEqualTo("2027-04-14T12:00");
    }

    private static String time(java.time.ZonedDateTime moment) {
        return moment.toLocalDateTime().withSecond(0).toString();
    }

    @Test
    void of_inspection_comesBeforeTheHandOver() {
        JobCost cost = with(LOOK);
        Slot look = dates(cost).slot("inspection");
        assertThat(Duration.between(dates(cost).slot("install").earlyEnd(), look.earlyStart())).isGreaterThanOrEqualTo(Duration.ofHours(96));
        assertThat(dates(cost).handOver()).isEqualTo(look.earlyEnd());
        assertThat(activities(with("{\"purpose\": \"removal\", \"onSite\": \"8 h\", \"wait\": \"40000 h\"}"))).doesNotContain("removal");
    }

    /** By hand: a trip to wash with a longer wait of its own puts the installing off as much: 200 h in place of 168 h from Monday 09:05:31. */
    @Test
    void of_washTripWithALongerWait_keepsIt() {
        JobCost cost = with("{\"purpose\": \"wash\", \"tasks\": [\"wash\"], \"wait\": \"200 h\"}");
        assertThat(time(dates(cost).slot("wipe").earlyStart())).isEqualTo("2027-04-21T08:00");
        assertThat(activities(with(SURVEY + ", " + SURVEY))).contains("survey", "survey-2");
    }

    @Test
    void of_acclimatisingPanels_waitAtTheSite() {
        String slow = JOB.replace("\"washBefore\": \"168 h\"", "\"washBefore\": \"0 h\"").replace(
                "\"siteCrew\": 2,", "\"siteCrew\": 2, \"trips\": [{\"purpose\": \"install\", \"travel\": \"0 h\", \"wait\": \"100 h\"}],");
        Timetable dates = dates(JobCost.of(JobFile.parse(slow)));
        assertThat(Duration.between(dates.slot("finish").earlyEnd(), dates.slot("wipe").earlyStart())).isGreaterThanOrEqualTo(Duration.ofHours(100));
    }

    /** The wiping takes time to dry, so the heat comes that much later. */
    @Test
    void of_wipeThatDries_delaysTheHeat() {
        String dry = JOB.replace("\"cure\": \"72 h\"", "\"wipe\": {\"atLeast\": \"20 min\"}, \"cure\": \"72 h\"");
        Timetable dates = dates(JobCost.of(JobFile.parse(dry)));
        assertThat(Duration.between(dates.slot("wipe").earlyEnd(), dates.slot("install").earlyStart())).isEqualTo(Duration.ofMinutes(20));
        assertThat(Duration.between(dates(with("")).handOver(), dates.handOver())).isBetween(Duration.ofMinutes(19), Duration.ofMinutes(21));
    }

    /** A window shorter than the drying is a result that names the two. */
    @Test
    void of_windowShorterThanTheDrying_isImpossibleWithBothNamed() {
        String tight = JOB.replace("\"cure\": \"72 h\"", "\"wipe\": {\"atLeast\": \"3 h\", \"atMost\": \"2 h\"}, \"cure\": \"72 h\"");
        JobCost cost = JobCost.of(JobFile.parse(tight));
        assertThat(cost.isPossible()).isFalse();
        assertThat(dates(cost).cycle()).containsExactly("wipe", "install");
        assertThat(cost.reasons()).singleElement().asString().contains("wipe -> install", "cannot be kept");
    }

    @Test
    void parse_wrongTrips_areRefusedUnderTheirPath() {
        assertThatThrownBy(() -> with("{\"purpose\": \"holiday\"}")).isInstanceOf(RefusedException.class).hasMessageContaining("labour.trips[0].purpose");
        assertThatThrownBy(() -> with("{\"purpose\": \"wash\", \"tasks\": [\"polish\"]}")).hasMessageContaining("labour.trips[0].tasks[0]");
        assertThatThrownBy(() -> with("{\"purpose\": \"wash\", \"tasks\": [\"set-up\"]}")).hasMessageContaining("each day");
        assertThatThrownBy(() -> with("{\"purpose\": \"install\", \"tasks\": [\"hang\"]}")).hasMessageContaining("labour.trips[0].tasks");
        assertThatThrownBy(() -> with("{\"purpose\": \"wash\", \"people\": 0}")).hasMessageContaining("labour.trips[0].people");
        assertThatThrownBy(() -> with("{\"purpose\": \"survey\", \"wait\": \"40000 h\"}")).hasMessageContaining("labour.trips[0].wait");
        String twice = "{\"purpose\": \"wash\", \"tasks\": [\"wash\"]}";
        assertThatThrownBy(() -> with(twice + ", " + twice)).hasMessageContaining("labour.trips[1]").hasMessageContaining("wash");
    }
}
