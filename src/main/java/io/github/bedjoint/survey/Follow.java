package io.github.bedjoint.survey;

import io.github.bedjoint.film.Film;
import io.github.bedjoint.film.FilmFigure;
import io.github.bedjoint.texture.Surface;
import io.github.bedjoint.texture.TakeUp;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether a film follows a surface: what its joints ask of it once film has been fed in, against what the film bears and keeps.
 *
 * <p>Lengths are compared with lengths: first the stretch at the steepest joint, then the mean stretch up and along the wall, which is
 * enough only where the film slides before it sticks. The area's ratio is reported beside it and never compared. Immutable.
 */
public final class Follow implements Explained {
    private static final Source RULE = Source.geometry("a length of film that cannot become the length of the texture bridges it");
    private static final Symbol USABLE = Symbol.number("e_f", "usable stretch of the film");

    /** What is left of the film's stretch at the steepest joint. */
    public static final Formula LOCAL_RESERVE = Formula.of(
            "survey.stretch-reserve-local", "Stretch left at the steepest joint",
            Symbol.number("R_j", "stretch left at the steepest joint"), "e_f - e_j", RULE, USABLE,
            Symbol.number("e_j", "stretch that the steepest joint still asks for"));
    /** What is left of the film's stretch on the mean. */
    public static final Formula MEAN_RESERVE = Formula.of(
            "survey.stretch-reserve-mean", "Stretch left on the mean", Symbol.number("R_m", "stretch left on the mean"),
            "e_f - max(e_u, e_a)", RULE, USABLE,
            Symbol.number("e_u", "mean stretch up the wall"), Symbol.number("e_a", "mean stretch along the wall"));

    /** What the film does. */
    public enum Outcome {
        /** It follows every joint. */
        FITS,
        /** It follows only where it slides and shares its stretch with the face beside the joint. */
        TIGHT,
        /** It bridges the joints. */
        BRIDGES
    }

    private final Surface surface;
    private final Film film;
    private final TakeUp takeUp;
    private final double local;
    private final double localReserve;
    private final double meanReserve;
    private final Outcome outcome;

    private Follow(Surface surface, Film film, TakeUp takeUp) {
        this.surface = surface;
        this.film = film;
        this.takeUp = takeUp;
        local = takeUp.leftLocal(surface);
        localReserve = film.usableStretch() - local;
        meanReserve = film.usableStretch() - Math.max(takeUp.leftUp(surface), takeUp.leftAlong(surface));
        outcome = localReserve >= 0 ? Outcome.FITS : meanReserve >= 0 ? Outcome.TIGHT : Outcome.BRIDGES;
    }

    /**
     * Compares a surface with a film of which nothing is fed in.
     *
     * @param surface the wall's texture
     * @param film    the film
     * @return what the film does
     */
    public static Follow of(Surface surface, Film film) {
        return of(surface, film, TakeUp.NONE);
    }

    /**
     * Compares a surface with a film of which some is fed in along the texture: what is left to stretch counts.
     *
     * @param surface the wall's texture
     * @param film    the film
     * @param takeUp  the shares fed in
     * @return what the film does
     */
    public static Follow of(Surface surface, Film film, TakeUp takeUp) {
        return new Follow(surface, film, takeUp);
    }

    /**
     * What the film does.
     *
     * @return fits, tight or bridges
     */
    public Outcome outcome() {
        return outcome;
    }

    /**
     * Whether the film, held at the arrises, cannot reach the bottom of level joints.
     *
     * @return true where they ask for more stretch than it bears
     */
    public boolean bridgesLevel() {
        return takeUp.leftLocalUp(surface) > film.usableStretch();
    }

    /**
     * Whether the film, held at the arrises, cannot reach the bottom of upright joints.
     *
     * @return true where they ask for more stretch than it bears
     */
    public boolean bridgesUpright() {
        return takeUp.leftLocalAlong(surface) > film.usableStretch();
    }

    /**
     * What is left of the stretch at the steepest joint.
     *
     * @return a share of length, negative where the joint asks for more
     * @see #LOCAL_RESERVE
     */
    public double localReserve() {
        return localReserve;
    }

    /**
     * What is left of the stretch on the mean.
     *
     * @return a share of length, negative where the mean asks for more
     * @see #MEAN_RESERVE
     */
    public double meanReserve() {
        return meanReserve;
    }

    /**
     * The finding with its reason and what may help.
     *
     * @param subject what was looked at, such as the wall's name
     * @param style   the reader's units
     * @return FINE, CAUTION for a tight fit, WARNING where the film bridges
     */
    public Verdict verdict(String subject, UnitStyle style) {
        String place = surface.steepestPlace(style);
        String asks = (place.isEmpty() ? surface.describe(style) : place) + " asks for a stretch of " + percent(local) + " (mean "
                + percent(takeUp.leftUp(surface)) + " up, " + percent(takeUp.leftAlong(surface)) + " along" + afterTakeUp() + "), "
                + film.name() + " bears " + percent(film.usableStretch()) + "; the area grows by " + percent(surface.areaRatio() - 1);
        Source source = new Source(film.source(FilmFigure.USABLE_STRETCH).kind(),
                "usable stretch: " + film.source(FilmFigure.USABLE_STRETCH).citation());
        return switch (outcome) {
            case FITS -> new Verdict(Verdict.Level.FINE, subject, asks, source);
            case TIGHT -> new Verdict(Verdict.Level.CAUTION, subject, asks
                    + ". Only where the film slides before it sticks does it reach the bottom: try a patch, or " + fixes(), source);
            case BRIDGES -> new Verdict(Verdict.Level.WARNING, subject, asks + ". It will bridge the joints: " + fixes(), source);
        };
    }

    private String afterTakeUp() {
        return takeUp.equals(TakeUp.NONE)
                ? ""
                : ", left of " + percent(surface.localStretch()) + " with " + percent(takeUp.up()) + " fed in up the wall and "
                        + percent(takeUp.along()) + " along it";
    }

    /** What brings the stretch at the steepest joint down to what the film bears. */
    private String fixes() {
        double share = Math.max(needed(surface.localStretchUp()), needed(surface.localStretchAlong()));
        return "cut the film free over the joint (relief cut), take a film that bears " + percent(local)
                + ", have the joints made shallower or filled, or feed in at least " + percentUp(share) + " of the extra length.";
    }

    /** The share to feed in so that what is left is what the film bears: the turned round form of {@link TakeUp#LEFT}. */
    private double needed(double stretch) {
        double left = (1 + stretch) / (1 + film.usableStretch()) - 1;
        return left <= 0 ? 0 : left / stretch;
    }

    private static String percentUp(double share) {
        return Print.number(Math.ceil(share * 1e4 - 1e-9) / 100.0) + " %";
    }

    private static String percent(double share) {
        return Print.number(Math.round(share * 1e4) / 100.0) + " %";
    }

    /** What is left of the stretch, at the joint and on the mean, and what film fed in leaves of it. */
    @Override
    public Working working() {
        List<Working> parts = new ArrayList<>(List.of(
                Working.of(LOCAL_RESERVE, localReserve, film.usableStretch(), local),
                Working.of(MEAN_RESERVE, meanReserve, film.usableStretch(), takeUp.leftUp(surface), takeUp.leftAlong(surface))));
        if (!takeUp.equals(TakeUp.NONE)) {
            parts.add(takeUp.leftWorking(surface));
        }
        return Working.group("Does " + film.name() + " follow?", parts);
    }

    /** Whether the film follows and why, in metric units. */
    @Override
    public String toString() {
        return outcome + ": " + verdict(film.name(), UnitStyle.METRIC).reason();
    }
}
