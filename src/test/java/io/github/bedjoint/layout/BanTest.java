package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static io.github.bedjoint.layout.LayoutPlannerTest.mm;
import static org.assertj.core.api.Assertions.assertThat;

import io.github.bedjoint.survey.MovementJoint;
import io.github.bedjoint.survey.Opening;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class BanTest {
    private static final Wall WALL = Wall.rectangle("w", m(3), m(2));
    private static final long OVERLAP = mm(20);

    private static List<List<Long>> intervals(Ban ban) {
        List<List<Long>> all = new ArrayList<>();
        for (int i = 0; i < ban.size(); i++) {
            all.add(List.of(ban.from(i), ban.to(i)));
        }
        return all;
    }

    private static List<List<Long>> bans(Wall wall, SeamRules rules, Side start, boolean ascending) {
        return intervals(Ban.of(WallRegions.of(wall, new Frame(Direction.DROPS, start)).orElseThrow(), rules, OVERLAP, ascending));
    }

    private static List<Long> millimetres(double from, double to) {
        return List.of(mm(from), mm(to));
    }

    @Test
    void of_intervals_joinsThoseThatOverlapAndDropsEmptyOnes() {
        Ban ban = Ban.of(List.of(new long[] {30, 40}, new long[] {10, 20}, new long[] {15, 30}, new long[] {50, 50}, new long[] {60, 55},
                new long[] {12, 14}, new long[] {70, 90}, new long[] {75, 80}));
        assertThat(intervals(ban)).containsExactly(List.of(10L, 30L), List.of(30L, 40L), List.of(70L, 90L));
        assertThat(Ban.of(List.of()).allows(0)).isTrue();
    }

    @ParameterizedTest
    @CsvSource({
        "5,  true,  5,  5",
        "10, true,  10, 10",
        "11, false, 10, 30",
        "29, false, 10, 30",
        // Between two that touch there is room for a seam.
        "30, true,  30, 30",
        "31, false, 30, 40",
        "40, true,  40, 40",
        "41, true,  41, 41"})
    void allows_place_onlyOutsideAndTheNextOnesAreTheEnds(long u, boolean allowed, long down, long up) {
        Ban ban = Ban.of(List.of(new long[] {10, 30}, new long[] {30, 40}));
        assertThat(ban.allows(u)).isEqualTo(allowed);
        assertThat(ban.down(u)).isEqualTo(down);
        assertThat(ban.up(u)).isEqualTo(up);
    }

    @Test
    void of_plainWall_bansNothing() {
        Wall window = WALL.withOpening(Opening.of(Opening.Kind.WINDOW, m(1), m(0.5), m(1), m(1)));
        assertThat(bans(window, SeamRules.withDefaults(), Side.LEFT, true)).isEmpty();
    }

    @Test
    void of_window_bansTheOverlapAcrossAndNearItsJambs() {
        // Jambs at 1 and 2 m, 100 mm clear: an overlap of 20 mm may not begin from 880 to 1100 mm, nor from 1880 to 2100 mm.
        Wall window = WALL.withOpening(Opening.of(Opening.Kind.WINDOW, m(1), m(0.5), m(1), m(1)));
        SeamRules rules = SeamRules.withDefaults().withJambClearance(m(0.1));
        assertThat(bans(window, rules, Side.LEFT, true)).containsExactly(millimetres(880, 1100), millimetres(1880, 2100));
        // In the mirror u runs from -3 m: jambs at -2 and -1 m.
        assertThat(bans(window, rules, Side.RIGHT, true)).containsExactly(millimetres(-2120, -1900), millimetres(-1120, -900));
    }

    @Test
    void of_ventThatIsNeverCovered_bansAllOfIt() {
        Wall vent = WALL.withOpening(Opening.of(Opening.Kind.VENT, m(1), m(0.5), m(1), m(1)));
        assertThat(bans(vent, SeamRules.withDefaults(), Side.LEFT, true)).containsExactly(millimetres(980, 2000));
        assertThat(bans(vent, SeamRules.withDefaults().withJambClearance(m(0.1)), Side.LEFT, true)).containsExactly(millimetres(880, 2100));
    }

    @Test
    void of_corners_areKeptClearOf() {
        SeamRules rules = SeamRules.withDefaults().withCornerClearance(m(0.2));
        assertThat(bans(WALL, rules, Side.LEFT, true)).containsExactly(millimetres(-220, 200), millimetres(2780, 3200));
    }

    @Test
    void of_movementJoint_isNeverCrossedByAnOverlap() {
        Wall jointed = WALL.withMovementJoints(List.of(MovementJoint.upright(m(1.5))));
        // With no clearance a step on either side: the film is cut there.
        assertThat(bans(jointed, SeamRules.withDefaults(), Side.LEFT, true)).containsExactly(List.of(mm(1480) - 1, mm(1500) + 1));
        assertThat(bans(jointed, SeamRules.withDefaults().withMovementClearance(m(0.1)), Side.LEFT, true)).containsExactly(millimetres(1380, 1600));
    }

    @Test
    void of_headJoints_banTheEdgeOnTop() {
        // Joints at 0.25, 1.25, 2.25 m, and one more on either side of the wall; 10 mm clear.
        JointPhase phase = JointPhase.forbidden(m(1), m(0.25), m(0.01));
        SeamRules rules = SeamRules.withDefaults().withHeadJoints(phase);
        assertThat(bans(WALL, rules, Side.LEFT, true)).containsExactly(
                millimetres(-760, -740), millimetres(240, 260), millimetres(1240, 1260), millimetres(2240, 2260), millimetres(3240, 3260));
        // Hung the other way the edge on top is where the overlap ends, 20 mm on.
        assertThat(bans(WALL, rules, Side.LEFT, false)).contains(millimetres(220, 240), millimetres(1220, 1240), millimetres(2220, 2240));
        assertThat(bans(WALL, rules, Side.RIGHT, true)).contains(millimetres(-260, -240), millimetres(-1260, -1240), millimetres(-2260, -2240));
        // Priced joints ban nothing, and bed joints do not lie beside drops.
        assertThat(bans(WALL, SeamRules.withDefaults().withHeadJoints(JointPhase.priced(m(1), m(0.25), m(0.01), 1)), Side.LEFT, true)).isEmpty();
        assertThat(bans(WALL, SeamRules.withDefaults().withBedJoints(phase), Side.LEFT, true)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"0.25, 2", "0.2599875, 2", "0.26, 0", "0.2400125, 2", "0.24, 0", "1.25, 2", "-0.75, 2", "0.75, 0", "0.7400125, 0"})
    void jointPhase_place_costsMoreNearerThanTheClearance(double place, double perM) {
        assertThat(JointPhase.priced(m(1), m(0.25), m(0.01), 2).perMAt(Math.round(place * 80_000))).isEqualTo(perM);
    }
}
