package io.github.bedjoint.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.units.Read;
import io.github.bedjoint.working.WorkingCheck;
import org.junit.jupiter.api.Test;

class TurnedAreaTest {
    private static final Wall WALL = Wall.rectangle("north", Read.length("4 m"), Read.length("3 m"));

    private static WallAreas areas(Wall wall) {
        return WallAreas.of(wall, DeductionRule.allOpenings());
    }

    /** By hand: corner 0.1 x 3 = 0.3; ground 0.02 x (4 - 1) = 0.06; window rim 2 x (1 + 1) x 0.05 = 0.2. */
    @Test
    void turnedM2_ofCornerGroundAndReveal_addsThemUp() {
        WallAreas areas = areas(WALL.withEdge(Side.RIGHT, Edge.of(Edge.Kind.OUTSIDE_CORNER, Read.length("100 mm")))
                .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, Read.length("20 mm")))
                .withOpening(Opening.of(Opening.Kind.DOOR, Read.length("1 m"), Read.length("0 m"), Read.length("1 m"), Read.length("2 m")))
                .withOpening(Opening.of(Opening.Kind.WINDOW, Read.length("2.5 m"), Read.length("1 m"), Read.length("1 m"), Read.length("1 m"))
                        .turnedIn(Read.length("50 mm"))));
        assertThat(areas.edges().turnedM2()).isCloseTo(0.56, within(1e-12));
        assertThat(areas.contactM2()).isCloseTo(12 - 2 - 1 + 0.56, within(1e-12));
        WorkingCheck.check(areas.working());
    }

    /** Bleed over a free edge, a soffit or into an inside corner is cut off and holds nothing. */
    @Test
    void turnedM2_ofBleedThatIsCutOff_isNothing() {
        WallAreas areas = areas(WALL.withEdge(Side.TOP, Edge.of(Edge.Kind.SOFFIT, Read.length("20 mm")))
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.INSIDE_CORNER, Read.length("20 mm")))
                .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.FREE, Read.length("20 mm"))));
        assertThat(areas.edges().turnedM2()).isZero();
        assertThat(areas.contactM2()).isEqualTo(areas.developedM2());
    }
}
