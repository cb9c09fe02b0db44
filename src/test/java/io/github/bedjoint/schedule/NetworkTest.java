package io.github.bedjoint.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.time.Duration;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import org.apache.commons.statistics.distribution.NormalDistribution;
import org.junit.jupiter.api.Test;

class NetworkTest {
    static final ZoneId ZONE = ZoneId.of("Europe/Berlin");
    /** A Monday. */
    static final ZonedDateTime MONDAY = ZonedDateTime.of(2026, 6, 1, 8, 0, 0, 0, ZONE);
    static final Network WEEK = Network.on(WorkCalendar.weekdays(ZONE), MONDAY);

    static Activity work(String id, String time) {
        return Activity.of(id, id, Span.shift(Read.time(time)));
    }

    static Activity wait(String id, String time) {
        return Activity.of(id, id, Span.elapsed(Read.time(time)));
    }

    /** Activities of days on a calendar without nights, as the exercises have them: "A 3" and then "C 5 after A". */
    private static Network exercise(String... rows) {
        Network network = Network.on(WorkCalendar.roundTheClock(ZONE), MONDAY);
        for (String row : rows) {
            String[] words = row.split(" ");
            network = network.with(wait(words[0], words[1] + " h"));
            for (int i = 2; i < words.length; i++) {
                network = network.with(Link.of(words[i], words[0]));
            }
        }
        return network;
    }

    /** Source: public CPM exercise; the floats are derived, since the source's late times are wrong. Days are hours here. */
    @Test
    void plan_publicExercise_34AndItsFloats() {
        Timetable dates = exercise("A 3", "B 4 A", "C 5 B", "D 3 B", "E 7 B", "F 9 C", "G 8 C", "H 2 F G", "I 4 D E H", "J 7 I").plan();
        assertThat(Duration.between(MONDAY, dates.handOver())).isEqualTo(Duration.ofHours(34));
        assertThat(dates.chain()).containsExactly("A", "B", "C", "F", "H", "I", "J");
        assertThat(dates.slot("D").totalFloat()).isEqualTo(Duration.ofHours(13));
        assertThat(dates.slot("E").totalFloat()).isEqualTo(Duration.ofHours(9));
        assertThat(dates.slot("G").totalFloat()).isEqualTo(Duration.ofHours(1));
        assertThat(dates.slots()).filteredOn(Slot::isCritical).extracting(slot -> slot.activity().id()).isEqualTo(dates.chain());
        WorkingCheck.check(dates.working());
    }

    /** Source: management science textbook: on the longest path mean 24 and variance 5, P(28 or less) = .9632. */
    @Test
    void threePoint_textbookPath_meanAndVariance() {
        double mean = 0;
        double variance = 0;
        for (double[] points : new double[][] {{5, 8, 17}, {3, 5, 7}, {4, 6, 8}, {3, 4, 5}}) {
            ThreePoint time = ThreePoint.of(
                    Door.of(points[0], ShopUnits.HOUR), Door.of(points[1], ShopUnits.HOUR), Door.of(points[2], ShopUnits.HOUR));
            mean += time.meanS() / 3600;
            variance += Math.pow(time.spreadS() / 3600, 2);
            WorkingCheck.check(time.working());
        }
        assertThat(mean).isCloseTo(24, within(1e-12));
        assertThat(variance).isCloseTo(5, within(1e-12));
        assertThat(NormalDistribution.of(mean, Math.sqrt(variance)).cumulativeProbability(28)).isCloseTo(0.9632, within(5e-5));
        assertThatThrownBy(() -> ThreePoint.of(Read.time("5 h"), Read.time("4 h"), Read.time("6 h"))).isInstanceOf(RefusedException.class);
    }

    /**
     * By hand: print Monday 8:00 to 14:00; outgas 48 h to Wednesday 14:00; laminate 1 h to 15:00; install 10 h: Wednesday 15:00 to 16:00, all of
     * Thursday, Friday 8:00 to 9:00; cure 72 h to Monday 9:00.
     */
    @Test
    void plan_shiftAndElapsedTime_byHand() {
        Timetable dates = WEEK.with(work("print", "6 h"))
                .with(wait("outgas", "48 h"))
                .with(work("laminate", "1 h"))
                .with(work("install", "10 h"))
                .with(wait("cure", "72 h"))
                .with(Link.of("print", "outgas"))
                .with(Link.of("outgas", "laminate"))
                .with(Link.of("laminate", "install"))
                .with(Link.of("install", "cure"))
                .plan();
        assertThat(dates.slot("laminate").earlyStart()).isEqualTo(MONDAY.plusDays(2).plusHours(6));
        assertThat(dates.slot("install").earlyEnd()).isEqualTo(MONDAY.plusDays(4).plusHours(1));
        assertThat(dates.handOver()).isEqualTo(MONDAY.plusDays(7).plusHours(1));
        assertThat(dates.chain()).containsExactly("print", "outgas", "laminate", "install", "cure");
        WorkingCheck.check(dates.working());
    }

