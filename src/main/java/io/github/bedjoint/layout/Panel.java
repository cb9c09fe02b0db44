package io.github.bedjoint.layout;

import io.github.bedjoint.survey.Point;
import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Print;
import io.github.bedjoint.units.Steps;
import io.github.bedjoint.units.UnitStyle;
import io.github.bedjoint.working.Explained;
import io.github.bedjoint.working.Formula;
import io.github.bedjoint.working.Source;
import io.github.bedjoint.working.Symbol;
import io.github.bedjoint.working.Working;
import java.util.List;
import javax.measure.Quantity;
import javax.measure.quantity.Length;

/**
 * One piece of film as it is cut: how large, where it hangs, and where its area ends up.
 *
 * <p>The cut width is measured across the roll and the cut length along it: on a band the cut length lies level.
 *
 * @param number             place in the order of application on its wall, from 1
 * @param wall               name of the wall
 * @param direction          {@link Direction#DROPS} or {@link Direction#BANDS}
 * @param strip              which drop or band it belongs to, from 1 at the starting side
 * @param lowerLeft          its lower left corner on the wall, extra film included
 * @param cutWidthSteps      width across the roll
 * @param cutLengthSteps     length along the roll
 * @param lapSteps           the part of the width that lies over a panel that hangs already
 * @param extraWidthSteps    the part of the width beyond the wall: bleed, tuck or turn
 * @param visibleLengthSteps the part of the length between the lowest and the highest point of wall under it
 * @param fed                film fed in along the texture, part of cut width and cut length
 * @param cutOuts            openings of which something is cut out of it
 * @param places             where its area ends up
 */
public record Panel(
        int number,
        String wall,
        Direction direction,
        int strip,
        Point lowerLeft,
        long cutWidthSteps,
        long cutLengthSteps,
        long lapSteps,
        long extraWidthSteps,
        long visibleLengthSteps,
        Fed fed,
        int cutOuts,
        Places places)
        implements Explained {
    /** Cut width of a panel. */
    public static final Formula CUT_WIDTH = Formula.of(
            "layout.cut-width", "Cut width", new Symbol("w_c", Measure.STEPS, "cut width"), "w + o + b + f",
            Source.geometry("visible width, what each edge needs, and film fed in"),
            new Symbol("w", Measure.STEPS, "width of wall that this panel covers first"),
            new Symbol("o", Measure.STEPS, "width that lies over a panel that hangs already"),
            new Symbol("b", Measure.STEPS, "width beyond the wall"),
            new Symbol("f", Measure.STEPS, "width fed in"));
    /** Cut length of a panel. */
    public static final Formula CUT_LENGTH = Formula.of(
            "layout.cut-length", "Cut length", new Symbol("l_c", Measure.STEPS, "cut length"), "h + t + f",
            Source.geometry("from the lowest to the highest point of wall within the panel, what the edges there need, and film fed in"),
            new Symbol("h", Measure.STEPS, "from the lowest to the highest point of wall"),
            new Symbol("t", Measure.STEPS, "length beyond the wall"),
            new Symbol("f", Measure.STEPS, "length fed in"));
    /** What is cut off a panel along the shape of the wall. */
    public static final Formula TRIM = Formula.of(
            "layout.shape-trim", "Cut off along the shape of the wall", new Symbol("a_t", Measure.AREA, "shape trim"),
            "w * l - a_v - a_o - a_b - a_x - a_f", Source.geometry("the parts of a panel add up to the panel"),
            new Symbol("w", Measure.LENGTH, "cut width"),
            new Symbol("l", Measure.LENGTH, "cut length"),
            new Symbol("a_v", Measure.AREA, "on the wall, first layer"),
            new Symbol("a_o", Measure.AREA, "on the wall, second layer"),
            new Symbol("a_b", Measure.AREA, "bleed, tuck, turn"),
            new Symbol("a_x", Measure.AREA, "cut out over openings"),
            new Symbol("a_f", Measure.AREA, "fed in along the texture"));

    /**
     * The width of wall that this panel is the first to cover.
     *
     * @return steps: the cut width less lap, extra and what is fed in
     */
    public long visibleWidthSteps() {
        return wallWidthSteps() - lapSteps - extraWidthSteps;
    }

    /**
     * Width across the roll.
     *
     * @return the length in metres
     * @see #CUT_WIDTH
     */
    public Quantity<Length> cutWidth() {
        return Steps.toLength(cutWidthSteps);
    }

    /**
     * Length along the roll.
     *
     * @return the length in metres
     * @see #CUT_LENGTH
     */
    public Quantity<Length> cutLength() {
        return Steps.toLength(cutLengthSteps);
    }

    /**
     * How far it reaches on the wall to the right of its lower left corner.
     *
     * @return steps: the cut width of a drop, the cut length of a band, less what is fed in
     */
    public long alongSteps() {
        return direction == Direction.BANDS ? wallLengthSteps() : wallWidthSteps();
    }

    /**
     * How far it reaches on the wall up from its lower left corner.
     *
     * @return steps: the cut length of a drop, the cut width of a band, less what is fed in
     */
    public long upSteps() {
        return direction == Direction.BANDS ? wallWidthSteps() : wallLengthSteps();
    }

    private long wallWidthSteps() {
        return cutWidthSteps - fed.widthSteps();
    }

    private long wallLengthSteps() {
        return cutLengthSteps - fed.lengthSteps();
    }

    /**
     * Its area as cut.
     *
     * @return square metres
     */
    public double areaM2() {
        return Steps.toM(cutWidthSteps) * Steps.toM(cutLengthSteps);
    }

    /** Cut width, cut length, film fed in and what is cut off. */
    @Override
    public Working working() {
        return Working.group("Panel " + number + " on " + wall, List.of(
                Working.of(CUT_WIDTH, cutWidthSteps, visibleWidthSteps(), lapSteps, extraWidthSteps, fed.widthSteps())
                        .because(fed.widthWorking(visibleWidthSteps() + lapSteps)),
                Working.of(CUT_LENGTH, cutLengthSteps, visibleLengthSteps, wallLengthSteps() - visibleLengthSteps, fed.lengthSteps())
                        .because(fed.lengthWorking(visibleLengthSteps)),
                Working.of(TRIM, places.trimM2(), Steps.toM(cutWidthSteps), Steps.toM(cutLengthSteps), places.visibleM2(),
                        places.overlapM2(), places.bleedM2(), places.cutOutM2(), places.takeUpM2())));
    }

    /** Number, wall, cut size and corner: {@code 3 on north: 1371.6 x 2450.0 mm at (2400.0 mm, 0.0 mm)}. */
    @Override
    public String toString() {
        return number + " on " + wall + ": " + Print.cut(cutWidthSteps, UnitStyle.METRIC).replace(" mm", "") + " x "
                + Print.cut(cutLengthSteps, UnitStyle.METRIC) + " at " + lowerLeft;
    }
}
