package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
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
    void of_flatWall_fits() {
        Follow follow = Follow.of(FlatSurface.flat(), FILM.withUsableStretch(0));
        assertThat(follow.outcome()).isEqualTo(Follow.Outcome.FITS);
        assertThat(follow.verdict("north", UnitStyle.METRIC).level()).isEqualTo(Verdict.Level.FINE);
        WorkingCheck.check(follow.working());
    }
}
