package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TakeUpTest {
    /** Mean stretch 10/75 up and 10/225 along. */
    private static final Surface BRICK = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("5 mm")));

    @Test
    void film_noneFedIn_isTheWall() {
        assertThat(TakeUp.NONE.filmUpM(BRICK, 3)).isEqualTo(3);
        assertThat(TakeUp.NONE.leftUp(BRICK)).isEqualTo(BRICK.meanStretchUp(), within(1e-12));
        assertThat(TakeUp.NONE.registration(BRICK).level()).isEqualTo(Verdict.Level.FINE);
    }

    @Test
    void film_allFedInUp_leavesNothingToStretch() {
        TakeUp all = new TakeUp(1, 0);
        assertThat(all.filmUpM(BRICK, 3)).isCloseTo(3 * (1 + 10.0 / 75), within(1e-12));
        assertThat(all.filmAlongM(BRICK, 3)).isEqualTo(3);
        assertThat(all.leftUp(BRICK)).isCloseTo(0, within(1e-12));
        assertThat(all.leftAlong(BRICK)).isCloseTo(10.0 / 225, within(1e-12));
        // 10 / 75 of a metre.
        assertThat(all.registration(BRICK).reason()).contains("133.3333 mm in each metre");
        assertThat(all.registration(BRICK).level()).isEqualTo(Verdict.Level.WARNING);
    }

    @Test
    void film_halfFedIn_isWorkedByHand() {
        // 2.4 m x (1 + 0.5 x 10/75) = 2.56 m; left (1.133333 / 1.066667) - 1 = 0.0625
        TakeUp half = new TakeUp(0.5, 0.5);
        assertThat(half.filmUpM(BRICK, 2.4)).isCloseTo(2.56, within(1e-12));
        assertThat(half.leftUp(BRICK)).isCloseTo(0.0625, within(1e-12));
        WorkingCheck.check(half.working(BRICK, 1.2, 2.4));
    }

    @Test
    void leftLocal_fedInUpOnly_isTheHeadJoints() {
        // Raked 5 in 10: 1 at beds and heads. Half fed in at the beds leaves 2 / 1.5 - 1 there, the heads still ask for 1.
        assertThat(new TakeUp(0.5, 0).leftLocal(BRICK)).isCloseTo(1, within(1e-12));
        assertThat(new TakeUp(0.5, 0.5).leftLocal(BRICK)).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(TakeUp.NONE.leftLocal(BRICK)).isCloseTo(BRICK.localStretch(), within(1e-12));
        Surface flushHeads = MasonrySurfaceTest.metric(JointProfile.raked(Read.length("5 mm"))).withHeads(JointProfile.flush());
        assertThat(new TakeUp(1, 0).leftLocal(flushHeads)).isCloseTo(0, within(1e-12));
    }

    @Test
    void film_flatWall_isTheWallWhateverIsFedIn() {
        assertThat(new TakeUp(1, 1).filmUpM(FlatSurface.flat(), 3)).isEqualTo(3);
        assertThat(new TakeUp(1, 1).registration(FlatSurface.flat()).level()).isEqualTo(Verdict.Level.FINE);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 1.1, Double.NaN})
    void of_shareOutOfRange_isRefused(double share) {
        assertThatThrownBy(() -> new TakeUp(share, 0)).hasMessageContaining("take-up up the wall");
        assertThatThrownBy(() -> new TakeUp(0, share)).hasMessageContaining("take-up along the wall");
    }

    @Test
    void filmUpM_negativeHeight_isRefused() {
        assertThatThrownBy(() -> TakeUp.NONE.filmUpM(BRICK, -1)).hasMessageContaining("length on the wall");
    }

    @Test
    void flat_everything_isNone() {
        Surface flat = FlatSurface.flat();
        assertThat(flat.areaRatio()).isEqualTo(1);
        assertThat(flat.localStretch() + flat.meanStretchUp() + flat.meanStretchAlong()).isZero();
        assertThat(flat.steepestPlace(io.github.bedjoint.units.UnitStyle.METRIC)).isEmpty();
        assertThat(flat).hasToString("flat");
        WorkingCheck.check(flat.working());
        WorkingCheck.check(flat.stretchWorking());
    }
}
