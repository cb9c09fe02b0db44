package io.github.bedjoint.survey;

import static io.github.bedjoint.survey.WallTest.m;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.UnitStyle;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What a survey is printed as, and what it refuses, sentence by sentence. */
class SurveyTextTest {
    private static final Wall WALL = Wall.rectangle("north", m(6), m(3));
    private static final Opening WINDOW = Opening.of(Opening.Kind.WINDOW, m(1), m(0.5), m(1), m(1.5));
    private static final MasonrySurface RAKED = MasonrySurface.of(m(0.215), m(0.065), m(0.01), m(0.01), JointProfile.raked(m(0.005)));

    @Test
    void toString_partsOfAWall_inOneLineEach() {
        assertThat(Edge.of(Edge.Kind.FREE, m(0.03))).hasToString("FREE + 30.0 mm");
        assertThat(Edge.of(Edge.Kind.GROUND, m(0.03))).hasToString("GROUND + 30.0 mm, sealed");
        assertThat(MovementJoint.upright(m(2))).hasToString("upright joint at x = 2000.0 mm");
        assertThat(MovementJoint.level(m(1.5))).hasToString("level joint at y = 1500.0 mm");
        assertThat(WINDOW).hasToString("WINDOW (1000.0 mm, 500.0 mm) to (2000.0 mm, 2000.0 mm), TRIMMED");
        assertThat(WINDOW.turnedIn(m(0.02))).hasToString("WINDOW (1000.0 mm, 500.0 mm) to (2000.0 mm, 2000.0 mm), TURNED_IN by 20.0 mm");
        assertThat(DeductionRule.allOpenings()).hasToString("all openings");
        assertThat(DeductionRule.none()).hasToString("no openings");
        assertThat(DeductionRule.atLeast(Read.area("0.5 m2"))).hasToString("openings of at least 0.5 m²");
        assertThat(WALL.withOpening(WINDOW).toString()).startsWith("north, 6.0 x 3.0 m, ").endsWith(", 1 openings");
    }

    /** 6 x 3 = 18 m2 with a window of 1 x 1.5 = 1.5 m2; raked 5 mm: 1.16592593 times as much along the texture. */
    @Test
    void toString_areasAndEdges_haveTheirFigures() {
        WallAreas areas = WallAreas.of(WALL.withOpening(WINDOW).withSurface(RAKED), DeductionRule.none());
        assertThat(areas).hasToString("north: 16.5 m² visible, 18 m² measured, deducting no openings, 19.2378 m² developed at a ratio of 1.1659");
        // The ground edge of 6 m; the rim 2 x (1 + 1.5) = 5 m.
        Wall grounded = WALL.withOpening(WINDOW).withEdge(Side.BOTTOM, Edge.flush(Edge.Kind.GROUND));
        assertThat(WallAreas.of(grounded, DeductionRule.none()).edges())
                .hasToString("north: 6 m of ground edge, 5 m around openings, 6 m to be sealed");
        assertThat(WallAreas.of(grounded, DeductionRule.none()).edges().working().toString()).contains("north, GROUND");
    }

    @Test
    void toString_follow_saysWhatTheFilmDoes() {
        Film film = Film.of("test film", m(1.3716)).withUsableStretch(1);
        assertThat(Follow.of(RAKED, film).toString()).startsWith("FITS: ").contains("test film bears 100 %");
        Contact contact = Contact.of(WallAreas.of(WALL.withSurface(RAKED), DeductionRule.none()), Follow.of(RAKED, film.withUsableStretch(0.5))).orElseThrow();
        // Of 18 m2 the faces, 13975 of 16875, are touched: 14.9067; bridged 18 (1.16592593 - 13975 / 16875) = 6.08.
        assertThat(contact).hasToString("14.9067 m² touched at least on north, 6.08 m² of joints bridged");
        assertThat(contact.working().toString()).contains("joints");
    }

    /** A joint 10 wide and 5 deep asks for exactly 100 %: a film that bears that fits, and bridges nothing. */
    @Test
    void follow_filmThatBearsExactlyWhatIsAsked_fits() {
        Follow exact = Follow.of(RAKED, Film.of("test film", m(1.3716)).withUsableStretch(1));
        assertThat(exact.localReserve()).isZero();
        assertThat(exact.outcome()).isEqualTo(Follow.Outcome.FITS);
        assertThat(exact.bridgesLevel()).isFalse();
        assertThat(exact.bridgesUpright()).isFalse();
        Follow less = Follow.of(RAKED, Film.of("test film", m(1.3716)).withUsableStretch(0.99));
        assertThat(less.outcome()).isEqualTo(Follow.Outcome.TIGHT);
        assertThat(less.bridgesLevel()).isTrue();
        assertThat(less.bridgesUpright()).isTrue();
    }

