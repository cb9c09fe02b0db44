package io.github.bedjoint.texture;

import io.github.bedjoint.units.Door;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Verdict;
import io.github.bedjoint.working.Working;
import java.util.List;

/**
 * How much of the texture's extra length is fed in as extra film, and how much is left for the film to stretch.
 *
 * <p>A share of 0 in a direction feeds nothing in: all stretch; a share of 1 feeds the whole mean extra length in. The values are the two shares.
 *
 * @param up    share fed in up the wall, 0 to 1
 * @param along share fed in along the wall, 0 to 1
 */
public record TakeUp(double up, double along) {
    /** All of it is left to stretch: the usual case. */
    public static final TakeUp NONE = new TakeUp(0, 0);
    /** Length of film for a length of wall. */
    public static final Formula LENGTH = Formula.of(
            "texture.take-up",
            "Length of film with take-up",
            new Symbol("H_f", Measure.LENGTH, "length of film"),
            "H * (1 + u * e)",
            Source.geometry("the share fed in of the extra length along the texture"),
            new Symbol("H", Measure.LENGTH, "length on the wall"),
            Symbol.number("u", "share fed in"),
            Symbol.number("e", "mean stretch in that direction"));
    /** Stretch that is left where a stretch is asked for. */
    public static final Formula LEFT = Formula.of(
            "texture.stretch-left",
            "Stretch left to the film",
            Symbol.number("e_left", "stretch left to the film"),
            "(1 + e) / (1 + u * e) - 1",
            Source.geometry("length along the texture to the length of film fed in"),
            Symbol.number("e", "stretch asked for without take-up"),
            Symbol.number("u", "share fed in"));

    private static final Range WALL = Range.closed(0, 10_000);

    /**
     * Checks the shares.
     *
     * @param up    share fed in up the wall, 0 to 1
     * @param along share fed in along the wall, 0 to 1
     * @throws io.github.bedjoint.units.RefusedException if a share is out of range
     */
    public TakeUp {
        up = Door.number("take-up up the wall", up, Range.SHARE);
        along = Door.number("take-up along the wall", along, Range.SHARE);
    }

    /**
     * Film to cut for a height of wall, without bleeds, by {@link #LENGTH}.
     *
     * @param surface the surface
     * @param heightM the height on the wall in metres, 0 or more
     * @return metres, not less than the height
     */
    public double filmUpM(Surface surface, double heightM) {
        return film(heightM, up, surface.meanStretchUp());
    }

    /**
     * Film to cut for a width of wall, without bleeds, by {@link #LENGTH}.
     *
     * @param surface the surface
     * @param widthM  the width on the wall in metres, 0 or more
     * @return metres, not less than the width
     */
    public double filmAlongM(Surface surface, double widthM) {
        return film(widthM, along, surface.meanStretchAlong());
    }

    private static double film(double wallM, double share, double stretch) {
        return Door.number("length on the wall", wallM, WALL) * (1 + share * stretch);
    }

    /**
     * What is left of the mean stretch up the wall, by {@link #LEFT}.
     *
     * @param surface the surface
     * @return a share of length, 0 or more
     */
    public double leftUp(Surface surface) {
        return left(surface.meanStretchUp(), up);
    }

    /**
     * What is left of the mean stretch along the wall, by {@link #LEFT}.
     *
     * @param surface the surface
     * @return a share of length, 0 or more
     */
    public double leftAlong(Surface surface) {
        return left(surface.meanStretchAlong(), along);
    }

    /**
     * What is left of the stretch at the steepest place, by {@link #LEFT} in the direction that leaves more; extra film is fed in where the joints
     * are.
     *
     * @param surface the surface
     * @return a share of length, 0 or more
     */
    public double leftLocal(Surface surface) {
        return Math.max(leftLocalUp(surface), leftLocalAlong(surface));
    }

    /**
     * What is left of the stretch at the steepest place up the wall, by {@link #LEFT}.
     *
     * @param surface the surface
     * @return a share of length, 0 or more
     */
    public double leftLocalUp(Surface surface) {
        return left(surface.localStretchUp(), up);
    }

    /**
     * What is left of the stretch at the steepest place along the wall, by {@link #LEFT}.
     *
     * @param surface the surface
     * @return a share of length, 0 or more
     */
    public double leftLocalAlong(Surface surface) {
        return left(surface.localStretchAlong(), along);
    }

    private static double left(double stretch, double share) {
        return (1 + stretch) / (1 + share * stretch) - 1;
    }

    /**
     * How the film for a panel and the stretch left came about.
     *
     * @param surface the surface
     * @param widthM  the width on the wall in metres, 0 or more
     * @param heightM the height on the wall in metres, 0 or more
     * @return the workings in both directions
     */
    public Working working(Surface surface, double widthM, double heightM) {
        double eUp = surface.meanStretchUp();
        double eAlong = surface.meanStretchAlong();
        return Working.group(
                "Take-up",
                List.of(
                        Working.of(LENGTH, filmUpM(surface, heightM), heightM, up, eUp).whose("up the wall"),
                        Working.of(LENGTH, filmAlongM(surface, widthM), widthM, along, eAlong).whose("along the wall"),
                        Working.of(LEFT, leftUp(surface), eUp, up).whose("up the wall"),
                        Working.of(LEFT, leftAlong(surface), eAlong, along).whose("along the wall")));
    }

    /**
     * What is left of each stretch, at the steepest places and on the mean.
     *
     * @param surface the surface
     * @return the workings in both directions
     */
    public Working leftWorking(Surface surface) {
        return Working.group(
                "Stretch left after take-up",
                List.of(
                        left(surface.localStretchUp(), up, "at the steepest place up the wall"),
                        left(surface.localStretchAlong(), along, "at the steepest place along the wall"),
                        left(surface.meanStretchUp(), up, "mean up the wall"),
                        left(surface.meanStretchAlong(), along, "mean along the wall")));
    }

    private static Working left(double stretch, double share, String whose) {
        return Working.of(LEFT, left(stretch, share), stretch, share).whose(whose);
    }

    /**
     * What take-up does to a picture that runs over more than one panel.
     *
     * @param surface the surface
     * @return fine when nothing is fed in; otherwise a warning that registration is lost, with how much it is in a metre
     */
    public Verdict registration(Surface surface) {
        double most = Math.max(filmUpM(surface, 1), filmAlongM(surface, 1)) - 1;
        return new Verdict(
                most == 0 ? Verdict.Level.FINE : Verdict.Level.WARNING,
                "registration",
                most == 0
                        ? "no film is fed in, so the picture keeps its size on the wall"
                        : "film is fed in: the picture shifts by up to " + Print.number(most * 1000)
                                + " mm in each metre, so that neighbouring panels lose registration",
                Source.geometry("length of film to length of wall"));
    }
}
