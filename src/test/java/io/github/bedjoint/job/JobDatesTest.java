package io.github.bedjoint.job;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.jobfile.JobFile;
import io.github.bedjoint.jobfile.JobResult;
import io.github.bedjoint.schedule.Move;
import io.github.bedjoint.schedule.Rain;
import io.github.bedjoint.schedule.RainEffect;
import io.github.bedjoint.schedule.Timetable;
import io.github.bedjoint.schedule.Wait;
import io.github.bedjoint.units.RefusedException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalDate;
import java.time.ZonedDateTime;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Rain, people, machines and lead times in the dates of a whole job. */
class JobDatesTest {
    private static String demo(String name) {
        try {
            return Files.readString(Path.of("docs", "jobs", name + ".json"));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static JobCost with(String name, String calendar) {
        return JobCost.of(JobFile.parse(demo(name).replace("\"calendar\": {", "\"calendar\": {" + calendar)));
    }

    private static Timetable dates(JobCost cost) {
        return cost.timetable().orElseThrow();
    }

    private static String minute(ZonedDateTime moment) {
        return moment.toLocalDateTime().withSecond(0).toString();
    }

    /**
     * By hand: of 1123.219 min of installing 320.766 are done on Monday; Tuesday rains, Wednesday the wall dries, Thursday 510, on Friday 292.453 are left:
     * 11:52, and 72 h to cure end on Monday.
     */
    @Test
    void rain_onAnInstallingDay_stopsTheWorkAndTheDayAfter() {
        JobCost wet = with("block-gable", "\"rain\": [\"2027-05-11\"],");
        assertThat(minute(dates(wet).slot("install").earlyEnd())).isEqualTo("2027-05-14T11:52");
        assertThat(minute(dates(wet).handOver())).isEqualTo("2027-05-17T11:52");
        JobCost drier = with("block-gable", "\"rain\": [\"2027-05-11\"], \"dryAfterRain\": \"0 h\",");
        assertThat(minute(dates(drier).handOver())).isEqualTo("2027-05-16T11:52");
    }

    /** The same day as a question: what moves, and by how much. */
    @Test
    void ifItRains_blockGable_saysWhatMovesOnEachDayAtTheWall() {
        List<RainEffect> effects = with("block-gable", "").ifItRains();
        assertThat(effects).extracting(RainEffect::day).containsExactly(
                LocalDate.of(2027, 5, 3), LocalDate.of(2027, 5, 10), LocalDate.of(2027, 5, 11), LocalDate.of(2027, 5, 12));
        assertThat(effects.get(2).delay()).isEqualTo(Duration.ofHours(48));
        assertThat(effects.get(2).moves()).extracting(Move::activity).containsExactly("install", "cure");
        assertThat(effects.get(0).moves()).extracting(Move::activity).containsExactly("wash", "wipe", "install", "cure");
    }

    /**
     * By hand, each time rounded up to a second: from Monday 7:30, 3069 s to prepare and 3174 to print, 24 h to outgas, 695 s to laminate and 2182 to pack
     * end on Tuesday 10:02:00, so set up on Wednesday at that time; 3479 s and 8256 s end at 13:17:35, and 24 h to cure on Thursday.
     */
    @Test
    void acclimatise_aDay_theCrewComesADayLater() {
        JobCost rested = with("reading-room", "\"acclimatise\": \"24 h\",");
        assertThat(dates(rested).slot("wipe").earlyStart().toLocalDateTime()).isEqualTo("2027-03-03T10:02:00");
        assertThat(dates(rested).handOver().toLocalDateTime()).isEqualTo("2027-03-04T13:17:35");
        assertThat(dates(rested).criticalWaits()).extracting(Wait::what).contains("finish -> wipe");
    }

    @Test
    void rain_indoors_movesNothing() {
        JobCost dry = with("reading-room", "");
        assertThat(dry.ifItRains()).isEmpty();
        assertThat(dates(with("reading-room", "\"rain\": [\"2027-03-02\"],")).handOver()).isEqualTo(dates(dry).handOver());
    }

    /** By hand: two people wash first, which sets the date, until 9:05; only then one of them prepares the print. */
    @Test
    void people_twoInAll_goOneAfterTheOther() {
        JobCost free = with("brick-front", "");
        JobCost tight = with("brick-front", "\"people\": 2,");
        assertThat(dates(tight).handOver()).isEqualTo(dates(free).handOver());
        assertThat(dates(tight).slot("prepare").earlyStart()).isEqualTo(dates(tight).slot("wash").earlyEnd());
        assertThat(dates(tight).rule()).isEqualTo("2 people, 1 printer, 1 laminator: where more is wanted at once, one goes after the other,"
                + " in the order that hands over earliest; no order is earlier.");
        assertThat(dates(free).rule()).startsWith("3 people, 1 printer, 1 laminator");
    }

    @Test
    void people_fewerThanTheCrew_isImpossibleWithTheReason() {
        JobCost cost = with("brick-front", "\"people\": 1,");
        assertThat(cost.isPossible()).isFalse();
        assertThat(cost.reasons()).singleElement().asString().contains("needs 2 of PEOPLE", "there are 1", "Maybe");
        assertThat(cost.isPriced()).isTrue();
    }

    /** By hand: film that takes ten days comes on Thursday 22 April at midnight; the shop opens at 8. */
    @Test
    void leadTimes_ofFilmAndPermit_holdUpWhatWaitsForThem() {
        Timetable film = dates(with("brick-front", "\"leadTimes\": [{\"title\": \"Film\", \"takes\": \"10 d\", \"before\": \"production\"}],"));
        assertThat(minute(film.slot("prepare").earlyStart())).isEqualTo("2027-04-22T08:00");
        assertThat(minute(film.slot("wash").earlyStart())).isEqualTo("2027-04-12T08:00");
        Timetable permit = dates(with("brick-front", "\"leadTimes\": [{\"title\": \"Permit\", \"takes\": \"3 d\", \"before\": \"washing\"}],"));
        assertThat(minute(permit.slot("wash").earlyStart())).isEqualTo("2027-04-15T08:00");
        Timetable lift = dates(with("brick-front", "\"leadTimes\": [{\"title\": \"Lift\", \"takes\": \"15 d\", \"before\": \"installing\"}],"));
        assertThat(minute(lift.slot("wipe").earlyStart())).isEqualTo("2027-04-27T08:00");
        assertThat(lift.chain()).startsWith("lead-1");
    }

    /** A patch is tried before film is ordered: by hand, 30 min of travel and 1 h there to 9:30 on Monday, then ten days. */
    @Test
    void leadTimes_ofFilm_beginAfterTheTestPatch() {
        String patch = demo("brick-front").replace("\"siteCrew\": 2,", "\"siteCrew\": 2, \"trips\": [{\"purpose\": \"test-patch\", \"onSite\": \"1 h\"}],");
        String film = patch.replace("\"calendar\": {", "\"calendar\": {\"leadTimes\": [{\"title\": \"Film\", \"takes\": \"10 d\", \"before\": \"production\"}],");
        assertThat(minute(dates(JobCost.of(JobFile.parse(film))).slot("prepare").earlyStart())).isEqualTo("2027-04-22T09:30");
    }

    @Test
    void result_ofDates_holdsFloatsChainWaitsRuleAndRain() {
        String json = JobResult.of(with("block-gable", "")).toString();
        assertThat(json).contains("\"latestStart\" : \"2027-05-07T10:03", "\"floatH\" : ", "\"chain\" : [", "wait before: Set up and wipe",
                "\"rule\" : \"3 people, 1 printer, 1 laminator", "\"proven\" : true", "\"day\" : \"2027-05-11\"", "\"delayH\" : 48.0",
                "\"machine\" : \"printer\"", "\"attended\" : 0.15");
    }

    @Test
    void rain_equalDaysAndDrying_areEqual() {
        LocalDate day = LocalDate.of(2027, 5, 11);
        assertThat(Rain.none().on(day)).isEqualTo(Rain.none().on(day)).hasSameHashCodeAs(Rain.none().on(day)).isNotEqualTo(Rain.none());
        assertThat(Rain.none().on(day)).hasToString("[2027-05-11], dry after 24 h elapsed");
    }

    @Test
    void parse_wrongCalendar_isRefusedUnderItsPath() {
        assertThatThrownBy(() -> with("brick-front", "\"people\": 0,")).isInstanceOf(RefusedException.class).hasMessageContaining("calendar.people");
        assertThatThrownBy(() -> with("brick-front", "\"rain\": [\"May\"],")).hasMessageContaining("calendar.rain[0]");
        assertThatThrownBy(() -> with("brick-front", "\"dryAfterRain\": \"-1 h\",")).hasMessageContaining("calendar.dryAfterRain");
        assertThatThrownBy(() -> with("brick-front", "\"leadTimes\": [{\"title\": \"Film\", \"takes\": \"-1 d\", \"before\": \"production\"}],"))
                .hasMessageContaining("calendar.leadTimes[0].takes");
        assertThatThrownBy(() -> with("brick-front", "\"leadTimes\": [{\"title\": \"Film\", \"takes\": \"1 d\", \"before\": \"noon\"}],"))
                .hasMessageContaining("calendar.leadTimes[0].before");
    }
}
