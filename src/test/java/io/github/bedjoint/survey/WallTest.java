package io.github.bedjoint.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.RefusedException;
import io.github.bedjoint.units.ShopUnits;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WallTest {
    static Quantity<Length> m(double metres) {
        return Door.length(metres);
    }

    private static final Wall WALL = Wall.rectangle("north", m(6), m(3));

    @Test
    void rectangle_metricAndFeet_areEqual() {
        Wall feet = Wall.rectangle("north", Door.of(20, ShopUnits.FOOT), Door.of(10, ShopUnits.FOOT));
        assertThat(feet).isEqualTo(Wall.rectangle("north", m(6.096), m(3.048)));
        assertThat(feet.widthSteps()).isEqualTo(487_680);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, 1000.1})
    void rectangle_badWidth_isRefused(double metres) {
        assertThatThrownBy(() -> Wall.rectangle("north", m(metres), m(3)))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("wall width");
    }

    @Test
    void withOpenings_outside_isRefusedByItsIndex() {
        Opening inside = Opening.of(Opening.Kind.WINDOW, m(1), m(1), m(1), m(1));
        Opening outside = Opening.of(Opening.Kind.WINDOW, m(5.5), m(1), m(1), m(1));
        assertThatThrownBy(() -> WALL.withOpenings(List.of(inside, outside)))
                .isInstanceOfSatisfying(RefusedException.class, e -> {
                    assertThat(e.parameter()).isEqualTo("openings[1]");
                    assertThat(e.hint()).startsWith("Maybe");
                });
    }

    @Test
    void withOpenings_overlapping_isRefused_touchingIsNot() {
        Opening a = Opening.of(Opening.Kind.WINDOW, m(1), m(1), m(1), m(1));
        assertThatThrownBy(() -> WALL.withOpenings(List.of(a, Opening.of(Opening.Kind.VENT, m(1.9), m(1.9), m(1), m(1)))))
                .isInstanceOf(RefusedException.class)
                .hasMessageContaining("must not overlap openings[0]");
        assertThat(WALL.withOpenings(List.of(a, Opening.of(Opening.Kind.WINDOW, m(2), m(1), m(1), m(1)))).openings()).hasSize(2);
    }

    @Test
    void opening_thatMustStayOpen_cannotBeCovered() {
        for (Opening.Kind kind : List.of(Opening.Kind.VENT, Opening.Kind.WEEP_HOLE, Opening.Kind.ALARM)) {
            Opening opening = Opening.of(kind, m(1), m(1), m(0.1), m(0.1));
            assertThat(opening.treatment()).isEqualTo(Opening.Treatment.NEVER_COVERED);
            assertThatThrownBy(() -> opening.withTreatment(Opening.Treatment.LEFT_WHOLE)).isInstanceOf(RefusedException.class);
            assertThatThrownBy(() -> opening.turnedIn(m(0.02))).isInstanceOf(RefusedException.class);
        }
    }

    @Test
    void survey_twoWallsOfOneName_isRefused() {
        assertThatThrownBy(() -> Survey.of(WALL, WALL))
                .isInstanceOf(RefusedException.class)
                .hasMessageStartingWith("walls[1].name is 'north'");
        assertThatThrownBy(() -> Survey.of()).isInstanceOf(RefusedException.class);
        assertThat(Survey.of(WALL).wall("north")).isSameAs(WALL);
        assertThatThrownBy(() -> Survey.of(WALL).wall("south")).isInstanceOf(RefusedException.class).hasMessageContaining("[north]");
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 10.001})
    void edge_badExtra_isRefused(double metres) {
        assertThatThrownBy(() -> Edge.of(Edge.Kind.FREE, m(metres))).isInstanceOf(RefusedException.class).hasMessageContaining("edge extra");
    }

    @Test
    void edge_groundIsSealed_othersWhenTold() {
        assertThat(Edge.of(Edge.Kind.GROUND, m(0.03)).sealed()).isTrue();
        assertThat(Edge.of(Edge.Kind.FREE, m(0.03)).sealed()).isFalse();
        assertThat(Edge.flush(Edge.Kind.FREE).withSealed(true).sealed()).isTrue();
    }
}
