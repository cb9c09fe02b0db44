package io.github.bedjoint.texture;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.ShopUnits;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

/** Every closed form against the same wall as triangles in space, as the mesh is refined. */
class WallMeshTest {
    private static final double LENGTH = 215;
    private static final double HEIGHT = 65;

    private static JointProfile profile(JointProfile.Kind kind, double size) {
        return switch (kind) {
            case FLUSH -> JointProfile.flush();
            case RAKED -> JointProfile.raked(Door.of(size, ShopUnits.MILLIMETRE));
            case V -> JointProfile.vee(Door.of(size, JointProfile.DEGREE));
            case CONCAVE -> JointProfile.concave(Door.of(size, ShopUnits.MILLIMETRE));
            case HALF_ROUND -> JointProfile.halfRound();
            case STRUCK -> JointProfile.struck(Door.of(size, ShopUnits.MILLIMETRE));
            case WEATHERED -> JointProfile.weathered(Door.of(size, ShopUnits.MILLIMETRE));
        };
    }

    private static GrooveCurve curve(JointProfile.Kind kind, double width, double size) {
        return new GrooveCurve(kind, width, kind == JointProfile.Kind.V ? Math.toRadians(size) : size);
    }

    /** Units of two courses; headers are half a stretcher less half a joint. */
    private static List<List<Double>> courses(Bond bond, double headWidth) {
        double header = (LENGTH - headWidth) / 2;
        return switch (bond) {
            case STRETCHER, STACK -> List.of(List.of(LENGTH), List.of(LENGTH));
            case FLEMISH -> List.of(List.of(LENGTH, header), List.of(header, LENGTH));
            case ENGLISH -> List.of(List.of(LENGTH), List.of(header, header));
        };
    }

    private static MasonrySurface closed(Bond bond, double headWidth, double bedWidth, JointProfile beds, JointProfile heads) {
        return MasonrySurface.of(
                        Door.of(LENGTH, ShopUnits.MILLIMETRE),
                        Door.of(HEIGHT, ShopUnits.MILLIMETRE),
                        Door.of(headWidth, ShopUnits.MILLIMETRE),
                        Door.of(bedWidth, ShopUnits.MILLIMETRE),
                        beds)
                .withHeads(heads)
                .withBond(bond);
    }

    /** Every kind of bed with every kind of head, equal and unequal widths; sizes that fit joints of 8 mm. */
    static List<Arguments> pairs() {
        double[] sizes = {0, 5, 80, 2.5, 0, 4, 3};
        double[] headSizes = {0, 7, 60, 3.5, 0, 6, 5};
        List<Arguments> pairs = new ArrayList<>();
        for (JointProfile.Kind bed : JointProfile.Kind.values()) {
            for (JointProfile.Kind head : JointProfile.Kind.values()) {
                for (double[] widths : new double[][] {{10, 10}, {8, 12}, {12, 8}}) {
                    pairs.add(Arguments.of(bed, sizes[bed.ordinal()], head, headSizes[head.ordinal()], widths[0], widths[1]));
                    if (bed == head) {
                        pairs.add(Arguments.of(bed, sizes[bed.ordinal()], head, sizes[head.ordinal()], widths[0], widths[1]));
                    }
                }
            }
        }
        return pairs;
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void areaRatio_closedForm_isTheLimitOfTheMesh(
            JointProfile.Kind bed, double bedSize, JointProfile.Kind head, double headSize, double bedWidth, double headWidth) {
        GrooveCurve beds = curve(bed, bedWidth, bedSize);
        GrooveCurve heads = curve(head, headWidth, headSize);
        for (Bond bond : Bond.values()) {
            double ratio = closed(bond, headWidth, bedWidth, profile(bed, bedSize), profile(head, headSize)).areaRatio();
            double coarse = error(bond, beds, heads, 16, ratio);
            double fine = error(bond, beds, heads, 64, ratio);
            double finest = error(bond, beds, heads, 128, ratio);
            // Errors fall with the square of the spacing; what is left of them is taken out.
            double limit = finest - (fine - finest) / 3;
            assertThat(Math.abs(finest)).as(bond + " finest").isLessThan(1e-5);
            assertThat(Math.abs(limit)).as(bond + " limit").isLessThan(1e-6);
            assertThat(Math.abs(finest)).as(bond + " refined").isLessThanOrEqualTo(Math.abs(coarse) + 1e-10);
        }
    }

    private static double error(Bond bond, GrooveCurve beds, GrooveCurve heads, int n, double ratio) {
        return WallMesh.ratio(courses(bond, heads.width()), bond == Bond.STACK, HEIGHT, beds, heads, n) - ratio;
    }

    @ParameterizedTest
    @CsvSource({"CONCAVE, 3, 1.03785793", "HALF_ROUND, 0, 1.09554898", "V, 90, 1.07118337", "RAKED, 5, 1.16592593", "STRUCK, 5, 1.10621029"})
    void mesh_metricBrick_isTheDerivedValue(JointProfile.Kind kind, double size, double ratio) {
        // The mesh itself against values worked out by exact arithmetic elsewhere.
        GrooveCurve curve = curve(kind, 10, size);
        assertThat(WallMesh.ratio(courses(Bond.STRETCHER, 10), false, HEIGHT, curve, curve, 400)).isCloseTo(ratio, within(1e-6));
    }

    @Test
    void mesh_halfRoundWithoutIntersections_wouldBeCaught() {
        // 1.098092 is what one gets by forgetting that the grooves cut each other: the mesh must tell it from 1.095549.
        GrooveCurve curve = curve(JointProfile.Kind.HALF_ROUND, 10, 0);
        assertThat(WallMesh.ratio(courses(Bond.STRETCHER, 10), false, HEIGHT, curve, curve, 200))
                .isNotCloseTo(1.098092, within(1e-3));
    }
}
