package io.github.bedjoint.survey;

import io.github.bedjoint.texture.JointAreas;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.Optional;

/**
 * What the adhesive touches at least: the contact area less the joints that the film, held at their arrises, does not get into.
 *
 * <p>Where a film slides before it sticks it touches more, up to the contact area of film that follows. A film that touches the bottom of a joint it
 * cannot follow in part is counted as not touching that joint at all. Unit faces are taken as touched, rough ones too. Immutable.
 */
public final class Contact implements Explained {
    private static final Symbol BRIDGED_AREA = new Symbol("A_b", Measure.AREA, "developed area of the joints bridged");

    /** Developed area of the joints that the film bridges. */
    public static final Formula BRIDGED = Formula.of(
            "survey.bridged-area", "Joints bridged by the film", BRIDGED_AREA, "A * (q_l + q_u)",
            Source.geometry("a film that bridges a joint touches nothing of it"), new Symbol("A", Measure.AREA, "visible area"),
            Symbol.number("q_l", "level joints to the area of the wall, 0 where the film reaches their bottom"),
            Symbol.number("q_u", "upright joints to the area of the wall, 0 where the film reaches their bottom"));
    /** Least contact area. */
    public static final Formula LEAST = Formula.of(
            "survey.least-contact", "Adhesive contact area at least", new Symbol("A_c", Measure.AREA, "least adhesive contact area"), "A_k - A_b",
            Source.geometry("contact area of film that follows, less the joints bridged"),
            new Symbol("A_k", Measure.AREA, "contact area of film that follows"), BRIDGED_AREA);

    private final WallAreas areas;
    private final double level;
    private final double upright;

    private Contact(WallAreas areas, double level, double upright) {
        this.areas = areas;
        this.level = level;
        this.upright = upright;
    }

    /**
     * The contact of a film on a wall.
     *
     * @param areas  the wall's areas
     * @param follow whether the film follows its surface
     * @return the contact, or empty where the film bridges and joints are not told from faces, as on a measured surface
     */
    public static Optional<Contact> of(WallAreas areas, Follow follow) {
        if (!follow.bridgesLevel() && !follow.bridgesUpright()) {
            return Optional.of(new Contact(areas, 0, 0));
        }
        return areas.wall().surface().joints().map(joints -> new Contact(
                areas, follow.bridgesLevel() ? joints.level() : 0, follow.bridgesUpright() ? joints.upright() : 0));
    }

    /**
     * Developed area of the joints that the film bridges.
     *
     * @return square metres, 0 where it reaches the bottom of every joint
     * @see #BRIDGED
     */
    public double bridgedM2() {
        return areas.visibleM2() * (level + upright);
    }

    /**
     * What the adhesive touches at least.
     *
     * @return square metres
     * @see #LEAST
     */
    public double leastM2() {
        return areas.contactM2() - bridgedM2();
    }

    /** Least contact and joints bridged, in metric units. */
    @Override
    public String toString() {
        return Measure.AREA.print(leastM2(), UnitStyle.METRIC) + " touched at least on " + areas.wall().name() + ", "
                + Measure.AREA.print(bridgedM2(), UnitStyle.METRIC) + " of joints bridged";
    }

    @Override
    public Working working() {
        Working bridged = Working.of(BRIDGED, bridgedM2(), areas.visibleM2(), level, upright);
        Optional<JointAreas> joints = areas.wall().surface().joints();
        return Working.of(LEAST, leastM2(), areas.contactM2(), bridgedM2())
                .because(level + upright > 0 && joints.isPresent() ? bridged.because(joints.get().working()) : bridged)
                .whose(areas.wall().name());
    }
}
