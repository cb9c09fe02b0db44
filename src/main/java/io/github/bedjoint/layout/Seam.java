package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Side;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;

/**
 * Where two panels overlap: neighbouring drops or bands, or two pieces of one that is longer than any roll.
 *
 * @param upright      whether it runs up the wall, else along it
 * @param fromSteps    where the overlap begins: x of an upright seam, y of a level one
 * @param overlapSteps its width
 * @param lengthM      its length in metres: the wall under both panels, averaged over the width; openings crossed do not count
 * @param shows        the side that the edge on top faces
 * @param jointPerM    what a metre of it costs more since that edge lies in a masonry joint, at the rate of the {@link SeamRules}
 */
public record Seam(boolean upright, long fromSteps, long overlapSteps, double lengthM, Side shows, double jointPerM)
        implements Explained {
    /** Extra film of one seam. */
    public static final Formula OVERLAP = Formula.of(
            "layout.seam-overlap", "Extra film of a seam", new Symbol("a_i", Measure.AREA, "extra film of a seam"), "o * l",
            Source.geometry("the wall under two layers"),
            new Symbol("o", Measure.LENGTH, "overlap"),
            new Symbol("l", Measure.LENGTH, "length of the seam, openings out"));

    /**
     * The extra film that the overlap takes.
     *
     * @return square metres
     * @see #OVERLAP
     */
    public double areaM2() {
        return Steps.toM(overlapSteps) * lengthM;
    }

    @Override
    public Working working() {
        return Working.of(OVERLAP, areaM2(), Steps.toM(overlapSteps), lengthM);
    }

    /** Place, width and length. */
    @Override
    public String toString() {
        return (upright ? "upright" : "level") + " seam at " + Print.cut(fromSteps, UnitStyle.METRIC) + ", " + Print.cut(overlapSteps, UnitStyle.METRIC) + " wide, "
                + Print.number(lengthM) + " m long";
    }
}
