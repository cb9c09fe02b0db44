package io.github.bedjoint.layout;

import static io.github.bedjoint.layout.LayoutPlannerTest.METRE;
import static io.github.bedjoint.layout.LayoutPlannerTest.m;
import static io.github.bedjoint.layout.LayoutPlannerTest.mm;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.survey.Edge;
import io.github.bedjoint.survey.Side;
import io.github.bedjoint.survey.Wall;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.RefusedException;
import java.util.List;
import org.assertj.core.api.ThrowableAssert.ThrowingCallable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What can be set on a planner, on rules for seams and on masonry joints. */
class LayoutSettingsTest {
    private static final LayoutPlanner PLAIN = LayoutPlanner.withDefaults();

    @Test
    void withDefaults_settings_areThoseOfThePage() {
        assertThat(PLAIN.direction()).isEqualTo(Direction.DROPS);
        assertThat(PLAIN.fit()).isEqualTo(Fit.FULL_WIDTH);
        assertThat(PLAIN.overlapSteps()).isZero();
        assertThat(PLAIN.leastSliverSteps()).isEqualTo(mm(100));
        assertThat(PLAIN.starts()).isEmpty();
        assertThat(PLAIN.startsAtCheapest()).isFalse();
        assertThat(PLAIN.weatherSide()).isEmpty();
        assertThat(PLAIN.hasRates()).isFalse();
        assertThat(PLAIN.rates()).isEqualTo(Rates.filmOnly());
        assertThat(PLAIN.hasLongestCut()).isFalse();
        assertThat(PLAIN.longestCutSteps()).isGreaterThan(mm(1e9));
        assertThat(PLAIN.joinsAcross()).isFalse();
        assertThat(PLAIN.seamRules()).isEqualTo(SeamRules.withDefaults());
        assertThat(PLAIN.takeUp()).isEqualTo(TakeUp.NONE);
    }

    @Test
    void with_allSettings_keepsEachOfThem() {
        Rates rates = new Rates(1, 2, 3, 4);
        SeamRules rules = SeamRules.withDefaults().withJambClearance(m(0.05));
        LayoutPlanner set = PLAIN.withOverlap(m(0.03)).withLeastSliver(m(0.2)).withLongestCut(m(9)).withJointsAcross(true)
                .withRates(rates).withSeamRules(rules).withTakeUp(new TakeUp(0.5, 0.25)).withFit(Fit.CHEAPEST)
                .withStart(Side.RIGHT).withStart(Side.TOP).withWeatherSide(Side.RIGHT).withDirection(Direction.BANDS);
        assertThat(set.overlapSteps()).isEqualTo(mm(30));
        assertThat(set.leastSliverSteps()).isEqualTo(mm(200));
        assertThat(set.hasLongestCut()).isTrue();
        assertThat(set.longestCutSteps()).isEqualTo(mm(9000));
        assertThat(set.joinsAcross()).isTrue();
        assertThat(set.hasRates()).isTrue();
        assertThat(set.rates()).isEqualTo(rates);
        assertThat(set.seamRules()).isEqualTo(rules);
        assertThat(set.takeUp()).isEqualTo(new TakeUp(0.5, 0.25));
        assertThat(set.fit()).isEqualTo(Fit.CHEAPEST);
        assertThat(set.starts()).containsExactly(Side.RIGHT, Side.TOP);
        assertThat(set.weatherSide()).contains(Side.RIGHT);
        assertThat(set.direction()).isEqualTo(Direction.BANDS);
        assertThat(set.withCheapestStart().startsAtCheapest()).isTrue();
        assertThat(set.withCheapestStart().overlapSteps()).isEqualTo(mm(30));
    }

    @Test
    void with_lengthsBetweenSteps_areRoundedToTheSafeSide() {
        // A quarter of a step of 12.5 um more.
        double quarter = 3.125e-6;
        assertThat(PLAIN.withOverlap(m(0.03 + quarter)).overlapSteps()).isEqualTo(mm(30) + 1);
        assertThat(PLAIN.withLeastSliver(m(0.2 + quarter)).leastSliverSteps()).isEqualTo(mm(200) + 1);
        assertThat(PLAIN.withLongestCut(m(9 + quarter)).longestCutSteps()).isEqualTo(mm(9000));
        assertThat(SeamRules.withDefaults().withCornerClearance(m(0.2 + quarter)).cornerSteps()).isEqualTo(mm(200) + 1);
    }

    private static void assertRefused(ThrowingCallable... calls) {
        for (ThrowingCallable call : calls) {
            assertThatThrownBy(call).isInstanceOf(RefusedException.class);
        }
    }

