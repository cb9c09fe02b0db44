package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.Direction.BANDS;
import static io.github.bedjoint.layout.Direction.CHEAPEST;
import static io.github.bedjoint.layout.Direction.DROPS;
import static io.github.bedjoint.survey.Side.BOTTOM;
import static io.github.bedjoint.survey.Side.LEFT;
import static io.github.bedjoint.survey.Side.RIGHT;
import static io.github.bedjoint.survey.Side.TOP;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.survey.Point;
import io.github.bedjoint.survey.Side;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** In which order panels are hung, and how a wall is turned for it. */
class HangingTest {
    @ParameterizedTest
    @CsvSource({
        // Away from the start, unless weather comes from there; the pieces of a drop from below.
        "DROPS, LEFT,   ,      true,  true",
        "DROPS, RIGHT,  ,      true,  true",
        "DROPS, LEFT,   RIGHT, true,  true",
        "DROPS, LEFT,   LEFT,  false, true",
        "DROPS, RIGHT,  LEFT,  true,  true",
        "DROPS, RIGHT,  RIGHT, false, true",
        // Bands from below wherever they are counted from, their pieces towards the weather.
        "BANDS, BOTTOM, ,      true,  true",
        "BANDS, TOP,    ,      false, true",
        "BANDS, BOTTOM, RIGHT, true,  true",
        "BANDS, BOTTOM, LEFT,  true,  false",
        "BANDS, TOP,    LEFT,  false, false"})
    void ascending_startAndWeather_sayWhichIsHungFirst(Direction way, Side start, Side weather, boolean ascending, boolean lowPieceFirst) {
        Hanging plain = Hanging.PLAIN.withDirection(way).withStart(start);
        Hanging hanging = weather == null ? plain : plain.withWeather(weather);
        assertThat(hanging.ascending()).isEqualTo(ascending);
        assertThat(hanging.lowPieceFirst()).isEqualTo(lowPieceFirst);
        assertThat(hanging.start()).isEqualTo(start);
    }

    private static List<String> tried(Hanging hanging) {
        return tried(hanging, Fit.FULL_WIDTH);
    }

    private static List<String> tried(Hanging hanging, Fit fit) {
        return hanging.tried(fit).stream().map(one -> one.direction() + " " + one.start()).toList();
    }

    @Test
    void tried_directionsAndStarts_areAllThatAreAskedFor() {
        assertThat(tried(Hanging.PLAIN)).containsExactly("DROPS LEFT");
        assertThat(tried(Hanging.PLAIN.withDirection(CHEAPEST))).containsExactly("DROPS LEFT", "DROPS RIGHT", "BANDS BOTTOM", "BANDS TOP");
        assertThat(tried(Hanging.PLAIN, Fit.CHEAPEST)).containsExactly("DROPS LEFT", "DROPS RIGHT");
        assertThat(tried(Hanging.PLAIN.withStart(LEFT), Fit.CHEAPEST)).containsExactly("DROPS LEFT");
        assertThat(tried(Hanging.PLAIN.withEitherStart())).containsExactly("DROPS LEFT", "DROPS RIGHT");
        assertThat(tried(Hanging.PLAIN.withDirection(BANDS).withEitherStart())).containsExactly("BANDS BOTTOM", "BANDS TOP");
        assertThat(tried(Hanging.PLAIN.withDirection(CHEAPEST).withEitherStart()))
                .containsExactly("DROPS LEFT", "DROPS RIGHT", "BANDS BOTTOM", "BANDS TOP");
        // A start that is said again ends the search for one, and each direction keeps its own.
        assertThat(tried(Hanging.PLAIN.withEitherStart().withStart(RIGHT).withStart(TOP).withDirection(CHEAPEST)))
                .containsExactly("DROPS RIGHT", "BANDS TOP");
    }

    @ParameterizedTest
    @CsvSource({"DROPS, LEFT, 1, 4, 2, 3", "DROPS, RIGHT, -4, -1, 2, 3", "BANDS, BOTTOM, 2, 3, 1, 4", "BANDS, TOP, -3, -2, 1, 4"})
    void frame_rectangle_isTurnedSoThatPanelsRunAlongV(Direction way, Side start, long u1, long u2, long v1, long v2) {
        // From (1, 2) to (4, 3) on the wall.
        Frame frame = new Frame(way, start);
        Rect turned = frame.in(1, 2, 4, 3);
        assertThat(turned).isEqualTo(new Rect(u1, u2, v1, v2));
        assertThat(frame.lowerLeft(turned)).isEqualTo(new Point(1, 2));
        assertThat(List.of(frame.place(u1), frame.place(u2))).containsExactlyInAnyOrder(way == DROPS ? 1L : 2L, way == DROPS ? 4L : 3L);
        assertThat(frame.u(new Point(1, 2))).isEqualTo(start == LEFT || start == BOTTOM ? u1 : u2);
        assertThat(frame.v(new Point(1, 2))).isEqualTo(v1);
        assertThat(frame.side(false)).isEqualTo(start);
        assertThat(frame.side(true)).isEqualTo(start.opposite());
    }
}
