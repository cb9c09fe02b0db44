package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Masonry against values worked out by exact arithmetic outside this library. Format: 215 x 65 mm face, 10 mm joints (EN 771-1 work size as
 * quoted in public tables), so C = 225 x 75 = 16875 mm2 and s = 1 - 13975/16875 = 0.171852.
 */
class MasonrySurfaceTest {
    static MasonrySurface metric(JointProfile profile) {
        return MasonrySurface.of(mm("215"), mm("65"), mm("10"), mm("10"), profile);
    }

    private static javax.measure.Quantity<javax.measure.quantity.Length> mm(String number) {
        return Read.length(number + " mm");
    }

    static JointProfile profile(String kind, String size) {
        return switch (kind) {
            case "flush" -> JointProfile.flush();
            case "raked" -> JointProfile.raked(mm(size));
            case "vee" -> JointProfile.vee(io.github.bedjoint.units.Door.of(Double.parseDouble(size), JointProfile.DEGREE));
            case "concave" -> JointProfile.concave(mm(size));
            case "half round" -> JointProfile.halfRound();
            case "struck" -> JointProfile.struck(mm(size));
            case "weathered" -> JointProfile.weathered(mm(size));
            default -> throw new IllegalArgumentException(kind);
        };
    }

    @ParameterizedTest
    @CsvSource({
        // Worked out by exact fractions outside the library (derived values).
        "flush, 0, 1",
        "raked, 5, 1.16592593", // 1 + 2 (215 + 65) 5 / 16875
        "raked, 6, 1.19911111",
        "raked, 10, 1.33185185",
        "vee, 90, 1.07118337", // 1 + (sqrt 2 - 1) 0.171852
        "vee, 60, 1.17185185",
        "concave, 1, 1.00446641",
        "concave, 2, 1.01744625",
        "concave, 3, 1.03785793",
        "concave, 4, 1.06433522",
        "concave, 5, 1.09554898",
        "half round, 0, 1.09554898",
        "struck, 5, 1.10621029",
        "weathered, 5, 1.10621029"
    })
    void areaRatio_metricBrickHeadsAsBeds_isTheDerivedValue(String kind, String size, double ratio) {
        for (Bond bond : new Bond[] {Bond.STRETCHER, Bond.STACK}) {
            MasonrySurface wall = metric(profile(kind, size)).withBond(bond);
            assertThat(wall.areaRatio()).as(bond.name()).isCloseTo(ratio, within(5e-9));
            WorkingCheck.check(wall.working());
            WorkingCheck.check(wall.stretchWorking());
        }
    }

    @ParameterizedTest
    @CsvSource({
        // Derived: the bed runs through, so r = 1 + x_b / (h + j).
        "struck, 5, 1.08240453",
        "raked, 5, 1.13333333", // 1 + 10 / 75
        "vee, 90, 1.05522847", // 1 + 10 (sqrt 2 - 1) / 75
    })
    void areaRatio_headsFlush_isThatOfTheBedsAlone(String kind, String size, double ratio) {
        MasonrySurface wall = metric(profile(kind, size)).withHeads(JointProfile.flush());
        assertThat(wall.areaRatio()).isCloseTo(ratio, within(5e-9));
        assertThat(wall.meanStretchUp()).isCloseTo(ratio - 1, within(5e-9));
        assertThat(wall.meanStretchAlong()).isZero();
        WorkingCheck.check(wall.working());
    }

    @ParameterizedTest
    @CsvSource({
        // 1 + (2 l d_b + 2 h d_h + 2 j_h |d_b - d_h|) / C
        "5, 2, 1.14637037", // (2150 + 260 + 60) / 16875
        "2, 5, 1.09303704", // (860 + 650 + 60) / 16875
    })
    void areaRatio_bedsAndHeadsRakedUnlike_countsTheSteps(String beds, String heads, double ratio) {
        MasonrySurface wall = metric(profile("raked", beds)).withHeads(profile("raked", heads));
        assertThat(wall.areaRatio()).isCloseTo(ratio, within(5e-9));
        WorkingCheck.check(wall.working());
    }

