package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class ProfileSurfaceTest {
    /** 12.7 mm up over 12.7 mm: in one unit the rise is a hair more than the run, in the other not. */
    @Test
    void scale_slopeOf45Degrees_isNoStepInAnyUnit() {
        double[] places = {0, 1.3, 3.8};
        double[] heights = {0, 0, 2.5};
        double[] inches = {0, 1.3 / 25.4, 3.8 / 25.4};
        double[] high = {0, 0, 2.5 / 25.4};
        assertThat(ProfileSurface.up(ContourProfile.of(places, heights, ShopUnits.MILLIMETRE)).scale().level()).isEqualTo(Verdict.Level.FINE);
        assertThat(ProfileSurface.up(ContourProfile.of(inches, high, ShopUnits.INCH)).scale().level()).isEqualTo(Verdict.Level.FINE);
    }

    private static ContourProfile mm(double[] places, double[] heights) {
        return ContourProfile.of(places, heights, ShopUnits.MILLIMETRE);
    }

    /** One course of brick up the wall: 65 of face, a joint 10 wide and 5 deep. */
    private static ContourProfile course() {
        return mm(new double[] {0, 65, 65, 75, 75}, new double[] {0, 0, -5, -5, 0});
    }

    /** One unit along the wall: 215 of face, a joint 10 wide and 5 deep. */
    private static ContourProfile unit() {
        return mm(new double[] {0, 215, 215, 225, 225}, new double[] {0, 0, -5, -5, 0});
    }

    @Test
    void ratio_squareGroove_isOnePlusTwiceDepthByPitch() {
        // 1 + 2 d / p = 1 + 10 / 75 (derived)
        assertThat(course().ratio()).isCloseTo(1 + 10.0 / 75, within(1e-12));
        WorkingCheck.check(course().working());
    }

    @Test
    void areaRatio_bothWaysOfABrickWall_isAnUpperBound() {
        // Extras added: 1 + 10/75 + 10/225 = 1.177778; the wall itself has 1.165926, since joints cross.
        ProfileSurface surface = ProfileSurface.of(course(), unit());
        assertThat(surface.areaRatio()).isCloseTo(1 + 10.0 / 75 + 10.0 / 225, within(1e-12)).isGreaterThan(1.16592593);
        assertThat(surface.meanStretchUp()).isCloseTo(10.0 / 75, within(1e-12));
        assertThat(surface.meanStretchAlong()).isCloseTo(10.0 / 225, within(1e-12));
        assertThat(surface.localStretch()).isCloseTo(1, within(1e-12));
        assertThat(surface.steepestPlace(UnitStyle.METRIC)).isEqualTo("hollow from 65 mm to 75 mm of the profile");
        assertThat(surface.scale().level()).isEqualTo(Verdict.Level.FINE);
        WorkingCheck.check(surface.working());
        WorkingCheck.check(surface.stretchWorking());
    }

    @Test
    void up_alone_isStraightAlong() {
        ProfileSurface surface = ProfileSurface.up(course());
        assertThat(surface.areaRatio()).isCloseTo(course().ratio(), within(1e-12));
        assertThat(surface.meanStretchAlong()).isZero();
        assertThat(surface).hasToString("measured with a contour gauge up the wall");
        WorkingCheck.check(surface.working());
        assertThat(ProfileSurface.along(unit()).meanStretchUp()).isZero();
        assertThat(ProfileSurface.along(unit())).hasToString("measured with a contour gauge along the wall");
    }

    @Test
    void localStretch_hollowUnderTheHull_isMeasuredFromRimToRim() {
        // A hollow of 30-40-50 triangles under a level rim: 100 over 60; the small dent on the left of it is gentler.
        ContourProfile profile = mm(new double[] {0, 10, 20, 50, 80}, new double[] {0, -1, 0, -40, 0});
        assertThat(ProfileSurface.up(profile).localStretch()).isCloseTo(100.0 / 60 - 1, within(1e-12));
    }

    @Test
    void localStretch_tiltedButStraight_isNone() {
        ContourProfile straight = mm(new double[] {0, 4, 8}, new double[] {0, 3, 6});
        assertThat(straight.ratio()).isCloseTo(1.25, within(1e-12));
        assertThat(ProfileSurface.up(straight).localStretch()).isZero();
        assertThat(ProfileSurface.up(straight).steepestPlace(UnitStyle.METRIC)).isEmpty();
    }

    @Test
    void scale_pinsAcrossAStep_warnsWithTheUprightRatio() {
        // Pins 1 mm apart over a step of 5 mm: sqrt 26 is read where 6 may be.
        ContourProfile profile = mm(new double[] {0, 9, 10, 20}, new double[] {0, 0, -5, -5});
        Verdict scale = ProfileSurface.up(profile).scale();
        assertThat(scale.level()).isEqualTo(Verdict.Level.WARNING);
        // (9 + 6 + 10) / 20 = 1.25 and (9 + 5.0990 + 10) / 20 = 1.2050
        assertThat(scale.reason()).contains("1.2500 and not 1.2050", "6.6667 mm apart");
    }

    @Test
    void of_faultyPoints_isRefused() {
        assertThatThrownBy(() -> mm(new double[] {0}, new double[] {0})).isInstanceOf(RefusedException.class).hasMessageContaining("at least two");
        assertThatThrownBy(() -> mm(new double[] {0, 1}, new double[] {0})).hasMessageContaining("2 places and 1 heights");
        assertThatThrownBy(() -> mm(new double[] {0, 2, 1}, new double[] {0, 0, 0})).hasMessageContaining("place 3");
        assertThatThrownBy(() -> mm(new double[] {0, 0}, new double[] {0, 5})).hasMessageContaining("longer than 0 m");
        assertThatThrownBy(() -> mm(new double[] {0, 1}, new double[] {0, Double.NaN})).hasMessageContaining("height 2");
    }

    @Test
    void equals_samePointsInOtherUnits_isEqualWhenExact() {
        ContourProfile metres = ContourProfile.of(new double[] {0, 0.5}, new double[] {0, 0.25}, ShopUnits.METRE);
        assertThat(mm(new double[] {0, 500}, new double[] {0, 250})).isEqualTo(metres).hasSameHashCodeAs(metres);
        assertThat(ProfileSurface.up(metres)).isEqualTo(ProfileSurface.up(metres)).isNotEqualTo(ProfileSurface.along(metres));
        assertThat(ProfileSurface.up(metres)).hasSameHashCodeAs(ProfileSurface.up(metres));
        assertThat(metres).hasToString("profile of 2 points over 0.5 m, 1.1180 as long");
    }
}
