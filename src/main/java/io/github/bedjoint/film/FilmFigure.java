package io.github.bedjoint.film;

import io.github.bedjoint.units.Measure;
import io.github.bedjoint.units.Range;
import io.github.bedjoint.working.Source;

/**
 * The figures of a film: what each measures, which values are accepted, and the value taken where the data sheet gave none.
 *
 * <p>A film without a figure that has no default simply does not know it; a check that needs it says so.
 */
public enum FilmFigure {
    /** Width of the roll. */
    ROLL_WIDTH(Measure.LENGTH, Range.above(0, 20), Double.NaN, Source.shop("given with the film")),
    /** Strip along each side of the roll that is not printed; default 0. */
    EDGE_MARGIN(Measure.LENGTH, Range.closed(0, 1), 0, Source.assumed("printed to the edge; a printer's margin is given with withEdgeMargin")),
    /** Least overlap of two panels; default 1/2 in. */
    LEAST_OVERLAP(Measure.LENGTH, Range.above(0, 1), 0.0127, Source.practice("overlap of 1/2 to 1 in")),
    /** Most overlap of two panels; default 1 in. */
    MOST_OVERLAP(Measure.LENGTH, Range.above(0, 1), 0.0254, Source.practice("overlap of 1/2 to 1 in")),
    /** Stretch that the film bears and keeps when heat set, as a share of its length; default 0.3. */
    USABLE_STRETCH(
            Measure.NUMBER, Range.closed(0, 5), 0.3, Source.assumed("no published value; take it from the data sheet or a test patch")),
    /** Thickness of the film without its laminate; default 2 mil. */
    THICKNESS(Measure.LENGTH, Range.above(0, 0.01), 50.8e-6, Source.practice("wall panel film of 2 mil")),
    /** Lowest surface temperature at which it may be applied; no default. */
    LEAST_SURFACE_TEMPERATURE(Measure.TEMPERATURE, Range.closed(200, 400), Double.NaN, Source.assumed("not known: see the data sheet")),
    /** Highest surface temperature at which it may be applied; no default. */
    MOST_SURFACE_TEMPERATURE(Measure.TEMPERATURE, Range.closed(200, 400), Double.NaN, Source.assumed("not known: see the data sheet")),
    /** Time from printing to laminating; without one the {@link InkFamily} gives it. */
    OUTGAS(Measure.TIME, Range.closed(0, 30 * 86_400.0), Double.NaN, Source.assumed("not known: the ink family's is taken"));

    private final Measure measure;
    private final Range range;
    private final double preset;
    private final Source source;

    FilmFigure(Measure measure, Range range, double preset, Source source) {
        this.measure = measure;
        this.range = range;
        this.preset = preset;
        this.source = source;
    }

    /**
     * What the figure measures.
     *
     * @return its measure, which names the inner unit
     */
    public Measure measure() {
        return measure;
    }

    /** What is accepted, in the inner unit. */
    Range range() {
        return range;
    }

    /** The default in the inner unit, or NaN where there is none. */
    double preset() {
        return preset;
    }

    /** Where the default comes from. */
    Source source() {
        return source;
    }
}
