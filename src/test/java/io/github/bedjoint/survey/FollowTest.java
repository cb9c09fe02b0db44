package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FollowTest {
    private static final Film FILM = Film.of("test film", m(1.3716));

    /** 215 x 65 mm brick, 10 mm joints, beds and heads raked. */
    private static MasonrySurface raked(double depthM) {
        return MasonrySurface.of(m(0.215), m(0.065), m(0.01), m(0.01), JointProfile.raked(m(depthM)));
    }

    @ParameterizedTest
    @CsvSource({
        // Local 2 d / j = 2 * 2 / 10 = 0.4; mean up 2 d / (h + j) = 4 / 75 = 0.0533, along 4 / 225.
        "0.002, 0.40, FITS,    FINE",
        "0.002, 0.39, TIGHT,   CAUTION",
        "0.002, 0.06, TIGHT,   CAUTION",
        "0.002, 0.05, BRIDGES, WARNING",
        // Ten deep: local 2, mean up 20 / 75 = 0.267. A film that bears 30 % can only slide.
        "0.010, 0.30, TIGHT,   CAUTION",
        "0.010, 0.26, BRIDGES, WARNING"
    })
    void of_rakedBrick_comparesTheJointFirstThenTheMean(double depth, double usable, Follow.Outcome outcome, Verdict.Level level) {
        Follow follow = Follow.of(raked(depth), FILM.withUsableStretch(usable));
        assertThat(follow.outcome()).isEqualTo(outcome);
        Verdict verdict = follow.verdict("north", UnitStyle.METRIC);
        assertThat(verdict.level()).isEqualTo(level);
        assertThat(verdict.reason()).contains("test film bears");
        WorkingCheck.check(follow.working());
    }

    @Test
    void of_rakedBrick_neverComparesTheArea() {
        // The area of a wall raked 5 mm grows by 16.6 %, a film that bears 17 % would seem to do; the joint asks for 100 %.
        Follow follow = Follow.of(raked(0.005), FILM.withUsableStretch(0.17));
        assertThat(follow.outcome()).isEqualTo(Follow.Outcome.TIGHT);
        assertThat(follow.localReserve()).isCloseTo(-0.83, within(1e-9));
        assertThat(follow.verdict("north", UnitStyle.METRIC).reason()).contains("the area grows by 16.59 %");
    }

    @Test
    void of_filmFedIn_comparesWhatIsLeft() {
        // Raked 2 mm: local 0.4 both ways. Half fed in leaves 1.4 / 1.2 - 1 = 1/6; mean up 4/75: (1 + 4/75) / (1 + 2/75) - 1 = 2/77.
        Film film = FILM.withUsableStretch(0.17);
        assertThat(Follow.of(raked(0.002), film).outcome()).isEqualTo(Follow.Outcome.TIGHT);
        Follow fed = Follow.of(raked(0.002), film, new TakeUp(0.5, 0.5));
        assertThat(fed.outcome()).isEqualTo(Follow.Outcome.FITS);
        assertThat(fed.localReserve()).isCloseTo(0.17 - 1 / 6.0, within(1e-12));
        assertThat(fed.meanReserve()).isCloseTo(0.17 - 2 / 77.0, within(1e-12));
        assertThat(fed.verdict("north", UnitStyle.METRIC).reason()).contains("left of 40 % with 50 % fed in up the wall");
        WorkingCheck.check(fed.working());
        // Fed in along only: the bed joints ask for as much as before.
        assertThat(Follow.of(raked(0.002), film, new TakeUp(0, 1)).localReserve()).isCloseTo(0.17 - 0.4, within(1e-12));
    }

    @Test
    void verdict_ofATightFit_namesJointNeededAllowedAndWhatWouldFixIt() {
        // Local 0.4 against 0.2: the share u with 1.4 / (1 + 0.4 u) = 1.2 is (1.4 / 1.2 - 1) / 0.4 = 0.41666...
        Film film = FILM.withUsableStretch(0.2);
        assertThat(Follow.of(raked(0.002), film).verdict("north", UnitStyle.METRIC).reason())
                .contains("joint").contains("2 mm").contains("a stretch of 40 %").contains("bears 20 %").contains("relief cut")
                .contains("take a film that bears 40 %").contains("shallower").contains("feed in at least 41.67 %");
        assertThat(Follow.of(raked(0.002), film, new TakeUp(0.4167, 0.4167)).outcome()).isEqualTo(Follow.Outcome.FITS);
        assertThat(Follow.of(raked(0.002), film, new TakeUp(0.4166, 0.4166)).outcome()).isEqualTo(Follow.Outcome.TIGHT);
    }

    @Test
    void of_flatWall_fits() {
        Follow follow = Follow.of(FlatSurface.flat(), FILM.withUsableStretch(0));
        assertThat(follow.outcome()).isEqualTo(Follow.Outcome.FITS);
        assertThat(follow.verdict("north", UnitStyle.METRIC).level()).isEqualTo(Verdict.Level.FINE);
        WorkingCheck.check(follow.working());
    }
}