    /** Left of 100 % with half fed in: 2 / 1.5 - 1 = 33.33 %. A film of 25 %: 2 / 1.25 - 1 = 60 % of it must be fed in. */
    @Test
    void follow_filmFedIn_isSaidAndWorked() {
        Film film = Film.of("test film", m(1.3716)).withUsableStretch(0.25);
        Follow half = Follow.of(RAKED, film, new TakeUp(0.5, 0.5));
        assertThat(half.verdict("north", UnitStyle.METRIC).reason())
                .contains("asks for a stretch of 33.33 %", "left of 100 % with 50 % fed in up the wall and 50 % along it", "feed in at least 60 % of the extra length");
        assertThat(half.working().parts()).hasSize(3);
        assertThat(Follow.of(RAKED, film).working().parts()).hasSize(2);
    }

    @ParameterizedTest
    @EnumSource(Access.class)
    void leavesBothHandsFree_allButALadder(Access access) {
        assertThat(access.leavesBothHandsFree()).isEqualTo(access != Access.LADDER);
    }

    @Test
    void withMovementJoints_atTheEndsOfTheWall_areRefused() {
        List<MovementJoint> joints = List.of(MovementJoint.upright(m(2)), MovementJoint.level(m(2.5)));
        assertThat(WALL.withMovementJoints(joints).movementJoints()).isEqualTo(joints);
        for (MovementJoint wrong : List.of(MovementJoint.upright(m(0)), MovementJoint.upright(m(6)), MovementJoint.level(m(0)), MovementJoint.level(m(3)))) {
            assertThatThrownBy(() -> WALL.withMovementJoints(List.of(joints.get(0), wrong)))
                    .hasMessageStartingWith("movement joints[1] is " + wrong)
                    .hasMessageContaining("must cross the wall");
        }
        assertThat(WALL.withMovementJoints(List.of(MovementJoint.level(m(2.9)), MovementJoint.upright(m(5)))).movementJoints()).hasSize(2);
    }

    @Test
    void edges_ofAWall_areThoseSet() {
        Edge free = Edge.of(Edge.Kind.FREE, m(0.03));
        assertThat(WALL.withEdge(Side.TOP, free).edges()).containsEntry(Side.TOP, free).hasSize(4);
        assertThat(Edge.flush(Edge.Kind.GROUND).sealed()).isTrue();
        assertThat(Edge.flush(Edge.Kind.FREE).sealed()).isFalse();
    }

    @Test
    void opening_signIsNeverCovered_andOtherTouchIsNoOverlap() {
        assertThat(Opening.of(Opening.Kind.SIGN, m(1), m(1), m(1), m(1)).treatment()).isEqualTo(Opening.Treatment.NEVER_COVERED);
        assertThat(Opening.of(Opening.Kind.DOOR, m(1), m(1), m(1), m(1)).treatment()).isEqualTo(Opening.Treatment.TRIMMED);
        for (Opening beside : List.of(
                Opening.of(Opening.Kind.WINDOW, m(2), m(0.5), m(1), m(1)), Opening.of(Opening.Kind.WINDOW, m(0.5), m(0.5), m(0.5), m(1)),
                Opening.of(Opening.Kind.WINDOW, m(1), m(2), m(1), m(0.5)), Opening.of(Opening.Kind.WINDOW, m(1), m(0.25), m(1), m(0.25)))) {
            assertThat(WALL.withOpenings(List.of(WINDOW, beside)).openings()).hasSize(2);
        }
        // The height is checked where the opening lies high above the origin, too.
        assertThatThrownBy(() -> new Opening(Opening.Kind.WINDOW, 0, 800, 80, 800, Opening.Treatment.TRIMMED, 0)).hasMessageContaining("opening height");
    }

    @Test
    void widthAndHeight_ofAWallAwayFromTheOrigin_areItsOwn() {
        Wall wall = Wall.polygon("west", List.of(Point.of(m(1), m(2)), Point.of(m(5), m(2)), Point.of(m(5), m(5)), Point.of(m(1), m(5))));
        assertThat(wall.widthSteps()).isEqualTo(320_000);
        assertThat(wall.heightSteps()).isEqualTo(240_000);
        assertThat(WallAreas.of(wall, DeductionRule.none()).visibleM2()).isEqualTo(12);
    }

    @Test
    void turns_insideCornersAndSeveralOpenings_areNamed() {
        Wall turned = WALL.withSurface(RAKED)
                .withEdge(Side.LEFT, Edge.of(Edge.Kind.INSIDE_CORNER, m(0.05)))
                .withEdge(Side.TOP, Edge.of(Edge.Kind.FREE, m(0.05)))
                .withOpenings(List.of(
                        WINDOW.turnedIn(m(0.02)), Opening.of(Opening.Kind.WINDOW, m(3), m(1), m(1), m(1)).turnedIn(m(0.02)),
                        Opening.of(Opening.Kind.WINDOW, m(5), m(1), m(0.5), m(1))));
        assertThat(Turns.verdict(turned, TakeUp.NONE).orElseThrow().reason())
                .startsWith("film that stretches over the texture is turned at the inside corner on the left, 2 openings: lay it there");
    }
}
