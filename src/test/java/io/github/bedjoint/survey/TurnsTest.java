package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.working.Verdict;
import java.util.List;
import org.junit.jupiter.api.Test;

class TurnsTest {
    private static final Wall FLAT = Wall.rectangle("north", m(4), m(3))
            .withEdge(Side.RIGHT, Edge.of(Edge.Kind.OUTSIDE_CORNER, m(0.05)))
            .withOpenings(List.of(Opening.of(Opening.Kind.WINDOW, m(1), m(1), m(1), m(1)).turnedIn(m(0.02))));
    private static final MasonrySurface RAKED = MasonrySurface.of(m(0.215), m(0.065), m(0.01), m(0.01), JointProfile.raked(m(0.005)));

    @Test
    void verdict_ofTexturedWallTurnedAtCornerAndOpening_namesBoth() {
        Verdict found = Turns.verdict(FLAT.withSurface(RAKED), TakeUp.NONE).orElseThrow();
        assertThat(found.level()).isEqualTo(Verdict.Level.CAUTION);
        assertThat(found.reason()).contains("outside corner on the right").contains("one opening").contains("without tension");
    }

    @Test
    void verdict_withNothingLeftToStretch_isEmpty() {
        assertThat(Turns.verdict(FLAT, TakeUp.NONE)).isEmpty();
        assertThat(Turns.verdict(FLAT.withSurface(RAKED), new TakeUp(1, 1))).isEmpty();
        assertThat(Turns.verdict(FLAT.withSurface(RAKED), new TakeUp(1, 0))).isPresent();
    }

    @Test
    void verdict_ofFilmThatEndsAtTheCorner_isEmpty() {
        Wall ends = Wall.rectangle("north", m(4), m(3)).withSurface(RAKED).withEdge(Side.RIGHT, Edge.flush(Edge.Kind.OUTSIDE_CORNER));
        assertThat(Turns.verdict(ends, TakeUp.NONE)).isEmpty();
    }
}