    /** By hand: outgassing over the weekend leaves float: it ends Saturday 16:00, laminating starts Monday, 40 h later. */
    @Test
    void plan_waitOverTheWeekend_hasFloat() {
        Timetable dates = WEEK.with(work("print", "32 h"))
                .with(wait("outgas", "48 h"))
                .with(work("laminate", "1 h"))
                .with(Link.of("print", "outgas"))
                .with(Link.of("outgas", "laminate"))
                .plan();
        assertThat(dates.slot("outgas").earlyEnd()).isEqualTo(MONDAY.plusDays(5).plusHours(8));
        assertThat(dates.slot("outgas").totalFloat()).isEqualTo(Duration.ofHours(40));
        // Print may start as late as lets outgassing end on Monday at 8:00: it must be through on Friday 16:00 less nothing: Saturday 8:00.
        assertThat(dates.slot("print").totalFloat()).isEqualTo(Duration.ofHours(8));
    }

    /** Common practice, no source: wipe at most 2 h before heat. The wipe waits for the material that comes on Wednesday. */
    @Test
    void plan_window_pullsTheFirstActivityLater() {
        Timetable dates = WEEK.with(work("wipe", "30 min").unbroken())
                .with(work("material", "1 h").notBefore(MONDAY.plusDays(2)))
                .with(work("heat", "5 h"))
                .with(Link.of("wipe", "heat").atLeast(Span.elapsed(Read.time("15 min"))).atMost(Span.elapsed(Read.time("2 h"))))
                .with(Link.of("material", "heat"))
                .plan();
        assertThat(dates.slot("heat").earlyStart()).isEqualTo(MONDAY.plusDays(2).plusHours(1));
        // Ends 2 h before 9:00 at the earliest, and 7:00 lies before the shift: Wednesday 8:00.
        assertThat(dates.slot("wipe").earlyStart()).isEqualTo(MONDAY.plusDays(2));
        assertThat(dates.slot("wipe").totalFloat()).isEqualTo(Duration.ofMinutes(15));
        assertThat(dates.chain()).containsExactly("material", "heat");
    }

    /** Wiped at the end of Friday the film would be heated on Monday: the wipe moves to Monday as a whole. */
    @Test
    void plan_windowOverTheWeekend_movesToMonday() {
        Timetable dates = WEEK.with(work("before", "39.5 h"))
                .with(work("wipe", "20 min").unbroken())
                .with(work("heat", "5 h").unbroken())
                .with(Link.of("before", "wipe"))
                .with(Link.of("wipe", "heat").atMost(Span.elapsed(Read.time("2 h"))))
                .plan();
        assertThat(dates.slot("wipe").earlyStart()).isEqualTo(MONDAY.plusDays(7));
        assertThat(dates.slot("heat").earlyStart()).isEqualTo(MONDAY.plusDays(7).plusMinutes(20));
    }

    @Test
    void plan_windowShorterThanTheWait_isAResultNamingTheCycle() {
        Timetable dates = WEEK.with(work("wipe", "1 h"))
                .with(wait("dry", "3 h"))
                .with(work("heat", "1 h"))
                .with(Link.of("wipe", "dry"))
                .with(Link.of("dry", "heat"))
                .with(Link.of("wipe", "heat").atMost(Span.elapsed(Read.time("2 h"))))
                .plan();
        assertThat(dates.isPossible()).isFalse();
        assertThat(dates.cycle()).containsExactly("wipe", "dry", "heat");
        assertThat(dates.reasons()).singleElement().asString().contains("wipe -> heat, at most 2 h elapsed").contains("wipe -> dry -> heat");
        assertThat(dates.slots()).isEmpty();
        assertThat(dates.working().toString()).contains("cannot be kept");
    }

    @Test
    void plan_linksInACircle_isAResultNamingTheCycle() {
        Timetable dates = exercise("A 1", "B 1 A", "C 1 B", "D 1 C").with(Link.of("C", "B")).plan();
        assertThat(dates.isPossible()).isFalse();
        assertThat(dates.cycle()).hasSize(3).contains("B", "C");
        assertThat(dates.cycle().get(0)).isEqualTo(dates.cycle().get(2));
    }

    @Test
    void plan_unbrokenLongerThanAnyShift_isAResult() {
        Timetable dates = WEEK.with(work("heat", "9 h").unbroken()).plan();
        assertThat(dates.isPossible()).isFalse();
        assertThat(dates.reasons()).singleElement().asString().contains("longer than a shift");
    }

    @Test
    void plan_nothing_handsOverAtOnce() {
        assertThat(WEEK.plan().handOver()).isEqualTo(MONDAY);
        assertThat(WEEK.plan().isPossible()).isTrue();
    }

    @Test
    void with_linkToNowhere_refused() {
        assertThatThrownBy(() -> WEEK.with(work("a", "1 h")).with(Link.of("a", "b")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("a -> b");
        assertThatThrownBy(() -> Link.of("a", "a")).isInstanceOf(RefusedException.class);
        assertThatThrownBy(() -> WEEK.plan().slot("a")).isInstanceOf(RefusedException.class).hasMessageContaining("'a'");
    }

    @Test
    void with_sameId_replaces() {
        Network network = WEEK.with(work("a", "1 h")).with(work("a", "2 h"));
        assertThat(network.activities()).hasSize(1);
        assertThat(network.plan().handOver()).isEqualTo(MONDAY.plusHours(2));
    }
}