    @Test
    void with_lengthsOutOfRange_areRefused() {
        assertRefused(() -> PLAIN.withOverlap(m(0)), () -> PLAIN.withOverlap(m(1.001)),
                () -> PLAIN.withLeastSliver(m(-0.001)), () -> PLAIN.withLeastSliver(m(10.001)),
                () -> PLAIN.withLongestCut(m(0.1)), () -> PLAIN.withLongestCut(m(10_000.001)));
        assertThat(PLAIN.withOverlap(m(1)).overlapSteps()).isEqualTo(mm(1000));
        assertThat(PLAIN.withLeastSliver(m(0)).leastSliverSteps()).isZero();
        assertThat(PLAIN.withLeastSliver(m(10)).leastSliverSteps()).isEqualTo(mm(10_000));
        assertThat(PLAIN.withLongestCut(m(0.101)).longestCutSteps()).isEqualTo(mm(101));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 10.001})
    void seamRules_clearanceOutOfRange_isRefused(double clearance) {
        SeamRules rules = SeamRules.withDefaults();
        assertRefused(() -> rules.withJambClearance(m(clearance)), () -> rules.withCornerClearance(m(clearance)),
                () -> rules.withMovementClearance(m(clearance)));
        assertThat(rules.withJambClearance(m(10)).jambSteps()).isEqualTo(mm(10_000));
    }

    @Test
    void seamRules_settings_areKeptAndPrinted() {
        JointPhase heads = JointPhase.forbidden(m(0.225), m(0), m(0.01));
        JointPhase beds = JointPhase.priced(m(0.075), m(0.01), m(0.005), 2);
        SeamRules plain = SeamRules.withDefaults();
        SeamRules set = plain.withBedJoints(beds).withHeadJoints(heads).withMovementClearance(m(0.05)).withCornerClearance(m(0.2))
                .withJambClearance(m(0.08));
        assertThat(List.of(set.jambSteps(), set.cornerSteps(), set.movementSteps())).containsExactly(mm(80), mm(200), mm(50));
        assertThat(set.headJoints()).contains(heads);
        assertThat(set.bedJoints()).contains(beds);
        assertThat(plain).hasToString("clear of jambs 0.0 mm, of corners 0.0 mm, of movement joints 0.0 mm");
        assertThat(set).hasToString("clear of jambs 80.0 mm, of corners 200.0 mm, of movement joints 50.0 mm, off head joints, off bed joints");
        assertThat(heads.isForbidden()).isTrue();
        assertThat(beds.isForbidden()).isFalse();
    }

    /** Half of a joint of 10 mm and nothing beyond. */
    @Test
    void jointPhase_clearanceOfHalfAJoint_isAllowed() {
        assertThat(JointPhase.forbidden(m(0.075), m(0), m(0.005)).clearanceSteps()).isEqualTo(mm(5));
    }

    @Test
    void jointPhase_sizesOutOfRange_areRefused() {
        assertRefused(() -> JointPhase.priced(m(0.225), m(0), m(0.01), 0), () -> JointPhase.priced(m(0.225), m(0), m(0.01), Double.NaN),
                () -> JointPhase.forbidden(m(100.001), m(0), m(0.01)), () -> JointPhase.forbidden(m(0.225), m(1000.001), m(0.01)),
                () -> new JointPhase(mm(225), 0, 0, 1), () -> new JointPhase(mm(200), 0, mm(100), 1),
                () -> new JointPhase(mm(9), 0, mm(1), 1), () -> new JointPhase(mm(225), mm(1_000_001), mm(1), 1));
        assertThat(new JointPhase(mm(200), 0, mm(100) - 1, 1).clearanceSteps()).isEqualTo(mm(100) - 1);
    }

    @ParameterizedTest
    @ValueSource(ints = {0, 101})
    void best_countOutOfRange_isRefused(int most) {
        Wall wall = Wall.rectangle("w", m(1), m(1));
        assertRefused(() -> PLAIN.best(wall, METRE, most));
        assertThat(PLAIN.best(wall, METRE, 100)).hasSize(1);
    }

    @Test
    void picture_overAWall_fillsItsBleedsToo() {
        Wall wall = Wall.rectangle("w", m(2), m(1))
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.FREE, m(0.01)))
                .withEdge(Side.RIGHT, Edge.of(Edge.Kind.FREE, m(0.02)))
                .withEdge(Side.BOTTOM, Edge.of(Edge.Kind.GROUND, m(0.03)))
                .withEdge(Side.TOP, Edge.of(Edge.Kind.FREE, m(0.05)));
        assertThat(Picture.over(wall)).isEqualTo(new Picture(mm(-10), mm(-30), mm(2020), mm(1050)));
    }

    @Test
    void picture_withoutWidthOrHeight_isRefused() {
        assertRefused(() -> new Picture(10, 0, 10, 10), () -> new Picture(0, 10, 10, 10), () -> Picture.at(m(0), m(0), m(0), m(1)),
                () -> Picture.at(m(0), m(0), m(1), m(0)), () -> Picture.at(m(-1000.001), m(0), m(1), m(1)), () -> Picture.at(m(0), m(1000.001), m(1), m(1)));
        assertThat(Picture.at(m(0.1), m(0.2), m(1), m(2))).isEqualTo(new Picture(mm(100), mm(200), mm(1100), mm(2200)));
    }
}
