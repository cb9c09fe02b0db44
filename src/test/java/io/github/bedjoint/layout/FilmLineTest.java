package io.github.bedjoint.layout;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FilmLineTest {
    /** All of a quarter is fed in: 1000 steps of wall take 1250 of film. */
    private static final Feed QUARTER = new Feed(1, 0.25);
    /** Wall from 0 to 400 and from 600 to 1000. */
    private static final FilmLine LINE = new FilmLine(QUARTER, List.of(new long[] {0, 400}, new long[] {600, 1000}));

    @ParameterizedTest
    @CsvSource({
        // Half of a tenth: 5 steps on 100. A millionth of a step is forgiven, more is a whole one.
        "0.5, 0.1, 100,       5,      95,       96",
        "0.5, 0.1, 101,       6,      96,       97",
        "0,   0.1, 100,       0,      100,      100",
        "0.5, 0,   100,       0,      100,      100"})
    void feed_steps_areRoundedToTheSafeSide(double share, double stretch, long steps, long fed, long reach, long covered) {
        Feed feed = new Feed(share, stretch);
        assertThat(feed.fedSteps(steps)).isEqualTo(fed);
        assertThat(feed.reachSteps(steps)).isEqualTo(reach);
        assertThat(feed.coveredSteps(steps)).isEqualTo(covered);
        assertThat(feed.isNone()).isEqualTo(fed == 0);
    }

    @Test
    void feed_withNone_hasNoWorking() {
        Feed none = new Feed(0, 0.1);
        assertThat(none.workings(100)).isEmpty();
        assertThat(none.reachWorkings(100)).isEmpty();
        assertThat(none.coveredWorkings(100)).isEmpty();
        assertThat(QUARTER.workings(100)).hasSize(1);
        assertThat(QUARTER.reachWorkings(100)).hasSize(1);
        assertThat(QUARTER.coveredWorkings(100)).hasSize(1);
        assertThat(QUARTER.coveredWorkings(0)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        // On wall, a quarter more.
        "0,    400,  500",
        "100,  104,  5",
        // From the first wall to the last: the gap between two is bridged in the relief too.
        "0,    1000, 1250",
        "300,  700,  500",
        // Before and beyond the wall nothing is fed in, nor in the gap alone.
        "-100, 400,  600",
        "-100, 1100, 1450",
        "400,  600,  200",
        "300,  500,  225",
        "500,  700,  225",
        "-50,  0,    50",
        "1000, 1050, 50"})
    void filmSteps_fromTo_feedsInOverWallOnly(long from, long to, long film) {
        assertThat(LINE.filmSteps(from, to)).isEqualTo(film);
    }

    @ParameterizedTest
    @CsvSource({
        "0,    500,  400",
        // One step of film more reaches into the gap without any more fed in, one less falls short by a step.
        "0,    501,  401",
        "0,    499,  399",
        "-100, 600,  400",
        "0,    1250, 1000",
        "0,    1300, 1050",
        "400,  200,  600",
        "1000, 50,   1050"})
    void end_film_isTheFarthestPlaceItReaches(long from, long film, long end) {
        assertThat(LINE.end(from, film)).isEqualTo(end);
    }

    @ParameterizedTest
    @CsvSource({
        "1000, 500,  600",
        "1000, 501,  599",
        "1000, 499,  601",
        "1100, 600,  600",
        "1000, 1250, 0",
        "1000, 1300, -50",
        "600,  200,  400",
        "0,    50,   -50"})
    void begin_film_isTheFirstPlaceThatItReachesFrom(long to, long film, long begin) {
        assertThat(LINE.begin(to, film)).isEqualTo(begin);
    }

    @Test
    void end_withNothingFedIn_isTheLengthOfTheFilm() {
        FilmLine plain = new FilmLine(new Feed(0, 0.25), List.of(new long[] {0, 400}));
        assertThat(plain.filmSteps(-10, 500)).isEqualTo(510);
        assertThat(plain.end(-10, 100)).isEqualTo(90);
        assertThat(plain.begin(90, 100)).isEqualTo(-10);
    }
}
