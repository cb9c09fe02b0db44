package io.github.bedjoint.survey;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.texture.ContourProfile;
import io.github.bedjoint.texture.JointProfile;
import io.github.bedjoint.texture.MasonrySurface;
import io.github.bedjoint.texture.MasonryUnits;
import io.github.bedjoint.texture.ProfileSurface;
import io.github.bedjoint.texture.SpotSurface;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Read;
import io.github.bedjoint.units.ShopUnits;
import io.github.bedjoint.working.WorkingCheck;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A wall of 4 x 3 m; units 215 x 65 mm with joints of 10 mm, so C = 225 x 75 = 16875 mm2, and a film that bears 30 %. */
class ContactTest {
    private static final Film FILM = Film.of("film", Read.length("54 in")).withUsableStretch(0.3);
    private static final MasonrySurface RAKED = MasonrySurface.of(MasonryUnits.named("EN 215x65"), JointProfile.raked(Read.length("5 mm")));

    private static Optional<Contact> contact(Surface surface, TakeUp takeUp) {
        Wall wall = Wall.rectangle("north", Read.length("4 m"), Read.length("3 m")).withSurface(surface)
                .withEdge(Side.RIGHT, Edge.of(Edge.Kind.OUTSIDE_CORNER, Read.length("100 mm")));
        return Contact.of(WallAreas.of(wall, DeductionRule.none()), Follow.of(surface, FILM, takeUp));
    }

    /** Only the faces are touched, 12 * 215 * 65 / 16875 = 9.93778 m2, and the film turned around the corner, 0.3 m2. */
    @Test
    void leastM2_rakedJoints_isFacesAndWhatIsTurned() {
        Contact contact = contact(RAKED, TakeUp.NONE).orElseThrow();
        assertThat(contact.leastM2()).isCloseTo(12 * 13975 / 16875.0 + 0.3, within(1e-9));
        assertThat(contact.bridgedM2()).isCloseTo(12 * (1.16592592593 - 13975 / 16875.0), within(1e-9));
        WorkingCheck.check(contact.working());
    }

    /** Flush heads are level with the faces and are touched: 65 * 10 mm2 more for each unit. */
    @Test
    void leastM2_headsFlush_countsThemAsTouched() {
        Contact contact = contact(RAKED.withHeads(JointProfile.flush()), TakeUp.NONE).orElseThrow();
        assertThat(contact.leastM2()).isCloseTo(12 * (13975 + 650) / 16875.0 + 0.3, within(1e-9));
        WorkingCheck.check(contact.working());
    }

    /** All the extra length is fed in up the wall, so the beds are reached; the heads, 65 * 20 mm2 for each unit, are not. */
    @Test
    void leastM2_fedInUpTheWall_takesOffTheHeadsAlone() {
        Contact contact = contact(RAKED, new TakeUp(1, 0)).orElseThrow();
        assertThat(contact.bridgedM2()).isCloseTo(12 * 65 * 20 / 16875.0, within(1e-9));
        WorkingCheck.check(contact.working());
    }

    @Test
    void leastM2_filmThatFollows_isAllOfIt() {
        MasonrySurface concave = MasonrySurface.of(MasonryUnits.named("EN 215x65"), JointProfile.concave(Read.length("3 mm")));
        Contact contact = contact(concave, TakeUp.NONE).orElseThrow();
        assertThat(contact.bridgedM2()).isZero();
        assertThat(contact.leastM2()).isCloseTo(12 * concave.areaRatio() + 0.3, within(1e-9));
        WorkingCheck.check(contact.working());
    }

    /** Rough faces of 1.25 are taken as touched: 12 * 1.25 * 13975 / 16875. */
    @Test
    void leastM2_roughFaces_areTouched() {
        Contact contact = contact(RAKED.withFaceRatio(1.25), TakeUp.NONE).orElseThrow();
        assertThat(contact.leastM2()).isCloseTo(12 * 1.25 * 13975 / 16875.0 + 0.3, within(1e-9));
    }

    /** Depths of 4 and 6 mm: the mean of two walls, whose faces are the same. */
    @Test
    void leastM2_spotDepths_isTheMean() {
        SpotSurface spots = SpotSurface.of(RAKED, JointProfile.Kind.RAKED, List.of(Read.length("4 mm"), Read.length("6 mm")));
        Contact contact = contact(spots, TakeUp.NONE).orElseThrow();
        assertThat(contact.leastM2()).isCloseTo(12 * 13975 / 16875.0 + 0.3, within(1e-9));
        WorkingCheck.check(contact.working());
    }

    @Test
    void of_measuredSurfaceThatIsBridged_isNotKnown() {
        double[] places = {0, 65, 65, 75, 75};
        double[] heights = {0, 0, -5, -5, 0};
        ProfileSurface gauge = ProfileSurface.up(ContourProfile.of(places, heights, ShopUnits.MILLIMETRE));
        assertThat(contact(gauge, TakeUp.NONE)).isEmpty();
        assertThat(contact(gauge, new TakeUp(1, 0)).orElseThrow().bridgedM2()).isZero();
    }
}
