package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.WorkingCheck;
import java.util.HashMap;
import org.junit.jupiter.api.Test;

/** The extra area where joints meet, by hand; all sizes in millimetres, areas in square millimetres. */
class CrossingTest {
    private static final JointProfile RIGHT_V = JointProfile.vee(Door.of(90, JointProfile.DEGREE));

    private static Joint joint(Joint.Place place, JointProfile profile, double width) {
        return new Joint(place, profile, width / 1000);
    }

    private static double extra(JointProfile bed, double bedWidth, JointProfile head, double headWidth, boolean staggered) {
        Crossing crossing =
                new Crossing(joint(Joint.Place.BED, bed, bedWidth), joint(Joint.Place.HEAD, head, headWidth), staggered);
        WorkingCheck.check(crossing.working(), new HashMap<>());
        return crossing.extraM2() * 1e6;
    }

    private static JointProfile raked(double depth) {
        return JointProfile.raked(Read.length(depth + " mm"));
    }

    @Test
    void raked_likeDepths_addNothing() {
        assertThat(extra(raked(5), 10, raked(5), 8, true)).isZero();
    }

    @Test
    void raked_unlikeDepths_addTwoSteps() {
        // Two ends of the head, each 8 wide with a step of 3: 48.
        assertThat(extra(raked(5), 10, raked(2), 8, true)).isCloseTo(48, within(1e-9));
        assertThat(extra(raked(2), 10, raked(5), 8, false)).isCloseTo(48, within(1e-9));
    }

    @Test
    void vee_likeWidths_haveTheSlopeEverywhere() {
        // 100 (sqrt 2 - 1)
        assertThat(extra(RIGHT_V, 10, RIGHT_V, 10, true)).isCloseTo(41.42136, within(1e-5));
    }

    @Test
    void vee_widerHeadsStaggered_addTheirStepAtTheCentreLine() {
        // Head 12 wide and 6 deep, bed 8 wide and 4 deep: above the bed's bottom the head is 4 wide and 2 deeper, a triangle of 4; twice.
        double slopes = 12 * 8 * (Math.sqrt(2) - 1);
        assertThat(extra(RIGHT_V, 8, RIGHT_V, 12, false)).isCloseTo(slopes, within(1e-9));
        assertThat(extra(RIGHT_V, 8, RIGHT_V, 12, true)).isCloseTo(slopes + 2 * 4, within(1e-9));
        assertThat(extra(RIGHT_V, 12, RIGHT_V, 8, true)).isCloseTo(slopes, within(1e-9));
    }

    @Test
    void halfRound_likeWidths_isPiLessThree() {
        // The deeper of two crossing half cylinders of radius 5 has 8 r^2 (pi / 2 - 1) = 114.1593; less 100.
        assertThat(extra(JointProfile.halfRound(), 10, JointProfile.halfRound(), 10, true)).isCloseTo(14.159265, within(1e-6));
    }

    @Test
    void concave_asDeepAsHalfItsWidth_isHalfRound() {
        JointProfile deep = JointProfile.concave(Read.length("5 mm"));
        assertThat(extra(deep, 10, deep, 10, true)).isCloseTo(14.159265, within(1e-6));
        assertThat(extra(deep, 10, JointProfile.halfRound(), 10, true)).as("by quadrature").isCloseTo(14.159265, within(1e-6));
    }

    @Test
    void heads_flush_takeTheBedsExtraAlong() {
        // Bed raked 5: two sides of 5 along 8.
        assertThat(extra(raked(5), 10, JointProfile.flush(), 8, true)).isCloseTo(80, within(1e-9));
        assertThat(extra(JointProfile.flush(), 10, JointProfile.flush(), 8, true)).isZero();
    }

    @Test
    void vee_intoAFlushBed_endsInTwoTriangles() {
        // Head 10 wide and 5 deep: 25 at each end.
        assertThat(extra(JointProfile.flush(), 10, RIGHT_V, 10, true)).isCloseTo(50, within(1e-9));
    }

    @Test
    void struck_withFlatterStruckHeads_isWorkedByHand() {
        // Bed struck 4, 10 wide: slope sqrt 116. Head struck 2, 10 wide. Slope over 10: (sqrt 116 - 10) 10 = 7.703296. Step at the level edge:
        // 2 x 10 / 2 = 10; at the ledge: (4 - 1) 10 = 30.
        assertThat(extra(JointProfile.struck(Read.length("4 mm")), 10, JointProfile.struck(Read.length("2 mm")), 10, true))
                .isCloseTo(47.703296, within(1e-6));
        // Heads 6 deep: level edge 30; ledge (16 + 4) / 12 x 10 = 16.666667.
        assertThat(extra(JointProfile.struck(Read.length("4 mm")), 10, JointProfile.struck(Read.length("6 mm")), 10, true))
                .isCloseTo(7.703296 + 30 + 16.666667, within(1e-6));
    }
}
