package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.texture.FlatSurface;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class FollowTest {
    private static final Film FILM = Film.of("test film", m(1.3716));

    @Test
    void of_flatWall_fits() {
        Follow follow = Follow.of(FlatSurface.flat(), FILM.withUsableStretch(0));
        assertThat(follow.outcome()).isEqualTo(Follow.Outcome.FITS);
        assertThat(follow.verdict("north", UnitStyle.METRIC).level()).isEqualTo(Verdict.Level.FINE);
        WorkingCheck.check(follow.working());
    }
}