    @Test
    void areaRatio_modularBrickRaked_isTheDerivedValue() {
        // 7 5/8 x 2 1/4 in faces in an 8 x 2 2/3 in module: 1 + 2 (7.625 + 2.25) d / 21.3333 (size: BIA Technical Notes 10B, June 1993, Table 1).
        MasonryUnit modular = MasonryUnits.named("Modular");
        assertThat(MasonrySurface.of(modular, JointProfile.raked(Read.length("1/4 in"))).areaRatio())
                .isCloseTo(1.231445, within(5e-7));
        assertThat(MasonrySurface.of(modular, JointProfile.raked(Read.length("3/8 in"))).areaRatio())
                .isCloseTo(1.347168, within(5e-7));
    }

    @Test
    void localStretch_raked_isTwiceDepthByWidth() {
        MasonrySurface wall = metric(profile("raked", "5"));
        assertThat(wall.localStretch()).isCloseTo(1.0, within(1e-12));
        assertThat(wall.meanStretchUp()).isCloseTo(10.0 / 75, within(1e-12));
        assertThat(wall.meanStretchAlong()).isCloseTo(10.0 / 225, within(1e-12));
        assertThat(wall.steepestPlace(UnitStyle.METRIC)).isEqualTo("bed joint raked 5 mm, 10 mm wide");
    }

    @Test
    void localStretch_concave3In10_isTheArcLength() {
        // Arc over 10 mm with a sagitta of 3 mm: 12.2495087 mm (derived).
        assertThat(metric(profile("concave", "3")).localStretch()).isCloseTo(0.22495087, within(1e-8));
    }

    @Test
    void localStretch_flushSmooth_isNoneAnywhere() {
        MasonrySurface wall = metric(JointProfile.flush());
        assertThat(wall.localStretch()).isZero();
        assertThat(wall.steepestPlace(UnitStyle.METRIC)).isEmpty();
    }

    @Test
    void jointShare_metricBrick_isTheDerivedValue() {
        assertThat(metric(JointProfile.flush()).jointShare()).isCloseTo(0.171852, within(5e-7));
    }

    @Test
    void withFaceRatio_splitFaces_addToTheJoints() {
        // 1 + (13975/16875) 0.2 + 0.16592593 = 1.33155556
        MasonrySurface wall = metric(profile("raked", "5")).withFaceRatio(1.2);
        assertThat(wall.areaRatio()).isCloseTo(1.33155556, within(5e-9));
        WorkingCheck.check(wall.working());
        WorkingCheck.check(wall.stretchWorking());
        assertThat(metric(JointProfile.flush()).withFaceRatio(1.44).localStretch()).isCloseTo(0.2, within(1e-12));
        assertThat(metric(JointProfile.flush()).withFaceRatio(1.44).steepestPlace(UnitStyle.METRIC)).isEqualTo("rough unit face");
    }

    @Test
    void withBond_flemish_averagesStretcherAndHeader() {
        // Two units each 450 x 75... stretcher 215, header 102.5, two head joints: cell 337.5 x 75 = 25312.5 for two units.
        // Raked 5: 1 + 2 (317.5 + 2 x 65) 5 / 25312.5 = 1 + 4475 / 25312.5
        MasonrySurface wall = metric(profile("raked", "5")).withBond(Bond.FLEMISH);
        assertThat(wall.areaRatio()).isCloseTo(1 + 4475 / 25312.5, within(1e-12));
        WorkingCheck.check(wall.working());
        // 79.01 units in a square metre: 2 / 0.0253125
        assertThat(MasonryCounts.of(wall, Read.area("1 m2")).units()).isCloseTo(79.012346, within(1e-6));
    }

    @Test
    void withBond_english_averagesTheCourses() {
        // A course of stretchers: 1 / 0.225 heads a metre; of headers: 1 / 0.1125; raked 5: beds 10/75 less nothing, heads 65 x 10 per head.
        // Two courses, 150 high, per 225 length: stretcher faces 1, header faces 2; walls: beds 2 x (215 + 2 x 102.5) x 5 = 4200, heads 3 x 65 x 10 = 1950.
        MasonrySurface wall = metric(profile("raked", "5")).withBond(Bond.ENGLISH);
        assertThat(wall.areaRatio()).isCloseTo(1 + (4200 + 1950) / (225.0 * 150), within(1e-12));
        WorkingCheck.check(wall.working());
    }

    @ParameterizedTest
    @EnumSource(Bond.class)
    void counts_everyBond_haveARightWorking(Bond bond) {
        MasonryCounts counts = MasonryCounts.of(metric(JointProfile.flush()).withBond(bond), Read.area("12.5 m2"));
        WorkingCheck.check(counts.working());
        assertThat(counts.joints().getValue().doubleValue()).isCloseTo(counts.bedJointM() + counts.headJointM(), within(1e-12));
    }

    @Test
    void counts_ofASquareMetre_printEverything() {
        assertThat(MasonryCounts.of(metric(JointProfile.flush()), Read.area("1 m2")))
                .hasToString("59.2593 units in 1 m², bed joints 13.3333 m, head joints 4.4444 m");
        assertThatThrownBy(() -> MasonryCounts.of(metric(JointProfile.flush()), Read.area("-1 m2"))).hasMessageContaining("wall area");
    }

    @Test
    void of_sagittaMoreThanHalfTheJoint_isRefused() {
        assertThatThrownBy(() -> metric(profile("concave", "6")))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("concave sagitta is 6 mm, but must be at most half the bed joint's width of 10 mm. Maybe");
    }

    @Test
    void of_sizesOutOfRange_areRefused() {
        JointProfile flush = JointProfile.flush();
        assertThatThrownBy(() -> MasonrySurface.of(mm("0"), mm("65"), mm("10"), mm("10"), flush)).hasMessageContaining("unit length");
        assertThatThrownBy(() -> MasonrySurface.of(mm("215"), mm("65"), mm("0"), mm("10"), flush)).hasMessageContaining("head joint");
        assertThatThrownBy(() -> MasonrySurface.of(mm("215"), mm("65"), mm("10"), mm("300"), flush)).hasMessageContaining("bed joint");
        assertThatThrownBy(() -> metric(flush).withFaceRatio(0.9)).hasMessageContaining("face ratio");
        assertThatThrownBy(() -> MasonrySurface.of(mm("10"), mm("65"), mm("10"), mm("10"), flush).withBond(Bond.FLEMISH))
                .hasMessageContaining("bond with headers");
    }

    @Test
    void equals_sameWallInOtherUnits_isEqualWhenExact() {
        MasonrySurface metres = MasonrySurface.of(
                Read.length("0.215 m"), Read.length("0.065 m"), Read.length("0.01 m"), Read.length("0.01 m"), JointProfile.flush());
        assertThat(metres).isEqualTo(metric(JointProfile.flush())).hasSameHashCodeAs(metric(JointProfile.flush()));
        assertThat(metres).isNotEqualTo(metric(JointProfile.halfRound()));
        assertThat(metres).isNotEqualTo(metres.withBond(Bond.STACK)).isNotEqualTo(metres.withFaceRatio(1.1));
    }

    @Test
    void describe_inBothStyles_namesEverything() {
        MasonrySurface wall = metric(profile("raked", "5")).withHeads(JointProfile.flush()).withFaceRatio(1.25);
        assertThat(wall)
                .hasToString("masonry 0.215 m x 65 mm, head joints 10 mm, bed joints 10 mm, raked 5 mm, heads flush, stretcher bond, faces 1.25");
        assertThat(wall.describe(UnitStyle.IMPERIAL)).contains("8.4646 in").contains("raked 0.19685 in");
    }
}
